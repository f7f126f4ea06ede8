//! Further inputs that move what the sources say of a sound system: the fan's command, the evaporators, the ports.

use super::known_table::KNOWN;
use super::sources::Said;
use super::weather::Facts;
use crate::names::{Compressor, Expansion, HighPort, LowPort, Refrigerant};
use crate::numerics::multivariate_t::{DIMENSIONS, Symmetric, Vector};
use crate::vehicle::{Conditions, System};

/// Shift of every feature and factor on its standard deviation.
pub(super) struct Cell {
    pub(super) shift: [f32; DIMENSIONS],
    pub(super) factor: [f32; DIMENSIONS],
}

/// One input by expansion device; by compressor: clutch, variable, electric; by ambient; by speed; by air: fresh, recirculated.
pub(super) type Cells = [[[[[Cell; 2]; SPEEDS.len()]; AMBIENTS_K.len()]; 3]; 2];

/// Ambients and speeds of the table; beyond its ends it is held constant. Speeds are per 1,500 rpm of the engine or 6,000 of a motor.
const AMBIENTS_K: [f64; 3] = [293.15, 303.15, 313.15];
const SPEEDS: [f64; 2] = [800.0 / 1_500.0, 2_000.0 / 1_500.0];

/// The table, input by input.
pub(super) struct Table {
    /// A fan commanded to a quarter, to half, and to its full speed.
    pub(super) fan: [Cells; 3],
    /// One evaporator, two.
    pub(super) evaporators: [Cells; 2],
    /// At the compressor, at the evaporator.
    pub(super) low_port: [Cells; 2],
    /// On the liquid line, on the discharge line.
    pub(super) high_port: [Cells; 2],
}

/// The least command of a fan in the table.
const LEAST_COMMAND: f64 = 0.25;

/// Vehicle speed at which half of the effect of a fan's command is left, m/s, because hot air then recirculates less. Source:
/// draws of the vehicle model, in which 0.2 to 0.9 is left at 5 m/s and 0.05 to 0.3 at 12 m/s.
const HALF_LEFT_M_S: f64 = 4.0;

/// What is known moves the mean of every source, and scales its spread.
pub(super) struct Known {
    shift: Vector,
    factor: Vector,
    /// Standard deviation of the features for a fan below the least command of the table.
    doubt: Vector,
}

impl Known {
    /// `None` where none of these inputs is known, and for R-744, which is not in the table. R-152a and the refrigerants of
    /// buses have the shifts of R-134a.
    ///
    /// A fan's effect is linear in 1 / command, as the warming of its air is, and fades with the vehicle's speed, as
    /// recirculation of hot air does. Below 0.25 a command counts as 0.25, with an uncertainty of as much as the effect grows
    /// from 0.5 to 0.25.
    pub(super) fn of(system: &System, conditions: &Conditions, facts: &Facts) -> Option<Self> {
        let ports = system.low_port.is_some() || system.high_port.is_some();
        let any = ports || system.evaporators.is_some() || conditions.fan_command.is_some();
        if !any || system.refrigerant == Refrigerant::R744 {
            return None;
        }
        let at = At::of(system, facts);
        let [quarter, half, full] = &KNOWN.fan;
        let mut known = Self {
            shift: [0.0; DIMENSIONS],
            factor: [1.0; DIMENSIONS],
            doubt: [0.0; DIMENSIONS],
        };
        if let Some(command) = conditions.fan_command {
            let slow = facts.speed_m_s / HALF_LEFT_M_S;
            let left = 1.0 / (1.0 + slow * slow);
            let resistance = 1.0 / f64::max(command, LEAST_COMMAND);
            // Linear between 1, 2 and 4: the inverse of full, half and a quarter.
            let (part, from, to) = if resistance < 2.0 {
                (resistance - 1.0, full, half)
            } else {
                (0.5 * (resistance - 2.0), half, quarter)
            };
            known.add(&at, from, left * (1.0 - part));
            known.add(&at, to, left * part);
            let below = f64::max(1.0 - command / LEAST_COMMAND, 0.0);
            if below > 0.0 {
                let (quarter, half) = (at.cell(quarter).0, at.cell(half).0);
                known.doubt = core::array::from_fn(|i| left * below * (quarter[i] - half[i]));
            }
        }
        if let Some(number) = system.evaporators {
            let [one, two] = &KNOWN.evaporators;
            known.add(&at, if number > 1 { two } else { one }, 1.0);
        }
        if let Some(port) = system.low_port {
            let [compressor, evaporator] = &KNOWN.low_port;
            let cells = match port {
                LowPort::Compressor => compressor,
                LowPort::Evaporator => evaporator,
            };
            known.add(&at, cells, 1.0);
        }
        if let Some(port) = system.high_port {
            let [liquid, discharge] = &KNOWN.high_port;
            let cells = match port {
                HighPort::Liquid => liquid,
                HighPort::Discharge => discharge,
            };
            known.add(&at, cells, 1.0);
        }
        Some(known)
    }

    /// Adds a part of the effect of an input.
    fn add(&mut self, at: &At, cells: &Cells, part: f64) {
        let (shift, factor) = at.cell(cells);
        for i in 0..DIMENSIONS {
            self.shift[i] += part * shift[i];
            self.factor[i] *= 1.0 + part * (factor[i] - 1.0);
        }
    }

    /// Moves the mean of a source and scales rows and columns of its spread, which stays positive definite.
    pub(super) fn apply(&self, said: &mut Said) {
        for i in 0..DIMENSIONS {
            said.mean[i] += self.shift[i];
        }
        said.lasting = said.lasting.scaled(&self.factor);
        said.passing = said.passing.scaled(&self.factor);
    }

    /// Adds the doubt to the passing spread.
    pub(super) fn add_doubt(&self, passing: &mut Symmetric) {
        passing.add_along(&self.doubt);
    }
}

/// Where in the table these conditions lie.
struct At {
    expansion: usize,
    compressors: usize,
    /// Weights of the ambients, of the speeds, and of fresh and recirculated air.
    ambients: [f64; AMBIENTS_K.len()],
    speeds: [f64; SPEEDS.len()],
    airs: [f64; 2],
}

impl At {
    fn of(system: &System, facts: &Facts) -> Self {
        let [cold, mild, hot] = AMBIENTS_K;
        let rise = |from: f64, to: f64| f64::clamp((facts.ambient_k - from) / (to - from), 0.0, 1.0);
        let (up_to_mild, up_to_hot) = (rise(cold, mild), rise(mild, hot));
        let [slow, fast] = SPEEDS;
        let speed = libm::log(facts.relative_speed / slow) / libm::log(fast / slow);
        let speed = speed.clamp(0.0, 1.0);
        Self {
            expansion: match system.expansion {
                Expansion::Txv => 0,
                Expansion::OrificeTube => 1,
            },
            compressors: match system.compressor {
                Compressor::FixedClutch => 0,
                Compressor::VariableInternal | Compressor::VariableExternal => 1,
                Compressor::Electric => 2,
            },
            ambients: [1.0 - up_to_mild, up_to_mild - up_to_hot, up_to_hot],
            speeds: [1.0 - speed, speed],
            airs: [1.0 - facts.recirculated, facts.recirculated],
        }
    }

    /// Shift and factor of an input.
    fn cell(&self, cells: &Cells) -> (Vector, Vector) {
        let (mut shift, mut factor) = ([0.0; DIMENSIONS], [0.0; DIMENSIONS]);
        let rows = &cells[self.expansion][self.compressors];
        for (row, warm) in rows.iter().zip(self.ambients) {
            for (row, fast) in row.iter().zip(self.speeds) {
                for (cell, air) in row.iter().zip(self.airs) {
                    let weight = warm * fast * air;
                    for i in 0..DIMENSIONS {
                        shift[i] += weight * f64::from(cell.shift[i]);
                        factor[i] += weight * f64::from(cell.factor[i]);
                    }
                }
            }
        }
        (shift, factor)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)] // a test ends that way
mod tests {
    use super::*;
    use crate::circuit::FeatureVector;
    use crate::names::AirSource;
    use crate::units::{RotationalSpeed, Speed, Surroundings, celsius};

    fn van() -> System {
        System::new(Refrigerant::R134a, Expansion::Txv, Compressor::VariableInternal)
    }

    fn day(rpm: f64, speed_m_s: f64) -> Conditions {
        Conditions {
            engine_speed: Some(RotationalSpeed::from_hz(rpm / 60.0)),
            air_source: Some(AirSource::Fresh),
            vehicle_speed: Some(Speed::from_m_s(speed_m_s)),
            ..Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL)
        }
    }

    fn known(conditions: &Conditions) -> Known {
        Known::of(&van(), conditions, &Facts::of(&van(), conditions).unwrap()).unwrap()
    }

    fn commanded(command: f64, speed_m_s: f64) -> Known {
        known(&Conditions {
            fan_command: Some(command),
            ..day(800.0, speed_m_s)
        })
    }

    /// 30 °C, 800 and 2,000 rpm and fresh air stand in the table itself; between the speeds it is linear in their logarithm, so that
    /// the geometric mean takes half of each.
    #[test]
    fn in_a_cell_of_the_table_its_own_row_is_said() {
        let cells = &KNOWN.fan[0][0][1][1];
        let said = |rpm: f64| At::of(&van(), &Facts::of(&van(), &day(rpm, 0.0)).unwrap()).cell(&KNOWN.fan[0]);
        let rows = [said(800.0), said(2_000.0), said(libm::sqrt(800.0 * 2_000.0))];
        for i in 0..DIMENSIONS {
            let of = |fast: usize| (f64::from(cells[fast][0].shift[i]), f64::from(cells[fast][0].factor[i]));
            let (slow, fast) = (of(0), of(1));
            let half = (0.5 * (slow.0 + fast.0), 0.5 * (slow.1 + fast.1));
            for ((shift, factor), wanted) in rows.iter().zip([slow, fast, half]) {
                assert!(
                    (shift[i] - wanted.0).abs() < 1e-9 && (factor[i] - wanted.1).abs() < 1e-9,
                    "{i}"
                );
            }
        }
    }

    /// A fan at full, at half and at a quarter of its speed is a row of the table each; below a quarter the shift stays, and only the
    /// doubt grows.
    #[test]
    fn a_fan_is_said_at_full_half_and_a_quarter_of_its_speed() {
        let at = At::of(&van(), &Facts::of(&van(), &day(800.0, 0.0)).unwrap());
        let [quarter, half, full] = &KNOWN.fan;
        for (command, cells) in [(1.0, full), (0.5, half), (0.25, quarter), (0.15, quarter)] {
            let (shift, factor) = at.cell(cells);
            let known = commanded(command, 0.0);
            for i in 0..DIMENSIONS {
                assert!((known.shift[i] - shift[i]).abs() < 1e-9, "{command} {i}");
                assert!((known.factor[i] - factor[i]).abs() < 1e-9, "{command} {i}");
            }
        }
        let high = FeatureVector::HIGH_SIDE;
        assert!(commanded(0.26, 0.0).shift[high] < commanded(0.25, 0.0).shift[high]);
        let doubted = |command: f64| commanded(command, 0.0).doubt[high] > 0.0;
        assert_eq!((doubted(0.255), doubted(0.245)), (false, true));
    }

    /// At 4 m/s, 14 km/h, half of the effect of a fan is left: at 5 m/s the vehicle model leaves 0.2 to 0.9 of it, at 12 m/s 0.05 to 0.3.
    #[test]
    fn the_effect_of_a_fan_fades_with_the_speed() {
        let high = FeatureVector::HIGH_SIDE;
        let left = |speed_m_s: f64| commanded(0.25, speed_m_s).shift[high] / commanded(0.25, 0.0).shift[high];
        assert!((left(4.0) - 0.5).abs() < 0.02, "{}", left(4.0));
        assert!((0.2..0.9).contains(&left(5.0)) && (0.05..0.3).contains(&left(12.0)));
    }

    /// What is known moves the mean of every source as the table has it.
    #[test]
    fn what_is_known_moves_the_mean() {
        let with = Conditions {
            fan_command: Some(0.25),
            ..day(800.0, 0.0)
        };
        let [told, untold] = [&with, &day(800.0, 0.0)].map(|day| super::super::SoundModel::of(&van(), day).unwrap());
        let shift = commanded(0.25, 0.0).shift;
        assert!(shift[FeatureVector::HIGH_SIDE] > 2.0);
        for (told, untold) in told.components().iter().zip(untold.components()) {
            for (i, shift) in shift.iter().enumerate() {
                assert!((told.mean[i] - untold.mean[i] - shift).abs() < 1e-6, "{i}");
            }
        }
    }
}
