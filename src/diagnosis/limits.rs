//! When the compressor must stand still: a high side at its limit, or a circuit that is nearly empty or has air in it.

use super::case::Case;
use crate::circuit::{Derived, Estimate};
use crate::names::{Refrigerant, RestFinding, StopReason};
use crate::range::HIGH_CUT_OUT;
use crate::units::{GaugePressure, Pressure, in_kelvins};

/// Why the compressor must stand still, with the figures.
///
/// ```
/// use coldloop::circuit::{Gauge, Reading, Readings};
/// use coldloop::diagnosis::{Case, Settings, diagnose};
/// use coldloop::units::{GaugePressure, Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let mut van = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// van.high_cut_out = Some(GaugePressure::from_bar(27.0));
/// let readings = Readings {
///     high_side: Some(Reading::pressure(GaugePressure::from_bar(26.5), Gauge::HIGH_SIDE)),
///     ..Readings::default()
/// };
/// let day = Conditions::new(celsius(32.0), Surroundings::at_altitude(1_600.0)?);
/// let answer = diagnose(&Case::new(van, day, readings), &Settings::default())?;
/// let high_side = answer.stop.and_then(|stop| stop.high_side).expect("it is at its limit");
/// assert!(high_side.of_vehicle && high_side.read > high_side.stop);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Stop {
    /// Why.
    pub reason: StopReason,
    /// The high side and its limit; `None` for the other reasons.
    pub high_side: Option<HighSide>,
}

/// A high side near its limit or at it.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HighSide {
    /// The higher one of gauge and transducer.
    #[cfg_attr(feature = "serde", serde(rename = "read_pa"))]
    pub read: GaugePressure,
    /// From here on the compressor must stand still.
    #[cfg_attr(feature = "serde", serde(rename = "stop_pa"))]
    pub stop: GaugePressure,
    /// Whether the limit is that of the vehicle: 95 % of its stated cut-out.
    pub of_vehicle: bool,
}

/// From this part of the stated cut-out on, the compressor is switched off. Source: engineering judgement.
const OF_CUT_OUT: f64 = 0.95;
/// From this part of the limit on, a caution is given: 24 of 27 bar. Source: engineering judgement.
const NEAR: f64 = 24.0 / 27.0;
/// The lowest cut-out that makers print for R-134a and R-12, Pa gauge. Source: `tables/evidence/limits.csv`, eleven rows from 27 to
/// 34 kgf/cm2. Of the other refrigerants that a sound model covers, whose ordinary high sides lie below 24 bar: engineering
/// judgement.
const STOP_PA: f64 = 2.7e6;
/// The same of R-744, Pa gauge. Source: engineering judgement, where the control of the vehicle model reaches its own limit,
/// below the 14 MPa where protection takes over.
const STOP_R744_PA: f64 = 1.33e7;
/// The same as [`NEAR`] for R-744: 128 of 133 bar. Source: engineering judgement: its control works up to there.
const NEAR_R744: f64 = 128.0 / 133.0;
/// A running system whose high side condenses this far below the ambient has no liquid left: heat does not flow from cold to warm,
/// K. Source: physics; the margin, for sun and place of the thermometer, is engineering judgement.
const EMPTY_BELOW_K: f64 = 8.0;

/// Below this no high side is near any limit, Pa gauge; most readings end here. Source: the lowest cut-out that can be stated.
const FAR_PA: f64 = NEAR * OF_CUT_OUT * HIGH_CUT_OUT.low;

/// The high side and its limit; `None` where it was not read or is far below any limit, and at rest.
pub(super) fn high_side(case: &Case) -> Option<HighSide> {
    let (system, conditions) = (&case.system, &case.conditions);
    if conditions.at_rest(system.compressor) {
        return None;
    }
    let air_pa = conditions.surroundings.pressure().pa();
    let readings = [case.readings.high_side, case.readings.high_side_transducer];
    let read_pa = readings
        .into_iter()
        .flatten()
        .map(|reading| match reading.value {
            Pressure::Gauge(pressure) => pressure.pa(),
            Pressure::Absolute(pressure) => pressure.pa() - air_pa,
        })
        .reduce(f64::max)
        .filter(|read_pa| *read_pa >= FAR_PA)?;
    let stated_pa = system.high_cut_out.map(|pressure| OF_CUT_OUT * pressure.pa());
    Some(HighSide {
        read: GaugePressure::from_pa(read_pa),
        stop: GaugePressure::from_pa(stated_pa.unwrap_or_else(|| stop_pa(system.refrigerant))),
        of_vehicle: stated_pa.is_some(),
    })
}

/// From here on the compressor must stand still where the vehicle's own cut-out is not known, Pa gauge.
fn stop_pa(refrigerant: Refrigerant) -> f64 {
    if refrigerant == Refrigerant::R744 {
        STOP_R744_PA
    } else {
        STOP_PA
    }
}

impl HighSide {
    /// Whether the compressor must stand still.
    fn stops(&self) -> bool {
        self.read >= self.stop
    }

    /// Whether the pressure is near its limit and still below it.
    pub(super) fn is_near(&self, refrigerant: Refrigerant) -> bool {
        let near = if refrigerant == Refrigerant::R744 {
            NEAR_R744
        } else {
            NEAR
        };
        !self.stops() && self.read.pa() >= near * self.stop.pa()
    }
}

/// Why the compressor must stand still; `None` where it may run.
pub(super) fn stop(
    case: &Case,
    high_side: Option<HighSide>,
    derived: &Derived,
    rest: Option<RestFinding>,
) -> Option<Stop> {
    if let Some(high_side) = high_side.filter(HighSide::stops) {
        return Some(Stop {
            reason: StopReason::HighPressure,
            high_side: Some(high_side),
        });
    }
    let reason = match rest {
        Some(RestFinding::NearlyEmpty) => Some(StopReason::NearlyEmpty),
        Some(RestFinding::AirPresent) => Some(StopReason::AirPresent),
        Some(RestFinding::Consistent) => None,
        Some(RestFinding::NotEqualised) => empty_at_rest(case, derived).then_some(StopReason::NearlyEmpty),
        None => empty(case, derived).then_some(StopReason::NearlyEmpty),
    };
    reason.map(|reason| Stop {
        reason,
        high_side: None,
    })
}

/// Whether a running system has no liquid left, whatever the instruments may be off by.
fn empty(case: &Case, derived: &Derived) -> bool {
    let running = !case.conditions.at_rest(case.system.compressor);
    running
        && derived
            .condensing_above_ambient
            .is_some_and(|above| is_far_below(above.si(), 0.0))
}

/// Whether neither side of a system at rest has liquid left, though the two still differ: liquid would hold its side at saturation.
fn empty_at_rest(case: &Case, derived: &Derived) -> bool {
    let ambient_k = in_kelvins(case.conditions.ambient);
    let sides = [derived.low_dew, derived.high_dew];
    sides
        .iter()
        .all(|side| side.is_some_and(|dew| is_far_below(dew.si(), ambient_k)))
}

/// Whether a saturation temperature lies so far below the ambient that no liquid can be there, whatever the instruments may be off by.
fn is_far_below(dew: Estimate, ambient_k: f64) -> bool {
    dew.value + 2.0 * dew.standard_uncertainty < ambient_k - EMPTY_BELOW_K
}
