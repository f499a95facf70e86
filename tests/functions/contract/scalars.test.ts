import { describe, expect, it } from "vitest";
import { Problem } from "../../../src/calc/problem";
import { optional, unitsArgument } from "../../../src/functions/contract/optional";
import { choice, flag, number, quantity, share, text } from "../../../src/functions/contract/scalars";

const length = quantity("length", "Length", { min: 0, max: 304.8 });
const escape = (words: string): string => words.replace(/[+]/g, "\\$&");
const size = quantity("size", "Size", { above: 0, max: 0.6096 });

describe("a quantity", () => {
  // 1 ft = 0.3048 m, 1 in = 25.4 mm (NIST SP 811, appendix B.8).
  it("takes a number in the default unit of the system and gives SI", () => {
    expect(length.read(10, "pipe length", "US")).toBeCloseTo(3.048, 12);
    expect(length.read(10, "pipe length", "SI")).toBe(10);
    expect(size.read(2, "size", "US")).toBeCloseTo(0.0508, 12);
    expect(size.read(63, "size", "SI")).toBeCloseTo(0.063, 12);
  });

  it("takes text with its own unit in either system", () => {
    expect(length.read("2' 6\"", "pipe length", "SI")).toBeCloseTo(0.762, 12);
    expect(length.read("300 cm", "pipe length", "US")).toBeCloseTo(3, 12);
  });

  it("takes a range of one cell", () => {
    expect(length.read([[10]], "pipe length", "SI")).toBe(10);
    expect(() => length.read([[1, 2]], "pipe length", "SI")).toThrow("pipe length must be one cell, not a range");
  });

  it("says which argument, what was wrong and what would be right", () => {
    expect(() => length.read(-4, "pipe length", "US")).toThrow("pipe length must be 0 to 1000 ft; got -4 ft");
    expect(() => length.read(45000, "pipe length", "US")).toThrow("pipe length must be 0 to 1000 ft; got 45000 ft");
    expect(() => length.read("40 gpm", "pipe length", "US")).toThrow(
      'pipe length must be a length, such as 3\'-2", 3.17 ft or 38 in; got "40 gpm"',
    );
    expect(() => length.read(true, "pipe length", "US")).toThrow(
      "pipe length must be a number (ft) or text with a unit; got TRUE",
    );
    expect(() => length.read(NaN, "pipe length", "US")).toThrow("pipe length must be");
    expect(() => length.read("", "pipe length", "US")).toThrow("pipe length is needed");
    expect(() => length.read({ error: "#N/A" }, "pipe length", "US")).toThrow("pipe length holds the error #N/A");
    expect(() => length.read("2000 ft", "pipe length", "US")).toThrow('0 to 1000 ft; got "2000 ft", 2000 ft');
    expect(() => length.read(1000.0001, "pipe length", "US")).toThrow("0 to 1000 ft; got 1000.0001 ft");
    // 2 March 2026 is day 46083 of Excel's count, in which 1 January 2000 is day 36526.
    expect(() => length.read(46083, "pipe length", "US")).toThrow(
      "0 to 1000 ft; got 46083 ft, which Excel may have made of a date (2026-03-02); write it like 3'-2\", 3.17 ft or 38 in",
    );
    expect(() => size.read(0, "size", "US")).toThrow("size must be more than 0, at most 24 in; got 0 in");
  });

  it.each([
    ["length", `3'-2"`],
    ["area", "120 sq ft"],
    ["earth", "3.5 cu yd"],
    ["flow", "40 gpm"],
    ["wind", "5 mph"],
    ["load", "1.5 ton"],
    ["density", "2.65 t/m3"],
    ["temperature", "68 °F"],
    ["power", "750 W"],
  ] as const)("of %s that is not understood shows one of its own kind, which reads", (measure, example) => {
    const one = quantity(measure, "One");
    expect(() => one.read("abc", "one", "US")).toThrow(
      new RegExp(`not understood at "abc"; write it like .*${escape(example)}`),
    );
    expect(() => one.read("5 kPa", "one", "SI")).toThrow(new RegExp(`such as .*${escape(example)}.*; got "5 kPa"`));
    expect(one.read(example, "one", "SI")).toBeGreaterThan(0);
  });

  it("throws only problems", () => {
    for (const raw of [null, undefined, {}, [], [[]], Symbol.iterator, () => 1, 1n]) {
      let thrown: unknown;
      try {
        length.read(raw, "pipe length", "US");
      } catch (error) {
        thrown = error;
      }
      expect(thrown, String(raw)).toBeInstanceOf(Problem);
    }
  });
});

describe("a share", () => {
  const waste = share("Waste");
  it("takes a fraction or a percent as text", () => {
    expect(waste.read(0.1, "waste", "US")).toBe(0.1);
    expect(waste.read("10%", "waste", "US")).toBeCloseTo(0.1, 12);
    expect(waste.read("7,5 %", "waste", "US")).toBeCloseTo(0.075, 12);
  });
  it("offers the share that a bare percent meant", () => {
    expect(() => waste.read(10, "waste", "US")).toThrow("for 10% write 0.1 or 10%");
  });
});

describe("a number, a choice, a flag and a text", () => {
  it("refuse units, fractions and unknown names with a cure", () => {
    const count = number("Count", { min: 1, max: 12 }, { whole: true });
    expect(count.read("3", "drops", "US")).toBe(3);
    expect(() => count.read(2.5, "drops", "US")).toThrow("drops must be a whole number; got 2.5");
    expect(() => count.read("3 ft", "drops", "US")).toThrow("drops must be a whole number without a unit");
    expect(() => count.read("many", "drops", "US")).toThrow('drops must be a whole number; got "many"');
    expect(() => count.read("?", "drops", "US")).toThrow(
      'drops "?" is not understood at "?"; write it like 12.5 or 2 1/2',
    );
    expect(() => count.read(1e9, "drops", "US")).toThrow("drops must be 1 to 12; got 1000000000");
    const slope = number("Slope", { min: 0, max: 10 });
    expect(slope.read("2 1/2", "side slope", "US")).toBe(2.5);
    expect(() => slope.read("12 kg", "side slope", "US")).toThrow(
      'side slope must be a number without a unit; got "12 kg"',
    );
    expect(text("Rock").read(true, "rock", "US")).toBe("TRUE");
    const method = choice("Method", ["Hazen-Williams", "Darcy-Weisbach"] as const);
    expect(method.read("darcy weisbach", "method", "US")).toBe("Darcy-Weisbach");
    expect(() => method.read("Manning", "method", "US")).toThrow(
      "method must be one of Hazen-Williams, Darcy-Weisbach",
    );
    expect(flag("Check valve").read("yes", "check valve", "US")).toBe(true);
    expect(() => flag("Check valve").read("perhaps", "check valve", "US")).toThrow("check valve must be TRUE or FALSE");
    expect(() => text("Name", { longest: 5 }).read("too long a name", "name", "US")).toThrow("at most 5 characters");
  });
});

describe("an optional argument", () => {
  const lap = optional(size, "6 in | 150 mm", { US: 6, SI: 150 });
  it("reads every kind of blank as its default, in the system's own round number", () => {
    // An invocation object stands where a host with an older signature passes one.
    for (const blank of [undefined, null, "", 0, [[null]], [[""]], [[0]], { address: "A1" }]) {
      expect(lap.read(blank, "lap", "US")).toBeCloseTo(0.1524, 12);
      expect(lap.read(blank, "lap", "SI")).toBeCloseTo(0.15, 12);
    }
  });
  it("reads 0 as a blank where the range begins above it", () => {
    expect(optional(number("Speed", { min: 0.1, max: 2 }), "1", 1).read(0, "speed", "US")).toBe(1);
  });
  it("keeps 0 where 0 means something", () => {
    expect(optional(length, "2 ft", { US: 2, SI: 0.6 }).read(0, "overlap", "US")).toBe(0);
  });
  it("still names an error cell", () => {
    expect(() => lap.read({ error: "#REF!" }, "lap", "US")).toThrow("lap holds the error #REF!");
  });
});

describe("the units", () => {
  it("are read from a cell, a range of one cell, a blank, or an older host's invocation", () => {
    for (const raw of ["SI", "si ", [["SI"]]]) expect(unitsArgument.read(raw, "units", "US")).toBe("SI");
    for (const raw of ["US", "", null, undefined, [[null]], { address: "A1" }]) {
      expect(unitsArgument.read(raw, "units", "US")).toBe("US");
    }
  });
  it("are refused where they are neither, or an error cell", () => {
    expect(() => unitsArgument.read("metric", "units", "US")).toThrow('units must be "US" or "SI"; got "metric"');
    expect(() => unitsArgument.read({ error: "#N/A" }, "units", "US")).toThrow("units holds the error #N/A");
  });
});
