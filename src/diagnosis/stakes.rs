//! What wrong answers cost, and from which probability on an answer is therefore given.

use super::case::Settings;
use crate::error::Error;
use crate::names::Quantity;
use crate::range::Range;

const MINUTES: Range = Range::new(Quantity::Cost, 0.0, 1e6);

/// What answers cost that turn out wrong, beside the cost of looking once more; all in minutes of work.
///
/// An answer that is right with the probability p and costs C when it is wrong costs (1 - p) C on average; it is given
/// when that is no more than another look, so from p = 1 - look / C on. Only the ratios matter. Source of the defaults:
/// engineering judgement; the usual repairs, weighed by how common they are, cost 160 minutes.
///
/// ```
/// use coldloop::diagnosis::{Settings, Stakes};
/// // Where a part fitted in vain costs five hours, it is named from 85 % on.
/// let dear = Stakes { sound_part: 300.0, ..Stakes::default() };
/// assert!((Settings::default().with_stakes(&dear)?.named - 0.85).abs() < 1e-12);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stakes {
    /// Another look before anything is said: a check, the way to the vehicle, its longer stay. Default 45.
    pub look: f64,
    /// A sound part replaced because it was named; sets `Settings::named`. Default 150.
    pub sound_part: f64,
    /// A fault missed because every figure lies in its band, which only a slight one leaves there; sets
    /// `Settings::healthy`. Default 60.
    pub missed_fault: f64,
    /// A search along a short list that does not hold the cause; sets `Settings::short_list`. Default 320, two of the usual repairs.
    pub wrong_list: f64,
    /// Everything read again although a fault of the list explains what was read; sets `Settings::nothing_fits`.
    /// Default 90.
    pub needless_repeat: f64,
}

impl Default for Stakes {
    fn default() -> Self {
        Self {
            look: 45.0,
            sound_part: 150.0,
            missed_fault: 60.0,
            wrong_list: 320.0,
            needless_repeat: 90.0,
        }
    }
}

impl Stakes {
    /// From which probability on an answer is given that costs so much when it is wrong.
    fn threshold(&self, wrong: f64) -> f64 {
        if wrong > self.look {
            1.0 - self.look / wrong
        } else {
            0.0
        }
    }

    pub(super) fn set(&self, settings: &mut Settings) {
        settings.named = self.threshold(self.sound_part);
        settings.healthy = self.threshold(self.missed_fault);
        settings.short_list = self.threshold(self.wrong_list);
        settings.nothing_fits = self.threshold(self.needless_repeat);
    }
}

impl Settings {
    /// The same with the thresholds that follow from these costs: `named`, `healthy`, `short_list` and `nothing_fits`.
    ///
    /// Errors: `NotFinite` and `OutOfRange` for costs below 0 or above 1e6 minutes.
    ///
    /// ```
    /// use coldloop::diagnosis::{Settings, Stakes};
    /// assert_eq!(Settings::default().with_stakes(&Stakes::default())?, Settings::default());
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn with_stakes(mut self, stakes: &Stakes) -> Result<Self, Error> {
        for cost in [
            stakes.look,
            stakes.sound_part,
            stakes.missed_fault,
            stakes.wrong_list,
            stakes.needless_repeat,
        ] {
            MINUTES.check(cost)?;
        }
        stakes.set(&mut self);
        Ok(self)
    }
}
