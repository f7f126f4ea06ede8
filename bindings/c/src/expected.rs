//! What a sound system should read
//!
//! The bands of every reading over sound vehicles of a kind in given weather, at a given place: the median, and the
//! ends of the bands that hold 80 % and 95 % of them. What is not known of the conditions is NaN (or 0 for a code) and
//! makes the bands wider.

use crate::boundary::{Growing, Record, known, member, record, sized};
use crate::error::ColdloopError;
use crate::memory::given;
use crate::session_input::known_or_not;
use coldloop::expected::{Band, Bands};
use coldloop::units::{
    AbsolutePressure, Frequency, GaugePressure, RelativeHumidity, RotationalSpeed, Speed, Surroundings,
    TemperatureDifference, TimeSpan,
};
use coldloop::units::{difference_in_kelvins, in_kelvins, kelvins};
use coldloop::vehicle::{Conditions, System};
use coldloop::{AirSource, Compressor, Error, Expansion};

/// Weather, place and how the vehicle is run, in SI. Set `size` to sizeof(coldloop_conditions).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopConditions {
    /// sizeof(coldloop_conditions), so that the struct can grow.
    pub size: usize,
    /// A coldloop_air_source; 0 where it is not known.
    pub air_source: u32,
    /// 1 where the compressor is driven, as seen or by a scan tool, 2 where it is not; 0 where it is not known. It
    /// overrides what any speed implies.
    pub compressor_running: u32,
    /// Air in the shade, in front of the vehicle, K.
    pub ambient_k: f64,
    /// Pressure of that air above vacuum, Pa.
    pub air_pa_abs: f64,
    /// Relative humidity, 0 to 1; NaN where it is not known, as all that follow.
    pub relative_humidity: f64,
    /// Speed of the engine, revolutions per second; 0 at standstill. For an electric compressor its own speed, of which 0 says nothing.
    pub engine_speed_hz: f64,
    /// Blower setting, 0 (off) to 1 (highest).
    pub blower: f64,
    /// Vehicle speed, m/s.
    pub vehicle_speed_m_s: f64,
    /// Time since the system was switched on, s.
    pub running_s: f64,
    /// Speed of the compressor itself from a scan tool, revolutions per second; 0 at standstill.
    pub compressor_speed_hz: f64,
    /// Displacement that the control of an externally controlled compressor commands, 0 to 1 of the full one.
    pub commanded_displacement: f64,
    /// Command of the condenser's fan, 0 (off) to 1 (full speed).
    pub fan_command: f64,
}

impl Growing for ColdloopConditions {}

/// The median of a reading over sound vehicles, and the bands that hold 80 % and 95 % of them.
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopBand {
    /// Lower end of the 95 % band.
    pub low_95: f64,
    /// Lower end of the 80 % band.
    pub low_80: f64,
    /// Median.
    pub median: f64,
    /// Upper end of the 80 % band.
    pub high_80: f64,
    /// Upper end of the 95 % band.
    pub high_95: f64,
}

/// The bands of every reading, in SI. Set `size` to sizeof(coldloop_bands).
#[repr(C)]
#[derive(Clone, Copy, Debug)]
pub struct ColdloopBands {
    /// sizeof(coldloop_bands), so that the struct can grow.
    pub size: usize,
    /// Low side, Pa above the air of the place.
    pub low_side_pa_gauge: ColdloopBand,
    /// High side, Pa above the air of the place.
    pub high_side_pa_gauge: ColdloopBand,
    /// Air at the centre vent, K.
    pub vent_k: ColdloopBand,
    /// Condensing temperature above the ambient, K.
    pub condensing_above_ambient_k: ColdloopBand,
    /// Superheat at the compressor, K.
    pub superheat_k: ColdloopBand,
    /// Subcooling in the liquid line, K.
    pub subcooling_k: ColdloopBand,
    /// Discharge line above the saturation temperature of the high side, K.
    pub discharge_superheat_k: ColdloopBand,
    /// Clutch engagements per second; NaN where no clutch cycles.
    pub clutch_cycles_hz: ColdloopBand,
}

const NONE: ColdloopBand = ColdloopBand {
    low_95: f64::NAN,
    low_80: f64::NAN,
    median: f64::NAN,
    high_80: f64::NAN,
    high_95: f64::NAN,
};

sized!(
    ColdloopBands,
    Self {
        size: 0,
        low_side_pa_gauge: NONE,
        high_side_pa_gauge: NONE,
        vent_k: NONE,
        condensing_above_ambient_k: NONE,
        superheat_k: NONE,
        subcooling_k: NONE,
        discharge_superheat_k: NONE,
        clutch_cycles_hz: NONE,
    }
);

/// What a sound system with this coldloop_refrigerant, coldloop_expansion and coldloop_compressor shows in these
/// conditions.
///
/// Errors: UNKNOWN_NAME for an unknown code; NOT_FINITE and OUT_OF_RANGE for conditions that no source covers
/// (they cover 5 to 50 degrees Celsius and up to about 4,100 m); NOT_AVAILABLE for a system that none covers.
#[unsafe(no_mangle)]
pub extern "C" fn coldloop_expected(
    refrigerant: u32,
    expansion: u32,
    compressor: u32,
    conditions: *const ColdloopConditions,
    bands: *mut ColdloopBands,
    error: *mut ColdloopError,
) -> u32 {
    record(bands, error, || {
        let system = System::new(
            known(refrigerant)?,
            member(expansion, Expansion::from_code)?,
            member(compressor, Compressor::from_code)?,
        );
        let conditions = conditions_of(&given(conditions)?)?;
        let bands = Bands::of(&system, &conditions)?;
        Ok(ColdloopBands {
            low_side_pa_gauge: band(bands.low_side, GaugePressure::pa),
            high_side_pa_gauge: band(bands.high_side, GaugePressure::pa),
            vent_k: band(bands.vent, in_kelvins),
            condensing_above_ambient_k: difference(bands.condensing_above_ambient),
            superheat_k: difference(bands.superheat),
            subcooling_k: difference(bands.subcooling),
            discharge_superheat_k: difference(bands.discharge_superheat),
            clutch_cycles_hz: bands.clutch_cycles.map_or(NONE, |cycles| band(cycles, Frequency::hz)),
            ..ColdloopBands::BLANK
        })
    })
}

pub(crate) fn conditions_of(given: &ColdloopConditions) -> Result<Conditions, Error> {
    let air = Surroundings::measured(AbsolutePressure::from_pa(given.air_pa_abs))?;
    let some = |value: f64| (!value.is_nan()).then_some(value);
    Ok(Conditions {
        relative_humidity: some(given.relative_humidity).map(RelativeHumidity::from_fraction),
        engine_speed: some(given.engine_speed_hz).map(RotationalSpeed::from_hz),
        air_source: match given.air_source {
            0 => None,
            code => Some(member(code, AirSource::from_code)?),
        },
        blower: some(given.blower),
        vehicle_speed: some(given.vehicle_speed_m_s).map(Speed::from_m_s),
        running_for: some(given.running_s).map(TimeSpan::from_seconds),
        compressor_running: known_or_not(given.compressor_running)?,
        compressor_speed: some(given.compressor_speed_hz).map(RotationalSpeed::from_hz),
        commanded_displacement: some(given.commanded_displacement),
        fan_command: some(given.fan_command),
        ..Conditions::new(kelvins(given.ambient_k), air)
    })
}

fn difference(spread: Band<TemperatureDifference>) -> ColdloopBand {
    band(spread, difference_in_kelvins)
}

fn band<Q>(band: Band<Q>, si: impl Fn(Q) -> f64) -> ColdloopBand {
    ColdloopBand {
        low_95: si(band.low_95),
        low_80: si(band.low_80),
        median: si(band.median),
        high_80: si(band.high_80),
        high_95: si(band.high_95),
    }
}
