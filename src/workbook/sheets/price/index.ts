import { defineSheet, type Job, type SheetLayout } from "../../layout";
import type { Area } from "../../model";
import { currency } from "./currency";
import { odds } from "./priceOdds";
import { chosen, results } from "./priceResults";
import { options, settings } from "./priceSettings";
import { OPTION_IN_USE, priceNeeds } from "./priceNeeds";
import { optionEffects } from "./optionEffects";
import { optionWords } from "./optionWords";
import { hoursCosts, priceTable, type Extra } from "./priceTable";
import { wanted } from "./wanted";
import { wantedMarkups } from "./wantedMarkups";
import { quoteTerms, termResults } from "../quote/quoteTerms";

/** From cost to price: markups, overhead, contingency, tax, odds, and three options side by side. */
export const price = defineSheet({
  name: "Price",
  order: 13,
  turn: 1,
  build(s, job) {
    s.widths([29.4, 23.2, 9, 9.95, 9.95, 9.95, 9.95, 9.95, 9.95]);
    s.title(
      "Price",
      "Set markups, overhead and tax; price, margin and profit a day follow at once, for three options.",
      { amounts: true },
    );
    s.print({ titleRows: [1, 2] });
    const areaFrom = (top: number): Area => ({ top, left: 1, bottom: s.row - 1, right: s.lastColumn });
    let top = s.row;
    settings(s, job);
    const asked = areaFrom(top);
    chosen(s);
    top = s.row;
    options(s, job);
    wanted(s);
    s.section("From cost to price");
    const extra = laborCosts(job);
    const table = priceTable(s, job, extra);
    results(s, table);
    const builtUp = areaFrom(top);
    s.pageBreak();
    odds(s, table);
    checks(s);
    s.checksHere();
    // Quote prints the terms; here they are typed.
    s.notPrinted();
    quoteTerms(s, job);
    priceNeeds(s, job, [asked, builtUp]);
    hoursCosts(s, job, extra);
    wantedMarkups(s);
    if (job.hasFacts) optionEffects(s);
    optionWords(s);
    termResults(s);
    currency(s);
  },
});

/** Hours are costed on Hours, unless their lines are on Takeoff already. */
function laborCosts(job: Job): Extra {
  const counted = job.takeoffLines.some(({ category }) => category === "Labor" || category === "Equipment");
  if (counted || !job.names.has("LaborCost")) return {};
  return { labor: "LaborCost", machine: "MachineCost" };
}

function checks(s: SheetLayout): void {
  s.check({
    label: "Cells in error",
    value: "=SUM(CellsWrong)",
    limit: 0,
    cure: "Fix the cell: its own sentence says what would be right.",
    cureNow: '"Fix "&TEXTJOIN(", ",TRUE,FirstWrong)&"."',
    fix: "FirstWrong",
    kind: "count",
  });
  s.check({
    label: "Parts of the price not known",
    value: "=PartsMissing",
    limit: 0,
    cure: "The list on Price says where each gets its quantity and price.",
    cureNow: '"Without quantity or price: "&TEXTJOIN(", ",TRUE,NamesMissing)&"."',
    fix: "NeedsMissing",
    kind: "count",
  });
  s.check({
    label: "Gross margin of the quoted option",
    value: "=ROUND(GrossMargin,6)",
    sign: "at least",
    limit: "=ROUND(WantedMargin,6)",
    cure: "Raise the markups to the smallest that keeps the margin, or accept the thinner margin by lowering the wanted one.",
    fix: "Markups",
    kind: "share",
    needs: ["GrossMargin"],
  });
  // Nothing wanted is met by any price.
  s.check({
    label: "The price wanted is the price",
    value: '=IF(PriceAsked="",0,ROUND(PriceBeforeTax-PriceAsked,MoneyDigits))',
    limit: 0,
    least: 0,
    words: "equal",
    cure: "Type a price above the cost, or clear it: until then the markups make the price.",
    fix: "OwnPrice",
    kind: "money",
    over: "apart",
    needs: ["PriceBeforeTax"],
  });
  s.check({
    label: "Contingency covers the odds",
    value: `=ROUND(CHOOSE(MATCH(ChosenOption,{"A","B","C"},0),INDEX(CostsA,8),INDEX(CostsB,8),INDEX(CostsC,8))-INDEX(CostOdds,6,2),MoneyDigits)`,
    sign: "at least",
    limit: 0,
    cure: "Raise the contingency to the reserve that the odds ask for, or take more risk knowingly.",
    fix: "ContingencyShare",
    kind: "money",
    over: "spare",
    weight: "look",
    needs: ["CostOdds"],
  });
  s.check({
    label: "The quoted option is in use",
    value: `=${OPTION_IN_USE}`,
    sign: "at least",
    limit: 1,
    cure: "Pick an option that has a name, or name it.",
    fix: "ChosenOption",
    kind: "answer",
  });
  s.check({
    label: "Payment stages add up to the price",
    value: "=ROUND(SUM(StageAmounts)-PriceTotal,MoneyDigits)",
    limit: 0,
    least: 0,
    words: "equal",
    cure: "Make the shares of the payment stages add up to 100%.",
    fix: "StageShares",
    kind: "money",
    over: "apart",
    needs: ["PriceBeforeTax", "StageShares"],
  });
  s.check({
    label: "Deposit within the law's limit",
    value: "=INDEX(StageAmounts,1)",
    limit: "=DepositAllowed",
    cure: "Type the largest deposit your law allows, on Price; 100% where it sets no limit.",
    cureStop: "Lower the first payment, and raise a later one.",
    fix: "DepositShareLimit",
    kind: "money",
    weight: "look",
    stopOnceKnown: true,
    needs: ["PriceBeforeTax", "StageShares"],
  });
  s.check({
    label: "Work both priced and excluded",
    value: '=IF(ScopeClash="",0,1)',
    limit: 0,
    cure: "Strike the exclusion or the priced line, or word the exclusion as work beyond what is priced.",
    cureNow: 'ScopeClash&": strike one of them, or word the exclusion as work beyond what is priced."',
    fix: "ExclusionLines",
    kind: "count",
  });
}
