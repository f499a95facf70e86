import { expect, it } from "vitest";
import { repairWords } from "../../src/taskpane/repairWords";

const left = ["A!A1", "A!A2", "A!A3", "A!A4", "A!A5", "A!A6"];

it.each([
  [
    { found: 0, repaired: 0, left: [], stopped: false },
    /^Every formula is bound to its function; nothing was changed\.$/,
  ],
  [{ found: 3, repaired: 3, left: [], stopped: false }, /^3 of 3 formulas were entered again\.$/],
  // A search that was stopped cannot say that every formula is sound.
  [{ found: 0, repaired: 0, left: [], stopped: true }, /^Stopped before every sheet was looked through\. Nothing/],
  [{ found: 2, repaired: 2, left: [], stopped: true }, /^Stopped .*\. 2 of 2 formulas were entered again\.$/],
  [{ found: 6, repaired: 0, left, stopped: false }, /^0 of 6 .* a password: A!A1, .*A!A5, and 1 more\.$/],
])("%o is told", (repairs, words) => expect(repairWords(repairs)).toMatch(words));
