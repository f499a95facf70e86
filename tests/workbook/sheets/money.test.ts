import { beforeAll, describe, expect, it } from "vitest";
import { fromCents, lineCents } from "../../../src/calc/money/cents";
import { orderQuantity } from "../../../src/calc/money/orderQuantity";
import { COST_KINDS, TAX_BASES } from "../../../src/calc/money/costKinds";
import { buildPrice, type PriceParts } from "../../calc/money/priceBuildUp";
import { RECONCILE } from "../../../src/functions/money/reconcile";
import { assemble } from "../../../src/workbook/assemble";
import { namesIn } from "../../../src/workbook/lint/formula";
import { INVOICES, ORDER_BOOK, TICKETS } from "../../../src/workbook/sheets/money/demoPapers";
import { TAKEOFF_KEYS } from "../../../src/workbook/sheets/money/takeoffColumns";
import { LINES, MONEY_SHEETS, NO_PAPERS } from "./moneyJob";
import { Tried, type Typed } from "./tried";

const demo = (typed: Typed = {}): Promise<Tried> => Tried.of(MONEY_SHEETS, "US", "demo", typed);
const column = (key: (typeof TAKEOFF_KEYS)[number]): number => TAKEOFF_KEYS.indexOf(key) + 1;
/** Rows between the lines of the sheets and the user's own: a blank, a heading, a note and the titles. */
const BETWEEN = 4;
const ownRow = (row: number): number => LINES.length + BETWEEN + row;

let tried: Tried;
beforeAll(async () => {
  tried = await demo();
});

describe("the money sheets", () => {
  it("show no error, filled or blank, in either system", async () => {
    const all = [tried, await Tried.of(MONEY_SHEETS, "SI", "demo"), await Tried.of(MONEY_SHEETS, "US", "blank")];
    for (const one of all) {
      for (const { name } of MONEY_SHEETS) expect(one.errors(name), name).toEqual([]);
    }
  });
});

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
    const own = (row: number, key: (typeof TAKEOFF_KEYS)[number]) => one.value("OwnLines", row, column(key));
    const one = await demo({
      OwnLines: [
        // What, code, unit, need, waste, minimum, pack: blanks are looked up where the row has no demo value.
        ["", "", "", ""],
        ["", "", "", ""],
        ["", "", "", ""],
        ["Spare", "WASTE", "each", 20],
        ["Free", "", "job", 2],
        ["Unknown", "XYZ", "each", 1],
      ],
    });
    expect([own(4, "waste"), own(4, "pack"), own(4, "price"), own(4, "supplier")]).toEqual([0.1, 10, 0.99, "North"]);
    expect([own(4, "order"), own(4, "cost")]).toEqual([30, 29.7]); // 20 × 1.1 = 22, up to 3 packs of 10
    expect([own(5, "kind"), own(5, "pack"), own(5, "look")]).toEqual(["material", 1, "no cost"]);
    expect([own(6, "price"), own(6, "look")]).toEqual(["", "no cost"]);
    expect(one.verdict("Takeoff", "Lines to order without a cost")).toBe("FIX");
    expect(tried.verdict("Takeoff", "Lines to order without a cost")).toBe("OK");
  });

  it("counts haulage for haulage", () => {
    expect(tried.value("TakeoffKinds", 7)).toBe("haulage");
    expect(tried.value("TakeoffKinds", 1)).toBe("material");
  });

  it("says where less was ordered than the takeoff asks", async () => {
    const one = await demo({ OrderLines: [["P-1", "PACKS", 20, "each", 4, "South", ""]] });
    const other = await demo({ OrderLines: [["P-1", "PACKS", 25, "each", 4, "South", ""]] });
    expect(one.value("TakeoffLooks", 2)).toBe("ordered short");
    expect(one.verdict("Takeoff", "Lines ordered short")).toBe("LOOK");
    expect(other.value("TakeoffLooks", 2)).toBe("");
  });
});

describe("Price", () => {
  const MARKUPS = { material: 0.32, labour: 0.42, machine: 0.25, subcontract: 0.15, haulage: 0.15, other: 0.1 };
  const demoLines = { material: 176.4, subcontract: 640, other: 85 }; // the three lines of the user's own in the demo
  const taken = { material: 7.81 + 100 + 108.9 + 460 + 10.01 + demoLines.material, haulage: 230 };
  const base: PriceParts = {
    costs: { ...taken, labour: 2480.35, machine: 641.2, subcontract: 640, other: 85 },
    markups: MARKUPS,
    overhead: { share: 0.12 },
    overheadMarkup: 0.12,
    contingency: 0.05,
    contingencyMarkup: 0.1,
    taxRate: 0.065,
    taxable: taken.material + taken.haulage,
    taxBase: "materials with markup",
    roundTo: 10,
  };
  const cents = (amount: unknown): number => Math.round((amount as number) * 100);

  const agrees = (one: Tried, parts: PriceParts): void => {
    const expected = buildPrice(parts);
    expect(cents(one.value("TotalCost"))).toBe(expected.totalCost);
    expect(cents(one.value("PriceBeforeTax"))).toBe(expected.priceBeforeTax);
    expect(cents(one.value("TaxAmount"))).toBe(expected.tax);
    expect(cents(one.value("PriceTotal"))).toBe(expected.priceTotal);
    expect(one.number("GrossMargin")).toBeCloseTo(expected.grossMargin, 9);
  };

  it("builds the price up as the calculations do", () => agrees(tried, base));

  it.each(TAX_BASES)("with tax on %s, not rounded", async (taxBase) => {
    agrees(await demo({ TaxBase: taxBase, RoundTo: 0 }), { ...base, taxBase, roundTo: 0 });
  });

  it("with overhead by crew hours, and other markups", async () => {
    const one = await demo({ OverheadBy: "crew hours", OverheadPerHour: 14.3, Markups: [[0.5]] });
    agrees(one, { ...base, overhead: { perHour: 14.3, hours: 62 }, markups: { ...MARKUPS, material: 0.5 } });
  });

  it.each([
    ["B", { material: 385, labour: 210 }],
    ["C", { material: 495, labour: 180 }],
  ])("for option %s with the changes of its cost", async (letter, changes) => {
    const one = await demo({ ChosenOption: letter });
    const costs = { ...base.costs };
    for (const kind of COST_KINDS) costs[kind] = (costs[kind] ?? 0) + ((changes as Record<string, number>)[kind] ?? 0);
    agrees(one, { ...base, costs });
  });

  it("leaves options without a name out, and says when one of them is quoted", async () => {
    const one = await demo({ ChosenOption: "C", OptionNames: [["As designed"], [""], [""]] });
    expect(one.value("PriceTotal")).toBe("");
    expect(one.verdict("Price", "The quoted option")).toBe("FIX");
    expect(one.value("OptionTotals", 1, 3)).toBe("");
    expect(one.errors("Quote")).toEqual([]);
  });

  it("finds the smallest markup on every line that keeps the margin", async () => {
    const row = (one: Tried): number => one.number("SmallestMarkups", 1, 1);
    const markup = row(tried);
    const all = Array.from({ length: 8 }, () => [markup]);
    const kept = await demo({ Markups: all, RoundTo: 0 });
    const lost = await demo({ Markups: all.map(() => [markup - 0.002]), RoundTo: 0 });
    expect(kept.verdict("Price", "Gross margin")).toBe("OK");
    expect(lost.verdict("Price", "Gross margin")).toBe("FIX");
    // margin 0.3: markup on the job's own cost 0.3 / 0.7
    expect(tried.number("MarkupWanted")).toBeCloseTo(0.428571, 6);
  });

  it("keeps the payments to the cent, and says when their shares do not add up", async () => {
    const stages = [1, 2, 3, 4, 5, 6].map((row) => cents(tried.value("StageAmounts", row)));
    expect(stages.reduce((sum, each) => sum + each, 0)).toBe(cents(tried.value("PriceTotal")));
    expect(cents(tried.value("QuotePayments"))).toBe(cents(tried.value("PriceTotal")));
    const short = await demo({ StageShares: [[0.2]] });
    expect(["FIX", "ERROR"]).toContain(short.verdict("Price", "Payment stages"));
  });

  it("gives the odds of the quoted cost", () => {
    // Likely = direct cost of option A.
    const direct = Object.values(base.costs).reduce((sum, cost) => sum + (cost ?? 0), 0);
    expect(tried.number("CostOdds", 2, 2)).toBeCloseTo(direct, 2);
    expect(tried.number("CostOdds", 5, 2)).toBeGreaterThan(tried.number("CostOdds", 3, 2));
  });
});

describe("Quote", () => {
  /** What a client may read. */
  const MAY_READ = new Set(
    (
      "CompanyName CompanyPhone Estimator ClientName SiteAddress JobName FeatureName QuoteNumber QuoteDate ValidDays Currency " +
      "Run Fall DropCount BedWidth BasinLength BasinWidth BasinHold BoulderTons LipStoneCount GravelTons DesignFlow " +
      "ScopeLines ExclusionLines OptionNames OptionTotals ChosenOption PriceBeforeTax TaxAmount PriceTotal " +
      "StageNames StageShares StageAmounts ChecksToFix"
    ).split(" "),
  );

  it("reads nothing that a client must not know", () => {
    for (const system of ["US", "SI"] as const) {
      const sheet = assemble(MONEY_SHEETS, system, "demo").sheets.find(({ name }) => name === "Quote");
      const formulas = [...(sheet?.rows.values() ?? [])].flatMap((cells) =>
        [...cells.values()].flatMap(({ formula }) => formula ?? []),
      );
      expect(formulas.length).toBeGreaterThan(40);
      for (const formula of formulas) {
        expect(formula, "no other sheet is read by address").not.toContain("!");
        for (const name of namesIn(formula.slice(1))) expect(MAY_READ, formula).toContain(name);
      }
    }
  });

  it("shows no cost, markup or margin among its numbers", () => {
    const secret = new Set(
      [
        ...["TotalCost", "MaterialCost", "GrossMargin", "WantedMargin", "OverheadShare", "ContingencyShare"].map(
          (name) => tried.value(name),
        ),
        ...[1, 2, 3, 4, 5, 6, 7, 8].flatMap((row) =>
          ["CostsA", "CostsB", "CostsC", "Markups"].map((name) => tried.value(name, row)),
        ),
        ...LINES.map((_, index) => tried.value("TakeoffCosts", index + 1)),
      ].filter((value) => typeof value === "number" && value !== 0),
    );
    // A share of the payments may happen to equal a markup; no amount of money may equal a cost.
    const shown = tried.numbers("Quote").filter((value) => value > 1);
    expect(shown.length).toBeGreaterThan(8);
    for (const value of shown) expect(secret).not.toContain(value);
  });

  it("hides nothing: no messages, rules, charts, links, hidden columns or names that a client could open", () => {
    const model = assemble(MONEY_SHEETS, "US", "demo");
    const sheet = model.sheets.find(({ name }) => name === "Quote");
    expect([sheet?.validations, sheet?.charts, sheet?.hidden]).toEqual([[], [], undefined]);
    const cells = [...(sheet?.rows.values() ?? [])].flatMap((row) => [...row.values()]);
    expect(cells.length).toBeGreaterThan(40);
    expect(cells.filter(({ link }) => link !== undefined)).toEqual([]);
    expect(sheet?.widths.every((width) => width >= 10)).toBe(true);
    expect(model.names.filter((name) => name.sheet === "Quote").map(({ name }) => name)).toEqual([
      "QuoteDraft",
      "QuotePayments",
    ]);
    // A look that depends on a formula may read its own row alone.
    for (const { formula } of sheet?.conditionals ?? []) expect(formula).toMatch(/^=\$A\d+=""$/);
  });

  it("says that it is a draft while a check of the job fails", async () => {
    expect(tried.value("QuoteDraft")).toBe("");
    const unfinished = await demo({ ChecksToFix: 3 });
    expect(unfinished.value("QuoteDraft")).toMatch(/^Draft, not to be signed: 3 checks/);
  });

  it("offers every option with its price, and the quoted one in full", () => {
    const totals = [1, 3, 5].map((at) => tried.number("OptionTotals", 1, at));
    for (const total of totals) expect(tried.numbers("Quote")).toContain(total);
    expect(totals[0]).toBe(tried.number("PriceTotal"));
  });
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
    // HB-101 in the book of the demo: by hand 236 + 18 × 46.50 + 187 + 420 × 0.99 + 738 × 0.34 = 1926.72.
    expect(tried.texts("Orders")).toContain("Purchase order HB-101 to North");
    expect([1, 2, 3, 4, 5, 6].map((row) => tried.value("PrintedOrder", row, 2))).toEqual([
      ...["SPILLBOX", "MODULE", "PUMPWELL", "LINER", "FABRIC"],
      "",
    ]);
    expect(tried.number("PrintedTotal")).toBeCloseTo(1926.72, 9);
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

describe("from takeoff to a squared invoice in a blank workbook", () => {
  const blank = (typed: Typed): Promise<Tried> => Tried.of(MONEY_SHEETS, "US", "blank", typed);
  const numbered = {
    SupplierTable: [
      [undefined, "P-1"],
      [undefined, "P-2"],
    ],
  };
  // South's two lines, as its order shows them.
  const book = [
    ["P-2", "PACKS", 25, "each", 4, "South", ""],
    ["P-2", "LEAST", 8, "each", 57.5, "South", ""],
  ];
  const tickets = [
    ["P-2", "PACKS", 15, "", "T1", 46200],
    ["P-2", "PACKS", 10, "", "T2", 46202],
    ["P-2", "LEAST", 8, "each", "T1", 46200],
  ];
  const invoices = [
    ["P-2", "PACKS", 25, "each", 4, "I1", 46203],
    ["P-2", "LEAST", 8, "each", 57.5, "I1", 46203],
  ];

  it("orders what is open, and counts what was ordered off it", async () => {
    const before = await blank(numbered);
    expect([before.value("OrderSuppliers", 2), before.value("TakeoffOpen", 2)]).toEqual(["South", 25]);
    expect(before.value("ReconciledAtStake")).toBe("");
    const half = await blank({ ...numbered, OrderLines: [["P-2", "PACKS", 20, "each", 4, "South", ""]] });
    expect([half.value("TakeoffOpen", 2), half.value("TakeoffLooks", 2)]).toEqual([5, "ordered short"]);
    expect(half.value("OrderedAmount")).toBe(80);
    const after = await blank({ ...numbered, OrderLines: book });
    expect([after.value("TakeoffOpen", 2), after.value("TakeoffOpen", 4), after.value("OrderedAmount")]).toEqual([
      0, 0, 560,
    ]);
    expect(after.value("SupplierTable", 2, 6)).toBe(0);
    expect(after.value("ReconciledToCome")).toBe(560);
  });

  it("squares tickets and invoices with the order", async () => {
    const squared = await blank({ ...numbered, OrderLines: book, TicketLines: tickets, InvoiceLines: invoices });
    const amounts = ["ReconciledOrdered", "ReconciledBilled", "ReconciledToCome", "ReconciledAtStake"];
    expect(amounts.map((name) => squared.value(name))).toEqual([560, 560, 0, 0]);
    expect([1, 2].map((row) => squared.value("Reconciled", row, 14))).toEqual(["Agrees", "Agrees"]);
    // One pack too many is billed: 4.00 too much.
    const dear = [["P-2", "PACKS", 26, "each", 4, "I1", 46203], ...invoices.slice(1)];
    const billed = await blank({ ...numbered, OrderLines: book, TicketLines: tickets, InvoiceLines: dear });
    expect([billed.value("ReconciledAtStake"), billed.value("Reconciled", 1, 14)]).toEqual([4, "Query"]);
    for (const sheet of ["Takeoff", "Orders", "Receipts", "Reconcile"])
      expect(squared.errors(sheet), sheet).toEqual([]);
  });
});

describe("the order book", () => {
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
});

describe("Reconcile", () => {
  it("shows what RILL.RECONCILE says of the papers, and its grand total on top", () => {
    const rows = RECONCILE.evaluate([
      ORDER_BOOK.US.map((row) => row.slice(0, 7)),
      TICKETS.US,
      INVOICES.US,
      0.02,
      "US",
    ]) as unknown[][];
    const [, ...body] = rows;
    body.forEach((row, index) => {
      row.forEach((value, at) => expect(tried.value("Reconciled", index + 1, at + 1)).toEqual(value));
    });
    const last = body[body.length - 1] ?? [];
    expect(tried.value("ReconciledOrdered")).toBe(last[8]);
    expect(tried.value("ReconciledBilled")).toBe(last[9]);
    expect(tried.value("ReconciledAtStake")).toBe(last[12]);
    expect(tried.value("OrderedAmount")).toBeCloseTo(last[8] as number, 9);
    expect(tried.verdict("Reconcile", "Money at stake")).toBe("LOOK");
  });

  it("agrees when tickets and invoices repeat the orders", async () => {
    const one = await demo({
      ...NO_PAPERS,
      OrderLines: [["P-1", "PACKS", 25, "each", 4, "South", ""], ...NO_PAPERS.OrderLines.slice(1)],
      TicketLines: [["P-1", "PACKS", 25, "each", "T", 46200], ...NO_PAPERS.TicketLines.slice(1)],
      InvoiceLines: [["P-1", "PACKS", 25, "each", 4, "I", 46201], ...NO_PAPERS.InvoiceLines.slice(1)],
    });
    expect(one.value("Reconciled", 1, 15)).toBe("Agrees.");
    expect(one.value("ReconciledAtStake")).toBe(0);
    expect(one.verdict("Reconcile", "Money at stake")).toBe("OK");
  });
});

describe("Rates", () => {
  it("builds an hour up from wage and burden", () => {
    // 7.65 + 2.4 + 8.8 + 3.1 + 6.4 + 5.7 + 1.8 = 35.85 %; 37.50 × 1.3585 = 50.94375; (50.94 + 42.45 + 31.79) / 3 = 41.73
    expect(tried.number("BurdenTotal")).toBeCloseTo(0.3585, 9);
    expect(tried.value("LabourHourRates", 1)).toBe(50.94);
    expect(tried.value("CrewHourRate")).toBe(41.73);
    // 41 + 9.80 + 6.20 = 57.00; 0.7 × 57 + 0.3 × 46.30 = 53.79
    expect(tried.value("MachineHourRate")).toBe(53.79);
  });

  it("finds codes that stand twice", async () => {
    const one = await demo({ RateCodes: [...LINES.map(() => []), ["NEW"], ["new"]] });
    expect(one.verdict("Rates", "Codes that stand twice")).toBe("FIX");
    expect(tried.verdict("Rates", "Codes that stand twice")).toBe("OK");
  });

  it("takes 20,000 items of one's own, found from Takeoff to the last row", async () => {
    const item = (index: number) => [
      `Item ${index}`,
      `N-${index}`,
      "each",
      index / 100,
      4,
      0,
      0,
      "Far Yard",
      "material",
      "yes",
      46_113,
    ];
    const one = await demo({
      RateTable: [...LINES.map(() => []), ...Array.from({ length: 20_000 }, (_, index) => item(index + 1))],
      OwnLines: [[], [], [], [undefined, "n-19998", undefined, 5], [undefined, "N-20001", undefined, 1]],
    });
    const own = (row: number, key: (typeof TAKEOFF_KEYS)[number]) => one.value("OwnLines", row, column(key));
    // 5 in packs of 4 are 8, at 199.98 each 1,599.84.
    expect([own(4, "description"), own(4, "order"), own(4, "price"), own(4, "cost"), own(4, "supplier")]).toEqual([
      ...["Item 19998", 8, 199.98, 1599.84],
      "Far Yard",
    ]);
    expect(own(5, "look")).toBe("no cost");
    expect([one.value("RateCount"), one.value("RateRepeats")]).toEqual([LINES.length + 20_000, 0]);
  });

  it("keeps the codes that Takeoff reads from being changed", () => {
    const model = assemble(MONEY_SHEETS, "US", "demo");
    const codes = model.names.find(({ name }) => name === "RateCodes");
    const sheet = model.sheets.find(({ name }) => name === "Rates");
    const unlocked = (row: number): boolean | undefined =>
      sheet?.rows.get((codes?.area.top ?? 0) + row)?.get(codes?.area.left ?? 0)?.style.unlocked;
    expect(LINES.map((_, index) => unlocked(index))).toEqual(LINES.map(() => undefined));
    expect(unlocked(LINES.length)).toBe(true);
  });
});

it("has the user's own lines where the columns' names say", () => {
  expect(tried.value("TakeoffDescriptions", ownRow(1))).toBe("Electrician: GFCI outlet at the pump");
});
