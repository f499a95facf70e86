import { COST_KINDS } from "../../../calc/money/costKinds";
import type { SheetLayout } from "../../layout";
import { costLabel } from "../money/costKinds";

/** Rows of the price table: the kinds of cost, overhead, contingency. */
const ROWS = COST_KINDS.length + 2;

/** The markups the lines are priced with: those typed, unless a price of one's own asks for others. */
export const MARKUPS_IN_USE = "=IF(N(MarkupWay)=0,[markup]+0,CHOOSE(MarkupWay,Markups1,Markups2,Markups3))";

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
  // Nothing is quoted of an option that there is not.
  const of = 'CHOOSE(IFERROR(MATCH(ChosenOption,{"A","B","C"},0),4),CostsA,CostsB,CostsC,REPT(CostsA,0))';
  const rate = {
    source: "by definition: (price − cost) / sum of cost × markup, or the price over the cost less 1",
    kind: "share" as const,
  };
  const column = (way: number, title: string, share: string) => ({
    key: `share${way}`,
    title,
    ...rate,
    name: `Shares${way}`,
    whole: true as const,
    formula: `=IF(ISNUMBER(PriceAsked),IF([cost]=0,[typed],ROUND(${share},9)),0*[cost])`,
  });
  const fitted = (way: number, title: string) => ({
    key: `fitted${way}`,
    title,
    ...rate,
    name: `Markups${way}`,
    whole: true as const,
    formula:
      `=IF((SEQUENCE(${ROWS})=LargestCost)*([cost]>0)*ISNUMBER(PriceAsked),` +
      `ROUND((PriceAsked-SUMPRODUCT(ROUND(QuotedCosts*(1+Shares${way}),MoneyDigits))+ROUND([cost]*(1+[share${way}]),MoneyDigits))/[cost]-1,9),[share${way}])`,
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
        source: "by definition: the costs of the option that is quoted",
        whole: true,
        formula: `=IF(${of}="",0,${of})`,
      },
      {
        key: "typed",
        title: "Typed",
        kind: "share",
        name: "TypedMarkups",
        whole: true,
        formula: "=Markups+0",
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
