//! A system at rest: what its pressure says.

use super::case::Case;
use super::fault_table::FAULTS;
use super::faults::HYPOTHESES;
use super::features;
use super::rows::{AtRest, SEVERITIES};
use crate::circuit::{Estimate, PressureMatch, Reading, at_rest};
use crate::mixture::Side;
use crate::names::{Reference, RestFinding};
use crate::saturation;
use crate::units::{PressureDifference, TemperatureDifference, in_kelvins, kelvins_difference};

/// How much of a circuit's volume the label's charge fills as liquid, the least and the most. Source: engineering judgement:
/// 500 to 900 g of R-134a in 2 to 3 L are 170 to 450 kg/m3, and its liquid weighs 1,207 kg/m3 at 25 °C.
const FILLING: (f64, f64) = (0.15, 0.37);

/// What is calculated from a pressure at rest.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Resting {
    /// The finding by [`at_rest`](crate::circuit::at_rest), for both sides together.
    pub(super) finding: RestFinding,
    /// The pressure above saturation at the ambient; of a blend above bubble.
    #[cfg_attr(feature = "serde", serde(rename = "excess_pa"))]
    pub excess: Estimate<PressureDifference>,
    /// The mole share of gas in the vapour space, where the excess is gas; 0 where there is none.
    pub gas_share: f64,
    /// How much warmer than the ambient all parts would be, if nothing but refrigerant is in the circuit.
    #[cfg_attr(feature = "serde", serde(rename = "warmer_k"))]
    pub warmer: TemperatureDifference,
    /// The least and the most of the label's charge that is missing, where no liquid is left; all of it may be where the
    /// pressure is no higher than that of the air, which may be all that is in the circuit.
    pub missing: Option<(f64, f64)>,
}

/// The finding and its numbers for a pressure at rest, with the ambient known within `ambient_error_k`; `None` where the sides
/// differ or nothing was read.
pub(super) fn resting(case: &Case, ambient_error_k: f64) -> Option<Resting> {
    let (pressure, warmer) = features::rest_pressure(case)?;
    let air = case.conditions.surroundings;
    let (refrigerant, ambient) = (case.system.refrigerant, case.conditions.ambient);
    let temperature = Reading::within(ambient, kelvins_difference(ambient_error_k));
    let found = at_rest(refrigerant, pressure, temperature, air).ok()?;
    let p_pa = pressure.value.absolute(air).pa();
    let missing = || {
        let (line, t_k) = (saturation::line_of(refrigerant), in_kelvins(ambient));
        let vapour = line.state_tp(t_k, p_pa, Reference::Iir).ok()?.rho_kg_m3;
        let liquid = line.density_kg_m3(Side::Bubble, t_k).ok()?;
        let [most, least] = [FILLING.0, FILLING.1].map(|filling| f64::min(vapour / (filling * liquid), 1.0));
        let may_be_air = p_pa <= air.pressure().pa() + 2.0 * pressure.standard_uncertainty.pa();
        Some((1.0 - most, if may_be_air { 1.0 } else { 1.0 - least }))
    };
    let (finding, missing) = match found.pressure_match {
        PressureMatch::Agrees => (RestFinding::Consistent, None),
        PressureMatch::TooHigh => (RestFinding::AirPresent, None),
        // Under a vacuum, where no density can be calculated, next to nothing of the charge is left.
        PressureMatch::TooLow => (RestFinding::NearlyEmpty, missing().or(Some((1.0, 1.0)))),
    };
    Some(Resting {
        finding,
        excess: found.excess,
        gas_share: found.gas_share,
        warmer: kelvins_difference(warmer.value),
        missing,
    })
}

/// Saturation temperature of a sound system at rest above the ambient, K: median, and standard deviations below and above it.
/// Sources: `tables/bands/healthy.toml`.
pub(super) use crate::expected::AT_REST;

/// The same when the cause is none of the list. Source: engineering judgement: about its physical range.
const ANYTHING_K: f64 = 12.0;
/// Standard deviation of the size of an effect between vehicles, as a share of that size. Source: engineering judgement.
const EFFECT_SPREAD: f64 = 0.3;
/// Factors, from mild to severe, of the table's chance that the pressure does not move although the fault is there. Source:
/// engineering judgement.
const UNMOVED: [f64; SEVERITIES] = [1.0, 0.8, 0.4, 0.1];

/// A normal distribution whose two halves have their own standard deviations.
#[derive(Clone, Copy)]
struct TwoHalves {
    median: f64,
    down: f64,
    up: f64,
}

impl TwoHalves {
    fn widened(self, by: f64) -> Self {
        Self {
            median: self.median,
            down: libm::hypot(self.down, by),
            up: libm::hypot(self.up, by),
        }
    }

    /// Deviation from the median, in standard deviations of its side.
    fn deviation(self, x: f64) -> f64 {
        let distance = x - self.median;
        distance / if distance < 0.0 { self.down } else { self.up }
    }

    /// Density of a t distribution with five degrees of freedom on either side, whose 95 % limits are those of the halves: one bad
    /// reading does not rule a fault out.
    fn density(self, x: f64) -> f64 {
        /// 1.95996 / 2.57058, and the peak 8 / (3 pi sqrt(5)).
        const SCALE: f64 = 0.762_459_4;
        const PEAK: f64 = 0.379_606_689_822_494_4;
        let z = self.deviation(x) / SCALE;
        let fall = 1.0 / (1.0 + z * z / 5.0);
        2.0 * PEAK / (SCALE * (self.down + self.up)) * fall * fall * fall
    }
}

fn sound() -> TwoHalves {
    let (median, down, up) = AT_REST;
    TwoHalves { median, down, up }
}

/// How far a pressure at rest lies from the median of sound systems, in standard deviations of vehicle and instrument.
pub(super) fn deviation(measured: Estimate) -> f64 {
    sound().widened(measured.standard_uncertainty).deviation(measured.value)
}

/// Density of a pressure at rest under every hypothesis.
pub(super) fn densities(measured: Estimate) -> [f64; HYPOTHESES] {
    let at = |distribution: TwoHalves| {
        distribution
            .widened(measured.standard_uncertainty)
            .density(measured.value)
    };
    let unmoved = at(sound());
    let any = TwoHalves {
        median: sound().median,
        down: ANYTHING_K,
        up: ANYTHING_K,
    };
    let mut densities = [at(any); HYPOTHESES];
    for (density, row) in densities.iter_mut().zip(&FAULTS) {
        let of = |effect: &AtRest| of_effect(effect, &row.weight, unmoved, &at);
        *density = row.at_rest.as_ref().map_or(unmoved, of);
    }
    densities
}

fn of_effect(effect: &AtRest, weight: &[f64; SEVERITIES], unmoved: f64, at: &dyn Fn(TwoHalves) -> f64) -> f64 {
    let each = effect.size.iter().zip(weight).zip(UNMOVED);
    let density = each.map(|((size, weight), unlikely)| {
        let stays = unlikely * effect.no_change;
        let moved = TwoHalves {
            median: sound().median + size,
            ..sound()
        };
        weight * (stays * unmoved + (1.0 - stays) * at(moved.widened(EFFECT_SPREAD * size)))
    });
    density.sum()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::diagnosis::faults::index;
    use crate::names::Fault;

    #[test]
    fn the_density_integrates_to_one() {
        let sum: f64 = (-40_000..40_000)
            .map(|k| 0.01 * sound().density(0.01 * f64::from(k)))
            .sum();
        assert!((sum - 1.0).abs() < 1e-4, "{sum}");
    }

    #[test]
    fn an_empty_system_and_one_with_air_in_it_are_told_apart() {
        let at = |value: f64| {
            densities(Estimate {
                value,
                standard_uncertainty: 0.5,
            })
        };
        let leads = |value: f64, fault: Fault| at(value)[index(fault)] > 3.0 * at(value)[index(Fault::NoFault)];
        assert!(leads(-25.0, Fault::Undercharge) && leads(9.0, Fault::NonCondensables));
        assert!(!leads(1.0, Fault::Undercharge) && !leads(1.0, Fault::NonCondensables));
    }
}
