//! The vocabulary.
//!
//! Generated from tables/names.toml by tables/compile; edit the table, not this file.

use core::ffi::CStr;

/// The major version of this header.
pub const COLDLOOP_VERSION_MAJOR: u32 = 0;
/// The minor version of this header.
pub const COLDLOOP_VERSION_MINOR: u32 = 1;
/// The patch version of this header.
pub const COLDLOOP_VERSION_PATCH: u32 = 0;

/// All three with dots between them.
pub const VERSION: &CStr = c"0.1.0";

/// The quantity that an error speaks of.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopQuantity {
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
    /// Blower setting, 0 (off) to 1 (highest).
    BlowerSetting = 22,
    /// Rows of a table.
    Rows = 23,
    /// Severity of a fault, 0 (sound) to 1.
    Severity = 24,
    /// Volume, m3.
    Volume = 25,
    /// Size of a text, bytes.
    Size = 26,
    /// Displacement that the control commands, 0 to 1 of the full one.
    Displacement = 27,
    /// Command of the condenser's fan, 0 (off) to 1 (full speed).
    FanCommand = 28,
    /// Evaporators of a system.
    Evaporators = 29,
    /// Dynamic viscosity, Pa s.
    Viscosity = 30,
    /// Thermal conductivity, W/(m K).
    Conductivity = 31,
    /// Surface tension, N/m.
    SurfaceTension = 32,
}

impl ColdloopQuantity {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"temperature"),
            2 => Some(c"temperature difference"),
            3 => Some(c"absolute pressure"),
            4 => Some(c"gauge pressure"),
            5 => Some(c"altitude"),
            6 => Some(c"relative humidity"),
            7 => Some(c"humidity ratio"),
            8 => Some(c"density"),
            9 => Some(c"enthalpy"),
            10 => Some(c"entropy"),
            11 => Some(c"quality"),
            12 => Some(c"speed"),
            13 => Some(c"rotational speed"),
            14 => Some(c"mass"),
            15 => Some(c"duration"),
            16 => Some(c"frequency"),
            17 => Some(c"probability"),
            18 => Some(c"cost"),
            19 => Some(c"name"),
            20 => Some(c"residual"),
            21 => Some(c"voltage"),
            22 => Some(c"blower setting"),
            23 => Some(c"number of rows"),
            24 => Some(c"severity"),
            25 => Some(c"volume"),
            26 => Some(c"size"),
            27 => Some(c"commanded displacement"),
            28 => Some(c"fan command"),
            29 => Some(c"number of evaporators"),
            30 => Some(c"viscosity"),
            31 => Some(c"thermal conductivity"),
            32 => Some(c"surface tension"),
            _ => None,
        }
    }
}

/// A refrigerant by its ANSI/ASHRAE Standard 34 designation.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopRefrigerant {
    /// 1,1,1,2-Tetrafluoroethane.
    R134a = 1,
    /// 2,3,3,3-Tetrafluoroprop-1-ene.
    R1234yf = 2,
    /// Carbon dioxide.
    R744 = 3,
    /// 1,1-Difluoroethane.
    R152a = 4,
    /// Dichlorodifluoromethane.
    R12 = 5,
    /// Chlorodifluoromethane.
    R22 = 6,
    /// trans-1,3,3,3-Tetrafluoroprop-1-ene.
    R1234zeE = 7,
    /// Difluoromethane.
    R32 = 8,
    /// Pentafluoroethane.
    R125 = 9,
    /// 1,1,1-Trifluoroethane.
    R143a = 10,
    /// Propane.
    R290 = 11,
    /// Isobutane.
    R600a = 12,
    /// Butane.
    R600 = 13,
    /// 1-Chloro-1,2,2,2-tetrafluoroethane.
    R124 = 14,
    /// 1-Chloro-1,1-difluoroethane.
    R142b = 15,
    /// Chloropentafluoroethane.
    R115 = 16,
    /// Octafluoropropane.
    R218 = 17,
    /// 1,1,1,2,3,3,3-Heptafluoropropane.
    R227ea = 18,
    /// Trifluoroiodomethane.
    R13I1 = 19,
    /// Isopentane.
    R601a = 20,
    /// trans-1,1,1,4,4,4-Hexafluorobut-2-ene.
    R1336mzzE = 21,
    /// trans-1,2-Difluoroethene.
    R1132E = 22,
    /// Blend of R-125, R-143a and R-134a, 44/52/4 % by mass.
    R404A = 23,
    /// Blend of and R-134a, 20/40/40 % by mass.
    R407A = 24,
    /// Blend of and R-134a, 23/25/52 % by mass.
    R407C = 25,
    /// Blend of and R-134a, 30/30/40 % by mass.
    R407F = 26,
    /// Blend of, 50/50 % by mass.
    R410A = 27,
    /// Blend of and R-1234yf, 11/59/30 % by mass.
    R452A = 28,
    /// Blend of, R-1234yf, R-134a and R-1234ze(E), 26/26/20/21/7 % by mass.
    R448A = 29,
    /// Blend of, R-1234yf and R-134a, 24.3/24.7/25.3/25.7 % by mass.
    R449A = 30,
    /// Blend of R-32 and R-1234yf, 68.9/31.1 % by mass.
    R454B = 31,
    /// Blend of R-32 and R-1234yf, 21.5/78.5 % by mass.
    R454C = 32,
    /// Blend of and R-1234yf, 3/21.5/75.5 % by mass.
    R455A = 33,
    /// Blend of R-1234yf and R-134a, 56/44 % by mass.
    R513A = 34,
    /// Blend of R-134a and R-1234ze(E), 42/58 % by mass.
    R450A = 35,
    /// Blend of R-125 and R-143a, 50/50 % by mass.
    R507A = 36,
    /// Blend of R-125, R-134a and R-600a, 65.1/31.5/3.4 % by mass.
    R422D = 37,
    /// Blend of, R-134a, R-600 and R-601a, 8.5/45/44.2/1.7/0.6 % by mass.
    R438A = 38,
    /// Blend of R-22, R-152a and R-124, 33/15/52 % by mass.
    R401C = 39,
    /// Blend of R-22, R-600a and R-142b, 55/4/41 % by mass.
    R406A = 40,
    /// Blend of and R-142b, 60/25/15 % by mass.
    R409A = 41,
    /// Blend of R-218, R-134a and R-600a, 9/88/3 % by mass.
    R413A = 42,
    /// Blend of, R-600a and R-142b, 51/28.5/4/16.5 % by mass.
    R414A = 43,
    /// Blend of, R-600a and R-142b, 50/39/1.5/9.5 % by mass.
    R414B = 44,
    /// Blend of R-134a, R-124 and R-600, 59/39.5/1.5 % by mass.
    R416A = 45,
    /// Blend of R-134a and R-142b, 88/12 % by mass.
    R420A = 46,
    /// Blend of R-125, R-134a, R-600 and R-601a, 5.1/93/1.3/0.6 % by mass.
    R426A = 47,
    /// Blend of R-12 and R-152a, 73.8/26.2 % by mass.
    R500 = 48,
    /// Blend of, 48.8/51.2 % by mass.
    R502 = 49,
    /// Blend of R-32, R-152a and R-1234ze(E), 12/5/83 % by mass.
    R444A = 50,
    /// Blend of R-744, R-134a and R-1234ze(E), 6/9/85 % by mass.
    R445A = 51,
    /// Blend of R-32, R-134a and R-1234ze(E), 6/45/49 % by mass.
    R456A = 52,
    /// Blend of R-32, R-1234yf and R-152a, 18/70/12 % by mass.
    R457A = 53,
    /// Blend of R-1132(E) and R-1234yf, 23/77 % by mass.
    R474A = 54,
    /// Blend of R-1234yf, R-134a and R-152a, 77.5/8.5/14 % by mass.
    R516A = 55,
    /// Pentane.
    R601 = 56,
    /// Blend of R-125, R-134a, R-600 and R-601, 19.5/78.5/1.4/0.6 % by mass.
    R437A = 57,
}

impl ColdloopRefrigerant {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"R-134a"),
            2 => Some(c"R-1234yf"),
            3 => Some(c"R-744"),
            4 => Some(c"R-152a"),
            5 => Some(c"R-12"),
            6 => Some(c"R-22"),
            7 => Some(c"R-1234ze(E)"),
            8 => Some(c"R-32"),
            9 => Some(c"R-125"),
            10 => Some(c"R-143a"),
            11 => Some(c"R-290"),
            12 => Some(c"R-600a"),
            13 => Some(c"R-600"),
            14 => Some(c"R-124"),
            15 => Some(c"R-142b"),
            16 => Some(c"R-115"),
            17 => Some(c"R-218"),
            18 => Some(c"R-227ea"),
            19 => Some(c"R-13I1"),
            20 => Some(c"R-601a"),
            21 => Some(c"R-1336mzz(E)"),
            22 => Some(c"R-1132(E)"),
            23 => Some(c"R-404A"),
            24 => Some(c"R-407A"),
            25 => Some(c"R-407C"),
            26 => Some(c"R-407F"),
            27 => Some(c"R-410A"),
            28 => Some(c"R-452A"),
            29 => Some(c"R-448A"),
            30 => Some(c"R-449A"),
            31 => Some(c"R-454B"),
            32 => Some(c"R-454C"),
            33 => Some(c"R-455A"),
            34 => Some(c"R-513A"),
            35 => Some(c"R-450A"),
            36 => Some(c"R-507A"),
            37 => Some(c"R-422D"),
            38 => Some(c"R-438A"),
            39 => Some(c"R-401C"),
            40 => Some(c"R-406A"),
            41 => Some(c"R-409A"),
            42 => Some(c"R-413A"),
            43 => Some(c"R-414A"),
            44 => Some(c"R-414B"),
            45 => Some(c"R-416A"),
            46 => Some(c"R-420A"),
            47 => Some(c"R-426A"),
            48 => Some(c"R-500"),
            49 => Some(c"R-502"),
            50 => Some(c"R-444A"),
            51 => Some(c"R-445A"),
            52 => Some(c"R-456A"),
            53 => Some(c"R-457A"),
            54 => Some(c"R-474A"),
            55 => Some(c"R-516A"),
            56 => Some(c"R-601"),
            57 => Some(c"R-437A"),
            _ => None,
        }
    }
}

/// Safety group of ANSI/ASHRAE Standard 34: toxicity A or B, flammability 1, 2L, 2 or 3.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopSafetyGroup {
    /// Lower toxicity, no flame propagation.
    A1 = 1,
    /// Lower toxicity, lower flammability.
    A2L = 2,
    /// Lower toxicity, flammable.
    A2 = 3,
    /// Lower toxicity, higher flammability.
    A3 = 4,
}

impl ColdloopSafetyGroup {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"A1"),
            2 => Some(c"A2L"),
            3 => Some(c"A2"),
            4 => Some(c"A3"),
            _ => None,
        }
    }
}

/// The phase of a state.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopPhase {
    /// Liquid below the critical temperature.
    Liquid = 1,
    /// Vapour below the critical temperature.
    Vapour = 2,
    /// Liquid and vapour in equilibrium.
    TwoPhase = 3,
    /// Above the critical temperature.
    Supercritical = 4,
}

impl ColdloopPhase {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"liquid"),
            2 => Some(c"vapour"),
            3 => Some(c"two-phase"),
            4 => Some(c"supercritical"),
            _ => None,
        }
    }
}

/// The state at which enthalpy and entropy are counted from; differences do not depend on it.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopReference {
    /// Saturated liquid at 0 °C has 200 kJ/kg and 1 kJ/(kg K).
    Iir = 1,
    /// Saturated liquid at -40 °C has zero of both.
    Ashrae = 2,
    /// Saturated liquid at 101.325 kPa has zero of both.
    NormalBoilingPoint = 3,
}

impl ColdloopReference {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"liquid-at-0-celsius"),
            2 => Some(c"liquid-at-minus-40-celsius"),
            3 => Some(c"liquid-at-boiling-point"),
            _ => None,
        }
    }
}

/// The expansion device.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopExpansion {
    /// Thermostatic expansion valve, with a receiver-drier.
    Txv = 1,
    /// Fixed orifice tube, with a suction accumulator.
    OrificeTube = 2,
}

impl ColdloopExpansion {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"txv"),
            2 => Some(c"orifice-tube"),
            _ => None,
        }
    }
}

/// The kind of compressor and of its control.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopCompressor {
    /// Fixed displacement, cycled by a clutch.
    FixedClutch = 1,
    /// Variable displacement, controlled by its own valve.
    VariableInternal = 2,
    /// Variable displacement, controlled by an electric valve.
    VariableExternal = 3,
    /// Motor-driven, controlled by speed; high voltage.
    Electric = 4,
}

impl ColdloopCompressor {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"fixed-clutch"),
            2 => Some(c"variable-internal"),
            3 => Some(c"variable-external"),
            4 => Some(c"electric"),
            _ => None,
        }
    }
}

/// Where the cabin blower draws its air from.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopAirSource {
    /// Outside air.
    Fresh = 1,
    /// Cabin air.
    Recirculated = 2,
}

impl ColdloopAirSource {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"fresh"),
            2 => Some(c"recirculated"),
            _ => None,
        }
    }
}

/// How true a pressure gauge is, as its maker states it.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopGaugeClass {
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

impl ColdloopGaugeClass {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"class-1.0"),
            2 => Some(c"class-1.6"),
            3 => Some(c"class-2.5"),
            4 => Some(c"grade-A"),
            5 => Some(c"grade-B"),
            6 => Some(c"digital"),
            _ => None,
        }
    }
}

/// What measured a temperature.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopThermometer {
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

impl ColdloopThermometer {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"clamp-thermocouple"),
            2 => Some(c"clamp-thermistor"),
            3 => Some(c"pocket-dial"),
            4 => Some(c"pocket-digital"),
            5 => Some(c"infrared"),
            _ => None,
        }
    }
}

/// A state of the system that explains its readings; `no-fault` is one of them.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopFault {
    /// No fault: the system is normal.
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
    /// A gauge, its zero, its unit, its hose or a thermometer misleads.
    GaugeError = 20,
}

impl ColdloopFault {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            0 => Some(c"no-fault"),
            1 => Some(c"worn-compressor"),
            2 => Some(c"undercharge"),
            3 => Some(c"overcharge"),
            4 => Some(c"condenser-airflow-loss"),
            5 => Some(c"non-condensables"),
            6 => Some(c"liquid-line-restriction"),
            7 => Some(c"expansion-valve-stuck-open"),
            8 => Some(c"expansion-valve-stuck-closed"),
            9 => Some(c"orifice-restricted"),
            10 => Some(c"evaporator-airflow-loss"),
            11 => Some(c"evaporator-icing"),
            12 => Some(c"moisture-icing"),
            13 => Some(c"compressor-control-fault"),
            14 => Some(c"clutch-not-engaged"),
            15 => Some(c"clutch-slipping"),
            16 => Some(c"heater-air-mixing"),
            17 => Some(c"high-side-restriction"),
            18 => Some(c"suction-line-restriction"),
            19 => Some(c"wrong-refrigerant"),
            20 => Some(c"gauge-error"),
            _ => None,
        }
    }
}

/// What the readings allow one to say.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopVerdict {
    /// No fault stands out: the readings are normal here today.
    Healthy = 1,
    /// One fault explains the readings.
    NamedFault = 2,
    /// Not settled: more than one fault explains the readings.
    CannotTell = 3,
    /// No single explanation fits: measure again.
    NothingFits = 4,
    /// Too little was measured to judge.
    NotEnoughEvidence = 5,
}

impl ColdloopVerdict {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"healthy"),
            2 => Some(c"named-fault"),
            3 => Some(c"cannot-tell"),
            4 => Some(c"nothing-fits"),
            5 => Some(c"not-enough-evidence"),
            _ => None,
        }
    }
}

/// What a pressure at rest says of one refrigerant.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopPressureMatch {
    /// The charge can be this refrigerant, and nothing else.
    Agrees = 1,
    /// The pressure is higher: with this refrigerant there is gas that does not condense, or another refrigerant.
    TooHigh = 2,
    /// The pressure is lower: it is another refrigerant, or no liquid is left, or the temperatures had not evened out.
    TooLow = 3,
}

impl ColdloopPressureMatch {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"agrees"),
            2 => Some(c"too-high"),
            3 => Some(c"too-low"),
            _ => None,
        }
    }
}

/// Where a circuit at rest leaks.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopLeakPhase {
    /// Above the liquid: vapour escapes.
    Vapour = 1,
    /// Below its surface: liquid escapes, and vapour when it is gone.
    Liquid = 2,
}

impl ColdloopLeakPhase {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"vapour"),
            2 => Some(c"liquid"),
            _ => None,
        }
    }
}

/// What a function returns: 0, or why it has no answer.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopStatus {
    /// The answer stands in the out-pointers.
    Ok = 0,
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
    /// The text is not a readings file.
    Syntax = 14,
    /// A pointer that must not be null was null.
    NullPointer = 1001,
    /// The size field of a struct is not one that this library knows.
    StructSize = 1002,
    /// A text is not UTF-8.
    NotUtf8 = 1003,
    /// A defect of the library was caught at its boundary; please report it.
    Internal = 1004,
}

impl ColdloopStatus {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The sentence of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            0 => Some(c"The answer stands in the out-pointers."),
            1 => Some(c"The value lies outside the range in which an answer would be physical."),
            2 => Some(c"The value is NaN or infinite."),
            3 => Some(c"A quantity was written without its unit."),
            4 => Some(c"A pressure was written without saying gauge, absolute or vacuum."),
            5 => Some(c"The unit is not one that this quantity can have."),
            6 => Some(c"A comma was used as the decimal mark."),
            7 => Some(c"The text does not start with a number."),
            8 => Some(c"The name is not in the vocabulary."),
            9 => Some(c"A solver stopped before it reached its tolerance."),
            10 => Some(c"Pressure and temperature lie on the saturation line and do not fix the state."),
            11 => Some(c"A value that the answer needs was not given."),
            12 => Some(c"Two given values contradict each other."),
            13 => Some(c"No published data support an answer here."),
            14 => Some(c"The text is not a readings file."),
            1001 => Some(c"A pointer that must not be null was null."),
            1002 => Some(c"The size field of a struct is not one that this library knows."),
            1003 => Some(c"A text is not UTF-8."),
            1004 => Some(c"A defect of the library was caught at its boundary; please report it."),
            _ => None,
        }
    }
}
