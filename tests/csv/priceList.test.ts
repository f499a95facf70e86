import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COST_KINDS } from "../../src/calc/money/costKinds";
import { previewPrices } from "../../src/csv/comparePrices";
import { priceListCsv } from "../../src/csv/priceListCsv";
import { USUAL, type PriceItem } from "../../src/csv/priceItem";
import { readPriceList } from "../../src/csv/readPriceList";

const item = (code: string, cost: number, rest: Partial<PriceItem> = {}): PriceItem => ({
  code,
  cost,
  ...USUAL,
  ...rest,
});
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("readPriceList", () => {
  it("reads a plain file, whatever order its columns are in and whatever else it has", () => {
    const list = readPriceList(
      utf8(
        "Price,Item code,Colour,Pack size,Waste,Taxable,Valid from,Supplier,Description,Category,UOM,Min order\n" +
          '32.50,GR-57,grey,0.5,5%,no,5/28/2031,Quarry,"Gravel, washed",Materials,ton,8\n',
      ),
    );
    expect(list).toMatchObject({ encoding: "UTF-8", delimiter: ",", ignored: ["Colour"], refused: [] });
    expect(list.items).toEqual([
      {
        code: "GR-57",
        description: "Gravel, washed",
        kind: "material",
        unit: "ton",
        cost: 32.5,
        pack: 0.5,
        minimum: 8,
        waste: 0.05,
        supplier: "Quarry",
        taxable: false,
        day: "2031-05-28",
        theirs: "",
      },
    ]);
  });

  it("reads semicolons, decimal commas and Windows-1252, below a title", () => {
    // "Preisliste für 2031" with ü as FC and the price in € as 80.
    const text =
      "Preisliste f\u00fcr 2031;;\r\nCode;Description;Cost\r\nK1;Kies 16/32;1.250,50 \u0080\r\nK2;Splitt;0,95\r\n";
    const list = readPriceList(Uint8Array.from(text, (letter) => letter.charCodeAt(0)));
    expect(list).toMatchObject({ encoding: "Windows-1252", delimiter: ";", customs: { decimal: "," } });
    expect(list.items.map(({ code, cost }) => [code, cost])).toEqual([
      ["K1", 1250.5],
      ["K2", 0.95],
    ]);
  });

  it("is not led astray by commas inside semicolon files, nor by tabs and bars", () => {
    expect(readPriceList("Code;Description;Cost\nA;b, c, d, e;1,5\nB;f, g, h, i;2,5").items).toHaveLength(2);
    expect(readPriceList("Code\tDescription\tCost\nA\tb, c\t1.5").items).toEqual([
      item("A", 1.5, { description: "b, c" }),
    ]);
    expect(readPriceList("Code|Cost\nA|2").items).toEqual([item("A", 2)]);
    expect(readPriceList("sep=;\nCode;Cost\nA;2").items).toEqual([item("A", 2)]);
  });

  it("reads both kinds of UTF-16, as spreadsheets save their Unicode text", () => {
    const text = "\uFEFFCode\tDescription\tCost\nA\tKies für Bäche\t2";
    const little = Uint8Array.from(
      [...text].flatMap((letter) => [letter.charCodeAt(0) & 255, letter.charCodeAt(0) >> 8]),
    );
    const big = little.map((_, index) => little[index ^ 1] ?? 0);
    for (const bytes of [little, big]) {
      const list = readPriceList(bytes);
      expect(list.encoding).toBe("UTF-16");
      expect(list.items).toEqual([item("A", 2, { description: "Kies für Bäche" })]);
    }
  });

  it.each([
    "SKU,Product,Type,Per,Net price,Sold by,Min,Waste share,Vendor,Tax,As of,Their code",
    "ARTICLE NO.;Item name;Category;U.o.M.;Unit cost ($);Pack-size;Least;Waste %;Merchant;Sales tax;Price date;Supplier part no.",
    "Item|Text|Cost kind|Unit of measure|Cost per unit|Pack quantity|Minimum order|Waste percent|Source|Taxable|Day|Supplier's code",
  ])("knows the columns of %s", (heading) => {
    const mark = /[,;|]/.exec(heading)?.[0] ?? ",";
    const cells = ["G1", "Gravel", "freight", "ton", "3", "2", "4", "5%", "Pit", "no", "2031-05-28", "T1"];
    expect(readPriceList(`${heading}\n${cells.join(mark)}`).items).toEqual([
      {
        ...{ code: "G1", description: "Gravel", kind: "hauling", unit: "ton", cost: 3, pack: 2, minimum: 4 },
        ...{ waste: 0.05, supplier: "Pit", taxable: false, day: "2031-05-28", theirs: "T1" },
      },
    ]);
  });

  it("takes a first heading that begins with the letters of an archive", () => {
    expect(readPriceList(utf8("PK no,Code,Cost\n7,A,2")).items).toEqual([item("A", 2)]);
  });

  it("reads with and without a byte order mark", () => {
    expect(readPriceList(utf8("\uFEFFCode,Cost\nA,2")).items).toEqual([item("A", 2)]);
    expect(readPriceList("\uFEFFCode,Cost\nA,2").items).toEqual([item("A", 2)]);
  });

  it("names each row it can't read, and brings the rest in", () => {
    const list = readPriceList(
      [
        "Code,Cost,Pack,Waste,Date,Taxable,Kind", // row 1
        "A,1.50,1,0.1,2031-05-28,yes,material", // 2
        "B,call us,1,0.1,,,", // 3
        ",2.00,,,,,", // 4
        "C,,,,,,", // 5
        "a,9.99,,,,,", // 6: the code of row 2
        ",,,,,,", // 7: blank
        "D,3,0,250%,2031-02-31,perhaps,stuff", // 8
        'E,"4,1', // 9: never closed
        "F,5", // 10: short, but nothing needed is missing
        "G,-1,,,,,", // 11
      ].join("\n"),
    );
    expect(list.items.map(({ code }) => code)).toEqual(["A", "D", "F"]);
    expect(list.refused).toEqual([
      { row: 3, problem: '(B): cost must be a price of 0 or more; got "call us"' },
      { row: 4, problem: "has no code" },
      { row: 5, problem: "(C) has no cost" },
      { row: 6, problem: "has the code a a second time; it stands in row 2 already" },
      { row: 9, problem: "has a quotation mark that does not fit" },
      { row: 11, problem: '(G): cost must be a price of 0 or more; got "-1"' },
    ]);
    // Row 8: what is no price and no code is told, and stays as it usually is.
    expect(list.items[1]).toEqual(item("D", 3));
    expect(list.unread).toEqual([
      { field: "kind", cells: 1, row: 8, example: "stuff" },
      { field: "pack", cells: 1, row: 8, example: "0" },
      { field: "waste", cells: 1, row: 8, example: "250%" },
      { field: "taxable", cells: 1, row: 8, example: "perhaps" },
      { field: "day", cells: 1, row: 8, example: "2031-02-31" },
    ]);
  });

  it("takes a supplier's list whose own columns mean something else", () => {
    const list = readPriceList(
      "Price,Code,Cost,Type,Tax,Pack\n9.50,A,7.10,Valves,8.25%,Box of 10\n3,B,2,Pipe,8.25%,20",
    );
    expect(list.refused).toEqual([]);
    expect(list.items).toEqual([item("A", 7.1), item("B", 2, { pack: 20 })]);
    expect(list.ignored).toEqual(["Price"]);
    expect(list.unread).toEqual([
      { field: "kind", cells: 2, row: 2, example: "Valves" },
      { field: "pack", cells: 1, row: 2, example: "Box of 10" },
      { field: "taxable", cells: 2, row: 2, example: "8.25%" },
    ]);
    // Of a known item, what could not be read stays as it is.
    const present = [item("A", 7, { kind: "machine", pack: 6, taxable: false })];
    const [change] = previewPrices(present, list.items, list.said).changed;
    expect(change?.changes).toEqual([{ field: "cost", from: 7, to: 7.1 }]);
  });

  it("reads other columns and the other decimal mark where the user says so", () => {
    const text = "Code,Cost,List price\nA,1.250,9";
    expect(readPriceList(text).items).toEqual([item("A", 1.25)]);
    expect(readPriceList(text, { decimal: "," }).items).toEqual([item("A", 1250)]);
    const columns = new Map([...readPriceList(text).columns, ["cost", 2] as const]);
    const other = readPriceList(text, { columns });
    expect(other.items).toEqual([item("A", 9)]);
    expect(other.ignored).toEqual(["Cost"]);
  });

  it("refuses what a cell cannot hold, by row", () => {
    const list = readPriceList(`Code,Description,Cost\nA,${"x".repeat(40_000)},1\nB,y,2\n${"C".repeat(200)},z,3`);
    expect(list.items.map(({ code }) => code)).toEqual(["B"]);
    expect(list.refused[0]?.problem).toContain("description has 40000 characters; a cell holds 32767");
    expect(list.refused[1]?.problem).toContain("a code of 200 characters");
  });

  it("says what a file needs when it is no price list", () => {
    for (const text of ["", "hello", "Code,Name\nA,b", "\u0000\u0001\u0002"]) {
      expect(() => readPriceList(text)).toThrow("the file must have a row of headings with Code and Cost");
    }
  });

  it("reads 20,000 rows within a second", () => {
    const text = priceListCsv(
      Array.from({ length: 20_000 }, (_, i) =>
        item(`CODE-${i}`, (i % 9973) / 100, {
          description: `Item ${i}, "sold" by the piece`,
          supplier: `S${i % 60}`,
          day: "2031-05-28",
        }),
      ),
    );
    const bytes = utf8(text);
    readPriceList(bytes.slice(0, 100_000)); // warm; the last row may be cut
    const times = [0, 1, 2].map(() => {
      const before = process.cpuUsage();
      expect(readPriceList(bytes).items).toHaveLength(20_000);
      // The processor's own time: the clock would count what else the machine is doing.
      return process.cpuUsage(before).user / 1000;
    });
    expect(Math.min(...times)).toBeLessThan(1000);
  });
});

describe("a price list written and read back", () => {
  const text = fc
    .string({ unit: fc.constantFrom(..."abZ019 =+-@'\",;.\téü½|%".split("")), maxLength: 12 })
    .map((s) => s.trim());
  const items = fc.uniqueArray(
    fc.record({
      code: text.filter((code) => code !== ""),
      description: text,
      kind: fc.constantFrom(...COST_KINDS),
      unit: fc.constantFrom("ton", "each", "m³", "-"),
      cost: fc.integer({ min: 0, max: 1e8 }).map((n) => n / 1000),
      pack: fc.integer({ min: 1, max: 1e5 }).map((n) => n / 100),
      minimum: fc.nat(500),
      waste: fc.integer({ min: 0, max: 200 }).map((n) => n / 100),
      supplier: text,
      taxable: fc.boolean(),
      day: fc.constantFrom("", "2031-05-28", "2030-12-01"),
      theirs: text,
    }),
    { maxLength: 12, selector: ({ code }) => code.toLowerCase() },
  );

  it("is the same list in either custom (fast-check)", () => {
    fc.assert(
      fc.property(items, fc.constantFrom(".", ","), fc.boolean(), (list, decimal, mark) => {
        const back = readPriceList(utf8(priceListCsv(list, { decimal: decimal as "." | ",", mark })));
        expect(back.refused).toEqual([]);
        expect(back.items).toEqual(list);
      }),
    );
  });

  it("holds no cell that a spreadsheet would run, and keeps negative numbers", () => {
    const csv = priceListCsv([item("=A1", 5, { description: "@SUM(A1:A9)", supplier: "+1 555" })]);
    expect(csv).toContain("\r\n'=A1,'@SUM(A1:A9),material,each,5,1,0,0,'+1 555,yes,,\r\n");
  });
});

describe("taking a price list over", () => {
  const present = [item("A", 1), item("B", 2, { supplier: "Yard" }), item("C", 3)];
  const file = [item("a", 1.2), item("B", 2, { supplier: "Yard" }), item("D", 4)];
  const preview = previewPrices(present, file);

  it("shows first what is new, changed, the same and not in the file", () => {
    expect(preview.added.map(({ code }) => code)).toEqual(["D"]);
    // Our own code stays as we write it; the file's spelling changes nothing.
    expect(preview.changed).toMatchObject([{ code: "A", changes: [{ field: "cost", from: 1, to: 1.2 }] }]);
    expect(preview.same.map(({ code }) => code)).toEqual(["B"]);
    expect(preview.kept.map(({ code }) => code)).toEqual(["C"]);
  });

  it("compares 20,000 rows without delay", () => {
    const list = Array.from({ length: 20_000 }, (_, i) => item(`C${i}`, i));
    const start = process.cpuUsage();
    expect(previewPrices(list, list).same).toHaveLength(20_000);
    expect(process.cpuUsage(start).user / 1000).toBeLessThan(1000);
  });
});

describe("the source of the price list files", () => {
  it("talks to no sheet and no page", () => {
    for (const file of ["readPriceList", "comparePrices", "writeCsv"]) {
      const source = readFileSync(new URL(`../../src/csv/${file}.ts`, import.meta.url), "utf8");
      expect(source).not.toMatch(/from "\.\.\/(host|workbook|taskpane|bench)/);
    }
  });
});
