//! Proof of repair: was the circuit dry and tight, does it hold what the label names, and does it cool now?
//!
//! Every judgement carries the uncertainty of its instruments, and says so where they cannot tell.

mod charge;
mod evacuation;
mod gas;
mod hold;
mod leak;
mod line;
mod pull_down;
mod repair;

pub use charge::{Balance, ChargeBook, Kept, MACHINE_SCALE_KG, USUAL_TOLERANCE_KG};
pub use evacuation::{DRY_PA, Evacuation, Vacuum};
pub use gas::DecayGas;
pub use hold::{Hold, HoldJudgement, LEAST_HOLD_S, Sample};
pub use leak::{Decay, Leak};
pub use pull_down::{PullDown, VentSample, pull_down};
pub use repair::{Proof, Seen, prove};
#[cfg(feature = "report")]
pub(crate) use repair::{compared, diagnose_after};

use crate::circuit::Estimate;

/// The share of a normal distribution's standard deviation that bounds the middle 95 %, rounded up as is the custom.
/// Source: JCGM 100:2008, 6.3.3.
const COVERAGE: f64 = 2.0;

impl Estimate {
    /// The end of the 95 % interval towards zero and beyond.
    fn low(self) -> f64 {
        self.value - COVERAGE * self.standard_uncertainty
    }

    /// The other end.
    fn high(self) -> f64 {
        self.value + COVERAGE * self.standard_uncertainty
    }
}
