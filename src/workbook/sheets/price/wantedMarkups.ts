import { COST_KINDS } from "../../../calc/money/costKinds";
import type { SheetLayout } from "../../layout";
import { costLabel } from "../money/costKinds";

/** Rows of the price table: the kinds of cost, overhead, contingency. */
const ROWS = COST_KINDS.length + 2;

const numbered = (formula: (row: number) => string): string[] =>
  Array.from({ length: ROWS }, (_, index) => formula(index + 1));

/** The markup a line is priced with, row by row: the typed one, unless a price of one's own asks for another. */
export const MARKUPS_IN_USE = numbered(
  (row) => `=IF(N(MarkupWay)=0,[markup]+0,INDEX(CHOOSE(MarkupWay,Markups1,Markups2,Markups3),${row}))`,
);

/**
 * The markups that make a wanted price, three ways: all in proportion, one on every cost, only the largest cost's. In each,
 * the largest cost takes the cents that are left, because every line is rounded for itself.
 */
export function wantedMarkups(s: SheetLayout): void {
  s.section("Markups that make the price wanted");
  s.result({
    name: "QuotedCost",
    label: "Cost of the quoted option",
    kind: "money",
    formula: "=ROUND(SUM(QuotedCosts),MoneyDigits)",
  });
  s.result({
    name: "QuotedMarkup",
    label: "What its markups add",
    source: "by definition: sum of cost × markup",
    kind: "money",
    formula: "=SUMPRODUCT(QuotedCosts,TypedMarkups)",
  });
  s.result({
    name: "LargestCost",
    label: "Row of its largest cost",
    kind: "count",
    formula: "=MATCH(MAX(QuotedCosts),QuotedCosts,0)",
  });
  const possible = (way: number): string => `COUNTIFS(Markups${way},">=0",Markups${way},"<=10")=${ROWS}`;
  s.result({
    name: "MarkupWay",
    label: "The first way that is possible",
    source: "by definition: no markup below 0 or over 1000%",
    kind: "count",
    formula: `=IF(ISNUMBER(PriceAsked),IF(MIN(QuotedCosts)<0,0,IF(${possible(1)},1,IF(${possible(2)},2,IF(${possible(3)},3,0)))),0)`,
  });
  s.skip();
  const choice = 'MATCH(ChosenOption,{"A","B","C"},0)';
  const rate = {
    source: "by definition: (price − cost) / sum of cost × markup, or the price over the cost less 1",
    kind: "share" as const,
  };
  const column = (way: number, title: string, share: string) => ({
    key: `share${way}`,
    title,
    ...rate,
    name: `Shares${way}`,
    formula: `=IF(ISNUMBER(PriceAsked),IF([cost]=0,[typed],ROUND(${share},9)),0)`,
  });
  const fitted = (way: number, title: string) => ({
    key: `fitted${way}`,
    title,
    ...rate,
    name: `Markups${way}`,
    formula: numbered(
      (row) =>
        `=IF(AND(${row}=LargestCost,[cost]>0,ISNUMBER(PriceAsked)),` +
        `ROUND((PriceAsked-SUMPRODUCT(ROUND(QuotedCosts*(1+Shares${way}),MoneyDigits))+ROUND([cost]*(1+[share${way}]),MoneyDigits))/[cost]-1,9),[share${way}])`,
    ),
  });
  s.table({
    rows: ROWS,
    columns: [
      {
        key: "line",
        title: "Cost",
        kind: "text",
        fixed: [...COST_KINDS.map((kind) => costLabel(kind, s.job.system)), "Overhead", "Contingency"],
      },
      {
        key: "cost",
        title: "Quoted",
        kind: "money",
        name: "QuotedCosts",
        formula: numbered(
          (row) =>
            `=IF(ISNUMBER(${choice}),N(CHOOSE(${choice},INDEX(CostsA,${row}),INDEX(CostsB,${row}),INDEX(CostsC,${row}))),0)`,
        ),
      },
      {
        key: "typed",
        title: "Typed",
        kind: "share",
        name: "TypedMarkups",
        formula: numbered((row) => `=INDEX(Markups,${row})+0`),
      },
      column(1, "In proportion", "IF(QuotedMarkup>0,[typed]*(PriceAsked-QuotedCost)/QuotedMarkup,-1)"),
      column(2, "One for all", "PriceAsked/QuotedCost-1"),
      column(3, "Largest alone", "0"),
      fitted(1, "First, to the cent"),
      fitted(2, "Second"),
      fitted(3, "Third"),
    ],
  });
}
