import { describe, expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { calculate } from "../../../src/workbook/build";
import { defineSheet, type SheetLayout } from "../../../src/workbook/layout";
import { columnLetters, Ref } from "../../../src/workbook/layout/address";
import { settleBlanks, whenFilled } from "../../../src/workbook/layout/conditions";
import { formatOf, unitOf } from "../../../src/workbook/layout/formats";
import type { CellModel, WorkbookModel } from "../../../src/workbook/model";
import { cellAt } from "../../../src/workbook/model";

/** A workbook of one sheet and the cells of it that the test names. */
function laidOut(
  build: (s: SheetLayout) => void,
  system: "US" | "SI" = "US",
  filled: "demo" | "blank" = "demo",
): { model: WorkbookModel; cell: (row: number, column: number) => CellModel | undefined } {
  const model = assemble([defineSheet({ name: "Try", order: 1, build })], system, filled);
  const [sheet] = model.sheets;
  return { model, cell: (row, column) => sheet && cellAt(sheet, row, column) };
}

const flow = {
  name: "Flow",
  label: "Flow",
  kind: "flow",
  min: { US: 10, SI: 40 },
  max: 9000,
  message: "Flow wanted.",
} as const;

it("refuses a table that reaches beyond the sheet's columns, in place of breaking its texts without end", () => {
  const table = {
    name: "Wide",
    rows: 1,
    columns: ["a", "b", "c"].map((key) => ({ key, title: key, kind: "text" as const })),
  };
  const build = (s: SheetLayout): void => {
    s.widths([20, 10]);
    s.table(table);
  };
  expect(() => laidOut(build)).toThrow("Try: column C has no width; widths() declares 2 columns");
});

describe("addresses", () => {
  it("count columns as spreadsheets do", () => {
    expect([1, 26, 27, 52, 53, 702, 703].map(columnLetters)).toEqual(["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]);
  });

  it("read as formula text: the name, or the full address", () => {
    const ref = new Ref("Pump", 4, 1, 7, 3);
    expect(`${ref} ${ref.cell(2, 3)} ${ref.column(2)} ${ref.column(2, 1)}`).toBe(
      "Pump!$A$4:$C$7 Pump!$C$5 Pump!$B$4:$B$7 Pump!$B$5:$B$7",
    );
    expect(`${new Ref("Pump", 4, 1, 7, 3, "RouteTable")}`).toBe("RouteTable");
  });
});

describe("kinds", () => {
  it("give the unit of the system, and the currency of the job for money", () => {
    expect([
      unitOf("flow", "US"),
      unitOf("flow", "SI"),
      unitOf("size", "SI"),
      unitOf("load", "SI"),
      unitOf("hours", "US"),
    ]).toEqual(["gph", "L/h", "mm", "t", "h"]);
    expect(unitOf("money", "SI")).toBe("=Currency");
    expect([formatOf("size", "US"), formatOf("size", "SI"), formatOf("share", "US")]).toEqual([
      "0.00",
      "#,##0",
      "0.0%",
    ]);
  });
});

describe("an input", () => {
  it("is an unlocked cell with its unit, a range and a message that says both", () => {
    const { model, cell } = laidOut((s) => void s.input({ ...flow, demo: { US: 1500, SI: 5500 } }), "SI");
    expect(cell(1, 2)).toMatchObject({ value: 5500, style: { unlocked: true, format: "#,##0" } });
    expect(cell(1, 3)?.value).toBe("L/h");
    expect(model.names[0]).toEqual({ name: "Flow", sheet: "Try", area: { top: 1, left: 2, bottom: 1, right: 2 } });
    expect(model.sheets[0]?.validations[0]).toMatchObject({
      kind: "decimal",
      min: 40,
      max: 9000,
      message: "Flow wanted. In L/h, 40 to 9000.",
    });
  });

  it("is empty in the blank workbook unless it has a usual value", () => {
    const build = (s: SheetLayout): void => {
      s.input({ ...flow, demo: 1500 });
      s.input({ ...flow, name: "Other", usual: 20 });
    };
    const { cell } = laidOut(build, "US", "blank");
    expect([cell(1, 2)?.value, cell(2, 2)?.value]).toEqual([undefined, 20]);
  });

  it("is refused without a range, with a long message, or with a name given before", () => {
    const bad =
      (spec: object): (() => unknown) =>
      () =>
        laidOut((s) => void s.input({ ...flow, ...spec }));
    expect(bad({ min: undefined })).toThrow('the input "Flow" needs min and max');
    expect(bad({ message: "x".repeat(226) })).toThrow("longer than 225");
    expect(() => laidOut((s) => [flow, flow].forEach((one) => s.input(one)))).toThrow("the name Flow is given twice");
  });

  it("counts as blank until it is filled, unless it is optional", async () => {
    const { model } = laidOut(
      (s) => {
        s.input(flow);
        s.input({ ...flow, name: "Other", optional: true });
      },
      "US",
      "blank",
    );
    const { results } = await calculate(model);
    // Input rows 1 and 2, section row 3, heads row 4, check row 5.
    expect([results.get("Try!B5"), results.get("Try!E5")]).toEqual([1, "FIX"]);
  });
});

describe("a result", () => {
  it("stays blank while what it needs is blank", () => {
    expect(whenFilled("=A*B", ["A", "B"])).toBe('=IF(OR(«A»,«B»),"",A*B)');
    expect(whenFilled("A", ["A"])).toBe('=IF(«A»,"",A)');
    expect(whenFilled("A", undefined)).toBe("=A");
    const places = {
      isRange: (name: string) => name === "B",
      headOf: (need: string) => (need === "C" ? "Try!A1" : undefined),
    };
    expect(settleBlanks('=IF(OR(«A»,«B»),"",A*B)', places)).toBe('=IF(OR(A="",SUMPRODUCT((B<>"")*1)=0),"",A*B)');
    // The head of a table holds words, or the error that keeps the rest of it blank.
    expect(settleBlanks('=IF(«C»,"",C)', places)).toBe('=IF(OR(C="",N(Try!A1)>0),"",C)');
  });

  it("passes its blank on to whatever needs it", async () => {
    const build = (s: SheetLayout): void => {
      s.input({ ...flow, demo: 100 });
      s.result({ name: "Double", label: "Double", kind: "flow", formula: "Flow*2", needs: ["Flow"] });
      s.result({ name: "Four", label: "Four", kind: "flow", formula: "Double*2", needs: ["Double"] });
    };
    const values = async (filled: "demo" | "blank"): Promise<unknown[]> => {
      const { results } = await calculate(laidOut(build, "US", filled).model);
      return [results.get("Try!B2"), results.get("Try!B3")];
    };
    expect(await values("demo")).toEqual([200, 400]);
    expect(await values("blank")).toEqual(["", ""]);
  });
});

describe("a table", () => {
  const table = {
    name: "Parts",
    rows: 3,
    columns: [
      { key: "size", title: "Size", kind: "size", input: { min: 0, max: 99, message: "Size." } },
      { key: "count", title: "Count", kind: "count", name: "Counts", input: { min: 0, max: 9, message: "Count." } },
      { key: "sum", title: "Sum", kind: "number", formula: "=[size]*[count]+SUM([count:all])+[#]" },
    ],
    demo: {
      US: [[2, 3]],
      SI: [
        [50, 3],
        [40, 1],
      ],
    },
    totals: { label: "All", keys: ["count"], names: { count: "AllCounts" } },
  } as const;

  it("has a head with units, input cells, formulas of its rows, totals and names", () => {
    const { model, cell } = laidOut((s) => void s.table(table), "SI");
    expect([cell(1, 1)?.value, cell(1, 2)?.value]).toEqual(["Size (mm)", "Count"]);
    expect([cell(2, 1)?.value, cell(3, 1)?.value, cell(4, 1)?.value]).toEqual([50, 40, undefined]);
    expect(cell(3, 3)?.formula).toBe("=A3*B3+SUM($B$2:$B$4)+2");
    expect(cell(5, 2)?.formula).toBe('=IF(SUMPRODUCT((B2:B4<>"")*1)=0,"",SUM(B2:B4))');
    expect(model.names.map(({ name }) => name)).toEqual(["Counts", "AllCounts", "Parts"]);
    expect(model.sheets[0]?.validations.map(({ area }) => area.bottom)).toEqual([4, 4]);
  });

  it("refuses an unknown column and too many rows", () => {
    const formula = { key: "bad", title: "Bad", kind: "number", formula: "=[width]" } as const;
    expect(() => laidOut((s) => void s.table({ ...table, columns: [formula] }))).toThrow('no column "width"');
    expect(() => laidOut((s) => void s.table({ ...table, rows: 1 }), "SI")).toThrow("a table of 1 rows is given 2");
  });
});

describe("a spill", () => {
  it("reserves its area, and its cells are read after it has filled them", async () => {
    const { model } = laidOut((s) => {
      const levels = s.spill({
        name: "Steps",
        header: "ours",
        rows: 4,
        formula: "SEQUENCE(3,2)",
        columns: [
          { title: "One", kind: "count" },
          { title: "Two", kind: "count" },
        ],
      });
      s.result({ name: "Last", label: "Last", kind: "count", formula: `${levels.cell(3, 2)}*10` });
    });
    const { results, named } = await calculate(model);
    expect(results.get("Try!A2")).toEqual([
      [1, 2],
      [3, 4],
      [5, 6],
    ]);
    expect(named("Steps")).toEqual([
      [1, 2],
      [3, 4],
      [5, 6],
      ["", ""],
    ]);
    expect(results.get("Try!B6")).toBe(60);
  });
});

describe("a check", () => {
  const check = {
    label: "Flow",
    value: "Flow",
    limit: 100,
    cure: "Lower the flow.",
    fix: "Flow",
    kind: "flow",
    needs: ["Flow"],
  } as const;
  const verdict = async (typed: number | undefined, more: object = {}): Promise<unknown> => {
    const build = (s: SheetLayout): void => {
      s.input({ ...flow, optional: true, ...(typed === undefined ? {} : { usual: typed }) });
      s.check({ ...check, ...more });
    };
    return (await calculate(laidOut(build, "US", "blank").model)).results.get("Try!E4");
  };

  it("says OK, FIX, LOOK, to fill or ERROR", async () => {
    expect(await verdict(99)).toBe("OK");
    expect(await verdict(101)).toBe("FIX");
    expect(await verdict(101, { weight: "look" })).toBe("LOOK");
    expect(await verdict(undefined)).toBe("to fill");
    expect(await verdict(99, { value: "Flow/0" })).toBe("ERROR");
    expect(await verdict(99, { limit: "=1/0" })).toBe("ERROR");
    expect(await verdict(99, { limit: '=""' })).toBe("ERROR");
  });

  it("says beside an amount in which money it is, and what it is, though the sheet's head says the money too", () => {
    const { model } = laidOut((s) => {
      s.saysCurrency = true;
      s.input({ ...flow, usual: 1 });
      s.check({ ...check, kind: "money" });
      s.check({ ...check, kind: "money", over: "spare" });
      s.check({ ...check, kind: "count", over: "people" });
    });
    const units = [...(model.sheets[0]?.rows.values() ?? [])].map((row) => row.get(3));
    expect(units.slice(-3).map((unit) => unit?.formula ?? unit?.value)).toEqual([
      "=Currency",
      '=Currency&" spare"',
      "people",
    ]);
  });

  it("judges a whole sheet at once, each row by its own sign, least and weight", async () => {
    const rows: readonly (readonly [value: string, more: object, verdict: string])[] = [
      ["100", {}, "OK"],
      ["100", { sign: "at least" }, "OK"],
      ["99", { sign: "at least" }, "FIX"],
      ["100", { sign: "less than" }, "FIX"],
      ["99", { sign: "less than" }, "OK"],
      ["100", { sign: "more than", weight: "look" }, "LOOK"],
      ["101", { sign: "more than" }, "OK"],
      ["-100", { least: -100 }, "OK"],
      ["-101", { least: -100 }, "FIX"],
      ["101", { least: -100 }, "FIX"],
      ["-1", { limit: 0, least: 0 }, "FIX"],
      ["Flow/0", { weight: "look" }, "ERROR"],
      ["101", { weight: "look", stopIf: "1>0" }, "FIX"],
      ["101", { weight: "look", stopIf: "1<0" }, "LOOK"],
      // What cannot be told is no rule of thumb.
      ["101", { weight: "look", stopIf: "1/0>1" }, "FIX"],
      ["101", { weight: "look", stopOnceKnown: true }, "FIX"],
      ["101", { weight: "look", stopOnceKnown: true, limit: '="not known"' }, "LOOK"],
      ["Flow/0", { weight: "look", stopOnceKnown: true, limit: '="not known"' }, "ERROR"],
      ["Blank", { needs: ["Blank"] }, "to fill"],
    ];
    const { model } = laidOut((s) => {
      s.input({ ...flow, usual: 1 });
      s.input({ ...flow, name: "Blank", label: "Blank", optional: true });
      rows.forEach(([value, more]) => s.check({ ...check, value, ...more }));
    });
    const found = [...(await calculate(model)).results].flatMap(([cell, result]) =>
      cell.startsWith("Try!E") && Array.isArray(result) ? result.map(([verdict]) => verdict) : [],
    );
    // The first row is the sheet's own, of blank inputs.
    expect(found.slice(1).map((verdict, index) => [...(rows[index]?.slice(0, 2) ?? []), verdict])).toEqual(
      rows.map((row) => [...row]),
    );
  });
});

describe("long lists of choices", () => {
  it("go to a sheet of their own, once", () => {
    const choices = Array.from({ length: 40 }, (_, index) => `choice number ${index}`);
    const pick = { label: "Pick one", kind: "text", choices, message: "Pick." } as const;
    const { model } = laidOut((s) => {
      s.input({ ...pick, name: "First" });
      s.input({ ...pick, name: "Second" });
      s.input({ ...pick, name: "Third", choices: ["a", "b"] });
    });
    const [sheet, lists] = model.sheets;
    expect(sheet?.validations.map(({ choices: list }) => list)).toEqual(["=ListPickOne", "=ListPickOne", ["a", "b"]]);
    expect(lists?.name).toBe("Lists");
    expect(model.names.at(-1)).toEqual({
      name: "ListPickOne",
      sheet: "Lists",
      area: { top: 4, left: 1, bottom: 43, right: 1 },
    });
  });
});

it("no cell is laid out twice", () => {
  expect(() =>
    laidOut((s) => {
      s.note("One");
      s.row--;
      s.note("Two");
    }),
  ).toThrow("Try!A1 is laid out twice");
});
