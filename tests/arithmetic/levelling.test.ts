import { describe, expect, it } from "vitest";
import { heightOfInstrument, levelOf, setOut } from "../../src/calc/levels/setOut";
import { layOutSteps } from "../../src/calc/levels/steps";
import { formatFeetInches } from "../../src/calc/quantity/feetInches";
import { SETOUT } from "../../src/functions/levels/setout";
import { expectCase, given, arithmeticCase, arithmeticCases } from "./cases";
import { FOOT } from "../published/si";

describe("levelling by arithmetic", () => {
  it("LV-05: three set-ups and the page check", () => {
    const c = arithmeticCase("LV-05");
    const backsights = c.inputs["BS"]?.value as number[];
    const foresights = c.inputs["FS"]?.value as number[];
    let level = given(c.inputs, "BM") * FOOT;
    backsights.forEach((sight, i) => {
      level = levelOf(heightOfInstrument(level, sight * FOOT), (foresights[i] ?? NaN) * FOOT);
    });
    expectCase(c, "final", level / FOOT);
    expectCase(c, "sumBSminusFS", level / FOOT - given(c.inputs, "BM"));
  });

  it("LV-06: the rod reading of a level wanted, in decimals and in sixteenths", () => {
    const c = arithmeticCase("LV-06");
    const [benchmark, target] = [100, given(c.inputs, "targetElevation")];
    const sight = given(c.inputs, "HI") - benchmark;
    const table = SETOUT.evaluate([benchmark, sight, [["Target", target]], "", "", "", "US"]) as unknown[][];
    expectCase(c, "rod", table[1]?.[2] as number);
    expect(formatFeetInches((table[1]?.[2] as number) * FOOT, 16)).toBe("5'-10 3/16\"");
    // The crew's column is in eighths: 10.2 in lies nearest 10 1/4.
    expect(table[1]?.[3]).toBe("5'-10 1/4\"");
  });

  it("LV-07: the reading falls as the ground rises", () => {
    const c = arithmeticCase("LV-07");
    const [low, high] = ["rodA", "rodB"].map((name) =>
      levelOf(given(c.inputs, "HI") * FOOT, given(c.inputs, name) * FOOT),
    );
    expectCase(c, "rise", ((high ?? NaN) - (low ?? NaN)) / FOOT);
    const [point] = setOut(0, 1, [{ name: "B", level: 0.5 }], 0);
    expect(point?.rod).toBeLessThan(1);
  });
});

describe("stepped falls by arithmetic", () => {
  it("GE-STAIR: the way along even steps", () => {
    const [c] = arithmeticCases("13 sheet goods geometry", "GE-STAIR");
    if (!c) throw new Error("no case");
    const [rise, tread] = ["rise", "tread"].map((name) => (given(c.inputs, name) / 12) * FOOT);
    const count = given(c.inputs, "steps");
    const steps = layOutSteps((rise ?? NaN) * count, (tread ?? NaN) * count, count, 0, 1, 0.0254 / 8);
    const along = steps.reduce((all, step) => all + step.drop + step.tread, 0);
    expectCase(c, "followingSteps", along / FOOT);
  });
});
