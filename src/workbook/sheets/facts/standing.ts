import type { SheetLayout } from "../../layout";

const COUNTED: readonly (readonly [name: string, label: string, count: string])[] = [
  ["FactsYours", "Typed for this job", 'COUNTIF(FactStates,"yours")'],
  ["FactsCompany", "Your company's", 'COUNTIF(FactStates,"company")'],
  ["FactsAssumed", "Assumed by a rule", 'COUNTIF(FactStates,"assumed")'],
  ["FactsInvented", "Invented, until you change or confirm them", 'COUNTIF(FactStates,"invented")'],
  ["FactsUnknown", "Needed and unknown", 'COUNTIFS(FactStates,"unknown",FactNeeded,"yes")'],
  ["FactsWrong", "Wrong: typed, and not to be read", 'COUNTIF(FactStates,"wrong")'],
];

/** The facts counted by their states, and the next one to see to. */
export function standing(s: SheetLayout): void {
  s.section("How complete the job is");
  for (const [name, label, formula] of COUNTED) s.result({ name, label, formula, kind: "count", unit: "facts" });
  s.result({
    name: "FactsNext",
    label: "Next to fill or fix",
    // A wrong one first: it stops the price.
    formula:
      '=IF(FactsWrong>0,INDEX(FactPlaces,MATCH("wrong",FactStates,0)),IF(FactsUnknown>0,INDEX(FactPlaces,MATCH("?*",FactMissing,0)),""))',
    kind: "text",
  });
  s.input({
    name: "FactsConfirmed",
    label: "Company settings confirmed on",
    kind: "date",
    optional: true,
    message: "Day your company confirmed every setting that came with the workbook: wages, rates, markups, terms.",
    note: "Until then what was invented for this tool is never signed.",
  });
}
