import { beforeAll, describe, expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { namesIn } from "../../../src/workbook/lint/formula";
import { sheets } from "../../../src/workbook/sheets";
import { calculate } from "../calculated";
import { typeInto } from "../jobs";
import { LINES, MONEY_SHEETS, demo } from "./moneyJob";
import type { Tried } from "./tried";

let tried: Tried;
beforeAll(async () => {
  tried = await demo();
});

describe("Quote", () => {
  /** What a client may read. */
  const MAY_READ = new Set(
    (
      "CompanyName CompanyAddress CompanyPhone CompanyEmail CompanyLicense Estimator ClientName SiteAddress JobName FeatureName QuoteNumber QuoteDate ValidDays Currency " +
      "Run Fall DropCount BedWidth BasinLength BasinWidth BasinWaterDepth BasinSideSlope BasinHold ModuleCount ModuleLength ModuleWidth ModuleHeight BoulderTons LipStoneCount GravelTons DesignFlow " +
      "LastRevision FigureChanges WorkingDays StartDay RockKind GravelKind OwnWordsFirst OwnWordsRest DifferencesB DifferencesC CancelNotice TermLines ScopeLines ExclusionLines OptionNames OptionTotals ChosenOption PriceBeforeTax TaxAmount PriceTotal TaxName TaxBase TaxRate " +
      "StageNames StageShares StageAmounts DraftReasons QuoteDraft PriceLow PriceHigh RangeShare DraftWanted DraftLow DraftHigh DraftDoubts DraftDoubtShares FactNames FactStates FactUnits FactsAssumed FactsInvented QuoteDoubts QuoteAssumed"
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
      "QuoteIssue",
      "QuotePayments",
    ]);
    // A look that depends on a formula may read its own row alone.
    for (const { formula } of sheet?.conditionals ?? []) expect(formula).toMatch(/^=\$A\d+=""$/);
  });

  it("is a draft with a range and no price while anything keeps it from being signed", async () => {
    expect(tried.value("QuoteDraft")).toBe("");
    const prices = ["PriceTotal", "PriceBeforeTax", "TaxAmount"].map((name) => tried.number(name));
    for (const price of prices) expect(tried.numbers("Quote")).toContain(price);
    const draft = await demo({ DraftReasons: "a check on Start must be mended first." });
    expect(draft.value("QuoteDraft")).toBe("Draft, not to be signed: a check on Start must be mended first.");
    for (const price of [...prices, draft.number("OptionTotals", 1, 3)])
      expect(draft.numbers("Quote")).not.toContain(price);
    expect(draft.value("QuotePayments")).toBe("");
    // As far below the mean of the costs as the kept cost lies above it: rows 2, 3 and 5 of the odds.
    const [likely, mean, kept] = [2, 3, 5].map((row) => draft.number("CostOdds", row, 2));
    const at = (cost: number): number => Math.round((draft.number("PriceTotal") * cost) / (likely ?? NaN));
    expect(draft.numbers("Quote")).toEqual(
      expect.arrayContaining([at(2 * (mean ?? NaN) - (kept ?? NaN)), at(kept ?? NaN)]),
    );
    expect(draft.texts("Quote").filter((text) => text === "Draft: not to be signed")).toHaveLength(2);
  });

  it("has neither price nor range while the price is not complete", async () => {
    const without = await demo({ DraftReasons: "There is no price yet.", ContingencyShare: "" });
    expect(without.value("PriceTotal")).toBe("not complete: contingency");
    expect(without.texts("Quote")).toContain("No price yet");
    expect(without.numbers("Quote").filter((value) => value > 400 && value < 40_000)).toEqual([]);
  });

  it("offers every option with its price, and the quoted one in full", () => {
    const totals = [1, 3, 5].map((at) => tried.number("OptionTotals", 1, at));
    for (const total of totals) expect(tried.numbers("Quote")).toContain(total);
    expect(totals[0]).toBe(tried.number("PriceTotal"));
  });
});

describe("the quote of a draft", () => {
  it("says from what to what, and what is assumed", async () => {
    const asked = assemble(sheets, "US", "blank");
    for (const [name, value] of [
      ["RunAsked", 12],
      ["FallAsked", 3],
    ] as const)
      typeInto(asked, name, [[value]]);
    const draft = await calculate(asked);
    const [low, high] = ["DraftLow", "DraftHigh"].map((name) => Number(draft.named(name)?.[0]?.[0]));
    expect(low).toBeLessThan(high ?? 0);
    const quote = asked.sheets.find(({ name }) => name === "Quote");
    const shown = [...(quote?.rows ?? [])].flatMap(([, cells]) =>
      [...cells].map(([column, { result }]) => ({ column, result })),
    );
    const results = shown.map(({ result }) => result);
    expect(results).toEqual(
      expect.arrayContaining([low, high, "Draft: likely price before tax, from and to (8 cases in 10)"]),
    );
    // The widest doubt comes first, with its share of the range.
    const [doubt, share] = ["DraftDoubts", "DraftDoubtShares"].map((name) => draft.named(name)?.[0]?.[0]);
    expect(
      String(shown.find(({ column, result }) => column === 1 && /Assumed/.test(String(result)))?.result),
    ).toContain(`•  Assumed until measured: ${String(doubt)} (${Math.round(100 * Number(share))}% of the range); `);
  });

  it("names some of what is assumed, and counts the rest, where the sheets price the whole job", async () => {
    const demo = await calculate(assemble(sheets, "US", "demo"));
    const count = ["FactsAssumed", "FactsInvented"].reduce((sum, name) => sum + Number(demo.named(name)?.[0]?.[0]), 0);
    const said = String(demo.named("QuoteAssumed")?.[0]?.[0]);
    expect(said).toMatch(new RegExp(`^•  Assumed: .+ and ${count - 6} more$`));
    expect(said.split("; ")).toHaveLength(6);
  });
});
