//! The mean temperature of the evaporating range.
//!
//! Superheat counts from the dew point and subcooling from the bubble point, everywhere. But a blend warms up while it
//! boils, and the air over an evaporator meets the mean of that range: from where the expansion device lets it in, part of
//! it boiled already, to its dew point. Standards for compressors rate at that mean, half way between the two
//! (EN 12900, AHRI Standard 540; from memory).

use super::line::Line;
use crate::error::Error;
use crate::mixture::Side;
use crate::names::{Quantity, Reference, Refrigerant};
use crate::range::Range;
use crate::units::{AbsolutePressure, SpecificEnergy, Temperature, kelvins};

impl Line {
    /// Half way (K) between the temperature of the inlet, where the mass fraction `quality` is vapour, and the dew point
    /// at `p_pa`, Pa.
    ///
    /// Errors: as [`Line::state_pq`].
    pub fn evaporating_mean_pq(self, p_pa: f64, quality: f64) -> Result<f64, Error> {
        let inlet = self.state_pq(p_pa, quality, Reference::Iir)?;
        Ok(0.5 * (inlet.t_k + self.temperature_k(Side::Dew, p_pa)?))
    }

    /// The same for an inlet of the enthalpy `h_j_kg` (J/kg), that of the liquid line; where liquid comes in below its
    /// bubble point, the range begins at the bubble point.
    ///
    /// Errors: as [`Line::state_ph`]; `OutOfRange` for an inlet that has boiled already, with the enthalpies of the
    /// bubble and the dew point.
    pub fn evaporating_mean_ph(self, p_pa: f64, h_j_kg: f64, reference: Reference) -> Result<f64, Error> {
        let dew_k = self.temperature_k(Side::Dew, p_pa)?;
        let [boiling, condensing] = [0.0, 1.0].map(|quality| self.state_pq(p_pa, quality, reference));
        let (boiling, condensing) = (boiling?, condensing?);
        if h_j_kg < boiling.h_j_kg {
            return Ok(0.5 * (boiling.t_k + dew_k));
        }
        let h_j_kg = Range::new(Quantity::Enthalpy, boiling.h_j_kg, condensing.h_j_kg).check(h_j_kg)?;
        Ok(0.5 * (self.state_ph(p_pa, h_j_kg, reference)?.t_k + dew_k))
    }
}

impl Refrigerant {
    /// The mean of the evaporating range: half way between the temperature of the inlet, where the mass fraction `quality`
    /// is vapour, and the dew point. Of a pure refrigerant it is the saturation temperature.
    ///
    /// Superheat does not count from here but from [`Refrigerant::dew_temperature`].
    ///
    /// Source: EN 12900 and AHRI Standard 540, from memory; equilibria of the mixture model.
    ///
    /// Errors: as [`Refrigerant::state_pq`].
    ///
    /// ```
    /// use coldloop::{Refrigerant, units::{AbsolutePressure, in_kelvins}};
    /// let p = AbsolutePressure::from_pa(500e3);
    /// let dew = in_kelvins(Refrigerant::R407C.dew_temperature(p)?);
    /// let mean = in_kelvins(Refrigerant::R407C.evaporating_mean(p, 0.25)?);
    /// assert!(dew - mean > 2.0 && dew - mean < 3.1);
    /// assert!(Refrigerant::R407C.evaporating_mean(p, 1.5).is_err());
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn evaporating_mean(self, pressure: AbsolutePressure, quality: f64) -> Result<Temperature, Error> {
        super::line_of(self)
            .evaporating_mean_pq(pressure.pa(), quality)
            .map(kelvins)
    }

    /// The same for an inlet of the enthalpy of the liquid line, counted from `reference`.
    ///
    /// Errors: as [`Refrigerant::state_ph`]; `OutOfRange` for an inlet that has boiled already.
    ///
    /// ```
    /// use coldloop::{Reference, Refrigerant, units::{AbsolutePressure, celsius, in_kelvins}};
    /// let liquid = Refrigerant::R407C.state(celsius(40.0), AbsolutePressure::from_pa(2e6), Reference::Iir)?;
    /// let low_side = AbsolutePressure::from_pa(500e3);
    /// let mean = Refrigerant::R407C.evaporating_mean_ph(low_side, liquid.enthalpy(), Reference::Iir)?;
    /// assert!((in_kelvins(mean) - 273.15).abs() < 5.0);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn evaporating_mean_ph(
        self,
        pressure: AbsolutePressure,
        enthalpy: SpecificEnergy,
        reference: Reference,
    ) -> Result<Temperature, Error> {
        super::line_of(self)
            .evaporating_mean_ph(pressure.pa(), enthalpy.j_kg(), reference)
            .map(kelvins)
    }
}
