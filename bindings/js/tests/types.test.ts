// What a program in TypeScript may write; `tsc` has to refuse the lines that are marked.

import { type Coldloop, Refusal, type Session, load } from "coldloop";

const coldloop: Coldloop = await load();
const pressure: number = coldloop.dewPressure("R-134a", 298.15);
// @ts-expect-error: a temperature is a number
coldloop.dewPressure("R-134a", "25 °C");
try {
  const system = { refrigerant: "R-134a", expansion: "txv", compressor: "fixed-clutch" } as const;
  const readings = { system, conditions: { ambient: "29 °C", altitude: "1600 m" }, readings: { vent: "17 °C" } };
  const answer = coldloop.diagnose(readings, { named: 0.8 });
  const likeliest: number | undefined = answer.faults[0]?.probability;
  console.log(answer.verdict === "healthy", likeliest, pressure);
  // @ts-expect-error: a reading that is misspelt
  coldloop.diagnose({ ...readings, readings: { vents: "17 °C" } });
  // @ts-expect-error: an answer has no such entry
  console.log(answer.verdicts);
  const session: Session = coldloop.session(readings);
  const cautions: string[] | undefined = session.add("readings.vent", "16 °C").next({ language: "es" })?.care;
  // @ts-expect-error: an unknown language
  console.log(session.page({ language: "it" }), cautions);
} catch (refusal) {
  if (refusal instanceof Refusal) console.log(refusal.key, refusal.mistakes.map((mistake) => mistake.message));
}
