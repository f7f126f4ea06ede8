//! The bands of every reading, in the quantity that its instrument shows.

use super::model::{Band, SoundModel};
use crate::circuit::FeatureVector;
use crate::error::Error;
use crate::names::{ErrorKind, Feature, Quantity, Refrigerant};
use crate::saturation::{self, pseudo_critical};
use crate::units::{AbsolutePressure, GaugePressure, Surroundings, Temperature, TemperatureDifference, kelvins};
use crate::units::{Frequency, kelvins_difference};
use crate::vehicle::{Conditions, System};

/// The bands of every reading, in the quantity that its instrument shows.
///
/// ```
/// use coldloop::expected::Bands;
/// use coldloop::units::{Surroundings, celsius};
/// use coldloop::vehicle::{Conditions, System};
/// use coldloop::{Compressor, Expansion, Refrigerant};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let day = Conditions::new(celsius(30.0), Surroundings::at_altitude(1_600.0)?);
/// let vent = Bands::of(&system, &day)?.vent;
/// assert!(vent.low_95 < vent.low_80 && vent.median < vent.high_80);
/// # Ok::<(), coldloop::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Bands {
    /// Low-side pressure above the air of the place.
    pub low_side: Band<GaugePressure>,
    /// High-side pressure above the air of the place.
    pub high_side: Band<GaugePressure>,
    /// Air at the centre vent.
    pub vent: Band<Temperature>,
    /// Condensing temperature above the ambient.
    pub condensing_above_ambient: Band<TemperatureDifference>,
    /// Suction line at the compressor above the saturation temperature of the low side.
    pub superheat: Band<TemperatureDifference>,
    /// Liquid line below the saturation temperature of the high side.
    pub subcooling: Band<TemperatureDifference>,
    /// Discharge line above the saturation temperature of the high side.
    pub discharge_superheat: Band<TemperatureDifference>,
    /// How often the clutch engages; `None` where no clutch cycles.
    #[cfg_attr(feature = "serde", serde(rename = "clutch_cycles_hz"))]
    pub clutch_cycles: Option<Band<Frequency>>,
}

impl Bands {
    /// What a sound system of this kind shows in these conditions, as gauges show it at any moment of a clutch's cycle.
    ///
    /// Errors: those of [`SoundModel::of`], and `OutOfRange` where a band leaves the saturation line.
    ///
    /// ```
    /// use coldloop::expected::Bands;
    /// use coldloop::units::{Surroundings, fahrenheit};
    /// use coldloop::vehicle::{Conditions, System};
    /// use coldloop::{Compressor, Expansion, Refrigerant};
    /// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
    /// let bands = Bands::of(&system, &Conditions::new(fahrenheit(74.0), Surroundings::SEA_LEVEL))?;
    /// let psig = |pressure: coldloop::units::GaugePressure| pressure.pa() / 6_894.757;
    /// assert!(psig(bands.low_side.low_95) < 35.0 && psig(bands.low_side.high_95) > 45.0);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    pub fn of(system: &System, conditions: &Conditions) -> Result<Self, Error> {
        Self::from_model(
            &SoundModel::of(system, conditions)?,
            system.refrigerant,
            conditions.surroundings,
        )
    }

    /// The bands of a model, in the air of the place.
    ///
    /// Errors: `OutOfRange` where a band leaves the saturation line.
    pub fn from_model(model: &SoundModel, refrigerant: Refrigerant, air: Surroundings) -> Result<Self, Error> {
        Self::from_bands(
            model,
            &Feature::ALL.map(|feature| model.band(feature)),
            refrigerant,
            air,
        )
    }

    /// The same from the bands of the figures, in the order of the vocabulary.
    pub(crate) fn from_bands(
        model: &SoundModel,
        bands: &[Option<Band<f64>>; Feature::ALL.len()],
        refrigerant: Refrigerant,
        air: Surroundings,
    ) -> Result<Self, Error> {
        let known = |feature: Feature| bands[feature.code() as usize - 1];
        let of = |feature: Feature| known(feature).ok_or(Error::of(ErrorKind::Missing, Quantity::Name));
        let difference = |band: Band<f64>| band.map(kelvins_difference);
        // A band that reaches beyond the scale of the features, or the end of the saturation line, ends there.
        let warmest_k = saturation::line_of(refrigerant).critical_t_k() - 0.1;
        let low = |t_k: f64| pseudo_critical::along_pa(refrigerant, t_k.clamp(FeatureVector::COLDEST_K, warmest_k));
        let high = |t_k: f64| {
            let t_k = f64::max(t_k, FeatureVector::COLDEST_K);
            if refrigerant == Refrigerant::R744 {
                pseudo_critical::along_pa(refrigerant, t_k)
            } else {
                saturation::bubble_pressure_pa(refrigerant, f64::min(t_k, warmest_k))
            }
        };
        let high_side = of(Feature::HighSide)?;
        Ok(Self {
            low_side: pressure(of(Feature::LowSide)?, low, air)?,
            high_side: pressure(high_side, high, air)?,
            vent: of(Feature::Vent)?.map(kelvins),
            condensing_above_ambient: high_side.map(|t_k| kelvins_difference(t_k - model.ambient_k())),
            superheat: difference(of(Feature::Superheat)?),
            subcooling: difference(of(Feature::Subcooling)?),
            discharge_superheat: difference(of(Feature::DischargeSuperheat)?),
            clutch_cycles: known(Feature::ClutchCycles)
                .map(|band| band.map(|log| Frequency::from_hz(f64::max(libm::expm1(log), 0.0) / 60.0))),
        })
    }
}

/// A band of saturation temperatures as pressures above the air.
fn pressure(
    band: Band<f64>,
    saturation_pa: impl Fn(f64) -> Result<f64, Error>,
    air: Surroundings,
) -> Result<Band<GaugePressure>, Error> {
    let at = |t_k: f64| Ok::<_, Error>(AbsolutePressure::from_pa(saturation_pa(t_k)?).gauge(air));
    Ok(Band {
        low_95: at(band.low_95)?,
        low_80: at(band.low_80)?,
        median: at(band.median)?,
        high_80: at(band.high_80)?,
        high_95: at(band.high_95)?,
    })
}
