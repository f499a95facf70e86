import { describe, expect, it } from "vitest";
import { number, quantity, text } from "../../../src/functions/contract/scalars";
import { optional } from "../../../src/functions/contract/optional";
import { list, table } from "../../../src/functions/contract/tables";

const pools = table("Pools", {
  area: quantity("area", "Area", { min: 0 }),
  lip_width: quantity("size", "Lip width", { above: 0 }),
});

describe("a table argument", () => {
  it("skips wholly blank rows, which some hosts pass as zeros, and keeps row numbers", () => {
    const rows = pools.read(
      [
        [10, 600],
        [null, ""],
        [0, 0],
        [4, 300],
      ],
      "pools",
      "SI",
    );
    expect(rows.map((row) => row.row)).toEqual([1, 4]);
    expect(rows[1]).toMatchObject({ area: 4, lip_width: 0.3 });
  });

  it("names a bad row by its number and column", () => {
    expect(() =>
      pools.read(
        [
          [10, 600],
          [4, -1],
        ],
        "pools",
        "SI",
      ),
    ).toThrow("pools row 2: lip width must be more than 0; got -1 mm");
    expect(() => pools.read([[10, { error: "#N/A" }]], "pools", "SI")).toThrow(
      "pools row 1: lip width holds the error #N/A",
    );
  });

  it("refuses ragged, narrow, wide and empty ranges", () => {
    expect(() => pools.read([[10, 600], [4]], "pools", "SI")).toThrow("rectangular");
    expect(() => pools.read([[10]], "pools", "SI")).toThrow("pools needs 2 columns (area, lip width); got 1");
    expect(() => pools.read([[10, 600, 5]], "pools", "SI")).toThrow("pools takes 2 columns");
    expect(() => pools.read([["", null]], "pools", "SI")).toThrow("pools is needed");
    expect(() => pools.read([], "pools", "SI")).toThrow("pools is needed");
  });

  it("does not mind blank columns behind the last one", () => {
    expect(pools.read([[10, 600, "", null]], "pools", "SI")).toHaveLength(1);
  });

  it("reads groups that repeat behind the fixed columns", () => {
    const pumps = table(
      "Pumps",
      { name: text("Name"), price: optional(number("Price", { min: 0 }), "0", 0) },
      { repeated: { flow: quantity("flow", "Flow"), head: quantity("head", "Head") } },
    );
    const [pump] = pumps.read([["A", 100, 0, 5, 3600, 2, null, null]], "pumps", "SI");
    expect(pump?.groups).toHaveLength(2);
    expect(pump?.groups[1]?.flow).toBeCloseTo(0.001, 12); // 3,600 L/h is 1 L/s
    // Some hosts pass the blank cells behind a short row as zeros.
    expect(pumps.read([["A", 100, 0, 5, 3600, 2, 0, 0]], "pumps", "SI")[0]?.groups).toHaveLength(2);
    expect(() => pumps.read([["A", 100, 10, "x"]], "pumps", "SI")).toThrow("pumps row 1: head 1");
  });
});

describe("a list argument", () => {
  const drops = list("Drops", quantity("length", "Drop", { above: 0 }), { most: 12 });
  it("reads rows, columns and single cells alike, skipping blanks", () => {
    expect(drops.read([[1], [null], [0], [2]], "drops", "SI")).toEqual([1, 2]);
    expect(drops.read([[1, 2]], "drops", "SI")).toEqual([1, 2]);
    expect(drops.read("50 cm", "drops", "SI")).toEqual([0.5]);
  });
  it("names the value that is wrong", () => {
    expect(() => drops.read([[1], [-2]], "drops", "SI")).toThrow("drops 2 must be more than 0; got -2 m");
    expect(() => drops.read([Array.from({ length: 13 }, () => 1)], "drops", "SI")).toThrow("at most 12");
  });
});
