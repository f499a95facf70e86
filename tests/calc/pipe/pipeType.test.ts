import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { PIPE_TYPE_NAMES } from "../../../src/calc/pipe/bore";
import { readPipeType, readWrittenPipeType, type WrittenPipeType } from "../../../src/calc/pipe/pipeType";

describe("readPipeType", () => {
  it.each([
    ["sch40", "Sch 40 PVC"],
    ["Schedule 80", "Sch 80 PVC"],
    ["PVC sdr-26", "SDR 26 PVC"],
    ["flex pvc", "Flexible PVC"],
    ["PVC-U PN 10", "PVC-U PN10"],
    ["uPVC PN16", "PVC-U PN16"],
    ["HDPE PN10", "PE100 PN10"],
    ["pe sidr 15", "PE SIDR 15"],
    ["bore", "Bore"],
  ])("reads %s as %s", (text, name) => expect(readPipeType(text)).toBe(name));

  it("reads every name as itself (fast-check: in any case and spacing)", () => {
    fc.assert(
      fc.property(fc.constantFrom(...PIPE_TYPE_NAMES), fc.boolean(), (name, upper) => {
        expect(readPipeType(`  ${upper ? name.toUpperCase() : name.toLowerCase()} `)).toBe(name);
      }),
    );
  });

  it("offers the names that could be meant", () => {
    expect(() => readPipeType("PN10")).toThrow("fits more than one; use one of PVC-U PN10, PE100 PN10");
    expect(() => readPipeType("copper")).toThrow('pipe type "copper" is not known; use one of Sch 40 PVC');
    expect(() => readPipeType("")).toThrow("is not known");
  });
});

describe("readWrittenPipeType", () => {
  it.each([
    ["Flexible PVC", { type: "Flexible PVC" }],
    ["flex pvc, C 120", { type: "Flexible PVC", hazenWilliams: 120 }],
    ["Bore C=135", { type: "Bore", hazenWilliams: 135 }],
    ["C130", { hazenWilliams: 130 }],
    ["PE100 PN10, roughness 0.02 mm", { type: "PE100 PN10", roughness: 0.00002 }],
    ["roughness 0.001 in", { roughness: 0.0000254 }],
    ["bore, C 140, roughness 0.1", { type: "Bore", hazenWilliams: 140, roughness: 0.0001 }],
  ])("reads %s", (text, { type, ...rest }: WrittenPipeType) => {
    const written = readWrittenPipeType(text);
    expect(written.type).toBe(type);
    expect(written.hazenWilliams).toBe(rest.hazenWilliams);
    expect(written.roughness ?? 0).toBeCloseTo(rest.roughness ?? 0, 12);
  });

  it("names what is out of range, or not understood", () => {
    expect(() => readWrittenPipeType("Bore, C 30")).toThrow(
      "pipe type: C of Hazen-Williams must be 60 to 160, 130 to 150 for plastic; got 30",
    );
    expect(() => readWrittenPipeType("Bore, roughness 6 mm")).toThrow(
      "pipe type: roughness must be 0 to 5 mm; got 6 mm",
    );
    expect(() => readWrittenPipeType("Bore, roughness 2 gpm")).toThrow("pipe type: roughness");
    expect(() => readWrittenPipeType("copper C 130")).toThrow('pipe type "copper" is not known');
    expect(() => readWrittenPipeType("")).toThrow("is not known");
  });
});
