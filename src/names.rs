//! The shared vocabulary: every id and every pinned code.
//!
//! Generated from tables/names.toml by tables/compile; edit the table, not this file.

fn spelled<T: Copy>(all: &[(T, &[&str])], text: &str) -> Option<T> {
    all.iter()
        .find(|(_, names)| names.iter().any(|name| name.eq_ignore_ascii_case(text)))
        .map(|(member, _)| *member)
}

type Names<T> = [(T, &'static [&'static str])];

/// The member of which a text is a spelling or a common name, perhaps behind a prefix; only letters and digits count.
fn meant<T: Copy>(spellings: &Names<T>, called: &Names<T>, prefixes: &[&str], text: &str) -> Option<T> {
    let mut names = called.iter().chain(spellings);
    let found = names.find(|(_, names)| {
        let mut names = names.iter();
        names.any(|name| {
            letters(text).eq(letters(name))
                || prefixes
                    .iter()
                    .any(|prefix| letters(text).eq(letters(prefix).chain(letters(name))))
        })
    });
    found.map(|(member, _)| *member)
}

fn letters(text: &str) -> impl Iterator<Item = char> {
    let letters = text.chars().filter(|letter| letter.is_alphanumeric());
    letters.flat_map(char::to_lowercase)
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum ErrorKind {
    /// The value lies outside the range in which an answer would be physical.
    #[cfg_attr(feature = "serde", serde(rename = "out-of-range"))]
    OutOfRange = 1,
    /// The value is NaN or infinite.
    #[cfg_attr(feature = "serde", serde(rename = "not-finite"))]
    NotFinite = 2,
    /// A quantity was written without its unit.
    #[cfg_attr(feature = "serde", serde(rename = "missing-unit"))]
    MissingUnit = 3,
    /// A pressure was written without saying gauge, absolute or vacuum.
    #[cfg_attr(feature = "serde", serde(rename = "missing-datum"))]
    MissingDatum = 4,
    /// The unit is not one that this quantity can have.
    #[cfg_attr(feature = "serde", serde(rename = "unknown-unit"))]
    UnknownUnit = 5,
    /// A comma was used as the decimal mark.
    #[cfg_attr(feature = "serde", serde(rename = "decimal-comma"))]
    DecimalComma = 6,
    /// The text does not start with a number.
    #[cfg_attr(feature = "serde", serde(rename = "not-a-number"))]
    NotANumber = 7,
    /// The name is not in the vocabulary.
    #[cfg_attr(feature = "serde", serde(rename = "unknown-name"))]
    UnknownName = 8,
    /// A solver stopped before it reached its tolerance.
    #[cfg_attr(feature = "serde", serde(rename = "no-convergence"))]
    NoConvergence = 9,
    /// Pressure and temperature lie on the saturation line and do not fix the state.
    #[cfg_attr(feature = "serde", serde(rename = "two-phase"))]
    TwoPhase = 10,
    /// A value that the answer needs was not given.
    #[cfg_attr(feature = "serde", serde(rename = "missing"))]
    Missing = 11,
    /// Two given values contradict each other.
    #[cfg_attr(feature = "serde", serde(rename = "inconsistent"))]
    Inconsistent = 12,
    /// No published data support an answer here.
    #[cfg_attr(feature = "serde", serde(rename = "not-available"))]
    NotAvailable = 13,
    /// The text is not a readings file.
    #[cfg_attr(feature = "serde", serde(rename = "syntax"))]
    Syntax = 14,
}

impl ErrorKind {
    /// Every member, in the order of the table.
    pub const ALL: [ErrorKind; 14] = [
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
        ErrorKind::Syntax,
    ];

    const SPELLINGS: [(ErrorKind, &'static [&'static str]); 14] = [
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
        (ErrorKind::Syntax, &["syntax"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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
            ErrorKind::Syntax => "The text is not a readings file.",
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
            14 => Some(ErrorKind::Syntax),
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Quantity {
    /// Thermodynamic temperature, K.
    #[cfg_attr(feature = "serde", serde(rename = "temperature"))]
    Temperature = 1,
    /// Temperature difference, K.
    #[cfg_attr(feature = "serde", serde(rename = "temperature difference"))]
    TemperatureDifference = 2,
    /// Absolute pressure, Pa.
    #[cfg_attr(feature = "serde", serde(rename = "absolute pressure"))]
    AbsolutePressure = 3,
    /// Gauge pressure, Pa above the surrounding air.
    #[cfg_attr(feature = "serde", serde(rename = "gauge pressure"))]
    GaugePressure = 4,
    /// Geopotential altitude, m.
    #[cfg_attr(feature = "serde", serde(rename = "altitude"))]
    Altitude = 5,
    /// Relative humidity, 0 to 1.
    #[cfg_attr(feature = "serde", serde(rename = "relative humidity"))]
    RelativeHumidity = 6,
    /// Mass of water per mass of dry air.
    #[cfg_attr(feature = "serde", serde(rename = "humidity ratio"))]
    HumidityRatio = 7,
    /// Molar density, mol/m3.
    #[cfg_attr(feature = "serde", serde(rename = "density"))]
    Density = 8,
    /// Specific enthalpy, J/kg.
    #[cfg_attr(feature = "serde", serde(rename = "enthalpy"))]
    Enthalpy = 9,
    /// Specific entropy, J/(kg K).
    #[cfg_attr(feature = "serde", serde(rename = "entropy"))]
    Entropy = 10,
    /// Mass fraction of vapour, 0 to 1.
    #[cfg_attr(feature = "serde", serde(rename = "quality"))]
    Quality = 11,
    /// Vehicle speed, m/s.
    #[cfg_attr(feature = "serde", serde(rename = "speed"))]
    Speed = 12,
    /// Engine or compressor speed, revolutions per second.
    #[cfg_attr(feature = "serde", serde(rename = "rotational speed"))]
    RotationalSpeed = 13,
    /// Mass, kg.
    #[cfg_attr(feature = "serde", serde(rename = "mass"))]
    Mass = 14,
    /// Time, s.
    #[cfg_attr(feature = "serde", serde(rename = "duration"))]
    Duration = 15,
    /// Events per second, 1/s.
    #[cfg_attr(feature = "serde", serde(rename = "frequency"))]
    Frequency = 16,
    /// Probability, 0 to 1.
    #[cfg_attr(feature = "serde", serde(rename = "probability"))]
    Probability = 17,
    /// Cost in the user's own unit.
    #[cfg_attr(feature = "serde", serde(rename = "cost"))]
    Cost = 18,
    /// A name of the vocabulary.
    #[cfg_attr(feature = "serde", serde(rename = "name"))]
    Name = 19,
    /// Relative residual of a solver.
    #[cfg_attr(feature = "serde", serde(rename = "residual"))]
    Residual = 20,
    /// Voltage, V.
    #[cfg_attr(feature = "serde", serde(rename = "voltage"))]
    Voltage = 21,
    /// Blower setting, 0 (off) to 1 (highest).
    #[cfg_attr(feature = "serde", serde(rename = "blower setting"))]
    BlowerSetting = 22,
    /// Rows of a table.
    #[cfg_attr(feature = "serde", serde(rename = "number of rows"))]
    Rows = 23,
    /// Severity of a fault, 0 (sound) to 1.
    #[cfg_attr(feature = "serde", serde(rename = "severity"))]
    Severity = 24,
    /// Volume, m3.
    #[cfg_attr(feature = "serde", serde(rename = "volume"))]
    Volume = 25,
    /// Size of a text, bytes.
    #[cfg_attr(feature = "serde", serde(rename = "size"))]
    Size = 26,
    /// Displacement that the control commands, 0 to 1 of the full one.
    #[cfg_attr(feature = "serde", serde(rename = "commanded displacement"))]
    Displacement = 27,
    /// Command of the condenser's fan, 0 (off) to 1 (full speed).
    #[cfg_attr(feature = "serde", serde(rename = "fan command"))]
    FanCommand = 28,
    /// Evaporators of a system.
    #[cfg_attr(feature = "serde", serde(rename = "number of evaporators"))]
    Evaporators = 29,
}

impl Quantity {
    /// Every member, in the order of the table.
    pub const ALL: [Quantity; 29] = [
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
        Quantity::BlowerSetting,
        Quantity::Rows,
        Quantity::Severity,
        Quantity::Volume,
        Quantity::Size,
        Quantity::Displacement,
        Quantity::FanCommand,
        Quantity::Evaporators,
    ];

    const SPELLINGS: [(Quantity, &'static [&'static str]); 29] = [
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
        (Quantity::BlowerSetting, &["blower setting"]),
        (Quantity::Rows, &["number of rows"]),
        (Quantity::Severity, &["severity"]),
        (Quantity::Volume, &["volume"]),
        (Quantity::Size, &["size"]),
        (Quantity::Displacement, &["commanded displacement"]),
        (Quantity::FanCommand, &["fan command"]),
        (Quantity::Evaporators, &["number of evaporators"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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
            Quantity::BlowerSetting => "Blower setting, 0 (off) to 1 (highest).",
            Quantity::Rows => "Rows of a table.",
            Quantity::Severity => "Severity of a fault, 0 (sound) to 1.",
            Quantity::Volume => "Volume, m3.",
            Quantity::Size => "Size of a text, bytes.",
            Quantity::Displacement => "Displacement that the control commands, 0 to 1 of the full one.",
            Quantity::FanCommand => "Command of the condenser's fan, 0 (off) to 1 (full speed).",
            Quantity::Evaporators => "Evaporators of a system.",
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
            22 => Some(Quantity::BlowerSetting),
            23 => Some(Quantity::Rows),
            24 => Some(Quantity::Severity),
            25 => Some(Quantity::Volume),
            26 => Some(Quantity::Size),
            27 => Some(Quantity::Displacement),
            28 => Some(Quantity::FanCommand),
            29 => Some(Quantity::Evaporators),
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Refrigerant {
    /// 1,1,1,2-Tetrafluoroethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-134a", alias = "r134a", alias = "134a"))]
    R134a = 1,
    /// 2,3,3,3-Tetrafluoroprop-1-ene.
    #[cfg_attr(feature = "serde", serde(rename = "R-1234yf", alias = "r1234yf", alias = "1234yf"))]
    R1234yf = 2,
    /// Carbon dioxide.
    #[cfg_attr(feature = "serde", serde(rename = "R-744", alias = "r744", alias = "744"))]
    R744 = 3,
    /// 1,1-Difluoroethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-152a", alias = "r152a", alias = "152a"))]
    R152a = 4,
    /// Dichlorodifluoromethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-12", alias = "r12", alias = "12"))]
    R12 = 5,
    /// Chlorodifluoromethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-22", alias = "r22", alias = "22"))]
    R22 = 6,
    /// trans-1,3,3,3-Tetrafluoroprop-1-ene.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "R-1234ze(E)",
            alias = "r1234ze(e)",
            alias = "1234ze(e)",
            alias = "r1234zee",
            alias = "1234zee"
        )
    )]
    R1234zeE = 7,
    /// Difluoromethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-32", alias = "r32", alias = "32"))]
    R32 = 8,
    /// Pentafluoroethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-125", alias = "r125", alias = "125"))]
    R125 = 9,
    /// 1,1,1-Trifluoroethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-143a", alias = "r143a", alias = "143a"))]
    R143a = 10,
    /// Propane.
    #[cfg_attr(feature = "serde", serde(rename = "R-290", alias = "r290", alias = "290"))]
    R290 = 11,
    /// Isobutane.
    #[cfg_attr(feature = "serde", serde(rename = "R-600a", alias = "r600a", alias = "600a"))]
    R600a = 12,
    /// Butane.
    #[cfg_attr(feature = "serde", serde(rename = "R-600", alias = "r600", alias = "600"))]
    R600 = 13,
    /// 1-Chloro-1,2,2,2-tetrafluoroethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-124", alias = "r124", alias = "124"))]
    R124 = 14,
    /// 1-Chloro-1,1-difluoroethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-142b", alias = "r142b", alias = "142b"))]
    R142b = 15,
    /// Chloropentafluoroethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-115", alias = "r115", alias = "115"))]
    R115 = 16,
    /// Octafluoropropane.
    #[cfg_attr(feature = "serde", serde(rename = "R-218", alias = "r218", alias = "218"))]
    R218 = 17,
    /// 1,1,1,2,3,3,3-Heptafluoropropane.
    #[cfg_attr(feature = "serde", serde(rename = "R-227ea", alias = "r227ea", alias = "227ea"))]
    R227ea = 18,
    /// Trifluoroiodomethane.
    #[cfg_attr(feature = "serde", serde(rename = "R-13I1", alias = "r13i1", alias = "13i1"))]
    R13I1 = 19,
    /// Isopentane.
    #[cfg_attr(feature = "serde", serde(rename = "R-601a", alias = "r601a", alias = "601a"))]
    R601a = 20,
    /// trans-1,1,1,4,4,4-Hexafluorobut-2-ene.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "R-1336mzz(E)",
            alias = "r1336mzz(e)",
            alias = "1336mzz(e)",
            alias = "r1336mzze",
            alias = "1336mzze"
        )
    )]
    R1336mzzE = 21,
    /// trans-1,2-Difluoroethene.
    #[cfg_attr(
        feature = "serde",
        serde(
            rename = "R-1132(E)",
            alias = "r1132(e)",
            alias = "1132(e)",
            alias = "r1132e",
            alias = "1132e"
        )
    )]
    R1132E = 22,
    /// Blend of R-125, R-143a and R-134a, 44/52/4 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-404A", alias = "r404a", alias = "404a"))]
    R404A = 23,
    /// Blend of R-32, R-125 and R-134a, 20/40/40 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-407A", alias = "r407a", alias = "407a"))]
    R407A = 24,
    /// Blend of R-32, R-125 and R-134a, 23/25/52 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-407C", alias = "r407c", alias = "407c"))]
    R407C = 25,
    /// Blend of R-32, R-125 and R-134a, 30/30/40 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-407F", alias = "r407f", alias = "407f"))]
    R407F = 26,
    /// Blend of R-32 and R-125, 50/50 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-410A", alias = "r410a", alias = "410a"))]
    R410A = 27,
    /// Blend of R-32, R-125 and R-1234yf, 11/59/30 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-452A", alias = "r452a", alias = "452a"))]
    R452A = 28,
    /// Blend of R-32, R-125, R-1234yf, R-134a and R-1234ze(E), 26/26/20/21/7 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-448A", alias = "r448a", alias = "448a"))]
    R448A = 29,
    /// Blend of R-32, R-125, R-1234yf and R-134a, 24.3/24.7/25.3/25.7 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-449A", alias = "r449a", alias = "449a"))]
    R449A = 30,
    /// Blend of R-32 and R-1234yf, 68.9/31.1 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-454B", alias = "r454b", alias = "454b"))]
    R454B = 31,
    /// Blend of R-32 and R-1234yf, 21.5/78.5 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-454C", alias = "r454c", alias = "454c"))]
    R454C = 32,
    /// Blend of R-744, R-32 and R-1234yf, 3/21.5/75.5 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-455A", alias = "r455a", alias = "455a"))]
    R455A = 33,
    /// Blend of R-1234yf and R-134a, 56/44 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-513A", alias = "r513a", alias = "513a"))]
    R513A = 34,
    /// Blend of R-134a and R-1234ze(E), 42/58 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-450A", alias = "r450a", alias = "450a"))]
    R450A = 35,
    /// Blend of R-125 and R-143a, 50/50 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-507A", alias = "r507a", alias = "507a"))]
    R507A = 36,
    /// Blend of R-125, R-134a and R-600a, 65.1/31.5/3.4 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-422D", alias = "r422d", alias = "422d"))]
    R422D = 37,
    /// Blend of R-32, R-125, R-134a, R-600 and R-601a, 8.5/45/44.2/1.7/0.6 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-438A", alias = "r438a", alias = "438a"))]
    R438A = 38,
    /// Blend of R-22, R-152a and R-124, 33/15/52 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-401C", alias = "r401c", alias = "401c"))]
    R401C = 39,
    /// Blend of R-22, R-600a and R-142b, 55/4/41 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-406A", alias = "r406a", alias = "406a"))]
    R406A = 40,
    /// Blend of R-22, R-124 and R-142b, 60/25/15 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-409A", alias = "r409a", alias = "409a"))]
    R409A = 41,
    /// Blend of R-218, R-134a and R-600a, 9/88/3 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-413A", alias = "r413a", alias = "413a"))]
    R413A = 42,
    /// Blend of R-22, R-124, R-600a and R-142b, 51/28.5/4/16.5 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-414A", alias = "r414a", alias = "414a"))]
    R414A = 43,
    /// Blend of R-22, R-124, R-600a and R-142b, 50/39/1.5/9.5 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-414B", alias = "r414b", alias = "414b"))]
    R414B = 44,
    /// Blend of R-134a, R-124 and R-600, 59/39.5/1.5 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-416A", alias = "r416a", alias = "416a"))]
    R416A = 45,
    /// Blend of R-134a and R-142b, 88/12 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-420A", alias = "r420a", alias = "420a"))]
    R420A = 46,
    /// Blend of R-125, R-134a, R-600 and R-601a, 5.1/93/1.3/0.6 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-426A", alias = "r426a", alias = "426a"))]
    R426A = 47,
    /// Blend of R-12 and R-152a, 73.8/26.2 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-500", alias = "r500", alias = "500"))]
    R500 = 48,
    /// Blend of R-22 and R-115, 48.8/51.2 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-502", alias = "r502", alias = "502"))]
    R502 = 49,
    /// Blend of R-32, R-152a and R-1234ze(E), 12/5/83 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-444A", alias = "r444a", alias = "444a"))]
    R444A = 50,
    /// Blend of R-744, R-134a and R-1234ze(E), 6/9/85 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-445A", alias = "r445a", alias = "445a"))]
    R445A = 51,
    /// Blend of R-32, R-134a and R-1234ze(E), 6/45/49 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-456A", alias = "r456a", alias = "456a"))]
    R456A = 52,
    /// Blend of R-32, R-1234yf and R-152a, 18/70/12 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-457A", alias = "r457a", alias = "457a"))]
    R457A = 53,
    /// Blend of R-1132(E) and R-1234yf, 23/77 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-474A", alias = "r474a", alias = "474a"))]
    R474A = 54,
    /// Blend of R-1234yf, R-134a and R-152a, 77.5/8.5/14 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-516A", alias = "r516a", alias = "516a"))]
    R516A = 55,
    /// Pentane.
    #[cfg_attr(feature = "serde", serde(rename = "R-601", alias = "r601", alias = "601"))]
    R601 = 56,
    /// Blend of R-125, R-134a, R-600 and R-601, 19.5/78.5/1.4/0.6 % by mass.
    #[cfg_attr(feature = "serde", serde(rename = "R-437A", alias = "r437a", alias = "437a"))]
    R437A = 57,
}

impl Refrigerant {
    /// Every member, in the order of the table.
    pub const ALL: [Refrigerant; 57] = [
        Refrigerant::R134a,
        Refrigerant::R1234yf,
        Refrigerant::R744,
        Refrigerant::R152a,
        Refrigerant::R12,
        Refrigerant::R22,
        Refrigerant::R1234zeE,
        Refrigerant::R32,
        Refrigerant::R125,
        Refrigerant::R143a,
        Refrigerant::R290,
        Refrigerant::R600a,
        Refrigerant::R600,
        Refrigerant::R124,
        Refrigerant::R142b,
        Refrigerant::R115,
        Refrigerant::R218,
        Refrigerant::R227ea,
        Refrigerant::R13I1,
        Refrigerant::R601a,
        Refrigerant::R1336mzzE,
        Refrigerant::R1132E,
        Refrigerant::R404A,
        Refrigerant::R407A,
        Refrigerant::R407C,
        Refrigerant::R407F,
        Refrigerant::R410A,
        Refrigerant::R452A,
        Refrigerant::R448A,
        Refrigerant::R449A,
        Refrigerant::R454B,
        Refrigerant::R454C,
        Refrigerant::R455A,
        Refrigerant::R513A,
        Refrigerant::R450A,
        Refrigerant::R507A,
        Refrigerant::R422D,
        Refrigerant::R438A,
        Refrigerant::R401C,
        Refrigerant::R406A,
        Refrigerant::R409A,
        Refrigerant::R413A,
        Refrigerant::R414A,
        Refrigerant::R414B,
        Refrigerant::R416A,
        Refrigerant::R420A,
        Refrigerant::R426A,
        Refrigerant::R500,
        Refrigerant::R502,
        Refrigerant::R444A,
        Refrigerant::R445A,
        Refrigerant::R456A,
        Refrigerant::R457A,
        Refrigerant::R474A,
        Refrigerant::R516A,
        Refrigerant::R601,
        Refrigerant::R437A,
    ];

    const SPELLINGS: [(Refrigerant, &'static [&'static str]); 57] = [
        (Refrigerant::R134a, &["R-134a", "r134a", "134a"]),
        (Refrigerant::R1234yf, &["R-1234yf", "r1234yf", "1234yf"]),
        (Refrigerant::R744, &["R-744", "r744", "744"]),
        (Refrigerant::R152a, &["R-152a", "r152a", "152a"]),
        (Refrigerant::R12, &["R-12", "r12", "12"]),
        (Refrigerant::R22, &["R-22", "r22", "22"]),
        (
            Refrigerant::R1234zeE,
            &["R-1234ze(E)", "r1234ze(e)", "1234ze(e)", "r1234zee", "1234zee"],
        ),
        (Refrigerant::R32, &["R-32", "r32", "32"]),
        (Refrigerant::R125, &["R-125", "r125", "125"]),
        (Refrigerant::R143a, &["R-143a", "r143a", "143a"]),
        (Refrigerant::R290, &["R-290", "r290", "290"]),
        (Refrigerant::R600a, &["R-600a", "r600a", "600a"]),
        (Refrigerant::R600, &["R-600", "r600", "600"]),
        (Refrigerant::R124, &["R-124", "r124", "124"]),
        (Refrigerant::R142b, &["R-142b", "r142b", "142b"]),
        (Refrigerant::R115, &["R-115", "r115", "115"]),
        (Refrigerant::R218, &["R-218", "r218", "218"]),
        (Refrigerant::R227ea, &["R-227ea", "r227ea", "227ea"]),
        (Refrigerant::R13I1, &["R-13I1", "r13i1", "13i1"]),
        (Refrigerant::R601a, &["R-601a", "r601a", "601a"]),
        (
            Refrigerant::R1336mzzE,
            &["R-1336mzz(E)", "r1336mzz(e)", "1336mzz(e)", "r1336mzze", "1336mzze"],
        ),
        (
            Refrigerant::R1132E,
            &["R-1132(E)", "r1132(e)", "1132(e)", "r1132e", "1132e"],
        ),
        (Refrigerant::R404A, &["R-404A", "r404a", "404a"]),
        (Refrigerant::R407A, &["R-407A", "r407a", "407a"]),
        (Refrigerant::R407C, &["R-407C", "r407c", "407c"]),
        (Refrigerant::R407F, &["R-407F", "r407f", "407f"]),
        (Refrigerant::R410A, &["R-410A", "r410a", "410a"]),
        (Refrigerant::R452A, &["R-452A", "r452a", "452a"]),
        (Refrigerant::R448A, &["R-448A", "r448a", "448a"]),
        (Refrigerant::R449A, &["R-449A", "r449a", "449a"]),
        (Refrigerant::R454B, &["R-454B", "r454b", "454b"]),
        (Refrigerant::R454C, &["R-454C", "r454c", "454c"]),
        (Refrigerant::R455A, &["R-455A", "r455a", "455a"]),
        (Refrigerant::R513A, &["R-513A", "r513a", "513a"]),
        (Refrigerant::R450A, &["R-450A", "r450a", "450a"]),
        (Refrigerant::R507A, &["R-507A", "r507a", "507a"]),
        (Refrigerant::R422D, &["R-422D", "r422d", "422d"]),
        (Refrigerant::R438A, &["R-438A", "r438a", "438a"]),
        (Refrigerant::R401C, &["R-401C", "r401c", "401c"]),
        (Refrigerant::R406A, &["R-406A", "r406a", "406a"]),
        (Refrigerant::R409A, &["R-409A", "r409a", "409a"]),
        (Refrigerant::R413A, &["R-413A", "r413a", "413a"]),
        (Refrigerant::R414A, &["R-414A", "r414a", "414a"]),
        (Refrigerant::R414B, &["R-414B", "r414b", "414b"]),
        (Refrigerant::R416A, &["R-416A", "r416a", "416a"]),
        (Refrigerant::R420A, &["R-420A", "r420a", "420a"]),
        (Refrigerant::R426A, &["R-426A", "r426a", "426a"]),
        (Refrigerant::R500, &["R-500", "r500", "500"]),
        (Refrigerant::R502, &["R-502", "r502", "502"]),
        (Refrigerant::R444A, &["R-444A", "r444a", "444a"]),
        (Refrigerant::R445A, &["R-445A", "r445a", "445a"]),
        (Refrigerant::R456A, &["R-456A", "r456a", "456a"]),
        (Refrigerant::R457A, &["R-457A", "r457a", "457a"]),
        (Refrigerant::R474A, &["R-474A", "r474a", "474a"]),
        (Refrigerant::R516A, &["R-516A", "r516a", "516a"]),
        (Refrigerant::R601, &["R-601", "r601", "601"]),
        (Refrigerant::R437A, &["R-437A", "r437a", "437a"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Refrigerant::R134a => "1,1,1,2-Tetrafluoroethane.",
            Refrigerant::R1234yf => "2,3,3,3-Tetrafluoroprop-1-ene.",
            Refrigerant::R744 => "Carbon dioxide.",
            Refrigerant::R152a => "1,1-Difluoroethane.",
            Refrigerant::R12 => "Dichlorodifluoromethane.",
            Refrigerant::R22 => "Chlorodifluoromethane.",
            Refrigerant::R1234zeE => "trans-1,3,3,3-Tetrafluoroprop-1-ene.",
            Refrigerant::R32 => "Difluoromethane.",
            Refrigerant::R125 => "Pentafluoroethane.",
            Refrigerant::R143a => "1,1,1-Trifluoroethane.",
            Refrigerant::R290 => "Propane.",
            Refrigerant::R600a => "Isobutane.",
            Refrigerant::R600 => "Butane.",
            Refrigerant::R124 => "1-Chloro-1,2,2,2-tetrafluoroethane.",
            Refrigerant::R142b => "1-Chloro-1,1-difluoroethane.",
            Refrigerant::R115 => "Chloropentafluoroethane.",
            Refrigerant::R218 => "Octafluoropropane.",
            Refrigerant::R227ea => "1,1,1,2,3,3,3-Heptafluoropropane.",
            Refrigerant::R13I1 => "Trifluoroiodomethane.",
            Refrigerant::R601a => "Isopentane.",
            Refrigerant::R1336mzzE => "trans-1,1,1,4,4,4-Hexafluorobut-2-ene.",
            Refrigerant::R1132E => "trans-1,2-Difluoroethene.",
            Refrigerant::R404A => "Blend of R-125, R-143a and R-134a, 44/52/4 % by mass.",
            Refrigerant::R407A => "Blend of R-32, R-125 and R-134a, 20/40/40 % by mass.",
            Refrigerant::R407C => "Blend of R-32, R-125 and R-134a, 23/25/52 % by mass.",
            Refrigerant::R407F => "Blend of R-32, R-125 and R-134a, 30/30/40 % by mass.",
            Refrigerant::R410A => "Blend of R-32 and R-125, 50/50 % by mass.",
            Refrigerant::R452A => "Blend of R-32, R-125 and R-1234yf, 11/59/30 % by mass.",
            Refrigerant::R448A => "Blend of R-32, R-125, R-1234yf, R-134a and R-1234ze(E), 26/26/20/21/7 % by mass.",
            Refrigerant::R449A => "Blend of R-32, R-125, R-1234yf and R-134a, 24.3/24.7/25.3/25.7 % by mass.",
            Refrigerant::R454B => "Blend of R-32 and R-1234yf, 68.9/31.1 % by mass.",
            Refrigerant::R454C => "Blend of R-32 and R-1234yf, 21.5/78.5 % by mass.",
            Refrigerant::R455A => "Blend of R-744, R-32 and R-1234yf, 3/21.5/75.5 % by mass.",
            Refrigerant::R513A => "Blend of R-1234yf and R-134a, 56/44 % by mass.",
            Refrigerant::R450A => "Blend of R-134a and R-1234ze(E), 42/58 % by mass.",
            Refrigerant::R507A => "Blend of R-125 and R-143a, 50/50 % by mass.",
            Refrigerant::R422D => "Blend of R-125, R-134a and R-600a, 65.1/31.5/3.4 % by mass.",
            Refrigerant::R438A => "Blend of R-32, R-125, R-134a, R-600 and R-601a, 8.5/45/44.2/1.7/0.6 % by mass.",
            Refrigerant::R401C => "Blend of R-22, R-152a and R-124, 33/15/52 % by mass.",
            Refrigerant::R406A => "Blend of R-22, R-600a and R-142b, 55/4/41 % by mass.",
            Refrigerant::R409A => "Blend of R-22, R-124 and R-142b, 60/25/15 % by mass.",
            Refrigerant::R413A => "Blend of R-218, R-134a and R-600a, 9/88/3 % by mass.",
            Refrigerant::R414A => "Blend of R-22, R-124, R-600a and R-142b, 51/28.5/4/16.5 % by mass.",
            Refrigerant::R414B => "Blend of R-22, R-124, R-600a and R-142b, 50/39/1.5/9.5 % by mass.",
            Refrigerant::R416A => "Blend of R-134a, R-124 and R-600, 59/39.5/1.5 % by mass.",
            Refrigerant::R420A => "Blend of R-134a and R-142b, 88/12 % by mass.",
            Refrigerant::R426A => "Blend of R-125, R-134a, R-600 and R-601a, 5.1/93/1.3/0.6 % by mass.",
            Refrigerant::R500 => "Blend of R-12 and R-152a, 73.8/26.2 % by mass.",
            Refrigerant::R502 => "Blend of R-22 and R-115, 48.8/51.2 % by mass.",
            Refrigerant::R444A => "Blend of R-32, R-152a and R-1234ze(E), 12/5/83 % by mass.",
            Refrigerant::R445A => "Blend of R-744, R-134a and R-1234ze(E), 6/9/85 % by mass.",
            Refrigerant::R456A => "Blend of R-32, R-134a and R-1234ze(E), 6/45/49 % by mass.",
            Refrigerant::R457A => "Blend of R-32, R-1234yf and R-152a, 18/70/12 % by mass.",
            Refrigerant::R474A => "Blend of R-1132(E) and R-1234yf, 23/77 % by mass.",
            Refrigerant::R516A => "Blend of R-1234yf, R-134a and R-152a, 77.5/8.5/14 % by mass.",
            Refrigerant::R601 => "Pentane.",
            Refrigerant::R437A => "Blend of R-125, R-134a, R-600 and R-601, 19.5/78.5/1.4/0.6 % by mass.",
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
            3 => Some(Refrigerant::R744),
            4 => Some(Refrigerant::R152a),
            5 => Some(Refrigerant::R12),
            6 => Some(Refrigerant::R22),
            7 => Some(Refrigerant::R1234zeE),
            8 => Some(Refrigerant::R32),
            9 => Some(Refrigerant::R125),
            10 => Some(Refrigerant::R143a),
            11 => Some(Refrigerant::R290),
            12 => Some(Refrigerant::R600a),
            13 => Some(Refrigerant::R600),
            14 => Some(Refrigerant::R124),
            15 => Some(Refrigerant::R142b),
            16 => Some(Refrigerant::R115),
            17 => Some(Refrigerant::R218),
            18 => Some(Refrigerant::R227ea),
            19 => Some(Refrigerant::R13I1),
            20 => Some(Refrigerant::R601a),
            21 => Some(Refrigerant::R1336mzzE),
            22 => Some(Refrigerant::R1132E),
            23 => Some(Refrigerant::R404A),
            24 => Some(Refrigerant::R407A),
            25 => Some(Refrigerant::R407C),
            26 => Some(Refrigerant::R407F),
            27 => Some(Refrigerant::R410A),
            28 => Some(Refrigerant::R452A),
            29 => Some(Refrigerant::R448A),
            30 => Some(Refrigerant::R449A),
            31 => Some(Refrigerant::R454B),
            32 => Some(Refrigerant::R454C),
            33 => Some(Refrigerant::R455A),
            34 => Some(Refrigerant::R513A),
            35 => Some(Refrigerant::R450A),
            36 => Some(Refrigerant::R507A),
            37 => Some(Refrigerant::R422D),
            38 => Some(Refrigerant::R438A),
            39 => Some(Refrigerant::R401C),
            40 => Some(Refrigerant::R406A),
            41 => Some(Refrigerant::R409A),
            42 => Some(Refrigerant::R413A),
            43 => Some(Refrigerant::R414A),
            44 => Some(Refrigerant::R414B),
            45 => Some(Refrigerant::R416A),
            46 => Some(Refrigerant::R420A),
            47 => Some(Refrigerant::R426A),
            48 => Some(Refrigerant::R500),
            49 => Some(Refrigerant::R502),
            50 => Some(Refrigerant::R444A),
            51 => Some(Refrigerant::R445A),
            52 => Some(Refrigerant::R456A),
            53 => Some(Refrigerant::R457A),
            54 => Some(Refrigerant::R474A),
            55 => Some(Refrigerant::R516A),
            56 => Some(Refrigerant::R601),
            57 => Some(Refrigerant::R437A),
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

impl Refrigerant {
    const CALLED: [(Refrigerant, &'static [&'static str]); 13] = [
        (Refrigerant::R134a, &["1,1,1,2-tetrafluoroethane"]),
        (
            Refrigerant::R1234yf,
            &["yf", "2,3,3,3-tetrafluoropropene", "2,3,3,3-tetrafluoroprop-1-ene"],
        ),
        (Refrigerant::R744, &["CO2", "CO₂", "carbon dioxide"]),
        (Refrigerant::R152a, &["1,1-difluoroethane"]),
        (Refrigerant::R12, &["dichlorodifluoromethane"]),
        (Refrigerant::R22, &["chlorodifluoromethane"]),
        (
            Refrigerant::R1234zeE,
            &["R-1234ze", "1234ze", "trans-1,3,3,3-tetrafluoropropene"],
        ),
        (Refrigerant::R32, &["difluoromethane"]),
        (Refrigerant::R290, &["propane", "HC-290"]),
        (Refrigerant::R600a, &["isobutane", "2-methylpropane", "HC-600a"]),
        (Refrigerant::R600, &["butane", "n-butane", "HC-600"]),
        (Refrigerant::R601a, &["isopentane", "2-methylbutane", "HC-601a"]),
        (Refrigerant::R601, &["pentane", "n-pentane", "HC-601"]),
    ];

    /// The member that a text means, also by a common name or with capitals, spaces and strokes as they come:
    /// [`Refrigerant::from_id`] accepts none of these, and its refusal can say what to write. Source: common practice, no source.
    ///
    /// ```
    /// use coldloop::Refrigerant;
    /// assert_eq!(Refrigerant::from_id("1,1,1,2-tetrafluoroethane"), None);
    /// assert_eq!(Refrigerant::meant_by("1,1,1,2-tetrafluoroethane"), Some(Refrigerant::R134a));
    /// assert_eq!(Refrigerant::meant_by("colour"), None);
    /// ```
    pub fn meant_by(text: &str) -> Option<Self> {
        meant(
            &Self::SPELLINGS,
            &Self::CALLED,
            &["CFC-", "HCFC-", "HFC-", "HFO-", "HCFO-", "refrigerant ", "freon "],
            text,
        )
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Expansion {
    /// Thermostatic expansion valve, with a receiver-drier.
    #[cfg_attr(feature = "serde", serde(rename = "txv"))]
    Txv = 1,
    /// Fixed orifice tube, with a suction accumulator.
    #[cfg_attr(feature = "serde", serde(rename = "orifice-tube"))]
    OrificeTube = 2,
}

impl Expansion {
    /// Every member, in the order of the table.
    pub const ALL: [Expansion; 2] = [Expansion::Txv, Expansion::OrificeTube];

    const SPELLINGS: [(Expansion, &'static [&'static str]); 2] =
        [(Expansion::Txv, &["txv"]), (Expansion::OrificeTube, &["orifice-tube"])];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Compressor {
    /// Fixed displacement, cycled by a clutch.
    #[cfg_attr(feature = "serde", serde(rename = "fixed-clutch"))]
    FixedClutch = 1,
    /// Variable displacement, controlled by its own valve.
    #[cfg_attr(feature = "serde", serde(rename = "variable-internal"))]
    VariableInternal = 2,
    /// Variable displacement, controlled by an electric valve.
    #[cfg_attr(feature = "serde", serde(rename = "variable-external"))]
    VariableExternal = 3,
    /// Motor-driven, controlled by speed; high voltage.
    #[cfg_attr(feature = "serde", serde(rename = "electric"))]
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
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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

/// The size of a vehicle, which sets the typical hardware of its air conditioning.
///
/// ```
/// use coldloop::VehicleClass;
/// assert_eq!(VehicleClass::SmallCar.id(), "small-car");
/// assert_eq!(VehicleClass::from_id("small-car"), Some(VehicleClass::SmallCar));
/// assert_eq!(VehicleClass::from_code(1), Some(VehicleClass::SmallCar));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum VehicleClass {
    /// Small car.
    #[cfg_attr(feature = "serde", serde(rename = "small-car"))]
    SmallCar = 1,
    /// Car of the middle class, or a machine's cab.
    #[cfg_attr(feature = "serde", serde(rename = "car"))]
    Car = 2,
    /// Large car or pickup.
    #[cfg_attr(feature = "serde", serde(rename = "large-car"))]
    LargeCar = 3,
    /// Van or minibus.
    #[cfg_attr(feature = "serde", serde(rename = "van"))]
    Van = 4,
    /// Bus or coach with a roof unit.
    #[cfg_attr(feature = "serde", serde(rename = "bus"))]
    Bus = 5,
}

impl VehicleClass {
    /// Every member, in the order of the table.
    pub const ALL: [VehicleClass; 5] = [
        VehicleClass::SmallCar,
        VehicleClass::Car,
        VehicleClass::LargeCar,
        VehicleClass::Van,
        VehicleClass::Bus,
    ];

    const SPELLINGS: [(VehicleClass, &'static [&'static str]); 5] = [
        (VehicleClass::SmallCar, &["small-car"]),
        (VehicleClass::Car, &["car"]),
        (VehicleClass::LargeCar, &["large-car"]),
        (VehicleClass::Van, &["van"]),
        (VehicleClass::Bus, &["bus"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            VehicleClass::SmallCar => "Small car.",
            VehicleClass::Car => "Car of the middle class, or a machine's cab.",
            VehicleClass::LargeCar => "Large car or pickup.",
            VehicleClass::Van => "Van or minibus.",
            VehicleClass::Bus => "Bus or coach with a roof unit.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(VehicleClass::SmallCar),
            2 => Some(VehicleClass::Car),
            3 => Some(VehicleClass::LargeCar),
            4 => Some(VehicleClass::Van),
            5 => Some(VehicleClass::Bus),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for VehicleClass {
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum AirSource {
    /// Outside air.
    #[cfg_attr(feature = "serde", serde(rename = "fresh"))]
    Fresh = 1,
    /// Cabin air.
    #[cfg_attr(feature = "serde", serde(rename = "recirculated"))]
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
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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

/// Where the low-side port stands.
///
/// ```
/// use coldloop::LowPort;
/// assert_eq!(LowPort::Evaporator.id(), "evaporator");
/// assert_eq!(LowPort::from_id("evaporator"), Some(LowPort::Evaporator));
/// assert_eq!(LowPort::from_code(1), Some(LowPort::Evaporator));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum LowPort {
    /// At the evaporator or accumulator, before the suction line.
    #[cfg_attr(feature = "serde", serde(rename = "evaporator"))]
    Evaporator = 1,
    /// At the compressor, behind the suction line.
    #[cfg_attr(feature = "serde", serde(rename = "compressor"))]
    Compressor = 2,
}

impl LowPort {
    /// Every member, in the order of the table.
    pub const ALL: [LowPort; 2] = [LowPort::Evaporator, LowPort::Compressor];

    const SPELLINGS: [(LowPort, &'static [&'static str]); 2] = [
        (LowPort::Evaporator, &["evaporator"]),
        (LowPort::Compressor, &["compressor"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            LowPort::Evaporator => "At the evaporator or accumulator, before the suction line.",
            LowPort::Compressor => "At the compressor, behind the suction line.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(LowPort::Evaporator),
            2 => Some(LowPort::Compressor),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for LowPort {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// Where the high-side port stands.
///
/// ```
/// use coldloop::HighPort;
/// assert_eq!(HighPort::Discharge.id(), "discharge-line");
/// assert_eq!(HighPort::from_id("discharge-line"), Some(HighPort::Discharge));
/// assert_eq!(HighPort::from_code(1), Some(HighPort::Discharge));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum HighPort {
    /// On the discharge line, before the condenser.
    #[cfg_attr(feature = "serde", serde(rename = "discharge-line"))]
    Discharge = 1,
    /// On the liquid line, behind the condenser.
    #[cfg_attr(feature = "serde", serde(rename = "liquid-line"))]
    Liquid = 2,
}

impl HighPort {
    /// Every member, in the order of the table.
    pub const ALL: [HighPort; 2] = [HighPort::Discharge, HighPort::Liquid];

    const SPELLINGS: [(HighPort, &'static [&'static str]); 2] = [
        (HighPort::Discharge, &["discharge-line"]),
        (HighPort::Liquid, &["liquid-line"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            HighPort::Discharge => "On the discharge line, before the condenser.",
            HighPort::Liquid => "On the liquid line, behind the condenser.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(HighPort::Discharge),
            2 => Some(HighPort::Liquid),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for HighPort {
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum ReadingKind {
    /// Low-side pressure.
    #[cfg_attr(feature = "serde", serde(rename = "low_side"))]
    LowSide = 1,
    /// High-side pressure.
    #[cfg_attr(feature = "serde", serde(rename = "high_side"))]
    HighSide = 2,
    /// Air temperature at the centre vent.
    #[cfg_attr(feature = "serde", serde(rename = "vent"))]
    Vent = 3,
    /// Cabin air temperature.
    #[cfg_attr(feature = "serde", serde(rename = "cabin"))]
    Cabin = 4,
    /// Temperature of the suction line at the compressor.
    #[cfg_attr(feature = "serde", serde(rename = "suction_line"))]
    SuctionLine = 5,
    /// Temperature of the discharge line at the compressor.
    #[cfg_attr(feature = "serde", serde(rename = "discharge_line"))]
    DischargeLine = 6,
    /// Temperature of the liquid line before the expansion device.
    #[cfg_attr(feature = "serde", serde(rename = "liquid_line"))]
    LiquidLine = 7,
    /// Temperature of the line at the condenser outlet.
    #[cfg_attr(feature = "serde", serde(rename = "condenser_outlet"))]
    CondenserOutlet = 8,
    /// Clutch engagements per minute.
    #[cfg_attr(feature = "serde", serde(rename = "clutch_cycles"))]
    ClutchCycles = 9,
    /// High-side pressure that the vehicle's own transducer tells a scan tool.
    #[cfg_attr(feature = "serde", serde(rename = "high_side_transducer"))]
    HighSideTransducer = 10,
    /// Temperature of the fins, or of the air behind the evaporator, that the vehicle's own sensor tells a scan tool.
    #[cfg_attr(feature = "serde", serde(rename = "evaporator_sensor"))]
    EvaporatorSensor = 11,
}

impl ReadingKind {
    /// Every member, in the order of the table.
    pub const ALL: [ReadingKind; 11] = [
        ReadingKind::LowSide,
        ReadingKind::HighSide,
        ReadingKind::Vent,
        ReadingKind::Cabin,
        ReadingKind::SuctionLine,
        ReadingKind::DischargeLine,
        ReadingKind::LiquidLine,
        ReadingKind::CondenserOutlet,
        ReadingKind::ClutchCycles,
        ReadingKind::HighSideTransducer,
        ReadingKind::EvaporatorSensor,
    ];

    const SPELLINGS: [(ReadingKind, &'static [&'static str]); 11] = [
        (ReadingKind::LowSide, &["low_side"]),
        (ReadingKind::HighSide, &["high_side"]),
        (ReadingKind::Vent, &["vent"]),
        (ReadingKind::Cabin, &["cabin"]),
        (ReadingKind::SuctionLine, &["suction_line"]),
        (ReadingKind::DischargeLine, &["discharge_line"]),
        (ReadingKind::LiquidLine, &["liquid_line"]),
        (ReadingKind::CondenserOutlet, &["condenser_outlet"]),
        (ReadingKind::ClutchCycles, &["clutch_cycles"]),
        (ReadingKind::HighSideTransducer, &["high_side_transducer"]),
        (ReadingKind::EvaporatorSensor, &["evaporator_sensor"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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
            ReadingKind::HighSideTransducer => {
                "High-side pressure that the vehicle's own transducer tells a scan tool."
            }
            ReadingKind::EvaporatorSensor => {
                "Temperature of the fins, or of the air behind the evaporator, that the vehicle's own sensor tells a scan tool."
            }
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
            10 => Some(ReadingKind::HighSideTransducer),
            11 => Some(ReadingKind::EvaporatorSensor),
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum GaugeClass {
    /// EN 837-1 class 1.0: within 1 % of the span.
    #[cfg_attr(feature = "serde", serde(rename = "class-1.0"))]
    Class1 = 1,
    /// EN 837-1 class 1.6: within 1.6 % of the span.
    #[cfg_attr(feature = "serde", serde(rename = "class-1.6"))]
    Class1p6 = 2,
    /// EN 837-1 class 2.5: within 2.5 % of the span.
    #[cfg_attr(feature = "serde", serde(rename = "class-2.5"))]
    Class2p5 = 3,
    /// ASME B40.100 grade A: within 1 % of the span in its middle half, 2 % outside.
    #[cfg_attr(feature = "serde", serde(rename = "grade-A"))]
    GradeA = 4,
    /// ASME B40.100 grade B: within 2 % of the span in its middle half, 3 % outside.
    #[cfg_attr(feature = "serde", serde(rename = "grade-B"))]
    GradeB = 5,
    /// Electronic manifold: within 0.5 % of the span.
    #[cfg_attr(feature = "serde", serde(rename = "digital"))]
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
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Thermometer {
    /// Thermocouple of type K, clamped to the line.
    #[cfg_attr(feature = "serde", serde(rename = "clamp-thermocouple"))]
    ClampThermocouple = 1,
    /// Thermistor, clamped to the line.
    #[cfg_attr(feature = "serde", serde(rename = "clamp-thermistor"))]
    ClampThermistor = 2,
    /// Bimetal thermometer with a stem and a dial.
    #[cfg_attr(feature = "serde", serde(rename = "pocket-dial"))]
    PocketDial = 3,
    /// Electronic thermometer with a stem.
    #[cfg_attr(feature = "serde", serde(rename = "pocket-digital"))]
    PocketDigital = 4,
    /// Infrared thermometer on a dull dark spot of the line.
    #[cfg_attr(feature = "serde", serde(rename = "infrared"))]
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
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Fault {
    /// No fault: the system is normal.
    #[cfg_attr(feature = "serde", serde(rename = "no-fault"))]
    NoFault = 0,
    /// The compressor pumps too little: worn pistons, valves or gasket.
    #[cfg_attr(feature = "serde", serde(rename = "worn-compressor"))]
    WornCompressor = 1,
    /// Too little refrigerant.
    #[cfg_attr(feature = "serde", serde(rename = "undercharge"))]
    Undercharge = 2,
    /// Too much refrigerant.
    #[cfg_attr(feature = "serde", serde(rename = "overcharge"))]
    Overcharge = 3,
    /// Too little air through the condenser: dirt, fan, shroud.
    #[cfg_attr(feature = "serde", serde(rename = "condenser-airflow-loss"))]
    CondenserAirflowLoss = 4,
    /// Air or another non-condensable gas in the circuit.
    #[cfg_attr(feature = "serde", serde(rename = "non-condensables"))]
    NonCondensables = 5,
    /// A restriction between condenser and expansion device, drier included.
    #[cfg_attr(feature = "serde", serde(rename = "liquid-line-restriction"))]
    LiquidLineRestriction = 6,
    /// The expansion valve feeds too much.
    #[cfg_attr(feature = "serde", serde(rename = "expansion-valve-stuck-open"))]
    ExpansionValveStuckOpen = 7,
    /// The expansion valve feeds too little.
    #[cfg_attr(feature = "serde", serde(rename = "expansion-valve-stuck-closed"))]
    ExpansionValveStuckClosed = 8,
    /// The orifice tube or its screen is clogged.
    #[cfg_attr(feature = "serde", serde(rename = "orifice-restricted"))]
    OrificeRestricted = 9,
    /// Too little air over the evaporator: filter, blower, dirt.
    #[cfg_attr(feature = "serde", serde(rename = "evaporator-airflow-loss"))]
    EvaporatorAirflowLoss = 10,
    /// Frost blocks the evaporator because its low limit fails.
    #[cfg_attr(feature = "serde", serde(rename = "evaporator-icing"))]
    EvaporatorIcing = 11,
    /// Water in the refrigerant freezes at the expansion device.
    #[cfg_attr(feature = "serde", serde(rename = "moisture-icing"))]
    MoistureIcing = 12,
    /// The displacement or speed control holds the compressor back.
    #[cfg_attr(feature = "serde", serde(rename = "compressor-control-fault"))]
    CompressorControlFault = 13,
    /// The compressor is not driven.
    #[cfg_attr(feature = "serde", serde(rename = "clutch-not-engaged"))]
    ClutchNotEngaged = 14,
    /// The clutch or the belt slips.
    #[cfg_attr(feature = "serde", serde(rename = "clutch-slipping"))]
    ClutchSlipping = 15,
    /// Warm air joins the cold: blend door or heater valve.
    #[cfg_attr(feature = "serde", serde(rename = "heater-air-mixing"))]
    HeaterAirMixing = 16,
    /// A restriction between compressor and condenser outlet.
    #[cfg_attr(feature = "serde", serde(rename = "high-side-restriction"))]
    HighSideRestriction = 17,
    /// A restriction between evaporator and compressor.
    #[cfg_attr(feature = "serde", serde(rename = "suction-line-restriction"))]
    SuctionLineRestriction = 18,
    /// The charge is another refrigerant or a mixture.
    #[cfg_attr(feature = "serde", serde(rename = "wrong-refrigerant"))]
    WrongRefrigerant = 19,
    /// A gauge, its zero, its unit, its hose or a thermometer misleads.
    #[cfg_attr(feature = "serde", serde(rename = "gauge-error"))]
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
        Self::SPELLINGS[self.code() as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Fault::NoFault => "No fault: the system is normal.",
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
            Fault::GaugeError => "A gauge, its zero, its unit, its hose or a thermometer misleads.",
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum VerdictKind {
    /// No fault stands out: the readings are normal here today.
    #[cfg_attr(feature = "serde", serde(rename = "healthy"))]
    Healthy = 1,
    /// One fault explains the readings.
    #[cfg_attr(feature = "serde", serde(rename = "named-fault"))]
    NamedFault = 2,
    /// Not settled: more than one fault explains the readings.
    #[cfg_attr(feature = "serde", serde(rename = "cannot-tell"))]
    CannotTell = 3,
    /// No single explanation fits: measure again.
    #[cfg_attr(feature = "serde", serde(rename = "nothing-fits"))]
    NothingFits = 4,
    /// Too little was measured to judge.
    #[cfg_attr(feature = "serde", serde(rename = "not-enough-evidence"))]
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
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            VerdictKind::Healthy => "No fault stands out: the readings are normal here today.",
            VerdictKind::NamedFault => "One fault explains the readings.",
            VerdictKind::CannotTell => "Not settled: more than one fault explains the readings.",
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum SafetyGroup {
    /// Lower toxicity, no flame propagation.
    #[cfg_attr(feature = "serde", serde(rename = "A1"))]
    A1 = 1,
    /// Lower toxicity, lower flammability.
    #[cfg_attr(feature = "serde", serde(rename = "A2L"))]
    A2L = 2,
    /// Lower toxicity, flammable.
    #[cfg_attr(feature = "serde", serde(rename = "A2"))]
    A2 = 3,
    /// Lower toxicity, higher flammability.
    #[cfg_attr(feature = "serde", serde(rename = "A3"))]
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
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Phase {
    /// Liquid below the critical temperature.
    #[cfg_attr(feature = "serde", serde(rename = "liquid"))]
    Liquid = 1,
    /// Vapour below the critical temperature.
    #[cfg_attr(feature = "serde", serde(rename = "vapour"))]
    Vapour = 2,
    /// Liquid and vapour in equilibrium.
    #[cfg_attr(feature = "serde", serde(rename = "two-phase"))]
    TwoPhase = 3,
    /// Above the critical temperature.
    #[cfg_attr(feature = "serde", serde(rename = "supercritical"))]
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
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Reference {
    /// Saturated liquid at 0 °C has 200 kJ/kg and 1 kJ/(kg K).
    #[cfg_attr(feature = "serde", serde(rename = "IIR"))]
    Iir = 1,
    /// Saturated liquid at -40 °C has zero of both.
    #[cfg_attr(feature = "serde", serde(rename = "ASHRAE"))]
    Ashrae = 2,
    /// Saturated liquid at 101.325 kPa has zero of both.
    #[cfg_attr(feature = "serde", serde(rename = "NBP"))]
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
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
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

/// A coordinate in which readings are judged; no two of them say the same thing twice.
///
/// ```
/// use coldloop::Feature;
/// assert_eq!(Feature::LowSide.id(), "low_side");
/// assert_eq!(Feature::from_id("low_side"), Some(Feature::LowSide));
/// assert_eq!(Feature::from_code(1), Some(Feature::LowSide));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Feature {
    /// Saturation temperature of the low-side pressure.
    #[cfg_attr(feature = "serde", serde(rename = "low_side"))]
    LowSide = 1,
    /// Saturation temperature of the high-side pressure.
    #[cfg_attr(feature = "serde", serde(rename = "high_side"))]
    HighSide = 2,
    /// Air temperature at the centre vent.
    #[cfg_attr(feature = "serde", serde(rename = "vent"))]
    Vent = 3,
    /// Suction line above the saturation temperature of the low side.
    #[cfg_attr(feature = "serde", serde(rename = "superheat"))]
    Superheat = 4,
    /// Liquid line below the saturation temperature of the high side.
    #[cfg_attr(feature = "serde", serde(rename = "subcooling"))]
    Subcooling = 5,
    /// Discharge line above the saturation temperature of the high side.
    #[cfg_attr(feature = "serde", serde(rename = "discharge_superheat"))]
    DischargeSuperheat = 6,
    /// How often the clutch engages.
    #[cfg_attr(feature = "serde", serde(rename = "clutch_cycles"))]
    ClutchCycles = 7,
    /// Saturation temperature of the pressure at rest against the ambient.
    #[cfg_attr(feature = "serde", serde(rename = "rest_pressure"))]
    RestPressure = 8,
}

impl Feature {
    /// Every member, in the order of the table.
    pub const ALL: [Feature; 8] = [
        Feature::LowSide,
        Feature::HighSide,
        Feature::Vent,
        Feature::Superheat,
        Feature::Subcooling,
        Feature::DischargeSuperheat,
        Feature::ClutchCycles,
        Feature::RestPressure,
    ];

    const SPELLINGS: [(Feature, &'static [&'static str]); 8] = [
        (Feature::LowSide, &["low_side"]),
        (Feature::HighSide, &["high_side"]),
        (Feature::Vent, &["vent"]),
        (Feature::Superheat, &["superheat"]),
        (Feature::Subcooling, &["subcooling"]),
        (Feature::DischargeSuperheat, &["discharge_superheat"]),
        (Feature::ClutchCycles, &["clutch_cycles"]),
        (Feature::RestPressure, &["rest_pressure"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Feature::LowSide => "Saturation temperature of the low-side pressure.",
            Feature::HighSide => "Saturation temperature of the high-side pressure.",
            Feature::Vent => "Air temperature at the centre vent.",
            Feature::Superheat => "Suction line above the saturation temperature of the low side.",
            Feature::Subcooling => "Liquid line below the saturation temperature of the high side.",
            Feature::DischargeSuperheat => "Discharge line above the saturation temperature of the high side.",
            Feature::ClutchCycles => "How often the clutch engages.",
            Feature::RestPressure => "Saturation temperature of the pressure at rest against the ambient.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Feature::LowSide),
            2 => Some(Feature::HighSide),
            3 => Some(Feature::Vent),
            4 => Some(Feature::Superheat),
            5 => Some(Feature::Subcooling),
            6 => Some(Feature::DischargeSuperheat),
            7 => Some(Feature::ClutchCycles),
            8 => Some(Feature::RestPressure),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Feature {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What eyes, ears and hands find, answered yes or no.
///
/// ```
/// use coldloop::Observation;
/// assert_eq!(Observation::ClutchEngaged.id(), "clutch_engaged");
/// assert_eq!(Observation::from_id("clutch_engaged"), Some(Observation::ClutchEngaged));
/// assert_eq!(Observation::from_code(1), Some(Observation::ClutchEngaged));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Observation {
    /// The clutch is engaged: hub and pulley turn together.
    #[cfg_attr(feature = "serde", serde(rename = "clutch_engaged"))]
    ClutchEngaged = 1,
    /// The clutch coil gets its voltage when cooling is asked for.
    #[cfg_attr(feature = "serde", serde(rename = "clutch_has_voltage"))]
    ClutchHasVoltage = 2,
    /// With the belt on and the clutch off, the hub turns by hand without resistance.
    #[cfg_attr(feature = "serde", serde(rename = "hub_turns_freely"))]
    HubTurnsFreely = 3,
    /// With the clutch off, the hub cannot be turned by hand.
    #[cfg_attr(feature = "serde", serde(rename = "hub_locked"))]
    HubLocked = 4,
    /// The belt or the clutch slips: squeal, smell, glaze, or a hub slower than its pulley.
    #[cfg_attr(feature = "serde", serde(rename = "belt_slips"))]
    BeltSlips = 5,
    /// The compressor knocks or rattles while it is engaged.
    #[cfg_attr(feature = "serde", serde(rename = "compressor_noisy"))]
    CompressorNoisy = 6,
    /// The condenser fan runs while cooling is asked for.
    #[cfg_attr(feature = "serde", serde(rename = "condenser_fan_running"))]
    CondenserFanRunning = 7,
    /// The face of the condenser is covered by dirt, leaves or bent fins.
    #[cfg_attr(feature = "serde", serde(rename = "condenser_face_blocked"))]
    CondenserFaceBlocked = 8,
    /// Water sprayed on the condenser lowers the high side strongly within a minute.
    #[cfg_attr(feature = "serde", serde(rename = "water_lowers_high_side"))]
    WaterLowersHighSide = 9,
    /// A step of temperature is felt along one condenser pass.
    #[cfg_attr(feature = "serde", serde(rename = "condenser_has_temperature_step"))]
    CondenserHasTemperatureStep = 10,
    /// A tube in the middle of the condenser is clearly colder than the saturation temperature of the high side.
    #[cfg_attr(feature = "serde", serde(rename = "condenser_tube_below_saturation"))]
    CondenserTubeBelowSaturation = 11,
    /// Bubbles or foam stand in the sight glass after some minutes of steady running.
    #[cfg_attr(feature = "serde", serde(rename = "sight_glass_bubbles"))]
    SightGlassBubbles = 12,
    /// Fresh oil or dye shows at a joint, hose, seal or heat exchanger.
    #[cfg_attr(feature = "serde", serde(rename = "oil_traces"))]
    OilTraces = 13,
    /// The expansion device hisses or gurgles while the system runs.
    #[cfg_attr(feature = "serde", serde(rename = "hissing_at_expansion"))]
    HissingAtExpansion = 14,
    /// The liquid line is clearly colder after the drier, or after another point, than before it.
    #[cfg_attr(feature = "serde", serde(rename = "drop_across_drier"))]
    DropAcrossDrier = 15,
    /// Frost or a sharp cold step stands at the inlet of the expansion device.
    #[cfg_attr(feature = "serde", serde(rename = "frost_at_expansion"))]
    FrostAtExpansion = 16,
    /// Frost or heavy sweat covers the suction line up to the compressor.
    #[cfg_attr(feature = "serde", serde(rename = "frost_on_suction_line"))]
    FrostOnSuctionLine = 17,
    /// A step of temperature or frost begins at one point of the suction line.
    #[cfg_attr(feature = "serde", serde(rename = "suction_line_step"))]
    SuctionLineStep = 18,
    /// The low side follows when the bulb or head of the valve is warmed and cooled.
    #[cfg_attr(feature = "serde", serde(rename = "low_side_follows_bulb"))]
    LowSideFollowsBulb = 19,
    /// Frost covers the evaporator face.
    #[cfg_attr(feature = "serde", serde(rename = "evaporator_frosted"))]
    EvaporatorFrosted = 20,
    /// The air at the vents weakens after some minutes and returns after a pause.
    #[cfg_attr(feature = "serde", serde(rename = "airflow_fades"))]
    AirflowFades = 21,
    /// Cooling comes and goes in minutes while the low side falls towards vacuum and recovers.
    #[cfg_attr(feature = "serde", serde(rename = "cooling_comes_and_goes"))]
    CoolingComesAndGoes = 22,
    /// Little air leaves the vents with the blower at its highest step.
    #[cfg_attr(feature = "serde", serde(rename = "airflow_weak"))]
    AirflowWeak = 23,
    /// Closing the heater valve, or clamping the heater hose, makes the vent clearly colder.
    #[cfg_attr(feature = "serde", serde(rename = "closing_heater_cools_vent"))]
    ClosingHeaterCoolsVent = 24,
    /// Raising the engine to about 2,000 rpm lowers the low side and raises the high side.
    #[cfg_attr(feature = "serde", serde(rename = "speed_lowers_low_side"))]
    SpeedLowersLowSide = 25,
    /// Commanding the compressor up with a scan tool moves both pressures apart.
    #[cfg_attr(feature = "serde", serde(rename = "control_signal_moves_pressures"))]
    ControlSignalMovesPressures = 26,
    /// After switching off, the two sides are equal in less than two minutes.
    #[cfg_attr(feature = "serde", serde(rename = "sides_equalise_quickly"))]
    SidesEqualiseQuickly = 27,
    /// At rest and at one temperature, the pressure is clearly above saturation at the ambient.
    #[cfg_attr(feature = "serde", serde(rename = "rest_pressure_high"))]
    RestPressureHigh = 28,
    /// At rest and at one temperature, the pressure is clearly below saturation at the ambient.
    #[cfg_attr(feature = "serde", serde(rename = "rest_pressure_low"))]
    RestPressureLow = 29,
    /// A refrigerant identifier shows air.
    #[cfg_attr(feature = "serde", serde(rename = "identifier_shows_air"))]
    IdentifierShowsAir = 30,
    /// A refrigerant identifier shows another refrigerant than the label.
    #[cfg_attr(feature = "serde", serde(rename = "identifier_shows_other"))]
    IdentifierShowsOther = 31,
    /// Clearly less refrigerant was recovered than the label names.
    #[cfg_attr(feature = "serde", serde(rename = "recovered_below_label"))]
    RecoveredBelowLabel = 32,
    /// Clearly more refrigerant was recovered than the label names.
    #[cfg_attr(feature = "serde", serde(rename = "recovered_above_label"))]
    RecoveredAboveLabel = 33,
    /// Refrigerant was added since the system last worked well.
    #[cfg_attr(feature = "serde", serde(rename = "recently_filled"))]
    RecentlyFilled = 34,
    /// A second set of gauges shows the same pressures.
    #[cfg_attr(feature = "serde", serde(rename = "second_gauges_agree"))]
    SecondGaugesAgree = 35,
    /// After ten to fifteen minutes on the road the air at the vents is cold, and stays cold.
    #[cfg_attr(feature = "serde", serde(rename = "cools_on_the_road"))]
    CoolsOnTheRoad = 36,
    /// The vehicle's own transducer of the high side and the gauge show the same pressure.
    #[cfg_attr(feature = "serde", serde(rename = "transducer_agrees"))]
    TransducerAgrees = 37,
}

impl Observation {
    /// Every member, in the order of the table.
    pub const ALL: [Observation; 37] = [
        Observation::ClutchEngaged,
        Observation::ClutchHasVoltage,
        Observation::HubTurnsFreely,
        Observation::HubLocked,
        Observation::BeltSlips,
        Observation::CompressorNoisy,
        Observation::CondenserFanRunning,
        Observation::CondenserFaceBlocked,
        Observation::WaterLowersHighSide,
        Observation::CondenserHasTemperatureStep,
        Observation::CondenserTubeBelowSaturation,
        Observation::SightGlassBubbles,
        Observation::OilTraces,
        Observation::HissingAtExpansion,
        Observation::DropAcrossDrier,
        Observation::FrostAtExpansion,
        Observation::FrostOnSuctionLine,
        Observation::SuctionLineStep,
        Observation::LowSideFollowsBulb,
        Observation::EvaporatorFrosted,
        Observation::AirflowFades,
        Observation::CoolingComesAndGoes,
        Observation::AirflowWeak,
        Observation::ClosingHeaterCoolsVent,
        Observation::SpeedLowersLowSide,
        Observation::ControlSignalMovesPressures,
        Observation::SidesEqualiseQuickly,
        Observation::RestPressureHigh,
        Observation::RestPressureLow,
        Observation::IdentifierShowsAir,
        Observation::IdentifierShowsOther,
        Observation::RecoveredBelowLabel,
        Observation::RecoveredAboveLabel,
        Observation::RecentlyFilled,
        Observation::SecondGaugesAgree,
        Observation::CoolsOnTheRoad,
        Observation::TransducerAgrees,
    ];

    const SPELLINGS: [(Observation, &'static [&'static str]); 37] = [
        (Observation::ClutchEngaged, &["clutch_engaged"]),
        (Observation::ClutchHasVoltage, &["clutch_has_voltage"]),
        (Observation::HubTurnsFreely, &["hub_turns_freely"]),
        (Observation::HubLocked, &["hub_locked"]),
        (Observation::BeltSlips, &["belt_slips"]),
        (Observation::CompressorNoisy, &["compressor_noisy"]),
        (Observation::CondenserFanRunning, &["condenser_fan_running"]),
        (Observation::CondenserFaceBlocked, &["condenser_face_blocked"]),
        (Observation::WaterLowersHighSide, &["water_lowers_high_side"]),
        (
            Observation::CondenserHasTemperatureStep,
            &["condenser_has_temperature_step"],
        ),
        (
            Observation::CondenserTubeBelowSaturation,
            &["condenser_tube_below_saturation"],
        ),
        (Observation::SightGlassBubbles, &["sight_glass_bubbles"]),
        (Observation::OilTraces, &["oil_traces"]),
        (Observation::HissingAtExpansion, &["hissing_at_expansion"]),
        (Observation::DropAcrossDrier, &["drop_across_drier"]),
        (Observation::FrostAtExpansion, &["frost_at_expansion"]),
        (Observation::FrostOnSuctionLine, &["frost_on_suction_line"]),
        (Observation::SuctionLineStep, &["suction_line_step"]),
        (Observation::LowSideFollowsBulb, &["low_side_follows_bulb"]),
        (Observation::EvaporatorFrosted, &["evaporator_frosted"]),
        (Observation::AirflowFades, &["airflow_fades"]),
        (Observation::CoolingComesAndGoes, &["cooling_comes_and_goes"]),
        (Observation::AirflowWeak, &["airflow_weak"]),
        (Observation::ClosingHeaterCoolsVent, &["closing_heater_cools_vent"]),
        (Observation::SpeedLowersLowSide, &["speed_lowers_low_side"]),
        (
            Observation::ControlSignalMovesPressures,
            &["control_signal_moves_pressures"],
        ),
        (Observation::SidesEqualiseQuickly, &["sides_equalise_quickly"]),
        (Observation::RestPressureHigh, &["rest_pressure_high"]),
        (Observation::RestPressureLow, &["rest_pressure_low"]),
        (Observation::IdentifierShowsAir, &["identifier_shows_air"]),
        (Observation::IdentifierShowsOther, &["identifier_shows_other"]),
        (Observation::RecoveredBelowLabel, &["recovered_below_label"]),
        (Observation::RecoveredAboveLabel, &["recovered_above_label"]),
        (Observation::RecentlyFilled, &["recently_filled"]),
        (Observation::SecondGaugesAgree, &["second_gauges_agree"]),
        (Observation::CoolsOnTheRoad, &["cools_on_the_road"]),
        (Observation::TransducerAgrees, &["transducer_agrees"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Observation::ClutchEngaged => "The clutch is engaged: hub and pulley turn together.",
            Observation::ClutchHasVoltage => "The clutch coil gets its voltage when cooling is asked for.",
            Observation::HubTurnsFreely => {
                "With the belt on and the clutch off, the hub turns by hand without resistance."
            }
            Observation::HubLocked => "With the clutch off, the hub cannot be turned by hand.",
            Observation::BeltSlips => {
                "The belt or the clutch slips: squeal, smell, glaze, or a hub slower than its pulley."
            }
            Observation::CompressorNoisy => "The compressor knocks or rattles while it is engaged.",
            Observation::CondenserFanRunning => "The condenser fan runs while cooling is asked for.",
            Observation::CondenserFaceBlocked => "The face of the condenser is covered by dirt, leaves or bent fins.",
            Observation::WaterLowersHighSide => {
                "Water sprayed on the condenser lowers the high side strongly within a minute."
            }
            Observation::CondenserHasTemperatureStep => "A step of temperature is felt along one condenser pass.",
            Observation::CondenserTubeBelowSaturation => {
                "A tube in the middle of the condenser is clearly colder than the saturation temperature of the high side."
            }
            Observation::SightGlassBubbles => {
                "Bubbles or foam stand in the sight glass after some minutes of steady running."
            }
            Observation::OilTraces => "Fresh oil or dye shows at a joint, hose, seal or heat exchanger.",
            Observation::HissingAtExpansion => "The expansion device hisses or gurgles while the system runs.",
            Observation::DropAcrossDrier => {
                "The liquid line is clearly colder after the drier, or after another point, than before it."
            }
            Observation::FrostAtExpansion => "Frost or a sharp cold step stands at the inlet of the expansion device.",
            Observation::FrostOnSuctionLine => "Frost or heavy sweat covers the suction line up to the compressor.",
            Observation::SuctionLineStep => "A step of temperature or frost begins at one point of the suction line.",
            Observation::LowSideFollowsBulb => {
                "The low side follows when the bulb or head of the valve is warmed and cooled."
            }
            Observation::EvaporatorFrosted => "Frost covers the evaporator face.",
            Observation::AirflowFades => "The air at the vents weakens after some minutes and returns after a pause.",
            Observation::CoolingComesAndGoes => {
                "Cooling comes and goes in minutes while the low side falls towards vacuum and recovers."
            }
            Observation::AirflowWeak => "Little air leaves the vents with the blower at its highest step.",
            Observation::ClosingHeaterCoolsVent => {
                "Closing the heater valve, or clamping the heater hose, makes the vent clearly colder."
            }
            Observation::SpeedLowersLowSide => {
                "Raising the engine to about 2,000 rpm lowers the low side and raises the high side."
            }
            Observation::ControlSignalMovesPressures => {
                "Commanding the compressor up with a scan tool moves both pressures apart."
            }
            Observation::SidesEqualiseQuickly => {
                "After switching off, the two sides are equal in less than two minutes."
            }
            Observation::RestPressureHigh => {
                "At rest and at one temperature, the pressure is clearly above saturation at the ambient."
            }
            Observation::RestPressureLow => {
                "At rest and at one temperature, the pressure is clearly below saturation at the ambient."
            }
            Observation::IdentifierShowsAir => "A refrigerant identifier shows air.",
            Observation::IdentifierShowsOther => "A refrigerant identifier shows another refrigerant than the label.",
            Observation::RecoveredBelowLabel => "Clearly less refrigerant was recovered than the label names.",
            Observation::RecoveredAboveLabel => "Clearly more refrigerant was recovered than the label names.",
            Observation::RecentlyFilled => "Refrigerant was added since the system last worked well.",
            Observation::SecondGaugesAgree => "A second set of gauges shows the same pressures.",
            Observation::CoolsOnTheRoad => {
                "After ten to fifteen minutes on the road the air at the vents is cold, and stays cold."
            }
            Observation::TransducerAgrees => {
                "The vehicle's own transducer of the high side and the gauge show the same pressure."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Observation::ClutchEngaged),
            2 => Some(Observation::ClutchHasVoltage),
            3 => Some(Observation::HubTurnsFreely),
            4 => Some(Observation::HubLocked),
            5 => Some(Observation::BeltSlips),
            6 => Some(Observation::CompressorNoisy),
            7 => Some(Observation::CondenserFanRunning),
            8 => Some(Observation::CondenserFaceBlocked),
            9 => Some(Observation::WaterLowersHighSide),
            10 => Some(Observation::CondenserHasTemperatureStep),
            11 => Some(Observation::CondenserTubeBelowSaturation),
            12 => Some(Observation::SightGlassBubbles),
            13 => Some(Observation::OilTraces),
            14 => Some(Observation::HissingAtExpansion),
            15 => Some(Observation::DropAcrossDrier),
            16 => Some(Observation::FrostAtExpansion),
            17 => Some(Observation::FrostOnSuctionLine),
            18 => Some(Observation::SuctionLineStep),
            19 => Some(Observation::LowSideFollowsBulb),
            20 => Some(Observation::EvaporatorFrosted),
            21 => Some(Observation::AirflowFades),
            22 => Some(Observation::CoolingComesAndGoes),
            23 => Some(Observation::AirflowWeak),
            24 => Some(Observation::ClosingHeaterCoolsVent),
            25 => Some(Observation::SpeedLowersLowSide),
            26 => Some(Observation::ControlSignalMovesPressures),
            27 => Some(Observation::SidesEqualiseQuickly),
            28 => Some(Observation::RestPressureHigh),
            29 => Some(Observation::RestPressureLow),
            30 => Some(Observation::IdentifierShowsAir),
            31 => Some(Observation::IdentifierShowsOther),
            32 => Some(Observation::RecoveredBelowLabel),
            33 => Some(Observation::RecoveredAboveLabel),
            34 => Some(Observation::RecentlyFilled),
            35 => Some(Observation::SecondGaugesAgree),
            36 => Some(Observation::CoolsOnTheRoad),
            37 => Some(Observation::TransducerAgrees),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Observation {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// A further check: something to read, to look at, or to try.
///
/// ```
/// use coldloop::Check;
/// assert_eq!(Check::ReadLowSide.id(), "read-low-side");
/// assert_eq!(Check::from_id("read-low-side"), Some(Check::ReadLowSide));
/// assert_eq!(Check::from_code(1), Some(Check::ReadLowSide));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Check {
    /// Read the low side with the system running.
    #[cfg_attr(feature = "serde", serde(rename = "read-low-side"))]
    ReadLowSide = 1,
    /// Read the high side with the system running.
    #[cfg_attr(feature = "serde", serde(rename = "read-high-side"))]
    ReadHighSide = 2,
    /// Read the air at the centre vent after ten minutes on the coldest setting.
    #[cfg_attr(feature = "serde", serde(rename = "read-vent"))]
    ReadVent = 3,
    /// Clamp a thermometer to the suction line at the compressor: it gives the superheat.
    #[cfg_attr(feature = "serde", serde(rename = "read-suction-line"))]
    ReadSuctionLine = 4,
    /// Clamp a thermometer to the liquid line: it gives the subcooling.
    #[cfg_attr(feature = "serde", serde(rename = "read-liquid-line"))]
    ReadLiquidLine = 5,
    /// Clamp a thermometer to the discharge line.
    #[cfg_attr(feature = "serde", serde(rename = "read-discharge-line"))]
    ReadDischargeLine = 6,
    /// Count how often the clutch engages in three minutes.
    #[cfg_attr(feature = "serde", serde(rename = "count-clutch-cycles"))]
    CountClutchCycles = 7,
    /// Run the A/C on full cooling and read both sides after five minutes.
    #[cfg_attr(feature = "serde", serde(rename = "run-and-read"))]
    RunAndRead = 8,
    /// Check whether hub and pulley turn together.
    #[cfg_attr(feature = "serde", serde(rename = "watch-clutch"))]
    WatchClutch = 9,
    /// Measure the voltage at the clutch connector with the A/C switched on.
    #[cfg_attr(feature = "serde", serde(rename = "measure-clutch-voltage"))]
    MeasureClutchVoltage = 10,
    /// Engine off, belt on, clutch off: turn the hub by hand. A good compressor turns with an even resistance.
    #[cfg_attr(feature = "serde", serde(rename = "turn-hub"))]
    TurnHub = 11,
    /// Watch belt and hub under load, and listen for a squeal.
    #[cfg_attr(feature = "serde", serde(rename = "look-for-slip"))]
    LookForSlip = 12,
    /// Listen to the compressor while the clutch engages and while it runs.
    #[cfg_attr(feature = "serde", serde(rename = "listen-to-compressor"))]
    ListenToCompressor = 13,
    /// Check whether the condenser fan runs.
    #[cfg_attr(feature = "serde", serde(rename = "watch-condenser-fan"))]
    WatchCondenserFan = 14,
    /// Inspect the face of the condenser with a lamp, also between it and the radiator.
    #[cfg_attr(feature = "serde", serde(rename = "look-at-condenser-face"))]
    LookAtCondenserFace = 15,
    /// Spray water on the condenser and watch the high side.
    #[cfg_attr(feature = "serde", serde(rename = "spray-condenser"))]
    SprayCondenser = 16,
    /// Move a thermometer along the condenser from inlet to outlet and look for a sudden step.
    #[cfg_attr(feature = "serde", serde(rename = "feel-condenser-passes"))]
    FeelCondenserPasses = 17,
    /// Clamp a thermometer to a tube in the middle of the condenser and compare it with the saturation temperature of the high side.
    #[cfg_attr(feature = "serde", serde(rename = "clamp-condenser-middle"))]
    ClampCondenserMiddle = 18,
    /// Look at the sight glass after five minutes of steady running.
    #[cfg_attr(feature = "serde", serde(rename = "look-at-sight-glass"))]
    LookAtSightGlass = 19,
    /// Search for a leak: look for oil and dye, and check the joints with an electronic detector.
    #[cfg_attr(feature = "serde", serde(rename = "look-for-leaks"))]
    LookForLeaks = 20,
    /// Listen at the expansion valve or orifice tube.
    #[cfg_attr(feature = "serde", serde(rename = "listen-at-expansion"))]
    ListenAtExpansion = 21,
    /// Measure the temperature of the liquid line before and after the drier.
    #[cfg_attr(feature = "serde", serde(rename = "drop-across-drier"))]
    DropAcrossDrier = 22,
    /// Look for frost at the inlet of the expansion valve or orifice tube.
    #[cfg_attr(feature = "serde", serde(rename = "look-at-expansion"))]
    LookAtExpansion = 23,
    /// Check how far frost or sweat reaches along the suction line.
    #[cfg_attr(feature = "serde", serde(rename = "look-at-suction-line"))]
    LookAtSuctionLine = 24,
    /// Move a thermometer along the suction line and look for a sudden step.
    #[cfg_attr(feature = "serde", serde(rename = "follow-suction-line"))]
    FollowSuctionLine = 25,
    /// Warm the bulb or head of the valve with the hand, then cool it with ice, and watch the low side.
    #[cfg_attr(feature = "serde", serde(rename = "warm-and-chill-bulb"))]
    WarmAndChillBulb = 26,
    /// Inspect the evaporator through the blower or a drain opening.
    #[cfg_attr(feature = "serde", serde(rename = "look-at-evaporator"))]
    LookAtEvaporator = 27,
    /// Watch the vent and the low side for twenty minutes of running.
    #[cfg_attr(feature = "serde", serde(rename = "watch-twenty-minutes"))]
    WatchTwentyMinutes = 28,
    /// Feel the air at the vents with the blower at its highest step, and inspect the cabin filter.
    #[cfg_attr(feature = "serde", serde(rename = "feel-airflow"))]
    FeelAirflow = 29,
    /// Close the heater valve or clamp the heater hose and watch the vent.
    #[cfg_attr(feature = "serde", serde(rename = "close-heater"))]
    CloseHeater = 30,
    /// Raise the engine speed to about 2,000 rpm and watch both sides.
    #[cfg_attr(feature = "serde", serde(rename = "raise-engine-speed"))]
    RaiseEngineSpeed = 31,
    /// Command the compressor up and down with a scan tool and watch both sides.
    #[cfg_attr(feature = "serde", serde(rename = "drive-control"))]
    DriveControl = 32,
    /// Switch the A/C off and time how long both sides take to become equal.
    #[cfg_attr(feature = "serde", serde(rename = "time-equalisation"))]
    TimeEqualisation = 33,
    /// Leave the system off until all parts have one temperature, then compare its pressure with the saturation pressure at ambient.
    #[cfg_attr(feature = "serde", serde(rename = "read-rest-pressure"))]
    ReadRestPressure = 34,
    /// Connect a refrigerant identifier to the low side.
    #[cfg_attr(feature = "serde", serde(rename = "identify-refrigerant"))]
    IdentifyRefrigerant = 35,
    /// Recover the charge and weigh it against the label.
    #[cfg_attr(feature = "serde", serde(rename = "recover-and-weigh"))]
    RecoverAndWeigh = 36,
    /// Ask who last serviced the system, and what was added.
    #[cfg_attr(feature = "serde", serde(rename = "ask-history"))]
    AskHistory = 37,
    /// Check hoses, units and zero of the gauges and the seat of every probe, then compare with a second set of gauges.
    #[cfg_attr(feature = "serde", serde(rename = "compare-gauges"))]
    CompareGauges = 38,
    /// Drive for ten to fifteen minutes on the coldest setting and check that it cools and keeps cooling.
    #[cfg_attr(feature = "serde", serde(rename = "road-test"))]
    RoadTest = 39,
    /// Compare the high side of the gauge with the vehicle's own pressure transducer on a scan tool.
    #[cfg_attr(feature = "serde", serde(rename = "compare-transducer"))]
    CompareTransducer = 40,
    /// Search for the leak with dry nitrogen: empty the circuit, bring it to test pressure and check every joint with leak spray.
    #[cfg_attr(feature = "serde", serde(rename = "search-with-nitrogen"))]
    SearchWithNitrogen = 41,
}

impl Check {
    /// Every member, in the order of the table.
    pub const ALL: [Check; 41] = [
        Check::ReadLowSide,
        Check::ReadHighSide,
        Check::ReadVent,
        Check::ReadSuctionLine,
        Check::ReadLiquidLine,
        Check::ReadDischargeLine,
        Check::CountClutchCycles,
        Check::RunAndRead,
        Check::WatchClutch,
        Check::MeasureClutchVoltage,
        Check::TurnHub,
        Check::LookForSlip,
        Check::ListenToCompressor,
        Check::WatchCondenserFan,
        Check::LookAtCondenserFace,
        Check::SprayCondenser,
        Check::FeelCondenserPasses,
        Check::ClampCondenserMiddle,
        Check::LookAtSightGlass,
        Check::LookForLeaks,
        Check::ListenAtExpansion,
        Check::DropAcrossDrier,
        Check::LookAtExpansion,
        Check::LookAtSuctionLine,
        Check::FollowSuctionLine,
        Check::WarmAndChillBulb,
        Check::LookAtEvaporator,
        Check::WatchTwentyMinutes,
        Check::FeelAirflow,
        Check::CloseHeater,
        Check::RaiseEngineSpeed,
        Check::DriveControl,
        Check::TimeEqualisation,
        Check::ReadRestPressure,
        Check::IdentifyRefrigerant,
        Check::RecoverAndWeigh,
        Check::AskHistory,
        Check::CompareGauges,
        Check::RoadTest,
        Check::CompareTransducer,
        Check::SearchWithNitrogen,
    ];

    const SPELLINGS: [(Check, &'static [&'static str]); 41] = [
        (Check::ReadLowSide, &["read-low-side"]),
        (Check::ReadHighSide, &["read-high-side"]),
        (Check::ReadVent, &["read-vent"]),
        (Check::ReadSuctionLine, &["read-suction-line"]),
        (Check::ReadLiquidLine, &["read-liquid-line"]),
        (Check::ReadDischargeLine, &["read-discharge-line"]),
        (Check::CountClutchCycles, &["count-clutch-cycles"]),
        (Check::RunAndRead, &["run-and-read"]),
        (Check::WatchClutch, &["watch-clutch"]),
        (Check::MeasureClutchVoltage, &["measure-clutch-voltage"]),
        (Check::TurnHub, &["turn-hub"]),
        (Check::LookForSlip, &["look-for-slip"]),
        (Check::ListenToCompressor, &["listen-to-compressor"]),
        (Check::WatchCondenserFan, &["watch-condenser-fan"]),
        (Check::LookAtCondenserFace, &["look-at-condenser-face"]),
        (Check::SprayCondenser, &["spray-condenser"]),
        (Check::FeelCondenserPasses, &["feel-condenser-passes"]),
        (Check::ClampCondenserMiddle, &["clamp-condenser-middle"]),
        (Check::LookAtSightGlass, &["look-at-sight-glass"]),
        (Check::LookForLeaks, &["look-for-leaks"]),
        (Check::ListenAtExpansion, &["listen-at-expansion"]),
        (Check::DropAcrossDrier, &["drop-across-drier"]),
        (Check::LookAtExpansion, &["look-at-expansion"]),
        (Check::LookAtSuctionLine, &["look-at-suction-line"]),
        (Check::FollowSuctionLine, &["follow-suction-line"]),
        (Check::WarmAndChillBulb, &["warm-and-chill-bulb"]),
        (Check::LookAtEvaporator, &["look-at-evaporator"]),
        (Check::WatchTwentyMinutes, &["watch-twenty-minutes"]),
        (Check::FeelAirflow, &["feel-airflow"]),
        (Check::CloseHeater, &["close-heater"]),
        (Check::RaiseEngineSpeed, &["raise-engine-speed"]),
        (Check::DriveControl, &["drive-control"]),
        (Check::TimeEqualisation, &["time-equalisation"]),
        (Check::ReadRestPressure, &["read-rest-pressure"]),
        (Check::IdentifyRefrigerant, &["identify-refrigerant"]),
        (Check::RecoverAndWeigh, &["recover-and-weigh"]),
        (Check::AskHistory, &["ask-history"]),
        (Check::CompareGauges, &["compare-gauges"]),
        (Check::RoadTest, &["road-test"]),
        (Check::CompareTransducer, &["compare-transducer"]),
        (Check::SearchWithNitrogen, &["search-with-nitrogen"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Check::ReadLowSide => "Read the low side with the system running.",
            Check::ReadHighSide => "Read the high side with the system running.",
            Check::ReadVent => "Read the air at the centre vent after ten minutes on the coldest setting.",
            Check::ReadSuctionLine => {
                "Clamp a thermometer to the suction line at the compressor: it gives the superheat."
            }
            Check::ReadLiquidLine => "Clamp a thermometer to the liquid line: it gives the subcooling.",
            Check::ReadDischargeLine => "Clamp a thermometer to the discharge line.",
            Check::CountClutchCycles => "Count how often the clutch engages in three minutes.",
            Check::RunAndRead => "Run the A/C on full cooling and read both sides after five minutes.",
            Check::WatchClutch => "Check whether hub and pulley turn together.",
            Check::MeasureClutchVoltage => "Measure the voltage at the clutch connector with the A/C switched on.",
            Check::TurnHub => {
                "Engine off, belt on, clutch off: turn the hub by hand. A good compressor turns with an even resistance."
            }
            Check::LookForSlip => "Watch belt and hub under load, and listen for a squeal.",
            Check::ListenToCompressor => "Listen to the compressor while the clutch engages and while it runs.",
            Check::WatchCondenserFan => "Check whether the condenser fan runs.",
            Check::LookAtCondenserFace => {
                "Inspect the face of the condenser with a lamp, also between it and the radiator."
            }
            Check::SprayCondenser => "Spray water on the condenser and watch the high side.",
            Check::FeelCondenserPasses => {
                "Move a thermometer along the condenser from inlet to outlet and look for a sudden step."
            }
            Check::ClampCondenserMiddle => {
                "Clamp a thermometer to a tube in the middle of the condenser and compare it with the saturation temperature of the high side."
            }
            Check::LookAtSightGlass => "Look at the sight glass after five minutes of steady running.",
            Check::LookForLeaks => {
                "Search for a leak: look for oil and dye, and check the joints with an electronic detector."
            }
            Check::ListenAtExpansion => "Listen at the expansion valve or orifice tube.",
            Check::DropAcrossDrier => "Measure the temperature of the liquid line before and after the drier.",
            Check::LookAtExpansion => "Look for frost at the inlet of the expansion valve or orifice tube.",
            Check::LookAtSuctionLine => "Check how far frost or sweat reaches along the suction line.",
            Check::FollowSuctionLine => "Move a thermometer along the suction line and look for a sudden step.",
            Check::WarmAndChillBulb => {
                "Warm the bulb or head of the valve with the hand, then cool it with ice, and watch the low side."
            }
            Check::LookAtEvaporator => "Inspect the evaporator through the blower or a drain opening.",
            Check::WatchTwentyMinutes => "Watch the vent and the low side for twenty minutes of running.",
            Check::FeelAirflow => {
                "Feel the air at the vents with the blower at its highest step, and inspect the cabin filter."
            }
            Check::CloseHeater => "Close the heater valve or clamp the heater hose and watch the vent.",
            Check::RaiseEngineSpeed => "Raise the engine speed to about 2,000 rpm and watch both sides.",
            Check::DriveControl => "Command the compressor up and down with a scan tool and watch both sides.",
            Check::TimeEqualisation => "Switch the A/C off and time how long both sides take to become equal.",
            Check::ReadRestPressure => {
                "Leave the system off until all parts have one temperature, then compare its pressure with the saturation pressure at ambient."
            }
            Check::IdentifyRefrigerant => "Connect a refrigerant identifier to the low side.",
            Check::RecoverAndWeigh => "Recover the charge and weigh it against the label.",
            Check::AskHistory => "Ask who last serviced the system, and what was added.",
            Check::CompareGauges => {
                "Check hoses, units and zero of the gauges and the seat of every probe, then compare with a second set of gauges."
            }
            Check::RoadTest => {
                "Drive for ten to fifteen minutes on the coldest setting and check that it cools and keeps cooling."
            }
            Check::CompareTransducer => {
                "Compare the high side of the gauge with the vehicle's own pressure transducer on a scan tool."
            }
            Check::SearchWithNitrogen => {
                "Search for the leak with dry nitrogen: empty the circuit, bring it to test pressure and check every joint with leak spray."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Check::ReadLowSide),
            2 => Some(Check::ReadHighSide),
            3 => Some(Check::ReadVent),
            4 => Some(Check::ReadSuctionLine),
            5 => Some(Check::ReadLiquidLine),
            6 => Some(Check::ReadDischargeLine),
            7 => Some(Check::CountClutchCycles),
            8 => Some(Check::RunAndRead),
            9 => Some(Check::WatchClutch),
            10 => Some(Check::MeasureClutchVoltage),
            11 => Some(Check::TurnHub),
            12 => Some(Check::LookForSlip),
            13 => Some(Check::ListenToCompressor),
            14 => Some(Check::WatchCondenserFan),
            15 => Some(Check::LookAtCondenserFace),
            16 => Some(Check::SprayCondenser),
            17 => Some(Check::FeelCondenserPasses),
            18 => Some(Check::ClampCondenserMiddle),
            19 => Some(Check::LookAtSightGlass),
            20 => Some(Check::LookForLeaks),
            21 => Some(Check::ListenAtExpansion),
            22 => Some(Check::DropAcrossDrier),
            23 => Some(Check::LookAtExpansion),
            24 => Some(Check::LookAtSuctionLine),
            25 => Some(Check::FollowSuctionLine),
            26 => Some(Check::WarmAndChillBulb),
            27 => Some(Check::LookAtEvaporator),
            28 => Some(Check::WatchTwentyMinutes),
            29 => Some(Check::FeelAirflow),
            30 => Some(Check::CloseHeater),
            31 => Some(Check::RaiseEngineSpeed),
            32 => Some(Check::DriveControl),
            33 => Some(Check::TimeEqualisation),
            34 => Some(Check::ReadRestPressure),
            35 => Some(Check::IdentifyRefrigerant),
            36 => Some(Check::RecoverAndWeigh),
            37 => Some(Check::AskHistory),
            38 => Some(Check::CompareGauges),
            39 => Some(Check::RoadTest),
            40 => Some(Check::CompareTransducer),
            41 => Some(Check::SearchWithNitrogen),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Check {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// A way in which gauges and thermometers mislead.
///
/// ```
/// use coldloop::MixUp;
/// assert_eq!(MixUp::SwappedHoses.id(), "swapped-hoses");
/// assert_eq!(MixUp::from_id("swapped-hoses"), Some(MixUp::SwappedHoses));
/// assert_eq!(MixUp::from_code(1), Some(MixUp::SwappedHoses));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum MixUp {
    /// The two hoses are swapped.
    #[cfg_attr(feature = "serde", serde(rename = "swapped-hoses"))]
    SwappedHoses = 1,
    /// Figures in kPa were noted as psi.
    #[cfg_attr(feature = "serde", serde(rename = "kpa-typed-as-psi"))]
    KpaTypedAsPsi = 2,
    /// Figures in psi were noted as kPa.
    #[cfg_attr(feature = "serde", serde(rename = "psi-typed-as-kpa"))]
    PsiTypedAsKpa = 3,
    /// Absolute pressures were noted as gauge pressures.
    #[cfg_attr(feature = "serde", serde(rename = "absolute-typed-as-gauge"))]
    AbsoluteTypedAsGauge = 4,
    /// Gauge pressures were noted as absolute pressures.
    #[cfg_attr(feature = "serde", serde(rename = "gauge-typed-as-absolute"))]
    GaugeTypedAsAbsolute = 5,
    /// The gauges were zeroed at sea level, not in the air of this place.
    #[cfg_attr(feature = "serde", serde(rename = "zeroed-at-sea-level"))]
    ZeroedAtSeaLevel = 6,
    /// The low gauge is off throughout: with its hose open it does not return to zero.
    #[cfg_attr(feature = "serde", serde(rename = "low-gauge-off"))]
    LowGaugeOff = 7,
    /// The high gauge is off throughout: with its hose open it does not return to zero.
    #[cfg_attr(feature = "serde", serde(rename = "high-gauge-off"))]
    HighGaugeOff = 8,
    /// Both gauges are off throughout, as when they were zeroed with pressure in the hoses.
    #[cfg_attr(feature = "serde", serde(rename = "both-gauges-off"))]
    BothGaugesOff = 9,
    /// The thermometer does not stand in the stream of the vent, and reads towards the air of the cabin.
    #[cfg_attr(feature = "serde", serde(rename = "vent-probe-aside"))]
    VentProbeAside = 10,
    /// The probe on the suction line is loose or not insulated, and reads towards the air about it.
    #[cfg_attr(feature = "serde", serde(rename = "suction-probe-loose"))]
    SuctionProbeLoose = 11,
    /// The probe on the liquid line is loose or not insulated, and reads towards the air about it.
    #[cfg_attr(feature = "serde", serde(rename = "liquid-probe-loose"))]
    LiquidProbeLoose = 12,
    /// The probe on the discharge line is loose or not insulated, and reads towards the air about it.
    #[cfg_attr(feature = "serde", serde(rename = "discharge-probe-loose"))]
    DischargeProbeLoose = 13,
    /// The coupler of the low hose is shut: its gauge shows the air's pressure or, through the manifold, the other side's.
    #[cfg_attr(feature = "serde", serde(rename = "low-hose-shut"))]
    LowHoseShut = 14,
    /// The coupler of the high hose is shut: its gauge shows the air's pressure or, through the manifold, the other side's.
    #[cfg_attr(feature = "serde", serde(rename = "high-hose-shut"))]
    HighHoseShut = 15,
}

impl MixUp {
    /// Every member, in the order of the table.
    pub const ALL: [MixUp; 15] = [
        MixUp::SwappedHoses,
        MixUp::KpaTypedAsPsi,
        MixUp::PsiTypedAsKpa,
        MixUp::AbsoluteTypedAsGauge,
        MixUp::GaugeTypedAsAbsolute,
        MixUp::ZeroedAtSeaLevel,
        MixUp::LowGaugeOff,
        MixUp::HighGaugeOff,
        MixUp::BothGaugesOff,
        MixUp::VentProbeAside,
        MixUp::SuctionProbeLoose,
        MixUp::LiquidProbeLoose,
        MixUp::DischargeProbeLoose,
        MixUp::LowHoseShut,
        MixUp::HighHoseShut,
    ];

    const SPELLINGS: [(MixUp, &'static [&'static str]); 15] = [
        (MixUp::SwappedHoses, &["swapped-hoses"]),
        (MixUp::KpaTypedAsPsi, &["kpa-typed-as-psi"]),
        (MixUp::PsiTypedAsKpa, &["psi-typed-as-kpa"]),
        (MixUp::AbsoluteTypedAsGauge, &["absolute-typed-as-gauge"]),
        (MixUp::GaugeTypedAsAbsolute, &["gauge-typed-as-absolute"]),
        (MixUp::ZeroedAtSeaLevel, &["zeroed-at-sea-level"]),
        (MixUp::LowGaugeOff, &["low-gauge-off"]),
        (MixUp::HighGaugeOff, &["high-gauge-off"]),
        (MixUp::BothGaugesOff, &["both-gauges-off"]),
        (MixUp::VentProbeAside, &["vent-probe-aside"]),
        (MixUp::SuctionProbeLoose, &["suction-probe-loose"]),
        (MixUp::LiquidProbeLoose, &["liquid-probe-loose"]),
        (MixUp::DischargeProbeLoose, &["discharge-probe-loose"]),
        (MixUp::LowHoseShut, &["low-hose-shut"]),
        (MixUp::HighHoseShut, &["high-hose-shut"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            MixUp::SwappedHoses => "The two hoses are swapped.",
            MixUp::KpaTypedAsPsi => "Figures in kPa were noted as psi.",
            MixUp::PsiTypedAsKpa => "Figures in psi were noted as kPa.",
            MixUp::AbsoluteTypedAsGauge => "Absolute pressures were noted as gauge pressures.",
            MixUp::GaugeTypedAsAbsolute => "Gauge pressures were noted as absolute pressures.",
            MixUp::ZeroedAtSeaLevel => "The gauges were zeroed at sea level, not in the air of this place.",
            MixUp::LowGaugeOff => "The low gauge is off throughout: with its hose open it does not return to zero.",
            MixUp::HighGaugeOff => "The high gauge is off throughout: with its hose open it does not return to zero.",
            MixUp::BothGaugesOff => {
                "Both gauges are off throughout, as when they were zeroed with pressure in the hoses."
            }
            MixUp::VentProbeAside => {
                "The thermometer does not stand in the stream of the vent, and reads towards the air of the cabin."
            }
            MixUp::SuctionProbeLoose => {
                "The probe on the suction line is loose or not insulated, and reads towards the air about it."
            }
            MixUp::LiquidProbeLoose => {
                "The probe on the liquid line is loose or not insulated, and reads towards the air about it."
            }
            MixUp::DischargeProbeLoose => {
                "The probe on the discharge line is loose or not insulated, and reads towards the air about it."
            }
            MixUp::LowHoseShut => {
                "The coupler of the low hose is shut: its gauge shows the air's pressure or, through the manifold, the other side's."
            }
            MixUp::HighHoseShut => {
                "The coupler of the high hose is shut: its gauge shows the air's pressure or, through the manifold, the other side's."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(MixUp::SwappedHoses),
            2 => Some(MixUp::KpaTypedAsPsi),
            3 => Some(MixUp::PsiTypedAsKpa),
            4 => Some(MixUp::AbsoluteTypedAsGauge),
            5 => Some(MixUp::GaugeTypedAsAbsolute),
            6 => Some(MixUp::ZeroedAtSeaLevel),
            7 => Some(MixUp::LowGaugeOff),
            8 => Some(MixUp::HighGaugeOff),
            9 => Some(MixUp::BothGaugesOff),
            10 => Some(MixUp::VentProbeAside),
            11 => Some(MixUp::SuctionProbeLoose),
            12 => Some(MixUp::LiquidProbeLoose),
            13 => Some(MixUp::DischargeProbeLoose),
            14 => Some(MixUp::LowHoseShut),
            15 => Some(MixUp::HighHoseShut),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for MixUp {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What the pressure of a system at rest tells.
///
/// ```
/// use coldloop::RestFinding;
/// assert_eq!(RestFinding::Consistent.id(), "consistent");
/// assert_eq!(RestFinding::from_id("consistent"), Some(RestFinding::Consistent));
/// assert_eq!(RestFinding::from_code(1), Some(RestFinding::Consistent));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum RestFinding {
    /// Liquid is left and no air shows: the pressure is saturation at the ambient, as well as the instruments tell. It does not tell how full the system is.
    #[cfg_attr(feature = "serde", serde(rename = "consistent"))]
    Consistent = 1,
    /// The pressure is below saturation at the ambient: no liquid is left.
    #[cfg_attr(feature = "serde", serde(rename = "nearly-empty"))]
    NearlyEmpty = 2,
    /// The pressure is above saturation at the ambient: air, another refrigerant, or parts still warm.
    #[cfg_attr(feature = "serde", serde(rename = "air-present"))]
    AirPresent = 3,
    /// The two sides still differ: wait, then read again.
    #[cfg_attr(feature = "serde", serde(rename = "not-equalised"))]
    NotEqualised = 4,
}

impl RestFinding {
    /// Every member, in the order of the table.
    pub const ALL: [RestFinding; 4] = [
        RestFinding::Consistent,
        RestFinding::NearlyEmpty,
        RestFinding::AirPresent,
        RestFinding::NotEqualised,
    ];

    const SPELLINGS: [(RestFinding, &'static [&'static str]); 4] = [
        (RestFinding::Consistent, &["consistent"]),
        (RestFinding::NearlyEmpty, &["nearly-empty"]),
        (RestFinding::AirPresent, &["air-present"]),
        (RestFinding::NotEqualised, &["not-equalised"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            RestFinding::Consistent => {
                "Liquid is left and no air shows: the pressure is saturation at the ambient, as well as the instruments tell. It does not tell how full the system is."
            }
            RestFinding::NearlyEmpty => "The pressure is below saturation at the ambient: no liquid is left.",
            RestFinding::AirPresent => {
                "The pressure is above saturation at the ambient: air, another refrigerant, or parts still warm."
            }
            RestFinding::NotEqualised => "The two sides still differ: wait, then read again.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(RestFinding::Consistent),
            2 => Some(RestFinding::NearlyEmpty),
            3 => Some(RestFinding::AirPresent),
            4 => Some(RestFinding::NotEqualised),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for RestFinding {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What the normal bands rest on.
///
/// ```
/// use coldloop::ExpectedBasis;
/// assert_eq!(ExpectedBasis::OwnTable.id(), "own-table");
/// assert_eq!(ExpectedBasis::from_id("own-table"), Some(ExpectedBasis::OwnTable));
/// assert_eq!(ExpectedBasis::from_code(1), Some(ExpectedBasis::OwnTable));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum ExpectedBasis {
    /// The vehicle's own pressure table, and for the other readings the sources.
    #[cfg_attr(feature = "serde", serde(rename = "own-table"))]
    OwnTable = 1,
    /// The sources, narrowed by earlier normal readings of the same vehicle.
    #[cfg_attr(feature = "serde", serde(rename = "own-readings"))]
    OwnReadings = 2,
    /// Vehicles of this kind without a fault in the vehicle model, the only source for it; how far sources disagree is taken from R-134a.
    #[cfg_attr(feature = "serde", serde(rename = "vehicle-model"))]
    VehicleModel = 3,
    /// Several sources: the vehicle model, an independent simulator and published charts, with how far they disagree.
    #[cfg_attr(feature = "serde", serde(rename = "sources"))]
    Sources = 4,
}

impl ExpectedBasis {
    /// Every member, in the order of the table.
    pub const ALL: [ExpectedBasis; 4] = [
        ExpectedBasis::OwnTable,
        ExpectedBasis::OwnReadings,
        ExpectedBasis::VehicleModel,
        ExpectedBasis::Sources,
    ];

    const SPELLINGS: [(ExpectedBasis, &'static [&'static str]); 4] = [
        (ExpectedBasis::OwnTable, &["own-table"]),
        (ExpectedBasis::OwnReadings, &["own-readings"]),
        (ExpectedBasis::VehicleModel, &["vehicle-model"]),
        (ExpectedBasis::Sources, &["sources"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            ExpectedBasis::OwnTable => "The vehicle's own pressure table, and for the other readings the sources.",
            ExpectedBasis::OwnReadings => "The sources, narrowed by earlier normal readings of the same vehicle.",
            ExpectedBasis::VehicleModel => {
                "Vehicles of this kind without a fault in the vehicle model, the only source for it; how far sources disagree is taken from R-134a."
            }
            ExpectedBasis::Sources => {
                "Several sources: the vehicle model, an independent simulator and published charts, with how far they disagree."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(ExpectedBasis::OwnTable),
            2 => Some(ExpectedBasis::OwnReadings),
            3 => Some(ExpectedBasis::VehicleModel),
            4 => Some(ExpectedBasis::Sources),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for ExpectedBasis {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What can hurt, and what the law asks.
///
/// ```
/// use coldloop::Caution;
/// assert_eq!(Caution::Pressure.id(), "pressure");
/// assert_eq!(Caution::from_id("pressure"), Some(Caution::Pressure));
/// assert_eq!(Caution::from_code(1), Some(Caution::Pressure));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Caution {
    /// The circuit is under pressure even at rest: wear eye protection, and open no joint before the charge is out.
    #[cfg_attr(feature = "serde", serde(rename = "pressure"))]
    Pressure = 1,
    /// Escaping refrigerant freezes skin and eyes: wear gloves and goggles.
    #[cfg_attr(feature = "serde", serde(rename = "frostbite"))]
    Frostbite = 2,
    /// Belts and fans start without warning, and so does the engine of a hybrid: keep hands, hair and clothes away; turn the hub only with the engine off and the key out.
    #[cfg_attr(feature = "serde", serde(rename = "moving-parts"))]
    MovingParts = 3,
    /// The refrigerant is flammable: keep ignition sources away, ventilate, and use only gauges, identifiers and machines made for flammable refrigerants.
    #[cfg_attr(feature = "serde", serde(rename = "flammable"))]
    Flammable = 4,
    /// The compressor runs on high voltage: only qualified persons may work on it, after the vehicle's own disconnection procedure and a check that no voltage is left.
    #[cfg_attr(feature = "serde", serde(rename = "high-voltage"))]
    HighVoltage = 5,
    /// Do not release refrigerant: it is unlawful in many places. Recover it with certified equipment.
    #[cfg_attr(feature = "serde", serde(rename = "no-venting"))]
    NoVenting = 6,
    /// The judgement of a certified technician, the data of the vehicle's maker and the local rules come first.
    #[cfg_attr(feature = "serde", serde(rename = "local-rules"))]
    LocalRules = 7,
    /// Refrigerant gathers in pits and closed rooms and displaces the air: ventilate at floor level. Keep flames and hot surfaces away: heat turns it into toxic gases.
    #[cfg_attr(feature = "serde", serde(rename = "ventilation"))]
    Ventilation = 8,
    /// Only certified persons may open a circuit, and in many places only they may buy refrigerant.
    #[cfg_attr(feature = "serde", serde(rename = "certification"))]
    Certification = 9,
    /// Pressure test: dry nitrogen only, through a regulator and a relief valve. Never oxygen, compressed air or a mix with refrigerant, and never above the pressure that the label and every part allow.
    #[cfg_attr(feature = "serde", serde(rename = "test-pressure"))]
    TestPressure = 10,
    /// R-744 (carbon dioxide) stands at up to ten times the pressure of other refrigerants: use only gauges, hoses and parts made for it. It has no smell: above 3 to 4 per cent in the air it is dangerous, above 10 per cent a person soon loses consciousness. Ventilate, and leave the room if much escapes.
    #[cfg_attr(feature = "serde", serde(rename = "carbon-dioxide"))]
    CarbonDioxide = 11,
    /// What is in the circuit is not known, and it may be flammable: identify it before a machine draws it in, and recover it into a separate marked cylinder.
    #[cfg_attr(feature = "serde", serde(rename = "foreign-refrigerant"))]
    ForeignRefrigerant = 12,
    /// The discharge line, the engine and the exhaust burn the skin.
    #[cfg_attr(feature = "serde", serde(rename = "hot-parts"))]
    HotParts = 13,
    /// Do not run the compressor on an empty circuit or one with air in it: no refrigerant brings its oil back, and compressed air with oil or a flammable refrigerant can ignite.
    #[cfg_attr(feature = "serde", serde(rename = "do-not-run"))]
    DoNotRun = 14,
    /// This test pressure is above what the label allows, or above 30 bar where no label was given: let it down before anyone comes near, for the weakest part bursts first.
    #[cfg_attr(feature = "serde", serde(rename = "test-too-high"))]
    TestTooHigh = 15,
    /// High voltage: keep hands, clamps, probes and water away from orange cables, their connectors and the compressor's inverter; stop if one is damaged.
    #[cfg_attr(feature = "serde", serde(rename = "high-voltage-cables"))]
    HighVoltageCables = 16,
    /// Run an engine outdoors or with its exhaust led outside: carbon monoxide kills without warning.
    #[cfg_attr(feature = "serde", serde(rename = "exhaust"))]
    Exhaust = 17,
    /// Before the engine is raised: parking brake on, wheels chocked, gear in park or neutral, nobody in front of the vehicle.
    #[cfg_attr(feature = "serde", serde(rename = "park-and-chock"))]
    ParkAndChock = 18,
    /// Hot coolant is under pressure and scalds: do not open the cooling system, wear gloves, and clamp a hose only with a hose clamp tool.
    #[cfg_attr(feature = "serde", serde(rename = "hot-coolant"))]
    HotCoolant = 19,
    /// Connect and disconnect the hoses with the engine and the A/C off and both manifold valves closed; lay the hoses clear of belts, fans and hot parts.
    #[cfg_attr(feature = "serde", serde(rename = "connect-stopped"))]
    ConnectStopped = 20,
    /// Warm the valve with the hand or a warm cloth and cool it with ice. Never use a flame or a heat gun.
    #[cfg_attr(feature = "serde", serde(rename = "hand-and-ice"))]
    HandAndIce = 21,
    /// Measure the oil that came out and put back the same amount, with what stays in a replaced part: only the type that the compressor's maker names.
    #[cfg_attr(feature = "serde", serde(rename = "right-oil"))]
    RightOil = 22,
    /// The oil of a high-voltage compressor must insulate: use only the type that its maker names, with hoses and injectors that no other oil has been in.
    #[cfg_attr(feature = "serde", serde(rename = "insulating-oil"))]
    InsulatingOil = 23,
    /// R-744 is released, not recovered, where the local rules allow it: outdoors or into an extraction, slowly through a fixed hose, with no person near its end. Wait until dry ice in the circuit is gone before a joint is opened.
    #[cfg_attr(feature = "serde", serde(rename = "release-slowly"))]
    ReleaseSlowly = 24,
    /// The high side is close to its limit: watch it, and switch the A/C off if it rises further.
    #[cfg_attr(feature = "serde", serde(rename = "high-side-near-limit"))]
    HighSideNearLimit = 25,
}

impl Caution {
    /// Every member, in the order of the table.
    pub const ALL: [Caution; 25] = [
        Caution::Pressure,
        Caution::Frostbite,
        Caution::MovingParts,
        Caution::Flammable,
        Caution::HighVoltage,
        Caution::NoVenting,
        Caution::LocalRules,
        Caution::Ventilation,
        Caution::Certification,
        Caution::TestPressure,
        Caution::CarbonDioxide,
        Caution::ForeignRefrigerant,
        Caution::HotParts,
        Caution::DoNotRun,
        Caution::TestTooHigh,
        Caution::HighVoltageCables,
        Caution::Exhaust,
        Caution::ParkAndChock,
        Caution::HotCoolant,
        Caution::ConnectStopped,
        Caution::HandAndIce,
        Caution::RightOil,
        Caution::InsulatingOil,
        Caution::ReleaseSlowly,
        Caution::HighSideNearLimit,
    ];

    const SPELLINGS: [(Caution, &'static [&'static str]); 25] = [
        (Caution::Pressure, &["pressure"]),
        (Caution::Frostbite, &["frostbite"]),
        (Caution::MovingParts, &["moving-parts"]),
        (Caution::Flammable, &["flammable"]),
        (Caution::HighVoltage, &["high-voltage"]),
        (Caution::NoVenting, &["no-venting"]),
        (Caution::LocalRules, &["local-rules"]),
        (Caution::Ventilation, &["ventilation"]),
        (Caution::Certification, &["certification"]),
        (Caution::TestPressure, &["test-pressure"]),
        (Caution::CarbonDioxide, &["carbon-dioxide"]),
        (Caution::ForeignRefrigerant, &["foreign-refrigerant"]),
        (Caution::HotParts, &["hot-parts"]),
        (Caution::DoNotRun, &["do-not-run"]),
        (Caution::TestTooHigh, &["test-too-high"]),
        (Caution::HighVoltageCables, &["high-voltage-cables"]),
        (Caution::Exhaust, &["exhaust"]),
        (Caution::ParkAndChock, &["park-and-chock"]),
        (Caution::HotCoolant, &["hot-coolant"]),
        (Caution::ConnectStopped, &["connect-stopped"]),
        (Caution::HandAndIce, &["hand-and-ice"]),
        (Caution::RightOil, &["right-oil"]),
        (Caution::InsulatingOil, &["insulating-oil"]),
        (Caution::ReleaseSlowly, &["release-slowly"]),
        (Caution::HighSideNearLimit, &["high-side-near-limit"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Caution::Pressure => {
                "The circuit is under pressure even at rest: wear eye protection, and open no joint before the charge is out."
            }
            Caution::Frostbite => "Escaping refrigerant freezes skin and eyes: wear gloves and goggles.",
            Caution::MovingParts => {
                "Belts and fans start without warning, and so does the engine of a hybrid: keep hands, hair and clothes away; turn the hub only with the engine off and the key out."
            }
            Caution::Flammable => {
                "The refrigerant is flammable: keep ignition sources away, ventilate, and use only gauges, identifiers and machines made for flammable refrigerants."
            }
            Caution::HighVoltage => {
                "The compressor runs on high voltage: only qualified persons may work on it, after the vehicle's own disconnection procedure and a check that no voltage is left."
            }
            Caution::NoVenting => {
                "Do not release refrigerant: it is unlawful in many places. Recover it with certified equipment."
            }
            Caution::LocalRules => {
                "The judgement of a certified technician, the data of the vehicle's maker and the local rules come first."
            }
            Caution::Ventilation => {
                "Refrigerant gathers in pits and closed rooms and displaces the air: ventilate at floor level. Keep flames and hot surfaces away: heat turns it into toxic gases."
            }
            Caution::Certification => {
                "Only certified persons may open a circuit, and in many places only they may buy refrigerant."
            }
            Caution::TestPressure => {
                "Pressure test: dry nitrogen only, through a regulator and a relief valve. Never oxygen, compressed air or a mix with refrigerant, and never above the pressure that the label and every part allow."
            }
            Caution::CarbonDioxide => {
                "R-744 (carbon dioxide) stands at up to ten times the pressure of other refrigerants: use only gauges, hoses and parts made for it. It has no smell: above 3 to 4 per cent in the air it is dangerous, above 10 per cent a person soon loses consciousness. Ventilate, and leave the room if much escapes."
            }
            Caution::ForeignRefrigerant => {
                "What is in the circuit is not known, and it may be flammable: identify it before a machine draws it in, and recover it into a separate marked cylinder."
            }
            Caution::HotParts => "The discharge line, the engine and the exhaust burn the skin.",
            Caution::DoNotRun => {
                "Do not run the compressor on an empty circuit or one with air in it: no refrigerant brings its oil back, and compressed air with oil or a flammable refrigerant can ignite."
            }
            Caution::TestTooHigh => {
                "This test pressure is above what the label allows, or above 30 bar where no label was given: let it down before anyone comes near, for the weakest part bursts first."
            }
            Caution::HighVoltageCables => {
                "High voltage: keep hands, clamps, probes and water away from orange cables, their connectors and the compressor's inverter; stop if one is damaged."
            }
            Caution::Exhaust => {
                "Run an engine outdoors or with its exhaust led outside: carbon monoxide kills without warning."
            }
            Caution::ParkAndChock => {
                "Before the engine is raised: parking brake on, wheels chocked, gear in park or neutral, nobody in front of the vehicle."
            }
            Caution::HotCoolant => {
                "Hot coolant is under pressure and scalds: do not open the cooling system, wear gloves, and clamp a hose only with a hose clamp tool."
            }
            Caution::ConnectStopped => {
                "Connect and disconnect the hoses with the engine and the A/C off and both manifold valves closed; lay the hoses clear of belts, fans and hot parts."
            }
            Caution::HandAndIce => {
                "Warm the valve with the hand or a warm cloth and cool it with ice. Never use a flame or a heat gun."
            }
            Caution::RightOil => {
                "Measure the oil that came out and put back the same amount, with what stays in a replaced part: only the type that the compressor's maker names."
            }
            Caution::InsulatingOil => {
                "The oil of a high-voltage compressor must insulate: use only the type that its maker names, with hoses and injectors that no other oil has been in."
            }
            Caution::ReleaseSlowly => {
                "R-744 is released, not recovered, where the local rules allow it: outdoors or into an extraction, slowly through a fixed hose, with no person near its end. Wait until dry ice in the circuit is gone before a joint is opened."
            }
            Caution::HighSideNearLimit => {
                "The high side is close to its limit: watch it, and switch the A/C off if it rises further."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Caution::Pressure),
            2 => Some(Caution::Frostbite),
            3 => Some(Caution::MovingParts),
            4 => Some(Caution::Flammable),
            5 => Some(Caution::HighVoltage),
            6 => Some(Caution::NoVenting),
            7 => Some(Caution::LocalRules),
            8 => Some(Caution::Ventilation),
            9 => Some(Caution::Certification),
            10 => Some(Caution::TestPressure),
            11 => Some(Caution::CarbonDioxide),
            12 => Some(Caution::ForeignRefrigerant),
            13 => Some(Caution::HotParts),
            14 => Some(Caution::DoNotRun),
            15 => Some(Caution::TestTooHigh),
            16 => Some(Caution::HighVoltageCables),
            17 => Some(Caution::Exhaust),
            18 => Some(Caution::ParkAndChock),
            19 => Some(Caution::HotCoolant),
            20 => Some(Caution::ConnectStopped),
            21 => Some(Caution::HandAndIce),
            22 => Some(Caution::RightOil),
            23 => Some(Caution::InsulatingOil),
            24 => Some(Caution::ReleaseSlowly),
            25 => Some(Caution::HighSideNearLimit),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Caution {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// Why the compressor must stand still.
///
/// ```
/// use coldloop::StopReason;
/// assert_eq!(StopReason::HighPressure.id(), "high-pressure");
/// assert_eq!(StopReason::from_id("high-pressure"), Some(StopReason::HighPressure));
/// assert_eq!(StopReason::from_code(1), Some(StopReason::HighPressure));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum StopReason {
    /// Stop: switch the A/C off. The high side is at its limit; do not start it again before the cause is found.
    #[cfg_attr(feature = "serde", serde(rename = "high-pressure"))]
    HighPressure = 1,
    /// Do not run the A/C: the circuit is empty or nearly empty. Find the leak with dry nitrogen first.
    #[cfg_attr(feature = "serde", serde(rename = "nearly-empty"))]
    NearlyEmpty = 2,
    /// Do not start the A/C: its pressure at rest is that of air or another refrigerant, or of parts still warm.
    #[cfg_attr(feature = "serde", serde(rename = "air-present"))]
    AirPresent = 3,
}

impl StopReason {
    /// Every member, in the order of the table.
    pub const ALL: [StopReason; 3] = [
        StopReason::HighPressure,
        StopReason::NearlyEmpty,
        StopReason::AirPresent,
    ];

    const SPELLINGS: [(StopReason, &'static [&'static str]); 3] = [
        (StopReason::HighPressure, &["high-pressure"]),
        (StopReason::NearlyEmpty, &["nearly-empty"]),
        (StopReason::AirPresent, &["air-present"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            StopReason::HighPressure => {
                "Stop: switch the A/C off. The high side is at its limit; do not start it again before the cause is found."
            }
            StopReason::NearlyEmpty => {
                "Do not run the A/C: the circuit is empty or nearly empty. Find the leak with dry nitrogen first."
            }
            StopReason::AirPresent => {
                "Do not start the A/C: its pressure at rest is that of air or another refrigerant, or of parts still warm."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(StopReason::HighPressure),
            2 => Some(StopReason::NearlyEmpty),
            3 => Some(StopReason::AirPresent),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for StopReason {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What limits the result.
///
/// ```
/// use coldloop::QualityNote;
/// assert_eq!(QualityNote::FewReadings.id(), "few-readings");
/// assert_eq!(QualityNote::from_id("few-readings"), Some(QualityNote::FewReadings));
/// assert_eq!(QualityNote::from_code(1), Some(QualityNote::FewReadings));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum QualityNote {
    /// Fewer than both pressures and the vent were read.
    #[cfg_attr(feature = "serde", serde(rename = "few-readings"))]
    FewReadings = 1,
    /// The humidity was not given; the bands are wider for it.
    #[cfg_attr(feature = "serde", serde(rename = "humidity-unknown"))]
    HumidityUnknown = 2,
    /// Fresh or recirculated air was not given; the band of the vent is wider for it.
    #[cfg_attr(feature = "serde", serde(rename = "air-source-unknown"))]
    AirSourceUnknown = 3,
    /// How long the system had run was not given; it is taken as settled.
    #[cfg_attr(feature = "serde", serde(rename = "running-time-unknown"))]
    RunningTimeUnknown = 4,
    /// The system had not run long enough to settle; the bands are wider for it.
    #[cfg_attr(feature = "serde", serde(rename = "not-settled"))]
    NotSettled = 5,
    /// The bands are those of vehicles in general; a pressure table of this vehicle would narrow them.
    #[cfg_attr(feature = "serde", serde(rename = "generic-band"))]
    GenericBand = 6,
    /// At this altitude it matters where the gauges were zeroed, and that was not given.
    #[cfg_attr(feature = "serde", serde(rename = "gauge-zero-unknown"))]
    GaugeZeroUnknown = 7,
    /// The clutch cycles: the low side swings, and one figure of it says less.
    #[cfg_attr(feature = "serde", serde(rename = "clutch-cycling"))]
    ClutchCycling = 8,
    /// Hot air at low engine speed: a variable compressor may run out of stroke, which is no fault.
    #[cfg_attr(feature = "serde", serde(rename = "stroke-limit"))]
    StrokeLimit = 9,
    /// The two sides are equal: the compressor is not driven or does not pump, or the system is at rest.
    #[cfg_attr(feature = "serde", serde(rename = "sides-equal"))]
    SidesEqual = 10,
    /// The compressor stands still: only the pressure at rest can be judged.
    #[cfg_attr(feature = "serde", serde(rename = "at-rest"))]
    AtRest = 11,
    /// A pressure has no saturation temperature: it was judged at the end of the scale.
    #[cfg_attr(feature = "serde", serde(rename = "off-scale"))]
    OffScale = 12,
    /// One reading does not fit: measure it again.
    #[cfg_attr(feature = "serde", serde(rename = "reading-out-of-line"))]
    ReadingOutOfLine = 13,
    /// Two faults at once would explain the readings better than any single one.
    #[cfg_attr(feature = "serde", serde(rename = "two-faults-possible"))]
    TwoFaultsPossible = 14,
    /// The pressure at rest of this refrigerant is not that of saturation here: no fault is named from it.
    #[cfg_attr(feature = "serde", serde(rename = "bands-only"))]
    BandsOnly = 15,
    /// The air is thinner, the engine faster or slower, or the blower lower than in the vehicles that the odds are based on: they are less sure here.
    #[cfg_attr(feature = "serde", serde(rename = "outside-fit"))]
    OutsideFit = 16,
    /// The high side was read by the vehicle's own transducer alone; it stands in for a gauge.
    #[cfg_attr(feature = "serde", serde(rename = "transducer-stands-in"))]
    TransducerStandsIn = 17,
    /// Gauge and transducer of the high side differ by more than their uncertainties: the gauge was judged; find out which of the two is off.
    #[cfg_attr(feature = "serde", serde(rename = "transducer-contradicts"))]
    TransducerContradicts = 18,
    /// The high side stands at 95 % of its cut-out or above it: the switch stops the compressor there, and a mean of such readings says less.
    #[cfg_attr(feature = "serde", serde(rename = "near-high-cut-out"))]
    NearHighCutOut = 19,
    /// The evaporator sensor reads below the freezing point of water: ice may close the fins.
    #[cfg_attr(feature = "serde", serde(rename = "evaporator-freezing"))]
    EvaporatorFreezing = 20,
    /// The vent reads colder than the evaporator sensor, by more than their uncertainties: measure both again.
    #[cfg_attr(feature = "serde", serde(rename = "vent-below-evaporator"))]
    VentBelowEvaporator = 21,
    /// The control commands less than half of the displacement in hot air: what looks like a compressor that pumps too little may be one that is commanded to pump little.
    #[cfg_attr(feature = "serde", serde(rename = "displacement-low"))]
    DisplacementLow = 22,
    /// There is a second evaporator: the bands take it into account, except for R-744.
    #[cfg_attr(feature = "serde", serde(rename = "second-evaporator"))]
    SecondEvaporator = 23,
    /// The place of the ports is noted: the bands take it into account, except for R-744.
    #[cfg_attr(feature = "serde", serde(rename = "ports-noted"))]
    PortsNoted = 24,
    /// The speed of the compressor is noted; the odds do not use it.
    #[cfg_attr(feature = "serde", serde(rename = "compressor-speed-noted"))]
    CompressorSpeedNoted = 25,
    /// The command of the fan is noted: the bands take it into account, except for R-744.
    #[cfg_attr(feature = "serde", serde(rename = "fan-command-noted"))]
    FanCommandNoted = 26,
    /// The commanded displacement is noted; the odds do not use it.
    #[cfg_attr(feature = "serde", serde(rename = "displacement-noted"))]
    DisplacementNoted = 27,
}

impl QualityNote {
    /// Every member, in the order of the table.
    pub const ALL: [QualityNote; 27] = [
        QualityNote::FewReadings,
        QualityNote::HumidityUnknown,
        QualityNote::AirSourceUnknown,
        QualityNote::RunningTimeUnknown,
        QualityNote::NotSettled,
        QualityNote::GenericBand,
        QualityNote::GaugeZeroUnknown,
        QualityNote::ClutchCycling,
        QualityNote::StrokeLimit,
        QualityNote::SidesEqual,
        QualityNote::AtRest,
        QualityNote::OffScale,
        QualityNote::ReadingOutOfLine,
        QualityNote::TwoFaultsPossible,
        QualityNote::BandsOnly,
        QualityNote::OutsideFit,
        QualityNote::TransducerStandsIn,
        QualityNote::TransducerContradicts,
        QualityNote::NearHighCutOut,
        QualityNote::EvaporatorFreezing,
        QualityNote::VentBelowEvaporator,
        QualityNote::DisplacementLow,
        QualityNote::SecondEvaporator,
        QualityNote::PortsNoted,
        QualityNote::CompressorSpeedNoted,
        QualityNote::FanCommandNoted,
        QualityNote::DisplacementNoted,
    ];

    const SPELLINGS: [(QualityNote, &'static [&'static str]); 27] = [
        (QualityNote::FewReadings, &["few-readings"]),
        (QualityNote::HumidityUnknown, &["humidity-unknown"]),
        (QualityNote::AirSourceUnknown, &["air-source-unknown"]),
        (QualityNote::RunningTimeUnknown, &["running-time-unknown"]),
        (QualityNote::NotSettled, &["not-settled"]),
        (QualityNote::GenericBand, &["generic-band"]),
        (QualityNote::GaugeZeroUnknown, &["gauge-zero-unknown"]),
        (QualityNote::ClutchCycling, &["clutch-cycling"]),
        (QualityNote::StrokeLimit, &["stroke-limit"]),
        (QualityNote::SidesEqual, &["sides-equal"]),
        (QualityNote::AtRest, &["at-rest"]),
        (QualityNote::OffScale, &["off-scale"]),
        (QualityNote::ReadingOutOfLine, &["reading-out-of-line"]),
        (QualityNote::TwoFaultsPossible, &["two-faults-possible"]),
        (QualityNote::BandsOnly, &["bands-only"]),
        (QualityNote::OutsideFit, &["outside-fit"]),
        (QualityNote::TransducerStandsIn, &["transducer-stands-in"]),
        (QualityNote::TransducerContradicts, &["transducer-contradicts"]),
        (QualityNote::NearHighCutOut, &["near-high-cut-out"]),
        (QualityNote::EvaporatorFreezing, &["evaporator-freezing"]),
        (QualityNote::VentBelowEvaporator, &["vent-below-evaporator"]),
        (QualityNote::DisplacementLow, &["displacement-low"]),
        (QualityNote::SecondEvaporator, &["second-evaporator"]),
        (QualityNote::PortsNoted, &["ports-noted"]),
        (QualityNote::CompressorSpeedNoted, &["compressor-speed-noted"]),
        (QualityNote::FanCommandNoted, &["fan-command-noted"]),
        (QualityNote::DisplacementNoted, &["displacement-noted"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            QualityNote::FewReadings => "Fewer than both pressures and the vent were read.",
            QualityNote::HumidityUnknown => "The humidity was not given; the bands are wider for it.",
            QualityNote::AirSourceUnknown => {
                "Fresh or recirculated air was not given; the band of the vent is wider for it."
            }
            QualityNote::RunningTimeUnknown => "How long the system had run was not given; it is taken as settled.",
            QualityNote::NotSettled => "The system had not run long enough to settle; the bands are wider for it.",
            QualityNote::GenericBand => {
                "The bands are those of vehicles in general; a pressure table of this vehicle would narrow them."
            }
            QualityNote::GaugeZeroUnknown => {
                "At this altitude it matters where the gauges were zeroed, and that was not given."
            }
            QualityNote::ClutchCycling => "The clutch cycles: the low side swings, and one figure of it says less.",
            QualityNote::StrokeLimit => {
                "Hot air at low engine speed: a variable compressor may run out of stroke, which is no fault."
            }
            QualityNote::SidesEqual => {
                "The two sides are equal: the compressor is not driven or does not pump, or the system is at rest."
            }
            QualityNote::AtRest => "The compressor stands still: only the pressure at rest can be judged.",
            QualityNote::OffScale => "A pressure has no saturation temperature: it was judged at the end of the scale.",
            QualityNote::ReadingOutOfLine => "One reading does not fit: measure it again.",
            QualityNote::TwoFaultsPossible => {
                "Two faults at once would explain the readings better than any single one."
            }
            QualityNote::BandsOnly => {
                "The pressure at rest of this refrigerant is not that of saturation here: no fault is named from it."
            }
            QualityNote::OutsideFit => {
                "The air is thinner, the engine faster or slower, or the blower lower than in the vehicles that the odds are based on: they are less sure here."
            }
            QualityNote::TransducerStandsIn => {
                "The high side was read by the vehicle's own transducer alone; it stands in for a gauge."
            }
            QualityNote::TransducerContradicts => {
                "Gauge and transducer of the high side differ by more than their uncertainties: the gauge was judged; find out which of the two is off."
            }
            QualityNote::NearHighCutOut => {
                "The high side stands at 95 % of its cut-out or above it: the switch stops the compressor there, and a mean of such readings says less."
            }
            QualityNote::EvaporatorFreezing => {
                "The evaporator sensor reads below the freezing point of water: ice may close the fins."
            }
            QualityNote::VentBelowEvaporator => {
                "The vent reads colder than the evaporator sensor, by more than their uncertainties: measure both again."
            }
            QualityNote::DisplacementLow => {
                "The control commands less than half of the displacement in hot air: what looks like a compressor that pumps too little may be one that is commanded to pump little."
            }
            QualityNote::SecondEvaporator => {
                "There is a second evaporator: the bands take it into account, except for R-744."
            }
            QualityNote::PortsNoted => {
                "The place of the ports is noted: the bands take it into account, except for R-744."
            }
            QualityNote::CompressorSpeedNoted => "The speed of the compressor is noted; the odds do not use it.",
            QualityNote::FanCommandNoted => {
                "The command of the fan is noted: the bands take it into account, except for R-744."
            }
            QualityNote::DisplacementNoted => "The commanded displacement is noted; the odds do not use it.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(QualityNote::FewReadings),
            2 => Some(QualityNote::HumidityUnknown),
            3 => Some(QualityNote::AirSourceUnknown),
            4 => Some(QualityNote::RunningTimeUnknown),
            5 => Some(QualityNote::NotSettled),
            6 => Some(QualityNote::GenericBand),
            7 => Some(QualityNote::GaugeZeroUnknown),
            8 => Some(QualityNote::ClutchCycling),
            9 => Some(QualityNote::StrokeLimit),
            10 => Some(QualityNote::SidesEqual),
            11 => Some(QualityNote::AtRest),
            12 => Some(QualityNote::OffScale),
            13 => Some(QualityNote::ReadingOutOfLine),
            14 => Some(QualityNote::TwoFaultsPossible),
            15 => Some(QualityNote::BandsOnly),
            16 => Some(QualityNote::OutsideFit),
            17 => Some(QualityNote::TransducerStandsIn),
            18 => Some(QualityNote::TransducerContradicts),
            19 => Some(QualityNote::NearHighCutOut),
            20 => Some(QualityNote::EvaporatorFreezing),
            21 => Some(QualityNote::VentBelowEvaporator),
            22 => Some(QualityNote::DisplacementLow),
            23 => Some(QualityNote::SecondEvaporator),
            24 => Some(QualityNote::PortsNoted),
            25 => Some(QualityNote::CompressorSpeedNoted),
            26 => Some(QualityNote::FanCommandNoted),
            27 => Some(QualityNote::DisplacementNoted),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for QualityNote {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// How a check can come out.
///
/// ```
/// use coldloop::ResultKind;
/// assert_eq!(ResultKind::Yes.id(), "yes");
/// assert_eq!(ResultKind::from_id("yes"), Some(ResultKind::Yes));
/// assert_eq!(ResultKind::from_code(1), Some(ResultKind::Yes));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum ResultKind {
    /// The answer is yes.
    #[cfg_attr(feature = "serde", serde(rename = "yes"))]
    Yes = 1,
    /// The answer is no.
    #[cfg_attr(feature = "serde", serde(rename = "no"))]
    No = 2,
    /// Below the normal range.
    #[cfg_attr(feature = "serde", serde(rename = "below"))]
    Below = 3,
    /// Within the normal range.
    #[cfg_attr(feature = "serde", serde(rename = "within"))]
    Within = 4,
    /// Above the normal range.
    #[cfg_attr(feature = "serde", serde(rename = "above"))]
    Above = 5,
}

impl ResultKind {
    /// Every member, in the order of the table.
    pub const ALL: [ResultKind; 5] = [
        ResultKind::Yes,
        ResultKind::No,
        ResultKind::Below,
        ResultKind::Within,
        ResultKind::Above,
    ];

    const SPELLINGS: [(ResultKind, &'static [&'static str]); 5] = [
        (ResultKind::Yes, &["yes"]),
        (ResultKind::No, &["no"]),
        (ResultKind::Below, &["below"]),
        (ResultKind::Within, &["within"]),
        (ResultKind::Above, &["above"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            ResultKind::Yes => "The answer is yes.",
            ResultKind::No => "The answer is no.",
            ResultKind::Below => "Below the normal range.",
            ResultKind::Within => "Within the normal range.",
            ResultKind::Above => "Above the normal range.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(ResultKind::Yes),
            2 => Some(ResultKind::No),
            3 => Some(ResultKind::Below),
            4 => Some(ResultKind::Within),
            5 => Some(ResultKind::Above),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for ResultKind {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What the pressure reached by a vacuum pump tells.
///
/// ```
/// use coldloop::EvacuationFinding;
/// assert_eq!(EvacuationFinding::Deep.id(), "deep");
/// assert_eq!(EvacuationFinding::from_id("deep"), Some(EvacuationFinding::Deep));
/// assert_eq!(EvacuationFinding::from_code(1), Some(EvacuationFinding::Deep));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum EvacuationFinding {
    /// Deep enough: far below the pressure at which water boils in the coldest part.
    #[cfg_attr(feature = "serde", serde(rename = "deep"))]
    Deep = 1,
    /// Water boils and leaves, but the pressure is not yet that of a dry circuit: go on.
    #[cfg_attr(feature = "serde", serde(rename = "water-boils"))]
    WaterBoils = 2,
    /// Water in the coldest part cannot boil at this pressure: it stays, however long the pump runs.
    #[cfg_attr(feature = "serde", serde(rename = "water-stays"))]
    WaterStays = 3,
    /// The gauge is too coarse to tell a deep vacuum from one that leaves the water: use an absolute vacuum gauge.
    #[cfg_attr(feature = "serde", serde(rename = "gauge-cannot-tell"))]
    GaugeCannotTell = 4,
}

impl EvacuationFinding {
    /// Every member, in the order of the table.
    pub const ALL: [EvacuationFinding; 4] = [
        EvacuationFinding::Deep,
        EvacuationFinding::WaterBoils,
        EvacuationFinding::WaterStays,
        EvacuationFinding::GaugeCannotTell,
    ];

    const SPELLINGS: [(EvacuationFinding, &'static [&'static str]); 4] = [
        (EvacuationFinding::Deep, &["deep"]),
        (EvacuationFinding::WaterBoils, &["water-boils"]),
        (EvacuationFinding::WaterStays, &["water-stays"]),
        (EvacuationFinding::GaugeCannotTell, &["gauge-cannot-tell"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            EvacuationFinding::Deep => "Deep enough: far below the pressure at which water boils in the coldest part.",
            EvacuationFinding::WaterBoils => {
                "Water boils and leaves, but the pressure is not yet that of a dry circuit: go on."
            }
            EvacuationFinding::WaterStays => {
                "Water in the coldest part cannot boil at this pressure: it stays, however long the pump runs."
            }
            EvacuationFinding::GaugeCannotTell => {
                "The gauge is too coarse to tell a deep vacuum from one that leaves the water: use an absolute vacuum gauge."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(EvacuationFinding::Deep),
            2 => Some(EvacuationFinding::WaterBoils),
            3 => Some(EvacuationFinding::WaterStays),
            4 => Some(EvacuationFinding::GaugeCannotTell),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for EvacuationFinding {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What the rise of a held vacuum tells.
///
/// ```
/// use coldloop::HoldFinding;
/// assert_eq!(HoldFinding::Tight.id(), "tight");
/// assert_eq!(HoldFinding::from_id("tight"), Some(HoldFinding::Tight));
/// assert_eq!(HoldFinding::from_code(1), Some(HoldFinding::Tight));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum HoldFinding {
    /// The pressure held, or its rise settled within the limit and below that of a dry circuit: no leak shows at this pressure difference, and no moisture.
    #[cfg_attr(feature = "serde", serde(rename = "tight"))]
    Tight = 1,
    /// The pressure rises steadily, or beyond what water can do: air comes in.
    #[cfg_attr(feature = "serde", serde(rename = "leak"))]
    Leak = 2,
    /// The rise levels off no higher than the vapour pressure of water: moisture, or refrigerant that leaves the oil. Evacuate on.
    #[cfg_attr(feature = "serde", serde(rename = "moisture"))]
    Moisture = 3,
    /// The pressure rose, and these readings cannot tell a leak from moisture: hold longer and read several times.
    #[cfg_attr(feature = "serde", serde(rename = "rise-unclear"))]
    RiseUnclear = 4,
    /// Held too briefly to say that it is tight.
    #[cfg_attr(feature = "serde", serde(rename = "too-short"))]
    TooShort = 5,
    /// The gauge is too coarse to see the rise that matters.
    #[cfg_attr(feature = "serde", serde(rename = "gauge-cannot-tell"))]
    GaugeCannotTell = 6,
    /// The pressure fell: the pump is not shut off from the circuit, or a part cools. Shut it off and read again.
    #[cfg_attr(feature = "serde", serde(rename = "falling"))]
    Falling = 7,
    /// The pressure held, but it is too high for a dry circuit: evacuate on before it is held again.
    #[cfg_attr(feature = "serde", serde(rename = "not-deep"))]
    NotDeep = 8,
}

impl HoldFinding {
    /// Every member, in the order of the table.
    pub const ALL: [HoldFinding; 8] = [
        HoldFinding::Tight,
        HoldFinding::Leak,
        HoldFinding::Moisture,
        HoldFinding::RiseUnclear,
        HoldFinding::TooShort,
        HoldFinding::GaugeCannotTell,
        HoldFinding::Falling,
        HoldFinding::NotDeep,
    ];

    const SPELLINGS: [(HoldFinding, &'static [&'static str]); 8] = [
        (HoldFinding::Tight, &["tight"]),
        (HoldFinding::Leak, &["leak"]),
        (HoldFinding::Moisture, &["moisture"]),
        (HoldFinding::RiseUnclear, &["rise-unclear"]),
        (HoldFinding::TooShort, &["too-short"]),
        (HoldFinding::GaugeCannotTell, &["gauge-cannot-tell"]),
        (HoldFinding::Falling, &["falling"]),
        (HoldFinding::NotDeep, &["not-deep"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            HoldFinding::Tight => {
                "The pressure held, or its rise settled within the limit and below that of a dry circuit: no leak shows at this pressure difference, and no moisture."
            }
            HoldFinding::Leak => "The pressure rises steadily, or beyond what water can do: air comes in.",
            HoldFinding::Moisture => {
                "The rise levels off no higher than the vapour pressure of water: moisture, or refrigerant that leaves the oil. Evacuate on."
            }
            HoldFinding::RiseUnclear => {
                "The pressure rose, and these readings cannot tell a leak from moisture: hold longer and read several times."
            }
            HoldFinding::TooShort => "Held too briefly to say that it is tight.",
            HoldFinding::GaugeCannotTell => "The gauge is too coarse to see the rise that matters.",
            HoldFinding::Falling => {
                "The pressure fell: the pump is not shut off from the circuit, or a part cools. Shut it off and read again."
            }
            HoldFinding::NotDeep => {
                "The pressure held, but it is too high for a dry circuit: evacuate on before it is held again."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(HoldFinding::Tight),
            2 => Some(HoldFinding::Leak),
            3 => Some(HoldFinding::Moisture),
            4 => Some(HoldFinding::RiseUnclear),
            5 => Some(HoldFinding::TooShort),
            6 => Some(HoldFinding::GaugeCannotTell),
            7 => Some(HoldFinding::Falling),
            8 => Some(HoldFinding::NotDeep),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for HoldFinding {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What a circuit is filled with while its pressure is watched.
///
/// ```
/// use coldloop::TestGas;
/// assert_eq!(TestGas::Nitrogen.id(), "nitrogen");
/// assert_eq!(TestGas::from_id("nitrogen"), Some(TestGas::Nitrogen));
/// assert_eq!(TestGas::from_code(1), Some(TestGas::Nitrogen));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum TestGas {
    /// Dry nitrogen.
    #[cfg_attr(feature = "serde", serde(rename = "nitrogen"))]
    Nitrogen = 1,
    /// Vapour of the refrigerant of the system.
    #[cfg_attr(feature = "serde", serde(rename = "refrigerant"))]
    Refrigerant = 2,
}

impl TestGas {
    /// Every member, in the order of the table.
    pub const ALL: [TestGas; 2] = [TestGas::Nitrogen, TestGas::Refrigerant];

    const SPELLINGS: [(TestGas, &'static [&'static str]); 2] = [
        (TestGas::Nitrogen, &["nitrogen"]),
        (TestGas::Refrigerant, &["refrigerant"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            TestGas::Nitrogen => "Dry nitrogen.",
            TestGas::Refrigerant => "Vapour of the refrigerant of the system.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(TestGas::Nitrogen),
            2 => Some(TestGas::Refrigerant),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for TestGas {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What the decay of a test pressure tells.
///
/// ```
/// use coldloop::LeakFinding;
/// assert_eq!(LeakFinding::Tight.id(), "tight");
/// assert_eq!(LeakFinding::from_id("tight"), Some(LeakFinding::Tight));
/// assert_eq!(LeakFinding::from_code(1), Some(LeakFinding::Tight));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum LeakFinding {
    /// The loss is surely below the allowed one.
    #[cfg_attr(feature = "serde", serde(rename = "tight"))]
    Tight = 1,
    /// Gas was surely lost: the circuit leaks.
    #[cfg_attr(feature = "serde", serde(rename = "leaks"))]
    Leaks = 2,
    /// No loss shows; one that is smaller than the smallest detectable one would not have shown.
    #[cfg_attr(feature = "serde", serde(rename = "no-loss-seen"))]
    NoLossSeen = 3,
    /// Liquid is or may be present: its pressure tells the temperature, not how much was lost.
    #[cfg_attr(feature = "serde", serde(rename = "liquid-present"))]
    LiquidPresent = 4,
    /// More gas at the end than at the start: a valve leaks, or a temperature or pressure was misread.
    #[cfg_attr(feature = "serde", serde(rename = "gas-gained"))]
    GasGained = 5,
    /// These readings do not tell whether the loss is above or below the allowed one: hold longer, or measure better.
    #[cfg_attr(feature = "serde", serde(rename = "limit-unclear"))]
    LimitUnclear = 6,
}

impl LeakFinding {
    /// Every member, in the order of the table.
    pub const ALL: [LeakFinding; 6] = [
        LeakFinding::Tight,
        LeakFinding::Leaks,
        LeakFinding::NoLossSeen,
        LeakFinding::LiquidPresent,
        LeakFinding::GasGained,
        LeakFinding::LimitUnclear,
    ];

    const SPELLINGS: [(LeakFinding, &'static [&'static str]); 6] = [
        (LeakFinding::Tight, &["tight"]),
        (LeakFinding::Leaks, &["leaks"]),
        (LeakFinding::NoLossSeen, &["no-loss-seen"]),
        (LeakFinding::LiquidPresent, &["liquid-present"]),
        (LeakFinding::GasGained, &["gas-gained"]),
        (LeakFinding::LimitUnclear, &["limit-unclear"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            LeakFinding::Tight => "The loss is surely below the allowed one.",
            LeakFinding::Leaks => "Gas was surely lost: the circuit leaks.",
            LeakFinding::NoLossSeen => {
                "No loss shows; one that is smaller than the smallest detectable one would not have shown."
            }
            LeakFinding::LiquidPresent => {
                "Liquid is or may be present: its pressure tells the temperature, not how much was lost."
            }
            LeakFinding::GasGained => {
                "More gas at the end than at the start: a valve leaks, or a temperature or pressure was misread."
            }
            LeakFinding::LimitUnclear => {
                "These readings do not tell whether the loss is above or below the allowed one: hold longer, or measure better."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(LeakFinding::Tight),
            2 => Some(LeakFinding::Leaks),
            3 => Some(LeakFinding::NoLossSeen),
            4 => Some(LeakFinding::LiquidPresent),
            5 => Some(LeakFinding::GasGained),
            6 => Some(LeakFinding::LimitUnclear),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for LeakFinding {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What the masses of a service tell of the charge now in the vehicle.
///
/// ```
/// use coldloop::ChargeFinding;
/// assert_eq!(ChargeFinding::Within.id(), "within");
/// assert_eq!(ChargeFinding::from_id("within"), Some(ChargeFinding::Within));
/// assert_eq!(ChargeFinding::from_code(1), Some(ChargeFinding::Within));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum ChargeFinding {
    /// The charge is surely within the tolerance of the label.
    #[cfg_attr(feature = "serde", serde(rename = "within"))]
    Within = 1,
    /// The charge is surely less than the label allows.
    #[cfg_attr(feature = "serde", serde(rename = "under"))]
    Under = 2,
    /// The charge is surely more than the label allows.
    #[cfg_attr(feature = "serde", serde(rename = "over"))]
    Over = 3,
    /// The masses are too uncertain to tell whether the charge is within the tolerance.
    #[cfg_attr(feature = "serde", serde(rename = "cannot-tell"))]
    CannotTell = 4,
}

impl ChargeFinding {
    /// Every member, in the order of the table.
    pub const ALL: [ChargeFinding; 4] = [
        ChargeFinding::Within,
        ChargeFinding::Under,
        ChargeFinding::Over,
        ChargeFinding::CannotTell,
    ];

    const SPELLINGS: [(ChargeFinding, &'static [&'static str]); 4] = [
        (ChargeFinding::Within, &["within"]),
        (ChargeFinding::Under, &["under"]),
        (ChargeFinding::Over, &["over"]),
        (ChargeFinding::CannotTell, &["cannot-tell"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            ChargeFinding::Within => "The charge is surely within the tolerance of the label.",
            ChargeFinding::Under => "The charge is surely less than the label allows.",
            ChargeFinding::Over => "The charge is surely more than the label allows.",
            ChargeFinding::CannotTell => {
                "The masses are too uncertain to tell whether the charge is within the tolerance."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(ChargeFinding::Within),
            2 => Some(ChargeFinding::Under),
            3 => Some(ChargeFinding::Over),
            4 => Some(ChargeFinding::CannotTell),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for ChargeFinding {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What the readings before and after a repair tell together.
///
/// ```
/// use coldloop::RepairFinding;
/// assert_eq!(RepairFinding::Proven.id(), "proven");
/// assert_eq!(RepairFinding::from_id("proven"), Some(RepairFinding::Proven));
/// assert_eq!(RepairFinding::from_code(1), Some(RepairFinding::Proven));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum RepairFinding {
    /// Fault before, normal after: the repair is proven.
    #[cfg_attr(feature = "serde", serde(rename = "proven"))]
    Proven = 1,
    /// Nothing changed: the earlier fault still explains the readings best.
    #[cfg_attr(feature = "serde", serde(rename = "still-faulty"))]
    StillFaulty = 2,
    /// The earlier fault no longer shows; another does.
    #[cfg_attr(feature = "serde", serde(rename = "another-fault"))]
    AnotherFault = 3,
    /// Normal before and after: these readings do not show that anything was wrong.
    #[cfg_attr(feature = "serde", serde(rename = "sound-before"))]
    SoundBefore = 4,
    /// The readings after the repair do not settle whether it helped.
    #[cfg_attr(feature = "serde", serde(rename = "cannot-tell"))]
    CannotTell = 5,
    /// Better: the fault is smaller; whether all of it is gone is open.
    #[cfg_attr(feature = "serde", serde(rename = "better"))]
    Better = 6,
    /// The earlier fault is still there and has grown.
    #[cfg_attr(feature = "serde", serde(rename = "worse"))]
    Worse = 7,
}

impl RepairFinding {
    /// Every member, in the order of the table.
    pub const ALL: [RepairFinding; 7] = [
        RepairFinding::Proven,
        RepairFinding::StillFaulty,
        RepairFinding::AnotherFault,
        RepairFinding::SoundBefore,
        RepairFinding::CannotTell,
        RepairFinding::Better,
        RepairFinding::Worse,
    ];

    const SPELLINGS: [(RepairFinding, &'static [&'static str]); 7] = [
        (RepairFinding::Proven, &["proven"]),
        (RepairFinding::StillFaulty, &["still-faulty"]),
        (RepairFinding::AnotherFault, &["another-fault"]),
        (RepairFinding::SoundBefore, &["sound-before"]),
        (RepairFinding::CannotTell, &["cannot-tell"]),
        (RepairFinding::Better, &["better"]),
        (RepairFinding::Worse, &["worse"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            RepairFinding::Proven => "Fault before, normal after: the repair is proven.",
            RepairFinding::StillFaulty => "Nothing changed: the earlier fault still explains the readings best.",
            RepairFinding::AnotherFault => "The earlier fault no longer shows; another does.",
            RepairFinding::SoundBefore => {
                "Normal before and after: these readings do not show that anything was wrong."
            }
            RepairFinding::CannotTell => "The readings after the repair do not settle whether it helped.",
            RepairFinding::Better => "Better: the fault is smaller; whether all of it is gone is open.",
            RepairFinding::Worse => "The earlier fault is still there and has grown.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(RepairFinding::Proven),
            2 => Some(RepairFinding::StillFaulty),
            3 => Some(RepairFinding::AnotherFault),
            4 => Some(RepairFinding::SoundBefore),
            5 => Some(RepairFinding::CannotTell),
            6 => Some(RepairFinding::Better),
            7 => Some(RepairFinding::Worse),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for RepairFinding {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// How the air at the vent falls after the start.
///
/// ```
/// use coldloop::PullDownFinding;
/// assert_eq!(PullDownFinding::Reached.id(), "reached");
/// assert_eq!(PullDownFinding::from_id("reached"), Some(PullDownFinding::Reached));
/// assert_eq!(PullDownFinding::from_code(1), Some(PullDownFinding::Reached));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum PullDownFinding {
    /// The vent reached its normal temperature.
    #[cfg_attr(feature = "serde", serde(rename = "reached"))]
    Reached = 1,
    /// The vent still falls and may reach it: read on.
    #[cfg_attr(feature = "serde", serde(rename = "falling"))]
    Falling = 2,
    /// The vent levels off above its normal temperature.
    #[cfg_attr(feature = "serde", serde(rename = "stalled"))]
    Stalled = 3,
    /// The vent fell and rises again: frost on the evaporator, a clutch or fan that drops out, or an engine that heats up.
    #[cfg_attr(feature = "serde", serde(rename = "rising"))]
    Rising = 4,
    /// Too few readings, or taken too early, to tell.
    #[cfg_attr(feature = "serde", serde(rename = "cannot-tell"))]
    CannotTell = 5,
    /// The vent fell below the freezing point of water: ice closes the evaporator. Find out why nothing stops the compressor before that.
    #[cfg_attr(feature = "serde", serde(rename = "freezing"))]
    Freezing = 6,
}

impl PullDownFinding {
    /// Every member, in the order of the table.
    pub const ALL: [PullDownFinding; 6] = [
        PullDownFinding::Reached,
        PullDownFinding::Falling,
        PullDownFinding::Stalled,
        PullDownFinding::Rising,
        PullDownFinding::CannotTell,
        PullDownFinding::Freezing,
    ];

    const SPELLINGS: [(PullDownFinding, &'static [&'static str]); 6] = [
        (PullDownFinding::Reached, &["reached"]),
        (PullDownFinding::Falling, &["falling"]),
        (PullDownFinding::Stalled, &["stalled"]),
        (PullDownFinding::Rising, &["rising"]),
        (PullDownFinding::CannotTell, &["cannot-tell"]),
        (PullDownFinding::Freezing, &["freezing"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            PullDownFinding::Reached => "The vent reached its normal temperature.",
            PullDownFinding::Falling => "The vent still falls and may reach it: read on.",
            PullDownFinding::Stalled => "The vent levels off above its normal temperature.",
            PullDownFinding::Rising => {
                "The vent fell and rises again: frost on the evaporator, a clutch or fan that drops out, or an engine that heats up."
            }
            PullDownFinding::CannotTell => "Too few readings, or taken too early, to tell.",
            PullDownFinding::Freezing => {
                "The vent fell below the freezing point of water: ice closes the evaporator. Find out why nothing stops the compressor before that."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(PullDownFinding::Reached),
            2 => Some(PullDownFinding::Falling),
            3 => Some(PullDownFinding::Stalled),
            4 => Some(PullDownFinding::Rising),
            5 => Some(PullDownFinding::CannotTell),
            6 => Some(PullDownFinding::Freezing),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for PullDownFinding {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What a proof of a repair rests on.
///
/// ```
/// use coldloop::ProofKind;
/// assert_eq!(ProofKind::PressureTest.id(), "pressure-test");
/// assert_eq!(ProofKind::from_id("pressure-test"), Some(ProofKind::PressureTest));
/// assert_eq!(ProofKind::from_code(1), Some(ProofKind::PressureTest));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum ProofKind {
    /// A test pressure that was watched.
    #[cfg_attr(feature = "serde", serde(rename = "pressure-test"))]
    PressureTest = 1,
    /// What the vacuum pump reached.
    #[cfg_attr(feature = "serde", serde(rename = "evacuation"))]
    Evacuation = 2,
    /// The vacuum that was held.
    #[cfg_attr(feature = "serde", serde(rename = "hold"))]
    Hold = 3,
    /// The masses.
    #[cfg_attr(feature = "serde", serde(rename = "charge"))]
    Charge = 4,
    /// The vent after the start.
    #[cfg_attr(feature = "serde", serde(rename = "pull-down"))]
    PullDown = 5,
    /// The readings before and after.
    #[cfg_attr(feature = "serde", serde(rename = "repair"))]
    Repair = 6,
}

impl ProofKind {
    /// Every member, in the order of the table.
    pub const ALL: [ProofKind; 6] = [
        ProofKind::PressureTest,
        ProofKind::Evacuation,
        ProofKind::Hold,
        ProofKind::Charge,
        ProofKind::PullDown,
        ProofKind::Repair,
    ];

    const SPELLINGS: [(ProofKind, &'static [&'static str]); 6] = [
        (ProofKind::PressureTest, &["pressure-test"]),
        (ProofKind::Evacuation, &["evacuation"]),
        (ProofKind::Hold, &["hold"]),
        (ProofKind::Charge, &["charge"]),
        (ProofKind::PullDown, &["pull-down"]),
        (ProofKind::Repair, &["repair"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            ProofKind::PressureTest => "A test pressure that was watched.",
            ProofKind::Evacuation => "What the vacuum pump reached.",
            ProofKind::Hold => "The vacuum that was held.",
            ProofKind::Charge => "The masses.",
            ProofKind::PullDown => "The vent after the start.",
            ProofKind::Repair => "The readings before and after.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(ProofKind::PressureTest),
            2 => Some(ProofKind::Evacuation),
            3 => Some(ProofKind::Hold),
            4 => Some(ProofKind::Charge),
            5 => Some(ProofKind::PullDown),
            6 => Some(ProofKind::Repair),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for ProofKind {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What all proofs of a visit tell together: no more than the weakest of them.
///
/// ```
/// use coldloop::ClosingFinding;
/// assert_eq!(ClosingFinding::Proven.id(), "proven");
/// assert_eq!(ClosingFinding::from_id("proven"), Some(ClosingFinding::Proven));
/// assert_eq!(ClosingFinding::from_code(1), Some(ClosingFinding::Proven));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum ClosingFinding {
    /// All tests passed, and the repair is proven.
    #[cfg_attr(feature = "serde", serde(rename = "proven"))]
    Proven = 1,
    /// All tests passed, and the readings are better.
    #[cfg_attr(feature = "serde", serde(rename = "better"))]
    Better = 2,
    /// All tests passed; whether the repair helped is not yet shown.
    #[cfg_attr(feature = "serde", serde(rename = "open"))]
    Open = 3,
    /// One test failed: the vehicle is not ready.
    #[cfg_attr(feature = "serde", serde(rename = "fails"))]
    Fails = 4,
}

impl ClosingFinding {
    /// Every member, in the order of the table.
    pub const ALL: [ClosingFinding; 4] = [
        ClosingFinding::Proven,
        ClosingFinding::Better,
        ClosingFinding::Open,
        ClosingFinding::Fails,
    ];

    const SPELLINGS: [(ClosingFinding, &'static [&'static str]); 4] = [
        (ClosingFinding::Proven, &["proven"]),
        (ClosingFinding::Better, &["better"]),
        (ClosingFinding::Open, &["open"]),
        (ClosingFinding::Fails, &["fails"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            ClosingFinding::Proven => "All tests passed, and the repair is proven.",
            ClosingFinding::Better => "All tests passed, and the readings are better.",
            ClosingFinding::Open => "All tests passed; whether the repair helped is not yet shown.",
            ClosingFinding::Fails => "One test failed: the vehicle is not ready.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(ClosingFinding::Proven),
            2 => Some(ClosingFinding::Better),
            3 => Some(ClosingFinding::Open),
            4 => Some(ClosingFinding::Fails),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for ClosingFinding {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// What a pressure at rest says of one refrigerant.
///
/// ```
/// use coldloop::Holding;
/// assert_eq!(Holding::Agrees.id(), "agrees");
/// assert_eq!(Holding::from_id("agrees"), Some(Holding::Agrees));
/// assert_eq!(Holding::from_code(1), Some(Holding::Agrees));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Holding {
    /// The charge can be this refrigerant, and nothing else.
    #[cfg_attr(feature = "serde", serde(rename = "agrees"))]
    Agrees = 1,
    /// The pressure is higher: with this refrigerant there is gas that does not condense, or another refrigerant.
    #[cfg_attr(feature = "serde", serde(rename = "too-high"))]
    TooHigh = 2,
    /// The pressure is lower: it is another refrigerant, or no liquid is left, or the temperatures had not evened out.
    #[cfg_attr(feature = "serde", serde(rename = "too-low"))]
    TooLow = 3,
}

impl Holding {
    /// Every member, in the order of the table.
    pub const ALL: [Holding; 3] = [Holding::Agrees, Holding::TooHigh, Holding::TooLow];

    const SPELLINGS: [(Holding, &'static [&'static str]); 3] = [
        (Holding::Agrees, &["agrees"]),
        (Holding::TooHigh, &["too-high"]),
        (Holding::TooLow, &["too-low"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Holding::Agrees => "The charge can be this refrigerant, and nothing else.",
            Holding::TooHigh => {
                "The pressure is higher: with this refrigerant there is gas that does not condense, or another refrigerant."
            }
            Holding::TooLow => {
                "The pressure is lower: it is another refrigerant, or no liquid is left, or the temperatures had not evened out."
            }
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Holding::Agrees),
            2 => Some(Holding::TooHigh),
            3 => Some(Holding::TooLow),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Holding {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// Where a circuit at rest leaks.
///
/// ```
/// use coldloop::Hole;
/// assert_eq!(Hole::Vapour.id(), "vapour");
/// assert_eq!(Hole::from_id("vapour"), Some(Hole::Vapour));
/// assert_eq!(Hole::from_code(1), Some(Hole::Vapour));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Hole {
    /// Above the liquid: vapour escapes.
    #[cfg_attr(feature = "serde", serde(rename = "vapour"))]
    Vapour = 1,
    /// Below its surface: liquid escapes, and vapour when it is gone.
    #[cfg_attr(feature = "serde", serde(rename = "liquid"))]
    Liquid = 2,
}

impl Hole {
    /// Every member, in the order of the table.
    pub const ALL: [Hole; 2] = [Hole::Vapour, Hole::Liquid];

    const SPELLINGS: [(Hole, &'static [&'static str]); 2] = [(Hole::Vapour, &["vapour"]), (Hole::Liquid, &["liquid"])];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Hole::Vapour => "Above the liquid: vapour escapes.",
            Hole::Liquid => "Below its surface: liquid escapes, and vapour when it is gone.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Hole::Vapour),
            2 => Some(Hole::Liquid),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Hole {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// How a reading lies to what is normal here today, by standard deviations from the median.
///
/// ```
/// use coldloop::Standing;
/// assert_eq!(Standing::FarTooLow.id(), "far-too-low");
/// assert_eq!(Standing::from_id("far-too-low"), Some(Standing::FarTooLow));
/// assert_eq!(Standing::from_code(1), Some(Standing::FarTooLow));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Standing {
    /// More than 3 standard deviations below the median.
    #[cfg_attr(feature = "serde", serde(rename = "far-too-low"))]
    FarTooLow = 1,
    /// Below the 95 % band.
    #[cfg_attr(feature = "serde", serde(rename = "too-low"))]
    TooLow = 2,
    /// Below the 80 % band.
    #[cfg_attr(feature = "serde", serde(rename = "rather-low"))]
    RatherLow = 3,
    /// Within the 80 % band.
    #[cfg_attr(feature = "serde", serde(rename = "normal"))]
    Normal = 4,
    /// Above the 80 % band.
    #[cfg_attr(feature = "serde", serde(rename = "rather-high"))]
    RatherHigh = 5,
    /// Above the 95 % band.
    #[cfg_attr(feature = "serde", serde(rename = "too-high"))]
    TooHigh = 6,
    /// More than 3 standard deviations above the median.
    #[cfg_attr(feature = "serde", serde(rename = "far-too-high"))]
    FarTooHigh = 7,
}

impl Standing {
    /// Every member, in the order of the table.
    pub const ALL: [Standing; 7] = [
        Standing::FarTooLow,
        Standing::TooLow,
        Standing::RatherLow,
        Standing::Normal,
        Standing::RatherHigh,
        Standing::TooHigh,
        Standing::FarTooHigh,
    ];

    const SPELLINGS: [(Standing, &'static [&'static str]); 7] = [
        (Standing::FarTooLow, &["far-too-low"]),
        (Standing::TooLow, &["too-low"]),
        (Standing::RatherLow, &["rather-low"]),
        (Standing::Normal, &["normal"]),
        (Standing::RatherHigh, &["rather-high"]),
        (Standing::TooHigh, &["too-high"]),
        (Standing::FarTooHigh, &["far-too-high"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Standing::FarTooLow => "More than 3 standard deviations below the median.",
            Standing::TooLow => "Below the 95 % band.",
            Standing::RatherLow => "Below the 80 % band.",
            Standing::Normal => "Within the 80 % band.",
            Standing::RatherHigh => "Above the 80 % band.",
            Standing::TooHigh => "Above the 95 % band.",
            Standing::FarTooHigh => "More than 3 standard deviations above the median.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Standing::FarTooLow),
            2 => Some(Standing::TooLow),
            3 => Some(Standing::RatherLow),
            4 => Some(Standing::Normal),
            5 => Some(Standing::RatherHigh),
            6 => Some(Standing::TooHigh),
            7 => Some(Standing::FarTooHigh),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Standing {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// How strongly a piece of evidence speaks, by the factor that it changes the odds by.
///
/// ```
/// use coldloop::Strength;
/// assert_eq!(Strength::Hardly.id(), "hardly");
/// assert_eq!(Strength::from_id("hardly"), Some(Strength::Hardly));
/// assert_eq!(Strength::from_code(1), Some(Strength::Hardly));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Strength {
    /// A factor below 1.2.
    #[cfg_attr(feature = "serde", serde(rename = "hardly"))]
    Hardly = 1,
    /// A factor of 1.2 to 3.
    #[cfg_attr(feature = "serde", serde(rename = "slightly"))]
    Slightly = 2,
    /// A factor of 3 to 10.
    #[cfg_attr(feature = "serde", serde(rename = "clearly"))]
    Clearly = 3,
    /// A factor above 10.
    #[cfg_attr(feature = "serde", serde(rename = "strongly"))]
    Strongly = 4,
}

impl Strength {
    /// Every member, in the order of the table.
    pub const ALL: [Strength; 4] = [
        Strength::Hardly,
        Strength::Slightly,
        Strength::Clearly,
        Strength::Strongly,
    ];

    const SPELLINGS: [(Strength, &'static [&'static str]); 4] = [
        (Strength::Hardly, &["hardly"]),
        (Strength::Slightly, &["slightly"]),
        (Strength::Clearly, &["clearly"]),
        (Strength::Strongly, &["strongly"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Strength::Hardly => "A factor below 1.2.",
            Strength::Slightly => "A factor of 1.2 to 3.",
            Strength::Clearly => "A factor of 3 to 10.",
            Strength::Strongly => "A factor above 10.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Strength::Hardly),
            2 => Some(Strength::Slightly),
            3 => Some(Strength::Clearly),
            4 => Some(Strength::Strongly),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Strength {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// The language of a page.
///
/// ```
/// use coldloop::Language;
/// assert_eq!(Language::English.id(), "en");
/// assert_eq!(Language::from_id("en"), Some(Language::English));
/// assert_eq!(Language::from_code(1), Some(Language::English));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Language {
    /// English.
    #[cfg_attr(feature = "serde", serde(rename = "en"))]
    English = 1,
    /// Spanish.
    #[cfg_attr(feature = "serde", serde(rename = "es"))]
    Spanish = 2,
}

impl Language {
    /// Every member, in the order of the table.
    pub const ALL: [Language; 2] = [Language::English, Language::Spanish];

    const SPELLINGS: [(Language, &'static [&'static str]); 2] =
        [(Language::English, &["en"]), (Language::Spanish, &["es"])];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Language::English => "English.",
            Language::Spanish => "Spanish.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Language::English),
            2 => Some(Language::Spanish),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Language {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}

/// A drawing of what a visit tells.
///
/// ```
/// use coldloop::Picture;
/// assert_eq!(Picture::Readings.id(), "readings");
/// assert_eq!(Picture::from_id("readings"), Some(Picture::Readings));
/// assert_eq!(Picture::from_code(1), Some(Picture::Readings));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[repr(u32)]
pub enum Picture {
    /// The readings in the ranges that are normal.
    #[cfg_attr(feature = "serde", serde(rename = "readings"))]
    Readings = 1,
    /// The likeliest explanations as bars.
    #[cfg_attr(feature = "serde", serde(rename = "odds"))]
    Odds = 2,
    /// The first steps of the plan as a tree.
    #[cfg_attr(feature = "serde", serde(rename = "plan"))]
    Plan = 3,
    /// The cycle on axes of pressure and enthalpy.
    #[cfg_attr(feature = "serde", serde(rename = "cycle"))]
    Cycle = 4,
    /// The vent after the start.
    #[cfg_attr(feature = "serde", serde(rename = "pull-down"))]
    PullDown = 5,
    /// The vacuum that was held.
    #[cfg_attr(feature = "serde", serde(rename = "hold"))]
    Hold = 6,
    /// The test pressure that was watched.
    #[cfg_attr(feature = "serde", serde(rename = "pressure-test"))]
    PressureTest = 7,
}

impl Picture {
    /// Every member, in the order of the table.
    pub const ALL: [Picture; 7] = [
        Picture::Readings,
        Picture::Odds,
        Picture::Plan,
        Picture::Cycle,
        Picture::PullDown,
        Picture::Hold,
        Picture::PressureTest,
    ];

    const SPELLINGS: [(Picture, &'static [&'static str]); 7] = [
        (Picture::Readings, &["readings"]),
        (Picture::Odds, &["odds"]),
        (Picture::Plan, &["plan"]),
        (Picture::Cycle, &["cycle"]),
        (Picture::PullDown, &["pull-down"]),
        (Picture::Hold, &["hold"]),
        (Picture::PressureTest, &["pressure-test"]),
    ];

    /// The id used in text.
    pub const fn id(self) -> &'static str {
        Self::SPELLINGS[(self.code() - 1) as usize].1[0]
    }

    /// One sentence that says what it is.
    pub const fn description(self) -> &'static str {
        match self {
            Picture::Readings => "The readings in the ranges that are normal.",
            Picture::Odds => "The likeliest explanations as bars.",
            Picture::Plan => "The first steps of the plan as a tree.",
            Picture::Cycle => "The cycle on axes of pressure and enthalpy.",
            Picture::PullDown => "The vent after the start.",
            Picture::Hold => "The vacuum that was held.",
            Picture::PressureTest => "The test pressure that was watched.",
        }
    }

    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The member with this code, or `None`.
    pub const fn from_code(code: u32) -> Option<Self> {
        match code {
            1 => Some(Picture::Readings),
            2 => Some(Picture::Odds),
            3 => Some(Picture::Plan),
            4 => Some(Picture::Cycle),
            5 => Some(Picture::PullDown),
            6 => Some(Picture::Hold),
            7 => Some(Picture::PressureTest),
            _ => None,
        }
    }

    /// The member with this id or accepted spelling, whatever its case, or `None`.
    pub fn from_id(id: &str) -> Option<Self> {
        spelled(&Self::SPELLINGS, id)
    }
}

impl core::fmt::Display for Picture {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(self.id())
    }
}
