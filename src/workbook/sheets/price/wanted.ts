import type { SheetLayout } from "../../layout";

/** A price or a margin of one's own: the markups in use follow it, and what that takes stands beside it. */
export function wanted(s: SheetLayout): void {
  s.section("A price of your own");
  s.input({
    name: "OwnPrice",
    label: "Price wanted, before tax",
    kind: "money",
    min: 0,
    max: 10_000_000,
    message: "The quoted option's price before tax. It is raised to the multiple above.",
    note: "Blank: the markups make the price.",
    optional: true,
  });
  s.input({
    name: "OwnMargin",
    label: "Or margin wanted",
    kind: "share",
    min: 0,
    max: 0.9,
    message: "Gross margin of the quoted option, as a share of its price. A typed price goes first.",
    note: "All markups change alike, for every option.",
    optional: true,
  });
  const asked =
    "IF(ISNUMBER(OwnPrice),ROUND(OwnPrice,MoneyDigits),ROUNDUP(ROUND((QuotedCost-INDEX(QuotedCosts,7))/(1-OwnMargin),6),MoneyDigits))";
  s.result({
    name: "PriceAsked",
    label: "Price this comes to",
    source: "by definition: the price, or cost without overhead / (1 − margin); raised to the multiple",
    kind: "money",
    formula: `=IF(COUNT(QuotedCost)*COUNT(OwnPrice,OwnMargin)=0,"",IF(QuotedCost<=0,"",LET(p,${asked},ROUND(IF(N(RoundTo)>0,CEILING(p,RoundTo),p),MoneyDigits))))`,
  });
  s.result({
    name: "MarkupFactor",
    label: "All markups times",
    source: "by definition: (price − cost) / sum of cost × markup",
    kind: "factor",
    format: "0.0000",
    formula: '=IF(PriceAsked="","",IF(QuotedMarkup=0,"",(PriceAsked-QuotedCost)/QuotedMarkup))',
  });
  s.result({
    name: "MarginAsked",
    label: "Gross margin at that price",
    source: "by definition: what is left of the price, as its share",
    kind: "share",
    formula: '=IF(N(PriceAsked)=0,"",(PriceAsked-QuotedCost+INDEX(QuotedCosts,7))/PriceAsked)',
  });
  s.result({
    name: "WantedSaid",
    label: "What becomes of it",
    kind: "text",
    formula:
      '=IF(PriceAsked="","",IF(MarkupWay=0,IF(PriceAsked<QuotedCost,"under the cost of "&FIXED(QuotedCost,MoneyDigits),"over 1000% of markup")&": your markups stay",' +
      'IF(COUNT(OwnPrice,OwnMargin)=2,"price, not margin: ","")&INDEX({"all in proportion","one on every cost","on the largest cost"},MarkupWay)))',
  });
}
