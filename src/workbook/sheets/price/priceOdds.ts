import { COST_KINDS } from "../../../calc/money/costKinds";
import type { SheetLayout, TableRef } from "../../layout";
import { areaAddress } from "../../layout/address";
import { costLabel } from "../money/costKinds";
import { OPTIONS } from "./priceTable";

/** Three-point costs of the quoted option, and what they come to with the confidence wanted. */
export function odds(s: SheetLayout, prices: TableRef): void {
  s.section("Odds of the cost");
  s.note(
    "Say how far each cost may fall or rise. The odds follow from the three guesses (beta-PERT): a guide, not a promise.",
  );
  s.input({
    name: "Confidence",
    label: "Chance of keeping the cost",
    kind: "share",
    min: 0.5,
    max: 0.99,
    message: "How sure you want to be that the cost is kept.",
  });
  s.input({
    name: "CostCorrelation",
    label: "How much costs rise together",
    kind: "share",
    min: 0,
    max: 1,
    message: "0: each cost for itself. 1: all good or all bad, as in a wet month. 30% is a rule of thumb.",
  });
  // Without overhead and contingency.
  const costs = OPTIONS.map((letter) => {
    const { top, left } = prices.cell(`cost${letter}`, 1);
    return areaAddress({ top, left, bottom: top + COST_KINDS.length - 1, right: left });
  });
  const likely = `CHOOSE(MATCH(ChosenOption,{"A","B","C"},0),${costs.join(",")})`;
  const side = (key: string, title: string, message: string) => ({
    key,
    title,
    kind: "share" as const,
    input: { min: 0, max: 3, message },
  });
  const table = s.table({
    rows: COST_KINDS.length,
    columns: [
      { key: "line", title: "Cost", kind: "text", fixed: COST_KINDS.map((kind) => costLabel(kind, s.job.system)) },
      side("below", "May fall by", "Share by which the cost may fall below the likely one, at the lowest."),
      side("above", "May rise by", "Share by which the cost may rise above the likely one, at the highest."),
      {
        key: "low",
        title: "Low",
        source: "by definition: the likely cost less its share",
        kind: "money",
        whole: true,
        formula:
          '=IF(ISNUMBER([likely]),ROUND([likely]*(1-IF(ISTEXT([below]),0,IF([below]>1,1,[below]))),MoneyDigits),"")',
      },
      { key: "likely", title: "Likely", kind: "money", whole: true, formula: `=IF(COUNT(TotalCost)=0,"",${likely})` },
      {
        key: "high",
        title: "High",
        source: "by definition: the likely cost and its share on top",
        kind: "money",
        whole: true,
        formula: '=IF(ISNUMBER([likely]),ROUND([likely]*(1+[above]),MoneyDigits),"")',
      },
    ],
    usual: [
      [0.04, 0.12],
      [0.1, 0.3],
      [0.1, 0.25],
      [0.02, 0.1],
      [0.05, 0.2],
      [0, 0.1],
    ],
  });
  const low = table.column("low");
  s.define("OddsShares", low.top, table.column("below").left, low.bottom, table.column("above").left);
  s.define("OddsItems", low.top, low.left, low.bottom, table.column("high").left);
  s.skip();
  const spill = s.spill({
    name: "CostOdds",
    header: "function",
    rows: 6,
    formula: "=RILL.COSTODDS(OddsItems,Confidence,CostCorrelation,Currency)",
    needs: ["TotalCost", "Confidence", "CostCorrelation"],
    columns: [{ kind: "text" }, { kind: "money" }],
  });
  // As far below the mean as the cost that is kept lies above it; the price goes with the cost.
  const range = (name: string, label: string, cost: string): void => {
    s.result({
      name,
      label,
      source:
        "by definition: the price goes with the cost, as far below its mean as the cost that is kept lies above it",
      kind: "money",
      formula: `=ROUND(PriceTotal*${cost}/${spill.cell(2, 2)},0)`,
      needs: ["PriceBeforeTax", spill.cell(5, 2).address],
    });
  };
  range("PriceLow", "Price with tax, low", `(2*${spill.cell(3, 2)}-${spill.cell(5, 2)})`);
  range("PriceHigh", "Price with tax, high", `${spill.cell(5, 2)}`);
  s.result({
    name: "RangeShare",
    label: "Chance of a price in between",
    source: "by definition: of a spread alike to both sides of the mean",
    kind: "share",
    formula: "=2*Confidence-1",
    needs: ["Confidence"],
  });
  s.result({
    name: "PriceAtConfidence",
    label: "Price before tax that keeps the margin at that cost",
    source: "by definition: cost / (1 − margin)",
    kind: "money",
    formula: `=ROUNDUP(ROUND(${spill.cell(5, 2)}/(1-WantedMargin),6),MoneyDigits)`,
    needs: [spill.cell(5, 2).address, "WantedMargin"],
  });
}
