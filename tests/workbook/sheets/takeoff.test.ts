import { beforeAll, describe, expect, it } from "vitest";
import { fromCents, lineCents } from "../../../src/calc/money/cents";
import { orderQuantity } from "../../../src/calc/money/orderQuantity";
import type { TAKEOFF_KEYS } from "../../../src/workbook/sheets/takeoff/takeoffColumns";
import { LINES, demo, takeoffColumn } from "./moneyJob";
import type { Tried } from "./tried";

let tried: Tried;
beforeAll(async () => {
  tried = await demo();
});

/** Rows between the lines of the sheets and the user's own: a blank, a heading, a note and the titles. */
const BETWEEN = 5;

/** Behind the lines of the sheets stands the one of all freight. */
const FREIGHT_LINE = 1;

describe("Takeoff", () => {
  it("orders and costs each line as the calculations do", () => {
    LINES.forEach(({ need, waste, pack, minimum, price }, index) => {
      const order = orderQuantity(need, waste, pack, minimum);
      expect(tried.value("TakeoffOrders", index + 1)).toBe(order);
      expect(tried.value("TakeoffCosts", index + 1)).toBe(fromCents(lineCents(order, price)));
    });
    // By hand: 7 × 1.115 = 7.81, 25 × 4 = 100, 110 × 0.99 = 108.90, 8 × 57.50 = 460, 0.3 × 33.35 = 10.01, 2 × 115 = 230.
    expect(LINES.map((_, index) => tried.value("TakeoffCosts", index + 1))).toEqual([
      7.81, 100, 108.9, 460, 0, 10.01, 230,
    ]);
  });

  it("looks the user's own lines up by code, and lets him type over what it finds", async () => {
    const own = (row: number, key: (typeof TAKEOFF_KEYS)[number]) => one.value("OwnLinesUsed", row, takeoffColumn(key));
    const one = await demo({
      OwnLines: [
        // What, code, unit, need, waste, minimum, pack: blanks are looked up where the row has no demo value.
        ["", "", "", ""],
        ["", "", "", ""],
        ["", "", "", ""],
        ["Spare", "WASTE", "each", 20],
        ["Free", "", "job", 2],
        ["Unknown", "XYZ", "each", 1],
        ["Eighths", "", "ton", 0.3, 0, 0, 0.125],
      ],
    });
    expect(own(7, "order")).toBe(0.375); // by hand: 0.3 / 0.125 is 2.4, so 3 packs of 0.125
    expect([own(4, "waste"), own(4, "pack"), own(4, "price"), own(4, "supplier")]).toEqual([0.1, 10, 0.99, "North"]);
    expect([own(4, "order"), own(4, "cost")]).toEqual([30, 29.7]); // 20 × 1.1 = 22, up to 3 packs of 10
    expect([own(5, "kind"), own(5, "pack"), own(5, "look")]).toEqual(["material", 1, "no cost"]);
    expect([own(6, "price"), own(6, "look")]).toEqual(["", "no cost"]);
    expect(one.verdict("Takeoff", "Lines to order without a cost")).toBe("FIX");
    expect(tried.verdict("Takeoff", "Lines to order without a cost")).toBe("OK");
  });

  it("counts hauling for hauling", () => {
    expect(tried.value("TakeoffKinds", 7)).toBe("hauling");
    expect(tried.value("TakeoffKinds", 1)).toBe("material");
  });

  it("says where less was ordered than the takeoff asks", async () => {
    const one = await demo({ OrderLines: [["P-1", "PACKS", 20, "each", 4, "South", ""]] });
    const other = await demo({ OrderLines: [["P-1", "PACKS", 25, "each", 4, "South", ""]] });
    expect(one.value("TakeoffLooks", 2)).toBe("ordered short");
    expect(one.verdict("Takeoff", "Lines ordered short")).toBe("LOOK");
    expect(other.value("TakeoffLooks", 2)).toBe("");
  });

  it("keeps a pack of an eighth: 0.3 are 2.4 packs, so 3 of 0.125 = 0.375", async () => {
    // What, code, unit, need, waste, minimum, pack, (to order), price.
    const line = ["Eighths", "", "each", 0.3, 0, 0, 0.125, undefined, 8];
    const one = await demo({ OwnLines: [line] });
    expect(one.value("OwnLinesUsed", 1, takeoffColumn("order"))).toBe(0.375);
    expect(one.value("OwnLinesUsed", 1, takeoffColumn("cost"))).toBe(3);
  });

  it("has nothing still to order where more was ordered than the takeoff asks", async () => {
    const one = await demo({ OrderLines: [["P-1", "PACKS", 40, "each", 4, "South", ""]] });
    // By hand: 25 asked, 40 ordered: 0 to order, never 15 less.
    expect([one.value("TakeoffOpen", 2), one.value("TakeoffLooks", 2)]).toEqual([0, ""]);
  });

  it("has the user's own lines where the columns' names say", () => {
    expect(tried.value("TakeoffDescriptions", LINES.length + FREIGHT_LINE + BETWEEN + 1)).toBe(
      "Electrician: GFCI outlet at the pump",
    );
  });
});
