import { FREIGHT_LINE } from "../../../job/takeoff/terms";
import { defineSheet, type SheetLayout } from "../../layout";
import { labor, machines } from "../money/hourRates";
import { priceList } from "./priceList";

/** After this many days a price is worth asking for again; common practice, no source. */
const FRESH_DAYS = 365;

/** Labor and machine rates built up line by line, and the price list. */
export const rates = defineSheet({
  name: "Rates",
  order: 10,
  turn: 1,
  build(s, job) {
    s.widths([34, 26, 9, 12, 10, 11, 10, 30, 14, 10, 12, 16, 10, 10, 10]);
    s.title("Rates", "Put your own wages and prices in place of the invented ones; Takeoff and Price follow.", {
      amounts: true,
    });
    s.note(
      "Every wage, rate and price that comes with this workbook is invented, and no quote with one of them is to be signed: change it or confirm it. Keep the codes of items that Takeoff asks for.",
    );
    labor(s, job);
    machines(s, job);
    checks(s);
    s.checksHere();
    const { code, description, unit, kind } = FREIGHT_LINE;
    const freight = { code, description, unit, category: "Other" } as const;
    s.takeoff({ ...freight, quantity: "=(SUM(TakeoffFreights)>0)*1" });
    s.rate({ ...freight, cost: kind, supplier: "" });
    s.pageBreak();
    priceList(s, job);
  },
});

function checks(s: SheetLayout): void {
  s.section("The price list at a glance");
  s.result({ name: "RateCount", label: "Items", kind: "count", formula: "=COUNTA(RateCodes)" });
  s.result({
    name: "RateOriginRows",
    label: "Last row that came as invented",
    kind: "count",
    source: "by definition",
    formula: '=IFERROR(XMATCH("?*",RateOrigins,2,-1),0)',
  });
  s.result({
    name: "RateRepeats",
    label: "Codes that stand twice",
    kind: "count",
    // One look through the list; counting each code in it would take a look for each.
    formula: '=IF(RateCount=0,0,RateCount-ROWS(UNIQUE(FILTER(RateCodes,RateCodes<>""))))',
  });
  s.result({
    name: "OldestRate",
    label: "Day of the oldest price",
    kind: "date",
    formula: '=IF(COUNT(RateDays)=0,"",MIN(RateDays))',
  });
  s.check({
    label: "Codes that stand twice",
    value: "=RateRepeats",
    limit: 0,
    cure: "Give each item of the price list a code of its own; only the first of two is found.",
    fix: "RateCodes",
    kind: "count",
  });
  s.check({
    label: "Age of the oldest price at the visit",
    source: "common practice, no source",
    value: "=MAX(0,VisitDate-OldestRate)",
    limit: FRESH_DAYS,
    cure: "Ask the supplier for today's price, then change cost and date (rule of thumb).",
    fix: "RateDays",
    kind: "count",
    unit: "days",
    weight: "look",
    needs: ["VisitDate", "OldestRate"],
  });
}
