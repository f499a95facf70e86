import { bench, describe } from "vitest";
import { RECONCILE } from "../../src/functions/money/reconcile";
import { manyPapers } from "./reconcileLines";

describe("RECONCILE", () => {
  for (const count of [300, 5_000, 50_000]) {
    const papers = manyPapers(count);
    bench(`${count} lines`, () => void RECONCILE.evaluate(papers), { iterations: 5 });
  }
});
