import { describe, expect, it } from "vitest";
import { lineCents } from "../../../../src/calc/money/cents";
import type { DeliveryLine, InvoiceLine, OrderLine } from "../../../../src/calc/money/reconcile/lines";
import { reconcile } from "../../../../src/calc/money/reconcile/reconcile";

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
    const within = only([{ ...ticket, quantity: 9.8 }], []); // 2 %
    expect(within.verdict).not.toContain("Short");
    expect(within.amounts.toCome).toBe(0);
    const short = only([{ ...ticket, quantity: 9.8 }], [], [order], 0);
    expect(short.verdict).toContain("Short: 0.2 ton still to come");
    expect(short.amounts.toCome).toBe(400); // 0.2 × 20
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

  it("queries credits of money that come to more than was billed", () => {
    // By hand: 10 × 20 = 200.00 billed; 60 × 4.15 = 249.00 credited, so -49.00 in all.
    const credit: InvoiceLine = { ...bill, quantity: 60, price: -4.15, invoice: "C", row: 2 };
    const over = only([ticket], [bill, credit]);
    expect([over.state, over.amounts.billed]).toEqual(["Query", -4900]);
    expect(over.verdict).toContain("Credits of 249.00 are more than the 200.00 billed");
    // 40 × 4.15 = 166.00 leaves 34.00: a credit like others.
    expect(only([ticket], [bill, { ...credit, quantity: 40 }]).state).toBe("Agrees");
  });

  describe("of a price in another unit", () => {
    const state = (one: InvoiceLine): (string | number)[] => {
      const { state, amounts } = only([ticket], [one]);
      return [state, amounts.priceDifference, amounts.atStake];
    };

    it("forgives in words the rounding of the price, and counts every cent of it", () => {
      // 20 a ton is 0.01 a pound: 10 tons of 20,000 lb at 0.01 is 200.
      expect(state({ ...bill, quantity: 20000, unit: "lb", price: 0.01 })).toEqual(["Agrees", 0, 0]);
      // 20 a ton is 22.046 a tonne. At 22.05, 9.0718474 t (10 short tons, NIST SP 811) make 200.03: 3 cents.
      const rounded: InvoiceLine = { ...bill, quantity: 9.0718474, unit: "t", price: 22.05 };
      expect(state(rounded)).toEqual(["Agrees", 3, 3]);
      expect(only([ticket], [rounded]).verdict).toContain(
        "Price in another unit rounded on invoice I: 0.03 more than ordered",
      );
      // 22.10 makes 200.49: half a cent a tonne explains 0.05 of that, not 0.49.
      expect(state({ ...bill, quantity: 9.0718474, unit: "t", price: 22.1 })).toEqual(["Query", 49, 49]);
    });

    it("does not forgive what half a cent a pound comes to", () => {
      // By hand: 24 ton × 32 = 768.00; 48,000 lb × 0.021 = 1008.00; 240.00 too much.
      const tons: OrderLine = { ...order, quantity: 24, price: 32 };
      const pounds: InvoiceLine = { ...bill, quantity: 48000, unit: "lb", price: 0.021 };
      const line = only([{ ...ticket, quantity: 24 }], [pounds], [tons]);
      expect(line.state).toBe("Query");
      expect(line.amounts).toMatchObject({ billed: 100800, priceDifference: 24000, atStake: 24000 });
      expect(line.verdict).toContain("240.00 too much");
      // 0.02 is 0.016 to the cent, and still 48,000 × 0.004 = 192.00 too much.
      const cents = only([{ ...ticket, quantity: 24 }], [{ ...pounds, price: 0.02 }], [tons]);
      expect([cents.state, cents.amounts.atStake]).toEqual(["Query", 19200]);
    });

    it("allows one cent on top, because both amounts are rounded", () => {
      // By hand: 0.5 t are 0.5511556 ton, × 20 = 11.02; billed 0.5 × 22.05 = 11.025, so 11.03. Half a cent a tonne is 0.25.
      const half: OrderLine = { ...order, quantity: 0.5511556 };
      const line = only(
        [{ ...ticket, quantity: 0.5, unit: "t" }],
        [{ ...bill, quantity: 0.5, unit: "t", price: 22.05 }],
        [half],
      );
      expect([line.state, line.amounts.priceDifference]).toEqual(["Agrees", 1]);
    });
  });

  describe("of an item ordered at two prices", () => {
    // 1 at 60 and 99 at 30: 60 + 2,970 = 3,030.
    const two = [
      { ...order, quantity: 1, price: 60 },
      { ...order, quantity: 99, price: 30, row: 2 },
    ];
    const all = [{ ...ticket, quantity: 100 }];

    it("holds each quantity against the price it was ordered at", () => {
      // By hand: 100 × 60 = 6,000 billed for 3,030.
      const line = only(all, [{ ...bill, quantity: 100, price: 60 }], two);
      expect(line.state).toBe("Query");
      expect(line.amounts).toMatchObject({ billed: 600000, priceDifference: 297000, atStake: 297000, toCome: 0 });
      expect(line.verdict).toContain("Price 60 instead of 30 per ton for 99 ton on I: 2970.00 too much");
    });

    it("comes to the same however the invoices cut it up", () => {
      const one = { ...bill, quantity: 1, price: 60 };
      const right = only(all, [one, { ...bill, quantity: 99, price: 30, invoice: "J" }], two);
      expect([right.state, right.amounts.priceDifference, right.amounts.atStake]).toEqual(["Agrees", 0, 0]);
      const dear = only(all, [one, { ...bill, quantity: 99, price: 60, invoice: "J" }], two);
      expect([dear.state, dear.amounts.priceDifference, dear.amounts.atStake]).toEqual(["Query", 297000, 297000]);
    });

    it("reads what has no price of its own in the buyer's favor: the cheapest first", () => {
      // By hand: 50 at 60 are more than the 1 ordered at 60, so 50 of the 99 at 30: 3,000 - 1,500 = 1,500 too much.
      const half = [{ ...ticket, quantity: 50 }];
      const line = only(half, [{ ...bill, quantity: 50, price: 60 }], two);
      expect(line.amounts).toMatchObject({ priceDifference: 150000, atStake: 150000 });
      // To come: 49 at 30 and 1 at 60 = 1,530.
      expect(line.amounts.toCome).toBe(153000);
      // 50 came and 100 are billed: what is due is 50 × 30 = 1,500 of 6,000.
      expect(only(half, [{ ...bill, quantity: 100, price: 60 }], two).amounts.atStake).toBe(450000);
    });

    it("takes a cut off its own price, and a credit back to it", () => {
      // 10 at 20 and 5 at 26, less 2 at 26: 13 for 200 + 78 = 278.
      const cut = [
        { ...order, quantity: 10, price: 20 },
        { ...order, quantity: 5, price: 26, row: 2 },
        { ...order, quantity: -2, price: 26, row: 3 },
      ];
      const came = [{ ...ticket, quantity: 13 }];
      const line = only(
        came,
        [
          { ...bill, quantity: 10 },
          { ...bill, quantity: 3, price: 26 },
        ],
        cut,
      );
      expect([line.state, line.amounts.billed, line.amounts.atStake]).toEqual(["Agrees", 27800, 0]);
      // 5 at 26 billed, 2 of them credited: 3 at 26 are left.
      const credited = only(
        came,
        [
          { ...bill, quantity: 10 },
          { ...bill, quantity: 5, price: 26 },
          { ...bill, quantity: -2, price: 26, invoice: "C" },
        ],
        cut,
      );
      expect([credited.amounts.billed, credited.amounts.priceDifference, credited.amounts.atStake]).toEqual([
        27800, 0, 0,
      ]);
      // A cut without a price of its own comes off the dearest: 10 at 20 and 3 at 26 as well.
      const other = only(
        came,
        [{ ...bill, quantity: 13, price: 26 }],
        [...cut.slice(0, 2), { ...order, quantity: -2, price: 19, row: 3 }],
      );
      expect(other.amounts.priceDifference).toBe(6000); // 10 × (26 - 20)
    });
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
    // Within the tolerance: 5.09 of 5 tons by day 6 are 0.09 ton, of 0.2 that 2 % of 10 tons allow; 5.3 are not.
    const part = (quantity: number): string => only(loads, [{ ...bill, quantity, date: 6 }]).verdict;
    expect(part(5.09)).not.toContain("dated before");
    expect(part(5.3)).toContain("Invoice I is dated before its delivery");
    // Half a ton is a delivery as well.
    const half = { ...order, quantity: 0.5 };
    const late = only([{ ...ticket, quantity: 0.5, date: 9 }], [{ ...bill, quantity: 0.5, date: 6 }], [half]);
    expect(late.verdict).toContain("Invoice I is dated before its delivery");
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

    it("of a ticket are one load entered twice, however well two would fit the order", () => {
      // By hand: 5 came, not 10; 5 × 20 = 100 still to come.
      const line = only([load, load], []);
      expect(line.quantities?.delivered).toBe(5);
      expect(line).toMatchObject({ state: "Query", amounts: { toCome: 10000 } });
      expect(line.verdict).toContain("Ticket T entered twice; counted once");
      expect(line.verdict).toContain("give that line a ticket number of its own");
      // In any case and order, and a third time as well.
      const other = { ...load, quantity: 2 };
      expect(only([load, other, { ...load, ticket: " t" }, load], []).quantities?.delivered).toBe(7);
    });

    it("of an invoice and day are two loads while the deliveries cover them", () => {
      const line = only([load, { ...load, ticket: "T2" }], [part, part]);
      expect(line.quantities).toEqual({ ordered: 10, delivered: 10, invoiced: 10 });
      expect(line.state).toBe("Agrees");
      expect(line.amounts.atStake).toBe(0);
      expect(line.verdict).toContain("Equal lines of invoice I taken for separate loads");
    });

    it("of an invoice are the same again where more would be billed than came", () => {
      const billed = only([load], [part, part]);
      // 5 came, 2 × 5 are billed: the second 5 are paid too much.
      expect(billed.amounts.atStake).toBe(lineCents(5, bill.price ?? 0));
      expect(billed.verdict).toContain("Invoice I entered twice; pay once");
    });

    it("of an invoice with two days are the same again", () => {
      const line = only([load, { ...load, ticket: "T2" }], [part, { ...part, date: 9 }]);
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
    expect(only([], [], [freight]).verdict).toBe("Not invoiced yet. Freight needs no ticket.");
    const lost = reconcile([order], [], [{ ...billed, order: undefined }]).lines[1];
    expect(lost).toMatchObject({ state: "Query", verdict: "Names no order: freight on invoice I." });
  });

  it("takes goods for goods, whatever words are in their names", () => {
    for (const item of ["delivery hose", "Carriage bolts"]) {
      const line = only([], [], [{ ...order, item }]);
      expect(line.verdict).toBe("Nothing delivered yet.");
      expect(line).toMatchObject({ quantities: { delivered: 0 }, amounts: { toCome: 20000 } });
    }
  });

  it("asks which code or order is meant by one that differs by spaces, marks or case", () => {
    const barbs = { ...order, order: "PO-1", item: "HB-104" };
    const verdict = (o: OrderLine[], d: DeliveryLine): string => {
      const { lines } = reconcile(o, [d], []);
      return lines[lines.length - 1]?.verdict ?? never();
    };
    const wrong = { ...ticket, order: "PO-1" };
    for (const item of ["HB 104", "hb104", "HB.104", "HB-1O4"])
      expect(verdict([barbs], { ...wrong, item })).toBe("Not on the order; is HB-104 meant?");
    expect(verdict([barbs], { ...wrong, order: "po 1", item: "HB-104" })).toBe(
      "There is no order po 1; is PO-1 meant?",
    );
    expect(verdict([barbs], { ...wrong, order: "PO-2", item: "HB-104" })).toBe(
      "There is no order PO-2; is PO-1 meant?",
    );
    expect(verdict([barbs], { ...wrong, order: "PO-2", item: "PIPE" })).toBe("There is no order PO-2.");
    expect(verdict([barbs], { ...wrong, order: undefined, item: "HB-104" })).toBe("Names no order; is PO-1 meant?");
    const elsewhere = { ...barbs, order: "PO-7" };
    expect(verdict([barbs, elsewhere], { ...wrong, order: undefined, item: "HB-104" })).toBe("Names no order.");
  });

  it("says when two ordered codes differ by spaces, marks or case alone", () => {
    const { lines } = reconcile(
      [
        { ...order, item: "HB-104" },
        { ...order, item: "HB 104" },
        { ...order, item: "HB-105" },
      ],
      [],
      [],
    );
    expect(lines.map(({ verdict }) => verdict)).toEqual([
      "Nothing delivered yet.",
      "Nothing delivered yet. Differs from HB-104 by spaces or marks alone; is HB-104 meant?",
      "Nothing delivered yet.",
    ]);
  });

  it("makes rows that could not be read lines to query, without a sum, and leaves the rest as it is", () => {
    const reason = 'quantity "half" is not understood';
    const { lines, unread, totals } = reconcile([order], [ticket], [bill], 0, [
      { paper: "Delivery", row: 2, order: "1 ", item: "B", number: "ticket T9", reason },
    ]);
    expect(lines.map(({ verdict }) => verdict)).toEqual(["Agrees."]);
    const verdict = `Delivery row 2 (ticket T9) was not read: ${reason}.`;
    expect(unread).toEqual([{ order: "1", supplier: "", item: "B", state: "Query", verdict }]);
    expect(totals.map(({ name }) => name)).toEqual(["Total 1", "Total without supplier", "Grand total"]);
    for (const total of totals) {
      expect(total).toMatchObject({ state: "Query", amounts: { ordered: 20000, billed: 20000, atStake: 0 } });
      expect(total.verdict).toBe("1 to query, 1 agree; 1 row not read and not in these sums");
    }
  });

  it("works with tickets alone, and with nothing says what is needed", () => {
    expect(reconcile([], [ticket], []).lines).toHaveLength(1);
    expect(() => reconcile([], [], [])).toThrow("orders is needed");
    expect(() => reconcile([order], [], [], 2)).toThrow("tolerance must be 0 to 1");
  });
});

function never(): never {
  throw new Error("the line is missing");
}
