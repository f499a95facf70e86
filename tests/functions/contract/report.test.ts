import { afterEach, describe, expect, it, vi } from "vitest";
import { invalid, missing } from "../../../src/calc/problem";
import { declare } from "../../../src/functions/contract/declaration";
import { callFromSheet } from "../../../src/functions/contract/report";
import { numberResult } from "../../../src/functions/contract/result";
import { number } from "../../../src/functions/contract/scalars";

const PROBLEMS = [invalid("x must be 1"), missing("x is not known"), new TypeError("a defect")];

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
    expect(() => callFromSheet(trial, [11])).toThrow(PROBLEMS[1]);
  });

  it("shows neither Infinity nor a defect as an answer", () => {
    expect(() => callFromSheet(trial, [0])).toThrow(/the trial/);
    expect(() => callFromSheet(trial, [12])).toThrow("failed inside");
  });
});
