//! What sound vehicles read by the vehicle model: bands fitted to its population, in closed form.

mod baseline;
mod constants;
mod figures;
mod steps;
mod weather;

pub use baseline::Baseline;
pub use figures::simulated_figures;
pub use weather::{
    FLEET_AMBIENT, FLEET_BAROMETER, FLEET_BLOWER, FLEET_ENGINE_SPEED, FLEET_HUMIDITY_RATIO, FLEET_MOTOR_SPEED,
    FLEET_RUNNING, FLEET_SPEED, Weather,
};

use super::healthy::Healthy;
use super::spread::{QUANTILE_95, Spread};
use crate::error::Error;
use crate::names::{Compressor, ErrorKind, Expansion, Quantity, Refrigerant};
use crate::numerics::sqrt;
use crate::saturation::pseudo_critical;
use crate::units::Surroundings;
use crate::vehicle::{Conditions, System};
use constants::KINDS;
use figures::{
    CLOSES, CYCLES, DISCHARGE_SUPERHEAT, ENGAGED, FIGURES, HIGH_SIDE, LOW_SIDE, OPENS, STEADY_FIGURES, SUBCOOLING,
    SUPERHEAT, VENT,
};
use steps::Steps;
use weather::{Facts, SPREAD_TERMS};

/// The fitted bands of one figure of one kind of vehicle.
pub(super) struct Row {
    /// The first coefficient of the median, whose term is 1.
    level: f32,
    /// The other coefficients of the median.
    median: Steps<{ Weather::TERMS - 1 }>,
    /// Coefficients of the spread downwards, before it is kept positive.
    down: Steps<SPREAD_TERMS>,
    /// The same upwards.
    up: Steps<SPREAD_TERMS>,
}

/// The fitted bands of one kind of vehicle.
pub(super) struct Kind {
    refrigerant: Refrigerant,
    expansion: Expansion,
    compressor: Compressor,
    /// One for each figure.
    rows: &'static [Row],
    /// Covariances of the deviations that a vehicle keeps in any weather, in standard deviations of the fleet: the
    /// lower triangle, row by row.
    kept: &'static [f32],
    /// The same of those that change with the weather.
    changing: &'static [f32],
}

/// Rounding of a spread towards zero, in its unit.
const LEAST_SPREAD: f64 = 0.1;

/// The highest pressure to which a band reaches, Pa absolute: protection has taken over by then, at 27 to 32 bar gauge as
/// in the vehicle model.
const PROTECTION_PA: f64 = 3.25e6;

/// The same of R-744, as its vehicles have it.
const PROTECTION_R744_PA: f64 = 14.0e6;

/// One standard deviation of what is not known, per its usual value: water in the air, engine speed. Judgement.
const UNKNOWN_HUMIDITY: f64 = 0.5;
const UNKNOWN_SPEED: f64 = 0.25;

/// Sound vehicles of one kind of system, from small car to bus, as the vehicle model has them.
///
/// The bands are those of the model's population ([`Population`](crate::vehicle::Population)): medians linear in the
/// terms of [`Weather`], spreads in its first terms, fitted by `tables-compile -- --fit-bands`; `tables/bands/fleet.md` says
/// how well they hold.
#[derive(Clone, Copy)]
pub struct Fleet {
    kind: &'static Kind,
    /// The cut-out of the system where it is known, Pa above the air.
    high_cut_out_pa: Option<f64>,
}

impl PartialEq for Fleet {
    fn eq(&self, other: &Self) -> bool {
        core::ptr::eq(self.kind, other.kind) && self.high_cut_out_pa == other.high_cut_out_pa
    }
}

impl core::fmt::Debug for Fleet {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        let kind = self.kind;
        write!(
            f,
            "Fleet({}, {}, {})",
            kind.refrigerant, kind.expansion, kind.compressor
        )
    }
}

/// What sound vehicles of a fleet show in given conditions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FleetBands {
    /// The figures, pressures as means over the cycles of a clutch.
    pub healthy: Healthy,
    /// Between what the pressures swing, where a clutch cycles.
    pub swing: Option<SwingSpread>,
}

/// Between what the pressures of a cycling clutch swing, as saturation temperatures; where one stays engaged, the means.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SwingSpread {
    /// Low side when the clutch opens, K.
    pub opens: Spread,
    /// Low side when the clutch closes, K.
    pub closes: Spread,
    /// High side when the clutch opens: what a gauge shows with the clutch engaged, K.
    pub engaged: Spread,
}

impl Fleet {
    /// The fleet of this system.
    ///
    /// Errors: `NotAvailable` for a refrigerant to which no bands are fitted.
    ///
    /// ```
    /// use coldloop::expected::Fleet;
    /// use coldloop::vehicle::System;
    /// use coldloop::{Compressor, Expansion, Refrigerant};
    /// let of = |refrigerant| Fleet::of(&System::new(refrigerant, Expansion::Txv, Compressor::FixedClutch));
    /// assert!(of(Refrigerant::R1234yf).is_ok() && of(Refrigerant::R12).is_err());
    /// ```
    pub fn of(system: &System) -> Result<Self, Error> {
        KINDS
            .iter()
            .find(|kind| {
                kind.refrigerant == system.refrigerant
                    && kind.expansion == system.expansion
                    && kind.compressor == system.compressor
            })
            .map(|kind| Self {
                kind,
                high_cut_out_pa: system.high_cut_out_pa,
            })
            .ok_or(Error::of(ErrorKind::NotAvailable, Quantity::Name))
    }

    /// The systems that have one.
    pub fn systems() -> impl Iterator<Item = System> {
        KINDS
            .iter()
            .map(|kind| System::new(kind.refrigerant, kind.expansion, kind.compressor))
    }

    fn system(&self) -> System {
        System::new(self.kind.refrigerant, self.kind.expansion, self.kind.compressor)
    }

    /// The highest pressure to which a band reaches in this air, Pa absolute.
    fn protection_pa(&self, air: Surroundings) -> f64 {
        if let Some(pa) = self.high_cut_out_pa {
            pa + air.pressure().pa()
        } else if self.kind.refrigerant == Refrigerant::R744 {
            PROTECTION_R744_PA
        } else {
            PROTECTION_PA
        }
    }

    /// What its sound vehicles show in these conditions.
    ///
    /// What is not given is taken as in a workshop (see [`Weather::of`]) and widens the bands: by
    /// from half to one and a half of the usual water in the air, 1,500 rpm give or take a quarter, either air source.
    ///
    /// Errors: as [`Weather::of`].
    ///
    /// ```
    /// use coldloop::expected::Fleet;
    /// use coldloop::units::{Surroundings, celsius};
    /// use coldloop::vehicle::{Conditions, System};
    /// use coldloop::{Compressor, Expansion, Refrigerant};
    /// let fleet = Fleet::of(&System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableInternal))?;
    /// let bands = fleet.bands(&Conditions::new(celsius(25.0), Surroundings::SEA_LEVEL))?;
    /// assert!((268.0..280.0).contains(&bands.healthy.low_side.median));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn bands(&self, conditions: &Conditions) -> Result<FleetBands, Error> {
        self.gathered(&self.spreads(conditions)?, conditions.surroundings)
    }

    fn gathered(&self, spreads: &[Spread; FIGURES], air: Surroundings) -> Result<FleetBands, Error> {
        let limit_k = pseudo_critical::along_k(self.kind.refrigerant, self.protection_pa(air))?;
        // Each figure is fitted on its own: what opens a clutch lies not above the mean, what closes it not below.
        let held = |spread: Spread, median: f64| Spread { median, ..spread };
        let limited = |spread: Spread| Spread {
            up: spread
                .up
                .min(((limit_k - spread.median) / QUANTILE_95).max(LEAST_SPREAD)),
            median: spread.median.min(limit_k),
            ..spread
        };
        let (low_k, high_k) = (spreads[LOW_SIDE].median, spreads[HIGH_SIDE].median);
        let clutch = self.kind.rows.len() > STEADY_FIGURES;
        Ok(FleetBands {
            healthy: Healthy {
                low_side: spreads[LOW_SIDE],
                high_side: limited(spreads[HIGH_SIDE]),
                vent: spreads[VENT],
                superheat: spreads[SUPERHEAT],
                subcooling: spreads[SUBCOOLING],
                discharge_superheat: spreads[DISCHARGE_SUPERHEAT],
                clutch_cycles: clutch.then_some(Spread {
                    median: spreads[CYCLES].median.max(0.0),
                    ..spreads[CYCLES]
                }),
            },
            swing: clutch.then_some(SwingSpread {
                opens: held(spreads[OPENS], spreads[OPENS].median.min(low_k)),
                closes: held(spreads[CLOSES], spreads[CLOSES].median.max(low_k)),
                engaged: limited(held(spreads[ENGAGED], spreads[ENGAGED].median.max(high_k))),
            }),
        })
    }

    /// The distribution of every figure, widened by what is not known of the conditions.
    fn spreads(&self, conditions: &Conditions) -> Result<[Spread; FIGURES], Error> {
        let facts = Facts::of(&self.system(), conditions)?;
        let mut spreads = self.at(&facts);
        if conditions.air_source.is_none() {
            let other = self.at(&Facts {
                recirculated: 1.0,
                ..facts
            });
            for (spread, other) in spreads.iter_mut().zip(&other) {
                let half = 0.5 * (other.median - spread.median);
                let between = |one: f64, other: f64| 0.5 * (one + other);
                *spread = Spread {
                    median: spread.median + half,
                    down: between(spread.down, other.down),
                    up: between(spread.up, other.up),
                }
                .widened(half, half);
            }
        }
        let mut widen = |one: Facts, other: Facts| {
            let (one, other) = (one.weather(), other.weather());
            for (spread, row) in spreads.iter_mut().zip(self.kind.rows) {
                let unknown = 0.5 * (row.median(one.terms()) - row.median(other.terms()));
                *spread = spread.widened(unknown, unknown);
            }
        };
        if conditions.relative_humidity.is_none() {
            let with = |factor: f64| Facts {
                humidity_ratio: factor * facts.humidity_ratio,
                ..facts
            };
            widen(with(1.0 - UNKNOWN_HUMIDITY), with(1.0 + UNKNOWN_HUMIDITY));
        }
        let belt = self.kind.compressor != Compressor::Electric;
        if belt && conditions.driving_hz(self.kind.compressor).is_none() {
            let with = |factor: f64| Facts {
                relative_speed: factor * facts.relative_speed,
                ..facts
            };
            widen(with(1.0 - UNKNOWN_SPEED), with(1.0 + UNKNOWN_SPEED));
        }
        Ok(spreads)
    }

    /// The distribution of every figure in conditions that are known.
    fn at(&self, facts: &Facts) -> [Spread; FIGURES] {
        let weather = facts.weather();
        let mut spreads = [Spread {
            median: 0.0,
            down: 1.0,
            up: 1.0,
        }; FIGURES];
        for (spread, row) in spreads.iter_mut().zip(self.kind.rows) {
            *spread = row.at(weather.terms());
        }
        spreads
    }
}

impl FleetBands {
    /// The figures as gauges show them while the clutch is engaged.
    ///
    /// On the low side the needle then falls from where the clutch closes to where it opens: the median is the middle of
    /// these, the bands reach beyond both. On the high side it climbs to where the clutch opens, which is what one
    /// writes down: that is the median, and the bands reach down to those of the mean.
    pub fn as_read(&self) -> Healthy {
        let mut healthy = self.healthy;
        if let Some(swing) = self.swing {
            let low_k = 0.5 * (swing.opens.median + swing.closes.median);
            healthy.low_side = Spread {
                median: low_k,
                down: (low_k - swing.opens.at(-QUANTILE_95)) / QUANTILE_95,
                up: (swing.closes.at(QUANTILE_95) - low_k) / QUANTILE_95,
            };
            let high_k = swing.engaged.median;
            let down = (high_k - self.healthy.high_side.at(-QUANTILE_95)) / QUANTILE_95;
            healthy.high_side = Spread {
                down: down.max(swing.engaged.down),
                ..swing.engaged
            };
        }
        healthy
    }
}

impl Row {
    fn at(&self, terms: &[f64; Weather::TERMS]) -> Spread {
        let kept = |x: f64| 0.5 * (x + sqrt(x * x + LEAST_SPREAD * LEAST_SPREAD));
        Spread {
            median: self.median(terms),
            down: kept(self.down.sum(terms)),
            up: kept(self.up.sum(terms)),
        }
    }

    fn median(&self, terms: &[f64; Weather::TERMS]) -> f64 {
        let [_, terms @ ..] = terms;
        f64::from(self.level) + self.median.sum(terms)
    }
}
