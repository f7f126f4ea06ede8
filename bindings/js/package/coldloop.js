// The library for JavaScript: the WebAssembly module with its texts as strings and objects.

/** A readings file or another input that is refused; `mistakes` names each key, value and place. */
export class Refusal extends Error {
  constructor({ message, key, value, mistakes }) {
    super(message);
    this.name = "Refusal";
    this.key = key;
    this.value = value;
    this.mistakes = mistakes;
  }
}

/** Loads the module: from beside this file, or from a `source` (URL, Response, bytes or a compiled module). */
export async function load(source = new URL("coldloop.wasm", import.meta.url)) {
  return new Coldloop(await instance(source));
}

async function instance(source) {
  if (source instanceof WebAssembly.Module) return WebAssembly.instantiate(source);
  if (source instanceof ArrayBuffer || ArrayBuffer.isView(source)) return (await WebAssembly.instantiate(source)).instance;
  if (source instanceof URL && source.protocol === "file:") {
    const { readFile } = await import("node:fs/promises");
    return (await WebAssembly.instantiate(await readFile(source))).instance;
  }
  const response = source instanceof Response ? source : await fetch(source);
  if (!response.ok) throw new Error(`${response.url}: ${response.status}`);
  return (await WebAssembly.instantiate(await response.arrayBuffer())).instance;
}

const encoder = new TextEncoder();
const decoder = new TextDecoder();
const text = (input) => (typeof input === "string" ? input : JSON.stringify(input));

// Keys for the same thing: one that is given replaces the other.
const INSTEAD = new Map([["altitude", "barometer"], ["barometer", "altitude"]]);

/** A visit as it grows; `stored` is all that it holds. */
class Session {
  #call;
  #stored;

  constructor(call, readings) {
    this.#call = call;
    this.#stored = call("sessionStart", readings, "");
  }

  // The new session is kept; the answer to the question follows below it.
  #ask(name, given = "") {
    const told = this.#call(name, this.#stored, given);
    const end = told.indexOf("\n");
    if (end < 0) this.#stored = told;
    else this.#stored = told.slice(0, end);
    return end < 0 ? null : told.slice(end + 1);
  }

  get stored() {
    return this.#stored;
  }

  get readings() {
    const { system, after, conditions, readings, observations } = JSON.parse(this.#stored);
    const now = after ?? { conditions, readings, observations };
    return { system, ...now };
  }

  add(key, value) {
    const [table, entry] = key.split(".", 2);
    const { system, conditions } = this.readings;
    const given = { system, conditions, [table]: { [entry]: value } };
    if (table === "conditions") {
      given.conditions = { ...conditions, [entry]: value };
      delete given.conditions[INSTEAD.get(entry)];
    }
    this.#ask("sessionAdd", JSON.stringify(given));
    return this;
  }

  outcome(check, result, of) {
    this.#ask("sessionOutcome", [check, result, of].filter((id) => id != null).join(" "));
    return this;
  }

  repair(fault, { helped = true } = {}) {
    this.#ask("sessionRepair", helped ? fault : `${fault} in-vain`);
    return this;
  }

  undo() {
    const step = JSON.parse(this.#stored).undo?.at(-1).step ?? null;
    this.#ask("sessionUndo");
    return step;
  }

  next({ language = "en" } = {}) {
    return JSON.parse(this.#ask("sessionNext", language));
  }

  answer() {
    return JSON.parse(this.#ask("sessionAnswer"));
  }

  page({ language = "en", units = "metric" } = {}) {
    return this.#ask("sessionPage", `${language} ${units}`);
  }
}

class Coldloop {
  #module;
  #numbers = new Map([["names", 0]]);

  constructor({ exports }) {
    this.#module = exports;
    this.#call("names").split(" ").forEach((name, number) => this.#numbers.set(name, number));
  }

  #call(name, first = "", second = "") {
    const texts = [first, second].map((given) => encoder.encode(given));
    const [one, two] = texts.map((given) => given.length);
    const at = this.#module.reserve(one + two);
    // The memory may have grown: a view that was made before would be empty.
    const room = new Uint8Array(this.#module.memory.buffer, at, one + two);
    room.set(texts[0]);
    room.set(texts[1], one);
    const status = this.#module.call(this.#numbers.get(name), one, two);
    const told = new Uint8Array(this.#module.memory.buffer, this.#module.answer(), this.#module.answer_length());
    const answer = decoder.decode(told);
    if (status === 1) throw new Refusal(JSON.parse(answer).refused);
    if (status !== 0) throw new Error(answer);
    return answer;
  }

  #judged(name, readings, settings) {
    return this.#call(name, text(readings), settings === undefined ? "" : JSON.stringify(settings));
  }

  get version() {
    return this.#call("version");
  }

  diagnose(readings, settings) {
    return JSON.parse(this.#judged("diagnose", readings, settings));
  }

  report(readings, settings) {
    return this.#judged("report", readings, settings);
  }

  plan(readings, settings) {
    return JSON.parse(this.#judged("plan", readings, settings));
  }

  prove(readings, settings) {
    return JSON.parse(this.#judged("prove", readings, settings));
  }

  page(readings, settings) {
    return this.#judged("page", readings, settings);
  }

  picture(readings, picture, settings) {
    const wanted = settings === undefined ? picture : `${picture} ${JSON.stringify(settings)}`;
    return this.#call("picture", text(readings), wanted) || null;
  }

  session(readings) {
    return new Session((name, stored, given) => this.#call(name, stored, given), text(readings));
  }

  catalogue(readings) {
    return JSON.parse(this.#call("catalogue", text(readings)));
  }

  simulate(vehicle) {
    return JSON.parse(this.#call("simulate", text(vehicle)));
  }

  #figure(name, refrigerant, si) {
    return Number(this.#call(name, refrigerant, String(si)));
  }

  bubblePressure(refrigerant, temperatureK) {
    return this.#figure("bubblePressure", refrigerant, temperatureK);
  }

  dewPressure(refrigerant, temperatureK) {
    return this.#figure("dewPressure", refrigerant, temperatureK);
  }

  bubbleTemperature(refrigerant, pressurePaAbs) {
    return this.#figure("bubbleTemperature", refrigerant, pressurePaAbs);
  }

  dewTemperature(refrigerant, pressurePaAbs) {
    return this.#figure("dewTemperature", refrigerant, pressurePaAbs);
  }
}
