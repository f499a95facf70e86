import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineCents, sumCents } from "../../../../src/calc/money/cents";
import type { Amounts } from "../../../../src/calc/money/reconcile/lines";
import { reconcile } from "../../../../src/calc/money/reconcile/reconcile";

describe("the accounts of a reconciliation (fast-check)", () => {
  const order = fc.constantFrom("PO-1", "PO-2", "PO-3");
  const item = fc.constantFrom("A", "B", "freight", "tax");
  const unit = fc.constantFrom("ton", "lb", "kg", "yd3", "roll", undefined);
  const quantity = fc.integer({ min: -500, max: 4000 }).map((n) => n / 10);
  const price = fc.integer({ min: 0, max: 9000 }).map((n) => n / 100);
  const row = fc.nat(1000);
  const lot = { minLength: 0, maxLength: 12 };
  const ordersOf = fc.array(
    fc.record({
      order,
      item,
      quantity,
      unit,
      price,
      row,
      density: fc.constantFrom(1500, undefined),
      supplier: fc.constantFrom("X", "Y", undefined),
    }),
    { minLength: 1, maxLength: 12 },
  );
  const deliveriesOf = fc.array(
    fc.record({
      order: fc.option(order, { nil: undefined }),
      item,
      quantity,
      unit,
      ticket: fc.constantFrom("1", "2", undefined),
      date: fc.nat(30),
      row,
    }),
    lot,
  );
  const invoicesOf = fc.array(
    fc.record({
      order: fc.option(order, { nil: undefined }),
      item,
      quantity,
      unit,
      price,
      invoice: fc.constantFrom("7", "8", undefined),
      date: fc.nat(30),
      row,
    }),
    lot,
  );

  it("loses and invents no money, and every kind of total is the total of the lines", () => {
    fc.assert(
      fc.property(ordersOf, deliveriesOf, invoicesOf, (o, d, i) => {
        const { lines, totals } = reconcile(o, d, i);
        const grand = totals[totals.length - 1]?.amounts ?? never();
        expect(grand.ordered).toBe(sumCents(o.map((line) => lineCents(line.quantity, line.price))));
        // A charge without a quantity stands for itself; any other line is quantity × price.
        const ordered = new Set(o.map((line) => `${line.order}/${line.item}`));
        const delivered = new Set(d.map((line) => `${line.order}/${line.item}`));
        const single = (line: (typeof i)[number]): boolean =>
          line.quantity === 0 &&
          (line.item === "freight" || line.item === "tax") &&
          !ordered.has(`${line.order}/${line.item}`) &&
          !delivered.has(`${line.order}/${line.item}`);
        expect(grand.billed).toBe(sumCents(i.map((line) => lineCents(single(line) ? 1 : line.quantity, line.price))));
        const keys = ["ordered", "billed", "priceDifference", "toCome", "atStake"] as const;
        const orderCount = new Set(lines.map((line) => line.order)).size;
        for (const key of keys) {
          const sum = (part: readonly { amounts: Amounts }[]): number =>
            sumCents(part.map(({ amounts }) => amounts[key]));
          expect(sum(lines)).toBe(grand[key]);
          expect(sum(totals.slice(0, orderCount))).toBe(grand[key]);
          expect(sum(totals.slice(orderCount, -1))).toBe(grand[key]);
        }
      }),
    );
  });

  it("keeps at stake between nothing and what was billed, and to come only where something is outstanding", () => {
    fc.assert(
      fc.property(ordersOf, deliveriesOf, invoicesOf, (o, d, i) => {
        for (const { amounts, quantities } of reconcile(o, d, i).lines) {
          expect(amounts.atStake).toBeGreaterThanOrEqual(0);
          expect(Number.isSafeInteger(amounts.atStake)).toBe(true);
          if (quantities && quantities.ordered <= quantities.delivered) expect(amounts.toCome).toBe(0);
        }
      }),
    );
  });

  it("finds nothing to ask when invoices repeat what was ordered and came", () => {
    const clean = fc.uniqueArray(
      fc.record({
        order,
        item: fc.constantFrom("A", "B", "C"),
        quantity: fc.integer({ min: 1, max: 900 }),
        unit,
        price,
        row,
      }),
      { minLength: 1, maxLength: 9, selector: (line) => `${line.order}/${line.item}` },
    );
    fc.assert(
      fc.property(clean, (o) => {
        const { lines } = reconcile(
          o,
          o.map((line) => ({ ...line, ticket: "T", date: 1 })),
          o.map((line) => ({ ...line, invoice: "I", date: 2 })),
          0,
        );
        for (const line of lines) {
          expect(line.verdict).toBe("Agrees.");
          expect(line.amounts).toMatchObject({ billed: line.amounts.ordered, atStake: 0, toCome: 0 });
        }
      }),
    );
  });
});

function never(): never {
  throw new Error("the line is missing");
}
