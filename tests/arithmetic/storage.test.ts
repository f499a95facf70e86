import { describe, expect, it } from "vitest";
import { basinHold } from "../../src/calc/basin/hold";
import { basinMix, findBasinPart } from "../../src/calc/basin/mix";
import { findPipe } from "../../src/calc/pipe/bore";
import { boreArea } from "../../src/calc/pipe/friction";
import { fromInside } from "../../src/calc/quantity/measures";
import { expectCase, given, arithmeticCase, arithmeticCases } from "./cases";
import { FOOT, INCH, inSI } from "../published/si";

const STORAGE = "8 storage";
const gallons = (cubicMetres: number): number => fromInside("water", cubicMetres, "US");

describe("the basin by arithmetic", () => {
  it.each(arithmeticCases(STORAGE, "ST-V-").map((c) => [c.id, c] as const))("%s box of stone or modules", (_, c) => {
    const shape = { length: inSI(c, "length"), width: inSI(c, "width"), sideSlope: 0 };
    const hold = (voidFraction: number): number => basinHold({ ...shape, voidFraction }, inSI(c, "depth"));
    expectCase(c, "grossVolume", hold(1) / FOOT ** 3);
    expectCase(c, "waterVolume", gallons(hold(given(c.inputs, "voidFraction"))));
  });

  const box = (kind: string, feet: readonly [number, number, number], voidFraction?: number) => ({
    kind: findBasinPart(kind),
    length: feet[0] * FOOT,
    width: feet[1] * FOOT,
    depth: feet[2] * FOOT,
    voidFraction,
    sideSlope: 0,
    label: kind,
  });

  it("ST-MIX modules in a gravel pit", () => {
    const whole = basinMix([box("pit", [10, 8, 3], 0.4), box("modules", [6, 6, 2.5], 0.95)]).at(-2);
    expectCase(arithmeticCase("ST-MIX"), "waterVolume", gallons(whole?.water ?? NaN));
  });

  it.each(arithmeticCases(STORAGE, "ST-CYL-").map((c) => [c.id, c] as const))("%s upright cylinder", (_, c) => {
    const [across, deep] = [given(c.inputs, "diameter"), given(c.inputs, "depth")];
    const [well] = basinMix([
      box("pit", [10, 10, 10]),
      { ...box("round well", [across, across, deep]), width: undefined },
    ]);
    expectCase(c, "volume", gallons(well?.water ?? NaN));
  });

  it("ST-TRANSIT water in a stream and a pipe", () => {
    const c = arithmeticCase("ST-TRANSIT");
    const { bore } = findPipe({ size: 2 * INCH, isBore: false }, "Sch 40 PVC");
    const stream = gallons(20 * 2 * 0.1 * FOOT ** 3);
    const pipe = gallons(boreArea(bore) * 60 * FOOT);
    expectCase(c, "streamVolume", stream);
    expectCase(c, "pipeVolume", pipe);
    expectCase(c, "total", stream + pipe);
  });

  it("ST-CONST gallons in a cubic foot", () => {
    const c = arithmeticCase("ST-CONST");
    expectCase(c, "galPerFt3", gallons(FOOT ** 3));
    expectCase(c, "ft3PerGal", 1 / gallons(FOOT ** 3));
  });

  // e / (1 + e): the conversion every void-fraction argument explains.
  it.each(arithmeticCases(STORAGE, "ST-E-").map((c) => [c.id, c] as const))(
    "%s void ratio to void fraction",
    (_, c) => {
      const e = given(c.inputs, "voidRatio");
      const fraction = given(c.expected, "porosity");
      // Solids of 1 m³ with e m³ of voids around them fill 1 + e m³: the basin's water must be those voids.
      const water = basinHold({ length: 1 + e, width: 1, voidFraction: fraction, sideSlope: 0 }, 1);
      expect(Math.abs(water - e)).toBeLessThan(0.0005);
    },
  );
});
