import { bench, describe } from "vitest";
import { cutPlan } from "../../src/calc/sheet/cutplan/plan";
import { stripInstances } from "../published/stripPacking";
import { edgeToEdge, eightPieces, placedAnywhere } from "./cutPlan";

// `npm run vitest -- bench`: the gaps to the known shortest lengths are printed first.
for (const instance of stripInstances) {
  const gap = (length: number): string =>
    `${length} (+${((100 * length) / instance.optimalLength - 100).toFixed(1)} %)`;
  console.log(
    `${instance.id}: shortest ${instance.optimalLength}; edge-to-edge cuts ${gap(edgeToEdge(instance))}; ` +
      `placed anywhere, by the library ${gap(placedAnywhere(instance, 1))}`,
  );
}

describe("cut plan", () => {
  let turn = 0;
  bench("eight different pieces, proven", () => void cutPlan(eightPieces(turn++)));
  for (const instance of stripInstances) {
    bench(`${instance.id}, ${instance.pieces.length} pieces`, () => void edgeToEdge(instance), { iterations: 3 });
  }
});
