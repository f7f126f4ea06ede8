// What a program in TypeScript may write; `tsc` refuses the rest.

import { type Coldloop, Refusal, load } from "coldloop";

const coldloop: Coldloop = await load();
const pressure: number = coldloop.dewPressure("R-134a", 298.15);
// @ts-expect-error: a temperature is a number
coldloop.dewPressure("R-134a", "25 °C");
try {
  const answer = coldloop.diagnose({ system: {} }, { named: 0.8 });
  console.log(answer.verdict, pressure);
} catch (refusal) {
  if (refusal instanceof Refusal) console.log(refusal.key, refusal.mistakes.map((mistake) => mistake.message));
}
