//! The parameters of the vehicle model: typical values by class, and their spreads.
//!
//! Generated from tables/vehicle/hardware.toml by tables/compile; edit the table, not this file.

use crate::names::VehicleClass;

/// The hardware of one vehicle A/C.
///
/// ```
/// use coldloop::VehicleClass;
/// use coldloop::vehicle::Hardware;
/// let (van, bus) = (Hardware::typical(VehicleClass::Van), Hardware::typical(VehicleClass::Bus));
/// assert!(van.displacement_m3 < bus.displacement_m3);
/// assert_eq!(Hardware::from_values(van.values()), van);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hardware {
    /// Swept volume per revolution of a belt-driven compressor, m3.
    ///
    /// Source: engineering judgement; @Darr1992 measured a 169 cm3 automotive compressor.
    pub displacement_m3: f64,
    /// Swept volume per revolution of a motor-driven compressor, m3.
    ///
    /// Source: engineering judgement: common sizes of scroll machines, from memory.
    pub electric_displacement_m3: f64,
    /// Compressor revolutions per engine revolution.
    ///
    /// Source: engineering judgement: common practice.
    pub pulley_ratio: f64,
    /// Highest speed of a motor-driven compressor, revolutions per second.
    ///
    /// Source: engineering judgement: about 8,000 rpm, from memory.
    pub electric_speed_hz: f64,
    /// Clearance volume per swept volume of a piston compressor.
    ///
    /// Source: engineering judgement: textbook range 0.03 to 0.06.
    pub clearance: f64,
    /// Volumetric efficiency of this machine per that of the correlation.
    ///
    /// Source: engineering judgement: scatter between machines.
    pub volumetric_factor: f64,
    /// Isentropic efficiency of this machine per that of the correlation.
    ///
    /// Source: engineering judgement: scatter between machines.
    pub isentropic_factor: f64,
    /// Part of the shaft power that leaves the compressor as heat to the surroundings.
    ///
    /// Source: engineering judgement.
    pub shell_loss: f64,
    /// Fall of the compressor's efficiencies with its speed, per that of the correlation.
    ///
    /// Source: engineering judgement: scatter between makes.
    pub speed_loss: f64,
    /// Smallest displacement of a variable compressor per its largest.
    ///
    /// Source: engineering judgement: common practice, 2 to 8 %.
    pub least_stroke: f64,
    /// Smallest speed of a motor-driven compressor per its largest.
    ///
    /// Source: engineering judgement: about 1,000 of 8,000 rpm, from memory.
    pub least_speed: f64,
    /// Low-side pressure at which the cycling switch opens the clutch, Pa gauge.
    ///
    /// Source: engineering judgement: common practice, no source: 22 to 26 psig.
    pub switch_opens_pa: f64,
    /// Low-side pressure above that at which the cycling switch closes the clutch again, Pa.
    ///
    /// Source: engineering judgement: common practice, no source: closes at 42 to 47 psig.
    pub switch_band_pa: f64,
    /// Fin temperature at which an evaporator thermostat opens the clutch, K.
    ///
    /// Source: engineering judgement: common practice, just above freezing.
    pub thermostat_opens_k: f64,
    /// Fin temperature above that at which the thermostat closes the clutch again, K.
    ///
    /// Source: engineering judgement: common practice.
    pub thermostat_band_k: f64,
    /// Suction pressure that an internally controlled compressor holds at a discharge pressure of 1 MPa, Pa absolute.
    ///
    /// Source: from memory, a single case, one maker's chart: 180-206 kPa gauge at 21 C.
    pub internal_set_pa: f64,
    /// Fall of that set pressure per rise of the discharge pressure.
    ///
    /// Source: from memory, a single case, one maker's chart: 180-206 to 159-186 kPa gauge from 21 to 38 C.
    pub internal_slope: f64,
    /// Suction pressure that an externally controlled compressor holds at full demand, Pa absolute.
    ///
    /// Source: common practice, no source: about 2 bar gauge while within capacity.
    pub external_set_pa: f64,
    /// Temperature of the air leaving the evaporator that the speed control of a motor-driven compressor holds, K.
    ///
    /// Source: engineering judgement: common practice, 3 to 6 C.
    pub electric_set_k: f64,
    /// High-side pressure at which protection reduces or stops the compressor, Pa gauge.
    ///
    /// Source: engineering judgement: common practice, no source: 27 to 32 bar.
    pub high_limit_pa: f64,
    /// Low-side pressure at which protection stops the compressor, Pa gauge; below any vacuum where there is none or it is bridged.
    ///
    /// Source: engineering judgement: usual is none on the low side; set by the make.
    pub low_cutout_pa: f64,
    /// High-side pressure without which a switch does not let the compressor start, Pa gauge; below any vacuum where there is none or it is bridged.
    ///
    /// Source: from memory: makers' dual pressure switches open at 1.1 to 2.0 bar.
    pub start_pa: f64,
    /// Face area of the condenser, m2.
    ///
    /// Source: engineering judgement: common sizes.
    pub condenser_face_m2: f64,
    /// Face velocity of the air that the condenser fan alone moves at its highest speed, m/s.
    ///
    /// Source: engineering judgement: 1,500 to 2,000 m3/h through a car's condenser.
    pub fan_velocity_m_s: f64,
    /// Speed of the condenser fan while the high side is low, per its highest; 1 where it has one speed only.
    ///
    /// Source: from memory, makers' service texts: two fans in series at half speed; a basic speed of 40 %; a duty of 30 %; a fan that rests and cycles. Of these the lower half: with 0.45 the high side stood a fifth to a quarter under published charts at 20 C.
    pub fan_slow: f64,
    /// High-side pressure from which the condenser fan speeds up, Pa gauge.
    ///
    /// Source: from memory, makers' service texts: slow again below 9.3, 12.5 and 14 bar; from 12 bar; stepless from 16 bar.
    pub fan_rises_pa: f64,
    /// Pressure above that at which the condenser fan runs at its highest speed, Pa.
    ///
    /// Source: from memory, makers' service texts: fast above 14.7, 15.2, 15.5, 16.5, 17 and 20 bar.
    pub fan_rise_pa: f64,
    /// Engine speed at which a fan that the engine drives moves its full flow, revolutions per second.
    ///
    /// Source: engineering judgement: 1,800 rpm; the coupling slips beyond.
    pub fan_engine_hz: f64,
    /// Face velocity that the vehicle's speed alone gives, per that speed.
    ///
    /// Source: from memory: cooling air passes a core at 0.1 to 0.2 of the road speed; condensing 19 to 22 K above ambient under ram air (one maker's page, a single case).
    pub ram_velocity_ratio: f64,
    /// Part of the condenser's air at a standstill that comes back from behind it.
    ///
    /// Source: @Song2015: at idle the air before the condenser is up to 18 C above ambient; here 4 K in the middle and 17 K at the far end.
    pub hot_air_return: f64,
    /// Air-side conductance of the condenser per face area at a face velocity of 2.5 m/s and 1.15 kg/m3, W/(m2 K).
    ///
    /// Source: engineering judgement: about 1.9 transfer units of a louvred-fin core 16 to 20 mm deep.
    pub condenser_air_w_m2_k: f64,
    /// Condensing conductance inside the tubes per face area at a flow of 0.18 kg/s per m2 of face, W/(m2 K).
    ///
    /// Source: engineering judgement: small-channel condensation of about 3 kW/(m2 K).
    pub condenser_refrigerant_w_m2_k: f64,
    /// Conductance of single-phase refrigerant in the tubes per that of condensing refrigerant.
    ///
    /// Source: engineering judgement: Dittus-Boelter against Shah 1979 at these flows.
    pub condenser_gas_ratio: f64,
    /// Inner volume of condenser tubes and headers, m3.
    ///
    /// Source: engineering judgement: parallel-flow cores; a car's has 36 tubes of 0.6 m with 12 mm2 of ports (0.26 L) and two headers of 18 mm (0.2 L).
    pub condenser_volume_m3: f64,
    /// Frictional pressure drop of the condenser at the reference flow, Pa.
    ///
    /// Source: engineering judgement.
    pub condenser_drop_pa: f64,
    /// Part of the condenser's face that follows an integrated receiver; zero where the receiver is separate.
    ///
    /// Source: set by the vehicle, not drawn.
    pub subcooler_share: f64,
    /// Refrigerant flow to which the pressure drops and conductances refer, kg/s.
    ///
    /// Source: definition.
    pub reference_flow_kg_s: f64,
    /// Pressure drop of the discharge line at the reference flow and 60 kg/m3, Pa.
    ///
    /// Source: engineering judgement.
    pub discharge_drop_pa: f64,
    /// Pressure drop of the liquid line and drier at the reference flow and 1,100 kg/m3, Pa.
    ///
    /// Source: engineering judgement.
    pub liquid_drop_pa: f64,
    /// Pressure drop of the suction line at the reference flow and 13 kg/m3, Pa.
    ///
    /// Source: engineering judgement.
    pub suction_drop_pa: f64,
    /// Conductance between the engine bay and the suction line, W/K.
    ///
    /// Source: engineering judgement.
    pub suction_gain_w_k: f64,
    /// Temperature of the engine bay above ambient, K.
    ///
    /// Source: engineering judgement.
    pub bay_rise_k: f64,
    /// Part of the difference between the air of the engine bay and the pipe that a clamp on a line takes up.
    ///
    /// Source: engineering judgement: a clamp without insulation in a hot bay reads 1 to 3 K off.
    pub clamp_pull: f64,
    /// Volume of the discharge side up to the condenser, m3.
    ///
    /// Source: engineering judgement.
    pub discharge_volume_m3: f64,
    /// Volume of the liquid line, m3.
    ///
    /// Source: engineering judgement.
    pub liquid_volume_m3: f64,
    /// Volume of the suction side from the evaporator, m3.
    ///
    /// Source: engineering judgement.
    pub suction_volume_m3: f64,
    /// Volume of the receiver-drier that liquid can fill, m3.
    ///
    /// Source: engineering judgement: the high side stays flat down to about a fifth of the charge missing (a trade association's charge curve of a valve car, 7 to 21 % short); desiccant taken off.
    pub receiver_volume_m3: f64,
    /// Volume of the suction accumulator that liquid can fill, m3.
    ///
    /// Source: engineering judgement: a car with an orifice tube 25 % short reads nearly as before (a trade association's test), and shows it from a third on.
    pub accumulator_volume_m3: f64,
    /// Liquid in the flow that leaves a full accumulator, mass fraction: what its oil bleed hole passes.
    ///
    /// Source: engineering judgement: a hole of 1 mm in a pool of oil and liquid; superheat at the port 0 to 6 K with what the bay adds.
    pub accumulator_bleed: f64,
    /// Effectiveness of an internal heat exchanger on its vapour side; zero where there is none.
    ///
    /// Source: set by the vehicle, not drawn.
    pub exchanger: f64,
    /// Effective flow area of a fully open expansion valve, m2.
    ///
    /// Source: engineering judgement: a car's valve is rated 1.5 to 2 tons at a pressure drop of 4.1 bar (AHRI 750, from memory); 1.5 tons with a quarter of reserve.
    pub valve_area_m2: f64,
    /// Superheat at which an expansion valve begins to open at 0 C, K.
    ///
    /// Source: engineering judgement: common practice, 5 to 15 F at the evaporator outlet when feeding.
    pub valve_superheat_k: f64,
    /// Further superheat at 0 C that opens an expansion valve fully, K.
    ///
    /// Source: engineering judgement.
    pub valve_stroke_k: f64,
    /// Evaporator pressure above which the valve's charge no longer opens it, Pa absolute.
    ///
    /// Source: engineering judgement: maximum operating pressure of common valves.
    pub valve_limit_pa: f64,
    /// Flow through a closed expansion valve per its full flow.
    ///
    /// Source: engineering judgement: bleed notch and seat leakage.
    pub valve_bleed: f64,
    /// Bore of the orifice tube, m.
    ///
    /// Source: engineering judgement: common bores from 1.2 to 1.8 mm, from memory; a bus is a bundle; a twentieth above that for the coefficient of discharge, which leaves 5 to 11 K of subcooling at 30 to 40 °C (common practice).
    pub orifice_diameter_m: f64,
    /// Length of the orifice tube (of each, in a bundle) per its bore.
    ///
    /// Source: definition: the most that the correlation of the flow was measured at (25.4 mm of 1.1 mm bore); tubes of vehicles, some 38 mm long by common practice (no source), have 21 to 26, of which it makes 1 % of flow.
    pub orifice_slenderness: f64,
    /// Air that the blower moves over the evaporator at its highest setting, m3/s.
    ///
    /// Source: engineering judgement: 380 to 500 m3/h in cars.
    pub blower_m3_s: f64,
    /// Air-side conductance of the evaporator at an air flow of its highest blower setting, W/K.
    ///
    /// Source: engineering judgement: about 2.4 transfer units.
    pub evaporator_air_w_k: f64,
    /// Boiling conductance inside the evaporator at the reference flow, W/K.
    ///
    /// Source: engineering judgement.
    pub evaporator_refrigerant_w_k: f64,
    /// Conductance of superheated vapour in the evaporator per that of boiling refrigerant.
    ///
    /// Source: engineering judgement: Dittus-Boelter against Shah 1982 at these flows.
    pub evaporator_gas_ratio: f64,
    /// Pressure drop of the evaporator at the reference flow and a mean density of 20 kg/m3, Pa.
    ///
    /// Source: engineering judgement.
    pub evaporator_drop_pa: f64,
    /// Inner volume of the evaporator, m3.
    ///
    /// Source: engineering judgement.
    pub evaporator_volume_m3: f64,
    /// Heat capacity of the evaporator's metal and the water on it, J/K.
    ///
    /// Source: engineering judgement: 1.3 to 1.8 kg of aluminium.
    pub evaporator_heat_j_k: f64,
    /// Conductance between the cabin and the outside, W/K.
    ///
    /// Source: engineering judgement.
    pub cabin_w_k: f64,
    /// Heat of sun, people and machinery in the cabin, W.
    ///
    /// Source: engineering judgement.
    pub cabin_load_w: f64,
    /// Water that the people in the cabin give to its air, kg/s.
    ///
    /// Source: ASHRAE Fundamentals, seated light activity: about 50 W latent a person, from memory.
    pub cabin_moisture_kg_s: f64,
    /// Part of outside air in the intake when air is recirculated.
    ///
    /// Source: engineering judgement.
    pub fresh_share: f64,
    /// Part of the air that passes the heater core although the temperature door is at cold.
    ///
    /// Source: engineering judgement.
    pub heater_leak: f64,
    /// Temperature of the air that leaves the heater core, K.
    ///
    /// Source: engineering judgement: coolant at 90 C.
    pub heater_k: f64,
    /// Part of the difference to the dashboard's temperature that the air takes up in the ducts.
    ///
    /// Source: engineering judgement.
    pub duct_gain: f64,
}

/// How a parameter varies: standard deviations of the value when `additive`, else of its natural logarithm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// Between makes.
    pub make: f64,
    /// Between the vehicles of one make.
    pub vehicle: f64,
    /// Whether the deviation is added to the typical value.
    pub additive: bool,
    /// Whether the parameter grows with the size of the system.
    pub extensive: bool,
}

/// What some makes and vehicles have and others have not.
///
/// ```
/// use coldloop::vehicle::{Options, Population, System};
/// use coldloop::{Compressor, Expansion, Refrigerant, VehicleClass};
/// let system = System::new(Refrigerant::R134a, Expansion::Txv, Compressor::FixedClutch);
/// let population = Population {
///     options: Options { fan_always: 1.0, ..Options::USUAL },
///     ..Population::usual(system, VehicleClass::Van)
/// };
/// assert!(population.vehicle(&[0.5; Population::UNIFORMS]).is_ok());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Options {
    /// Part of makes whose valve systems have the receiver built into the condenser.
    ///
    /// Source: engineering judgement.
    pub integrated_receiver: f64,
    /// Least and greatest part of the condenser's face that the subcooling pass of a built-in receiver takes.
    ///
    /// Source: engineering judgement.
    pub subcooler_share: [f64; 2],
    /// Part of makes whose R-1234yf systems have an internal heat exchanger.
    ///
    /// Source: engineering judgement.
    pub exchanger_new: f64,
    /// Part of makes whose other systems have an internal heat exchanger.
    ///
    /// Source: engineering judgement.
    pub exchanger_old: f64,
    /// Least and greatest effectiveness of an internal heat exchanger.
    ///
    /// Source: engineering judgement.
    pub exchanger: [f64; 2],
    /// Part of makes whose high-side port is behind the condenser.
    ///
    /// Source: engineering judgement.
    pub liquid_port: f64,
    /// Part of makes whose low-side port is at the evaporator or accumulator: with a valve, with an orifice tube.
    ///
    /// Source: engineering judgement.
    pub evaporator_port: [f64; 2],
    /// Part of makes whose clutch systems with a valve cycle on a low-side switch.
    ///
    /// Source: engineering judgement.
    pub valve_low_side_switch: f64,
    /// Part of makes whose clutch systems with a valve have no low limit at all.
    ///
    /// Source: engineering judgement.
    pub valve_no_low_limit: f64,
    /// Part of makes whose valves keep opening at any evaporator pressure.
    ///
    /// Source: engineering judgement: valves are sold with and without a maximum operating pressure.
    pub valve_unlimited: f64,
    /// Part of makes whose clutch compressors are of a rotary kind, without clearance volume but with leaks.
    ///
    /// Source: engineering judgement.
    pub rotary: f64,
    /// Part of makes whose condenser fan has one speed only.
    ///
    /// Source: engineering judgement.
    pub fan_always: f64,
    /// Part of makes whose belt-driven systems have a fan on the engine.
    ///
    /// Source: engineering judgement.
    pub fan_engine: f64,
    /// Of the others, the part whose fan follows the pressure steplessly and over a wide range.
    ///
    /// Source: engineering judgement; from memory, makers' service texts name steps at half speed as well as stepless drives.
    pub fan_stepless: f64,
    /// Part of makes with a switch or sensor that stops the compressor while the high side is low.
    ///
    /// Source: engineering judgement.
    pub start_switch: f64,
    /// Lowest and highest high-side pressure at which this switch stops the compressor, Pa gauge.
    ///
    /// Source: from memory: makers' dual pressure switches open at 1.1 to 2.0 bar.
    pub start_pa: [f64; 2],
    /// Part of makes whose valve systems have a low-side cut-out for protection.
    ///
    /// Source: engineering judgement.
    pub low_cut_out: f64,
    /// Lowest and highest pressure at which the low-side cut-out stops the compressor, Pa gauge.
    ///
    /// Source: engineering judgement.
    pub low_cut_out_pa: [f64; 2],
    /// Part of makes whose compressors wear by lost displacement instead of by leakage.
    ///
    /// Source: engineering judgement.
    pub worn_by_displacement: f64,
    /// Part of makes whose stuck valve shuts without a bleed.
    ///
    /// Source: engineering judgement.
    pub shut_without_bleed: f64,
    /// Part of makes that note a swinging needle while the clutch pulls.
    ///
    /// Source: engineering judgement.
    pub needle_engaged: f64,
    /// Part of makes that note the ends of the swing of a needle: low side lowest, high side highest.
    ///
    /// Source: engineering judgement; US Army TM 5-3805-291-23-1, table 1, reads the low side where the clutch opens.
    pub needle_ends: f64,
    /// Part of makes whose vent is read on the road, and the gauges at a standstill.
    ///
    /// Source: engineering judgement.
    pub vent_on_road: f64,
    /// Parts of lost condenser air that are a dead fan, a slow one, a blocked face; the rest is hot air taken in.
    ///
    /// Source: engineering judgement.
    pub condenser_causes: [f64; 3],
    /// Part of liquid-line restrictions that lie before the place where a clamp reads the line.
    ///
    /// Source: engineering judgement.
    pub restricted_before_clamp: f64,
    /// Part of faulty controls of variable and electric compressors that are stuck low; the rest is stuck high.
    ///
    /// Source: engineering judgement.
    pub control_stuck_low: f64,
    /// Part of vehicles with a second evaporator, by class.
    ///
    /// Source: engineering judgement.
    pub rear: [f64; 5],
    /// Least and greatest size of the second evaporator per that of the front one.
    ///
    /// Source: engineering judgement.
    pub rear_size: [f64; 2],
}

impl Options {
    /// What is usual.
    pub const USUAL: Self = Self {
        integrated_receiver: 0.5,
        subcooler_share: [0.1, 0.22],
        exchanger_new: 0.6,
        exchanger_old: 0.08,
        exchanger: [0.25, 0.55],
        liquid_port: 0.7,
        evaporator_port: [0.3, 0.6],
        valve_low_side_switch: 0.25,
        valve_no_low_limit: 0.05,
        valve_unlimited: 0.4,
        rotary: 0.3,
        fan_always: 0.1,
        fan_engine: 0.12,
        fan_stepless: 0.35,
        start_switch: 0.75,
        start_pa: [110000.0, 210000.0],
        low_cut_out: 0.1,
        low_cut_out_pa: [20000.0, 80000.0],
        worn_by_displacement: 0.4,
        shut_without_bleed: 0.5,
        needle_engaged: 0.35,
        needle_ends: 0.25,
        vent_on_road: 0.3,
        condenser_causes: [0.3, 0.22, 0.33],
        restricted_before_clamp: 0.7,
        control_stuck_low: 0.75,
        rear: [0.0, 0.0, 0.06, 0.35, 0.0],
        rear_size: [0.45, 0.9],
    };
}

impl Hardware {
    /// How many parameters there are.
    pub const COUNT: usize = 71;

    /// How each of them varies between makes and between vehicles, in the order of [`Hardware::values`].
    pub const SPREAD: [Spread; 71] = [
        Spread {
            make: 0.1,
            vehicle: 0.06,
            additive: false,
            extensive: true,
        }, // displacement_m3
        Spread {
            make: 0.12,
            vehicle: 0.06,
            additive: false,
            extensive: true,
        }, // electric_displacement_m3
        Spread {
            make: 0.06,
            vehicle: 0.06,
            additive: false,
            extensive: false,
        }, // pulley_ratio
        Spread {
            make: 0.08,
            vehicle: 0.04,
            additive: false,
            extensive: false,
        }, // electric_speed_hz
        Spread {
            make: 0.2,
            vehicle: 0.15,
            additive: false,
            extensive: false,
        }, // clearance
        Spread {
            make: 0.04,
            vehicle: 0.03,
            additive: false,
            extensive: false,
        }, // volumetric_factor
        Spread {
            make: 0.06,
            vehicle: 0.04,
            additive: false,
            extensive: false,
        }, // isentropic_factor
        Spread {
            make: 0.3,
            vehicle: 0.2,
            additive: false,
            extensive: false,
        }, // shell_loss
        Spread {
            make: 0.3,
            vehicle: 0.1,
            additive: false,
            extensive: false,
        }, // speed_loss
        Spread {
            make: 0.2,
            vehicle: 0.1,
            additive: false,
            extensive: false,
        }, // least_stroke
        Spread {
            make: 0.12,
            vehicle: 0.08,
            additive: false,
            extensive: false,
        }, // least_speed
        Spread {
            make: 0.06,
            vehicle: 0.035,
            additive: false,
            extensive: false,
        }, // switch_opens_pa
        Spread {
            make: 0.09,
            vehicle: 0.05,
            additive: false,
            extensive: false,
        }, // switch_band_pa
        Spread {
            make: 0.9,
            vehicle: 0.5,
            additive: true,
            extensive: false,
        }, // thermostat_opens_k
        Spread {
            make: 0.15,
            vehicle: 0.1,
            additive: false,
            extensive: false,
        }, // thermostat_band_k
        Spread {
            make: 0.06,
            vehicle: 0.025,
            additive: false,
            extensive: false,
        }, // internal_set_pa
        Spread {
            make: 0.25,
            vehicle: 0.15,
            additive: false,
            extensive: false,
        }, // internal_slope
        Spread {
            make: 0.06,
            vehicle: 0.03,
            additive: false,
            extensive: false,
        }, // external_set_pa
        Spread {
            make: 1.2,
            vehicle: 0.6,
            additive: true,
            extensive: false,
        }, // electric_set_k
        Spread {
            make: 0.05,
            vehicle: 0.02,
            additive: false,
            extensive: false,
        }, // high_limit_pa
        Spread {
            make: 0.0,
            vehicle: 0.0,
            additive: false,
            extensive: false,
        }, // low_cutout_pa
        Spread {
            make: 0.0,
            vehicle: 0.0,
            additive: false,
            extensive: false,
        }, // start_pa
        Spread {
            make: 0.08,
            vehicle: 0.05,
            additive: false,
            extensive: true,
        }, // condenser_face_m2
        Spread {
            make: 0.12,
            vehicle: 0.08,
            additive: false,
            extensive: false,
        }, // fan_velocity_m_s
        Spread {
            make: 0.25,
            vehicle: 0.2,
            additive: false,
            extensive: false,
        }, // fan_slow
        Spread {
            make: 0.1,
            vehicle: 0.06,
            additive: false,
            extensive: false,
        }, // fan_rises_pa
        Spread {
            make: 0.2,
            vehicle: 0.15,
            additive: false,
            extensive: false,
        }, // fan_rise_pa
        Spread {
            make: 0.15,
            vehicle: 0.1,
            additive: false,
            extensive: false,
        }, // fan_engine_hz
        Spread {
            make: 0.15,
            vehicle: 0.1,
            additive: false,
            extensive: false,
        }, // ram_velocity_ratio
        Spread {
            make: 0.3,
            vehicle: 0.12,
            additive: false,
            extensive: false,
        }, // hot_air_return
        Spread {
            make: 0.12,
            vehicle: 0.06,
            additive: false,
            extensive: false,
        }, // condenser_air_w_m2_k
        Spread {
            make: 0.15,
            vehicle: 0.08,
            additive: false,
            extensive: false,
        }, // condenser_refrigerant_w_m2_k
        Spread {
            make: 0.12,
            vehicle: 0.08,
            additive: false,
            extensive: false,
        }, // condenser_gas_ratio
        Spread {
            make: 0.15,
            vehicle: 0.07,
            additive: false,
            extensive: true,
        }, // condenser_volume_m3
        Spread {
            make: 0.3,
            vehicle: 0.15,
            additive: false,
            extensive: false,
        }, // condenser_drop_pa
        Spread {
            make: 0.0,
            vehicle: 0.0,
            additive: false,
            extensive: false,
        }, // subcooler_share
        Spread {
            make: 0.0,
            vehicle: 0.0,
            additive: false,
            extensive: true,
        }, // reference_flow_kg_s
        Spread {
            make: 0.3,
            vehicle: 0.2,
            additive: false,
            extensive: false,
        }, // discharge_drop_pa
        Spread {
            make: 0.3,
            vehicle: 0.2,
            additive: false,
            extensive: false,
        }, // liquid_drop_pa
        Spread {
            make: 0.3,
            vehicle: 0.15,
            additive: false,
            extensive: false,
        }, // suction_drop_pa
        Spread {
            make: 0.35,
            vehicle: 0.2,
            additive: false,
            extensive: true,
        }, // suction_gain_w_k
        Spread {
            make: 0.3,
            vehicle: 0.2,
            additive: false,
            extensive: false,
        }, // bay_rise_k
        Spread {
            make: 0.5,
            vehicle: 0.4,
            additive: false,
            extensive: false,
        }, // clamp_pull
        Spread {
            make: 0.2,
            vehicle: 0.1,
            additive: false,
            extensive: true,
        }, // discharge_volume_m3
        Spread {
            make: 0.2,
            vehicle: 0.1,
            additive: false,
            extensive: true,
        }, // liquid_volume_m3
        Spread {
            make: 0.2,
            vehicle: 0.1,
            additive: false,
            extensive: true,
        }, // suction_volume_m3
        Spread {
            make: 0.15,
            vehicle: 0.08,
            additive: false,
            extensive: true,
        }, // receiver_volume_m3
        Spread {
            make: 0.15,
            vehicle: 0.08,
            additive: false,
            extensive: true,
        }, // accumulator_volume_m3
        Spread {
            make: 0.3,
            vehicle: 0.25,
            additive: false,
            extensive: false,
        }, // accumulator_bleed
        Spread {
            make: 0.0,
            vehicle: 0.0,
            additive: false,
            extensive: false,
        }, // exchanger
        Spread {
            make: 0.14,
            vehicle: 0.06,
            additive: false,
            extensive: true,
        }, // valve_area_m2
        Spread {
            make: 0.3,
            vehicle: 0.15,
            additive: false,
            extensive: false,
        }, // valve_superheat_k
        Spread {
            make: 0.2,
            vehicle: 0.1,
            additive: false,
            extensive: false,
        }, // valve_stroke_k
        Spread {
            make: 0.08,
            vehicle: 0.04,
            additive: false,
            extensive: false,
        }, // valve_limit_pa
        Spread {
            make: 0.4,
            vehicle: 0.2,
            additive: false,
            extensive: false,
        }, // valve_bleed
        Spread {
            make: 0.03,
            vehicle: 0.012,
            additive: false,
            extensive: false,
        }, // orifice_diameter_m
        Spread {
            make: 0.0,
            vehicle: 0.0,
            additive: false,
            extensive: false,
        }, // orifice_slenderness
        Spread {
            make: 0.1,
            vehicle: 0.05,
            additive: false,
            extensive: true,
        }, // blower_m3_s
        Spread {
            make: 0.12,
            vehicle: 0.06,
            additive: false,
            extensive: true,
        }, // evaporator_air_w_k
        Spread {
            make: 0.15,
            vehicle: 0.08,
            additive: false,
            extensive: true,
        }, // evaporator_refrigerant_w_k
        Spread {
            make: 0.12,
            vehicle: 0.08,
            additive: false,
            extensive: false,
        }, // evaporator_gas_ratio
        Spread {
            make: 0.25,
            vehicle: 0.15,
            additive: false,
            extensive: false,
        }, // evaporator_drop_pa
        Spread {
            make: 0.12,
            vehicle: 0.07,
            additive: false,
            extensive: true,
        }, // evaporator_volume_m3
        Spread {
            make: 0.15,
            vehicle: 0.08,
            additive: false,
            extensive: true,
        }, // evaporator_heat_j_k
        Spread {
            make: 0.1,
            vehicle: 0.1,
            additive: false,
            extensive: true,
        }, // cabin_w_k
        Spread {
            make: 0.15,
            vehicle: 0.25,
            additive: false,
            extensive: true,
        }, // cabin_load_w
        Spread {
            make: 0.0,
            vehicle: 0.3,
            additive: false,
            extensive: false,
        }, // cabin_moisture_kg_s
        Spread {
            make: 0.25,
            vehicle: 0.2,
            additive: false,
            extensive: false,
        }, // fresh_share
        Spread {
            make: 0.4,
            vehicle: 0.4,
            additive: false,
            extensive: false,
        }, // heater_leak
        Spread {
            make: 2.0,
            vehicle: 4.5,
            additive: true,
            extensive: false,
        }, // heater_k
        Spread {
            make: 0.25,
            vehicle: 0.2,
            additive: false,
            extensive: false,
        }, // duct_gain
    ];

    /// How the size varies that all extensive parameters share.
    pub const SIZE: Spread = Spread {
        make: 0.06,
        vehicle: 0.09,
        additive: false,
        extensive: true,
    };

    /// What is typical of a class of vehicle.
    pub const fn typical(class: VehicleClass) -> Self {
        Self::from_values(match class {
            VehicleClass::SmallCar => [
                0.00011, 2.7e-5, 1.25, 130.0, 0.04, 1.0, 1.0, 0.1, 1.0, 0.05, 0.12, 165000.0, 140000.0, 274.15, 3.5,
                296000.0, 0.027, 301000.0, 277.15, 2850000.0, -200000.0, 196000.0, 0.2, 2.1, 0.35, 1130000.0, 400000.0,
                30.0, 0.15, 0.32, 4800.0, 15000.0, 0.22, 0.0005, 60000.0, 0.0, 0.034, 20000.0, 12000.0, 12000.0, 2.2,
                25.0, 0.03, 0.00015, 6e-5, 0.00035, 0.00013, 0.00031, 0.025, 0.0, 1.5e-6, 3.5, 6.0, 480000.0, 0.03,
                0.00153, 23.0, 0.105, 290.0, 850.0, 0.15, 15000.0, 0.00045, 1300.0, 45.0, 700.0, 3e-5, 0.12, 0.012,
                340.0, 0.035,
            ],
            VehicleClass::Car => [
                0.00015, 3.4e-5, 1.3, 130.0, 0.04, 1.0, 1.0, 0.1, 1.0, 0.05, 0.12, 165000.0, 140000.0, 274.15, 3.5,
                296000.0, 0.027, 301000.0, 277.15, 2850000.0, -200000.0, 196000.0, 0.24, 2.25, 0.35, 1130000.0,
                400000.0, 30.0, 0.15, 0.32, 4800.0, 15000.0, 0.22, 0.00065, 60000.0, 0.0, 0.043, 20000.0, 12000.0,
                12000.0, 2.5, 25.0, 0.03, 0.00018, 9e-5, 0.0004, 0.00017, 0.0004, 0.025, 0.0, 1.9e-6, 3.5, 6.0,
                480000.0, 0.03, 0.00166, 23.0, 0.125, 345.0, 1000.0, 0.15, 15000.0, 0.00055, 1500.0, 55.0, 800.0, 3e-5,
                0.12, 0.012, 340.0, 0.035,
            ],
            VehicleClass::LargeCar => [
                0.000175, 4e-5, 1.35, 130.0, 0.04, 1.0, 1.0, 0.1, 1.0, 0.05, 0.12, 165000.0, 140000.0, 274.15, 3.5,
                296000.0, 0.027, 301000.0, 277.15, 2850000.0, -200000.0, 196000.0, 0.28, 2.3, 0.35, 1130000.0,
                400000.0, 30.0, 0.15, 0.32, 4800.0, 15000.0, 0.22, 0.00079, 60000.0, 0.0, 0.051, 20000.0, 12000.0,
                12000.0, 3.0, 25.0, 0.03, 0.0002, 0.00011, 0.00045, 0.0002, 0.00046, 0.025, 0.0, 2.3e-6, 3.5, 6.0,
                480000.0, 0.03, 0.00177, 23.0, 0.14, 390.0, 1150.0, 0.15, 15000.0, 0.00062, 1700.0, 65.0, 1000.0, 4e-5,
                0.12, 0.012, 340.0, 0.035,
            ],
            VehicleClass::Van => [
                0.000215, 4.6e-5, 1.3, 130.0, 0.04, 1.0, 1.0, 0.1, 1.0, 0.05, 0.12, 165000.0, 140000.0, 274.15, 3.5,
                296000.0, 0.027, 301000.0, 277.15, 2850000.0, -200000.0, 196000.0, 0.32, 2.3, 0.35, 1130000.0,
                400000.0, 30.0, 0.14, 0.32, 4800.0, 15000.0, 0.22, 0.001, 60000.0, 0.0, 0.062, 20000.0, 12000.0,
                12000.0, 3.5, 20.0, 0.03, 0.00025, 0.0002, 0.0007, 0.00026, 0.00062, 0.025, 0.0, 2.6e-6, 3.5, 6.0,
                480000.0, 0.03, 0.0019, 23.0, 0.17, 480.0, 1400.0, 0.15, 15000.0, 0.00075, 2100.0, 95.0, 1400.0, 6e-5,
                0.12, 0.012, 340.0, 0.035,
            ],
            VehicleClass::Bus => [
                0.00065, 0.00017, 1.2, 130.0, 0.04, 1.0, 1.0, 0.1, 1.0, 0.05, 0.12, 165000.0, 140000.0, 274.15, 3.5,
                296000.0, 0.027, 301000.0, 277.15, 2850000.0, -200000.0, 196000.0, 1.1, 2.7, 0.35, 1130000.0, 400000.0,
                30.0, 0.05, 0.14, 4800.0, 15000.0, 0.22, 0.0054, 60000.0, 0.0, 0.22, 20000.0, 12000.0, 12000.0, 9.0,
                5.0, 0.03, 0.0015, 0.0018, 0.004, 0.00127, 0.0025, 0.025, 0.0, 1e-5, 3.5, 6.0, 480000.0, 0.03, 0.0036,
                23.0, 0.95, 2700.0, 8000.0, 0.15, 15000.0, 0.005, 12000.0, 500.0, 7000.0, 0.0004, 0.12, 0.012, 340.0,
                0.035,
            ],
        })
    }

    /// The parameters as one array, in the order of the fields.
    pub const fn values(&self) -> [f64; 71] {
        [
            self.displacement_m3,
            self.electric_displacement_m3,
            self.pulley_ratio,
            self.electric_speed_hz,
            self.clearance,
            self.volumetric_factor,
            self.isentropic_factor,
            self.shell_loss,
            self.speed_loss,
            self.least_stroke,
            self.least_speed,
            self.switch_opens_pa,
            self.switch_band_pa,
            self.thermostat_opens_k,
            self.thermostat_band_k,
            self.internal_set_pa,
            self.internal_slope,
            self.external_set_pa,
            self.electric_set_k,
            self.high_limit_pa,
            self.low_cutout_pa,
            self.start_pa,
            self.condenser_face_m2,
            self.fan_velocity_m_s,
            self.fan_slow,
            self.fan_rises_pa,
            self.fan_rise_pa,
            self.fan_engine_hz,
            self.ram_velocity_ratio,
            self.hot_air_return,
            self.condenser_air_w_m2_k,
            self.condenser_refrigerant_w_m2_k,
            self.condenser_gas_ratio,
            self.condenser_volume_m3,
            self.condenser_drop_pa,
            self.subcooler_share,
            self.reference_flow_kg_s,
            self.discharge_drop_pa,
            self.liquid_drop_pa,
            self.suction_drop_pa,
            self.suction_gain_w_k,
            self.bay_rise_k,
            self.clamp_pull,
            self.discharge_volume_m3,
            self.liquid_volume_m3,
            self.suction_volume_m3,
            self.receiver_volume_m3,
            self.accumulator_volume_m3,
            self.accumulator_bleed,
            self.exchanger,
            self.valve_area_m2,
            self.valve_superheat_k,
            self.valve_stroke_k,
            self.valve_limit_pa,
            self.valve_bleed,
            self.orifice_diameter_m,
            self.orifice_slenderness,
            self.blower_m3_s,
            self.evaporator_air_w_k,
            self.evaporator_refrigerant_w_k,
            self.evaporator_gas_ratio,
            self.evaporator_drop_pa,
            self.evaporator_volume_m3,
            self.evaporator_heat_j_k,
            self.cabin_w_k,
            self.cabin_load_w,
            self.cabin_moisture_kg_s,
            self.fresh_share,
            self.heater_leak,
            self.heater_k,
            self.duct_gain,
        ]
    }

    /// The parameters from one array, in the order of the fields.
    pub const fn from_values(values: [f64; 71]) -> Self {
        Self {
            displacement_m3: values[0],
            electric_displacement_m3: values[1],
            pulley_ratio: values[2],
            electric_speed_hz: values[3],
            clearance: values[4],
            volumetric_factor: values[5],
            isentropic_factor: values[6],
            shell_loss: values[7],
            speed_loss: values[8],
            least_stroke: values[9],
            least_speed: values[10],
            switch_opens_pa: values[11],
            switch_band_pa: values[12],
            thermostat_opens_k: values[13],
            thermostat_band_k: values[14],
            internal_set_pa: values[15],
            internal_slope: values[16],
            external_set_pa: values[17],
            electric_set_k: values[18],
            high_limit_pa: values[19],
            low_cutout_pa: values[20],
            start_pa: values[21],
            condenser_face_m2: values[22],
            fan_velocity_m_s: values[23],
            fan_slow: values[24],
            fan_rises_pa: values[25],
            fan_rise_pa: values[26],
            fan_engine_hz: values[27],
            ram_velocity_ratio: values[28],
            hot_air_return: values[29],
            condenser_air_w_m2_k: values[30],
            condenser_refrigerant_w_m2_k: values[31],
            condenser_gas_ratio: values[32],
            condenser_volume_m3: values[33],
            condenser_drop_pa: values[34],
            subcooler_share: values[35],
            reference_flow_kg_s: values[36],
            discharge_drop_pa: values[37],
            liquid_drop_pa: values[38],
            suction_drop_pa: values[39],
            suction_gain_w_k: values[40],
            bay_rise_k: values[41],
            clamp_pull: values[42],
            discharge_volume_m3: values[43],
            liquid_volume_m3: values[44],
            suction_volume_m3: values[45],
            receiver_volume_m3: values[46],
            accumulator_volume_m3: values[47],
            accumulator_bleed: values[48],
            exchanger: values[49],
            valve_area_m2: values[50],
            valve_superheat_k: values[51],
            valve_stroke_k: values[52],
            valve_limit_pa: values[53],
            valve_bleed: values[54],
            orifice_diameter_m: values[55],
            orifice_slenderness: values[56],
            blower_m3_s: values[57],
            evaporator_air_w_k: values[58],
            evaporator_refrigerant_w_k: values[59],
            evaporator_gas_ratio: values[60],
            evaporator_drop_pa: values[61],
            evaporator_volume_m3: values[62],
            evaporator_heat_j_k: values[63],
            cabin_w_k: values[64],
            cabin_load_w: values[65],
            cabin_moisture_kg_s: values[66],
            fresh_share: values[67],
            heater_leak: values[68],
            heater_k: values[69],
            duct_gain: values[70],
        }
    }
}
