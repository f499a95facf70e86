import { describe, expect, it } from "vitest";
import { amountOf, listed, money, Remarks } from "../../../../src/calc/money/reconcile/remarks";

describe("remarks", () => {
  it("stand gravest first, as sentences", () => {
    const remarks = new Remarks();
    remarks.note("credit counted");
    remarks.wait("2 ton still to come");
    expect(remarks.state).toBe("Open");
    remarks.query("is one the other again?");
    expect(remarks.state).toBe("Query");
    expect(remarks.verdict).toBe("Is one the other again? 2 ton still to come. Credit counted.");
  });

  it("agree where there is nothing to ask or to wait for", () => {
    const remarks = new Remarks();
    expect([remarks.state, remarks.verdict]).toEqual(["Agrees", "Agrees."]);
    remarks.note("credit counted");
    expect([remarks.state, remarks.verdict]).toEqual(["Agrees", "Agrees. Credit counted."]);
  });
});

describe("what is listed", () => {
  it.each([
    [["4711"], "ticket 4711"],
    [["1", "2"], "tickets 1 and 2"],
    [["1", "2", "3"], "tickets 1, 2 and 3"],
    [["1", "2", "3", "4"], "4 tickets"],
  ])("of %j reads %s", (names, words) => {
    expect(listed("ticket", names)).toBe(words);
  });

  it("has money to the cent and amounts with their unit", () => {
    expect(money(125_000)).toBe("1250.00");
    expect(money(5)).toBe("0.05");
    expect(amountOf(12.5, "ton")).toBe("12.5 ton");
  });
});
