// The page of examples/web in Chromium: a visit from the readings to the repair, without a server too, on a tablet and on a desk.

import assert from "node:assert/strict";
import { createReadStream } from "node:fs";
import { readFile, stat } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";
import test from "node:test";
import { chromium } from "playwright-core";

const folder = process.env.COLDLOOP_WEB;
const pictures = process.env.COLDLOOP_PICTURES;
const TYPES = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css", ".wasm": "application/wasm" };
const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

// The readings of examples/readings/low-charge.toml.
const LOW_CHARGE = {
  low_side: "105 kPa gauge",
  high_side: "1010 kPa gauge",
  vent: "17 °C",
  suction_line: "21 °C",
  liquid_line: "41.5 °C",
  clutch_cycles: "9 /min",
};
// What is seen of this van when a step asks; the last answer of every question says that nothing is seen.
const SEEN = /^(bubbles in the sight glass|oil .*|hub and pulley turn together|condenser fan runs|voltage at the clutch|fixed)$/;
// The same van after the repair, in the middle of what is normal that day.
const SOUND = { low_side: "215 kPa gauge", high_side: "1400 kPa gauge", vent: "9 °C", suction_line: "12 °C", liquid_line: "42 °C" };
const ASKED = { ...LOW_CHARGE, discharge_line: "78 °C" };

function serve() {
  const server = createServer(async ({ url }, response) => {
    const file = join(folder, normalize(new URL(url, "http://localhost").pathname.replace(/\/$/, "/index.html")));
    const found = await stat(file).catch(() => null);
    response.writeHead(found?.isFile() ? 200 : 404, { "content-type": TYPES[extname(file)] ?? "text/plain", "cache-control": "no-store" });
    if (found?.isFile()) createReadStream(file).pipe(response);
    else response.end();
  });
  return new Promise((listening) => server.listen(0, "127.0.0.1", () => listening(server)));
}

async function stopped(server) {
  server.closeAllConnections();
  await new Promise((closed) => server.close(closed));
}

/** Serves the page, opens it and uses it; fails where the browser reports an error. */
async function visited(told, use) {
  const server = await serve();
  const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: FLAGS });
  try {
    const page = await browser.newPage({ viewport: { width: 768, height: 1024 } });
    const complaints = [];
    page.on("pageerror", (error) => complaints.push(String(error)));
    page.on("console", (line) => line.type() === "error" && complaints.push(line.text()));
    await page.goto(`http://127.0.0.1:${server.address().port}/`);
    await page.locator("#vehicle button[type=submit]").waitFor();
    await use(page, server);
    assert.deepEqual(complaints, [], told);
  } finally {
    await browser.close();
    if (server.listening) await stopped(server);
  }
}

const line = (page, name) => page.locator(`#readings [name="readings.${name}"], #weather [name="conditions.${name}"]`);

async function write(page, name, text) {
  await line(page, name).fill(text);
  await line(page, name).press("Tab");
}

async function lowCharge(page) {
  await page.locator("#vehicle button[type=submit]").click();
  for (const [name, text] of Object.entries(LOW_CHARGE)) await write(page, name, text);
  await page.locator("#page h1", { hasText: /undercharge/i }).waitFor();
}

async function picture(page, name) {
  if (pictures !== undefined) await page.screenshot({ path: join(pictures, `${name}.png`), fullPage: true });
}

test("the readings of a van with too little charge name it, and the steps lead to the repair and back", async () => {
  await visited("a visit", async (page) => {
    await lowCharge(page);
    const answer = await page.locator("#page").innerHTML();
    const next = page.locator("#next");
    // The cautions are above the step.
    const [care, step] = [await next.locator(".care").boundingBox(), await next.locator(".step > p").boundingBox()];
    assert.ok(care.y + care.height <= step.y);
    const first = await next.locator(".step > p").textContent();
    await picture(page, "tablet");

    const asked = next.locator("input");
    if ((await asked.count()) > 0) {
      await asked.first().fill(ASKED[(await asked.first().getAttribute("name")).split(".")[1]]);
      await asked.first().press("Tab");
    } else {
      await next.locator(".row button").first().click();
    }
    assert.match(await page.locator("#undo").textContent(), /: /);
    assert.notEqual(await next.locator(".step > p").textContent(), first);
    await page.locator("#undo").click();
    assert.equal(await page.locator("#page").innerHTML(), answer);
    assert.equal(await next.locator(".step > p").textContent(), first);

    await write(page, "vent", "17");
    assert.match(await page.locator("#readings .trouble:visible").textContent(), /needs its unit/);
    assert.equal(await page.locator("#page").innerHTML(), answer);
    await write(page, "vent", "62 °F");
    assert.equal(await page.locator("#readings .trouble:visible").count(), 0);
    await page.locator("#undo").click();
    assert.equal(await line(page, "vent").inputValue(), "17 °C");
    assert.equal(await page.locator("#page").innerHTML(), answer);
  });
});

test("guided by its steps a visit comes from two pressures to the repair, and to its proof", async () => {
  await visited("guided", async (page) => {
    await page.locator("#vehicle button[type=submit]").click();
    for (const name of ["low_side", "high_side"]) await write(page, name, LOW_CHARGE[name]);
    const next = page.locator("#next");
    const done = [];
    while ((await page.locator("#readings-title").textContent()) === "Readings") {
      assert.ok(done.length < 12, done.join("\n"));
      done.push(await next.locator(".step > p").textContent());
      const wanted = next.locator("input");
      const name = (await wanted.count()) > 0 ? (await wanted.first().getAttribute("name")).split(".")[1] : null;
      if (name !== null) {
        await wanted.first().fill(ASKED[name]);
        await wanted.first().press("Tab");
      } else {
        const seen = next.locator(".row button", { hasText: SEEN });
        await ((await seen.count()) > 0 ? seen : next.locator(".row button")).last().click();
      }
    }
    await page.locator("#undo", { hasText: "the repair" }).waitFor();
    assert.equal(await page.locator("#readings-title").textContent(), "Readings after the repair");
    assert.equal(await line(page, "vent").inputValue(), "");
    for (const [name, text] of Object.entries(SOUND)) await write(page, name, text);
    await page.locator("#page h1", { hasText: /the repair is proven/i }).waitFor();
    assert.match(await next.textContent(), /Nothing is left to do/);
    await picture(page, "proven");
  });
});

test("an order to stop is above the step", async () => {
  await visited("stop", async (page) => {
    await page.locator("#vehicle button[type=submit]").click();
    await write(page, "low_side", "300 kPa gauge");
    assert.equal(await page.locator("#next > .care").count(), 0);
    await write(page, "high_side", "2900 kPa gauge");
    const stop = page.locator("#next > .care");
    assert.match(await stop.textContent(), /Stop/);
    assert.ok((await stop.boundingBox()).y < (await page.locator("#next .step").boundingBox()).y);
    await picture(page, "stop");
  });
});

test("it works on after the server is stopped, and a visit is saved and opened again", async () => {
  await visited("offline", async (page, server) => {
    await page.evaluate(() => navigator.serviceWorker.ready.then(({ active }) => active.state));
    await lowCharge(page);
    const answer = await page.locator("#page").innerHTML();
    await stopped(server);
    await page.reload();
    await page.locator("#page h1", { hasText: /undercharge/i }).waitFor();
    assert.equal(await page.locator("#page").innerHTML(), answer);
    const [download] = await Promise.all([page.waitForEvent("download"), page.locator("#save").click()]);
    const saved = await readFile(await download.path(), "utf8");
    await page.locator("#new").click();
    await page.locator("#vehicle").waitFor();
    await page.locator("#load").setInputFiles({ name: "visit.json", mimeType: "application/json", buffer: Buffer.from(saved) });
    await page.locator("#page h1", { hasText: /undercharge/i }).waitFor();
    assert.equal(await page.locator("#page").innerHTML(), answer);
    for (const [name, text] of Object.entries(LOW_CHARGE)) assert.equal(await line(page, name).inputValue(), text);
    await page.locator("#load").setInputFiles({ name: "other.json", mimeType: "application/json", buffer: Buffer.from("{") });
    await page.locator("#trouble").waitFor();
    assert.equal(await page.locator("#page").innerHTML(), answer);
  });
});

test("the page fits every width, its targets are large, and it can be shown in Spanish", async () => {
  await visited("widths", async (page) => {
    const fits = async (told) => {
      for (const width of [390, 768, 1200]) {
        await page.setViewportSize({ width, height: 1024 });
        const { wide, small } = await page.evaluate(() => ({
          wide: document.documentElement.scrollWidth - document.documentElement.clientWidth,
          // WCAG 2.2, success criterion 2.5.5: 44 px.
          small: [...document.querySelectorAll("button, select, input[type=text], .button")]
            .filter((target) => target.checkVisibility() && target.getBoundingClientRect().height < 44)
            .map((target) => target.outerHTML),
        }));
        assert.equal(wide, 0, `${told} at ${width} px`);
        assert.deepEqual(small, [], `${told} at ${width} px`);
        await picture(page, `${told}-${width}`);
      }
    };
    await fits("form");
    await lowCharge(page);
    await fits("visit");
    await page.locator("#language").selectOption("es");
    await page.locator("#page h1", { hasText: /carga/i }).waitFor();
    assert.equal(await page.locator("html").getAttribute("lang"), "es");
    await fits("visita");
  });
});
