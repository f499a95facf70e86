import { describe, expect, it } from "vitest";
import { cableDrop, findWire } from "../../../src/calc/pump/cable";
import { WIRES } from "../../../src/calc/tables/wires";

describe("findWire", () => {
  it.each([
    ["12 AWG", "12 AWG"],
    ["#12", "12 AWG"],
    ["12awg", "12 AWG"],
    ["1/0", "1/0 AWG"],
    ["2.5 mm²", "2.5 mm2"],
    ["2.5 sq mm", "2.5 mm2"],
  ])("reads %s", (text, name) => expect(findWire(text).name).toBe(name));

  it("lists the sizes that exist", () => {
    expect(() => findWire("13")).toThrow('gauge "13" is not known; use one of 18 AWG, 16 AWG');
  });

  it("has less resistance the thicker the wire, and a source for each", () => {
    for (const unit of ["AWG", "mm2"]) {
      const ohms = WIRES.filter(({ name }) => name.endsWith(unit)).map(({ resistance }) => resistance);
      ohms.slice(1).forEach((value, index) => expect(value).toBeLessThan(ohms[index] ?? 0));
    }
    for (const { source } of WIRES) expect(source.length).toBeGreaterThan(20);
  });
});

describe("cableDrop", () => {
  it("counts both conductors: 2 × 30.48 m × (1.24 Ω / 304.8 m) × 5 A = 1.24 V", () => {
    expect(cableDrop(5, 30.48, findWire("10 AWG"))).toBeCloseTo(1.24, 9);
  });

  it("names what is out of range", () => {
    expect(() => cableDrop(-1, 10, findWire("10"))).toThrow("amps must be 0 to 400; got -1");
    expect(() => cableDrop(5, 3000, findWire("10"))).toThrow("length must be 0 to 2000 m, one way; got 3000 m");
  });
});
