//! Hostile inputs, drawn: sound texts that were cut, doubled, overwritten and mixed, and numbers of any bits.

/// Marsaglia, Xorshift RNGs, J. Stat. Softw. 8 (2003) 14, the 64-bit triple (13, 7, 17).
pub(crate) struct Random(u64);

/// Words that replace parts of a text.
const WORDS: [&str; 24] = [
    "1e308",
    "-1e308",
    "1e-320",
    "nan",
    "inf",
    "-0.0",
    "9999999999999999999999",
    "\"\"",
    "\"\\u0000\"",
    "\"-1 psig\"",
    "\"1e9 bar abs\"",
    "true",
    "[[]]",
    "{}",
    "[undo]\n",
    "[[undo]]\n",
    "\"",
    "'''",
    "\\",
    "\n",
    "= ",
    "settings = { ",
    "-",
    "\u{202e}",
];

const NUMBERS: [f64; 10] = [
    f64::NAN,
    f64::INFINITY,
    f64::NEG_INFINITY,
    0.0,
    -0.0,
    f64::MIN_POSITIVE,
    5e-324,
    f64::MAX,
    f64::MIN,
    -1.0,
];

impl Random {
    /// The draws of one input.
    pub(crate) fn of(input: u64) -> Self {
        // Fibonacci hashing, so that the seeds of neighbouring inputs are unrelated.
        let mut random = Self((input + 1).wrapping_mul(0x9e37_79b9_7f4a_7c15));
        random.bits();
        random
    }

    pub(crate) fn bits(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0
    }

    pub(crate) fn below(&mut self, count: usize) -> usize {
        (self.bits() >> 16) as usize % count.max(1)
    }

    pub(crate) fn one_in(&mut self, count: usize) -> bool {
        self.below(count) == 0
    }

    pub(crate) fn pick<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.below(all.len())]
    }

    /// Mostly something sensible, otherwise a special number or any bits.
    pub(crate) fn number(&mut self, low: f64, high: f64) -> f64 {
        match self.below(12) {
            0 => self.pick(&NUMBERS),
            1 => f64::from_bits(self.bits()),
            _ => low + (high - low) * (self.bits() >> 11) as f64 / (1_u64 << 53) as f64,
        }
    }

    /// A text of these with up to seven changes.
    pub(crate) fn text(&mut self, sound: &[&str]) -> String {
        let mut text = self.pick(sound).as_bytes().to_vec();
        let most = 1 + self.below(8);
        for _ in 0..self.below(most) {
            let (one, other) = (self.below(text.len() + 1), self.below(text.len() + 1));
            let (from, to) = (one.min(other), one.max(other).min(one.min(other) + 200));
            match self.below(6) {
                0 => drop(text.drain(from..to)),
                1 => {
                    let copied = text[from..to].to_vec();
                    let at = self.below(text.len() + 1);
                    text.splice(at..at, copied);
                }
                2 => text.insert(from, self.bits() as u8),
                3 => {
                    let other = self.pick(sound).as_bytes();
                    let part = &other[self.below(other.len())..];
                    text.splice(from..from, part[..part.len().min(300)].iter().copied());
                }
                _ => {
                    // Replaces the value behind the next equals sign, colon or comma.
                    let at = text[from..]
                        .iter()
                        .position(|byte| *byte == b'=' || *byte == b':' || *byte == b',');
                    let at = at.map_or(from, |at| from + at + 1);
                    let end = text[at..]
                        .iter()
                        .position(|byte| matches!(byte, b'\n' | b',' | b'}'))
                        .map_or(at, |end| at + end);
                    text.splice(at..end, self.pick(&WORDS).bytes());
                }
            }
        }
        String::from_utf8_lossy(&text).into_owned()
    }
}
