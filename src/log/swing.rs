//! The saw-tooth of the low side: where it turns, and whether a clutch makes it.

/// The least fall or rise after which the low side counts as turned, Pa. Source: engineering judgement: half of the narrowest swing
/// of a cycling switch (70 kPa, and 25 kPa for frozen moisture, both published) and ten times the noise of a transducer.
const TURNS_PA: f32 = 12_000.0;

/// A turn of the low side, seen once it has moved away from it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Turn {
    /// The lowest point: the clutch opened.
    Trough,
    /// The highest point: the clutch closed.
    Peak,
}

/// One cycle, from trough to trough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Cycle {
    pub(super) seconds: f32,
    /// Part of the cycle in which the low side falls, or the clutch is engaged where that is logged.
    pub(super) on: f32,
    /// Lowest and highest low side, Pa.
    pub(super) low: (f32, f32),
    /// Lowest and highest high side, Pa; NaN where it was not read.
    pub(super) high: (f32, f32),
    /// Whether the high side rises while the low side falls: a compressor that switches.
    pub(super) opposed: bool,
}

/// Follows the low side from turn to turn.
#[derive(Clone, Copy, Debug)]
pub(super) struct Swing {
    last: f32,
    last_high: f32,
    /// The furthest point since the last turn, and its time.
    extreme: f32,
    extreme_at: i64,
    falling: Option<bool>,
    trough: Option<(f32, i64)>,
    peak: Option<(f32, i64)>,
    high: (f32, f32),
    product: f32,
    /// Seconds with the clutch engaged, and with it known.
    clutch: (u32, u32),
}

impl Swing {
    pub(super) const NEW: Self = Self {
        last: f32::NAN,
        last_high: f32::NAN,
        extreme: f32::NAN,
        extreme_at: 0,
        falling: None,
        trough: None,
        peak: None,
        high: (f32::NAN, f32::NAN),
        product: 0.0,
        clutch: (0, 0),
    };

    /// Takes one second; returns a turn when one is seen, with a whole cycle from the second trough on.
    pub(super) fn push(&mut self, second: i64, low: f32, high: f32, clutch: f32) -> Option<(Turn, Option<Cycle>)> {
        if low.is_nan() {
            return None;
        }
        if !self.last.is_nan() && !(high - self.last_high).is_nan() {
            self.product += (low - self.last) * (high - self.last_high);
        }
        self.last = low;
        if !high.is_nan() {
            self.last_high = high;
            self.high = (self.high.0.min(high), self.high.1.max(high));
        }
        if !clutch.is_nan() {
            self.clutch.0 += u32::from(clutch > 0.5);
            self.clutch.1 += 1;
        }
        if self.extreme.is_nan() {
            (self.extreme, self.extreme_at) = (low, second);
            return None;
        }
        let falling = match self.falling {
            None => {
                if (low - self.extreme).abs() >= TURNS_PA {
                    self.falling = Some(low < self.extreme);
                    (self.extreme, self.extreme_at) = (low, second);
                }
                return None;
            }
            Some(falling) => falling,
        };
        let further = if falling {
            low <= self.extreme
        } else {
            low >= self.extreme
        };
        if further {
            (self.extreme, self.extreme_at) = (low, second);
            return None;
        }
        if (low - self.extreme).abs() < TURNS_PA {
            return None;
        }
        self.falling = Some(!falling);
        let turned = (self.extreme, self.extreme_at);
        (self.extreme, self.extreme_at) = (low, second);
        if !falling {
            self.peak = Some(turned);
            return Some((Turn::Peak, None));
        }
        let cycle = self.cycle(turned);
        self.trough = Some(turned);
        self.high = (self.last_high, self.last_high);
        (self.product, self.clutch) = (0.0, (0, 0));
        Some((Turn::Trough, cycle))
    }

    /// The cycle that ends at this trough.
    fn cycle(&self, (lowest, at): (f32, i64)) -> Option<Cycle> {
        let ((before, began), (highest, closed)) = (self.trough?, self.peak?);
        let seconds = (at - began) as f32;
        let on = match self.clutch {
            (on, known) if known > 0 => on as f32 / known as f32,
            _ => (at - closed) as f32 / seconds,
        };
        Some(Cycle {
            seconds,
            on,
            low: (0.5 * (before + lowest), highest),
            high: self.high,
            opposed: self.product < 0.0,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_saw_tooth_has_its_turns_its_period_and_its_share() {
        let (mut swing, mut cycles) = (Swing::NEW, 0);
        for second in 0..300_i64 {
            // Down in 8 s from 290 to 170 kPa, up in 22 s; the high side the other way.
            let at = second % 30;
            let down = if at < 8 {
                at as f32 / 8.0
            } else {
                1.0 - (at - 8) as f32 / 22.0
            };
            let turn = swing.push(second, 290e3 - 120e3 * down, 900e3 + 300e3 * down, f32::NAN);
            if let Some((Turn::Trough, Some(cycle))) = turn {
                cycles += 1;
                assert_eq!(cycle.seconds, 30.0);
                assert!((cycle.on - 8.0 / 30.0).abs() < 0.05 && cycle.opposed);
                assert!((cycle.low.0 - 170e3).abs() < 1.0 && (cycle.low.1 - 290e3).abs() < 6e3);
            }
        }
        // Ten troughs enclose nine cycles.
        assert_eq!(cycles, 9);
    }
}
