//! A clutch that cycles: the mean of many cycles, the swing of one, and how many a minute.

use super::cut_out::{CONDENSER_RATIO, on_cut_out};
use super::simulation::{Swing, low_side_pa};
use crate::error::Error;
use crate::units::{AbsolutePressure, Frequency};
use crate::vehicle::circuit::plant::{Control, Plant};
use crate::vehicle::circuit::solve::{Budget, Solution, steady};
use crate::vehicle::circuit::unknowns::Point;
use crate::vehicle::description::vehicle::{ClutchSense, Vehicle};

/// The least part of the evaporator's heat capacity that counts for the pressure: its refrigerant and the tubes next to it.
const LEAST_WETTED: f64 = 0.08;

/// Where in the band the mean lies, `MEAN_OF_BAND * u / (u + HALF_BEYOND)`, when a compressor that runs through would settle
/// `u` bands below the point at which the clutch opens. Fitted to first-order cooling, `1 / ln(1 + 1 / u) - u`, within a
/// twelfth of the band from u = 0.1 on (`tables/vehicle/README.md`).
const MEAN_OF_BAND: f64 = 0.42;
const HALF_BEYOND: f64 = 0.08;
/// The heat capacity that counts for the pressure when the accumulator holds no liquid, per that when it does, and the fill half
/// way between. Judgement: without boiling liquid in the accumulator only the wet tubes count.
const EMPTY: f64 = 0.3;
const HALF_WAY_FILL: f64 = 0.05;

/// Bounds that keep the swing finite in a nearly empty circuit: quickest and slowest time constant of the condenser (s), least part
/// of the time that the clutch is on or off, least heat (W).
const QUICKEST_S: f64 = 1e-3;
const SLOWEST_S: f64 = 1e5;
const LEAST_PART: f64 = 1e-3;
const LEAST_W: f64 = 1.0;

/// Delay of a fin thermostat, s; a pressure switch has none. Judgement.
const THERMOSTAT_LAG_S: f64 = 3.0;

/// The state of a fixed compressor: running through (looked for near `first`, where that is given), or the mean of its cycles.
///
/// Running through is tried first; where that would take the low side (or the fins) below the point at which the clutch opens,
/// the clutch cycles. Its mean state is that of a compressor with its displacement reduced to the part of the time that it
/// runs, held within the band: just above the point of opening when it seldom opens, so that the mean is continuous with that
/// of running through. The evaporator's heat capacity C swings through the band dT with `f = (1 - d) Q / (C dT)` cycles per
/// second, d being the running part and Q the mean capacity: a period is the time to cool by dT with the capacity in excess of
/// the load, and to warm by dT with the load. A thermostat responds with a delay, so that the fins go beyond both ends of its
/// band, towards where they would settle.
///
/// Only the wetted part of the evaporator counts for C: a starved one cools and warms quickly, so that a system
/// low on charge cycles rapidly.
pub(in crate::vehicle) fn cycling(
    plant: &Plant,
    vehicle: &Vehicle,
    first: Option<Point>,
    budget: &mut Budget,
) -> Result<(Solution, Option<Swing>), Error> {
    let through = steady(plant, first, budget)?;
    let beyond = beyond(plant, vehicle, &through);
    if plant.icing || beyond <= 0.0 {
        let on_cut_out = on_cut_out(plant, vehicle, &through, budget)?;
        return Ok(on_cut_out.map_or((through, None), |(mean, swing)| (mean, Some(swing))));
    }
    let mut held = *plant;
    held.control = clutch_control(
        plant,
        vehicle.clutch_sense,
        MEAN_OF_BAND * beyond / (beyond + HALF_BEYOND),
    );
    let mean = steady(&held, Some(through.point), budget)?;
    let swing = swing(plant, vehicle, &through, &mean)?;
    Ok((mean, swing))
}

/// How far running through would take the low side or the fins beyond where the clutch opens, per the band.
fn beyond(plant: &Plant, vehicle: &Vehicle, through: &Solution) -> f64 {
    let h = &plant.hardware;
    match vehicle.clutch_sense {
        ClutchSense::LowSide => (plant.air_pa + h.switch_opens_pa - through.cycle.upper.suction_pa) / h.switch_band_pa,
        ClutchSense::Fins => {
            (h.thermostat_opens_k - through.cycle.front.felt_k(through.point.intake_k)) / h.thermostat_band_k
        }
        ClutchSense::Neither => f64::NEG_INFINITY,
    }
}

/// The control that is equivalent to a cycling clutch.
fn clutch_control(plant: &Plant, sense: ClutchSense, above: f64) -> Control {
    let h = &plant.hardware;
    match sense {
        ClutchSense::LowSide => Control::LowSide {
            set_pa: plant.air_pa + h.switch_opens_pa + above * h.switch_band_pa,
        },
        ClutchSense::Fins => Control::Fin {
            set_k: h.thermostat_opens_k + above * h.thermostat_band_k,
        },
        ClutchSense::Neither => Control::None,
    }
}

fn swing(plant: &Plant, vehicle: &Vehicle, through: &Solution, mean: &Solution) -> Result<Option<Swing>, Error> {
    let h = &plant.hardware;
    let fluid = &plant.fluid;
    let upper = &mean.cycle.upper;
    let wetted = through.cycle.front.boiling.max(LEAST_WETTED);
    let fill = through.cycle.accumulator_fill;
    let pool = if plant.receiver {
        1.0
    } else {
        EMPTY + (1.0 - EMPTY) * fill / (fill + HALF_WAY_FILL)
    };
    let heat_j_k = h.evaporator_heat_j_k * wetted * pool;
    let engaged = mean.point.demand.clamp(LEAST_PART, 1.0 - LEAST_PART);
    // How fast the evaporator warms while the clutch rests; it cools (1 - d) / d as fast while it is engaged.
    let warming_k_s = mean.cycle.front.heat_w.max(LEAST_W) / heat_j_k;
    let (low_pa, high_pa, band_k) = match vehicle.clutch_sense {
        ClutchSense::LowSide => {
            let low = plant.air_pa + h.switch_opens_pa;
            let high = low + h.switch_band_pa;
            (low, high, fluid.dew_k(high)? - fluid.dew_k(low)?)
        }
        ClutchSense::Fins => {
            let full = &through.cycle;
            let cooling_k_s = warming_k_s * (1.0 - engaged) / engaged;
            let closes_k = h.thermostat_opens_k + h.thermostat_band_k;
            let full_k = full.front.felt_k(through.point.intake_k);
            let low_k = h.thermostat_opens_k - beyond_k(h.thermostat_opens_k - full_k, cooling_k_s);
            let high_k = closes_k + beyond_k(mean.point.intake_k - closes_k, warming_k_s);
            // While it runs, the refrigerant lies as far below the fins as when running through; while it rests, it
            // comes up to them.
            let below_k = full_k - fluid.dew_k(full.upper.suction_pa)?;
            let low = fluid.dew_pa(low_k - below_k)?;
            let high = fluid.dew_pa(high_k)?;
            (low.min(upper.suction_pa), high.max(upper.suction_pa), high_k - low_k)
        }
        ClutchSense::Neither => return Ok(None),
    };
    let port_pa = low_side_pa(vehicle, upper) - upper.suction_pa;
    let period_s = band_k / ((1.0 - engaged) * warming_k_s);

    // The condensing temperature above ambient follows pulses of heat that are on for the part d of the time, at its own pace:
    // it tends to 1 / d of its mean while the clutch is engaged, and to zero while it rests.
    let condensing_k = fluid.dew_k(upper.condensing.p_pa)?;
    let above_ambient_k = (condensing_k - plant.draught.standing.t_k).max(0.0);
    let pace_s = CONDENSER_RATIO * h.evaporator_heat_j_k * above_ambient_k / upper.heat_w;
    let fading = |time_s: f64| 1.0 - libm::exp(-time_s / pace_s.clamp(QUICKEST_S, SLOWEST_S));
    let most_k = above_ambient_k / engaged * fading(engaged * period_s) / fading(period_s);
    let least_k = most_k * (1.0 - fading((1.0 - engaged) * period_s));
    let high_side_pa =
        |now_k: f64| Ok::<_, Error>(fluid.dew_pa(condensing_k - above_ambient_k + now_k)? + upper.gas_pa);
    Ok(Some(Swing {
        low_side: (
            AbsolutePressure::from_pa(low_pa + port_pa),
            AbsolutePressure::from_pa(high_pa + port_pa),
        ),
        high_side: (
            AbsolutePressure::from_pa(high_side_pa(least_k)?.min(upper.condenser_pa)),
            AbsolutePressure::from_pa(
                high_side_pa(most_k)?
                    .max(upper.condenser_pa)
                    .min(fluid.highest_pa() + upper.gas_pa),
            ),
        ),
        cycles: Frequency::from_hz(1.0 / period_s),
        engaged,
    }))
}

/// How far the fins overshoot the point of the thermostat, K: they tend to a temperature `rest_k` beyond it, at first at the rate
/// `rate_k_s`.
fn beyond_k(rest_k: f64, rate_k_s: f64) -> f64 {
    if rest_k > 0.0 {
        rest_k * (1.0 - libm::exp(-rate_k_s * THERMOSTAT_LAG_S / rest_k))
    } else {
        0.0
    }
}
