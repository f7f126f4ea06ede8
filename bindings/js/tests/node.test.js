// The package in Node: the answers of the committed cases, refusals, and awkward calls.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFile, readdir } from "node:fs/promises";
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

test("settings stand in the place of those of the readings", async () => {
  const readings = await readFile(new URL("examples/readings/low-charge.toml", root), "utf8");
  assert.notDeepEqual(coldloop.diagnose(readings, { priors: { undercharge: 0.001 } }).faults, coldloop.diagnose(readings).faults);
});

test("long and awkward texts do no harm", () => {
  for (const readings of ["", "\u0000", "[".repeat(100000), "é".repeat(5_000_000), '{"system":'.repeat(50000)])
    assert.throws(() => coldloop.diagnose(readings), Refusal);
  assert.equal(coldloop.dewPressure("R-134a", 273.15), coldloop.dewPressure("R-134a", 273.15));
});
