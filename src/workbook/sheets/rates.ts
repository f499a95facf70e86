import { defineSheet, type SheetLayout } from "../layout";
import { labour, machines } from "./money/hourRates";
import { priceList } from "./money/priceList";

/** After this many days a price is worth asking for again; common practice, no source. */
const FRESH_DAYS = 365;

/** Labour and machine rates built up line by line, and the price list. */
export const rates = defineSheet({
  name: "Rates",
  order: 10,
  turn: 1,
  build(s, job) {
    s.widths([34, 13, 9, 12, 10, 11, 10, 30, 13, 10, 12]);
    s.title("Rates", "Put your own wages and prices in place of the invented ones; Takeoff and Price follow.");
    s.print({ landscape: true, titleRows: [1, 2] });
    s.note(
      "Every wage, rate and price that comes with this workbook is invented. Keep the codes of items that Takeoff asks for.",
    );
    labour(s, job);
    machines(s);
    s.pageBreak();
    priceList(s, job);
    checks(s);
  },
});

function checks(s: SheetLayout): void {
  const twice = 'SUM(MAP(RateCodes,LAMBDA(code,IF(code="",0,IF(COUNTIF(RateCodes,code)>1,1,0)))))';
  s.check({
    label: "Codes that stand twice",
    value: `=${twice}`,
    limit: 0,
    ok: `${twice}=0`,
    cure: "Give each item of the price list a code of its own; only the first of two is found.",
    fix: "RateCodes",
    kind: "count",
  });
  s.check({
    label: "Age of the oldest price at the visit",
    value: "=MAX(0,VisitDate-MIN(RateDays))",
    limit: `at most ${FRESH_DAYS} days`,
    ok: `VisitDate-MIN(RateDays)<=${FRESH_DAYS}`,
    cure: "Ask the supplier for today's price, then change cost and date (common practice, no source).",
    fix: "RateDays",
    kind: "count",
    unit: "days",
    weight: "look",
    needs: ["VisitDate", "RateDays"],
  });
}
