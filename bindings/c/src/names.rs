//! The vocabulary.
//!
//! Generated from tables/names.toml by tables/names; edit the table, not this file.

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

/// Where the low-side port stands.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopLowPort {
    /// At the evaporator or accumulator, before the suction line.
    Evaporator = 1,
    /// At the compressor, behind the suction line.
    Compressor = 2,
}

impl ColdloopLowPort {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"evaporator"),
            2 => Some(c"compressor"),
            _ => None,
        }
    }
}

/// Where the high-side port stands.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopHighPort {
    /// On the discharge line, before the condenser.
    Discharge = 1,
    /// On the liquid line, behind the condenser.
    Liquid = 2,
}

impl ColdloopHighPort {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"discharge-line"),
            2 => Some(c"liquid-line"),
            _ => None,
        }
    }
}

/// A reading that an instrument gives.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopReadingKind {
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
    /// High-side pressure that the vehicle's own transducer tells a scan tool.
    HighSideTransducer = 10,
    /// Temperature of the fins, or of the air behind the evaporator, that the vehicle's own sensor tells a scan tool.
    EvaporatorSensor = 11,
}

impl ColdloopReadingKind {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"low_side"),
            2 => Some(c"high_side"),
            3 => Some(c"vent"),
            4 => Some(c"cabin"),
            5 => Some(c"suction_line"),
            6 => Some(c"discharge_line"),
            7 => Some(c"liquid_line"),
            8 => Some(c"condenser_outlet"),
            9 => Some(c"clutch_cycles"),
            10 => Some(c"high_side_transducer"),
            11 => Some(c"evaporator_sensor"),
            _ => None,
        }
    }
}

/// What eyes, ears and hands find, answered yes or no.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopObservation {
    /// The clutch is engaged: hub and pulley turn together.
    ClutchEngaged = 1,
    /// The clutch coil gets its voltage when cooling is asked for.
    ClutchHasVoltage = 2,
    /// With the belt on and the clutch off, the hub turns by hand without resistance.
    HubTurnsFreely = 3,
    /// With the clutch off, the hub cannot be turned by hand.
    HubLocked = 4,
    /// The belt or the clutch slips: squeal, smell, glaze, or a hub slower than its pulley.
    BeltSlips = 5,
    /// The compressor knocks or rattles while it is engaged.
    CompressorNoisy = 6,
    /// The condenser fan runs while cooling is asked for.
    CondenserFanRunning = 7,
    /// The face of the condenser is covered by dirt, leaves or bent fins.
    CondenserFaceBlocked = 8,
    /// Water sprayed on the condenser lowers the high side strongly within a minute.
    WaterLowersHighSide = 9,
    /// A step of temperature is felt along one condenser pass.
    CondenserHasTemperatureStep = 10,
    /// A tube in the middle of the condenser is clearly colder than the saturation temperature of the high side.
    CondenserTubeBelowSaturation = 11,
    /// Bubbles or foam stand in the sight glass after some minutes of steady running.
    SightGlassBubbles = 12,
    /// Fresh oil or dye shows at a joint, hose, seal or heat exchanger.
    OilTraces = 13,
    /// The expansion device hisses or gurgles while the system runs.
    HissingAtExpansion = 14,
    /// The liquid line is clearly colder after the drier, or after another point, than before it.
    DropAcrossDrier = 15,
    /// Frost or a sharp cold step stands at the inlet of the expansion device.
    FrostAtExpansion = 16,
    /// Frost or heavy sweat covers the suction line up to the compressor.
    FrostOnSuctionLine = 17,
    /// A step of temperature or frost begins at one point of the suction line.
    SuctionLineStep = 18,
    /// The low side follows when the bulb or head of the valve is warmed and cooled.
    LowSideFollowsBulb = 19,
    /// Frost covers the evaporator face.
    EvaporatorFrosted = 20,
    /// The air at the vents weakens after some minutes and returns after a pause.
    AirflowFades = 21,
    /// Cooling comes and goes in minutes while the low side falls towards vacuum and recovers.
    CoolingComesAndGoes = 22,
    /// Little air leaves the vents with the blower at its highest step.
    AirflowWeak = 23,
    /// Closing the heater valve, or clamping the heater hose, makes the vent clearly colder.
    ClosingHeaterCoolsVent = 24,
    /// Raising the engine to about 2,000 rpm lowers the low side and raises the high side.
    SpeedLowersLowSide = 25,
    /// Commanding the compressor up with a scan tool moves both pressures apart.
    ControlSignalMovesPressures = 26,
    /// After switching off, the two sides are equal in less than two minutes.
    SidesEqualiseQuickly = 27,
    /// At rest and at one temperature, the pressure is clearly above saturation at the ambient.
    RestPressureHigh = 28,
    /// At rest and at one temperature, the pressure is clearly below saturation at the ambient.
    RestPressureLow = 29,
    /// A refrigerant identifier shows air.
    IdentifierShowsAir = 30,
    /// A refrigerant identifier shows another refrigerant than the label.
    IdentifierShowsOther = 31,
    /// Clearly less refrigerant was recovered than the label names.
    RecoveredBelowLabel = 32,
    /// Clearly more refrigerant was recovered than the label names.
    RecoveredAboveLabel = 33,
    /// Refrigerant was added since the system last worked well.
    RecentlyFilled = 34,
    /// A second set of gauges shows the same pressures.
    SecondGaugesAgree = 35,
    /// After ten to fifteen minutes on the road the air at the vents is cold, and stays cold.
    CoolsOnTheRoad = 36,
    /// The vehicle's own transducer of the high side and the gauge show the same pressure.
    TransducerAgrees = 37,
    /// Dye of this refrigerant charge glows under UV light on the outside of the circuit.
    DyeGlows = 38,
    /// An electronic detector of refrigerant alarms at one place again and again.
    DetectorAlarms = 39,
    /// Trace gas or test gas under pressure escapes at a place that a detector or foam shows.
    TraceGasEscapes = 40,
    /// A test pressure holds: the loss is surely less than allowed.
    TestPressureHolds = 41,
    /// A deep vacuum holds: no air comes in and no moisture boils.
    VacuumHolds = 42,
    /// The circuit was evacuated deeply before it was filled.
    EvacuatedBeforeFilling = 43,
}

impl ColdloopObservation {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"clutch_engaged"),
            2 => Some(c"clutch_has_voltage"),
            3 => Some(c"hub_turns_freely"),
            4 => Some(c"hub_locked"),
            5 => Some(c"belt_slips"),
            6 => Some(c"compressor_noisy"),
            7 => Some(c"condenser_fan_running"),
            8 => Some(c"condenser_face_blocked"),
            9 => Some(c"water_lowers_high_side"),
            10 => Some(c"condenser_has_temperature_step"),
            11 => Some(c"condenser_tube_below_saturation"),
            12 => Some(c"sight_glass_bubbles"),
            13 => Some(c"oil_traces"),
            14 => Some(c"hissing_at_expansion"),
            15 => Some(c"drop_across_drier"),
            16 => Some(c"frost_at_expansion"),
            17 => Some(c"frost_on_suction_line"),
            18 => Some(c"suction_line_step"),
            19 => Some(c"low_side_follows_bulb"),
            20 => Some(c"evaporator_frosted"),
            21 => Some(c"airflow_fades"),
            22 => Some(c"cooling_comes_and_goes"),
            23 => Some(c"airflow_weak"),
            24 => Some(c"closing_heater_cools_vent"),
            25 => Some(c"speed_lowers_low_side"),
            26 => Some(c"control_signal_moves_pressures"),
            27 => Some(c"sides_equalise_quickly"),
            28 => Some(c"rest_pressure_high"),
            29 => Some(c"rest_pressure_low"),
            30 => Some(c"identifier_shows_air"),
            31 => Some(c"identifier_shows_other"),
            32 => Some(c"recovered_below_label"),
            33 => Some(c"recovered_above_label"),
            34 => Some(c"recently_filled"),
            35 => Some(c"second_gauges_agree"),
            36 => Some(c"cools_on_the_road"),
            37 => Some(c"transducer_agrees"),
            38 => Some(c"dye_glows"),
            39 => Some(c"detector_alarms"),
            40 => Some(c"trace_gas_escapes"),
            41 => Some(c"test_pressure_holds"),
            42 => Some(c"vacuum_holds"),
            43 => Some(c"evacuated_before_filling"),
            _ => None,
        }
    }
}

/// A further check: something to read, to look at, or to try.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopCheck {
    /// Read the low side with the system running.
    ReadLowSide = 1,
    /// Read the high side with the system running.
    ReadHighSide = 2,
    /// Read the air at the centre vent after ten minutes on the coldest setting.
    ReadVent = 3,
    /// Clamp a thermometer to the suction line at the compressor: it gives the superheat.
    ReadSuctionLine = 4,
    /// Clamp a thermometer to the liquid line: it gives the subcooling.
    ReadLiquidLine = 5,
    /// Clamp a thermometer to the discharge line.
    ReadDischargeLine = 6,
    /// Count how often the clutch engages in three minutes.
    CountClutchCycles = 7,
    /// Run the A/C on full cooling and read both sides after five minutes.
    RunAndRead = 8,
    /// Check whether hub and pulley turn together.
    WatchClutch = 9,
    /// Measure the voltage at the clutch connector with the A/C switched on.
    MeasureClutchVoltage = 10,
    /// Engine off, belt on, clutch off: turn the hub by hand. A good compressor turns with an even resistance.
    TurnHub = 11,
    /// Watch belt and hub under load, and listen for a squeal.
    LookForSlip = 12,
    /// Listen to the compressor while the clutch engages and while it runs.
    ListenToCompressor = 13,
    /// Check whether the condenser fan runs.
    WatchCondenserFan = 14,
    /// Inspect the face of the condenser with a lamp, also between it and the radiator.
    LookAtCondenserFace = 15,
    /// Spray water on the condenser and watch the high side.
    SprayCondenser = 16,
    /// Move a thermometer along the condenser from inlet to outlet and look for a sudden step.
    FeelCondenserPasses = 17,
    /// Clamp a thermometer to a tube in the middle of the condenser and compare it with the saturation temperature of the high side.
    ClampCondenserMiddle = 18,
    /// Look at the sight glass after five minutes of steady running.
    LookAtSightGlass = 19,
    /// Search for a leak: look for oil and dye, and check the joints with an electronic detector.
    LookForLeaks = 20,
    /// Listen at the expansion valve or orifice tube.
    ListenAtExpansion = 21,
    /// Measure the temperature of the liquid line before and after the drier.
    DropAcrossDrier = 22,
    /// Look for frost at the inlet of the expansion valve or orifice tube.
    LookAtExpansion = 23,
    /// Check how far frost or sweat reaches along the suction line.
    LookAtSuctionLine = 24,
    /// Move a thermometer along the suction line and look for a sudden step.
    FollowSuctionLine = 25,
    /// Warm the bulb or head of the valve with the hand, then cool it with ice, and watch the low side.
    WarmAndChillBulb = 26,
    /// Inspect the evaporator through the blower or a drain opening.
    LookAtEvaporator = 27,
    /// Watch the vent and the low side for twenty minutes of running.
    WatchTwentyMinutes = 28,
    /// Feel the air at the vents with the blower at its highest step, and inspect the cabin filter.
    FeelAirflow = 29,
    /// Close the heater valve or clamp the heater hose and watch the vent.
    CloseHeater = 30,
    /// Raise the engine speed to about 2,000 rpm and watch both sides.
    RaiseEngineSpeed = 31,
    /// Command the compressor up and down with a scan tool and watch both sides.
    DriveControl = 32,
    /// Switch the A/C off and time how long both sides take to become equal.
    TimeEqualisation = 33,
    /// Leave the system off until all parts have one temperature, then compare its pressure with the saturation pressure at ambient.
    ReadRestPressure = 34,
    /// Connect a refrigerant identifier to the low side.
    IdentifyRefrigerant = 35,
    /// Recover the charge and weigh it against the label.
    RecoverAndWeigh = 36,
    /// Ask who last serviced the system, and what was added.
    AskHistory = 37,
    /// Check hoses, units and zero of the gauges and the contact of every probe, then compare with a second set of gauges.
    CompareGauges = 38,
    /// Drive for ten to fifteen minutes on the coldest setting and check that it cools and keeps cooling.
    RoadTest = 39,
    /// Compare the high side of the gauge with the vehicle's own pressure transducer on a scan tool.
    CompareTransducer = 40,
    /// Search for the leak with dry nitrogen: empty the circuit, bring it to test pressure and check every joint with leak spray.
    SearchWithNitrogen = 41,
}

impl ColdloopCheck {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"read-low-side"),
            2 => Some(c"read-high-side"),
            3 => Some(c"read-vent"),
            4 => Some(c"read-suction-line"),
            5 => Some(c"read-liquid-line"),
            6 => Some(c"read-discharge-line"),
            7 => Some(c"count-clutch-cycles"),
            8 => Some(c"run-and-read"),
            9 => Some(c"watch-clutch"),
            10 => Some(c"measure-clutch-voltage"),
            11 => Some(c"turn-hub"),
            12 => Some(c"look-for-slip"),
            13 => Some(c"listen-to-compressor"),
            14 => Some(c"watch-condenser-fan"),
            15 => Some(c"look-at-condenser-face"),
            16 => Some(c"spray-condenser"),
            17 => Some(c"feel-condenser-passes"),
            18 => Some(c"clamp-condenser-middle"),
            19 => Some(c"look-at-sight-glass"),
            20 => Some(c"look-for-leaks"),
            21 => Some(c"listen-at-expansion"),
            22 => Some(c"drop-across-drier"),
            23 => Some(c"look-at-expansion"),
            24 => Some(c"look-at-suction-line"),
            25 => Some(c"follow-suction-line"),
            26 => Some(c"warm-and-chill-bulb"),
            27 => Some(c"look-at-evaporator"),
            28 => Some(c"watch-twenty-minutes"),
            29 => Some(c"feel-airflow"),
            30 => Some(c"close-heater"),
            31 => Some(c"raise-engine-speed"),
            32 => Some(c"drive-control"),
            33 => Some(c"time-equalisation"),
            34 => Some(c"read-rest-pressure"),
            35 => Some(c"identify-refrigerant"),
            36 => Some(c"recover-and-weigh"),
            37 => Some(c"ask-history"),
            38 => Some(c"compare-gauges"),
            39 => Some(c"road-test"),
            40 => Some(c"compare-transducer"),
            41 => Some(c"search-with-nitrogen"),
            _ => None,
        }
    }
}

/// How a check can come out.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopResultKind {
    /// The answer is yes.
    Yes = 1,
    /// The answer is no.
    No = 2,
    /// Below the normal range.
    Below = 3,
    /// Within the normal range.
    Within = 4,
    /// Above the normal range.
    Above = 5,
}

impl ColdloopResultKind {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"yes"),
            2 => Some(c"no"),
            3 => Some(c"below"),
            4 => Some(c"within"),
            5 => Some(c"above"),
            _ => None,
        }
    }
}

/// What can hurt, and what the law asks.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopCaution {
    /// The circuit is under pressure even at rest: wear eye protection, and open no joint before the charge is out.
    Pressure = 1,
    /// Escaping refrigerant freezes skin and eyes: wear gloves and goggles.
    Frostbite = 2,
    /// Belts and fans start without warning, and so does the engine of a hybrid: keep hands, hair and clothes away; turn the hub only with the engine off and the key out.
    MovingParts = 3,
    /// The refrigerant is flammable: keep ignition sources away, ventilate, and use only gauges, identifiers and machines made for flammable refrigerants.
    Flammable = 4,
    /// The compressor runs on high voltage: only qualified persons may work on it, after the vehicle's own disconnection procedure and a check that no voltage is left.
    HighVoltage = 5,
    /// Do not release refrigerant: it is unlawful in many places. Recover it with certified equipment.
    NoVenting = 6,
    /// The judgement of a certified technician, the data of the vehicle's maker and the local rules come first.
    LocalRules = 7,
    /// Refrigerant gathers in pits and closed rooms and displaces the air: ventilate at floor level. Keep flames and hot surfaces away: heat turns it into toxic gases.
    Ventilation = 8,
    /// Only certified persons may open a circuit, and in many places only they may buy refrigerant.
    Certification = 9,
    /// Pressure test: dry nitrogen only, through a regulator and a relief valve. Never oxygen, compressed air or a mix with refrigerant, and never above the pressure that the label and every part allow.
    TestPressure = 10,
    /// R-744 (carbon dioxide) stands at up to ten times the pressure of other refrigerants: use only gauges, hoses and parts made for it. It has no smell: above 3 to 4 per cent in the air it is dangerous, above 10 per cent a person soon loses consciousness. Ventilate, and leave the room if much escapes.
    CarbonDioxide = 11,
    /// What is in the circuit is not known, and it may be flammable: identify it before a machine draws it in, and recover it into a separate marked cylinder.
    ForeignRefrigerant = 12,
    /// The discharge line, the engine and the exhaust burn the skin.
    HotParts = 13,
    /// Do not run the compressor on an empty circuit or one with air in it: no refrigerant brings its oil back, and compressed air with oil or a flammable refrigerant can ignite.
    DoNotRun = 14,
    /// This test pressure is above what the label allows, or above 30 bar where no label was given: let it down before anyone comes near, for the weakest part bursts first.
    TestTooHigh = 15,
    /// High voltage: keep hands, clamps, probes and water away from orange cables, their connectors and the compressor's inverter; stop if one is damaged.
    HighVoltageCables = 16,
    /// Run an engine outdoors or with its exhaust led outside: carbon monoxide kills without warning.
    Exhaust = 17,
    /// Before the engine is raised: parking brake on, wheels chocked, gear in park or neutral, nobody in front of the vehicle.
    ParkAndChock = 18,
    /// Hot coolant is under pressure and scalds: do not open the cooling system, wear gloves, and clamp a hose only with a hose clamp tool.
    HotCoolant = 19,
    /// Connect and disconnect the hoses with the engine and the A/C off and both manifold valves closed; lay the hoses clear of belts, fans and hot parts.
    ConnectStopped = 20,
    /// Warm the valve with the hand or a warm cloth and cool it with ice. Never use a flame or a heat gun.
    HandAndIce = 21,
    /// Measure the oil that came out and put back the same amount, with what stays in a replaced part: only the type that the compressor's maker names.
    RightOil = 22,
    /// The oil of a high-voltage compressor must insulate: use only the type that its maker names, with hoses and injectors that no other oil has been in.
    InsulatingOil = 23,
    /// R-744 is released, not recovered, where the local rules allow it: outdoors or into an extraction, slowly through a fixed hose, with no person near its end. Wait until dry ice in the circuit is gone before a joint is opened.
    ReleaseSlowly = 24,
    /// The high side is close to its limit: watch it, and switch the A/C off if it rises further.
    HighSideNearLimit = 25,
}

impl ColdloopCaution {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"pressure"),
            2 => Some(c"frostbite"),
            3 => Some(c"moving-parts"),
            4 => Some(c"flammable"),
            5 => Some(c"high-voltage"),
            6 => Some(c"no-venting"),
            7 => Some(c"local-rules"),
            8 => Some(c"ventilation"),
            9 => Some(c"certification"),
            10 => Some(c"test-pressure"),
            11 => Some(c"carbon-dioxide"),
            12 => Some(c"foreign-refrigerant"),
            13 => Some(c"hot-parts"),
            14 => Some(c"do-not-run"),
            15 => Some(c"test-too-high"),
            16 => Some(c"high-voltage-cables"),
            17 => Some(c"exhaust"),
            18 => Some(c"park-and-chock"),
            19 => Some(c"hot-coolant"),
            20 => Some(c"connect-stopped"),
            21 => Some(c"hand-and-ice"),
            22 => Some(c"right-oil"),
            23 => Some(c"insulating-oil"),
            24 => Some(c"release-slowly"),
            25 => Some(c"high-side-near-limit"),
            _ => None,
        }
    }
}

/// What a log can hold; readings by the keys of a readings file.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopChannel {
    /// Low-side pressure, Pa.
    LowSide = 1,
    /// High-side pressure, Pa.
    HighSide = 2,
    /// Air at the centre vent, K.
    Vent = 3,
    /// Cabin air, K.
    Cabin = 4,
    /// Suction line at the compressor, K.
    SuctionLine = 5,
    /// Discharge line at the compressor, K.
    DischargeLine = 6,
    /// Liquid line before the expansion device, K.
    LiquidLine = 7,
    /// Line at the condenser outlet, K.
    CondenserOutlet = 8,
    /// The vehicle's own high-side transducer, Pa.
    HighSideTransducer = 9,
    /// The vehicle's own sensor at the evaporator, K.
    EvaporatorSensor = 10,
    /// Engine speed, revolutions per second.
    EngineSpeed = 11,
    /// Speed of the compressor itself, revolutions per second.
    CompressorSpeed = 12,
    /// Clutch: 1 engaged, 0 released.
    Clutch = 13,
}

impl ColdloopChannel {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"low_side"),
            2 => Some(c"high_side"),
            3 => Some(c"vent"),
            4 => Some(c"cabin"),
            5 => Some(c"suction_line"),
            6 => Some(c"discharge_line"),
            7 => Some(c"liquid_line"),
            8 => Some(c"condenser_outlet"),
            9 => Some(c"high_side_transducer"),
            10 => Some(c"evaporator_sensor"),
            11 => Some(c"engine_speed"),
            12 => Some(c"compressor_speed"),
            13 => Some(c"clutch"),
            _ => None,
        }
    }
}

/// In what state the last part of a log is.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopLogPhase {
    /// Too little was logged to tell.
    Empty = 1,
    /// Readings still move towards where they settle.
    Settling = 2,
    /// The readings stand still but for noise.
    Settled = 3,
    /// The clutch cycles, and its cycles repeat.
    Cycling = 4,
    /// The readings swing without a clutch that explains it, and do not repeat.
    Irregular = 5,
    /// The compressor stands still.
    AtRest = 6,
}

impl ColdloopLogPhase {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"empty"),
            2 => Some(c"settling"),
            3 => Some(c"settled"),
            4 => Some(c"cycling"),
            5 => Some(c"irregular"),
            6 => Some(c"at-rest"),
            _ => None,
        }
    }
}

/// What of a log was refused, ignored or doubted; each is counted.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopLogNote {
    /// A sample without a finite time, refused.
    TimeNotFinite = 1,
    /// A sample more than 30 s older than the newest, refused.
    TooLate = 2,
    /// The clock jumped: what follows counts as a new stretch of the log.
    ClockJumped = 3,
    /// An infinite value, refused.
    NotFinite = 4,
    /// A value that the quantity cannot have, refused.
    OutOfRange = 5,
    /// A sample with the time of the one before it, averaged with it.
    RepeatedTime = 6,
    /// A second without a value of a channel that had one before.
    Dropout = 7,
    /// A second without any sample.
    Gap = 8,
    /// A value far from both its neighbours, ignored.
    Spike = 9,
    /// A second in which a channel repeated the same value for more than a minute while others moved; ignored.
    Stuck = 10,
    /// A second in which a channel stood in another unit than before; ignored.
    UnitStep = 11,
    /// A pressure or the vent of a state that is judged, which still drifted at its end; its uncertainty covers that.
    Drift = 12,
}

impl ColdloopLogNote {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"time-not-finite"),
            2 => Some(c"too-late"),
            3 => Some(c"clock-jumped"),
            4 => Some(c"not-finite"),
            5 => Some(c"out-of-range"),
            6 => Some(c"repeated-time"),
            7 => Some(c"dropout"),
            8 => Some(c"gap"),
            9 => Some(c"spike"),
            10 => Some(c"stuck"),
            11 => Some(c"unit-step"),
            12 => Some(c"drift"),
            _ => None,
        }
    }
}

/// A drawing of what a visit tells.
#[repr(C)]
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ColdloopPicture {
    /// The readings in the ranges that are normal.
    Readings = 1,
    /// The likeliest explanations as bars.
    Odds = 2,
    /// The first steps of the plan as a tree.
    Plan = 3,
    /// The cycle on axes of pressure and enthalpy.
    Cycle = 4,
    /// The vent after the start.
    PullDown = 5,
    /// The vacuum that was held.
    Hold = 6,
    /// The test pressure that was watched.
    PressureTest = 7,
}

impl ColdloopPicture {
    /// The pinned code.
    pub const fn code(self) -> u32 {
        self as u32
    }

    /// The id of a code, or `None`.
    pub const fn text(code: u32) -> Option<&'static CStr> {
        match code {
            1 => Some(c"readings"),
            2 => Some(c"odds"),
            3 => Some(c"plan"),
            4 => Some(c"cycle"),
            5 => Some(c"pull-down"),
            6 => Some(c"hold"),
            7 => Some(c"pressure-test"),
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
    /// The memory holds no recorder or session of this library: initialise it first.
    NotInitialised = 1005,
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
            1005 => Some(c"The memory holds no recorder or session of this library: initialise it first."),
            _ => None,
        }
    }
}
