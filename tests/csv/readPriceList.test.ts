import { describe, expect, it } from "vitest";
import { priceListShape, readPriceList } from "../../src/csv/readPriceList";

describe("how a price list writes its numbers", () => {
  // 1.250 and 2.500 alone could be thousands or thousandths: any column with numbers may decide, for all of them.
  it.each([
    ["Cost", "1,5"],
    ["Pack", "1,5"],
    ["Minimum", "2,5"],
    ["Waste", "0,05"],
  ])("is found out from %s too", (column, decisive) => {
    const others = ["Cost", "Pack", "Minimum", "Waste"].filter((name) => name !== column);
    // Between commas a point would be taken for the decimal mark, were it not for this one cell.
    const file = [
      `Code,${column},${others.join(",")}`,
      `A,"${decisive}",${others.map((name) => (name === "Waste" ? "0" : "1.250")).join(",")}`,
    ].join("\n");
    const list = readPriceList(file);
    expect(list.customs.decimal).toBe(",");
    for (const field of ["cost", "pack", "minimum"] as const)
      if (field !== column.toLowerCase()) expect(list.items[0]?.[field], field).toBe(1250);
  });

  it("is found out from the days of all rows", () => {
    const list = readPriceList("Code,Cost,Date\nA,1,3/4/2031\nB,1,28/4/2031");
    expect(list.items.map(({ day }) => day)).toEqual(["2031-04-03", "2031-04-28"]);
  });
});

describe("what a price list may hold besides", () => {
  it("is passed over: columns without a heading, and rows of blanks", () => {
    const list = readPriceList("Code,Cost,, Colour ,\nA,1,,grey,\n , ,,,\nB,2,,,");
    expect(list.ignored).toEqual(["Colour"]);
    expect(list.refused).toEqual([]);
    expect(list.items.map(({ code }) => code)).toEqual(["A", "B"]);
  });

  it("is read once where two columns mean the same, the first of them", () => {
    const list = readPriceList("Code,Cost,Price\nA,1,9");
    expect(list.items[0]?.cost).toBe(1);
    expect(list.ignored).toEqual(["Price"]);
  });

  it("is up to nine rows of titles", () => {
    const titles = (count: number): string => "Prices for our friends\n".repeat(count);
    expect(readPriceList(`${titles(9)}Code,Cost\nA,1`).items).toHaveLength(1);
    expect(() => readPriceList(`${titles(10)}Code,Cost\nA,1`)).toThrow("among its first 10 rows");
  });

  it("is a title that looks like headings: the row that names most columns counts, the first of equals", () => {
    expect(readPriceList("Item,Price\nCode,Cost,Unit\nA,1,ton").items).toMatchObject([{ code: "A", unit: "ton" }]);
    const list = readPriceList("Code,Cost\nNumber,Price\nA,1");
    expect(list.items.map(({ code }) => code)).toEqual(["A"]);
    expect(list.refused.map(({ row }) => row)).toEqual([2]);
  });

  it("is blanks around a cell", () => {
    expect(readPriceList(" Code ;\tCost ; Unit\n A ; 2 ; ton ").items).toMatchObject([
      { code: "A", cost: 2, unit: "ton" },
    ]);
  });

  it("says of each item what the file says", () => {
    const list = readPriceList("Cost,Code,Pack,Supplier\n1,A,,\n2,B,5,Pit");
    expect([...list.said.values()]).toEqual([
      ["cost", "code"],
      ["cost", "code", "pack", "supplier"],
    ]);
  });
});

describe("a price list whose headings nobody knows", () => {
  const file = "Teil;Betrag;Einheit\nA;1,50;m\nB;2,25;m";

  it("is read by the columns that the user names, and not before both are named", () => {
    expect(() => readPriceList(file)).toThrow("must have a row of headings with Code and Cost");
    expect(priceListShape(file)).toMatchObject({ headings: ["Teil", "Betrag", "Einheit"], columns: new Map() });
    expect(() => readPriceList(file, { columns: new Map([["code", 0]]) })).toThrow("Code and Cost");
    const columns = new Map([["code", 0] as const, ["cost", 1] as const]);
    expect(readPriceList(file, { columns }).items.map(({ code, cost }) => [code, cost])).toEqual([
      ["A", 1.5],
      ["B", 2.25],
    ]);
  });

  it("is refused where it is no table at all", () => {
    expect(() => priceListShape("nothing here")).toThrow("must have a row of headings");
  });
});
