/** Vehicle refrigerant properties and vehicle air-conditioning diagnosis. Every number is plain SI, and its name says the unit. */

/** A readings file: its text (TOML or JSON), or an object of that shape. */
export type Readings = string | Record<string, unknown>;

/** How to judge: the `settings` of a readings file. */
export type Settings = Record<string, unknown>;

/** What is wrong with one entry of an input. */
export interface Mistake {
  key: string | null;
  value: string | null;
  line: number | null;
  column: number | null;
  message: string;
}

/** An input that is refused; `message` says what to write instead. */
export class Refusal extends Error {
  readonly key: string | null;
  readonly value: string | null;
  readonly mistakes: Mistake[];
}

/** The library, loaded. Its functions return at once; they throw a `Refusal` for input that cannot be judged. */
export interface Coldloop {
  /** The version of the library. */
  readonly version: string;
  /** Verdict, odds with reasons, bands, next checks and cautions. */
  diagnose(readings: Readings, settings?: Settings): Record<string, unknown>;
  /** The answer for people, in the units of the readings. */
  report(readings: Readings, settings?: Settings): string;
  /** What to do next, and what then. */
  plan(readings: Readings, settings?: Settings): Record<string, unknown>;
  /** What was done since, judged. */
  prove(readings: Readings, settings?: Settings): Record<string, unknown>;
  /** Faults, checks and observations that exist for a system. */
  catalogue(readings: Readings): Record<string, unknown>;
  /** What a vehicle would read. */
  simulate(vehicle: Readings): Record<string, unknown>;
  /** Pressure (Pa above vacuum) at which the liquid begins to boil at a temperature (K). */
  bubblePressure(refrigerant: string, temperatureK: number): number;
  /** Pressure (Pa above vacuum) at which the vapour begins to condense at a temperature (K). */
  dewPressure(refrigerant: string, temperatureK: number): number;
  /** Temperature (K) at which the liquid begins to boil at a pressure (Pa above vacuum). */
  bubbleTemperature(refrigerant: string, pressurePaAbs: number): number;
  /** Temperature (K) at which the vapour begins to condense at a pressure (Pa above vacuum). */
  dewTemperature(refrigerant: string, pressurePaAbs: number): number;
}

/** Loads the module from beside this file, or from a URL, a response, bytes or a compiled module. */
export function load(source?: URL | string | Response | BufferSource | WebAssembly.Module): Promise<Coldloop>;
