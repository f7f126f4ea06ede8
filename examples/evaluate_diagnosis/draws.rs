//! Vehicles drawn with a fault each, with their true conditions and readings and as somebody writes them down.
//!
//! The fit of the likelihoods and their evaluation draw from the same code, with other seeds. The shifted world is one
//! that no fit has seen: parts of other sizes and efficiencies, other set points, gauges and clocks that err in other ways.
//! A make is drawn before each vehicle: one of those to fit with, or, to judge, one of those that no fit has seen.

#[path = "wettest.rs"]
mod wettest;

use coldloop::circuit::{Reading, Readings};
use coldloop::diagnosis::{Case, Settings};
use coldloop::expected::Weather;
use coldloop::units::{
    PressureDifference, RelativeHumidity, RotationalSpeed, Speed, Surroundings, TimeSpan, celsius, in_kelvins, kelvins,
    kelvins_difference,
};
use coldloop::vehicle::{
    Conditions, FaultSeverity, Hardware, Instruments, Make, Options, Population, Simulation, System, Vehicle, simulate,
};
use coldloop::{
    AirSource, Compressor, Error, ErrorKind, Expansion, Fault, Quantity, Refrigerant, Thermometer, VehicleClass,
};
use rand::{Rng, RngExt};
use wettest::at_most_wet;

/// The population from which vehicles, weather and measurements are drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum World {
    /// That of the fit.
    Own,
    /// That of the fit, of makes that no fit has seen.
    OtherMakes,
    /// Another one.
    Shifted,
    /// That of the fit, with a refrigerant that no fit has seen.
    With(Refrigerant),
}

/// One vehicle with one fault or none.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Draw {
    /// What the label says.
    pub(crate) system: System,
    /// What is wrong.
    pub(crate) fault: FaultSeverity,
    /// What it does.
    pub(crate) truth: Simulation,
    /// What can be read on it, by the habits of its make.
    noted: Simulation,
    /// Who made it.
    pub(crate) make: Make,
    /// The vehicle.
    pub(crate) vehicle: Vehicle,
    /// The conditions as they are.
    pub(crate) actual: Conditions,
    /// The conditions as written down: some slightly wrong, some missing.
    pub(crate) conditions: Conditions,
    /// All readings, as the instruments show them.
    pub(crate) readings: Readings,
}

/// Kinds of system: expansion device and compressor.
pub(crate) const KINDS: usize = 8;

/// The system of a kind, with this refrigerant.
pub(crate) fn system(kind: usize, refrigerant: Refrigerant) -> System {
    System::new(refrigerant, Expansion::ALL[kind / 4], Compressor::ALL[kind % 4])
}

impl Draw {
    /// Whether the fault costs 5 % of the capacity, 10 % of the coefficient of performance, or 1.5 K at the vent.
    ///
    /// Errors: those of the vehicle model.
    pub(crate) fn significant(&self) -> Result<bool, Error> {
        let sound = simulate(&self.vehicle, &self.actual, &[])?;
        Ok(self.truth.capacity.w() < 0.95 * sound.capacity.w()
            || self.truth.cop < 0.9 * sound.cop
            || in_kelvins(self.truth.vent) > in_kelvins(sound.vent) + 1.5)
    }

    /// Its case as faultless instruments show it, in conditions as somebody wrote them down.
    ///
    /// Errors: those of the measurement.
    pub(crate) fn plainly(&self) -> Result<Case, Error> {
        let faultless = Instruments {
            missing: 0.0,
            pressure_step: PressureDifference::from_pa(0.0),
            temperature_step: kelvins_difference(0.0),
            ..Instruments::SHOP
        };
        let middle = [0.5; Instruments::UNIFORMS];
        let readings = faultless.measure(&self.noted, self.actual.surroundings, &middle)?;
        Ok(Case::new(self.system, self.conditions, readings))
    }

    /// A vehicle of this kind with this fault at this severity.
    ///
    /// Errors: those of the vehicle model.
    pub(crate) fn new(
        rng: &mut impl Rng,
        world: World,
        kind: usize,
        fault: Fault,
        severity: f64,
    ) -> Result<Self, Error> {
        let refrigerant = match world {
            World::Own | World::OtherMakes | World::Shifted => {
                [Refrigerant::R134a, Refrigerant::R1234yf][rng.random_range(0..2)]
            }
            World::With(refrigerant) => refrigerant,
        };
        let system = system(kind, refrigerant);
        let (make, vehicle) = vehicle(rng, world, system)?;
        let actual = conditions(rng, world, &system)?;
        let fault = imposed(rng, &make, &system, fault, severity)?;
        let mut draw = Self::of(rng, world, (make, vehicle), actual, fault)?;
        draw.conditions = written(rng, world, &actual);
        Ok(draw)
    }

    /// This vehicle of this make in these conditions, which are written down as they are.
    ///
    /// Errors: those of the vehicle model.
    pub(crate) fn of(
        rng: &mut impl Rng,
        world: World,
        (make, vehicle): (Make, Vehicle),
        actual: Conditions,
        fault: FaultSeverity,
    ) -> Result<Self, Error> {
        let truth = simulate(&vehicle, &actual, &[fault])?;
        let noted = make.habits.noted(&truth, &vehicle, &actual, &[fault])?;
        let readings = read(rng, world, &noted, actual.surroundings)?;
        Ok(Self {
            system: vehicle.system,
            fault,
            truth,
            noted,
            make,
            vehicle,
            actual,
            conditions: actual,
            readings,
        })
    }
}

/// The refrigerants of buses.
pub(crate) const BUSES: [Refrigerant; 2] = [Refrigerant::R407C, Refrigerant::R513A];

/// Whether there are systems of this kind: those of buses have a valve, and a clutch or a motor; with R-744 no clutch cycles.
pub(crate) fn is_built(world: World, kind: usize) -> bool {
    let of_kind = system(kind, Refrigerant::R134a);
    let clutch = of_kind.compressor == Compressor::FixedClutch;
    match world {
        World::With(refrigerant) if BUSES.contains(&refrigerant) => {
            of_kind.expansion == Expansion::Txv && (clutch || of_kind.compressor == Compressor::Electric)
        }
        World::With(Refrigerant::R744) => !clutch,
        World::Own | World::OtherMakes | World::Shifted | World::With(_) => true,
    }
}

/// Refrigerants that are found in charges besides that of the label.
const FOREIGN: [Refrigerant; 4] = [
    Refrigerant::R1234yf,
    Refrigerant::R22,
    Refrigerant::R12,
    Refrigerant::R290,
];

/// A fault at a severity, as a vehicle of this make has it; a wrong refrigerant is the whole charge as often as a tenth to a
/// half of it (of R-290, which has half the density, a twentieth to a quarter). Engineering judgement.
fn imposed(
    rng: &mut impl Rng,
    make: &Make,
    system: &System,
    fault: Fault,
    severity: f64,
) -> Result<FaultSeverity, Error> {
    let form = rng.random();
    if fault != Fault::WrongRefrigerant || rng.random() {
        return make.fault(system, fault, severity, form);
    }
    let other = FOREIGN[rng.random_range(0..FOREIGN.len())];
    let share = rng.random_range(0.1..0.5);
    Ok(if other == system.refrigerant {
        FaultSeverity::contaminated(Refrigerant::R134a, share)
    } else if other == Refrigerant::R290 {
        FaultSeverity::contaminated(other, 0.5 * share)
    } else {
        FaultSeverity::contaminated(other, share)
    })
}

/// A standard normal number.
fn normal(rng: &mut impl Rng) -> f64 {
    let (a, b): (f64, f64) = (rng.random(), rng.random());
    (-2.0 * (1.0 - a).ln()).sqrt() * (std::f64::consts::TAU * b).cos()
}

/// A make, and a vehicle of it.
fn vehicle(rng: &mut impl Rng, world: World, system: System) -> Result<(Make, Vehicle), Error> {
    let mut class = VehicleClass::ALL[rng.random_range(0..VehicleClass::ALL.len())];
    if BUSES.contains(&system.refrigerant) {
        class = VehicleClass::Bus;
    }
    let make = make(rng, world)?;
    let mut population = Population::of_make(make, system, class);
    let mut uniforms: [f64; Population::UNIFORMS] = std::array::from_fn(|_| rng.random());
    if world == World::Shifted {
        let typical = &mut population.typical;
        *typical = Hardware {
            displacement_m3: 0.93 * typical.displacement_m3,
            condenser_face_m2: 0.92 * typical.condenser_face_m2,
            condenser_air_w_m2_k: 1.08 * typical.condenser_air_w_m2_k,
            fan_velocity_m_s: 1.1 * typical.fan_velocity_m_s,
            evaporator_air_w_k: 0.92 * typical.evaporator_air_w_k,
            isentropic_factor: 0.95 * typical.isentropic_factor,
            volumetric_factor: 1.03 * typical.volumetric_factor,
            valve_superheat_k: typical.valve_superheat_k + 1.0,
            orifice_diameter_m: 1.03 * typical.orifice_diameter_m,
            switch_opens_pa: typical.switch_opens_pa + 10e3,
            thermostat_opens_k: typical.thermostat_opens_k + 0.7,
            internal_set_pa: typical.internal_set_pa - 12e3,
            external_set_pa: typical.external_set_pa + 12e3,
            electric_set_k: typical.electric_set_k + 1.0,
            receiver_volume_m3: 0.85 * typical.receiver_volume_m3,
            cabin_load_w: 1.2 * typical.cabin_load_w,
            ..*typical
        };
        // Uniform about the middle instead of normal, and wider: only the sign of a normal number's deviation is kept.
        for uniform in &mut uniforms[Make::UNIFORMS..=Make::UNIFORMS + Hardware::COUNT] {
            let deviation: f64 = rng.random_range(-1.9..1.9);
            *uniform = below(deviation);
        }
    }
    Ok((make, population.vehicle(&uniforms)?))
}

/// One of the makes to fit with, or of those to judge with; in the shifted world, of any make that chooses otherwise.
fn make(rng: &mut impl Rng, world: World) -> Result<Make, Error> {
    match world {
        World::Own | World::With(_) => Ok(Make::numbered(rng.random_range(Make::TO_FIT))),
        World::OtherMakes => Ok(Make::numbered(rng.random_range(Make::TO_JUDGE))),
        World::Shifted => {
            let others = Options {
                integrated_receiver: 0.8,
                liquid_port: 0.5,
                valve_low_side_switch: 0.4,
                fan_always: 0.35,
                ..Options::USUAL
            };
            Make::drawn(&others, &std::array::from_fn(|_| rng.random()))
        }
    }
}

/// The cumulative distribution function of the standard normal distribution at `z` (Abramowitz & Stegun 26.2.18, to 2.5e-4).
fn below(z: f64) -> f64 {
    let x = z.abs();
    let tail = 0.5 * (1.0 + x * (0.196_854 + x * (0.115_194 + x * (0.000_344 + x * 0.019_527)))).powi(-4);
    if z < 0.0 { tail } else { 1.0 - tail }
}

/// Ambient temperatures that are drawn, °C.
const WEATHER_C: std::ops::Range<f64> = 5.0..50.0;

/// The conditions as they are.
pub(crate) fn conditions(rng: &mut impl Rng, world: World, system: &System) -> Result<Conditions, Error> {
    let electric = system.compressor == Compressor::Electric;
    let driving = rng.random_bool(match world {
        World::Own | World::OtherMakes | World::With(_) => 0.3,
        World::Shifted => 0.15,
    });
    let ambient_c = match world {
        World::Own | World::OtherMakes | World::With(_) => rng.random_range(WEATHER_C),
        World::Shifted => (28.0 + 7.5 * normal(rng)).clamp(WEATHER_C.start, WEATHER_C.end),
    };
    let humidity = match world {
        World::Own | World::OtherMakes | World::With(_) => rng.random_range(0.1..0.9),
        World::Shifted => rng.random_range(0.25..0.95),
    };
    let place = Surroundings::at_altitude(rng.random_range(0.0..2_500.0))?;
    Ok(Conditions {
        relative_humidity: Some(RelativeHumidity::from_fraction(at_most_wet(
            ambient_c, place, humidity,
        )?)),
        engine_speed: Some(RotationalSpeed::from_hz(match world {
            World::Own | World::OtherMakes | World::With(_) => rng.random_range(12.5..42.0),
            World::Shifted => [13.5, 25.0, 33.0][rng.random_range(0..3)] + 1.5 * normal(rng).clamp(-2.0, 2.0),
        }))
        .filter(|_| !electric),
        air_source: Some(if rng.random() {
            AirSource::Fresh
        } else {
            AirSource::Recirculated
        }),
        blower: Some(match world {
            World::Own | World::OtherMakes | World::With(_) => rng.random_range(0.5..1.0),
            World::Shifted => [0.5, 0.75, 1.0][rng.random_range(0..3)],
        }),
        vehicle_speed: Some(Speed::from_m_s(if driving { rng.random_range(3.0..28.0) } else { 0.0 })),
        running_for: Some(TimeSpan::from_seconds(rng.random_range(300.0..1_800.0))),
        ..Conditions::new(celsius(ambient_c), place)
    })
}

/// The conditions as somebody measures them.
pub(crate) fn written(rng: &mut impl Rng, world: World, actual: &Conditions) -> Conditions {
    let (off_k, off_humidity) = match world {
        World::Own | World::OtherMakes | World::With(_) => (rng.random_range(-1.5..1.5), rng.random_range(-0.08..0.08)),
        World::Shifted => (0.4 + 1.1 * normal(rng), 0.07 * normal(rng)),
    };
    Conditions {
        ambient: kelvins(in_kelvins(actual.ambient) + off_k),
        relative_humidity: actual
            .relative_humidity
            .map(|h| RelativeHumidity::from_fraction((h.fraction() + off_humidity).clamp(0.05, 1.0))),
        ..*actual
    }
}

/// The conditions as somebody reports them: now and then not all of them.
pub(crate) fn told(rng: &mut impl Rng, conditions: &Conditions) -> Conditions {
    let mut known = |chance: f64| rng.random_bool(chance);
    Conditions {
        relative_humidity: conditions.relative_humidity.filter(|_| known(0.7)),
        engine_speed: conditions.engine_speed.filter(|_| known(0.8)),
        air_source: conditions.air_source.filter(|_| known(0.8)),
        blower: conditions.blower.filter(|_| known(0.7)),
        vehicle_speed: conditions.vehicle_speed.filter(|_| known(0.9)),
        ..*conditions
    }
}

/// All that instruments can show.
fn read(rng: &mut impl Rng, world: World, truth: &Simulation, place: Surroundings) -> Result<Readings, Error> {
    let mut instruments = Instruments {
        missing: 0.0,
        ..Instruments::SHOP
    };
    if rng.random_bool(0.5) {
        instruments.air = Thermometer::PocketDigital;
    }
    if rng.random_bool(0.4) {
        instruments.lines = Thermometer::ClampThermistor;
    }
    let errors = std::array::from_fn(|_| match world {
        World::Own | World::OtherMakes | World::With(_) => rng.random(),
        // Mostly small, now and then at the limit, and rather high.
        World::Shifted => (0.53 + 0.25 * normal(rng)).clamp(0.0, 1.0),
    });
    instruments.measure(truth, place, &errors)
}

/// How many of the line temperatures were taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Lines {
    /// All of them.
    All,
    /// One, two or three of the four, by chance.
    Some,
    /// None.
    None,
}

/// The readings with this many line temperatures; now and then the vent or the clutch is left out.
pub(crate) fn taken(rng: &mut impl Rng, all: &Readings, lines: Lines) -> Readings {
    let mut readings = *all;
    readings.cabin = None;
    let mut keep: [bool; 4] = std::array::from_fn(|_| match lines {
        Lines::All => true,
        Lines::Some => rng.random(),
        Lines::None => false,
    });
    if lines == Lines::Some && (keep == [true; 4] || keep == [false; 4]) {
        let one = rng.random_range(0..4);
        keep[one] = !keep[one];
    }
    let line = |reading: Option<Reading<_>>, keep: bool| reading.filter(|_| keep);
    readings.suction_line = line(readings.suction_line, keep[0]);
    readings.discharge_line = line(readings.discharge_line, keep[1]);
    readings.liquid_line = line(readings.liquid_line, keep[2]);
    readings.condenser_outlet = line(readings.condenser_outlet, keep[3]);
    if rng.random_bool(0.1) {
        readings.vent = None;
    }
    if rng.random_bool(0.3) {
        readings.clutch_cycles = None;
    }
    readings
}

/// A random severity: uniform from nearly 0 to nearly 1 (an excess of charge to a half).
pub(crate) fn severity(rng: &mut impl Rng, fault: Fault) -> f64 {
    if matches!(fault, Fault::NoFault | Fault::GaugeError) {
        0.0
    } else if matches!(fault, Fault::ClutchNotEngaged | Fault::WrongRefrigerant) {
        1.0
    } else if fault == Fault::Overcharge {
        rng.random_range(0.02..0.5)
    } else {
        rng.random_range(0.03..0.95)
    }
}

/// The faults that a kind of system can have and the model can show.
pub(crate) fn faults(kind: usize) -> Vec<Fault> {
    let system = system(kind, Refrigerant::R134a);
    let mut faults = vec![Fault::NoFault];
    faults.extend(Fault::ALL.into_iter().filter(|fault| {
        !matches!(fault, Fault::NoFault | Fault::GaugeError) && coldloop::diagnosis::exists(*fault, &system)
    }));
    faults
}

/// The same faults in one world: the model cannot solve R-744 with another refrigerant in it.
pub(crate) fn faults_in(world: World, kind: usize) -> Vec<Fault> {
    let mut faults = faults(kind);
    if world == World::With(Refrigerant::R744) {
        faults.retain(|fault| *fault != Fault::WrongRefrigerant);
    }
    faults
}

/// Part of the vehicles of an even mix that is sound.
const SOUND: f64 = 1.0 / 6.0;

/// One of these faults, the first of which is none: a sixth of the vehicles is sound, the others are shared out evenly.
pub(crate) fn even(rng: &mut impl Rng, faults: &[Fault]) -> Fault {
    if rng.random_bool(SOUND) {
        Fault::NoFault
    } else {
        faults[rng.random_range(1..faults.len())]
    }
}

/// Settings that know how often each fault is drawn by [`even`].
pub(crate) fn even_settings(faults: &[Fault]) -> Settings {
    let each = (1.0 - SOUND) / (faults.len() - 1) as f64;
    let mut settings = Settings::default();
    for fault in Fault::ALL {
        settings = settings.with_prior(fault, if faults.contains(&fault) { each } else { 0.0 });
    }
    settings.none_of_these = 0.01;
    settings
        .with_prior(Fault::NoFault, SOUND)
        .with_prior(Fault::GaugeError, 0.01)
}

/// A draw that the model could solve, in weather that the sources cover; at most a hundred are tried.
///
/// Errors: that of the last attempt.
pub(crate) fn solved(
    rng: &mut impl Rng,
    world: World,
    kind: usize,
    fault: Fault,
    severity: f64,
) -> Result<Draw, Error> {
    let mut last = Error::of(ErrorKind::NoConvergence, Quantity::Residual);
    for _ in 0..100 {
        match Draw::new(rng, world, kind, fault, severity) {
            Ok(draw) => match Weather::AMBIENT.check(in_kelvins(draw.conditions.ambient)) {
                Ok(_) => return Ok(draw),
                Err(error) => last = error,
            },
            Err(error) => last = error,
        }
    }
    Err(last)
}
