/** Vehicle refrigerant properties and vehicle air-conditioning diagnosis. Every number is plain SI, and its name says the unit. */

import type { Answer, ReadingsFile } from "./answers.js";
export type * from "./answers.js";

/** A readings file: its text (TOML or JSON), or an object of that shape. */
export type Readings = string | ReadingsFile;

/** How to judge: the `settings` of a readings file. */
export type Settings = NonNullable<ReadingsFile["settings"]>;

/** The drawings of a visit. */
export type Picture = "readings" | "odds" | "plan" | "cycle" | "pull-down" | "hold" | "pressure-test";

/** A language of the answers for people. */
export type Language = "en" | "es";

/** What somebody does next. */
export interface NextStep {
  /** The id of a check; `null` for a repair and for handing over. */
  check: string | null;
  /** The id of the fault that is repaired; `null` for a check and for handing over. */
  repair: string | null;
  /** What to do, in a sentence. */
  says: string;
  /** The cautions, in a few words each; show them before what to do. */
  care: string[];
  /** The ids of the same. */
  cautions: string[];
  /** The entries that it fills, as `Session.add` takes them. */
  fills: string[];
  minutes: number;
  parts_in_minutes: number;
  recovers_charge: boolean;
  /** How it may come out: what is `seen` then, and what that is as `Session.outcome` takes it. */
  branches: {
    outcome: string;
    seen: string;
    result: "yes" | "no" | "below" | "within" | "above";
    of: string | null;
    probability: number;
    then: string;
    then_probability: number;
  }[];
}

/** What a step of a session did. */
export type Step =
  | "log"
  | "conditions"
  | { reading: string }
  | { observation: string }
  | { check: string }
  | { repair: string }
  | { in_vain: string };

/** A visit as it grows. A call that is refused leaves it unchanged. */
export interface Session {
  /** All that it holds, as JSON: a readings file from which `Coldloop.session` resumes it to the same bits. */
  readonly stored: string;
  /** System, conditions, readings and observations as they are now, after a repair those since. */
  readonly readings: Pick<ReadingsFile, "system" | "conditions" | "readings" | "observations">;
  /** Adds an entry of a readings file, such as `readings.vent`, `observations.oil_traces` or `conditions.ambient`, which replaces an earlier one. */
  add(key: string, value: unknown): this;
  /** Adds how a check came out, as a branch of the next step has it. */
  outcome(check: string, result: "yes" | "no", of?: string | null): this;
  /** Notes a repair: what is added from then on describes the vehicle after it, unless the repair did not help. */
  repair(fault: string, options?: { helped?: boolean }): this;
  /** Takes the last step back and tells which it was; `null` where none is left. */
  undo(): Step | null;
  /** What to do next, which is held from here on; `null` where nothing is left to do. */
  next(options?: { language?: Language }): NextStep | null;
  /** What is known now. */
  answer(): Answer;
  /** The same as one HTML document. */
  page(options?: { language?: Language; units?: "metric" | "bar" | "us" }): string;
}

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
  diagnose(readings: Readings, settings?: Settings): Answer;
  /** The answer for people, in the units of the readings. */
  report(readings: Readings, settings?: Settings): string;
  /** The same as one HTML document with drawings: no script, nothing to fetch. */
  page(readings: Readings, settings?: Settings): string;
  /** A drawing of it as SVG; `null` where there is nothing to draw. */
  picture(readings: Readings, picture: Picture, settings?: Settings): string | null;
  /** A visit that starts from these readings, or that was stored. */
  session(readings: Readings): Session;
  /** What to do next, three steps deep. */
  plan(readings: Readings, settings?: Settings): Record<string, unknown>;
  /** The judgement of what was done since. */
  prove(readings: Readings, settings?: Settings): Record<string, unknown>;
  /** Faults, checks and observations that exist for a system. */
  catalogue(readings: string | { system: ReadingsFile["system"] }): Record<string, unknown>;
  /** What a vehicle would read. */
  simulate(trial: string | Record<string, unknown>): Record<string, unknown>;
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
