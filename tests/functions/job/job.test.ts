import { describe, expect, it } from "vitest";
import { findDeclaration, loadLater } from "../../../src/functions/catalogue";

await loadLater();

type Table = readonly (readonly (string | number)[])[];

const call = (name: string, ...args: unknown[]): Table => findDeclaration(name)?.evaluate(args) as Table;
const row = (table: Table, name: string): readonly (string | number)[] => table.find(([first]) => first === name) ?? [];

const SIX = [
  ["fall", "2'9"],
  ["run", 12],
  ["lip", "24 in"],
  ["water", "clear"],
  ["soil", "clay"],
  ["way in", "don't know"],
];

describe("DRAFT", () => {
  it("gives what was left open, with a reason, and nothing that was said", () => {
    const table = call("DRAFT", SIX);
    expect(row(table, "DropCount")[1]).toBe(5);
    expect(row(table, "BedWidth").slice(1, 5)).toEqual([3, expect.any(Number), expect.any(Number), "ft"]);
    expect(row(table, "Run")).toEqual([]);
    for (const [, , , , , reason] of table.slice(1)) expect(reason).toMatch(/\.$/);
  });

  it("takes names of cells and blanks, and the other units", () => {
    const said = [
      ["FallTyped", 0.95],
      ["Run", "3,8 m"],
      ["BedWidth", ""],
      ["", ""],
    ];
    const table = call("DRAFT", said, null, null, null, "SI");
    expect(row(table, "DropCount")[1]).toBe(5);
    expect(row(table, "BedWidth")[4]).toBe("m");
  });

  it("takes a word of a list as the list writes it, and passes over how many rows a table has", () => {
    const table = call("DRAFT", [
      ["FrictionMethod", "Darcy-Weisbach"],
      ["LipTable", "1 rows"],
      ["lip", "24 in"],
    ]);
    expect(row(table, "BedWidth")[1]).toBe(3);
  });

  it.each<[string, unknown, RegExp]>([
    ["a name that is none", [["depth of joy", 3]], /facts row 1: "depth of joy" is no fact/],
    ["a fall below zero", [["fall", -3]], /facts row 1 \(fall\): the value must be 0.1 to 60 ft; got -3/],
    ["a soil that is none", [["soil", "moon"]], /facts row 1 \(soil\): the value must be one of/],
  ])("says what is wrong with %s", (_, facts, sentence) => {
    expect(() => call("DRAFT", facts)).toThrow(sentence);
  });
});

describe("values apart from their names", () => {
  const names = SIX.map(([name]) => [name]);
  const said = SIX.map(([, value]) => value);

  it("count as beside them, the first of several columns that is not blank", () => {
    const whole = call("DRAFT", SIX);
    expect(
      call(
        "DRAFT",
        names,
        said.map((value) => [value]),
      ),
    ).toEqual(whole);
    expect(
      call(
        "DRAFT",
        names,
        said.map((value, row) => (row % 2 ? [value, "9 ft"] : ["", value])),
      ),
    ).toEqual(whole);
  });

  it("say which cell holds an error", () => {
    expect(() => call("DRAFT", names, [[3], [{ error: "#N/A" }]])).toThrow("values row 2 (run) holds the error #N/A");
  });
});

describe("PRICERANGE", () => {
  it("gives low, likely and high in order, and shares of what to measure next", () => {
    const table = call("PRICERANGE", SIX);
    const [low, likely, high] = ["Low", "Likely", "High"].map((name) => Number(row(table, name)[1]));
    expect(low).toBeLessThan(likely ?? 0);
    expect(likely).toBeLessThan(high ?? 0);
    expect(row(table, "Trials without a price")[2]).toMatch(/^of \d+$/);
    const shares = table.slice(13).map(([, , , , , share]) => Number(share));
    expect(shares.length).toBeGreaterThan(3);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
  });
});

describe("prices and pumps of the workbook", () => {
  const PUMPS = [
    ["Own A", 400, 300, 12, 3000, 9, 4500, 5, "", "", "", "", "", ""],
    ["Own B", 900, 700, 18, 6000, 13, 9000, 7, "", "", "", "", "", ""],
  ];

  it("draft with the pumps that are handed over, and say so by name", () => {
    const pump = (pumps: unknown): string => String(row(call("PRICERANGE", SIX, null, null, pumps), "Pump")[1]);
    expect(pump(PUMPS)).toMatch(/Own [AB]/);
    expect(pump(null)).not.toMatch(/Own/);
  });

  it("count a price list without a single price as none", () => {
    const blank = [["Liner", "LINER", "ft2", "", "", "", "", "", "", "", "", "", ""]];
    expect(call("PRICERANGE", SIX, null, blank)).toEqual(call("PRICERANGE", SIX));
    // As when pumps and rolls are typed and nothing else: their lines are priced by the workbook itself.
    const worked = [["Liner", "LINER", "ft2", 1.2, "", "", "", "", "material", "yes", "", "", ""]];
    expect(call("DRAFT", SIX, null, worked)).toEqual(call("DRAFT", SIX));
  });

  it("have no price where the list lacks what the design needs", () => {
    const only = [["Fabric", "FABRIC", "ft2", 0.3, "", "", "", "", "material", "yes", "", "", ""]];
    expect(() => call("PRICERANGE", SIX, null, only)).toThrow("facts lead to no price");
  });
});

describe("OPTION", () => {
  it("sets a changed job beside the job: three feet more of lip cost more and take longer", () => {
    const table = call("OPTION", SIX, [["lip", "60 in"]]);
    expect(Number(row(table, "Price")[3])).toBeGreaterThan(0);
    expect(Number(row(table, "Days")[3])).toBeGreaterThan(0);
    expect(Number(row(table, "Flow")[3])).toBeGreaterThan(0);
    expect(Number(row(table, "Price")[1])).toBe(Number(row(call("PRICERANGE", SIX), "Likely")[1]));
  });
});
