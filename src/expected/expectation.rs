//! What a sound system shows here, from the best source that speaks of it.

use super::fleet::{Baseline, Fleet, SwingSpread};
use super::healthy::Healthy;
use super::spread::QUANTILE_95;
use super::table::PressureTable;
use crate::error::Error;
use crate::names::{ErrorKind, ExpectedBasis};
use crate::vehicle::{Conditions, System};

/// What a sound system shows here, and what that rests on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expectation {
    /// The distribution of every figure, pressures as gauges show them at any moment of a clutch's cycle.
    pub healthy: Healthy,
    /// Between what the pressures swing, where a clutch cycles and the vehicle model speaks.
    pub swing: Option<SwingSpread>,
    /// What it rests on.
    pub basis: ExpectedBasis,
}

impl Expectation {
    /// What a sound system of this kind shows in these conditions.
    ///
    /// The vehicle's own healthy readings sharpen the bands of the vehicle model ([`Baseline`]); without them the bands
    /// are those of the model's fleet ([`Fleet`]), and those of the pressures reach as far as published charts and common
    /// practice do ([`Healthy`]): what was read on many vehicles is sound, even where the model has few such. Where the
    /// model has no bands for the system or the weather, the published ones stand alone. The vehicle's own pressure table
    /// replaces both pressures. The band of the high side ends at the cut-out of the system where that is known.
    ///
    /// Errors: those of [`Healthy::of`] where only it could speak, and of [`PressureTable::replace`].
    ///
    /// ```
    /// use coldloop::expected::Expectation;
    /// use coldloop::units::{Surroundings, celsius};
    /// use coldloop::vehicle::{Conditions, System};
    /// use coldloop::{Compressor, Expansion, ExpectedBasis, Refrigerant};
    /// let car = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let day = Conditions::new(celsius(24.0), Surroundings::SEA_LEVEL);
    /// assert_eq!(Expectation::of(&car, &day, None, None)?.basis, ExpectedBasis::VehicleModel);
    /// let just_started = Conditions { running_s: Some(120.0), ..day };
    /// assert_eq!(Expectation::of(&car, &just_started, None, None)?.basis, ExpectedBasis::Published);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn of(
        system: &System,
        conditions: &Conditions,
        own_table: Option<&PressureTable>,
        own_readings: Option<&Baseline>,
    ) -> Result<Self, Error> {
        let own = own_readings.filter(|baseline| baseline.readings() > 0);
        let (modelled, basis) = match own {
            Some(baseline) => (baseline.bands(conditions), ExpectedBasis::OwnReadings),
            None => (
                Fleet::of(system).and_then(|fleet| fleet.bands(conditions)),
                ExpectedBasis::VehicleModel,
            ),
        };
        let mut expectation = match modelled {
            Ok(bands) => {
                let mut healthy = bands.as_read();
                if basis == ExpectedBasis::VehicleModel {
                    include_published(&mut healthy, system, conditions);
                }
                Self {
                    healthy,
                    swing: bands.swing,
                    basis,
                }
            }
            Err(error) if matches!(error.kind, ErrorKind::NotAvailable | ErrorKind::OutOfRange) => Self {
                healthy: Healthy::of(system, conditions)?,
                swing: None,
                basis: ExpectedBasis::Published,
            },
            Err(error) => return Err(error),
        };
        if let Some(table) = own_table {
            expectation = Self {
                healthy: table.replace(expectation.healthy, system.refrigerant, conditions.ambient)?,
                swing: None,
                basis: ExpectedBasis::OwnTable,
            };
        }
        if let Some(limit_pa) = system.high_cut_out_pa {
            let healthy = &mut expectation.healthy;
            healthy.end_high_side(system.refrigerant, conditions.surroundings, limit_pa)?;
        }
        Ok(expectation)
    }
}

/// Widens the bands of the pressures to the published ones, where these speak of the system and the weather.
fn include_published(healthy: &mut Healthy, system: &System, conditions: &Conditions) {
    let Ok(published) = Healthy::of(system, conditions) else {
        return;
    };
    for (spread, published) in [
        (&mut healthy.low_side, published.low_side),
        (&mut healthy.high_side, published.high_side),
    ] {
        spread.down = spread
            .down
            .max((spread.median - published.at(-QUANTILE_95)) / QUANTILE_95);
        spread.up = spread.up.max((published.at(QUANTILE_95) - spread.median) / QUANTILE_95);
    }
}
