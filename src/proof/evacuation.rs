//! Is the vacuum deep enough for water to leave?

use super::above_vacuum;
use crate::air::{water_boiling_point_k, water_saturation_pressure_pa};
use crate::circuit::{Estimate, Reading};
use crate::error::Error;
use crate::names::EvacuationFinding;
use crate::range::{LINE_TEMPERATURE, TEMPERATURE};
use crate::units::{
    AbsolutePressure, GaugePressure, Pressure, PressureDifference, Surroundings, Temperature, difference_in_kelvins,
    in_kelvins,
};

/// A circuit that reaches this pressure counts as dry: 1,000 micron.
///
/// Source: common practice, no source: 500 to 1,000 micron, then a hold.
pub const DRY: AbsolutePressure = AbsolutePressure::from_microns(1_000.0);

/// Below this pressure, Pa, water that boils turns into ice first. Source: triple point of water, 611.657 Pa
/// (Guildner, Johnson & Jones 1976).
const TRIPLE_POINT_PA: f64 = 611.657;

/// What a vacuum pump has reached.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Evacuation {
    /// The pressure reached; from an absolute vacuum gauge, or from a compound gauge.
    pub reached: Reading<Pressure>,
    /// The coldest part of the circuit; the ambient when nothing is colder.
    pub coldest: Reading<Temperature>,
    /// The air at the place, against which a compound gauge counts.
    pub surroundings: Surroundings,
}

/// The judgement of the pressure reached.
///
/// ```
/// use coldloop::{EvacuationFinding, intake};
/// let visit = intake::visit_from_toml(include_str!("../../examples/readings/repaired-van.toml"))?;
/// let vacuum = visit.prove()?.evacuation.expect("it was evacuated");
/// assert_eq!(vacuum.finding, EvacuationFinding::Deep);
/// assert!(vacuum.reached.value < vacuum.water.value);
/// # Ok::<(), coldloop::intake::Refusal>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Vacuum {
    /// The judgement.
    pub finding: EvacuationFinding,
    /// Pressure reached.
    pub reached: Estimate<AbsolutePressure>,
    /// Pressure below which water boils in the coldest part.
    pub water: Estimate<AbsolutePressure>,
    /// Temperature at which water boils under the pressure reached; `None` where the pressure is less than its
    /// own uncertainty.
    pub boiling_point: Option<Estimate<Temperature>>,
    /// The deepest vacuum that a compound gauge can show here: minus the pressure of the surrounding air.
    pub deepest: GaugePressure,
    /// By how much a compound gauge shows more vacuum than there is air at the place; `None` where that is no more than the
    /// weather. The gauge is off by as much at least, and the pressure is taken for 0 Pa.
    pub zero_off: Option<PressureDifference>,
    /// Whether water freezes as it boils: warm the cold parts, or let nitrogen in and start again.
    pub water_freezes: bool,
}

impl Evacuation {
    /// Judges the pressure reached: water leaves a circuit only where it boils.
    ///
    /// The boiling point follows from [`water_boiling_point_k`] (Hyland & Wexler 1983); a compound gauge counts
    /// from the air of the place, and so shows less at altitude.
    ///
    /// Errors: `NotFinite`; `OutOfRange` for a pressure that no gauge shows, or a temperature that no part of a circuit has.
    ///
    /// ```
    /// use coldloop::EvacuationFinding;
    /// use coldloop::circuit::{Gauge, Reading};
    /// use coldloop::proof::Evacuation;
    /// use coldloop::units::{
    ///     AbsolutePressure, GaugePressure, Pressure, PressureDifference, Surroundings, celsius, kelvins_difference,
    /// };
    /// let mut evacuation = Evacuation {
    ///     reached: Reading::within(AbsolutePressure::from_microns(420.0).into(), PressureDifference::from_pa(8.0)),
    ///     coldest: Reading::within(celsius(18.0), kelvins_difference(1.0)),
    ///     surroundings: Surroundings::at_altitude(1_600.0)?,
    /// };
    /// assert_eq!(evacuation.judge()?.finding, EvacuationFinding::Deep);
    /// // The dial of a manifold: 24 inches of vacuum are nearly all of it at 1,600 m, and the dial is too coarse for the rest.
    /// evacuation.reached = Reading::pressure(GaugePressure::from_inhg_vacuum(24.0), Gauge::LOW_SIDE);
    /// assert_eq!(evacuation.judge()?.finding, EvacuationFinding::GaugeCannotTell);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn judge(&self) -> Result<Vacuum, Error> {
        let air_pa = self.surroundings.pressure().pa();
        let air_u_pa = match self.reached.value {
            Pressure::Absolute(_) => 0.0,
            Pressure::Gauge(_) => self.surroundings.standard_uncertainty().pa(),
        };
        let reached = Reading {
            value: self.reached.value,
            standard_uncertainty: PressureDifference::from_pa(libm::hypot(
                self.reached.standard_uncertainty.pa(),
                air_u_pa,
            )),
        };
        let (reached_pa, zero_off_pa) = above_vacuum(reached, self.surroundings)?;
        let water_pa = water(self.coldest)?;
        let finding = if reached_pa.low() > water_pa.high() {
            EvacuationFinding::WaterStays
        } else if reached_pa.high() <= f64::min(DRY.pa(), water_pa.low()) {
            EvacuationFinding::Deep
        } else if reached_pa.high() < water_pa.low() {
            EvacuationFinding::WaterBoils
        } else {
            EvacuationFinding::GaugeCannotTell
        };
        Ok(Vacuum {
            finding,
            reached: Estimate::from_si(reached_pa),
            water: Estimate::from_si(water_pa),
            boiling_point: boiling_point(reached_pa).map(Estimate::from_si),
            deepest: GaugePressure::from_pa(-air_pa),
            zero_off: zero_off_pa.map(PressureDifference::from_pa),
            water_freezes: reached_pa.high() < TRIPLE_POINT_PA,
        })
    }
}

/// Saturation pressure of water in a part of the circuit, Pa.
pub(super) fn water(part: Reading<Temperature>) -> Result<Estimate, Error> {
    let t_k = LINE_TEMPERATURE.check(in_kelvins(part.value))?;
    let u_k = TEMPERATURE.check(difference_in_kelvins(part.standard_uncertainty))?;
    let at = water_saturation_pressure_pa;
    let slope = (at(t_k + 0.5)? - at(t_k - 0.5)?) / 1.0;
    Ok(Estimate {
        value: at(t_k)?,
        standard_uncertainty: slope * u_k,
    })
}

/// The boiling point, with the uncertainty that comes from the pressure.
fn boiling_point(pressure_pa: Estimate) -> Option<Estimate> {
    let [low, at, high] = [
        pressure_pa.value - pressure_pa.standard_uncertainty,
        pressure_pa.value,
        pressure_pa.value + pressure_pa.standard_uncertainty,
    ]
    .map(|p_pa| water_boiling_point_k(p_pa).ok());
    Some(Estimate {
        value: at?,
        standard_uncertainty: 0.5 * (high? - low?),
    })
}
