//! The standard normal distribution.

use super::sqrt;

/// The standard normal quantile, to about 1e-9.
///
/// Source: Acklam's rational approximation (relative error 1.15e-9), public, 2003.
pub(crate) fn normal_quantile(p: f64) -> f64 {
    const A: [f64; 6] = [
        -3.969_683_028_665_376e1,
        2.209_460_984_245_205e2,
        -2.759_285_104_469_687e2,
        1.383_577_518_672_69e2,
        -3.066_479_806_614_716e1,
        2.506_628_277_459_239,
    ];
    const B: [f64; 5] = [
        -5.447_609_879_822_406e1,
        1.615_858_368_580_409e2,
        -1.556_989_798_598_866e2,
        6.680_131_188_771_972e1,
        -1.328_068_155_288_572e1,
    ];
    const C: [f64; 6] = [
        -7.784_894_002_430_293e-3,
        -3.223_964_580_411_365e-1,
        -2.400_758_277_161_838,
        -2.549_732_539_343_734,
        4.374_664_141_464_968,
        2.938_163_982_698_783,
    ];
    const D: [f64; 4] = [
        7.784_695_709_041_462e-3,
        3.224_671_290_700_398e-1,
        2.445_134_137_142_996,
        3.754_408_661_907_416,
    ];
    let along = |c: &[f64], x: f64| c.iter().fold(0.0, |sum, c| sum * x + c);
    let tail = |p: f64| {
        let q = sqrt(-2.0 * libm::log(p));
        along(&C, q) / (along(&D, q) * q + 1.0)
    };
    const LOW: f64 = 0.024_25;
    if p < LOW {
        tail(p)
    } else if p > 1.0 - LOW {
        -tail(1.0 - p)
    } else {
        let q = p - 0.5;
        let r = q * q;
        along(&A, r) * q / (along(&B, r) * r + 1.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_are_those_of_the_tables() {
        // Abramowitz & Stegun, table 26.5.
        for (p, z) in [
            (0.5, 0.0),
            (0.975, 1.959_963_985),
            (0.01, -2.326_347_874),
            (0.999, 3.090_232_306),
        ] {
            assert!((normal_quantile(p) - z).abs() < 5e-9, "{p}");
        }
    }
}
