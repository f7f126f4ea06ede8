//! Quantities without a datum: differences, speeds, times and what else is one number in one unit.

use super::constants::{MICRON_PA, MILE_M, PSI_PA};
use super::pressure::{AbsolutePressure, GaugePressure, Pressure};
use super::temperature::{
    Temperature, TemperatureDifference, difference_in_kelvins, in_kelvins, kelvins, kelvins_difference,
};

/// A quantity as a type of its own: one number in its SI unit, and the units that are read and written. `3.0, in 2.0` says
/// that 2 of the unit are 3 in SI: one rounding is saved where the ratio is no number of the machine.
macro_rules! quantity {
    (
        $(#[$doc:meta])*
        $name:ident in $si:ident from $from_si:ident: $si_words:literal;
        $($unit:ident from $from:ident: $words:literal = $many:expr, in $one:expr;)*
    ) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
        #[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize), serde(transparent))]
        pub struct $name {
            $si: f64,
        }

        impl $name {
            #[doc = concat!("`", stringify!($si), "` ", $si_words, ".")]
            pub const fn $from_si($si: f64) -> Self {
                Self { $si }
            }

            #[doc = concat!("In ", $si_words, ".")]
            pub const fn $si(self) -> f64 {
                self.$si
            }

            $(
                #[doc = concat!("`", stringify!($unit), "` ", $words, ".")]
                pub const fn $from($unit: f64) -> Self {
                    Self { $si: $unit * $many / $one }
                }

                #[doc = concat!("In ", $words, ".")]
                pub const fn $unit(self) -> f64 {
                    self.$si * $one / $many
                }
            )*
        }

        impl sealed::Sealed for $name {}

        impl Measurable for $name {
            type Difference = Self;
        }

        impl InSi for $name {
            fn from_si(value: f64) -> Self {
                Self::$from_si(value)
            }

            fn si(self) -> f64 {
                self.$si
            }
        }
    };
}

quantity! {
    /// A difference of two pressures: the uncertainty of a gauge, a rise, the partial pressure of a gas.
    ///
    /// It has no datum, and is no pressure:
    ///
    /// ```compile_fail,E0308
    /// use coldloop::{Refrigerant, units::PressureDifference};
    /// let _ = Refrigerant::R134a.dew_temperature(PressureDifference::from_pa(500.0));
    /// ```
    ///
    /// ```
    /// use coldloop::units::PressureDifference;
    /// assert!((PressureDifference::from_psi(1.0).pa() - 6_894.757).abs() < 1e-3);
    /// ```
    PressureDifference in pa from from_pa: "pascals";
    kpa from from_kpa: "kilopascals" = 1_000.0, in 1.0;
    psi from from_psi: "pounds-force per square inch" = PSI_PA, in 1.0;
    microns from from_microns: "microns of mercury" = MICRON_PA, in 1.0;
}

quantity! {
    /// How fast an engine or a compressor turns.
    ///
    /// ```
    /// use coldloop::units::RotationalSpeed;
    /// assert_eq!(RotationalSpeed::from_rpm(1_500.0).hz(), 25.0);
    /// ```
    ///
    /// Revolutions per minute cannot be taken for revolutions per second, nor a count of events for either:
    ///
    /// ```compile_fail,E0308
    /// use coldloop::units::{Frequency, Surroundings, celsius};
    /// let mut day = coldloop::vehicle::Conditions::new(celsius(30.0), Surroundings::SEA_LEVEL);
    /// day.engine_speed = Some(Frequency::from_hz(25.0));
    /// ```
    RotationalSpeed in hz from from_hz: "revolutions per second";
    rpm from from_rpm: "revolutions per minute" = 1.0, in MINUTE_S;
}

quantity! {
    /// How often something happens: engagements of a clutch.
    ///
    /// ```
    /// use coldloop::units::Frequency;
    /// assert_eq!(Frequency::from_per_minute(3.0).hz(), 0.05);
    /// ```
    Frequency in hz from from_hz: "events per second";
    per_minute from from_per_minute: "events per minute" = 1.0, in MINUTE_S;
}

quantity! {
    /// How fast a vehicle drives.
    ///
    /// ```
    /// use coldloop::units::Speed;
    /// assert_eq!(Speed::from_km_h(36.0).m_s(), 10.0);
    /// assert!((Speed::from_mph(30.0).km_h() - 48.28).abs() < 0.01);
    /// ```
    Speed in m_s from from_m_s: "metres per second";
    km_h from from_km_h: "kilometres per hour" = 1_000.0, in HOUR_S;
    mph from from_mph: "miles per hour" = MILE_M, in HOUR_S;
}

quantity! {
    /// A stretch of time. Unlike `core::time::Duration` it is a real number, as the physics that it enters needs it.
    ///
    /// ```
    /// use coldloop::units::TimeSpan;
    /// assert_eq!(TimeSpan::from_minutes(10.0).seconds(), 600.0);
    /// ```
    TimeSpan in seconds from from_seconds: "seconds";
    minutes from from_minutes: "minutes" = MINUTE_S, in 1.0;
    hours from from_hours: "hours" = HOUR_S, in 1.0;
    years from from_years: "years of 365.25 days" = YEAR_S, in 1.0;
}

quantity! {
    /// Vapour pressure over saturation pressure of the water in the air, 0 to 1.
    ///
    /// ```
    /// use coldloop::units::RelativeHumidity;
    /// assert_eq!(RelativeHumidity::from_percent(40.0).fraction(), 0.4);
    /// ```
    RelativeHumidity in fraction from from_fraction: "as a fraction of saturation";
    percent from from_percent: "per cent" = 1.0, in 100.0;
}

quantity! {
    /// Enthalpy, or another energy, by mass.
    ///
    /// ```
    /// use coldloop::units::SpecificEnergy;
    /// assert_eq!(SpecificEnergy::from_kj_kg(150.0).j_kg(), 150_000.0);
    /// ```
    SpecificEnergy in j_kg from from_j_kg: "joules per kilogram";
    kj_kg from from_kj_kg: "kilojoules per kilogram" = 1_000.0, in 1.0;
}

quantity! {
    /// Entropy by mass.
    ///
    /// ```
    /// use coldloop::units::SpecificEntropy;
    /// assert_eq!(SpecificEntropy::from_kj_kg_k(1.7).j_kg_k(), 1_700.0);
    /// ```
    SpecificEntropy in j_kg_k from from_j_kg_k: "joules per kilogram and kelvin";
    kj_kg_k from from_kj_kg_k: "kilojoules per kilogram and kelvin" = 1_000.0, in 1.0;
}

quantity! {
    /// Heat that warms a kilogram by a kelvin. Its unit is that of an entropy, which it is not:
    ///
    /// ```compile_fail,E0308
    /// use coldloop::{Reference, Refrigerant, units::{AbsolutePressure, SpecificHeat}};
    /// let p = AbsolutePressure::from_kpa(300.0);
    /// let _ = Refrigerant::R134a.state_ps(p, SpecificHeat::from_j_kg_k(1_700.0), Reference::Iir);
    /// ```
    ///
    /// ```
    /// use coldloop::{Reference, Refrigerant, units::celsius};
    /// let liquid = Refrigerant::R134a.state_tq(celsius(0.0), 0.0, Reference::Iir)?.response.expect("one phase");
    /// assert!((liquid.cp.j_kg_k() - 1_341.0).abs() < 3.0);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    SpecificHeat in j_kg_k from from_j_kg_k: "joules per kilogram and kelvin";
}

quantity! {
    /// Mass by volume.
    ///
    /// ```
    /// use coldloop::{Refrigerant, Reference, units::celsius};
    /// let liquid = Refrigerant::R134a.state_tq(celsius(0.0), 0.0, Reference::Iir)?;
    /// assert!((liquid.density().kg_m3() - 1_294.8).abs() < 0.5);
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    Density in kg_m3 from from_kg_m3: "kilograms per cubic metre";
}

quantity! {
    /// Amount of substance by volume, which is what an equation of state takes.
    ///
    /// It is no density by mass:
    ///
    /// ```compile_fail,E0308
    /// use coldloop::{Reference, Refrigerant, units::{Density, celsius}};
    /// let _ = Refrigerant::R134a.state_t_rho(celsius(10.0), Density::from_kg_m3(10.0), Reference::Iir);
    /// ```
    MolarDensity in mol_m3 from from_mol_m3: "moles per cubic metre";
}

quantity! {
    /// A mass: of a charge, of oil.
    ///
    /// ```
    /// use coldloop::units::Mass;
    /// assert_eq!(Mass::from_g(850.0).kg(), 0.85);
    /// ```
    Mass in kg from from_kg: "kilograms";
    g from from_g: "grams" = 1.0, in 1_000.0;
}

quantity! {
    /// Mass by time: the flow of a refrigerant, a leak.
    ///
    /// ```
    /// use coldloop::units::MassFlow;
    /// assert!((MassFlow::from_g_per_year(31.557_6).kg_s() - 1e-9).abs() < 1e-20);
    /// ```
    MassFlow in kg_s from from_kg_s: "kilograms per second";
    g_per_year from from_g_per_year: "grams per year of 365.25 days" = 1.0, in 1_000.0 * YEAR_S;
}

quantity! {
    /// A volume: of a circuit, of a hose.
    ///
    /// ```
    /// use coldloop::units::Volume;
    /// assert_eq!(Volume::from_litres(2.2).m3(), 0.0022);
    /// ```
    Volume in m3 from from_m3: "cubic metres";
    litres from from_litres: "litres" = 1.0, in 1_000.0;
}

quantity! {
    /// How fast a pressure rises.
    ///
    /// ```
    /// use coldloop::units::PressureRate;
    /// assert!((PressureRate::from_microns_per_minute(45.0).pa_s() - 0.1).abs() < 1e-4);
    /// ```
    PressureRate in pa_s from from_pa_s: "pascals per second";
    microns_per_minute from from_microns_per_minute: "microns of mercury per minute" = MICRON_PA, in MINUTE_S;
}

quantity! {
    /// A flow of heat, or of work.
    ///
    /// ```
    /// use coldloop::units::Power;
    /// assert_eq!(Power::from_kw(5.2).w(), 5_200.0);
    /// ```
    Power in w from from_w: "watts";
    kw from from_kw: "kilowatts" = 1_000.0, in 1.0;
}

quantity! {
    /// Dynamic viscosity.
    ///
    /// ```
    /// use coldloop::{Reference, Refrigerant, units::{DynamicViscosity, celsius}};
    /// let liquid = Refrigerant::R134a.state_tq(celsius(25.0), 0.0, Reference::Iir)?;
    /// assert!(Refrigerant::R134a.viscosity(&liquid)? > DynamicViscosity::from_pa_s(190e-6));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    DynamicViscosity in pa_s from from_pa_s: "pascal seconds";
}

quantity! {
    /// Thermal conductivity.
    ///
    /// ```
    /// use coldloop::{Reference, Refrigerant, units::{ThermalConductivity, celsius}};
    /// let vapour = Refrigerant::R134a.state_tq(celsius(0.0), 1.0, Reference::Iir)?;
    /// assert!(Refrigerant::R134a.conductivity(&vapour)? < ThermalConductivity::from_w_m_k(0.012));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    ThermalConductivity in w_m_k from from_w_m_k: "watts per metre and kelvin";
}

quantity! {
    /// Surface tension.
    ///
    /// ```
    /// use coldloop::{Refrigerant, units::{SurfaceTension, celsius}};
    /// assert!(Refrigerant::R134a.surface_tension(celsius(25.0))? < SurfaceTension::from_n_m(8.3e-3));
    /// # Ok::<(), coldloop::Error>(())
    /// ```
    SurfaceTension in n_m from from_n_m: "newtons per metre";
}

const MINUTE_S: f64 = 60.0;
const HOUR_S: f64 = 3_600.0;
const YEAR_S: f64 = 365.25 * 24.0 * HOUR_S;

/// A quantity that is measured or calculated with an uncertainty.
///
/// The uncertainty is a difference of two values, which has a type of its own where the quantity has a datum: that of a
/// temperature is a temperature difference, that of a pressure above vacuum a pressure difference. A plain `f64` stands for
/// what has no unit, and for a quantity that is known at run time only, in SI.
pub trait Measurable: Copy + sealed::Sealed {
    /// What two values differ by.
    type Difference: InSi + core::fmt::Debug + PartialEq;
}

/// A quantity as a plain number in its SI unit, for programs that treat all quantities alike.
pub trait InSi: Measurable {
    /// The quantity of this number in its SI unit.
    fn from_si(value: f64) -> Self;

    /// The number in the SI unit.
    ///
    /// ```
    /// use coldloop::units::{InSi, celsius};
    /// assert_eq!(celsius(0.0).si(), 273.15);
    /// ```
    fn si(self) -> f64;
}

mod sealed {
    /// No quantity but those of this room: their uncertainties are known here.
    pub trait Sealed {}
}

/// The traits of a quantity that is declared elsewhere.
macro_rules! measurable {
    ($name:ty, $difference:ty $(, $from_si:expr, $si:expr)?) => {
        impl sealed::Sealed for $name {}

        impl Measurable for $name {
            type Difference = $difference;
        }

        $(
            impl InSi for $name {
                fn from_si(value: f64) -> Self {
                    $from_si(value)
                }

                fn si(self) -> f64 {
                    $si(self)
                }
            }
        )?
    };
}

measurable!(f64, f64, core::convert::identity, core::convert::identity);
measurable!(Temperature, TemperatureDifference, kelvins, in_kelvins);
measurable!(
    TemperatureDifference,
    TemperatureDifference,
    kelvins_difference,
    difference_in_kelvins
);
measurable!(
    AbsolutePressure,
    PressureDifference,
    AbsolutePressure::from_pa,
    AbsolutePressure::pa
);
measurable!(
    GaugePressure,
    PressureDifference,
    GaugePressure::from_pa,
    GaugePressure::pa
);
measurable!(Pressure, PressureDifference);
