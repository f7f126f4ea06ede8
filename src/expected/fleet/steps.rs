//! Fitted coefficients in half the room of their digits.

/// Coefficients as counts of a step, the largest being 32,767 of them. What they give is within 0.01 K of what was fitted,
/// where the bands are a few K wide.
pub(super) struct Steps<const N: usize> {
    pub(super) step: f32,
    pub(super) counts: [i16; N],
}

impl<const N: usize> Steps<N> {
    /// The sum of the products with the first terms, in four strands that a machine can add side by side.
    pub(super) fn sum(&self, terms: &[f64]) -> f64 {
        let mut strands = [0.0; 4];
        for (counts, terms) in self.counts.chunks(4).zip(terms.chunks(4)) {
            for ((strand, count), term) in strands.iter_mut().zip(counts).zip(terms) {
                *strand += f64::from(*count) * term;
            }
        }
        f64::from(self.step) * ((strands[0] + strands[1]) + (strands[2] + strands[3]))
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]

    use super::super::constants::KINDS;
    use super::super::weather::{
        FLEET_AMBIENT, FLEET_BAROMETER, FLEET_BLOWER, FLEET_HUMIDITY_RATIO, FLEET_SPEED, Facts,
    };
    use rand::{RngExt, SeedableRng};
    use rand_chacha::ChaCha8Rng;

    #[test]
    fn the_bands_are_those_of_the_table() {
        let mut rng = ChaCha8Rng::seed_from_u64(0x57e9);
        let mut within = |range: crate::range::Range| rng.random_range(range.low..range.high);
        let weathers = core::array::from_fn::<_, 200, _>(|row| Facts {
            ambient_k: within(FLEET_AMBIENT),
            air_pa: within(FLEET_BAROMETER),
            humidity_ratio: within(FLEET_HUMIDITY_RATIO),
            relative_speed: 0.4 + 0.008 * row as f64,
            blower: within(FLEET_BLOWER),
            speed_m_s: within(FLEET_SPEED),
            recirculated: f64::from(row as u32 % 2),
        });
        let table = include_str!("../../../tables/bands/fleet.csv");
        let fitted = table.lines().filter(|row| !row.starts_with('#')).filter_map(|row| {
            let (_, part) = row.split(',').nth(3)?.split_once(' ')?;
            let coefficients: Vec<f64> = row.split(',').skip(4).map(|digits| digits.parse().unwrap()).collect();
            Some((part, coefficients))
        });
        let rows = KINDS.iter().flat_map(|kind| kind.rows);
        let compiled = rows.flat_map(|row| ["median", "down", "up"].map(|part| (part, row)));
        let (mut farthest, mut seen) = (0.0, 0);
        for ((part, coefficients), (same, row)) in fitted.zip(compiled) {
            assert_eq!(part, same);
            for weather in weathers {
                let weather = weather.weather();
                let terms = weather.terms();
                let exact: f64 = coefficients.iter().zip(terms).map(|(c, x)| c * x).sum();
                let stored = match part {
                    "median" => row.median(terms),
                    "down" => row.down.sum(terms),
                    _ => row.up.sum(terms),
                };
                farthest = f64::max(farthest, (stored - exact).abs());
            }
            seen += 1;
        }
        assert_eq!(seen, 3 * KINDS.iter().map(|kind| kind.rows.len()).sum::<usize>());
        assert!(farthest < 0.01, "{farthest} K");
    }
}
