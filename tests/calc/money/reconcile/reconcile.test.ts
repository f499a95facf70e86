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

function never(): never {
  throw new Error("the line is missing");
}
