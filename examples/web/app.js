// A visit on a tablet: the vehicle, the weather, the readings; the page of the answer, and the way to the repair.

import { Refusal, load } from "./coldloop/coldloop.js";
import { READINGS, SYSTEM, WEATHER, WORDS } from "./words.js";

// The vehicle of a municipal garage at 1,600 m, with which the form starts.
const PRESET = { "meta.vehicle": "Van 9", ...Object.fromEntries([...SYSTEM, ...WEATHER]) };

const place = (id) => document.getElementById(id);
let coldloop;
let session = null;
let vehicle = "";
// How each quantity was written, by key and stored value: the session holds it in SI.
let written = {};

const language = () => place("language").value;
const say = (word) => WORDS[word]?.[language() === "es" ? 1 : 0] ?? word;

/** An element with properties and children. */
function element(name, properties = {}, ...children) {
  const made = Object.assign(document.createElement(name), properties);
  made.append(...children);
  return made;
}

/** Runs what may be refused; a refusal is shown in `trouble`. */
function attempt(trouble, action) {
  trouble.hidden = true;
  try {
    action();
    return true;
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    trouble.textContent = refusal.message;
    trouble.hidden = false;
    return false;
  }
}

/** A text field, or a choice; `changed` is called with the input and may refuse it. */
function field([key, example, choices], value, changed) {
  const trouble = element("p", { className: "trouble", role: "alert", hidden: true });
  const input = choices
    ? element("select", {}, ...choices.map((id) => element("option", { value: id, textContent: id === "" ? say("unknown") : say(id) })))
    : element("input", { type: "text", autocomplete: "off" });
  Object.assign(input, { name: key, value });
  input.addEventListener("change", () => {
    const taken = attempt(trouble, () => changed?.(key, input.value.trim()));
    input.setAttribute("aria-invalid", String(!taken));
  });
  const hint = choices ? "" : element("em", { textContent: `${say("example")} ${example}` });
  return element("div", {}, element("label", {}, say(key), hint, input), trouble);
}

// An altitude and a barometer give the same quantity, and the session holds the pressure.
const STORED = { altitude: "barometer" };
const isPressure = (text) => /pa|bar|hg|psi/i.test(text);

/** The value of a key as the session holds it, as text; empty where it has none. */
function stored(key) {
  const [table, entry] = key.split(".");
  const value = session.readings[table]?.[STORED[entry] ?? entry];
  return value === undefined ? "" : JSON.stringify(value);
}

/** The same as it was written, or else converted from SI. */
function shown(key) {
  const value = stored(key);
  if (value === "" || written[`${key} ${value}`] !== undefined) return written[`${key} ${value}`] ?? "";
  const given = JSON.parse(value);
  const [, number, unit] = /^(\S+) ?(.*)$/.exec(given.value ?? given);
  const round = (figure, digits) => String(Number(figure.toFixed(digits)));
  if (unit === "K") return `${round(Number(number) - 273.15, 1)} °C`;
  if (unit.startsWith("Pa")) return `${round(Number(number) / 1e3, 1)} k${unit}`;
  if (unit === "Hz") return `${round(Number(number) * 60, 1)} ${key.endsWith("speed") ? "rpm" : "/min"}`;
  if (unit === "s") return `${round(Number(number) / 60, 1)} min`;
  if (unit === "m/s") return `${round(Number(number) * 3.6, 1)} km/h`;
  return unit === "" && !Number.isNaN(Number(number)) ? `${round(Number(number) * 100, 1)} %` : given;
}

/** Adds the input to the session. An empty field changes nothing: the button takes an entry back. */
function add(key, text) {
  if (text !== "" && text !== shown(key)) known(key, text);
  show();
}

function known(key, text) {
  session.add(key === "conditions.altitude" && isPressure(text) ? "conditions.barometer" : key, text);
  written[`${key} ${stored(key)}`] = text;
}

/** The units in which what is known was written. */
function units() {
  const texts = [...WEATHER, ...READINGS].map(([key]) => shown(key)).join(" ");
  if (/psi|°F/.test(texts)) return "us";
  return / bar/.test(texts) ? "bar" : "metric";
}

/** Builds the page anew, for another visit or another language. */
function layOut() {
  document.documentElement.lang = language();
  document.title = say("title");
  for (const place of document.querySelectorAll("[data-text]")) place.textContent = say(place.dataset.text);
  place("vehicle").hidden = session !== null;
  place("visit").hidden = session === null;
  place("save").disabled = session === null;
  if (session === null) {
    const fields = [["meta.vehicle", PRESET["meta.vehicle"]], ...SYSTEM, ...WEATHER];
    place("vehicle").querySelector(".fields").replaceChildren(...fields.map((row) => field(row, PRESET[row[0]])));
    return;
  }
  const { system } = session.readings;
  const told = [vehicle, system.refrigerant, say(system.expansion), say(system.compressor)];
  place("told").textContent = told.filter((text) => text !== "").join(", ");
  const lines = (rows) => rows.map((row) => field(row, "", add));
  place("weather").querySelector(".fields").replaceChildren(...lines(WEATHER));
  place("readings").replaceChildren(...lines(READINGS));
  show();
}

/** Shows what is known now; a field that was refused keeps its input. */
function show() {
  for (const input of place("visit").querySelectorAll('[name]:not([aria-invalid="true"])')) input.value = shown(input.name);
  const { after, undo } = JSON.parse(session.stored);
  place("readings-title").textContent = say(after === undefined ? "readings" : "after");
  place("undo").disabled = undo === undefined;
  place("undo").textContent = undo === undefined ? say("undo") : `${say("undo")}: ${stepSays(undo.at(-1).step)}`;
  place("next").replaceChildren();
  place("page").replaceChildren();
  localStorage.setItem("visit", file());
  attempt(place("trouble"), showAnswer);
}

/** What a step of the session did. */
function stepSays(step) {
  if (typeof step === "string") return say(step);
  const [[kind, id]] = Object.entries(step);
  return kind === "reading" ? say(`readings.${id}`) : say(kind);
}

function showAnswer() {
  const step = session.next({ language: language() });
  const page = new DOMParser().parseFromString(session.page({ language: language(), units: units() }), "text/html");
  const [style, article] = ["style", "article"].map((part) => document.adoptNode(page.querySelector(part)));
  // A reason to stop is above everything else.
  const stop = article.querySelector(":scope > section.care")?.cloneNode(true) ?? "";
  place("next").replaceChildren(stop, stepShown(step));
  place("page").replaceChildren(style, article);
}

/** The next step: its cautions, what to do, and how it may come out. */
function stepShown(step) {
  const box = element("div", { className: "step" }, element("h2", { textContent: say("next") }));
  if (step === null) {
    box.append(element("p", { textContent: say("nothing") }));
    return box;
  }
  if (step.care.length > 0) {
    const cautions = step.care.map((caution) => element("li", { textContent: caution }));
    box.append(element("div", { className: "care" }, element("strong", { textContent: say("care") }), element("ul", {}, ...cautions)));
  }
  const minutes = `${Math.round(step.minutes)} ${say("minutes")}`;
  box.append(element("p", { textContent: step.says }), element("em", { textContent: minutes }));
  const readings = READINGS.filter(([key]) => step.fills.includes(key));
  box.append(element("div", { className: "fields" }, ...readings.map((row) => field(row, shown(row[0]), add))));
  const seen = step.branches.filter(({ result }) => result === "yes" || result === "no");
  const buttons = seen.map((branch) => {
    const button = element("button", { type: "button", textContent: branch.seen });
    button.addEventListener("click", () => {
      cameOut(step, branch);
      show();
    });
    return button;
  });
  box.append(element("div", { className: "row" }, ...buttons));
  return box;
}

function cameOut({ check, repair }, { result, of }) {
  if (check !== null) session.outcome(check, result, of);
  else session.repair(repair, { helped: result === "yes" });
}

/** The visit as a file: a readings file with what the page knows beside it. */
function file() {
  const { meta, ...stored } = JSON.parse(session.stored);
  return JSON.stringify({ ...stored, meta: { ...meta, vehicle, written } });
}

/** Resumes a visit from a file. */
function open(text) {
  session = coldloop.session(text);
  ({ vehicle = "", written = {} } = JSON.parse(session.stored).meta ?? {});
  layOut();
}

/** The form of a new visit. */
function start() {
  session = null;
  localStorage.removeItem("visit");
  place("trouble").hidden = true;
  layOut();
}

function begin() {
  const given = { system: {}, conditions: {}, meta: {} };
  const texts = [...new FormData(place("vehicle"))].map(([key, text]) => [key, text.trim()]).filter(([, text]) => text !== "");
  for (const [key, text] of texts) {
    const [table, entry] = key === "conditions.altitude" && isPressure(text) ? ["conditions", "barometer"] : key.split(".");
    given[table][entry] = text;
  }
  session = coldloop.session(given);
  vehicle = given.meta.vehicle ?? "";
  written = {};
  for (const [key, text] of texts) if (key.startsWith("conditions.")) written[`${key} ${stored(key)}`] = text;
  layOut();
}

function save() {
  const address = URL.createObjectURL(new Blob([file()], { type: "application/json" }));
  element("a", { href: address, download: "visit.json" }).click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

place("new").addEventListener("click", start);
place("save").addEventListener("click", save);
place("language").addEventListener("change", layOut);
place("undo").addEventListener("click", () => {
  session.undo();
  show();
});
place("vehicle").addEventListener("submit", (event) => {
  event.preventDefault();
  attempt(place("trouble"), begin);
});
place("load").addEventListener("change", async ({ target }) => {
  const [chosen] = target.files;
  if (chosen === undefined) return;
  const text = await chosen.text();
  target.value = "";
  attempt(place("trouble"), () => open(text));
});

coldloop = await load(new URL("coldloop/coldloop.wasm", document.baseURI));
const kept = localStorage.getItem("visit");
if (kept === null || !attempt(place("trouble"), () => open(kept))) start();
await navigator.serviceWorker?.register("worker.js");
