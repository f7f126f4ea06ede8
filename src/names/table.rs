//! The words of every vocabulary.
//!
//! Generated from tables/names.toml by tables/names; edit the table, not this file.

vocabulary! {
    /// What went wrong; the code is the same in Rust, C and Python.
    ///
    /// ```
    /// use coldloop::ErrorKind;
    /// assert_eq!(ErrorKind::OutOfRange.id(), "out-of-range");
    /// assert_eq!(ErrorKind::from_id("out-of-range"), Some(ErrorKind::OutOfRange));
    /// assert_eq!(ErrorKind::from_code(1), Some(ErrorKind::OutOfRange));
    /// ```
    ErrorKind[14] {
        OutOfRange = 1, ["out-of-range"], "The value lies outside the range in which an answer would be physical.";
        NotFinite = 2, ["not-finite"], "The value is NaN or infinite.";
        MissingUnit = 3, ["missing-unit"], "A quantity was written without its unit.";
        MissingDatum = 4, ["missing-datum"], "A pressure was written without saying gauge, absolute or vacuum.";
        UnknownUnit = 5, ["unknown-unit"], "The unit is not one that this quantity can have.";
        DecimalComma = 6, ["decimal-comma"], "A comma was used as the decimal mark.";
        NotANumber = 7, ["not-a-number"], "The text does not start with a number.";
        UnknownName = 8, ["unknown-name"], "The name is not in the vocabulary.";
        NoConvergence = 9, ["no-convergence"], "A solver stopped before it reached its tolerance.";
        TwoPhase = 10, ["two-phase"], "Pressure and temperature lie on the saturation line and do not fix the state.";
        Missing = 11, ["missing"], "A value that the answer needs was not given.";
        Inconsistent = 12, ["inconsistent"], "Two given values contradict each other.";
        NotAvailable = 13, ["not-available"], "No published data support an answer here.";
        Syntax = 14, ["syntax"], "The text is not a readings file.";
    }
}

vocabulary! {
    /// The quantity that an error speaks of.
    ///
    /// ```
    /// use coldloop::Quantity;
    /// assert_eq!(Quantity::Temperature.id(), "temperature");
    /// assert_eq!(Quantity::from_id("temperature"), Some(Quantity::Temperature));
    /// assert_eq!(Quantity::from_code(1), Some(Quantity::Temperature));
    /// ```
    Quantity[32] {
        Temperature = 1, ["temperature"], "Thermodynamic temperature, K.";
        TemperatureDifference = 2, ["temperature difference"], "Temperature difference, K.";
        AbsolutePressure = 3, ["absolute pressure"], "Absolute pressure, Pa.";
        GaugePressure = 4, ["gauge pressure"], "Gauge pressure, Pa above the surrounding air.";
        Altitude = 5, ["altitude"], "Geopotential altitude, m.";
        RelativeHumidity = 6, ["relative humidity"], "Relative humidity, 0 to 1.";
        HumidityRatio = 7, ["humidity ratio"], "Mass of water per mass of dry air.";
        Density = 8, ["density"], "Molar density, mol/m3.";
        Enthalpy = 9, ["enthalpy"], "Specific enthalpy, J/kg.";
        Entropy = 10, ["entropy"], "Specific entropy, J/(kg K).";
        Quality = 11, ["quality"], "Mass fraction of vapour, 0 to 1.";
        Speed = 12, ["speed"], "Vehicle speed, m/s.";
        RotationalSpeed = 13, ["rotational speed"], "Engine or compressor speed, revolutions per second.";
        Mass = 14, ["mass"], "Mass, kg.";
        Duration = 15, ["duration"], "Time, s.";
        Frequency = 16, ["frequency"], "Events per second, 1/s.";
        Probability = 17, ["probability"], "Probability, 0 to 1.";
        Cost = 18, ["cost"], "Cost in the user's own unit.";
        Name = 19, ["name"], "A name of the vocabulary.";
        Residual = 20, ["residual"], "Relative residual of a solver.";
        Voltage = 21, ["voltage"], "Voltage, V.";
        BlowerSetting = 22, ["blower setting"], "Blower setting, 0 (off) to 1 (highest).";
        Rows = 23, ["number of rows"], "Rows of a table.";
        Severity = 24, ["severity"], "Severity of a fault, 0 (sound) to 1.";
        Volume = 25, ["volume"], "Volume, m3.";
        Size = 26, ["size"], "Size of a text, bytes.";
        Displacement = 27, ["commanded displacement"], "Displacement that the control commands, 0 to 1 of the full one.";
        FanCommand = 28, ["fan command"], "Command of the condenser's fan, 0 (off) to 1 (full speed).";
        Evaporators = 29, ["number of evaporators"], "Evaporators of a system.";
        Viscosity = 30, ["viscosity"], "Dynamic viscosity, Pa s.";
        Conductivity = 31, ["thermal conductivity"], "Thermal conductivity, W/(m K).";
        SurfaceTension = 32, ["surface tension"], "Surface tension, N/m.";
    }
}

vocabulary! {
    /// A refrigerant by its ANSI/ASHRAE Standard 34 designation.
    ///
    /// ```
    /// use coldloop::Refrigerant;
    /// assert_eq!(Refrigerant::R134a.id(), "R-134a");
    /// assert_eq!(Refrigerant::from_id("R-134a"), Some(Refrigerant::R134a));
    /// assert_eq!(Refrigerant::from_code(1), Some(Refrigerant::R134a));
    /// ```
    Refrigerant[57] {
        R134a = 1, ["R-134a", "r134a", "134a"], "1,1,1,2-Tetrafluoroethane.";
        R1234yf = 2, ["R-1234yf", "r1234yf", "1234yf"], "2,3,3,3-Tetrafluoroprop-1-ene.";
        R744 = 3, ["R-744", "r744", "744"], "Carbon dioxide.";
        R152a = 4, ["R-152a", "r152a", "152a"], "1,1-Difluoroethane.";
        R12 = 5, ["R-12", "r12", "12"], "Dichlorodifluoromethane.";
        R22 = 6, ["R-22", "r22", "22"], "Chlorodifluoromethane.";
        R1234zeE = 7, ["R-1234ze(E)", "r1234ze(e)", "1234ze(e)", "r1234zee", "1234zee"], "trans-1,3,3,3-Tetrafluoroprop-1-ene.";
        R32 = 8, ["R-32", "r32", "32"], "Difluoromethane.";
        R125 = 9, ["R-125", "r125", "125"], "Pentafluoroethane.";
        R143a = 10, ["R-143a", "r143a", "143a"], "1,1,1-Trifluoroethane.";
        R290 = 11, ["R-290", "r290", "290"], "Propane.";
        R600a = 12, ["R-600a", "r600a", "600a"], "Isobutane.";
        R600 = 13, ["R-600", "r600", "600"], "Butane.";
        R124 = 14, ["R-124", "r124", "124"], "1-Chloro-1,2,2,2-tetrafluoroethane.";
        R142b = 15, ["R-142b", "r142b", "142b"], "1-Chloro-1,1-difluoroethane.";
        R115 = 16, ["R-115", "r115", "115"], "Chloropentafluoroethane.";
        R218 = 17, ["R-218", "r218", "218"], "Octafluoropropane.";
        R227ea = 18, ["R-227ea", "r227ea", "227ea"], "1,1,1,2,3,3,3-Heptafluoropropane.";
        R13I1 = 19, ["R-13I1", "r13i1", "13i1"], "Trifluoroiodomethane.";
        R601a = 20, ["R-601a", "r601a", "601a"], "Isopentane.";
        R1336mzzE = 21, ["R-1336mzz(E)", "r1336mzz(e)", "1336mzz(e)", "r1336mzze", "1336mzze"], "trans-1,1,1,4,4,4-Hexafluorobut-2-ene.";
        R1132E = 22, ["R-1132(E)", "r1132(e)", "1132(e)", "r1132e", "1132e"], "trans-1,2-Difluoroethene.";
        R404A = 23, ["R-404A", "r404a", "404a"], "Blend of R-125, R-143a and R-134a, 44/52/4 % by mass.";
        R407A = 24, ["R-407A", "r407a", "407a"], "Blend of R-32, R-125 and R-134a, 20/40/40 % by mass.";
        R407C = 25, ["R-407C", "r407c", "407c"], "Blend of R-32, R-125 and R-134a, 23/25/52 % by mass.";
        R407F = 26, ["R-407F", "r407f", "407f"], "Blend of R-32, R-125 and R-134a, 30/30/40 % by mass.";
        R410A = 27, ["R-410A", "r410a", "410a"], "Blend of R-32 and R-125, 50/50 % by mass.";
        R452A = 28, ["R-452A", "r452a", "452a"], "Blend of R-32, R-125 and R-1234yf, 11/59/30 % by mass.";
        R448A = 29, ["R-448A", "r448a", "448a"], "Blend of R-32, R-125, R-1234yf, R-134a and R-1234ze(E), 26/26/20/21/7 % by mass.";
        R449A = 30, ["R-449A", "r449a", "449a"], "Blend of R-32, R-125, R-1234yf and R-134a, 24.3/24.7/25.3/25.7 % by mass.";
        R454B = 31, ["R-454B", "r454b", "454b"], "Blend of R-32 and R-1234yf, 68.9/31.1 % by mass.";
        R454C = 32, ["R-454C", "r454c", "454c"], "Blend of R-32 and R-1234yf, 21.5/78.5 % by mass.";
        R455A = 33, ["R-455A", "r455a", "455a"], "Blend of R-744, R-32 and R-1234yf, 3/21.5/75.5 % by mass.";
        R513A = 34, ["R-513A", "r513a", "513a"], "Blend of R-1234yf and R-134a, 56/44 % by mass.";
        R450A = 35, ["R-450A", "r450a", "450a"], "Blend of R-134a and R-1234ze(E), 42/58 % by mass.";
        R507A = 36, ["R-507A", "r507a", "507a"], "Blend of R-125 and R-143a, 50/50 % by mass.";
        R422D = 37, ["R-422D", "r422d", "422d"], "Blend of R-125, R-134a and R-600a, 65.1/31.5/3.4 % by mass.";
        R438A = 38, ["R-438A", "r438a", "438a"], "Blend of R-32, R-125, R-134a, R-600 and R-601a, 8.5/45/44.2/1.7/0.6 % by mass.";
        R401C = 39, ["R-401C", "r401c", "401c"], "Blend of R-22, R-152a and R-124, 33/15/52 % by mass.";
        R406A = 40, ["R-406A", "r406a", "406a"], "Blend of R-22, R-600a and R-142b, 55/4/41 % by mass.";
        R409A = 41, ["R-409A", "r409a", "409a"], "Blend of R-22, R-124 and R-142b, 60/25/15 % by mass.";
        R413A = 42, ["R-413A", "r413a", "413a"], "Blend of R-218, R-134a and R-600a, 9/88/3 % by mass.";
        R414A = 43, ["R-414A", "r414a", "414a"], "Blend of R-22, R-124, R-600a and R-142b, 51/28.5/4/16.5 % by mass.";
        R414B = 44, ["R-414B", "r414b", "414b"], "Blend of R-22, R-124, R-600a and R-142b, 50/39/1.5/9.5 % by mass.";
        R416A = 45, ["R-416A", "r416a", "416a"], "Blend of R-134a, R-124 and R-600, 59/39.5/1.5 % by mass.";
        R420A = 46, ["R-420A", "r420a", "420a"], "Blend of R-134a and R-142b, 88/12 % by mass.";
        R426A = 47, ["R-426A", "r426a", "426a"], "Blend of R-125, R-134a, R-600 and R-601a, 5.1/93/1.3/0.6 % by mass.";
        R500 = 48, ["R-500", "r500", "500"], "Blend of R-12 and R-152a, 73.8/26.2 % by mass.";
        R502 = 49, ["R-502", "r502", "502"], "Blend of R-22 and R-115, 48.8/51.2 % by mass.";
        R444A = 50, ["R-444A", "r444a", "444a"], "Blend of R-32, R-152a and R-1234ze(E), 12/5/83 % by mass.";
        R445A = 51, ["R-445A", "r445a", "445a"], "Blend of R-744, R-134a and R-1234ze(E), 6/9/85 % by mass.";
        R456A = 52, ["R-456A", "r456a", "456a"], "Blend of R-32, R-134a and R-1234ze(E), 6/45/49 % by mass.";
        R457A = 53, ["R-457A", "r457a", "457a"], "Blend of R-32, R-1234yf and R-152a, 18/70/12 % by mass.";
        R474A = 54, ["R-474A", "r474a", "474a"], "Blend of R-1132(E) and R-1234yf, 23/77 % by mass.";
        R516A = 55, ["R-516A", "r516a", "516a"], "Blend of R-1234yf, R-134a and R-152a, 77.5/8.5/14 % by mass.";
        R601 = 56, ["R-601", "r601", "601"], "Pentane.";
        R437A = 57, ["R-437A", "r437a", "437a"], "Blend of R-125, R-134a, R-600 and R-601, 19.5/78.5/1.4/0.6 % by mass.";
    }
}

common_names! {
    /// The member that a text means, also by a common name or with capitals, spaces and strokes as they come:
    /// [`Refrigerant::from_id`] accepts none of these, and its refusal can say what to write. Source: common practice, no source.
    ///
    /// ```
    /// use coldloop::Refrigerant;
    /// assert_eq!(Refrigerant::from_id("1,1,1,2-tetrafluoroethane"), None);
    /// assert_eq!(Refrigerant::meant_by("1,1,1,2-tetrafluoroethane"), Some(Refrigerant::R134a));
    /// assert_eq!(Refrigerant::meant_by("colour"), None);
    /// ```
    Refrigerant[13], ["CFC-", "HCFC-", "HFC-", "HFO-", "HCFO-", "refrigerant ", "freon "] {
        R134a: ["1,1,1,2-tetrafluoroethane"];
        R1234yf: ["yf", "2,3,3,3-tetrafluoropropene", "2,3,3,3-tetrafluoroprop-1-ene"];
        R744: ["CO2", "CO₂", "carbon dioxide"];
        R152a: ["1,1-difluoroethane"];
        R12: ["dichlorodifluoromethane"];
        R22: ["chlorodifluoromethane"];
        R1234zeE: ["R-1234ze", "1234ze", "trans-1,3,3,3-tetrafluoropropene"];
        R32: ["difluoromethane"];
        R290: ["propane", "HC-290"];
        R600a: ["isobutane", "2-methylpropane", "HC-600a"];
        R600: ["butane", "n-butane", "HC-600"];
        R601a: ["isopentane", "2-methylbutane", "HC-601a"];
        R601: ["pentane", "n-pentane", "HC-601"];
    }
}

vocabulary! {
    /// The expansion device.
    ///
    /// ```
    /// use coldloop::Expansion;
    /// assert_eq!(Expansion::Txv.id(), "txv");
    /// assert_eq!(Expansion::from_id("txv"), Some(Expansion::Txv));
    /// assert_eq!(Expansion::from_code(1), Some(Expansion::Txv));
    /// ```
    Expansion[2] {
        Txv = 1, ["txv"], "Thermostatic expansion valve, with a receiver-drier.";
        OrificeTube = 2, ["orifice-tube"], "Fixed orifice tube, with a suction accumulator.";
    }
}

vocabulary! {
    /// The kind of compressor and of its control.
    ///
    /// ```
    /// use coldloop::Compressor;
    /// assert_eq!(Compressor::FixedClutch.id(), "fixed-clutch");
    /// assert_eq!(Compressor::from_id("fixed-clutch"), Some(Compressor::FixedClutch));
    /// assert_eq!(Compressor::from_code(1), Some(Compressor::FixedClutch));
    /// ```
    Compressor[4] {
        FixedClutch = 1, ["fixed-clutch"], "Fixed displacement, cycled by a clutch.";
        VariableInternal = 2, ["variable-internal"], "Variable displacement, controlled by its own valve.";
        VariableExternal = 3, ["variable-external"], "Variable displacement, controlled by an electric valve.";
        Electric = 4, ["electric"], "Motor-driven, controlled by speed; high voltage.";
    }
}

vocabulary! {
    /// The size of a vehicle, which sets the typical hardware of its air conditioning.
    ///
    /// ```
    /// use coldloop::VehicleClass;
    /// assert_eq!(VehicleClass::SmallCar.id(), "small-car");
    /// assert_eq!(VehicleClass::from_id("small-car"), Some(VehicleClass::SmallCar));
    /// assert_eq!(VehicleClass::from_code(1), Some(VehicleClass::SmallCar));
    /// ```
    VehicleClass[5] {
        SmallCar = 1, ["small-car"], "Small car.";
        Car = 2, ["car"], "Car of the middle class, or a machine's cab.";
        LargeCar = 3, ["large-car"], "Large car or pickup.";
        Van = 4, ["van"], "Van or minibus.";
        Bus = 5, ["bus"], "Bus or coach with a roof unit.";
    }
}

vocabulary! {
    /// Where the cabin blower draws its air from.
    ///
    /// ```
    /// use coldloop::AirSource;
    /// assert_eq!(AirSource::Fresh.id(), "fresh");
    /// assert_eq!(AirSource::from_id("fresh"), Some(AirSource::Fresh));
    /// assert_eq!(AirSource::from_code(1), Some(AirSource::Fresh));
    /// ```
    AirSource[2] {
        Fresh = 1, ["fresh"], "Outside air.";
        Recirculated = 2, ["recirculated"], "Cabin air.";
    }
}

vocabulary! {
    /// Where the low-side port stands.
    ///
    /// ```
    /// use coldloop::LowPort;
    /// assert_eq!(LowPort::Evaporator.id(), "evaporator");
    /// assert_eq!(LowPort::from_id("evaporator"), Some(LowPort::Evaporator));
    /// assert_eq!(LowPort::from_code(1), Some(LowPort::Evaporator));
    /// ```
    LowPort[2] {
        Evaporator = 1, ["evaporator"], "At the evaporator or accumulator, before the suction line.";
        Compressor = 2, ["compressor"], "At the compressor, behind the suction line.";
    }
}

vocabulary! {
    /// Where the high-side port stands.
    ///
    /// ```
    /// use coldloop::HighPort;
    /// assert_eq!(HighPort::Discharge.id(), "discharge-line");
    /// assert_eq!(HighPort::from_id("discharge-line"), Some(HighPort::Discharge));
    /// assert_eq!(HighPort::from_code(1), Some(HighPort::Discharge));
    /// ```
    HighPort[2] {
        Discharge = 1, ["discharge-line"], "On the discharge line, before the condenser.";
        Liquid = 2, ["liquid-line"], "On the liquid line, behind the condenser.";
    }
}

vocabulary! {
    /// A reading that an instrument gives.
    ///
    /// ```
    /// use coldloop::ReadingKind;
    /// assert_eq!(ReadingKind::LowSide.id(), "low_side");
    /// assert_eq!(ReadingKind::from_id("low_side"), Some(ReadingKind::LowSide));
    /// assert_eq!(ReadingKind::from_code(1), Some(ReadingKind::LowSide));
    /// ```
    ReadingKind[11] {
        LowSide = 1, ["low_side"], "Low-side pressure.";
        HighSide = 2, ["high_side"], "High-side pressure.";
        Vent = 3, ["vent"], "Air temperature at the centre vent.";
        Cabin = 4, ["cabin"], "Cabin air temperature.";
        SuctionLine = 5, ["suction_line"], "Temperature of the suction line at the compressor.";
        DischargeLine = 6, ["discharge_line"], "Temperature of the discharge line at the compressor.";
        LiquidLine = 7, ["liquid_line"], "Temperature of the liquid line before the expansion device.";
        CondenserOutlet = 8, ["condenser_outlet"], "Temperature of the line at the condenser outlet.";
        ClutchCycles = 9, ["clutch_cycles"], "Clutch engagements per minute.";
        HighSideTransducer = 10, ["high_side_transducer"], "High-side pressure that the vehicle's own transducer tells a scan tool.";
        EvaporatorSensor = 11, ["evaporator_sensor"], "Temperature of the fins, or of the air behind the evaporator, that the vehicle's own sensor tells a scan tool.";
    }
}

vocabulary! {
    /// How true a pressure gauge is, as its maker states it.
    ///
    /// ```
    /// use coldloop::GaugeClass;
    /// assert_eq!(GaugeClass::Class1.id(), "class-1.0");
    /// assert_eq!(GaugeClass::from_id("class-1.0"), Some(GaugeClass::Class1));
    /// assert_eq!(GaugeClass::from_code(1), Some(GaugeClass::Class1));
    /// ```
    GaugeClass[6] {
        Class1 = 1, ["class-1.0"], "EN 837-1 class 1.0: within 1 % of the span.";
        Class1p6 = 2, ["class-1.6"], "EN 837-1 class 1.6: within 1.6 % of the span.";
        Class2p5 = 3, ["class-2.5"], "EN 837-1 class 2.5: within 2.5 % of the span.";
        GradeA = 4, ["grade-A"], "ASME B40.100 grade A: within 1 % of the span in its middle half, 2 % outside.";
        GradeB = 5, ["grade-B"], "ASME B40.100 grade B: within 2 % of the span in its middle half, 3 % outside.";
        Digital = 6, ["digital"], "Electronic manifold: within 0.5 % of the span.";
    }
}

vocabulary! {
    /// What measured a temperature.
    ///
    /// ```
    /// use coldloop::Thermometer;
    /// assert_eq!(Thermometer::ClampThermocouple.id(), "clamp-thermocouple");
    /// assert_eq!(Thermometer::from_id("clamp-thermocouple"), Some(Thermometer::ClampThermocouple));
    /// assert_eq!(Thermometer::from_code(1), Some(Thermometer::ClampThermocouple));
    /// ```
    Thermometer[5] {
        ClampThermocouple = 1, ["clamp-thermocouple"], "Thermocouple of type K, clamped to the line.";
        ClampThermistor = 2, ["clamp-thermistor"], "Thermistor, clamped to the line.";
        PocketDial = 3, ["pocket-dial"], "Bimetal thermometer with a stem and a dial.";
        PocketDigital = 4, ["pocket-digital"], "Electronic thermometer with a stem.";
        Infrared = 5, ["infrared"], "Infrared thermometer on a dull dark spot of the line.";
    }
}

vocabulary! {
    /// A state of the system that explains its readings; `no-fault` is one of them.
    ///
    /// ```
    /// use coldloop::Fault;
    /// assert_eq!(Fault::NoFault.id(), "no-fault");
    /// assert_eq!(Fault::from_id("no-fault"), Some(Fault::NoFault));
    /// assert_eq!(Fault::from_code(0), Some(Fault::NoFault));
    /// ```
    Fault[21] {
        NoFault = 0, ["no-fault"], "No fault: the system is normal.";
        WornCompressor = 1, ["worn-compressor"], "The compressor pumps too little: worn pistons, valves or gasket.";
        Undercharge = 2, ["undercharge"], "Too little refrigerant.";
        Overcharge = 3, ["overcharge"], "Too much refrigerant.";
        CondenserAirflowLoss = 4, ["condenser-airflow-loss"], "Too little air through the condenser: dirt, fan, shroud.";
        NonCondensables = 5, ["non-condensables"], "Air or another non-condensable gas in the circuit.";
        LiquidLineRestriction = 6, ["liquid-line-restriction"], "A restriction between condenser and expansion device, drier included.";
        ExpansionValveStuckOpen = 7, ["expansion-valve-stuck-open"], "The expansion valve feeds too much.";
        ExpansionValveStuckClosed = 8, ["expansion-valve-stuck-closed"], "The expansion valve feeds too little.";
        OrificeRestricted = 9, ["orifice-restricted"], "The orifice tube or its screen is clogged.";
        EvaporatorAirflowLoss = 10, ["evaporator-airflow-loss"], "Too little air over the evaporator: filter, blower, dirt.";
        EvaporatorIcing = 11, ["evaporator-icing"], "Frost blocks the evaporator because its low limit fails.";
        MoistureIcing = 12, ["moisture-icing"], "Water in the refrigerant freezes at the expansion device.";
        CompressorControlFault = 13, ["compressor-control-fault"], "The displacement or speed control holds the compressor back.";
        ClutchNotEngaged = 14, ["clutch-not-engaged"], "The compressor is not driven.";
        ClutchSlipping = 15, ["clutch-slipping"], "The clutch or the belt slips.";
        HeaterAirMixing = 16, ["heater-air-mixing"], "Warm air joins the cold: blend door or heater valve.";
        HighSideRestriction = 17, ["high-side-restriction"], "A restriction between compressor and condenser outlet.";
        SuctionLineRestriction = 18, ["suction-line-restriction"], "A restriction between evaporator and compressor.";
        WrongRefrigerant = 19, ["wrong-refrigerant"], "The charge is another refrigerant or a mixture.";
        GaugeError = 20, ["gauge-error"], "A gauge, its zero, its unit, its hose or a thermometer misleads.";
    }
}

vocabulary! {
    /// What the readings allow one to say.
    ///
    /// ```
    /// use coldloop::VerdictKind;
    /// assert_eq!(VerdictKind::Healthy.id(), "healthy");
    /// assert_eq!(VerdictKind::from_id("healthy"), Some(VerdictKind::Healthy));
    /// assert_eq!(VerdictKind::from_code(1), Some(VerdictKind::Healthy));
    /// ```
    VerdictKind[5] {
        Healthy = 1, ["healthy"], "No fault stands out: the readings are normal here today.";
        NamedFault = 2, ["named-fault"], "One fault explains the readings.";
        CannotTell = 3, ["cannot-tell"], "Not settled: more than one fault explains the readings.";
        NothingFits = 4, ["nothing-fits"], "No single explanation fits: measure again.";
        NotEnoughEvidence = 5, ["not-enough-evidence"], "Too little was measured to judge.";
    }
}

vocabulary! {
    /// Safety group of ANSI/ASHRAE Standard 34: toxicity A or B, flammability 1, 2L, 2 or 3.
    ///
    /// ```
    /// use coldloop::SafetyGroup;
    /// assert_eq!(SafetyGroup::A1.id(), "A1");
    /// assert_eq!(SafetyGroup::from_id("A1"), Some(SafetyGroup::A1));
    /// assert_eq!(SafetyGroup::from_code(1), Some(SafetyGroup::A1));
    /// ```
    SafetyGroup[4] {
        A1 = 1, ["A1"], "Lower toxicity, no flame propagation.";
        A2L = 2, ["A2L"], "Lower toxicity, lower flammability.";
        A2 = 3, ["A2"], "Lower toxicity, flammable.";
        A3 = 4, ["A3"], "Lower toxicity, higher flammability.";
    }
}

vocabulary! {
    /// The phase of a state.
    ///
    /// ```
    /// use coldloop::Phase;
    /// assert_eq!(Phase::Liquid.id(), "liquid");
    /// assert_eq!(Phase::from_id("liquid"), Some(Phase::Liquid));
    /// assert_eq!(Phase::from_code(1), Some(Phase::Liquid));
    /// ```
    Phase[4] {
        Liquid = 1, ["liquid"], "Liquid below the critical temperature.";
        Vapour = 2, ["vapour"], "Vapour below the critical temperature.";
        TwoPhase = 3, ["two-phase"], "Liquid and vapour in equilibrium.";
        Supercritical = 4, ["supercritical"], "Above the critical temperature.";
    }
}

vocabulary! {
    /// The state at which enthalpy and entropy are counted from; differences do not depend on it.
    ///
    /// ```
    /// use coldloop::Reference;
    /// assert_eq!(Reference::Iir.id(), "liquid-at-0-celsius");
    /// assert_eq!(Reference::from_id("liquid-at-0-celsius"), Some(Reference::Iir));
    /// assert_eq!(Reference::from_code(1), Some(Reference::Iir));
    /// ```
    Reference[3] {
        Iir = 1, ["liquid-at-0-celsius", "IIR"], "Saturated liquid at 0 °C has 200 kJ/kg and 1 kJ/(kg K).";
        Ashrae = 2, ["liquid-at-minus-40-celsius", "ASHRAE"], "Saturated liquid at -40 °C has zero of both.";
        NormalBoilingPoint = 3, ["liquid-at-boiling-point", "NBP"], "Saturated liquid at 101.325 kPa has zero of both.";
    }
}

vocabulary! {
    /// A coordinate in which readings are judged; no two of them say the same thing twice.
    ///
    /// ```
    /// use coldloop::Feature;
    /// assert_eq!(Feature::LowSide.id(), "low_side");
    /// assert_eq!(Feature::from_id("low_side"), Some(Feature::LowSide));
    /// assert_eq!(Feature::from_code(1), Some(Feature::LowSide));
    /// ```
    Feature[8] {
        LowSide = 1, ["low_side"], "Saturation temperature of the low-side pressure.";
        HighSide = 2, ["high_side"], "Saturation temperature of the high-side pressure.";
        Vent = 3, ["vent"], "Air temperature at the centre vent.";
        Superheat = 4, ["superheat"], "Suction line above the saturation temperature of the low side.";
        Subcooling = 5, ["subcooling"], "Liquid line below the saturation temperature of the high side.";
        DischargeSuperheat = 6, ["discharge_superheat"], "Discharge line above the saturation temperature of the high side.";
        ClutchCycles = 7, ["clutch_cycles"], "How often the clutch engages.";
        RestPressure = 8, ["rest_pressure"], "Saturation temperature of the pressure at rest against the ambient.";
    }
}

vocabulary! {
    /// What eyes, ears and hands find, answered yes or no.
    ///
    /// ```
    /// use coldloop::Observation;
    /// assert_eq!(Observation::ClutchEngaged.id(), "clutch_engaged");
    /// assert_eq!(Observation::from_id("clutch_engaged"), Some(Observation::ClutchEngaged));
    /// assert_eq!(Observation::from_code(1), Some(Observation::ClutchEngaged));
    /// ```
    Observation[43] {
        ClutchEngaged = 1, ["clutch_engaged"], "The clutch is engaged: hub and pulley turn together.";
        ClutchHasVoltage = 2, ["clutch_has_voltage"], "The clutch coil gets its voltage when cooling is asked for.";
        HubTurnsFreely = 3, ["hub_turns_freely"], "With the belt on and the clutch off, the hub turns by hand without resistance.";
        HubLocked = 4, ["hub_locked"], "With the clutch off, the hub cannot be turned by hand.";
        BeltSlips = 5, ["belt_slips"], "The belt or the clutch slips: squeal, smell, glaze, or a hub slower than its pulley.";
        CompressorNoisy = 6, ["compressor_noisy"], "The compressor knocks or rattles while it is engaged.";
        CondenserFanRunning = 7, ["condenser_fan_running"], "The condenser fan runs while cooling is asked for.";
        CondenserFaceBlocked = 8, ["condenser_face_blocked"], "The face of the condenser is covered by dirt, leaves or bent fins.";
        WaterLowersHighSide = 9, ["water_lowers_high_side"], "Water sprayed on the condenser lowers the high side strongly within a minute.";
        CondenserHasTemperatureStep = 10, ["condenser_has_temperature_step"], "A step of temperature is felt along one condenser pass.";
        CondenserTubeBelowSaturation = 11, ["condenser_tube_below_saturation"], "A tube in the middle of the condenser is clearly colder than the saturation temperature of the high side.";
        SightGlassBubbles = 12, ["sight_glass_bubbles"], "Bubbles or foam stand in the sight glass after some minutes of steady running.";
        OilTraces = 13, ["oil_traces"], "Fresh oil or dye shows at a joint, hose, seal or heat exchanger.";
        HissingAtExpansion = 14, ["hissing_at_expansion"], "The expansion device hisses or gurgles while the system runs.";
        DropAcrossDrier = 15, ["drop_across_drier"], "The liquid line is clearly colder after the drier, or after another point, than before it.";
        FrostAtExpansion = 16, ["frost_at_expansion"], "Frost or a sharp cold step stands at the inlet of the expansion device.";
        FrostOnSuctionLine = 17, ["frost_on_suction_line"], "Frost or heavy sweat covers the suction line up to the compressor.";
        SuctionLineStep = 18, ["suction_line_step"], "A step of temperature or frost begins at one point of the suction line.";
        LowSideFollowsBulb = 19, ["low_side_follows_bulb"], "The low side follows when the bulb or head of the valve is warmed and cooled.";
        EvaporatorFrosted = 20, ["evaporator_frosted"], "Frost covers the evaporator face.";
        AirflowFades = 21, ["airflow_fades"], "The air at the vents weakens after some minutes and returns after a pause.";
        CoolingComesAndGoes = 22, ["cooling_comes_and_goes"], "Cooling comes and goes in minutes while the low side falls towards vacuum and recovers.";
        AirflowWeak = 23, ["airflow_weak"], "Little air leaves the vents with the blower at its highest step.";
        ClosingHeaterCoolsVent = 24, ["closing_heater_cools_vent"], "Closing the heater valve, or clamping the heater hose, makes the vent clearly colder.";
        SpeedLowersLowSide = 25, ["speed_lowers_low_side"], "Raising the engine to about 2,000 rpm lowers the low side and raises the high side.";
        ControlSignalMovesPressures = 26, ["control_signal_moves_pressures"], "Commanding the compressor up with a scan tool moves both pressures apart.";
        SidesEqualiseQuickly = 27, ["sides_equalise_quickly"], "After switching off, the two sides are equal in less than two minutes.";
        RestPressureHigh = 28, ["rest_pressure_high"], "At rest and at one temperature, the pressure is clearly above saturation at the ambient.";
        RestPressureLow = 29, ["rest_pressure_low"], "At rest and at one temperature, the pressure is clearly below saturation at the ambient.";
        IdentifierShowsAir = 30, ["identifier_shows_air"], "A refrigerant identifier shows air.";
        IdentifierShowsOther = 31, ["identifier_shows_other"], "A refrigerant identifier shows another refrigerant than the label.";
        RecoveredBelowLabel = 32, ["recovered_below_label"], "Clearly less refrigerant was recovered than the label names.";
        RecoveredAboveLabel = 33, ["recovered_above_label"], "Clearly more refrigerant was recovered than the label names.";
        RecentlyFilled = 34, ["recently_filled"], "Refrigerant was added since the system last worked well.";
        SecondGaugesAgree = 35, ["second_gauges_agree"], "A second set of gauges shows the same pressures.";
        CoolsOnTheRoad = 36, ["cools_on_the_road"], "After ten to fifteen minutes on the road the air at the vents is cold, and stays cold.";
        TransducerAgrees = 37, ["transducer_agrees"], "The vehicle's own transducer of the high side and the gauge show the same pressure.";
        DyeGlows = 38, ["dye_glows"], "Dye of this refrigerant charge glows under UV light on the outside of the circuit.";
        DetectorAlarms = 39, ["detector_alarms"], "An electronic detector of refrigerant alarms at one place again and again.";
        TraceGasEscapes = 40, ["trace_gas_escapes"], "Trace gas or test gas under pressure escapes at a place that a detector or foam shows.";
        TestPressureHolds = 41, ["test_pressure_holds"], "A test pressure holds: the loss is surely less than allowed.";
        VacuumHolds = 42, ["vacuum_holds"], "A deep vacuum holds: no air comes in and no moisture boils.";
        EvacuatedBeforeFilling = 43, ["evacuated_before_filling"], "The circuit was evacuated deeply before it was filled.";
    }
}

vocabulary! {
    /// A further check: something to read, to look at, or to try.
    ///
    /// ```
    /// use coldloop::Check;
    /// assert_eq!(Check::ReadLowSide.id(), "read-low-side");
    /// assert_eq!(Check::from_id("read-low-side"), Some(Check::ReadLowSide));
    /// assert_eq!(Check::from_code(1), Some(Check::ReadLowSide));
    /// ```
    Check[41] {
        ReadLowSide = 1, ["read-low-side"], "Read the low side with the system running.";
        ReadHighSide = 2, ["read-high-side"], "Read the high side with the system running.";
        ReadVent = 3, ["read-vent"], "Read the air at the centre vent after ten minutes on the coldest setting.";
        ReadSuctionLine = 4, ["read-suction-line"], "Clamp a thermometer to the suction line at the compressor: it gives the superheat.";
        ReadLiquidLine = 5, ["read-liquid-line"], "Clamp a thermometer to the liquid line: it gives the subcooling.";
        ReadDischargeLine = 6, ["read-discharge-line"], "Clamp a thermometer to the discharge line.";
        CountClutchCycles = 7, ["count-clutch-cycles"], "Count how often the clutch engages in three minutes.";
        RunAndRead = 8, ["run-and-read"], "Run the A/C on full cooling and read both sides after five minutes.";
        WatchClutch = 9, ["watch-clutch"], "Check whether hub and pulley turn together.";
        MeasureClutchVoltage = 10, ["measure-clutch-voltage"], "Measure the voltage at the clutch connector with the A/C switched on.";
        TurnHub = 11, ["turn-hub"], "Engine off, belt on, clutch off: turn the hub by hand. A good compressor turns with an even resistance.";
        LookForSlip = 12, ["look-for-slip"], "Watch belt and hub under load, and listen for a squeal.";
        ListenToCompressor = 13, ["listen-to-compressor"], "Listen to the compressor while the clutch engages and while it runs.";
        WatchCondenserFan = 14, ["watch-condenser-fan"], "Check whether the condenser fan runs.";
        LookAtCondenserFace = 15, ["look-at-condenser-face"], "Inspect the face of the condenser with a lamp, also between it and the radiator.";
        SprayCondenser = 16, ["spray-condenser"], "Spray water on the condenser and watch the high side.";
        FeelCondenserPasses = 17, ["feel-condenser-passes"], "Move a thermometer along the condenser from inlet to outlet and look for a sudden step.";
        ClampCondenserMiddle = 18, ["clamp-condenser-middle"], "Clamp a thermometer to a tube in the middle of the condenser and compare it with the saturation temperature of the high side.";
        LookAtSightGlass = 19, ["look-at-sight-glass"], "Look at the sight glass after five minutes of steady running.";
        LookForLeaks = 20, ["look-for-leaks"], "Search for a leak: look for oil and dye, and check the joints with an electronic detector.";
        ListenAtExpansion = 21, ["listen-at-expansion"], "Listen at the expansion valve or orifice tube.";
        DropAcrossDrier = 22, ["drop-across-drier"], "Measure the temperature of the liquid line before and after the drier.";
        LookAtExpansion = 23, ["look-at-expansion"], "Look for frost at the inlet of the expansion valve or orifice tube.";
        LookAtSuctionLine = 24, ["look-at-suction-line"], "Check how far frost or sweat reaches along the suction line.";
        FollowSuctionLine = 25, ["follow-suction-line"], "Move a thermometer along the suction line and look for a sudden step.";
        WarmAndChillBulb = 26, ["warm-and-chill-bulb"], "Warm the bulb or head of the valve with the hand, then cool it with ice, and watch the low side.";
        LookAtEvaporator = 27, ["look-at-evaporator"], "Inspect the evaporator through the blower or a drain opening.";
        WatchTwentyMinutes = 28, ["watch-twenty-minutes"], "Watch the vent and the low side for twenty minutes of running.";
        FeelAirflow = 29, ["feel-airflow"], "Feel the air at the vents with the blower at its highest step, and inspect the cabin filter.";
        CloseHeater = 30, ["close-heater"], "Close the heater valve or clamp the heater hose and watch the vent.";
        RaiseEngineSpeed = 31, ["raise-engine-speed"], "Raise the engine speed to about 2,000 rpm and watch both sides.";
        DriveControl = 32, ["drive-control"], "Command the compressor up and down with a scan tool and watch both sides.";
        TimeEqualisation = 33, ["time-equalisation"], "Switch the A/C off and time how long both sides take to become equal.";
        ReadRestPressure = 34, ["read-rest-pressure"], "Leave the system off until all parts have one temperature, then compare its pressure with the saturation pressure at ambient.";
        IdentifyRefrigerant = 35, ["identify-refrigerant"], "Connect a refrigerant identifier to the low side.";
        RecoverAndWeigh = 36, ["recover-and-weigh"], "Recover the charge and weigh it against the label.";
        AskHistory = 37, ["ask-history"], "Ask who last serviced the system, and what was added.";
        CompareGauges = 38, ["compare-gauges"], "Check hoses, units and zero of the gauges and the contact of every probe, then compare with a second set of gauges.";
        RoadTest = 39, ["road-test"], "Drive for ten to fifteen minutes on the coldest setting and check that it cools and keeps cooling.";
        CompareTransducer = 40, ["compare-transducer"], "Compare the high side of the gauge with the vehicle's own pressure transducer on a scan tool.";
        SearchWithNitrogen = 41, ["search-with-nitrogen"], "Search for the leak with dry nitrogen: empty the circuit, bring it to test pressure and check every joint with leak spray.";
    }
}

vocabulary! {
    /// A way in which gauges and thermometers mislead.
    ///
    /// ```
    /// use coldloop::EntryError;
    /// assert_eq!(EntryError::SwappedHoses.id(), "swapped-hoses");
    /// assert_eq!(EntryError::from_id("swapped-hoses"), Some(EntryError::SwappedHoses));
    /// assert_eq!(EntryError::from_code(1), Some(EntryError::SwappedHoses));
    /// ```
    EntryError[15] {
        SwappedHoses = 1, ["swapped-hoses"], "The two hoses are swapped.";
        KpaTypedAsPsi = 2, ["kpa-typed-as-psi"], "Figures in kPa were noted as psi.";
        PsiTypedAsKpa = 3, ["psi-typed-as-kpa"], "Figures in psi were noted as kPa.";
        AbsoluteTypedAsGauge = 4, ["absolute-typed-as-gauge"], "Absolute pressures were noted as gauge pressures.";
        GaugeTypedAsAbsolute = 5, ["gauge-typed-as-absolute"], "Gauge pressures were noted as absolute pressures.";
        ZeroedAtSeaLevel = 6, ["zeroed-at-sea-level"], "The gauges were zeroed at sea level, not in the air of this place.";
        LowGaugeOff = 7, ["low-gauge-off"], "The low gauge is off throughout: with its hose open it does not return to zero.";
        HighGaugeOff = 8, ["high-gauge-off"], "The high gauge is off throughout: with its hose open it does not return to zero.";
        BothGaugesOff = 9, ["both-gauges-off"], "Both gauges are off throughout, as when they were zeroed with pressure in the hoses.";
        VentProbeAside = 10, ["vent-probe-aside"], "The thermometer does not stand in the stream of the vent, and reads towards the air of the cabin.";
        SuctionProbeLoose = 11, ["suction-probe-loose"], "The probe on the suction line is loose or not insulated, and reads towards the air about it.";
        LiquidProbeLoose = 12, ["liquid-probe-loose"], "The probe on the liquid line is loose or not insulated, and reads towards the air about it.";
        DischargeProbeLoose = 13, ["discharge-probe-loose"], "The probe on the discharge line is loose or not insulated, and reads towards the air about it.";
        LowHoseShut = 14, ["low-hose-shut"], "The coupler of the low hose is shut: its gauge shows the air's pressure or, through the manifold, the other side's.";
        HighHoseShut = 15, ["high-hose-shut"], "The coupler of the high hose is shut: its gauge shows the air's pressure or, through the manifold, the other side's.";
    }
}

vocabulary! {
    /// What the pressure of a system at rest tells.
    ///
    /// ```
    /// use coldloop::RestFinding;
    /// assert_eq!(RestFinding::Consistent.id(), "consistent");
    /// assert_eq!(RestFinding::from_id("consistent"), Some(RestFinding::Consistent));
    /// assert_eq!(RestFinding::from_code(1), Some(RestFinding::Consistent));
    /// ```
    RestFinding[4] {
        Consistent = 1, ["consistent"], "Liquid is left and no air shows: the pressure is saturation at the ambient, as well as the instruments tell. It does not tell how full the system is.";
        NearlyEmpty = 2, ["nearly-empty"], "The pressure is below saturation at the ambient: no liquid is left.";
        AirPresent = 3, ["air-present"], "The pressure is above saturation at the ambient: air, another refrigerant, or parts still warm.";
        NotEqualised = 4, ["not-equalised"], "The two sides still differ: the pressure at rest cannot be judged yet.";
    }
}

vocabulary! {
    /// What the normal bands rest on.
    ///
    /// ```
    /// use coldloop::ExpectedBasis;
    /// assert_eq!(ExpectedBasis::OwnTable.id(), "own-table");
    /// assert_eq!(ExpectedBasis::from_id("own-table"), Some(ExpectedBasis::OwnTable));
    /// assert_eq!(ExpectedBasis::from_code(1), Some(ExpectedBasis::OwnTable));
    /// ```
    ExpectedBasis[4] {
        OwnTable = 1, ["own-table"], "The vehicle's own pressure table, and for the other readings the sources.";
        OwnReadings = 2, ["own-readings"], "The sources, narrowed by earlier normal readings of the same vehicle.";
        VehicleModel = 3, ["vehicle-model"], "Vehicles of this kind without a fault in the vehicle model, the only source for it; how far sources disagree is taken from R-134a.";
        Sources = 4, ["sources"], "Several sources: the vehicle model, an independent simulator and published charts, with how far they disagree.";
    }
}

vocabulary! {
    /// What can hurt, and what the law asks.
    ///
    /// ```
    /// use coldloop::Caution;
    /// assert_eq!(Caution::Pressure.id(), "pressure");
    /// assert_eq!(Caution::from_id("pressure"), Some(Caution::Pressure));
    /// assert_eq!(Caution::from_code(1), Some(Caution::Pressure));
    /// ```
    Caution[25] {
        Pressure = 1, ["pressure"], "The circuit is under pressure even at rest: wear eye protection, and open no joint before the charge is out.";
        Frostbite = 2, ["frostbite"], "Escaping refrigerant freezes skin and eyes: wear gloves and goggles.";
        MovingParts = 3, ["moving-parts"], "Belts and fans start without warning, and so does the engine of a hybrid: keep hands, hair and clothes away; turn the hub only with the engine off and the key out.";
        Flammable = 4, ["flammable"], "The refrigerant is flammable: keep ignition sources away, ventilate, and use only gauges, identifiers and machines made for flammable refrigerants.";
        HighVoltage = 5, ["high-voltage"], "The compressor runs on high voltage: only qualified persons may work on it, after the vehicle's own disconnection procedure and a check that no voltage is left.";
        NoVenting = 6, ["no-venting"], "Do not release refrigerant: it is unlawful in many places. Recover it with certified equipment.";
        LocalRules = 7, ["local-rules"], "The judgement of a certified technician, the data of the vehicle's maker and the local rules come first.";
        Ventilation = 8, ["ventilation"], "Refrigerant gathers in pits and closed rooms and displaces the air: ventilate at floor level. Keep flames and hot surfaces away: heat turns it into toxic gases.";
        Certification = 9, ["certification"], "Only certified persons may open a circuit, and in many places only they may buy refrigerant.";
        TestPressure = 10, ["test-pressure"], "Pressure test: dry nitrogen only, through a regulator and a relief valve. Never oxygen, compressed air or a mix with refrigerant, and never above the pressure that the label and every part allow.";
        CarbonDioxide = 11, ["carbon-dioxide"], "R-744 (carbon dioxide) stands at up to ten times the pressure of other refrigerants: use only gauges, hoses and parts made for it. It has no smell: above 3 to 4 per cent in the air it is dangerous, above 10 per cent a person soon loses consciousness. Ventilate, and leave the room if much escapes.";
        ForeignRefrigerant = 12, ["foreign-refrigerant"], "What is in the circuit is not known, and it may be flammable: identify it before a machine draws it in, and recover it into a separate marked cylinder.";
        HotParts = 13, ["hot-parts"], "The discharge line, the engine and the exhaust burn the skin.";
        DoNotRun = 14, ["do-not-run"], "Do not run the compressor on an empty circuit or one with air in it: no refrigerant brings its oil back, and compressed air with oil or a flammable refrigerant can ignite.";
        TestTooHigh = 15, ["test-too-high"], "This test pressure is above what the label allows, or above 30 bar where no label was given: let it down before anyone comes near, for the weakest part bursts first.";
        HighVoltageCables = 16, ["high-voltage-cables"], "High voltage: keep hands, clamps, probes and water away from orange cables, their connectors and the compressor's inverter; stop if one is damaged.";
        Exhaust = 17, ["exhaust"], "Run an engine outdoors or with its exhaust led outside: carbon monoxide kills without warning.";
        ParkAndChock = 18, ["park-and-chock"], "Before the engine is raised: parking brake on, wheels chocked, gear in park or neutral, nobody in front of the vehicle.";
        HotCoolant = 19, ["hot-coolant"], "Hot coolant is under pressure and scalds: do not open the cooling system, wear gloves, and clamp a hose only with a hose clamp tool.";
        ConnectStopped = 20, ["connect-stopped"], "Connect and disconnect the hoses with the engine and the A/C off and both manifold valves closed; lay the hoses clear of belts, fans and hot parts.";
        HandAndIce = 21, ["hand-and-ice"], "Warm the valve with the hand or a warm cloth and cool it with ice. Never use a flame or a heat gun.";
        RightOil = 22, ["right-oil"], "Measure the oil that came out and put back the same amount, with what stays in a replaced part: only the type that the compressor's maker names.";
        InsulatingOil = 23, ["insulating-oil"], "The oil of a high-voltage compressor must insulate: use only the type that its maker names, with hoses and injectors that no other oil has been in.";
        ReleaseSlowly = 24, ["release-slowly"], "R-744 is released, not recovered, where the local rules allow it: outdoors or into an extraction, slowly through a fixed hose, with no person near its end. Wait until dry ice in the circuit is gone before a joint is opened.";
        HighSideNearLimit = 25, ["high-side-near-limit"], "The high side is close to its limit: watch it, and switch the A/C off if it rises further.";
    }
}

vocabulary! {
    /// Why the compressor must stand still.
    ///
    /// ```
    /// use coldloop::StopReason;
    /// assert_eq!(StopReason::HighPressure.id(), "high-pressure");
    /// assert_eq!(StopReason::from_id("high-pressure"), Some(StopReason::HighPressure));
    /// assert_eq!(StopReason::from_code(1), Some(StopReason::HighPressure));
    /// ```
    StopReason[3] {
        HighPressure = 1, ["high-pressure"], "Stop: switch the A/C off. The high side is at its limit; do not start it again before the cause is found.";
        NearlyEmpty = 2, ["nearly-empty"], "Do not run the A/C: by these pressures the circuit is empty or nearly empty. If the gauges are right, search for the leak with dry nitrogen.";
        AirPresent = 3, ["air-present"], "Do not start the A/C: its pressure at rest is that of air or another refrigerant, or of parts still warm.";
    }
}

vocabulary! {
    /// What limits the result.
    ///
    /// ```
    /// use coldloop::QualityNote;
    /// assert_eq!(QualityNote::FewReadings.id(), "few-readings");
    /// assert_eq!(QualityNote::from_id("few-readings"), Some(QualityNote::FewReadings));
    /// assert_eq!(QualityNote::from_code(1), Some(QualityNote::FewReadings));
    /// ```
    QualityNote[27] {
        FewReadings = 1, ["few-readings"], "Low side, high side and vent were not all read.";
        HumidityUnknown = 2, ["humidity-unknown"], "The humidity was not given; the bands are wider for it.";
        AirSourceUnknown = 3, ["air-source-unknown"], "Fresh or recirculated air was not given; the band of the vent is wider for it.";
        RunningTimeUnknown = 4, ["running-time-unknown"], "How long the system had run was not given; it is taken as settled.";
        NotSettled = 5, ["not-settled"], "The system had not run long enough to settle; the bands are wider for it.";
        GenericBand = 6, ["generic-band"], "The bands are those of vehicles in general; a pressure table of this vehicle would narrow them.";
        GaugeZeroUnknown = 7, ["gauge-zero-unknown"], "At this altitude it matters where the gauges were zeroed, and that was not given.";
        ClutchCycling = 8, ["clutch-cycling"], "The clutch cycles: the low side swings, and a single reading of it says less.";
        StrokeLimit = 9, ["stroke-limit"], "Hot air at low engine speed: a variable compressor may run out of stroke, which is no fault.";
        SidesEqual = 10, ["sides-equal"], "The two sides are equal: the compressor is not driven or does not pump, or the system is at rest.";
        AtRest = 11, ["at-rest"], "The compressor stands still: only the pressure at rest can be judged.";
        OffScale = 12, ["off-scale"], "A pressure has no saturation temperature: it was judged at the end of the scale.";
        ReadingOutOfLine = 13, ["reading-out-of-line"], "One reading does not fit: measure it again.";
        TwoFaultsPossible = 14, ["two-faults-possible"], "Two faults at once would explain the readings better than any single one.";
        BandsOnly = 15, ["bands-only"], "The pressure at rest of this refrigerant is not that of saturation here: no fault is named from it.";
        OutsideFit = 16, ["outside-fit"], "The air is thinner, the engine faster or slower, or the blower lower than in the vehicles that the odds are based on: they are less sure here.";
        TransducerStandsIn = 17, ["transducer-stands-in"], "The high side was read by the vehicle's own transducer alone; it stands in for a gauge.";
        TransducerContradicts = 18, ["transducer-contradicts"], "Gauge and transducer of the high side differ by more than their uncertainties: the gauge was judged; find out which of the two is off.";
        NearHighCutOut = 19, ["near-high-cut-out"], "The high side stands at 95 % of its cut-out or above it: the switch stops the compressor there, and a mean of such readings says less.";
        EvaporatorFreezing = 20, ["evaporator-freezing"], "The evaporator sensor reads below the freezing point of water: ice may close the fins.";
        VentBelowEvaporator = 21, ["vent-below-evaporator"], "The vent reads colder than the evaporator sensor, by more than their uncertainties: measure both again.";
        DisplacementLow = 22, ["displacement-low"], "The control commands less than half of the displacement in hot air: what looks like a compressor that pumps too little may be one that is commanded to pump little.";
        SecondEvaporator = 23, ["second-evaporator"], "There is a second evaporator: the bands take it into account, except for R-744.";
        PortsNoted = 24, ["ports-noted"], "The place of the ports is noted: the bands take it into account, except for R-744.";
        CompressorSpeedNoted = 25, ["compressor-speed-noted"], "The speed of the compressor is noted; the odds do not use it.";
        FanCommandNoted = 26, ["fan-command-noted"], "The command of the fan is noted: the bands take it into account, except for R-744.";
        DisplacementNoted = 27, ["displacement-noted"], "The commanded displacement is noted; the odds do not use it.";
    }
}

vocabulary! {
    /// How a check can come out.
    ///
    /// ```
    /// use coldloop::ResultKind;
    /// assert_eq!(ResultKind::Yes.id(), "yes");
    /// assert_eq!(ResultKind::from_id("yes"), Some(ResultKind::Yes));
    /// assert_eq!(ResultKind::from_code(1), Some(ResultKind::Yes));
    /// ```
    ResultKind[5] {
        Yes = 1, ["yes"], "The answer is yes.";
        No = 2, ["no"], "The answer is no.";
        Below = 3, ["below"], "Below the normal range.";
        Within = 4, ["within"], "Within the normal range.";
        Above = 5, ["above"], "Above the normal range.";
    }
}

vocabulary! {
    /// What the pressure reached by a vacuum pump tells.
    ///
    /// ```
    /// use coldloop::EvacuationFinding;
    /// assert_eq!(EvacuationFinding::Deep.id(), "deep");
    /// assert_eq!(EvacuationFinding::from_id("deep"), Some(EvacuationFinding::Deep));
    /// assert_eq!(EvacuationFinding::from_code(1), Some(EvacuationFinding::Deep));
    /// ```
    EvacuationFinding[4] {
        Deep = 1, ["deep"], "Deep enough: far below the pressure at which water boils in the coldest part.";
        WaterBoils = 2, ["water-boils"], "Water boils and leaves, but the pressure is not yet that of a dry circuit: go on.";
        WaterStays = 3, ["water-stays"], "Water in the coldest part cannot boil at this pressure: it stays, however long the pump runs.";
        GaugeCannotTell = 4, ["gauge-cannot-tell"], "The gauge is too coarse to tell a deep vacuum from one that leaves the water: use an absolute vacuum gauge.";
    }
}

vocabulary! {
    /// What the rise of a held vacuum tells.
    ///
    /// ```
    /// use coldloop::HoldFinding;
    /// assert_eq!(HoldFinding::Tight.id(), "tight");
    /// assert_eq!(HoldFinding::from_id("tight"), Some(HoldFinding::Tight));
    /// assert_eq!(HoldFinding::from_code(1), Some(HoldFinding::Tight));
    /// ```
    HoldFinding[8] {
        Tight = 1, ["tight"], "The pressure held, or its rise settled within the limit and below that of a dry circuit: no leak shows at this pressure difference, and no moisture.";
        Leak = 2, ["leak"], "Rises steadily, or higher than water explains: air leaks in.";
        Moisture = 3, ["moisture"], "The rise levels off no higher than the vapour pressure of water: moisture, or refrigerant that leaves the oil. Keep evacuating.";
        RiseUnclear = 4, ["rise-unclear"], "The pressure rose, and these readings cannot tell a leak from moisture: hold longer and read several times.";
        TooShort = 5, ["too-short"], "Held too briefly to say that it is tight.";
        GaugeCannotTell = 6, ["gauge-cannot-tell"], "The gauge is too coarse to see the rise that matters.";
        Falling = 7, ["falling"], "The pressure fell: the pump is not shut off from the circuit, or a part cools. Shut it off and read again.";
        NotDeep = 8, ["not-deep"], "The pressure held, but it is too high for a dry circuit: keep evacuating before it is held again.";
    }
}

vocabulary! {
    /// What a circuit is filled with while its pressure is watched.
    ///
    /// ```
    /// use coldloop::TestGas;
    /// assert_eq!(TestGas::Nitrogen.id(), "nitrogen");
    /// assert_eq!(TestGas::from_id("nitrogen"), Some(TestGas::Nitrogen));
    /// assert_eq!(TestGas::from_code(1), Some(TestGas::Nitrogen));
    /// ```
    TestGas[2] {
        Nitrogen = 1, ["nitrogen"], "Dry nitrogen.";
        Refrigerant = 2, ["refrigerant"], "Vapour of the refrigerant of the system.";
    }
}

vocabulary! {
    /// What the decay of a test pressure tells.
    ///
    /// ```
    /// use coldloop::LeakFinding;
    /// assert_eq!(LeakFinding::Tight.id(), "tight");
    /// assert_eq!(LeakFinding::from_id("tight"), Some(LeakFinding::Tight));
    /// assert_eq!(LeakFinding::from_code(1), Some(LeakFinding::Tight));
    /// ```
    LeakFinding[6] {
        Tight = 1, ["tight"], "The loss is certainly below the allowed one.";
        Leaks = 2, ["leaks"], "Gas was lost beyond doubt: the circuit leaks.";
        NoLossSeen = 3, ["no-loss-seen"], "No loss was seen; a loss too small for this test would not show.";
        LiquidPresent = 4, ["liquid-present"], "Liquid is or may be present: its pressure tells the temperature, not how much was lost.";
        GasGained = 5, ["gas-gained"], "More gas at the end than at the start: a valve leaks, or a temperature or pressure was misread.";
        LimitUnclear = 6, ["limit-unclear"], "These readings do not tell whether the loss is above or below the allowed one: hold longer, or measure better.";
    }
}

vocabulary! {
    /// What the masses of a service tell of the charge now in the vehicle.
    ///
    /// ```
    /// use coldloop::ChargeFinding;
    /// assert_eq!(ChargeFinding::Within.id(), "within");
    /// assert_eq!(ChargeFinding::from_id("within"), Some(ChargeFinding::Within));
    /// assert_eq!(ChargeFinding::from_code(1), Some(ChargeFinding::Within));
    /// ```
    ChargeFinding[4] {
        Within = 1, ["within"], "The charge is certainly within the tolerance of the label.";
        Under = 2, ["under"], "The charge is certainly less than the label allows.";
        Over = 3, ["over"], "The charge is certainly more than the label allows.";
        CannotTell = 4, ["cannot-tell"], "The masses are too uncertain to tell whether the charge is within the tolerance.";
    }
}

vocabulary! {
    /// What the readings before and after a repair tell together.
    ///
    /// ```
    /// use coldloop::RepairFinding;
    /// assert_eq!(RepairFinding::Proven.id(), "proven");
    /// assert_eq!(RepairFinding::from_id("proven"), Some(RepairFinding::Proven));
    /// assert_eq!(RepairFinding::from_code(1), Some(RepairFinding::Proven));
    /// ```
    RepairFinding[7] {
        Proven = 1, ["proven"], "Fault before, normal after: the repair is proven.";
        StillFaulty = 2, ["still-faulty"], "The earlier fault is still there: it explains the readings best.";
        AnotherFault = 3, ["another-fault"], "The earlier fault no longer shows; another does.";
        SoundBefore = 4, ["sound-before"], "Normal before and after: these readings do not show that anything was wrong.";
        CannotTell = 5, ["cannot-tell"], "The readings after the repair do not settle whether it helped.";
        Better = 6, ["better"], "Better: the fault is smaller; whether all of it is gone is open.";
        Worse = 7, ["worse"], "The earlier fault is still there and has grown.";
    }
}

vocabulary! {
    /// How the air at the vent falls after the start.
    ///
    /// ```
    /// use coldloop::PullDownFinding;
    /// assert_eq!(PullDownFinding::Reached.id(), "reached");
    /// assert_eq!(PullDownFinding::from_id("reached"), Some(PullDownFinding::Reached));
    /// assert_eq!(PullDownFinding::from_code(1), Some(PullDownFinding::Reached));
    /// ```
    PullDownFinding[6] {
        Reached = 1, ["reached"], "The vent reached its normal temperature.";
        Falling = 2, ["falling"], "The vent is still falling and may reach it: keep reading.";
        Stalled = 3, ["stalled"], "The vent levels off above its normal temperature.";
        Rising = 4, ["rising"], "The vent fell and rises again: frost on the evaporator, a clutch or fan that drops out, or an engine that heats up.";
        CannotTell = 5, ["cannot-tell"], "Too few readings, or taken too early, to tell.";
        Freezing = 6, ["freezing"], "The vent fell below the freezing point of water: ice closes the evaporator. Find out why nothing stops the compressor before that.";
    }
}

vocabulary! {
    /// What a proof of a repair rests on.
    ///
    /// ```
    /// use coldloop::ProofKind;
    /// assert_eq!(ProofKind::PressureTest.id(), "pressure-test");
    /// assert_eq!(ProofKind::from_id("pressure-test"), Some(ProofKind::PressureTest));
    /// assert_eq!(ProofKind::from_code(1), Some(ProofKind::PressureTest));
    /// ```
    ProofKind[7] {
        PressureTest = 1, ["pressure-test"], "A test pressure that was watched.";
        Evacuation = 2, ["evacuation"], "What the vacuum pump reached.";
        Hold = 3, ["hold"], "The vacuum that was held.";
        Charge = 4, ["charge"], "The masses.";
        PullDown = 5, ["pull-down"], "The vent after the start.";
        Repair = 6, ["repair"], "The readings before and after.";
        LeakSearch = 7, ["leak-search"], "Dye, detector or trace gas after the repair.";
    }
}

vocabulary! {
    /// What all proofs of a visit tell together: no more than the weakest of them.
    ///
    /// ```
    /// use coldloop::ClosingFinding;
    /// assert_eq!(ClosingFinding::Proven.id(), "proven");
    /// assert_eq!(ClosingFinding::from_id("proven"), Some(ClosingFinding::Proven));
    /// assert_eq!(ClosingFinding::from_code(1), Some(ClosingFinding::Proven));
    /// ```
    ClosingFinding[4] {
        Proven = 1, ["proven"], "All tests passed, and the repair is proven.";
        Better = 2, ["better"], "All tests passed, and the readings are better.";
        Open = 3, ["open"], "All tests passed; whether the repair helped is not yet shown.";
        Fails = 4, ["fails"], "One test failed: the vehicle is not ready.";
    }
}

vocabulary! {
    /// What a pressure at rest says of one refrigerant.
    ///
    /// ```
    /// use coldloop::PressureMatch;
    /// assert_eq!(PressureMatch::Agrees.id(), "agrees");
    /// assert_eq!(PressureMatch::from_id("agrees"), Some(PressureMatch::Agrees));
    /// assert_eq!(PressureMatch::from_code(1), Some(PressureMatch::Agrees));
    /// ```
    PressureMatch[3] {
        Agrees = 1, ["agrees"], "The charge can be this refrigerant, and nothing else.";
        TooHigh = 2, ["too-high"], "The pressure is higher: with this refrigerant there is gas that does not condense, or another refrigerant.";
        TooLow = 3, ["too-low"], "The pressure is lower: it is another refrigerant, or no liquid is left, or the temperatures had not evened out.";
    }
}

vocabulary! {
    /// Where a circuit at rest leaks.
    ///
    /// ```
    /// use coldloop::LeakPhase;
    /// assert_eq!(LeakPhase::Vapour.id(), "vapour");
    /// assert_eq!(LeakPhase::from_id("vapour"), Some(LeakPhase::Vapour));
    /// assert_eq!(LeakPhase::from_code(1), Some(LeakPhase::Vapour));
    /// ```
    LeakPhase[2] {
        Vapour = 1, ["vapour"], "Above the liquid: vapour escapes.";
        Liquid = 2, ["liquid"], "Below its surface: liquid escapes, and vapour when it is gone.";
    }
}

vocabulary! {
    /// What a log can hold; readings by the keys of a readings file.
    ///
    /// ```
    /// use coldloop::Channel;
    /// assert_eq!(Channel::LowSide.id(), "low_side");
    /// assert_eq!(Channel::from_id("low_side"), Some(Channel::LowSide));
    /// assert_eq!(Channel::from_code(1), Some(Channel::LowSide));
    /// ```
    Channel[13] {
        LowSide = 1, ["low_side"], "Low-side pressure, Pa.";
        HighSide = 2, ["high_side"], "High-side pressure, Pa.";
        Vent = 3, ["vent"], "Air at the centre vent, K.";
        Cabin = 4, ["cabin"], "Cabin air, K.";
        SuctionLine = 5, ["suction_line"], "Suction line at the compressor, K.";
        DischargeLine = 6, ["discharge_line"], "Discharge line at the compressor, K.";
        LiquidLine = 7, ["liquid_line"], "Liquid line before the expansion device, K.";
        CondenserOutlet = 8, ["condenser_outlet"], "Line at the condenser outlet, K.";
        HighSideTransducer = 9, ["high_side_transducer"], "The vehicle's own high-side transducer, Pa.";
        EvaporatorSensor = 10, ["evaporator_sensor"], "The vehicle's own sensor at the evaporator, K.";
        EngineSpeed = 11, ["engine_speed"], "Engine speed, revolutions per second.";
        CompressorSpeed = 12, ["compressor_speed"], "Speed of the compressor itself, revolutions per second.";
        Clutch = 13, ["clutch"], "Clutch: 1 engaged, 0 released.";
    }
}

vocabulary! {
    /// In what state the last part of a log is.
    ///
    /// ```
    /// use coldloop::LogPhase;
    /// assert_eq!(LogPhase::Empty.id(), "empty");
    /// assert_eq!(LogPhase::from_id("empty"), Some(LogPhase::Empty));
    /// assert_eq!(LogPhase::from_code(1), Some(LogPhase::Empty));
    /// ```
    LogPhase[6] {
        Empty = 1, ["empty"], "Too little was logged to tell.";
        Settling = 2, ["settling"], "Readings still move towards where they settle.";
        Settled = 3, ["settled"], "The readings stand still but for noise.";
        Cycling = 4, ["cycling"], "The clutch cycles, and its cycles repeat.";
        Irregular = 5, ["irregular"], "The readings swing without a clutch that explains it, and do not repeat.";
        AtRest = 6, ["at-rest"], "The compressor stands still.";
    }
}

vocabulary! {
    /// What of a log was refused, ignored or doubted; each is counted.
    ///
    /// ```
    /// use coldloop::LogNote;
    /// assert_eq!(LogNote::TimeNotFinite.id(), "time-not-finite");
    /// assert_eq!(LogNote::from_id("time-not-finite"), Some(LogNote::TimeNotFinite));
    /// assert_eq!(LogNote::from_code(1), Some(LogNote::TimeNotFinite));
    /// ```
    LogNote[12] {
        TimeNotFinite = 1, ["time-not-finite"], "A sample without a finite time, refused.";
        TooLate = 2, ["too-late"], "A sample more than 30 s older than the newest, refused.";
        ClockJumped = 3, ["clock-jumped"], "The clock jumped: what follows counts as a new stretch of the log.";
        NotFinite = 4, ["not-finite"], "An infinite value, refused.";
        OutOfRange = 5, ["out-of-range"], "A value that the quantity cannot have, refused.";
        RepeatedTime = 6, ["repeated-time"], "A sample with the time of the one before it, averaged with it.";
        Dropout = 7, ["dropout"], "A second without a value of a channel that had one before.";
        Gap = 8, ["gap"], "A second without any sample.";
        Spike = 9, ["spike"], "A value far from both its neighbours, ignored.";
        Stuck = 10, ["stuck"], "A second in which a channel repeated the same value for more than a minute while others moved; ignored.";
        UnitStep = 11, ["unit-step"], "A second in which a channel stood in another unit than before; ignored.";
        Drift = 12, ["drift"], "A pressure or the vent of a state that is judged, which still drifted at its end; its uncertainty covers that.";
    }
}

vocabulary! {
    /// How a reading lies to what is normal here today, by standard deviations from the median.
    ///
    /// ```
    /// use coldloop::Standing;
    /// assert_eq!(Standing::FarTooLow.id(), "far-too-low");
    /// assert_eq!(Standing::from_id("far-too-low"), Some(Standing::FarTooLow));
    /// assert_eq!(Standing::from_code(1), Some(Standing::FarTooLow));
    /// ```
    Standing[7] {
        FarTooLow = 1, ["far-too-low"], "More than 3 standard deviations below the median.";
        TooLow = 2, ["too-low"], "Below the 95 % band.";
        RatherLow = 3, ["rather-low"], "Below the 80 % band.";
        Normal = 4, ["normal"], "Within the 80 % band.";
        RatherHigh = 5, ["rather-high"], "Above the 80 % band.";
        TooHigh = 6, ["too-high"], "Above the 95 % band.";
        FarTooHigh = 7, ["far-too-high"], "More than 3 standard deviations above the median.";
    }
}

vocabulary! {
    /// How strongly a piece of evidence speaks, by the factor that it changes the odds by.
    ///
    /// ```
    /// use coldloop::Strength;
    /// assert_eq!(Strength::Hardly.id(), "hardly");
    /// assert_eq!(Strength::from_id("hardly"), Some(Strength::Hardly));
    /// assert_eq!(Strength::from_code(1), Some(Strength::Hardly));
    /// ```
    Strength[4] {
        Hardly = 1, ["hardly"], "A factor below 1.2.";
        Slightly = 2, ["slightly"], "A factor of 1.2 to 3.";
        Clearly = 3, ["clearly"], "A factor of 3 to 10.";
        Strongly = 4, ["strongly"], "A factor above 10.";
    }
}

vocabulary! {
    /// The language of a page.
    ///
    /// ```
    /// use coldloop::Language;
    /// assert_eq!(Language::English.id(), "en");
    /// assert_eq!(Language::from_id("en"), Some(Language::English));
    /// assert_eq!(Language::from_code(1), Some(Language::English));
    /// ```
    Language[2] {
        English = 1, ["en"], "English.";
        Spanish = 2, ["es"], "Spanish.";
    }
}

vocabulary! {
    /// A drawing of what a visit tells.
    ///
    /// ```
    /// use coldloop::Picture;
    /// assert_eq!(Picture::Readings.id(), "readings");
    /// assert_eq!(Picture::from_id("readings"), Some(Picture::Readings));
    /// assert_eq!(Picture::from_code(1), Some(Picture::Readings));
    /// ```
    Picture[7] {
        Readings = 1, ["readings"], "The readings in the ranges that are normal.";
        Odds = 2, ["odds"], "The likeliest explanations as bars.";
        Plan = 3, ["plan"], "The first steps of the plan as a tree.";
        Cycle = 4, ["cycle"], "The cycle on axes of pressure and enthalpy.";
        PullDown = 5, ["pull-down"], "The vent after the start.";
        Hold = 6, ["hold"], "The vacuum that was held.";
        PressureTest = 7, ["pressure-test"], "The test pressure that was watched.";
    }
}
