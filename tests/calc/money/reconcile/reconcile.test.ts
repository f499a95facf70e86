import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromCents, lineCents, sumCents } from "../../../../src/calc/money/cents";
import type { Amounts, DeliveryLine, InvoiceLine, OrderLine } from "../../../../src/calc/money/reconcile/lines";
import { reconcile } from "../../../../src/calc/money/reconcile/reconcile";
import { GRAND_TOTAL } from "../../../../src/calc/money/reconcile/totals";
import { deliveries, EXPECTED, invoices, orders } from "./handWorked";

const moneyOf = (a: Amounts): number[] => [a.ordered, a.billed, a.priceDifference, a.toCome, a.atStake].map(fromCents);

describe("a reconciliation worked by hand", () => {
  const { lines, totals } = reconcile(orders, deliveries, invoices, 0.02);

  it("has a line for every order and item, and none besides", () => {
    expect(lines.map(({ item }) => item).sort()).toEqual(Object.keys(EXPECTED).sort());
  });

  it.each(lines.map((line) => [line.item, line] as const))("%s", (item, line) => {
    const expected = EXPECTED[item];
    const q = line.quantities;
    expect(q && [q.ordered, q.delivered, q.invoiced]).toEqual(expected?.quantities);
    expect(moneyOf(line.amounts)).toEqual(expected?.amounts);
    for (const sentence of expected?.says ?? []) expect(line.verdict).toContain(sentence);
    expect(line.state).toBe(expected?.state);
  });

  it("adds up per order, per supplier and in all", () => {
    const of = (name: string): number[] => moneyOf(totals.find((total) => total.name === name)?.amounts ?? never());
    // PO-1 ordered 768 + 600 + 400 + 768 + 750 + 450 + 600 + 420 = 4756; billed the goods 4661.10 + tax 299.14 = 4960.24;
    // to come 180 + 450 = 630; at stake 180 + 80 + 445.50 = 705.50
    expect(of("Total PO-1")).toEqual([4756, 4960.24, 0, 630, 705.5]);
    expect(of("Total Quarry")).toEqual(of("Total PO-1"));
    // PO-2 ordered 480 + 215 + 120 + 250 + 1240 + 47.50 + 240 = 2592.50;
    // billed 960 + 240 + 120 + 200 + 1240 + 240 = 3000; to come 50 + 47.50 + 240 = 337.50; at stake 480 + 25 + 240 = 745
    expect(of("Total PO-2")).toEqual([2592.5, 3000, 25, 337.5, 745]);
    // PO-3 ordered 640 + 170 = 810; billed 640 + 170 + 45 = 855; to come 640; at stake 640 + 45 = 685
    expect(of("Total PO-3")).toEqual([810, 855, 0, 640, 685]);
    // All: 4756 + 2592.50 + 810 = 8158.50; 4960.24 + 3000 + 855 = 8815.24; 25; 630 + 337.50 + 640 = 1607.50;
    // 705.50 + 745 + 685 = 2135.50
    expect(of(GRAND_TOTAL)).toEqual([8158.5, 8815.24, 25, 1607.5, 2135.5]);
    // By the states above: to query 02, 03, 06, 08, 09, 10, 11, 15CODEA, 16, 17, 18, fuel; open 07, 12, 14, 15-CODE-A;
    // agreeing 01, 04, 05, 13, freight, tax.
    expect(totals[totals.length - 1]).toMatchObject({
      name: GRAND_TOTAL,
      state: "Query",
      verdict: "12 to query, 4 open, 6 agree; 2135.50 at stake",
    });
  });
});

describe("a reconciliation", () => {
  const order: OrderLine = { order: "1", item: "A", quantity: 10, unit: "ton", price: 20, row: 1 };
  const ticket: DeliveryLine = { order: "1", item: "A", quantity: 10, ticket: "T", date: 5, row: 1 };
  const bill: InvoiceLine = { order: "1", item: "A", quantity: 10, price: 20, invoice: "I", date: 6, row: 1 };
  const only = (
    d: readonly DeliveryLine[],
    i: readonly InvoiceLine[],
    o: readonly OrderLine[] = [order],
    tolerance?: number,
  ) => reconcile(o, d, i, tolerance).lines[0] ?? never();

  it("compares codes without regard to case and spacing", () => {
    expect(only([{ ...ticket, item: " a " }], [{ ...bill, order: "1 " }]).verdict).toBe("Agrees.");
  });

  it("keeps quantities to the tolerance and prices to the cent", () => {
    expect(only([{ ...ticket, quantity: 9.8 }], []).verdict).not.toContain("Short"); // 2 %
    expect(only([{ ...ticket, quantity: 9.8 }], [], [order], 0).verdict).toContain("Short: 0.2 ton still to come");
    expect(only([ticket], [{ ...bill, price: 20.001 }]).amounts.priceDifference).toBe(1); // 200.01
  });

  it("takes away the noise of adding loads, even without a tolerance", () => {
    const loads = [0.1, 0.2].map((quantity, index) => ({ ...ticket, quantity, ticket: `T${index}` }));
    const line = only(loads, [{ ...bill, quantity: 0.3 }], [{ ...order, quantity: 0.3 }], 0);
    expect(line.state).toBe("Agrees");
  });

  it("says when an invoice asks less than ordered, without a query", () => {
    const line = only([ticket], [{ ...bill, price: 19 }]);
    expect(line).toMatchObject({ state: "Agrees", amounts: { priceDifference: -1000, atStake: 0 } });
    expect(line.verdict).toContain("Price 19 instead of 20 per ton on I: 10.00 less than ordered");
  });

  it("allows the rounding of a price that was turned into another unit", () => {
    // 20 a ton is 0.01 a pound: 10 tons of 20,000 lb at 0.01 is 200. At 22.05 a tonne, 9.0718474 t make 200.03.
    expect(only([ticket], [{ ...bill, quantity: 20000, unit: "lb", price: 0.01 }]).state).toBe("Agrees");
    expect(only([ticket], [{ ...bill, quantity: 9.0718474, unit: "t", price: 22.05 }]).state).toBe("Agrees");
    // 22.10 makes 200.49: half a cent a tonne explains 0.05 of that, not 0.49.
    expect(only([ticket], [{ ...bill, quantity: 9.0718474, unit: "t", price: 22.1 }]).state).toBe("Query");
  });

  it("holds each invoice against what had come by its day", () => {
    const loads = [
      { ...ticket, quantity: 5, ticket: "T1", date: 5 },
      { ...ticket, quantity: 5, ticket: "T2", date: 9 },
    ];
    expect(only(loads, [{ ...bill, date: 6 }]).verdict).toContain("Invoice I is dated before its delivery");
    expect(only(loads, [{ ...bill, date: 9 }]).verdict).not.toContain("dated before");
    expect(only(loads, [{ ...bill, quantity: 5, date: 6 }]).verdict).not.toContain("dated before");
    expect(only([{ ...ticket, date: undefined }], [bill]).verdict).not.toContain("dated before");
  });

  it("counts a ticket entered twice with different loads, and says so", () => {
    const line = only(
      [
        { ...ticket, quantity: 6 },
        { ...ticket, quantity: 4 },
      ],
      [bill],
    );
    expect(line.quantities?.delivered).toBe(10);
    expect(line.verdict).toContain("Ticket T entered twice with different quantities; both counted");
  });

  describe("equal lines of one paper", () => {
    // Ordered 10 at the price of `bill`; each load is 5.
    const load: DeliveryLine = { ...ticket, quantity: 5, date: 3 };
    const part: InvoiceLine = { ...bill, quantity: 5, date: 4 };

    it("of one day are two loads while the order and the deliveries cover them", () => {
      const line = only([load, load], [part, part]);
      expect(line.quantities).toEqual({ ordered: 10, delivered: 10, invoiced: 10 });
      expect(line.state).toBe("Agrees");
      expect(line.amounts.atStake).toBe(0);
      expect(line.verdict).toContain("Equal lines of ticket T taken for separate loads");
      expect(line.verdict).toContain("Equal lines of invoice I taken for separate loads");
    });

    it("are the same again where more would come than was ordered, or be billed than came", () => {
      const full = only(
        [
          { ...ticket, date: 3 },
          { ...ticket, date: 3 },
        ],
        [bill],
      );
      expect(full.quantities?.delivered).toBe(10);
      expect(full.verdict).toContain("Ticket T entered twice; counted once");
      const billed = only([load], [part, part]);
      // 5 came, 2 × 5 are billed: the second 5 are paid too much.
      expect(billed.amounts.atStake).toBe(lineCents(5, bill.price ?? 0));
      expect(billed.verdict).toContain("Invoice I entered twice; pay once");
    });

    it("of two days are the same again", () => {
      const line = only([load, load], [part, { ...part, date: 9 }]);
      expect(line.quantities?.invoiced).toBe(5);
      expect(line.verdict).toContain("Invoice I entered twice; pay once");
    });
  });

  it("asks whether an invoice under another number is the same again, where more is billed than came", () => {
    const again = only(
      [ticket],
      [
        { ...bill, date: 4 },
        { ...bill, invoice: "J", date: 4 },
      ],
    );
    expect(again.verdict).toContain("Invoices I and J ask for the same on one day: is one the other again?");
    expect(again.state).toBe("Query");
    const half: InvoiceLine = { ...bill, quantity: 5, date: 9 };
    const parts = only([ticket], [half, { ...half, invoice: "J" }]);
    expect([parts.state, parts.amounts.atStake]).toEqual(["Agrees", 0]);
  });

  it("takes a credit of money off what was billed", () => {
    const credit: InvoiceLine = { order: "1", item: "A", price: -30, invoice: "C", row: 2 };
    const line = only([ticket], [{ ...bill, price: 23 }, credit]);
    // Billed 230 - 30 = 200; the price was 30 too much and the credit makes up for it.
    expect(line.amounts).toMatchObject({ billed: 20000, priceDifference: 3000, atStake: 0 });
    expect(line.verdict).toContain("Credit of 30.00 on C counted");
  });

  it("reads a cut as an order line below zero", () => {
    const line = only([{ ...ticket, quantity: 7 }], [], [order, { ...order, quantity: -3, row: 2 }]);
    expect(line.quantities?.ordered).toBe(7);
    expect(line.amounts).toMatchObject({ ordered: 14000, toCome: 0 });
  });

  it("reports papers that can't be counted instead of losing them", () => {
    const line = only(
      [
        { ...ticket, quantity: undefined, row: 4 },
        { ...ticket, unit: "roll", row: 5 },
      ],
      [{ ...bill, price: undefined, row: 6 }],
    );
    expect(line.verdict).toContain("Delivery row 4 has no quantity; not counted");
    expect(line.verdict).toContain("Delivery row 5 not counted: roll cannot be turned into ton");
    expect(line.verdict).toContain("Invoice row 6 has no price; not counted");
    expect(line.state).toBe("Query");
  });

  it("adds an order line in a unit that does not meet only in money", () => {
    const line = only([ticket], [], [order, { ...order, unit: "roll", row: 7 }]);
    expect(line.quantities?.ordered).toBe(10);
    expect(line.amounts.ordered).toBe(40000);
    expect(line.verdict).toContain("Order row 7 not added: roll cannot be turned into ton");
  });

  it("queries more freight than was ordered, and freight that names no order", () => {
    const freight = { ...order, item: "Haulage", quantity: 2, unit: "load", price: 85 };
    const billed = { ...bill, item: "haulage", quantity: 3, price: 85 };
    expect(only([], [billed], [freight])).toMatchObject({ state: "Query", amounts: { atStake: 8500, toCome: 0 } });
    expect(only([], [], [freight]).verdict).toBe("Not invoiced yet.");
    const lost = reconcile([order], [], [{ ...billed, order: undefined }]).lines[1];
    expect(lost).toMatchObject({ state: "Query", verdict: "Names no order: freight on invoice I." });
  });

  it("takes goods for goods, whatever words are in their names", () => {
    const line = only([], [], [{ ...order, item: "delivery hose" }]);
    expect(line.verdict).toBe("Nothing delivered yet.");
  });

  it("works with tickets alone, and with nothing says what is needed", () => {
    expect(reconcile([], [ticket], []).lines).toHaveLength(1);
    expect(() => reconcile([], [], [])).toThrow("orders is needed");
    expect(() => reconcile([order], [], [], 2)).toThrow("tolerance must be 0 to 1");
  });
});

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
