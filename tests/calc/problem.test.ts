import { describe, expect, it } from "vitest";
import { missing, ofPart } from "../../src/calc/problem";

describe("ofPart", () => {
  it("says which part a problem is of, and keeps its kind", () => {
    const failing = (): never =>
      ofPart("run 2", () => {
        throw missing("no such stone");
      });
    expect(failing).toThrow(expect.objectContaining({ kind: "missing", message: "run 2: no such stone" }));
  });

  it("leaves answers and defects as they are", () => {
    expect(ofPart("run 2", () => 3)).toBe(3);
    const defect = new TypeError("x is undefined");
    const failing = (): never =>
      ofPart("run 2", () => {
        throw defect;
      });
    expect(failing).toThrow(defect);
  });
});
