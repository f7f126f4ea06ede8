//! The shared vocabulary: every id and every pinned code.
//!
//! Generated from tables/names.toml by tables/compile; edit the table, not this file.

fn spelled<T: Copy>(all: &[(T, &[&str])], text: &str) -> Option<T> {
    all.iter()
        .find(|(_, names)| names.iter().any(|name| name.eq_ignore_ascii_case(text)))
        .map(|(member, _)| *member)
}

/// What went wrong; the code is the same in Rust, C and Python.
///
/// ```
/// use coldloop::ErrorKind;
/// assert_eq!(ErrorKind::OutOfRange.id(), "out-of-range");
/// assert_eq!(ErrorKind::from_id("out-of-range"), Some(ErrorKind::OutOfRange));
/// assert_eq!(ErrorKind::from_code(1), Some(ErrorKind::OutOfRange));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum ErrorKind {
    /// The value lies outside the range in which an answer would be physical.
    OutOfRange = 1,
    /// The value is NaN or infinite.
    NotFinite = 2,
    /// A quantity was written without its unit.
    MissingUnit = 3,
    /// A pressure was written without saying gauge, absolute or vacuum.
    MissingDatum = 4,
    /// The unit is not one that this quantity can have.
    UnknownUnit = 5,
    /// A comma was used as the decimal mark.
    DecimalComma = 6,
    /// The text does not start with a number.
    NotANumber = 7,
    /// The name is not in the vocabulary.
    UnknownName = 8,
    /// A solver stopped before it reached its tolerance.
    NoConvergence = 9,
    /// Pressure and temperature lie on the saturation line and do not fix the state.
    TwoPhase = 10,
    /// A value that the answer needs was not given.
    Missing = 11,
    /// Two given values contradict each other.
    Inconsistent = 12,
    /// No published data support an answer here.
    NotAvailable = 13,
}

impl ErrorKind {
    /// Every member, in the order of the table.
    pub const ALL: [ErrorKind; 13] = [
        ErrorKind::OutOfRange,
        ErrorKind::NotFinite,
        ErrorKind::MissingUnit,
        ErrorKind::MissingDatum,
        ErrorKind::UnknownUnit,
        ErrorKind::DecimalComma,
        ErrorKind::NotANumber,
        ErrorKind::UnknownName,
        ErrorKind::NoConvergence,
        ErrorKind::TwoPhase,
        ErrorKind::Missing,
        ErrorKind::Inconsistent,
        ErrorKind::NotAvailable,
    ];

    const SPELLINGS: [(ErrorKind, &'static [&'static str]); 13] = [
        (ErrorKind::OutOfRange, &["out-of-range"]),
        (ErrorKind::NotFinite, &["not-finite"]),
        (ErrorKind::MissingUnit, &["missing-unit"]),
        (ErrorKind::MissingDatum, &["missing-datum"]),
        (ErrorKind::UnknownUnit, &["unknown-unit"]),
        (ErrorKind::DecimalComma, &["decimal-comma"]),
        (ErrorKind::NotANumber, &["not-a-number"]),
        (ErrorKind::UnknownName, &["unknown-name"]),
        (ErrorKind::NoConvergence, &["no-convergence"]),
        (ErrorKind::TwoPhase, &["two-phase"]),
        (ErrorKind::Missing, &["missing"]),
        (ErrorKind::Inconsistent, &["inconsistent"]),
        (ErrorKind::NotAvailable, &["not-available"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            ErrorKind::OutOfRange => "out-of-range",
            ErrorKind::NotFinite => "not-finite",
            ErrorKind::MissingUnit => "missing-unit",
            ErrorKind::MissingDatum => "missing-datum",
            ErrorKind::UnknownUnit => "unknown-unit",
            ErrorKind::DecimalComma => "decimal-comma",
            ErrorKind::NotANumber => "not-a-number",
            ErrorKind::UnknownName => "unknown-name",
            ErrorKind::NoConvergence => "no-convergence",
            ErrorKind::TwoPhase => "two-phase",
            ErrorKind::Missing => "missing",
            ErrorKind::Inconsistent => "inconsistent",
            ErrorKind::NotAvailable => "not-available",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            ErrorKind::OutOfRange => "The value lies outside the range in which an answer would be physical.",
            ErrorKind::NotFinite => "The value is NaN or infinite.",
            ErrorKind::MissingUnit => "A quantity was written without its unit.",
            ErrorKind::MissingDatum => "A pressure was written without saying gauge, absolute or vacuum.",
            ErrorKind::UnknownUnit => "The unit is not one that this quantity can have.",
            ErrorKind::DecimalComma => "A comma was used as the decimal mark.",
            ErrorKind::NotANumber => "The text does not start with a number.",
            ErrorKind::UnknownName => "The name is not in the vocabulary.",
            ErrorKind::NoConvergence => "A solver stopped before it reached its tolerance.",
            ErrorKind::TwoPhase => "Pressure and temperature lie on the saturation line and do not fix the state.",
            ErrorKind::Missing => "A value that the answer needs was not given.",
            ErrorKind::Inconsistent => "Two given values contradict each other.",
            ErrorKind::NotAvailable => "No published data support an answer here.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(ErrorKind::OutOfRange),
            2 => Some(ErrorKind::NotFinite),
            3 => Some(ErrorKind::MissingUnit),
            4 => Some(ErrorKind::MissingDatum),
            5 => Some(ErrorKind::UnknownUnit),
            6 => Some(ErrorKind::DecimalComma),
            7 => Some(ErrorKind::NotANumber),
            8 => Some(ErrorKind::UnknownName),
            9 => Some(ErrorKind::NoConvergence),
            10 => Some(ErrorKind::TwoPhase),
            11 => Some(ErrorKind::Missing),
            12 => Some(ErrorKind::Inconsistent),
            13 => Some(ErrorKind::NotAvailable),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for ErrorKind {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// The quantity that an error speaks of.
///
/// ```
/// use coldloop::Quantity;
/// assert_eq!(Quantity::Temperature.id(), "temperature");
/// assert_eq!(Quantity::from_id("temperature"), Some(Quantity::Temperature));
/// assert_eq!(Quantity::from_code(1), Some(Quantity::Temperature));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum Quantity {
    /// Thermodynamic temperature, K.
    Temperature = 1,
    /// Temperature difference, K.
    TemperatureDifference = 2,
    /// Absolute pressure, Pa.
    AbsolutePressure = 3,
    /// Gauge pressure, Pa above the surrounding air.
    GaugePressure = 4,
    /// Geopotential altitude, m.
    Altitude = 5,
    /// Relative humidity, 0 to 1.
    RelativeHumidity = 6,
    /// Mass of water per mass of dry air.
    HumidityRatio = 7,
    /// Molar density, mol/m3.
    Density = 8,
    /// Specific enthalpy, J/kg.
    Enthalpy = 9,
    /// Specific entropy, J/(kg K).
    Entropy = 10,
    /// Mass fraction of vapour, 0 to 1.
    Quality = 11,
    /// Vehicle speed, m/s.
    Speed = 12,
    /// Engine or compressor speed, revolutions per second.
    RotationalSpeed = 13,
    /// Mass, kg.
    Mass = 14,
    /// Time, s.
    Duration = 15,
    /// Events per second, 1/s.
    Frequency = 16,
    /// Probability, 0 to 1.
    Probability = 17,
    /// Cost in the user's own unit.
    Cost = 18,
    /// A name of the vocabulary.
    Name = 19,
    /// Relative residual of a solver.
    Residual = 20,
    /// Voltage, V.
    Voltage = 21,
}

impl Quantity {
    /// Every member, in the order of the table.
    pub const ALL: [Quantity; 21] = [
        Quantity::Temperature,
        Quantity::TemperatureDifference,
        Quantity::AbsolutePressure,
        Quantity::GaugePressure,
        Quantity::Altitude,
        Quantity::RelativeHumidity,
        Quantity::HumidityRatio,
        Quantity::Density,
        Quantity::Enthalpy,
        Quantity::Entropy,
        Quantity::Quality,
        Quantity::Speed,
        Quantity::RotationalSpeed,
        Quantity::Mass,
        Quantity::Duration,
        Quantity::Frequency,
        Quantity::Probability,
        Quantity::Cost,
        Quantity::Name,
        Quantity::Residual,
        Quantity::Voltage,
    ];

    const SPELLINGS: [(Quantity, &'static [&'static str]); 21] = [
        (Quantity::Temperature, &["temperature"]),
        (Quantity::TemperatureDifference, &["temperature difference"]),
        (Quantity::AbsolutePressure, &["absolute pressure"]),
        (Quantity::GaugePressure, &["gauge pressure"]),
        (Quantity::Altitude, &["altitude"]),
        (Quantity::RelativeHumidity, &["relative humidity"]),
        (Quantity::HumidityRatio, &["humidity ratio"]),
        (Quantity::Density, &["density"]),
        (Quantity::Enthalpy, &["enthalpy"]),
        (Quantity::Entropy, &["entropy"]),
        (Quantity::Quality, &["quality"]),
        (Quantity::Speed, &["speed"]),
        (Quantity::RotationalSpeed, &["rotational speed"]),
        (Quantity::Mass, &["mass"]),
        (Quantity::Duration, &["duration"]),
        (Quantity::Frequency, &["frequency"]),
        (Quantity::Probability, &["probability"]),
        (Quantity::Cost, &["cost"]),
        (Quantity::Name, &["name"]),
        (Quantity::Residual, &["residual"]),
        (Quantity::Voltage, &["voltage"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            Quantity::Temperature => "temperature",
            Quantity::TemperatureDifference => "temperature difference",
            Quantity::AbsolutePressure => "absolute pressure",
            Quantity::GaugePressure => "gauge pressure",
            Quantity::Altitude => "altitude",
            Quantity::RelativeHumidity => "relative humidity",
            Quantity::HumidityRatio => "humidity ratio",
            Quantity::Density => "density",
            Quantity::Enthalpy => "enthalpy",
            Quantity::Entropy => "entropy",
            Quantity::Quality => "quality",
            Quantity::Speed => "speed",
            Quantity::RotationalSpeed => "rotational speed",
            Quantity::Mass => "mass",
            Quantity::Duration => "duration",
            Quantity::Frequency => "frequency",
            Quantity::Probability => "probability",
            Quantity::Cost => "cost",
            Quantity::Name => "name",
            Quantity::Residual => "residual",
            Quantity::Voltage => "voltage",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Quantity::Temperature => "Thermodynamic temperature, K.",
            Quantity::TemperatureDifference => "Temperature difference, K.",
            Quantity::AbsolutePressure => "Absolute pressure, Pa.",
            Quantity::GaugePressure => "Gauge pressure, Pa above the surrounding air.",
            Quantity::Altitude => "Geopotential altitude, m.",
            Quantity::RelativeHumidity => "Relative humidity, 0 to 1.",
            Quantity::HumidityRatio => "Mass of water per mass of dry air.",
            Quantity::Density => "Molar density, mol/m3.",
            Quantity::Enthalpy => "Specific enthalpy, J/kg.",
            Quantity::Entropy => "Specific entropy, J/(kg K).",
            Quantity::Quality => "Mass fraction of vapour, 0 to 1.",
            Quantity::Speed => "Vehicle speed, m/s.",
            Quantity::RotationalSpeed => "Engine or compressor speed, revolutions per second.",
            Quantity::Mass => "Mass, kg.",
            Quantity::Duration => "Time, s.",
            Quantity::Frequency => "Events per second, 1/s.",
            Quantity::Probability => "Probability, 0 to 1.",
            Quantity::Cost => "Cost in the user's own unit.",
            Quantity::Name => "A name of the vocabulary.",
            Quantity::Residual => "Relative residual of a solver.",
            Quantity::Voltage => "Voltage, V.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Quantity::Temperature),
            2 => Some(Quantity::TemperatureDifference),
            3 => Some(Quantity::AbsolutePressure),
            4 => Some(Quantity::GaugePressure),
            5 => Some(Quantity::Altitude),
            6 => Some(Quantity::RelativeHumidity),
            7 => Some(Quantity::HumidityRatio),
            8 => Some(Quantity::Density),
            9 => Some(Quantity::Enthalpy),
            10 => Some(Quantity::Entropy),
            11 => Some(Quantity::Quality),
            12 => Some(Quantity::Speed),
            13 => Some(Quantity::RotationalSpeed),
            14 => Some(Quantity::Mass),
            15 => Some(Quantity::Duration),
            16 => Some(Quantity::Frequency),
            17 => Some(Quantity::Probability),
            18 => Some(Quantity::Cost),
            19 => Some(Quantity::Name),
            20 => Some(Quantity::Residual),
            21 => Some(Quantity::Voltage),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Quantity {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// A refrigerant by its ANSI/ASHRAE Standard 34 designation.
///
/// ```
/// use coldloop::Refrigerant;
/// assert_eq!(Refrigerant::R134a.id(), "R-134a");
/// assert_eq!(Refrigerant::from_id("R-134a"), Some(Refrigerant::R134a));
/// assert_eq!(Refrigerant::from_code(1), Some(Refrigerant::R134a));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum Refrigerant {
    /// 1,1,1,2-Tetrafluoroethane.
    R134a = 1,
    /// 2,3,3,3-Tetrafluoroprop-1-ene.
    R1234yf = 2,
}

impl Refrigerant {
    /// Every member, in the order of the table.
    pub const ALL: [Refrigerant; 2] = [Refrigerant::R134a, Refrigerant::R1234yf];

    const SPELLINGS: [(Refrigerant, &'static [&'static str]); 2] = [
        (Refrigerant::R134a, &["R-134a", "r134a", "134a"]),
        (Refrigerant::R1234yf, &["R-1234yf", "r1234yf", "1234yf"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            Refrigerant::R134a => "R-134a",
            Refrigerant::R1234yf => "R-1234yf",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Refrigerant::R134a => "1,1,1,2-Tetrafluoroethane.",
            Refrigerant::R1234yf => "2,3,3,3-Tetrafluoroprop-1-ene.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Refrigerant::R134a),
            2 => Some(Refrigerant::R1234yf),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Refrigerant {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// The expansion device.
///
/// ```
/// use coldloop::Expansion;
/// assert_eq!(Expansion::Txv.id(), "txv");
/// assert_eq!(Expansion::from_id("txv"), Some(Expansion::Txv));
/// assert_eq!(Expansion::from_code(1), Some(Expansion::Txv));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum Expansion {
    /// Thermostatic expansion valve, with a receiver-drier.
    Txv = 1,
    /// Fixed orifice tube, with a suction accumulator.
    OrificeTube = 2,
}

impl Expansion {
    /// Every member, in the order of the table.
    pub const ALL: [Expansion; 2] = [Expansion::Txv, Expansion::OrificeTube];

    const SPELLINGS: [(Expansion, &'static [&'static str]); 2] =
        [(Expansion::Txv, &["txv"]), (Expansion::OrificeTube, &["orifice-tube"])];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            Expansion::Txv => "txv",
            Expansion::OrificeTube => "orifice-tube",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Expansion::Txv => "Thermostatic expansion valve, with a receiver-drier.",
            Expansion::OrificeTube => "Fixed orifice tube, with a suction accumulator.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Expansion::Txv),
            2 => Some(Expansion::OrificeTube),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Expansion {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// The kind of compressor and of its control.
///
/// ```
/// use coldloop::Compressor;
/// assert_eq!(Compressor::FixedClutch.id(), "fixed-clutch");
/// assert_eq!(Compressor::from_id("fixed-clutch"), Some(Compressor::FixedClutch));
/// assert_eq!(Compressor::from_code(1), Some(Compressor::FixedClutch));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum Compressor {
    /// Fixed displacement, cycled by a clutch.
    FixedClutch = 1,
    /// Variable displacement, controlled by its own valve.
    VariableInternal = 2,
    /// Variable displacement, controlled by an electric valve.
    VariableExternal = 3,
    /// Motor-driven, controlled by speed; high voltage.
    Electric = 4,
}

impl Compressor {
    /// Every member, in the order of the table.
    pub const ALL: [Compressor; 4] = [
        Compressor::FixedClutch,
        Compressor::VariableInternal,
        Compressor::VariableExternal,
        Compressor::Electric,
    ];

    const SPELLINGS: [(Compressor, &'static [&'static str]); 4] = [
        (Compressor::FixedClutch, &["fixed-clutch"]),
        (Compressor::VariableInternal, &["variable-internal"]),
        (Compressor::VariableExternal, &["variable-external"]),
        (Compressor::Electric, &["electric"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            Compressor::FixedClutch => "fixed-clutch",
            Compressor::VariableInternal => "variable-internal",
            Compressor::VariableExternal => "variable-external",
            Compressor::Electric => "electric",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Compressor::FixedClutch => "Fixed displacement, cycled by a clutch.",
            Compressor::VariableInternal => "Variable displacement, controlled by its own valve.",
            Compressor::VariableExternal => "Variable displacement, controlled by an electric valve.",
            Compressor::Electric => "Motor-driven, controlled by speed; high voltage.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Compressor::FixedClutch),
            2 => Some(Compressor::VariableInternal),
            3 => Some(Compressor::VariableExternal),
            4 => Some(Compressor::Electric),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Compressor {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// Where the cabin blower draws its air from.
///
/// ```
/// use coldloop::AirSource;
/// assert_eq!(AirSource::Fresh.id(), "fresh");
/// assert_eq!(AirSource::from_id("fresh"), Some(AirSource::Fresh));
/// assert_eq!(AirSource::from_code(1), Some(AirSource::Fresh));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum AirSource {
    /// Outside air.
    Fresh = 1,
    /// Cabin air.
    Recirculated = 2,
}

impl AirSource {
    /// Every member, in the order of the table.
    pub const ALL: [AirSource; 2] = [AirSource::Fresh, AirSource::Recirculated];

    const SPELLINGS: [(AirSource, &'static [&'static str]); 2] = [
        (AirSource::Fresh, &["fresh"]),
        (AirSource::Recirculated, &["recirculated"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            AirSource::Fresh => "fresh",
            AirSource::Recirculated => "recirculated",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            AirSource::Fresh => "Outside air.",
            AirSource::Recirculated => "Cabin air.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(AirSource::Fresh),
            2 => Some(AirSource::Recirculated),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for AirSource {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// A reading that an instrument gives.
///
/// ```
/// use coldloop::ReadingKind;
/// assert_eq!(ReadingKind::LowSide.id(), "low_side");
/// assert_eq!(ReadingKind::from_id("low_side"), Some(ReadingKind::LowSide));
/// assert_eq!(ReadingKind::from_code(1), Some(ReadingKind::LowSide));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum ReadingKind {
    /// Low-side pressure.
    LowSide = 1,
    /// High-side pressure.
    HighSide = 2,
    /// Air temperature at the centre vent.
    Vent = 3,
    /// Cabin air temperature.
    Cabin = 4,
    /// Temperature of the suction line at the compressor.
    SuctionLine = 5,
    /// Temperature of the discharge line at the compressor.
    DischargeLine = 6,
    /// Temperature of the liquid line before the expansion device.
    LiquidLine = 7,
    /// Temperature of the line at the condenser outlet.
    CondenserOutlet = 8,
    /// Clutch engagements per minute.
    ClutchCycles = 9,
}

impl ReadingKind {
    /// Every member, in the order of the table.
    pub const ALL: [ReadingKind; 9] = [
        ReadingKind::LowSide,
        ReadingKind::HighSide,
        ReadingKind::Vent,
        ReadingKind::Cabin,
        ReadingKind::SuctionLine,
        ReadingKind::DischargeLine,
        ReadingKind::LiquidLine,
        ReadingKind::CondenserOutlet,
        ReadingKind::ClutchCycles,
    ];

    const SPELLINGS: [(ReadingKind, &'static [&'static str]); 9] = [
        (ReadingKind::LowSide, &["low_side"]),
        (ReadingKind::HighSide, &["high_side"]),
        (ReadingKind::Vent, &["vent"]),
        (ReadingKind::Cabin, &["cabin"]),
        (ReadingKind::SuctionLine, &["suction_line"]),
        (ReadingKind::DischargeLine, &["discharge_line"]),
        (ReadingKind::LiquidLine, &["liquid_line"]),
        (ReadingKind::CondenserOutlet, &["condenser_outlet"]),
        (ReadingKind::ClutchCycles, &["clutch_cycles"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            ReadingKind::LowSide => "low_side",
            ReadingKind::HighSide => "high_side",
            ReadingKind::Vent => "vent",
            ReadingKind::Cabin => "cabin",
            ReadingKind::SuctionLine => "suction_line",
            ReadingKind::DischargeLine => "discharge_line",
            ReadingKind::LiquidLine => "liquid_line",
            ReadingKind::CondenserOutlet => "condenser_outlet",
            ReadingKind::ClutchCycles => "clutch_cycles",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            ReadingKind::LowSide => "Low-side pressure.",
            ReadingKind::HighSide => "High-side pressure.",
            ReadingKind::Vent => "Air temperature at the centre vent.",
            ReadingKind::Cabin => "Cabin air temperature.",
            ReadingKind::SuctionLine => "Temperature of the suction line at the compressor.",
            ReadingKind::DischargeLine => "Temperature of the discharge line at the compressor.",
            ReadingKind::LiquidLine => "Temperature of the liquid line before the expansion device.",
            ReadingKind::CondenserOutlet => "Temperature of the line at the condenser outlet.",
            ReadingKind::ClutchCycles => "Clutch engagements per minute.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(ReadingKind::LowSide),
            2 => Some(ReadingKind::HighSide),
            3 => Some(ReadingKind::Vent),
            4 => Some(ReadingKind::Cabin),
            5 => Some(ReadingKind::SuctionLine),
            6 => Some(ReadingKind::DischargeLine),
            7 => Some(ReadingKind::LiquidLine),
            8 => Some(ReadingKind::CondenserOutlet),
            9 => Some(ReadingKind::ClutchCycles),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for ReadingKind {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// How true a pressure gauge is, as its maker states it.
///
/// ```
/// use coldloop::GaugeClass;
/// assert_eq!(GaugeClass::Class1.id(), "class-1.0");
/// assert_eq!(GaugeClass::from_id("class-1.0"), Some(GaugeClass::Class1));
/// assert_eq!(GaugeClass::from_code(1), Some(GaugeClass::Class1));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum GaugeClass {
    /// EN 837-1 class 1.0: within 1 % of the span.
    Class1 = 1,
    /// EN 837-1 class 1.6: within 1.6 % of the span.
    Class1p6 = 2,
    /// EN 837-1 class 2.5: within 2.5 % of the span.
    Class2p5 = 3,
    /// ASME B40.100 grade A: within 1 % of the span in its middle half, 2 % outside.
    GradeA = 4,
    /// ASME B40.100 grade B: within 2 % of the span in its middle half, 3 % outside.
    GradeB = 5,
    /// Electronic manifold: within 0.5 % of the span.
    Digital = 6,
}

impl GaugeClass {
    /// Every member, in the order of the table.
    pub const ALL: [GaugeClass; 6] = [
        GaugeClass::Class1,
        GaugeClass::Class1p6,
        GaugeClass::Class2p5,
        GaugeClass::GradeA,
        GaugeClass::GradeB,
        GaugeClass::Digital,
    ];

    const SPELLINGS: [(GaugeClass, &'static [&'static str]); 6] = [
        (GaugeClass::Class1, &["class-1.0"]),
        (GaugeClass::Class1p6, &["class-1.6"]),
        (GaugeClass::Class2p5, &["class-2.5"]),
        (GaugeClass::GradeA, &["grade-A"]),
        (GaugeClass::GradeB, &["grade-B"]),
        (GaugeClass::Digital, &["digital"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            GaugeClass::Class1 => "class-1.0",
            GaugeClass::Class1p6 => "class-1.6",
            GaugeClass::Class2p5 => "class-2.5",
            GaugeClass::GradeA => "grade-A",
            GaugeClass::GradeB => "grade-B",
            GaugeClass::Digital => "digital",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            GaugeClass::Class1 => "EN 837-1 class 1.0: within 1 % of the span.",
            GaugeClass::Class1p6 => "EN 837-1 class 1.6: within 1.6 % of the span.",
            GaugeClass::Class2p5 => "EN 837-1 class 2.5: within 2.5 % of the span.",
            GaugeClass::GradeA => "ASME B40.100 grade A: within 1 % of the span in its middle half, 2 % outside.",
            GaugeClass::GradeB => "ASME B40.100 grade B: within 2 % of the span in its middle half, 3 % outside.",
            GaugeClass::Digital => "Electronic manifold: within 0.5 % of the span.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(GaugeClass::Class1),
            2 => Some(GaugeClass::Class1p6),
            3 => Some(GaugeClass::Class2p5),
            4 => Some(GaugeClass::GradeA),
            5 => Some(GaugeClass::GradeB),
            6 => Some(GaugeClass::Digital),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for GaugeClass {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What measured a temperature.
///
/// ```
/// use coldloop::Thermometer;
/// assert_eq!(Thermometer::ClampThermocouple.id(), "clamp-thermocouple");
/// assert_eq!(Thermometer::from_id("clamp-thermocouple"), Some(Thermometer::ClampThermocouple));
/// assert_eq!(Thermometer::from_code(1), Some(Thermometer::ClampThermocouple));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum Thermometer {
    /// Thermocouple of type K, clamped to the line.
    ClampThermocouple = 1,
    /// Thermistor, clamped to the line.
    ClampThermistor = 2,
    /// Bimetal thermometer with a stem and a dial.
    PocketDial = 3,
    /// Electronic thermometer with a stem.
    PocketDigital = 4,
    /// Infrared thermometer on a dull dark spot of the line.
    Infrared = 5,
}

impl Thermometer {
    /// Every member, in the order of the table.
    pub const ALL: [Thermometer; 5] = [
        Thermometer::ClampThermocouple,
        Thermometer::ClampThermistor,
        Thermometer::PocketDial,
        Thermometer::PocketDigital,
        Thermometer::Infrared,
    ];

    const SPELLINGS: [(Thermometer, &'static [&'static str]); 5] = [
        (Thermometer::ClampThermocouple, &["clamp-thermocouple"]),
        (Thermometer::ClampThermistor, &["clamp-thermistor"]),
        (Thermometer::PocketDial, &["pocket-dial"]),
        (Thermometer::PocketDigital, &["pocket-digital"]),
        (Thermometer::Infrared, &["infrared"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            Thermometer::ClampThermocouple => "clamp-thermocouple",
            Thermometer::ClampThermistor => "clamp-thermistor",
            Thermometer::PocketDial => "pocket-dial",
            Thermometer::PocketDigital => "pocket-digital",
            Thermometer::Infrared => "infrared",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Thermometer::ClampThermocouple => "Thermocouple of type K, clamped to the line.",
            Thermometer::ClampThermistor => "Thermistor, clamped to the line.",
            Thermometer::PocketDial => "Bimetal thermometer with a stem and a dial.",
            Thermometer::PocketDigital => "Electronic thermometer with a stem.",
            Thermometer::Infrared => "Infrared thermometer on a dull dark spot of the line.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Thermometer::ClampThermocouple),
            2 => Some(Thermometer::ClampThermistor),
            3 => Some(Thermometer::PocketDial),
            4 => Some(Thermometer::PocketDigital),
            5 => Some(Thermometer::Infrared),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Thermometer {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// A state of the system that explains its readings; `no-fault` is one of them.
///
/// ```
/// use coldloop::Fault;
/// assert_eq!(Fault::NoFault.id(), "no-fault");
/// assert_eq!(Fault::from_id("no-fault"), Some(Fault::NoFault));
/// assert_eq!(Fault::from_code(0), Some(Fault::NoFault));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum Fault {
    /// The system is as it should be.
    NoFault = 0,
    /// The compressor pumps too little: worn pistons, valves or gasket.
    WornCompressor = 1,
    /// Too little refrigerant.
    Undercharge = 2,
    /// Too much refrigerant.
    Overcharge = 3,
    /// Too little air through the condenser: dirt, fan, shroud.
    CondenserAirflowLoss = 4,
    /// Air or another non-condensable gas in the circuit.
    NonCondensables = 5,
    /// A restriction between condenser and expansion device, drier included.
    LiquidLineRestriction = 6,
    /// The expansion valve feeds too much.
    ExpansionValveStuckOpen = 7,
    /// The expansion valve feeds too little.
    ExpansionValveStuckClosed = 8,
    /// The orifice tube or its screen is clogged.
    OrificeRestricted = 9,
    /// Too little air over the evaporator: filter, blower, dirt.
    EvaporatorAirflowLoss = 10,
    /// Frost blocks the evaporator because its low limit fails.
    EvaporatorIcing = 11,
    /// Water in the refrigerant freezes at the expansion device.
    MoistureIcing = 12,
    /// The displacement or speed control holds the compressor back.
    CompressorControlFault = 13,
    /// The compressor is not driven.
    ClutchNotEngaged = 14,
    /// The clutch or the belt slips.
    ClutchSlipping = 15,
    /// Warm air joins the cold: blend door or heater valve.
    HeaterAirMixing = 16,
    /// A restriction between compressor and condenser outlet.
    HighSideRestriction = 17,
    /// A restriction between evaporator and compressor.
    SuctionLineRestriction = 18,
    /// The charge is another refrigerant or a mixture.
    WrongRefrigerant = 19,
    /// A gauge, its zero, its unit or its hose misleads.
    GaugeError = 20,
}

impl Fault {
    /// Every member, in the order of the table.
    pub const ALL: [Fault; 21] = [
        Fault::NoFault,
        Fault::WornCompressor,
        Fault::Undercharge,
        Fault::Overcharge,
        Fault::CondenserAirflowLoss,
        Fault::NonCondensables,
        Fault::LiquidLineRestriction,
        Fault::ExpansionValveStuckOpen,
        Fault::ExpansionValveStuckClosed,
        Fault::OrificeRestricted,
        Fault::EvaporatorAirflowLoss,
        Fault::EvaporatorIcing,
        Fault::MoistureIcing,
        Fault::CompressorControlFault,
        Fault::ClutchNotEngaged,
        Fault::ClutchSlipping,
        Fault::HeaterAirMixing,
        Fault::HighSideRestriction,
        Fault::SuctionLineRestriction,
        Fault::WrongRefrigerant,
        Fault::GaugeError,
    ];

    const SPELLINGS: [(Fault, &'static [&'static str]); 21] = [
        (Fault::NoFault, &["no-fault"]),
        (Fault::WornCompressor, &["worn-compressor"]),
        (Fault::Undercharge, &["undercharge"]),
        (Fault::Overcharge, &["overcharge"]),
        (Fault::CondenserAirflowLoss, &["condenser-airflow-loss"]),
        (Fault::NonCondensables, &["non-condensables"]),
        (Fault::LiquidLineRestriction, &["liquid-line-restriction"]),
        (Fault::ExpansionValveStuckOpen, &["expansion-valve-stuck-open"]),
        (Fault::ExpansionValveStuckClosed, &["expansion-valve-stuck-closed"]),
        (Fault::OrificeRestricted, &["orifice-restricted"]),
        (Fault::EvaporatorAirflowLoss, &["evaporator-airflow-loss"]),
        (Fault::EvaporatorIcing, &["evaporator-icing"]),
        (Fault::MoistureIcing, &["moisture-icing"]),
        (Fault::CompressorControlFault, &["compressor-control-fault"]),
        (Fault::ClutchNotEngaged, &["clutch-not-engaged"]),
        (Fault::ClutchSlipping, &["clutch-slipping"]),
        (Fault::HeaterAirMixing, &["heater-air-mixing"]),
        (Fault::HighSideRestriction, &["high-side-restriction"]),
        (Fault::SuctionLineRestriction, &["suction-line-restriction"]),
        (Fault::WrongRefrigerant, &["wrong-refrigerant"]),
        (Fault::GaugeError, &["gauge-error"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            Fault::NoFault => "no-fault",
            Fault::WornCompressor => "worn-compressor",
            Fault::Undercharge => "undercharge",
            Fault::Overcharge => "overcharge",
            Fault::CondenserAirflowLoss => "condenser-airflow-loss",
            Fault::NonCondensables => "non-condensables",
            Fault::LiquidLineRestriction => "liquid-line-restriction",
            Fault::ExpansionValveStuckOpen => "expansion-valve-stuck-open",
            Fault::ExpansionValveStuckClosed => "expansion-valve-stuck-closed",
            Fault::OrificeRestricted => "orifice-restricted",
            Fault::EvaporatorAirflowLoss => "evaporator-airflow-loss",
            Fault::EvaporatorIcing => "evaporator-icing",
            Fault::MoistureIcing => "moisture-icing",
            Fault::CompressorControlFault => "compressor-control-fault",
            Fault::ClutchNotEngaged => "clutch-not-engaged",
            Fault::ClutchSlipping => "clutch-slipping",
            Fault::HeaterAirMixing => "heater-air-mixing",
            Fault::HighSideRestriction => "high-side-restriction",
            Fault::SuctionLineRestriction => "suction-line-restriction",
            Fault::WrongRefrigerant => "wrong-refrigerant",
            Fault::GaugeError => "gauge-error",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Fault::NoFault => "The system is as it should be.",
            Fault::WornCompressor => "The compressor pumps too little: worn pistons, valves or gasket.",
            Fault::Undercharge => "Too little refrigerant.",
            Fault::Overcharge => "Too much refrigerant.",
            Fault::CondenserAirflowLoss => "Too little air through the condenser: dirt, fan, shroud.",
            Fault::NonCondensables => "Air or another non-condensable gas in the circuit.",
            Fault::LiquidLineRestriction => "A restriction between condenser and expansion device, drier included.",
            Fault::ExpansionValveStuckOpen => "The expansion valve feeds too much.",
            Fault::ExpansionValveStuckClosed => "The expansion valve feeds too little.",
            Fault::OrificeRestricted => "The orifice tube or its screen is clogged.",
            Fault::EvaporatorAirflowLoss => "Too little air over the evaporator: filter, blower, dirt.",
            Fault::EvaporatorIcing => "Frost blocks the evaporator because its low limit fails.",
            Fault::MoistureIcing => "Water in the refrigerant freezes at the expansion device.",
            Fault::CompressorControlFault => "The displacement or speed control holds the compressor back.",
            Fault::ClutchNotEngaged => "The compressor is not driven.",
            Fault::ClutchSlipping => "The clutch or the belt slips.",
            Fault::HeaterAirMixing => "Warm air joins the cold: blend door or heater valve.",
            Fault::HighSideRestriction => "A restriction between compressor and condenser outlet.",
            Fault::SuctionLineRestriction => "A restriction between evaporator and compressor.",
            Fault::WrongRefrigerant => "The charge is another refrigerant or a mixture.",
            Fault::GaugeError => "A gauge, its zero, its unit or its hose misleads.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            0 => Some(Fault::NoFault),
            1 => Some(Fault::WornCompressor),
            2 => Some(Fault::Undercharge),
            3 => Some(Fault::Overcharge),
            4 => Some(Fault::CondenserAirflowLoss),
            5 => Some(Fault::NonCondensables),
            6 => Some(Fault::LiquidLineRestriction),
            7 => Some(Fault::ExpansionValveStuckOpen),
            8 => Some(Fault::ExpansionValveStuckClosed),
            9 => Some(Fault::OrificeRestricted),
            10 => Some(Fault::EvaporatorAirflowLoss),
            11 => Some(Fault::EvaporatorIcing),
            12 => Some(Fault::MoistureIcing),
            13 => Some(Fault::CompressorControlFault),
            14 => Some(Fault::ClutchNotEngaged),
            15 => Some(Fault::ClutchSlipping),
            16 => Some(Fault::HeaterAirMixing),
            17 => Some(Fault::HighSideRestriction),
            18 => Some(Fault::SuctionLineRestriction),
            19 => Some(Fault::WrongRefrigerant),
            20 => Some(Fault::GaugeError),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Fault {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What the readings allow one to say.
///
/// ```
/// use coldloop::VerdictKind;
/// assert_eq!(VerdictKind::Healthy.id(), "healthy");
/// assert_eq!(VerdictKind::from_id("healthy"), Some(VerdictKind::Healthy));
/// assert_eq!(VerdictKind::from_code(1), Some(VerdictKind::Healthy));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum VerdictKind {
    /// The readings are those of a sound system.
    Healthy = 1,
    /// One fault explains the readings.
    NamedFault = 2,
    /// A short list explains the readings and these readings cannot part it.
    CannotTell = 3,
    /// No single explanation fits: measure again.
    NothingFits = 4,
    /// Too little was measured to judge.
    NotEnoughEvidence = 5,
}

impl VerdictKind {
    /// Every member, in the order of the table.
    pub const ALL: [VerdictKind; 5] = [
        VerdictKind::Healthy,
        VerdictKind::NamedFault,
        VerdictKind::CannotTell,
        VerdictKind::NothingFits,
        VerdictKind::NotEnoughEvidence,
    ];

    const SPELLINGS: [(VerdictKind, &'static [&'static str]); 5] = [
        (VerdictKind::Healthy, &["healthy"]),
        (VerdictKind::NamedFault, &["named-fault"]),
        (VerdictKind::CannotTell, &["cannot-tell"]),
        (VerdictKind::NothingFits, &["nothing-fits"]),
        (VerdictKind::NotEnoughEvidence, &["not-enough-evidence"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            VerdictKind::Healthy => "healthy",
            VerdictKind::NamedFault => "named-fault",
            VerdictKind::CannotTell => "cannot-tell",
            VerdictKind::NothingFits => "nothing-fits",
            VerdictKind::NotEnoughEvidence => "not-enough-evidence",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            VerdictKind::Healthy => "The readings are those of a sound system.",
            VerdictKind::NamedFault => "One fault explains the readings.",
            VerdictKind::CannotTell => "A short list explains the readings and these readings cannot part it.",
            VerdictKind::NothingFits => "No single explanation fits: measure again.",
            VerdictKind::NotEnoughEvidence => "Too little was measured to judge.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(VerdictKind::Healthy),
            2 => Some(VerdictKind::NamedFault),
            3 => Some(VerdictKind::CannotTell),
            4 => Some(VerdictKind::NothingFits),
            5 => Some(VerdictKind::NotEnoughEvidence),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for VerdictKind {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// Safety group of ANSI/ASHRAE Standard 34: toxicity A or B, flammability 1, 2L, 2 or 3.
///
/// ```
/// use coldloop::SafetyGroup;
/// assert_eq!(SafetyGroup::A1.id(), "A1");
/// assert_eq!(SafetyGroup::from_id("A1"), Some(SafetyGroup::A1));
/// assert_eq!(SafetyGroup::from_code(1), Some(SafetyGroup::A1));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum SafetyGroup {
    /// Lower toxicity, no flame propagation.
    A1 = 1,
    /// Lower toxicity, lower flammability.
    A2L = 2,
    /// Lower toxicity, flammable.
    A2 = 3,
    /// Lower toxicity, higher flammability.
    A3 = 4,
}

impl SafetyGroup {
    /// Every member, in the order of the table.
    pub const ALL: [SafetyGroup; 4] = [SafetyGroup::A1, SafetyGroup::A2L, SafetyGroup::A2, SafetyGroup::A3];

    const SPELLINGS: [(SafetyGroup, &'static [&'static str]); 4] = [
        (SafetyGroup::A1, &["A1"]),
        (SafetyGroup::A2L, &["A2L"]),
        (SafetyGroup::A2, &["A2"]),
        (SafetyGroup::A3, &["A3"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            SafetyGroup::A1 => "A1",
            SafetyGroup::A2L => "A2L",
            SafetyGroup::A2 => "A2",
            SafetyGroup::A3 => "A3",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            SafetyGroup::A1 => "Lower toxicity, no flame propagation.",
            SafetyGroup::A2L => "Lower toxicity, lower flammability.",
            SafetyGroup::A2 => "Lower toxicity, flammable.",
            SafetyGroup::A3 => "Lower toxicity, higher flammability.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(SafetyGroup::A1),
            2 => Some(SafetyGroup::A2L),
            3 => Some(SafetyGroup::A2),
            4 => Some(SafetyGroup::A3),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for SafetyGroup {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// The phase of a state.
///
/// ```
/// use coldloop::Phase;
/// assert_eq!(Phase::Liquid.id(), "liquid");
/// assert_eq!(Phase::from_id("liquid"), Some(Phase::Liquid));
/// assert_eq!(Phase::from_code(1), Some(Phase::Liquid));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum Phase {
    /// Liquid below the critical temperature.
    Liquid = 1,
    /// Vapour below the critical temperature.
    Vapour = 2,
    /// Liquid and vapour in equilibrium.
    TwoPhase = 3,
    /// Above the critical temperature.
    Supercritical = 4,
}

impl Phase {
    /// Every member, in the order of the table.
    pub const ALL: [Phase; 4] = [Phase::Liquid, Phase::Vapour, Phase::TwoPhase, Phase::Supercritical];

    const SPELLINGS: [(Phase, &'static [&'static str]); 4] = [
        (Phase::Liquid, &["liquid"]),
        (Phase::Vapour, &["vapour"]),
        (Phase::TwoPhase, &["two-phase"]),
        (Phase::Supercritical, &["supercritical"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            Phase::Liquid => "liquid",
            Phase::Vapour => "vapour",
            Phase::TwoPhase => "two-phase",
            Phase::Supercritical => "supercritical",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Phase::Liquid => "Liquid below the critical temperature.",
            Phase::Vapour => "Vapour below the critical temperature.",
            Phase::TwoPhase => "Liquid and vapour in equilibrium.",
            Phase::Supercritical => "Above the critical temperature.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Phase::Liquid),
            2 => Some(Phase::Vapour),
            3 => Some(Phase::TwoPhase),
            4 => Some(Phase::Supercritical),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Phase {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// The state at which enthalpy and entropy are counted from; differences do not depend on it.
///
/// ```
/// use coldloop::Reference;
/// assert_eq!(Reference::Iir.id(), "IIR");
/// assert_eq!(Reference::from_id("IIR"), Some(Reference::Iir));
/// assert_eq!(Reference::from_code(1), Some(Reference::Iir));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u32)]
pub enum Reference {
    /// Saturated liquid at 0 °C has 200 kJ/kg and 1 kJ/(kg K).
    Iir = 1,
    /// Saturated liquid at -40 °C has zero of both.
    Ashrae = 2,
    /// Saturated liquid at 101.325 kPa has zero of both.
    NormalBoilingPoint = 3,
}

impl Reference {
    /// Every member, in the order of the table.
    pub const ALL: [Reference; 3] = [Reference::Iir, Reference::Ashrae, Reference::NormalBoilingPoint];

    const SPELLINGS: [(Reference, &'static [&'static str]); 3] = [
        (Reference::Iir, &["IIR"]),
        (Reference::Ashrae, &["ASHRAE"]),
        (Reference::NormalBoilingPoint, &["NBP"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        match self {
            Reference::Iir => "IIR",
            Reference::Ashrae => "ASHRAE",
            Reference::NormalBoilingPoint => "NBP",
        }
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Reference::Iir => "Saturated liquid at 0 °C has 200 kJ/kg and 1 kJ/(kg K).",
            Reference::Ashrae => "Saturated liquid at -40 °C has zero of both.",
            Reference::NormalBoilingPoint => "Saturated liquid at 101.325 kPa has zero of both.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Reference::Iir),
            2 => Some(Reference::Ashrae),
            3 => Some(Reference::NormalBoilingPoint),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Reference {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}
