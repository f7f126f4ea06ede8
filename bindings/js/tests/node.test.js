// The package in Node: the answers of the committed cases, refusals, and awkward calls.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtemp, readFile, readdir } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import test from "node:test";
import { pathToFileURL } from "node:url";
import { Refusal, load } from "coldloop";

const root = pathToFileURL(`${process.env.COLDLOOP_ROOT}/`);
const coldloop = await load();

test("every readings file gives the answer of the program in Rust, to the last digit", async () => {
  const folder = new URL("examples/readings/", root);
  let count = 0;
  for (const name of (await readdir(folder)).filter((name) => name.endsWith(".toml"))) {
    const file = new URL(name, folder);
    const readings = await readFile(file, "utf8");
    if (name.startsWith("bad")) {
      assert.throws(() => coldloop.diagnose(readings), Refusal, name);
      continue;
    }
    const program = new URL("target/release/examples/diagnose", root).pathname;
    const rust = execFileSync(program, ["--json", file.pathname], { encoding: "utf8" });
    assert.deepEqual(coldloop.diagnose(readings), JSON.parse(rust), name);
    count += 1;
  }
  assert.ok(count > 20);
});

test("saturation has the bits of the committed cases", async () => {
  const functions = {
    bubble_pressure: "bubblePressure",
    dew_pressure: "dewPressure",
    bubble_temperature: "bubbleTemperature",
    dew_temperature: "dewTemperature",
  };
  const lines = (await readFile(new URL("tests/cases/functions.csv", root), "utf8")).trim().split("\n").slice(1);
  const view = new DataView(new ArrayBuffer(8));
  let count = 0;
  for (const line of lines) {
    const [wanted, refrigerant, x, , status, bits] = line.split(",");
    const name = functions[wanted];
    if (name === undefined) continue;
    if (status !== "0") {
      assert.throws(() => coldloop[name](refrigerant, Number(x)), Refusal, line);
    } else {
      view.setFloat64(0, coldloop[name](refrigerant, Number(x)));
      assert.equal(view.getBigUint64(0).toString(16).padStart(16, "0"), bits, line);
    }
    count += 1;
  }
  assert.ok(count > 10_000, `${count} rows`);
});

test("a refusal names key and value", () => {
  const readings = { system: { refrigerant: "CO2", expansion: "txv", compressor: "electric" } };
  assert.throws(() => coldloop.diagnose(readings), (refusal) => refusal.key === "system.refrigerant" && /R-744/.test(refusal.message));
  assert.throws(() => coldloop.dewPressure("R-134a", 500), /500/);
  assert.throws(() => coldloop.dewPressure("R-134a", NaN), Refusal);
});

test("pages and drawings are those of the program in Rust", async () => {
  const folder = new URL("examples/readings/", root);
  const program = new URL("target/release/examples/diagnose", root).pathname;
  const out = join(await mkdtemp(join(tmpdir(), "coldloop-")), "page.html");
  for (const name of ["low-charge.toml", "repaired-van.toml", "carbon-dioxide-van.toml"]) {
    const file = new URL(name, folder);
    const readings = await readFile(file, "utf8");
    execFileSync(program, ["--html", out, file.pathname]);
    const page = coldloop.page(readings);
    assert.equal(page, await readFile(out, "utf8"), name);
    assert.ok(page.includes(coldloop.picture(readings, "odds")), name);
    assert.throws(() => coldloop.picture(readings, "paintings"), Refusal);
  }
  assert.equal(coldloop.picture(await readFile(new URL("low-charge.toml", folder), "utf8"), "hold"), null);
});

test("a session answers as a file with the same entries, and undoing restores the same bits", async () => {
  const readings = { system: { refrigerant: "R-134a", expansion: "txv", compressor: "fixed-clutch" } };
  readings.conditions = { ambient: "29 °C", altitude: "1600 m" };
  const session = coldloop.session(readings);
  const states = [];
  const done = [];
  const add = (key, value) => {
    const answer = session.answer();
    states.push([session.stored, answer]);
    session.add(key, value);
    done.push(key.split(".")[0]);
  };
  add("readings.low_side", "105 kPa gauge");
  add("readings.high_side", "1010 kPa gauge");
  add("readings.vent", "17 °C");
  add("conditions.barometer", "83 kPa abs");
  add("conditions.altitude", "1500 m");
  add("conditions.humidity", "35 %");
  add("observations.oil_traces", true);
  const whole = { ...readings, conditions: { ambient: "29 °C", altitude: "1500 m", humidity: "35 %" } };
  whole.readings = { low_side: "105 kPa gauge", high_side: "1010 kPa gauge", vent: "17 °C" };
  whole.observations = { oil_traces: true };
  const resumed = coldloop.session(session.stored);
  // The step that is held is part of the visit and not of the file.
  assert.deepEqual(session.answer().faults, coldloop.diagnose(whole).faults);
  assert.deepEqual(resumed.answer(), session.answer());
  const before = session.stored;
  for (const [key, value] of [["readings.vent", "17"], ["readings.vents", "17 °C"], ["weather.ambient", "20 °C"], ["conditions.ambient", "900 °C"]])
    assert.throws(() => session.add(key, value), (refusal) => refusal instanceof Refusal && refusal.key.startsWith(key.split(".")[0]), key);
  assert.equal(session.stored, before);
  const told = { readings: "reading", observations: "observation" };
  for (const [stored, answer] of states.reverse()) {
    const table = done.pop();
    const step = session.undo();
    assert.ok(step === table || told[table] in step, JSON.stringify(step));
    assert.deepEqual(session.answer(), answer);
    assert.equal(session.stored, stored);
  }
  assert.equal(session.undo(), null);
});

test("outcomes and repairs lead through a visit, in both languages", async () => {
  const session = coldloop.session(await readFile(new URL("examples/readings/low-charge.toml", root), "utf8"));
  const start = session.stored;
  const step = session.next();
  assert.equal(step.repair, "undercharge");
  assert.ok(step.care.length > 0 && step.care.length === step.cautions.length);
  assert.notEqual(session.next({ language: "es" }).says, step.says);
  session.repair(step.repair, { helped: false });
  assert.equal(session.answer().faults.find(({ fault }) => fault === "undercharge").probability, 0);
  assert.deepEqual(session.undo(), { in_vain: "undercharge" });
  session.repair(step.repair);
  assert.equal(session.readings.readings, undefined);
  session.add("readings.vent", "6 °C").add("readings.low_side", "190 kPa gauge").add("readings.high_side", "1250 kPa gauge");
  assert.equal(session.answer().proof.repair.finding, coldloop.prove(session.stored).repair.finding);
  assert.match(session.page({ language: "es", units: "us" }), /psi/);
  for (let undone = 0; undone < 4; undone += 1) session.undo();
  assert.equal(coldloop.session(start).page(), session.page());
  const check = coldloop.session(start).outcome("look-for-leaks", "yes", "oil_traces");
  assert.equal(check.readings.observations.oil_traces, true);
  for (const outcome of [["look", "yes"], ["read-vent", "above"], ["look-for-leaks", "yes", "belt_slips"]])
    assert.throws(() => check.outcome(...outcome), Refusal, outcome.join(" "));
  assert.throws(() => check.repair("no-fault"), Refusal);
  const frost = check.add("conditions.ambient", "-10 °C");
  for (const ask of [() => frost.next(), () => frost.answer(), () => frost.page()])
    assert.throws(ask, (refusal) => refusal.key === "conditions.ambient" && /normal readings/.test(refusal.message));
  assert.throws(() => check.next({ language: "it" }), Refusal);
  assert.throws(() => check.page({ units: "furlongs" }), Refusal);
});

test("the blocks of the guide run", async () => {
  const pages = await readdir(new URL("docs/", root));
  let count = 0;
  for (const page of pages.filter((name) => name.endsWith(".md"))) {
    const text = await readFile(new URL(`docs/${page}`, root), "utf8");
    for (const [, code] of text.matchAll(/^```js\n(.*?)^```$/gms)) {
      execFileSync(process.execPath, ["--input-type=module"], { input: code, encoding: "utf8" });
      count += 1;
    }
  }
  assert.ok(count > 0);
});

test("settings given to the call replace those of the readings", async () => {
  const readings = await readFile(new URL("examples/readings/low-charge.toml", root), "utf8");
  assert.notDeepEqual(coldloop.diagnose(readings, { priors: { undercharge: 0.001 } }).faults, coldloop.diagnose(readings).faults);
});

test("long and awkward texts do no harm", () => {
  for (const readings of ["", "\u0000", "[".repeat(100000), "é".repeat(5_000_000), '{"system":'.repeat(50000)])
    assert.throws(() => coldloop.diagnose(readings), Refusal);
  assert.equal(coldloop.dewPressure("R-134a", 273.15), coldloop.dewPressure("R-134a", 273.15));
});
