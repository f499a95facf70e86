import { beforeAll, describe, expect, it } from "vitest";
import { sheets } from "../../../src/workbook/sheets";
import { NO_PAPERS, demo } from "./moneyJob";
import { Tried } from "./tried";

let tried: Tried;
beforeAll(async () => {
  tried = await demo();
});

describe("Orders", () => {
  it("gives every supplier his lines, and all lines to some supplier", () => {
    const suppliers = [1, 2, 3, 4, 5].map((row) => tried.value("OrderSuppliers", row));
    // In the order of their first line; East is asked for nothing. Then the two suppliers of the user's own lines.
    expect(suppliers).toEqual(["North", "South", "Haulier", "Corliss Electric (demo)", "Tern Nursery (demo)"]);
    const amount = (row: number): number => tried.number("SupplierTable", row, 5);
    expect(amount(1)).toBeCloseTo(7.81 + 108.9 + 10.01, 9);
    expect(amount(2)).toBe(560);
    const all = [1, 2, 3, 4, 5].reduce((sum, row) => sum + amount(row), 0);
    expect(all).toBeCloseTo(tried.number("TakeoffTotal") - 85, 9); // the permit has no supplier
  });

  it("shows the order of the supplier that is picked: the book's lines under its number", () => {
    // HB-101 in the book of the demo: by hand 236 + 18 × 46.50 + 187 + 465 × 0.9733 + 947 × 0.34 = 2034.56.
    expect(tried.texts("Orders")).toContain("Purchase order HB-101 to North");
    expect([1, 2, 3, 4, 5, 6].map((row) => tried.value("PrintedOrder", row, 2))).toEqual([
      ...["SPILLBOX", "MODULE", "PUMPWELL", "LINER", "FABRIC"],
      "",
    ]);
    expect(tried.number("PrintedTotal")).toBeCloseTo(2034.56, 9);
  });

  it("shows what the takeoff still asks of him while the book has nothing", async () => {
    const one = await demo({ ...NO_PAPERS, PrintedSupplier: "South" });
    expect(one.texts("Orders")).toContain("Purchase order HB-102 to South");
    // 25 of PACKS at 4 and 8 of LEAST at 57.50.
    const rows = [1, 2, 3].map((row) => [2, 4, 5, 6].map((at) => one.value("PrintedOrder", row, at)));
    expect(rows).toEqual([
      ["PACKS", 25, 4, 100],
      ["LEAST", 8, 57.5, 460],
      ["", "", "", ""],
    ]);
    expect(one.value("PrintedTotal")).toBe(560);
    expect(one.value("SupplierTable", 2, 6)).toBe(2);
  });
});

describe("the order book", () => {
  it("says where a quantity is text, which the takeoff can't count off", async () => {
    const lines = (quantity: string | number) => ({
      ...NO_PAPERS,
      OrderLines: [
        ["P-1", "PACKS", quantity, "each", 4, "South", ""],
        ["P-1", "LEAST", 8, "each", 57.5, "South", ""],
        ...NO_PAPERS.OrderLines.slice(2),
      ],
    });
    expect((await demo(lines("25 each"))).verdict("Orders", "Order quantities or prices")).toBe("FIX");
    expect((await demo(lines(25))).verdict("Orders", "Order quantities or prices")).toBe("OK");
  });

  it("says what each item is, and which the takeoff does not know", async () => {
    const one = await demo({
      OrderLines: [
        ["P-1", "PACKS", 25, "each", 4, "South", ""],
        ["P-1", "STRAY", 1, "each", 4, "South", ""],
      ],
    });
    expect(one.texts("Orders")).toContain("About PACKS");
    expect(one.verdict("Orders", "Items ordered that the takeoff")).toBe("LOOK");
    const known = await demo({
      ...NO_PAPERS,
      OrderLines: [["P-1", "PACKS", 25, "each", 4, "South", ""], ...NO_PAPERS.OrderLines.slice(1)],
    });
    expect(known.verdict("Orders", "Items ordered that the takeoff")).toBe("OK");
  });

  it("tells the supplier which pipe, fabric and stone is meant, as typed on the other sheets", async () => {
    const which = async (PrintedSupplier: string): Promise<string[]> =>
      (await Tried.of(sheets, "US", "demo", { PrintedSupplier })).texts("Orders").map(String);
    expect(await which("Pond yard (demo)")).toEqual(
      expect.arrayContaining([
        "2.00 × 1.50 × 0.75 ft",
        "8 oz/yd², roll 6.00 ft wide",
        // The demo's rolls are 15 and 20 ft wide.
        expect.stringMatching(/^45 mil; off the roll [\d.]+ × (15|20)\.00 ft/),
      ]),
    );
    expect(await which("Pipe yard (demo)")).toEqual(expect.arrayContaining(["3 in Sch 40 PVC", "1 of 2.5 in"]));
    expect(await which("Kettle Ridge Quarry (demo)")).toContain("granite, 32 × 20 × 5 in");
  });
});
