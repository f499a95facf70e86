import { describe, expect, it } from "vitest";
import { CURVETABLE } from "../../../src/functions/pump/curvetable";
import { DUTY } from "../../../src/functions/pump/duty";
import { CABLEDROP } from "../../../src/functions/pump/cabledrop";
import { PUMPRANK } from "../../../src/functions/pump/pumprank";
import { PUMPWATTS } from "../../../src/functions/pump/pumpwatts";

const curve = [
  [0, 26],
  [2400, 22],
  [4800, 10],
];
const route = [[2, 100, "Sch 40 PVC", 6]];
const value = (table: unknown, row: number): unknown => (table as unknown[][])[row]?.[1];

describe("RILL.DUTY", () => {
  it("gives no flow when the pump cannot lift", () => {
    const duty = DUTY.evaluate([curve, 26, route]);
    expect(value(duty, 1)).toBe(0);
    expect(value(duty, 5)).toBe("cannot lift");
  });

  it("gives no verdict on a flow nobody asked for", () => {
    const duty = DUTY.evaluate([curve, 8, route]);
    expect(value(duty, 4)).toBe("");
    expect(value(duty, 5)).toBe("delivers");
    expect(value(duty, 6)).toMatch(/^Delivers \d+ gph\.$/);
  });

  it("says that the flow is short", () => {
    const duty = DUTY.evaluate([curve, 8, route, null, null, 4700]);
    expect(value(duty, 5)).toBe("flow short");
    expect(value(duty, 6)).toMatch(/^Short by \d+ gph/);
  });

  it("counts pumps and speed", () => {
    const one = value(DUTY.evaluate([curve, 8, route]), 1) as number;
    expect(value(DUTY.evaluate([curve, 8, route, 2]), 1)).toBeGreaterThan(one);
    expect(value(DUTY.evaluate([curve, 8, route, 1, 0.8]), 1)).toBeLessThan(one);
    expect(() => DUTY.evaluate([curve, 8, route, 1.5])).toThrow("pumps must be a whole number");
    expect(() => DUTY.evaluate([curve, 8, route, 1, 3])).toThrow("speed must be 0.1 to 2");
  });

  it.each([
    ["no rows", [[null, null]], "curve is needed"],
    [
      "no shut-off head",
      [
        [10, 5],
        [20, 4],
      ],
      "curve needs its shut-off head",
    ],
    [
      "a negative head",
      [
        [0, -5],
        [20, 4],
      ],
      "curve row 1: head must be 0 to 656 ft; got -5",
    ],
  ])("refuses a curve with %s", (_, bad, sentence) => {
    expect(() => DUTY.evaluate([bad, 8, route])).toThrow(sentence);
  });
});

describe("RILL.CURVETABLE", () => {
  it("gives as many points as asked for, under one header", () => {
    expect(CURVETABLE.evaluate([curve, 8, route, null, null, 5])).toHaveLength(6);
    expect(CURVETABLE.evaluate([curve, 8, route])).toHaveLength(22);
    expect(() => CURVETABLE.evaluate([curve, 8, route, null, null, 1])).toThrow("points must be 2 to 200; got 1");
  });
});

describe("what leads to an electric pump in a basin", () => {
  // EL-GFCI of the published cases: fountain circuits need ground-fault protection; ask a licensed electrician.
  it.each(
    [DUTY, PUMPRANK, PUMPWATTS, CABLEDROP].map((declaration) => [declaration.name, declaration.caution] as const),
  )("RILL.%s carries the caution", (_, caution) => {
    expect(caution).toContain("ground-fault protection");
    expect(caution).toContain("licensed electrician");
  });
});
