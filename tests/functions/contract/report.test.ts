import { afterEach, describe, expect, it, vi } from "vitest";
import { invalid, missing } from "../../../src/calc/problem";
import { declare } from "../../../src/functions/contract/declaration";
import { callFromSheet } from "../../../src/functions/contract/report";
import { numberResult } from "../../../src/functions/contract/result";
import { number } from "../../../src/functions/contract/scalars";

const PROBLEMS = [invalid("x must be 1"), missing("x is not known"), new TypeError("a defect")];

/** What a declaration says beside its calculation. */
const SLOW = {
  ...{ name: "TRIAL", summary: "Tries what takes long.", formula: "x", source: "none", limits: "none" },
  topic: "money",
  args: { x: number("Any number") },
  result: numberResult("the trial"),
  examples: [],
} as const;

/** Gives 1 / x for a number, and throws one of the problems for the numbers from 10. */
const trial = declare({
  name: "TRIAL",
  topic: "money",
  summary: "Tries what can go wrong.",
  formula: "1 / x",
  source: "none",
  limits: "none",
  args: { x: number("Any number") },
  result: numberResult("the trial"),
  examples: [],
  compute({ x }) {
    const problem = PROBLEMS[x - 10];
    if (problem) throw problem;
    return 1 / x;
  },
});

class HostError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

describe("a call from the sheet", () => {
  afterEach(() => vi.unstubAllGlobals());

  it("tells the host a wrong value from one that does not exist, each with its sentence", () => {
    vi.stubGlobal("CustomFunctions", {
      Error: HostError,
      ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
    });
    const thrown = (x: unknown): unknown => {
      try {
        return callFromSheet(trial, [x]);
      } catch (error) {
        return error;
      }
    };
    expect(thrown(4)).toBe(0.25);
    expect(thrown(10)).toMatchObject({ code: "#VALUE!", message: "x must be 1" });
    expect(thrown(11)).toMatchObject({ code: "#N/A", message: "x is not known" });
    expect(thrown(10)).toBeInstanceOf(HostError);
  });

  it("throws the problem itself where there is no host", () => {
    // Another file in the same process may have left one.
    vi.stubGlobal("CustomFunctions", undefined);
    expect(() => callFromSheet(trial, [11])).toThrow(PROBLEMS[1]);
  });

  it("shows neither Infinity nor a defect as an answer", () => {
    expect(() => callFromSheet(trial, [0])).toThrow(/the trial/);
    expect(() => callFromSheet(trial, [12])).toThrow("failed inside");
  });

  it("leaves turns to everything else while it works out what takes long, and shows what comes of it", async () => {
    const order: string[] = [];
    const long = declare({
      ...SLOW,
      *ahead() {
        for (let bit = 0; bit < 4; bit++) {
          order.push("bit");
          // Longer than a turn may take.
          for (const end = performance.now() + 35; performance.now() < end;);
          yield;
        }
      },
      compute: ({ x }) => order.push("answer") + x,
    });
    setTimeout(() => order.push("other"));
    const answer = callFromSheet(long, [1]);
    expect(answer).toBeInstanceOf(Promise);
    expect(await answer).toBe(1 + order.length);
    expect(order.filter((one) => one !== "other")).toEqual(["bit", "bit", "bit", "bit", "answer"]);
    expect(order.indexOf("other")).toBeLessThan(2);
  });

  it("answers at once where nothing takes long, and tells what goes wrong ahead by the function itself", () => {
    const quick = declare({ ...SLOW, ahead: () => [][Symbol.iterator](), compute: ({ x }) => x });
    expect(callFromSheet(quick, [3])).toBe(3);
    const failing = declare({
      ...SLOW,
      ahead() {
        throw new TypeError("a defect");
      },
      compute() {
        throw invalid("x must be 1");
      },
    });
    expect(() => callFromSheet(failing, [3])).toThrow("x must be 1");
  });
});
