//! The air-conditioning system of a vehicle as its label and its owner describe it.

use crate::error::Error;
use crate::names::{Compressor, Expansion, HighPort, LowPort, Refrigerant};
use crate::range::{EVAPORATORS, HIGH_CUT_OUT, HIGH_CUT_OUT_R744};
use crate::units::{GaugePressure, Mass};

/// The air-conditioning system of a vehicle.
///
/// ```
/// use coldloop::units::Mass;
/// use coldloop::vehicle::System;
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let mut sweeper = System::new(Refrigerant::R134a, Expansion::OrificeTube, Compressor::FixedClutch);
/// sweeper.nominal_charge = Some(Mass::from_g(900.0));
/// assert!(sweeper.check().is_ok());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct System {
    /// The refrigerant that the label names.
    pub refrigerant: Refrigerant,
    /// The expansion device.
    pub expansion: Expansion,
    /// The compressor and its control.
    pub compressor: Compressor,
    /// The charge that the label names.
    pub nominal_charge: Option<Mass>,
    /// Where the low-side port is.
    pub low_port: Option<LowPort>,
    /// Where the high-side port is.
    pub high_port: Option<HighPort>,
    /// Whether there is a sight glass.
    pub sight_glass: Option<bool>,
    /// Pressure at which a switch or the control stops the compressor.
    pub high_cut_out: Option<GaugePressure>,
    /// Number of evaporators, one or two; the normal readings depend on it, except with R-744.
    pub evaporators: Option<u8>,
}

impl System {
    /// A system whose label does not tell the charge.
    pub const fn new(refrigerant: Refrigerant, expansion: Expansion, compressor: Compressor) -> Self {
        Self {
            refrigerant,
            expansion,
            compressor,
            nominal_charge: None,
            low_port: None,
            high_port: None,
            sight_glass: None,
            high_cut_out: None,
            evaporators: None,
        }
    }

    /// Checks that the numbers of the system are possible.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for a cut-out that no such system has ([`HIGH_CUT_OUT`], [`HIGH_CUT_OUT_R744`])
    /// and for a number of evaporators that is neither one nor two.
    ///
    /// ```
    /// use coldloop::vehicle::System;
    /// use coldloop::{Compressor, Expansion, Refrigerant, units::GaugePressure};
    /// let mut van = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// van.high_cut_out = Some(GaugePressure::from_bar(27.0));
    /// assert!(van.check().is_ok());
    /// van.high_cut_out = Some(GaugePressure::from_kpa(27.0));
    /// assert!(van.check().is_err());
    /// ```
    pub fn check(&self) -> Result<(), Error> {
        let limits = if self.refrigerant == Refrigerant::R744 {
            HIGH_CUT_OUT_R744
        } else {
            HIGH_CUT_OUT
        };
        if let Some(pressure) = self.high_cut_out {
            limits.check(pressure.pa())?;
        }
        if let Some(number) = self.evaporators {
            EVAPORATORS.check(f64::from(number))?;
        }
        Ok(())
    }

    /// Whether there may be a sight glass; without information R-744 has none. Source: common practice, no source.
    ///
    /// ```
    /// use coldloop::vehicle::System;
    /// use coldloop::{Compressor, Expansion, Refrigerant};
    /// let of = |refrigerant| System::new(refrigerant, Expansion::Txv, Compressor::VariableExternal);
    /// assert!(of(Refrigerant::R134a).may_have_sight_glass());
    /// assert!(!of(Refrigerant::R744).may_have_sight_glass());
    /// ```
    pub fn may_have_sight_glass(&self) -> bool {
        self.sight_glass.unwrap_or(self.refrigerant != Refrigerant::R744)
    }
}
