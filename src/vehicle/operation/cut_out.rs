//! A high-side cut-out that stops the compressor at one pressure and starts it again at a lower one: the mean and the swing that a
//! gauge shows.

use super::simulation::{Swing, low_side_pa};
use crate::error::Error;
use crate::units::{AbsolutePressure, Frequency};
use crate::vehicle::circuit::plant::Plant;
use crate::vehicle::circuit::solve::{Budget, Solution, steady};
use crate::vehicle::description::vehicle::Vehicle;

/// Heat capacity of the condenser's metal and refrigerant per that of the evaporator. Judgement.
pub(in crate::vehicle) const CONDENSER_RATIO: f64 = 1.6;
/// How far below the pressure of opening the switch closes again, Pa. From memory, makers' service texts: pressure switches
/// open at 27 to 32 bar and close 5 to 8 bar lower.
const BAND_PA: f64 = 0.6e6;
/// The part of the time at rest at which the mean has fallen half way to the middle of the band: with a switch that seldom opens the
/// needle stays near the top. Engineering judgement.
const HALF_REST: f64 = 0.05;
/// The high side is at the cut-out when it is as near as this, relative.
const NEAR: f64 = 1e-6;
/// The least running part, heat (W) and room for the low side (K).
const LEAST_RUNNING: f64 = 0.01;
const LEAST_W: f64 = 1.0;
const LEAST_K: f64 = 0.1;

/// The mean of the cycles of a system that is at its cut-out, and their swing; `None` where it is not. For a compressor with a
/// clutch that cycles: a variable or motor-driven one reduces its stroke or speed instead.
///
/// In `held` the demand is just small enough to keep the high side at the pressure of opening. The longer the compressor rests, the
/// lower the mean, by half the band at the most. While the compressor rests, the condenser cools through the band with
/// its mean heat; the evaporator warms meanwhile with its own, at most to the air before it.
///
/// Errors: those of [`steady`] and of the fluid.
pub(in crate::vehicle) fn on_cut_out(
    plant: &Plant,
    vehicle: &Vehicle,
    held: &Solution,
    budget: &mut Budget,
) -> Result<Option<(Solution, Swing)>, Error> {
    let opens_pa = plant.high_limit_pa;
    let rest = 1.0 - held.point.demand / plant.demand.most;
    let stands = held.cycle.upper.discharge_pa > opens_pa * (1.0 - NEAR) && rest > 0.0;
    if !stands {
        return Ok(None);
    }
    let mut lower = *plant;
    lower.high_limit_pa = opens_pa - 0.5 * BAND_PA * rest / (rest + HALF_REST);
    let mean = steady(&lower, Some(held.point), budget)?;

    let fluid = &plant.fluid;
    let upper = &mean.cycle.upper;
    let closes_pa = opens_pa - BAND_PA;
    let h = &plant.hardware;
    let running = (mean.point.demand / plant.demand.most).clamp(LEAST_RUNNING, 1.0 - LEAST_RUNNING);
    let band_k = fluid.dew_k(opens_pa)? - fluid.dew_k(closes_pa)?;
    let resting_s = CONDENSER_RATIO * h.evaporator_heat_j_k * band_k / upper.heat_w.max(LEAST_W);
    let low_k = fluid.dew_k(upper.suction_pa)?;
    let warms_k = resting_s * mean.cycle.front.heat_w / h.evaporator_heat_j_k;
    let half_k = (0.5 * warms_k).min((0.5 * (mean.point.intake_k - low_k)).max(LEAST_K));
    let port_pa = low_side_pa(vehicle, upper) - upper.suction_pa;
    let lost_pa = plant.high_side_pa(upper) - upper.discharge_pa;
    Ok(Some((
        mean,
        Swing {
            low_side: (
                AbsolutePressure::from_pa(fluid.dew_pa(low_k - half_k)? + port_pa),
                AbsolutePressure::from_pa(fluid.dew_pa(low_k + half_k)? + port_pa),
            ),
            high_side: (
                AbsolutePressure::from_pa(closes_pa + lost_pa),
                AbsolutePressure::from_pa(opens_pa + lost_pa),
            ),
            cycles: Frequency::from_hz((1.0 - running) / resting_s),
            engaged: running,
        },
    )))
}
