/* The types of readings files and answers, made from their schemas. */

/**
 * A number with its unit, a pressure with its datum, too: 37 psig, 74 °F
 */
export type Quantity = string;
export type Air =
  | Quantity
  | {
      uncertainty?: Quantity;
      value: Quantity;
      within?: Quantity;
    };
export type Temperature =
  | Quantity
  | {
      thermometer?: "clamp-thermocouple" | "clamp-thermistor" | "pocket-dial" | "pocket-digital" | "infrared";
      uncertainty?: Quantity;
      value: Quantity;
      within?: Quantity;
    };
export type Pressure =
  | Quantity
  | {
      gauge?: "class-1.0" | "class-1.6" | "class-2.5" | "grade-A" | "grade-B" | "digital";
      uncertainty?: Quantity;
      value: Quantity;
      within?: Quantity;
    };

/**
 * A readings file of coldloop.
 */
export interface ReadingsFile {
  after?: {
    conditions: Conditions;
    observations?: Observations;
    readings?: Readings;
  };
  baseline?: {
    conditions: Conditions;
    readings: Readings;
  }[];
  charge?: {
    charged?:
      | string
      | {
          [k: string]: unknown;
        };
    evacuated?: boolean;
    hose?: {
      [k: string]: unknown;
    };
    left?: {
      [k: string]: unknown;
    };
    oil_added?:
      | string
      | {
          [k: string]: unknown;
        };
    oil_recovered?:
      | string
      | {
          [k: string]: unknown;
        };
    oil_weighed_in?: boolean;
    recovered?:
      | string
      | {
          [k: string]: unknown;
        };
    tolerance?:
      | string
      | {
          [k: string]: unknown;
        };
  };
  conditions: Conditions;
  evacuation?: {
    coldest?:
      | string
      | {
          [k: string]: unknown;
        };
    reached?:
      | string
      | {
          [k: string]: unknown;
        };
  };
  forgot?: boolean;
  format?: number;
  hold?: {
    allowed?:
      | string
      | {
          [k: string]: unknown;
        };
    samples?: {
      [k: string]: unknown;
    }[];
    volume?:
      | string
      | {
          [k: string]: unknown;
        };
    warmest?:
      | string
      | {
          [k: string]: unknown;
        };
  };
  meta?: {
    [k: string]: unknown;
  };
  observations?: Observations;
  pressure_table?: {
    altitude: Quantity;
    rows: {
      [k: string]: unknown;
    }[];
  };
  pressure_test?: {
    allowed?:
      | string
      | {
          [k: string]: unknown;
        };
    end?:
      | string
      | {
          [k: string]: unknown;
        };
    end_temperature?:
      | string
      | {
          [k: string]: unknown;
        };
    gas?: "nitrogen" | "refrigerant";
    held?:
      | string
      | {
          [k: string]: unknown;
        };
    label?:
      | string
      | {
          [k: string]: unknown;
        };
    repeatability?:
      | string
      | {
          [k: string]: unknown;
        };
    start?:
      | string
      | {
          [k: string]: unknown;
        };
    start_temperature?:
      | string
      | {
          [k: string]: unknown;
        };
    volume?:
      | string
      | {
          [k: string]: unknown;
        };
  };
  pull_down?: {
    samples?: {
      [k: string]: unknown;
    }[];
  };
  readings?: Readings;
  repairs?: Repairs;
  settings?: {
    counts?:
      | {
          [k: string]: unknown;
        }
      | string;
    details?: boolean;
    healthy?: number;
    held?: Held;
    language?: "en" | "es";
    least_information?: number;
    looks?: {
      [k: string]: unknown;
    };
    named?: number;
    next_checks?: boolean;
    none_of_these?: number;
    nothing_fits?: number;
    prices?: {
      [k: string]: unknown;
    };
    priors?: {
      [k: string]: unknown;
    };
    recovered?: boolean;
    short_list?: number;
    stakes?: {
      [k: string]: unknown;
    };
    two_faults?: number;
  };
  system: System;
  /**
   * @maxItems 16
   */
  undo?: {
    after?: boolean;
    conditions: Conditions;
    held?: Held;
    observations?: Observations;
    readings?: Readings;
    recovered?: boolean;
    repairs?: Repairs;
    step:
      | string
      | {
          [k: string]: unknown;
        };
  }[];
}
export interface Conditions {
  air_source?: "fresh" | "recirculated";
  altitude?: Quantity;
  ambient: Quantity;
  barometer?: Air;
  blower?: Quantity;
  commanded_displacement?: Quantity;
  compressor_running?: boolean;
  compressor_speed?: Quantity;
  engine_speed?: Quantity;
  fan_command?: Quantity;
  humidity?: Quantity;
  running?: Quantity;
  vehicle_speed?: Quantity;
}
export interface Observations {
  airflow_fades?: boolean;
  airflow_weak?: boolean;
  belt_slips?: boolean;
  closing_heater_cools_vent?: boolean;
  clutch_engaged?: boolean;
  clutch_has_voltage?: boolean;
  compressor_noisy?: boolean;
  condenser_face_blocked?: boolean;
  condenser_fan_running?: boolean;
  condenser_has_temperature_step?: boolean;
  condenser_tube_below_saturation?: boolean;
  control_signal_moves_pressures?: boolean;
  cooling_comes_and_goes?: boolean;
  cools_on_the_road?: boolean;
  detector_alarms?: boolean;
  drop_across_drier?: boolean;
  dye_glows?: boolean;
  evacuated_before_filling?: boolean;
  evaporator_frosted?: boolean;
  frost_at_expansion?: boolean;
  frost_on_suction_line?: boolean;
  hissing_at_expansion?: boolean;
  hub_locked?: boolean;
  hub_turns_freely?: boolean;
  identifier_shows_air?: boolean;
  identifier_shows_other?: boolean;
  low_side_follows_bulb?: boolean;
  oil_traces?: boolean;
  recently_filled?: boolean;
  recovered_above_label?: boolean;
  recovered_below_label?: boolean;
  rest_pressure_high?: boolean;
  rest_pressure_low?: boolean;
  second_gauges_agree?: boolean;
  sides_equalise_quickly?: boolean;
  sight_glass_bubbles?: boolean;
  speed_lowers_low_side?: boolean;
  suction_line_step?: boolean;
  test_pressure_holds?: boolean;
  trace_gas_escapes?: boolean;
  transducer_agrees?: boolean;
  vacuum_holds?: boolean;
  water_lowers_high_side?: boolean;
}
export interface Readings {
  cabin?: Temperature;
  clutch_cycles?: Air;
  condenser_outlet?: Temperature;
  discharge_line?: Temperature;
  evaporator_sensor?: Temperature;
  gauge_zero_altitude?: Quantity;
  gauge_zero_barometer?: Air;
  high_side?: Pressure;
  high_side_transducer?: Pressure;
  liquid_line?: Temperature;
  low_side?: Pressure;
  suction_line?: Temperature;
  vent?: Temperature;
}
export interface Repairs {
  done?: (
    | "no-fault"
    | "worn-compressor"
    | "undercharge"
    | "overcharge"
    | "condenser-airflow-loss"
    | "non-condensables"
    | "liquid-line-restriction"
    | "expansion-valve-stuck-open"
    | "expansion-valve-stuck-closed"
    | "orifice-restricted"
    | "evaporator-airflow-loss"
    | "evaporator-icing"
    | "moisture-icing"
    | "compressor-control-fault"
    | "clutch-not-engaged"
    | "clutch-slipping"
    | "heater-air-mixing"
    | "high-side-restriction"
    | "suction-line-restriction"
    | "wrong-refrigerant"
    | "gauge-error"
  )[];
  in_vain?: (
    | "no-fault"
    | "worn-compressor"
    | "undercharge"
    | "overcharge"
    | "condenser-airflow-loss"
    | "non-condensables"
    | "liquid-line-restriction"
    | "expansion-valve-stuck-open"
    | "expansion-valve-stuck-closed"
    | "orifice-restricted"
    | "evaporator-airflow-loss"
    | "evaporator-icing"
    | "moisture-icing"
    | "compressor-control-fault"
    | "clutch-not-engaged"
    | "clutch-slipping"
    | "heater-air-mixing"
    | "high-side-restriction"
    | "suction-line-restriction"
    | "wrong-refrigerant"
    | "gauge-error"
  )[];
}
export interface Held {
  check?:
    | "read-low-side"
    | "read-high-side"
    | "read-vent"
    | "read-suction-line"
    | "read-liquid-line"
    | "read-discharge-line"
    | "count-clutch-cycles"
    | "run-and-read"
    | "watch-clutch"
    | "measure-clutch-voltage"
    | "turn-hub"
    | "look-for-slip"
    | "listen-to-compressor"
    | "watch-condenser-fan"
    | "look-at-condenser-face"
    | "spray-condenser"
    | "feel-condenser-passes"
    | "clamp-condenser-middle"
    | "look-at-sight-glass"
    | "look-for-leaks"
    | "listen-at-expansion"
    | "drop-across-drier"
    | "look-at-expansion"
    | "look-at-suction-line"
    | "follow-suction-line"
    | "warm-and-chill-bulb"
    | "look-at-evaporator"
    | "watch-twenty-minutes"
    | "feel-airflow"
    | "close-heater"
    | "raise-engine-speed"
    | "drive-control"
    | "time-equalisation"
    | "read-rest-pressure"
    | "identify-refrigerant"
    | "recover-and-weigh"
    | "ask-history"
    | "compare-gauges"
    | "road-test"
    | "compare-transducer"
    | "search-with-nitrogen";
  hand_over?: boolean;
  repair?:
    | "no-fault"
    | "worn-compressor"
    | "undercharge"
    | "overcharge"
    | "condenser-airflow-loss"
    | "non-condensables"
    | "liquid-line-restriction"
    | "expansion-valve-stuck-open"
    | "expansion-valve-stuck-closed"
    | "orifice-restricted"
    | "evaporator-airflow-loss"
    | "evaporator-icing"
    | "moisture-icing"
    | "compressor-control-fault"
    | "clutch-not-engaged"
    | "clutch-slipping"
    | "heater-air-mixing"
    | "high-side-restriction"
    | "suction-line-restriction"
    | "wrong-refrigerant"
    | "gauge-error";
}
export interface System {
  compressor: "fixed-clutch" | "variable-internal" | "variable-external" | "electric";
  evaporators?: 1 | 2;
  expansion: "txv" | "orifice-tube";
  high_cut_out?: Quantity;
  high_port?: "discharge-line" | "liquid-line";
  low_port?: "evaporator" | "compressor";
  nominal_charge?: Quantity;
  refrigerant:
    | "R-134a"
    | "R-1234yf"
    | "R-744"
    | "R-152a"
    | "R-12"
    | "R-22"
    | "R-1234ze(E)"
    | "R-32"
    | "R-125"
    | "R-143a"
    | "R-290"
    | "R-600a"
    | "R-600"
    | "R-124"
    | "R-142b"
    | "R-115"
    | "R-218"
    | "R-227ea"
    | "R-13I1"
    | "R-601a"
    | "R-1336mzz(E)"
    | "R-1132(E)"
    | "R-404A"
    | "R-407A"
    | "R-407C"
    | "R-407F"
    | "R-410A"
    | "R-452A"
    | "R-448A"
    | "R-449A"
    | "R-454B"
    | "R-454C"
    | "R-455A"
    | "R-513A"
    | "R-450A"
    | "R-507A"
    | "R-422D"
    | "R-438A"
    | "R-401C"
    | "R-406A"
    | "R-409A"
    | "R-413A"
    | "R-414A"
    | "R-414B"
    | "R-416A"
    | "R-420A"
    | "R-426A"
    | "R-500"
    | "R-502"
    | "R-444A"
    | "R-445A"
    | "R-456A"
    | "R-457A"
    | "R-474A"
    | "R-516A"
    | "R-601"
    | "R-437A";
  sight_glass?: boolean;
}
/**
 * An answer of coldloop.
 */
export interface Answer {
  cautions: {
    caution:
      | "pressure"
      | "frostbite"
      | "moving-parts"
      | "flammable"
      | "high-voltage"
      | "no-venting"
      | "local-rules"
      | "ventilation"
      | "certification"
      | "test-pressure"
      | "carbon-dioxide"
      | "foreign-refrigerant"
      | "hot-parts"
      | "do-not-run"
      | "test-too-high"
      | "high-voltage-cables"
      | "exhaust"
      | "park-and-chock"
      | "hot-coolant"
      | "connect-stopped"
      | "hand-and-ice"
      | "right-oil"
      | "insulating-oil"
      | "release-slowly"
      | "high-side-near-limit";
    says: string;
  }[];
  coldloop: string;
  derived: {
    [k: string]: {
      [k: string]: number | null;
    } | null;
  };
  entry_error: {
    kind:
      | "swapped-hoses"
      | "kpa-typed-as-psi"
      | "psi-typed-as-kpa"
      | "absolute-typed-as-gauge"
      | "gauge-typed-as-absolute"
      | "zeroed-at-sea-level"
      | "low-gauge-off"
      | "high-gauge-off"
      | "both-gauges-off"
      | "vent-probe-aside"
      | "suction-probe-loose"
      | "liquid-probe-loose"
      | "discharge-probe-loose"
      | "low-hose-shut"
      | "high-hose-shut";
    probability: number;
    says: string;
  } | null;
  expected: {
    [k: string]: {
      deviation?: number | null;
      high_1?: number | null;
      high_hz?: number | null;
      high_k?: number | null;
      high_pa?: number | null;
      high_pa_gauge?: number | null;
      low_1?: number | null;
      low_hz?: number | null;
      low_k?: number | null;
      low_pa?: number | null;
      low_pa_gauge?: number | null;
      measured_1?: number | null;
      measured_hz?: number | null;
      measured_k?: number | null;
      measured_pa?: number | null;
      measured_pa_gauge?: number | null;
      median_1?: number | null;
      median_hz?: number | null;
      median_k?: number | null;
      median_pa?: number | null;
      median_pa_gauge?: number | null;
      standing?:
        ("far-too-low" | "too-low" | "rather-low" | "normal" | "rather-high" | "too-high" | "far-too-high") | null;
    };
  };
  expected_basis: ("own-table" | "own-readings" | "vehicle-model" | "sources") | null;
  faults: {
    against:
      | "no-fault"
      | "worn-compressor"
      | "undercharge"
      | "overcharge"
      | "condenser-airflow-loss"
      | "non-condensables"
      | "liquid-line-restriction"
      | "expansion-valve-stuck-open"
      | "expansion-valve-stuck-closed"
      | "orifice-restricted"
      | "evaporator-airflow-loss"
      | "evaporator-icing"
      | "moisture-icing"
      | "compressor-control-fault"
      | "clutch-not-engaged"
      | "clutch-slipping"
      | "heater-air-mixing"
      | "high-side-restriction"
      | "suction-line-restriction"
      | "wrong-refrigerant"
      | "gauge-error";
    because: {
      evidence:
        | "low_side"
        | "high_side"
        | "vent"
        | "superheat"
        | "subcooling"
        | "discharge_superheat"
        | "clutch_cycles"
        | "rest_pressure"
        | "clutch_engaged"
        | "clutch_has_voltage"
        | "hub_turns_freely"
        | "hub_locked"
        | "belt_slips"
        | "compressor_noisy"
        | "condenser_fan_running"
        | "condenser_face_blocked"
        | "water_lowers_high_side"
        | "condenser_has_temperature_step"
        | "condenser_tube_below_saturation"
        | "sight_glass_bubbles"
        | "oil_traces"
        | "hissing_at_expansion"
        | "drop_across_drier"
        | "frost_at_expansion"
        | "frost_on_suction_line"
        | "suction_line_step"
        | "low_side_follows_bulb"
        | "evaporator_frosted"
        | "airflow_fades"
        | "cooling_comes_and_goes"
        | "airflow_weak"
        | "closing_heater_cools_vent"
        | "speed_lowers_low_side"
        | "control_signal_moves_pressures"
        | "sides_equalise_quickly"
        | "rest_pressure_high"
        | "rest_pressure_low"
        | "identifier_shows_air"
        | "identifier_shows_other"
        | "recovered_below_label"
        | "recovered_above_label"
        | "recently_filled"
        | "second_gauges_agree"
        | "cools_on_the_road"
        | "transducer_agrees"
        | "dye_glows"
        | "detector_alarms"
        | "trace_gas_escapes"
        | "test_pressure_holds"
        | "vacuum_holds"
        | "evacuated_before_filling"
        | "prior";
      log_odds: number;
      says: string;
      seen: string | null;
      standing:
        ("far-too-low" | "too-low" | "rather-low" | "normal" | "rather-high" | "too-high" | "far-too-high") | null;
      strength: "hardly" | "slightly" | "clearly" | "strongly";
    }[];
    fault:
      | "no-fault"
      | "worn-compressor"
      | "undercharge"
      | "overcharge"
      | "condenser-airflow-loss"
      | "non-condensables"
      | "liquid-line-restriction"
      | "expansion-valve-stuck-open"
      | "expansion-valve-stuck-closed"
      | "orifice-restricted"
      | "evaporator-airflow-loss"
      | "evaporator-icing"
      | "moisture-icing"
      | "compressor-control-fault"
      | "clutch-not-engaged"
      | "clutch-slipping"
      | "heater-air-mixing"
      | "high-side-restriction"
      | "suction-line-restriction"
      | "wrong-refrigerant"
      | "gauge-error";
    probability: number;
    repair: {
      cautions: (
        | "pressure"
        | "frostbite"
        | "moving-parts"
        | "flammable"
        | "high-voltage"
        | "no-venting"
        | "local-rules"
        | "ventilation"
        | "certification"
        | "test-pressure"
        | "carbon-dioxide"
        | "foreign-refrigerant"
        | "hot-parts"
        | "do-not-run"
        | "test-too-high"
        | "high-voltage-cables"
        | "exhaust"
        | "park-and-chock"
        | "hot-coolant"
        | "connect-stopped"
        | "hand-and-ice"
        | "right-oil"
        | "insulating-oil"
        | "release-slowly"
        | "high-side-near-limit"
      )[];
      minutes: number;
      parts_in_minutes: number;
      recovers_charge: boolean;
      says: string;
    };
    severity: {
      high: number;
      low: number;
      measure: string;
    } | null;
  }[];
  format: 1;
  named: (
    | "no-fault"
    | "worn-compressor"
    | "undercharge"
    | "overcharge"
    | "condenser-airflow-loss"
    | "non-condensables"
    | "liquid-line-restriction"
    | "expansion-valve-stuck-open"
    | "expansion-valve-stuck-closed"
    | "orifice-restricted"
    | "evaporator-airflow-loss"
    | "evaporator-icing"
    | "moisture-icing"
    | "compressor-control-fault"
    | "clutch-not-engaged"
    | "clutch-slipping"
    | "heater-air-mixing"
    | "high-side-restriction"
    | "suction-line-restriction"
    | "wrong-refrigerant"
    | "gauge-error"
  )[];
  next_checks: {
    cautions: (
      | "pressure"
      | "frostbite"
      | "moving-parts"
      | "flammable"
      | "high-voltage"
      | "no-venting"
      | "local-rules"
      | "ventilation"
      | "certification"
      | "test-pressure"
      | "carbon-dioxide"
      | "foreign-refrigerant"
      | "hot-parts"
      | "do-not-run"
      | "test-too-high"
      | "high-voltage-cables"
      | "exhaust"
      | "park-and-chock"
      | "hot-coolant"
      | "connect-stopped"
      | "hand-and-ice"
      | "right-oil"
      | "insulating-oil"
      | "release-slowly"
      | "high-side-near-limit"
    )[];
    check:
      | "read-low-side"
      | "read-high-side"
      | "read-vent"
      | "read-suction-line"
      | "read-liquid-line"
      | "read-discharge-line"
      | "count-clutch-cycles"
      | "run-and-read"
      | "watch-clutch"
      | "measure-clutch-voltage"
      | "turn-hub"
      | "look-for-slip"
      | "listen-to-compressor"
      | "watch-condenser-fan"
      | "look-at-condenser-face"
      | "spray-condenser"
      | "feel-condenser-passes"
      | "clamp-condenser-middle"
      | "look-at-sight-glass"
      | "look-for-leaks"
      | "listen-at-expansion"
      | "drop-across-drier"
      | "look-at-expansion"
      | "look-at-suction-line"
      | "follow-suction-line"
      | "warm-and-chill-bulb"
      | "look-at-evaporator"
      | "watch-twenty-minutes"
      | "feel-airflow"
      | "close-heater"
      | "raise-engine-speed"
      | "drive-control"
      | "time-equalisation"
      | "read-rest-pressure"
      | "identify-refrigerant"
      | "recover-and-weigh"
      | "ask-history"
      | "compare-gauges"
      | "road-test"
      | "compare-transducer"
      | "search-with-nitrogen";
    fills: (
      | "observations.airflow_fades"
      | "observations.airflow_weak"
      | "observations.belt_slips"
      | "observations.closing_heater_cools_vent"
      | "observations.clutch_engaged"
      | "observations.clutch_has_voltage"
      | "observations.compressor_noisy"
      | "observations.condenser_face_blocked"
      | "observations.condenser_fan_running"
      | "observations.condenser_has_temperature_step"
      | "observations.condenser_tube_below_saturation"
      | "observations.control_signal_moves_pressures"
      | "observations.cooling_comes_and_goes"
      | "observations.cools_on_the_road"
      | "observations.drop_across_drier"
      | "observations.evaporator_frosted"
      | "observations.frost_at_expansion"
      | "observations.frost_on_suction_line"
      | "observations.hissing_at_expansion"
      | "observations.hub_locked"
      | "observations.hub_turns_freely"
      | "observations.identifier_shows_air"
      | "observations.identifier_shows_other"
      | "observations.low_side_follows_bulb"
      | "observations.oil_traces"
      | "observations.recently_filled"
      | "observations.recovered_above_label"
      | "observations.recovered_below_label"
      | "observations.rest_pressure_high"
      | "observations.rest_pressure_low"
      | "observations.second_gauges_agree"
      | "observations.sides_equalise_quickly"
      | "observations.sight_glass_bubbles"
      | "observations.speed_lowers_low_side"
      | "observations.suction_line_step"
      | "observations.transducer_agrees"
      | "observations.water_lowers_high_side"
      | "readings.clutch_cycles"
      | "readings.discharge_line"
      | "readings.high_side"
      | "readings.liquid_line"
      | "readings.low_side"
      | "readings.suction_line"
      | "readings.vent"
    )[];
    minutes: number;
    outcomes: {
      of:
        | (
            | "clutch_engaged"
            | "clutch_has_voltage"
            | "hub_turns_freely"
            | "hub_locked"
            | "belt_slips"
            | "compressor_noisy"
            | "condenser_fan_running"
            | "condenser_face_blocked"
            | "water_lowers_high_side"
            | "condenser_has_temperature_step"
            | "condenser_tube_below_saturation"
            | "sight_glass_bubbles"
            | "oil_traces"
            | "hissing_at_expansion"
            | "drop_across_drier"
            | "frost_at_expansion"
            | "frost_on_suction_line"
            | "suction_line_step"
            | "low_side_follows_bulb"
            | "evaporator_frosted"
            | "airflow_fades"
            | "cooling_comes_and_goes"
            | "airflow_weak"
            | "closing_heater_cools_vent"
            | "speed_lowers_low_side"
            | "control_signal_moves_pressures"
            | "sides_equalise_quickly"
            | "rest_pressure_high"
            | "rest_pressure_low"
            | "identifier_shows_air"
            | "identifier_shows_other"
            | "recovered_below_label"
            | "recovered_above_label"
            | "recently_filled"
            | "second_gauges_agree"
            | "cools_on_the_road"
            | "transducer_agrees"
            | "dye_glows"
            | "detector_alarms"
            | "trace_gas_escapes"
            | "test_pressure_holds"
            | "vacuum_holds"
            | "evacuated_before_filling"
          )
        | null;
      outcome: string;
      probability: number;
      result: "yes" | "no" | "below" | "within" | "above";
      seen: string;
      then:
        | "no-fault"
        | "worn-compressor"
        | "undercharge"
        | "overcharge"
        | "condenser-airflow-loss"
        | "non-condensables"
        | "liquid-line-restriction"
        | "expansion-valve-stuck-open"
        | "expansion-valve-stuck-closed"
        | "orifice-restricted"
        | "evaporator-airflow-loss"
        | "evaporator-icing"
        | "moisture-icing"
        | "compressor-control-fault"
        | "clutch-not-engaged"
        | "clutch-slipping"
        | "heater-air-mixing"
        | "high-side-restriction"
        | "suction-line-restriction"
        | "wrong-refrigerant"
        | "gauge-error";
      then_probability: number;
    }[];
    parts_in_minutes: number;
    saving_minutes: number | null;
    says: string;
  }[];
  next_step: {
    check:
      | (
          | "read-low-side"
          | "read-high-side"
          | "read-vent"
          | "read-suction-line"
          | "read-liquid-line"
          | "read-discharge-line"
          | "count-clutch-cycles"
          | "run-and-read"
          | "watch-clutch"
          | "measure-clutch-voltage"
          | "turn-hub"
          | "look-for-slip"
          | "listen-to-compressor"
          | "watch-condenser-fan"
          | "look-at-condenser-face"
          | "spray-condenser"
          | "feel-condenser-passes"
          | "clamp-condenser-middle"
          | "look-at-sight-glass"
          | "look-for-leaks"
          | "listen-at-expansion"
          | "drop-across-drier"
          | "look-at-expansion"
          | "look-at-suction-line"
          | "follow-suction-line"
          | "warm-and-chill-bulb"
          | "look-at-evaporator"
          | "watch-twenty-minutes"
          | "feel-airflow"
          | "close-heater"
          | "raise-engine-speed"
          | "drive-control"
          | "time-equalisation"
          | "read-rest-pressure"
          | "identify-refrigerant"
          | "recover-and-weigh"
          | "ask-history"
          | "compare-gauges"
          | "road-test"
          | "compare-transducer"
          | "search-with-nitrogen"
        )
      | null;
    fills: (
      | "observations.airflow_fades"
      | "observations.airflow_weak"
      | "observations.belt_slips"
      | "observations.closing_heater_cools_vent"
      | "observations.clutch_engaged"
      | "observations.clutch_has_voltage"
      | "observations.compressor_noisy"
      | "observations.condenser_face_blocked"
      | "observations.condenser_fan_running"
      | "observations.condenser_has_temperature_step"
      | "observations.condenser_tube_below_saturation"
      | "observations.control_signal_moves_pressures"
      | "observations.cooling_comes_and_goes"
      | "observations.cools_on_the_road"
      | "observations.drop_across_drier"
      | "observations.evaporator_frosted"
      | "observations.frost_at_expansion"
      | "observations.frost_on_suction_line"
      | "observations.hissing_at_expansion"
      | "observations.hub_locked"
      | "observations.hub_turns_freely"
      | "observations.identifier_shows_air"
      | "observations.identifier_shows_other"
      | "observations.low_side_follows_bulb"
      | "observations.oil_traces"
      | "observations.recently_filled"
      | "observations.recovered_above_label"
      | "observations.recovered_below_label"
      | "observations.rest_pressure_high"
      | "observations.rest_pressure_low"
      | "observations.second_gauges_agree"
      | "observations.sides_equalise_quickly"
      | "observations.sight_glass_bubbles"
      | "observations.speed_lowers_low_side"
      | "observations.suction_line_step"
      | "observations.transducer_agrees"
      | "observations.water_lowers_high_side"
      | "readings.clutch_cycles"
      | "readings.discharge_line"
      | "readings.high_side"
      | "readings.liquid_line"
      | "readings.low_side"
      | "readings.suction_line"
      | "readings.vent"
    )[];
    repair:
      | (
          | "no-fault"
          | "worn-compressor"
          | "undercharge"
          | "overcharge"
          | "condenser-airflow-loss"
          | "non-condensables"
          | "liquid-line-restriction"
          | "expansion-valve-stuck-open"
          | "expansion-valve-stuck-closed"
          | "orifice-restricted"
          | "evaporator-airflow-loss"
          | "evaporator-icing"
          | "moisture-icing"
          | "compressor-control-fault"
          | "clutch-not-engaged"
          | "clutch-slipping"
          | "heater-air-mixing"
          | "high-side-restriction"
          | "suction-line-restriction"
          | "wrong-refrigerant"
          | "gauge-error"
        )
      | null;
    says: string;
  } | null;
  none_of_these: number;
  out_of_line:
    | (
        | "low_side"
        | "high_side"
        | "vent"
        | "superheat"
        | "subcooling"
        | "discharge_superheat"
        | "clutch_cycles"
        | "rest_pressure"
      )
    | null;
  proof?: {
    [k: string]: unknown;
  };
  quality: {
    note:
      | "few-readings"
      | "humidity-unknown"
      | "air-source-unknown"
      | "running-time-unknown"
      | "not-settled"
      | "generic-band"
      | "gauge-zero-unknown"
      | "clutch-cycling"
      | "stroke-limit"
      | "sides-equal"
      | "at-rest"
      | "off-scale"
      | "reading-out-of-line"
      | "two-faults-possible"
      | "bands-only"
      | "outside-fit"
      | "transducer-stands-in"
      | "transducer-contradicts"
      | "near-high-cut-out"
      | "evaporator-freezing"
      | "vent-below-evaporator"
      | "displacement-low"
      | "second-evaporator"
      | "ports-noted"
      | "compressor-speed-noted"
      | "fan-command-noted"
      | "displacement-noted";
    says: string;
  }[];
  rest: ("consistent" | "nearly-empty" | "air-present" | "not-equalised") | null;
  resting: {
    [k: string]: unknown;
  } | null;
  rival:
    | (
        | "no-fault"
        | "worn-compressor"
        | "undercharge"
        | "overcharge"
        | "condenser-airflow-loss"
        | "non-condensables"
        | "liquid-line-restriction"
        | "expansion-valve-stuck-open"
        | "expansion-valve-stuck-closed"
        | "orifice-restricted"
        | "evaporator-airflow-loss"
        | "evaporator-icing"
        | "moisture-icing"
        | "compressor-control-fault"
        | "clutch-not-engaged"
        | "clutch-slipping"
        | "heater-air-mixing"
        | "high-side-restriction"
        | "suction-line-restriction"
        | "wrong-refrigerant"
        | "gauge-error"
      )
    | null;
  stop: {
    high_side_pa_gauge: number | null;
    limit_of_vehicle: boolean | null;
    limit_pa_gauge: number | null;
    reason: "high-pressure" | "nearly-empty" | "air-present";
    says: string;
  } | null;
  two_faults: {
    any_pair_probability: number;
    faults: (
      | "no-fault"
      | "worn-compressor"
      | "undercharge"
      | "overcharge"
      | "condenser-airflow-loss"
      | "non-condensables"
      | "liquid-line-restriction"
      | "expansion-valve-stuck-open"
      | "expansion-valve-stuck-closed"
      | "orifice-restricted"
      | "evaporator-airflow-loss"
      | "evaporator-icing"
      | "moisture-icing"
      | "compressor-control-fault"
      | "clutch-not-engaged"
      | "clutch-slipping"
      | "heater-air-mixing"
      | "high-side-restriction"
      | "suction-line-restriction"
      | "wrong-refrigerant"
      | "gauge-error"
    )[];
    probability: number;
  } | null;
  verdict: "healthy" | "named-fault" | "cannot-tell" | "nothing-fits" | "not-enough-evidence";
}
