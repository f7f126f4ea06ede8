//! Proof of repair: was the circuit dry and tight, does it hold what the label names, and does it cool now?
//!
//! Every judgement accounts for the uncertainty of its instruments, and says so where they cannot decide.

mod again;
mod change;
mod charge;
mod closing;
mod evacuation;
mod flow;
mod gas;
mod hold;
mod leak;
mod line;
mod pull_down;
mod repair;
mod rise;

#[cfg(feature = "report")]
pub(crate) use again::Again;
pub(crate) use again::{PROVING, left_to_read};
#[cfg(feature = "report")]
pub(crate) use change::Change;
pub use charge::{Balance, ChargeBook, Kept, LEAST_RECOVERED, MACHINE_SCALE, RECOVERY_SCALE, usual_tolerance};
pub use closing::{Closing, Proofs};
pub use evacuation::{DRY, Evacuation, Vacuum};
pub use gas::DecayGas;
pub use hold::{Hold, HoldJudgement, LEAST_HOLD, Rise, Sample};
pub use leak::{Decay, Leak, MOST_TEST, Served};
pub use pull_down::{PullDown, VentSample, pull_down};
pub(crate) use repair::judge_after;
pub use repair::{Proof, Seen, prove};
#[cfg(feature = "report")]
pub(crate) use repair::{changed, compared, judged_with};

use crate::circuit::{Estimate, Reading};
use crate::error::Error;
use crate::range::{ABSOLUTE_PRESSURE, GAUGE_PRESSURE};
use crate::units::{Pressure, Surroundings};

/// Coverage factor of the middle 95 % of a normal distribution, rounded up as is usual. Source: JCGM 100:2008, 6.3.3.
const COVERAGE: f64 = 2.0;

/// A pressure above vacuum, Pa; and by how much a gauge shows a pressure below vacuum, Pa, where that is more than the weather
/// explains.
///
/// A dial counts from the air of the place. Where it shows more vacuum than there is air, its zero is too low by at least as
/// much, or its scale counts from sea level. The pressure is then taken as 0 Pa, with the excess as a further uncertainty where
/// it is more than the gauge's own.
///
/// Errors: `NotFinite`, `OutOfRange` for pressures that no gauge shows.
fn above_vacuum(reading: Reading<Pressure>, air: Surroundings) -> Result<(Estimate, Option<f64>), Error> {
    let u_pa = ABSOLUTE_PRESSURE.check(reading.standard_uncertainty.pa())?;
    let shown_pa = match reading.value {
        Pressure::Absolute(pressure) => ABSOLUTE_PRESSURE.check(pressure.pa())?,
        Pressure::Gauge(pressure) => GAUGE_PRESSURE.check(pressure.pa())? + air.pressure().pa(),
    };
    let too_much_pa = f64::max(-shown_pa, 0.0);
    let off_pa = if too_much_pa > COVERAGE * u_pa {
        too_much_pa
    } else {
        0.0
    };
    let taken = Estimate {
        value: f64::max(shown_pa, 0.0),
        standard_uncertainty: libm::hypot(u_pa, off_pa),
    };
    let weather_pa = COVERAGE * air.standard_uncertainty().pa();
    Ok((taken, Some(too_much_pa).filter(|too_much_pa| *too_much_pa > weather_pa)))
}

impl Estimate {
    /// The lower end of the 95 % interval.
    fn low(self) -> f64 {
        self.value - COVERAGE * self.standard_uncertainty
    }

    /// The upper end of the 95 % interval.
    fn high(self) -> f64 {
        self.value + COVERAGE * self.standard_uncertainty
    }
}
