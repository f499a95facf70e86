import { describe, expect, it } from "vitest";
import { daySerial, isoDay } from "../../src/host/dates";
import type { PriceItem } from "../../src/csv/priceItem";
import { readPriceList } from "../../src/csv/readPriceList";
import { purchaseLines } from "../../src/taskpane/orders";
import { comparePriceRows, priceWrites, readPriceRows } from "../../src/taskpane/prices";
import { RATE_COLUMNS } from "../../src/workbook/rateColumns";
import { TAKEOFF_KEYS } from "../../src/workbook/sheets/takeoff/takeoffColumns";

describe("days", () => {
  // The 1900 date system: 1 January 2026 is day 46,023 (45,658 on 1 January 2025, and 365 more).
  it.each([
    [46_023, "2026-01-01"],
    [45_658, "2025-01-01"],
    [61, "1900-03-01"],
  ])("%i is %s", (serial, iso) => {
    expect(isoDay(serial)).toBe(iso);
    expect(daySerial(iso)).toBe(serial);
  });

  it("are blank for anything else", () => {
    expect([isoDay(""), isoDay("soon"), isoDay(-4), isoDay(NaN), daySerial("soon"), daySerial("2026-13-40")]).toEqual([
      "",
      "",
      "",
      "",
      "",
      "",
    ]);
  });
});

describe("the lines to order", () => {
  const row = (cells: Partial<Record<(typeof TAKEOFF_KEYS)[number], string | number>>) =>
    TAKEOFF_KEYS.map((key) => cells[key] ?? "");

  it("are those with a quantity, a price and a supplier, in the order of the suppliers", () => {
    const takeoff = [
      row({ code: "A", description: "Liner", unit: "ft²", order: 300, price: 0.92, supplier: "Pond Yard" }),
      row({ code: "B", description: "Gravel", unit: "ton", order: 2.5, price: 40, supplier: "Pit" }),
      row({ code: "C", order: 0, price: 4, supplier: "Pit" }),
      row({ code: "D", order: 3, price: "", supplier: "Pit" }),
      row({ code: "E", order: 3, price: 1, supplier: "" }),
      row({ code: "F", description: "Pump", unit: "each", order: 1, price: 410, supplier: "Unnumbered" }),
      row({ description: "What", order: "To order", price: "Unit cost", supplier: "Supplier" }),
    ];
    const suppliers = [
      ["Pit", "HB-101", 46_182],
      ["Pond Yard", "HB-102", ""],
      ["", "", ""],
    ];
    const [codes, texts] = [
      [["A"], ["F"], [""]],
      [["45 mil"], ["Brook 40"], [""]],
    ];
    const lines = purchaseLines([takeoff, suppliers, codes, texts]);
    expect(lines.map(({ code, order, wanted }) => [code, order, wanted])).toEqual([
      // 46,182 is 159 days after 1 January 2026: 9 June 2026.
      ["B", "HB-101", "2026-06-09"],
      ["A", "HB-102", ""],
      ["F", "Unnumbered", ""],
    ]);
    expect(lines.map(({ which }) => which)).toEqual(["", "45 mil", "Brook 40"]);
    expect(lines[0]).toMatchObject({ description: "Gravel", quantity: 2.5, unit: "ton", price: 40, supplier: "Pit" });
  });
});

describe("a price list from a file", () => {
  const item = (code: string, more: Partial<PriceItem> = {}): PriceItem => ({
    code,
    description: code.toUpperCase(),
    kind: "material",
    unit: "each",
    cost: 10,
    pack: 1,
    minimum: 0,
    waste: 0,
    supplier: "Pit",
    taxable: true,
    day: "2026-01-01",
    theirs: "",
    ...more,
  });
  const row = (from: PriceItem | undefined) =>
    RATE_COLUMNS.map(({ field }) =>
      from === undefined
        ? ""
        : field === "day"
          ? daySerial(from.day)
          : field === "taxable"
            ? from.taxable
              ? "yes"
              : "no"
            : from[field],
    );
  const rows = readPriceRows([row(item("A")), row(item("B", { taxable: false })), row(undefined)]);
  const place = { sheet: "Rates", top: 9, left: 0, bottom: 11, right: 11 };
  const column = (field: string): string =>
    "ABCDEFGHIJKL".charAt(RATE_COLUMNS.findIndex((entry) => entry.field === field));

  it("reads the rows of the sheet as items", () => {
    expect(rows).toEqual([item("A"), item("B", { taxable: false }), undefined]);
  });

  it("writes only the fields that change, and new items into free rows", () => {
    const changes = comparePriceRows(rows, [
      item("a", { cost: 12 }),
      item("B", { taxable: false }),
      item("C", { day: "2026-01-02" }),
      item("D"),
    ]);
    expect(changes.crowded.map(({ code }) => code)).toEqual(["D"]);
    const writes = priceWrites(rows, changes, place, () => true);
    const at = (field: string): number => RATE_COLUMNS.findIndex((entry) => entry.field === field);
    expect(writes.map(({ place }) => place)).toEqual([`Rates!${column("cost")}10`, "Rates!A12:L12"]);
    expect(writes[0]?.values).toEqual([[12]]);
    const added = writes[1]?.values[0] ?? [];
    expect([added[at("code")], added[at("day")], added[at("taxable")]]).toEqual(["C", 46_024, "yes"]);
  });

  it("changes nothing of a known item that the file does not say: no column for it, or a blank cell", () => {
    const known = readPriceRows([
      row(item("A", { description: "Pump, as we call it", unit: "ton", pack: 25, waste: 0.1, taxable: false })),
    ]);
    const list = readPriceList("Code,Cost,Pack,Unit,Waste,Taxable,Supplier,Cost kind\nA,12,,,,,,\n");
    const { preview } = comparePriceRows(known, list.items, list.said);
    expect(preview.changed.map(({ changes }) => changes)).toEqual([[{ field: "cost", from: 10, to: 12 }]]);
  });

  it("finds an item by what the supplier calls it, and keeps our code", () => {
    const known = readPriceRows([row(item("GRAVEL", { theirs: "40-118" }))]);
    const list = readPriceList("Code,Cost\n40-118,12\n");
    const { preview } = comparePriceRows(known, list.items, list.said);
    expect(preview.changed.map(({ code, changes }) => [code, changes])).toEqual([
      ["GRAVEL", [{ field: "cost", from: 10, to: 12 }]],
    ]);
    expect(preview.added).toEqual([]);
  });

  it("lets no supplier's code take the row of an item whose own code is in the file too", () => {
    const known = readPriceRows([row(item("GRAVEL", { theirs: "40-118" }))]);
    const list = readPriceList("Code,Cost\n40-118,12\nGravel,13\n");
    const { preview } = comparePriceRows(known, list.items, list.said);
    expect(preview.changed).toMatchObject([{ code: "GRAVEL", changes: [{ field: "cost", from: 10, to: 13 }] }]);
    expect(preview.added.map(({ code }) => code)).toEqual(["40-118"]);
  });

  it("changes the first of two rows with one code, the one a lookup finds, and leaves the other", () => {
    const known = readPriceRows([row(item("A")), row(item("a", { cost: 7 }))]);
    const list = readPriceList("Code,Cost\nA,12\n");
    const changes = comparePriceRows(known, list.items, list.said);
    expect(changes.preview.changed).toMatchObject([{ code: "A", changes: [{ field: "cost", from: 10, to: 12 }] }]);
    expect(priceWrites(known, changes, place, () => true)).toEqual([
      { place: `Rates!${column("cost")}10`, values: [[12]] },
    ]);
  });

  it("brings no formula into the workbook, and knows the text again", () => {
    const list = readPriceList(`Code,Description,Cost\nEVIL,"=HYPERLINK(""http://x"")",1\n=1+1,b,2\n`);
    const free = readPriceRows([row(undefined), row(undefined)]);
    const [write] = priceWrites(free, comparePriceRows(free, list.items, list.said), place, () => true);
    const texts = (write?.values ?? []).flat().filter((value) => typeof value === "string");
    expect(texts).toContain(`'=HYPERLINK("http://x")`);
    expect(texts.filter((value) => value.startsWith("="))).toEqual([]);
    const again = comparePriceRows(readPriceRows(write?.values ?? []), list.items, list.said);
    expect(again.preview.same).toHaveLength(2);
  });

  it("takes 20,000 lines in a few blocks, each in its row", () => {
    const free = readPriceRows([row(item("A")), ...Array.from({ length: 20_050 }, () => row(undefined))]);
    const file = Array.from({ length: 20_000 }, (_, index) => item(`N${index}`));
    const changes = comparePriceRows(free, file);
    const writes = priceWrites(free, changes, { ...place, top: 99, bottom: 20_149 }, () => true);
    expect(writes.length).toBeLessThan(20);
    const cells = writes.flatMap(({ values }) => values);
    expect(cells.length).toBe(20_000);
    expect(writes[0]?.place).toMatch(/^Rates!A101:L/);
    expect(writes[writes.length - 1]?.place).toMatch(/:L20100$/);
    const code = RATE_COLUMNS.findIndex(({ field }) => field === "code");
    expect([cells[0]?.[code], cells[19_999]?.[code]]).toEqual(["N0", "N19999"]);
  });

  it("writes no column of new lines that says what its blank cells say, unless something stands there", () => {
    const list = readPriceList("Code,Cost,Unit,Supplier\nN1,5,ft,Yard\nN2,6,ft,Yard\n");
    const blank = RATE_COLUMNS.map(() => "" as string | number);
    const held = [blank, blank.map((cell, at) => (RATE_COLUMNS[at]?.field === "waste" ? 0.2 : cell))];
    const free = readPriceRows(held);
    const area = { ...place, bottom: place.top + 1 };
    const writes = priceWrites(free, comparePriceRows(free, list.items, list.said), area, () => true, held);
    const fields = writes.map(({ values }) => values[0]?.length);
    // Code, unit, cost and pack stand side by side, waste and supplier two on: 20% without a code is none of theirs.
    expect(fields).toEqual([4, 2]);
    expect(writes.map(({ values }) => values)).toEqual([
      [
        ["N1", "ft", 5, 1],
        ["N2", "ft", 6, 1],
      ],
      [
        [0, "Yard"],
        [0, "Yard"],
      ],
    ]);
    const after = held.map((row) => [...row]);
    for (const { place: name, values } of writes) {
      const [, from = ""] = /!([A-Z])/.exec(name) ?? [];
      values.forEach((row, down) => after[down]?.splice(from.charCodeAt(0) - 65, row.length, ...(row as string[])));
    }
    // Read again, the list has nothing new.
    expect(comparePriceRows(readPriceRows(after), list.items, list.said).preview.same).toHaveLength(2);
  });

  it("leaves out what the user does not accept", () => {
    const changes = comparePriceRows(rows, [item("A", { cost: 12 }), item("C")]);
    expect(priceWrites(rows, changes, place, () => false)).toEqual([]);
    expect(priceWrites(rows, changes, place, (code) => code === "A")).toEqual([
      { place: `Rates!${column("cost")}10`, values: [[12]] },
    ]);
  });
});
