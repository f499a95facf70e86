import { shippedPricing } from "../../../book/shipped/office";
import type { Job, SheetLayout } from "../../layout";

export const STAGE_ROWS = 6;
export const SCOPE_ROWS = 4;
export const EXCLUSION_ROWS = 6;

/** What fits on one line of the quote. */
const LONGEST_TERM = 100;

/** What the quote says beside the price: dates, scope, exclusions and payment stages. */
export function quoteTerms(s: SheetLayout, job: Job): void {
  s.section("Terms of the quote");
  s.input({
    name: "QuoteNumber",
    label: "Quote number",
    kind: "text",
    demo: "Q-2604-17",
    message: "Your number for this quote.",
    optional: true,
  });
  s.input({
    name: "QuoteDate",
    label: "Date of the quote",
    kind: "date",
    demo: { US: 46160, SI: 46166 },
    message: "Day the quote is made.",
  });
  s.input({
    name: "ValidDays",
    label: "Valid for",
    kind: "count",
    unit: "days",
    min: 1,
    max: 365,
    message: "Days the price holds.",
  });
  s.skip();
  const terms = (name: string, rows: number, title: string, usual: readonly string[], message: string): void => {
    s.table({
      name,
      rows,
      columns: [{ key: "text", title, kind: "text", across: s.lastColumn, input: { max: LONGEST_TERM, message } }],
      usual: usual.map((text) => [text]),
    });
    s.skip();
  };
  terms(
    "ScopeLines",
    SCOPE_ROWS,
    "Also part of the work, in plain words",
    SCOPE,
    "One sentence; it stands in the scope of the quote.",
  );
  terms(
    "ExclusionLines",
    EXCLUSION_ROWS,
    "Not part of the price",
    EXCLUSIONS,
    "One sentence; it stands among the exclusions of the quote.",
  );
  const top = s.row;
  s.table({
    name: "StageTable",
    rows: STAGE_ROWS,
    columns: [
      {
        key: "stage",
        title: "Payment stage",
        kind: "text",
        name: "StageNames",
        input: { max: 80, message: "When the payment is due." },
      },
      {
        key: "share",
        title: "Share",
        kind: "share",
        name: "StageShares",
        input: { min: 0, max: 1, message: "Share of the price with tax; all shares make 100 %." },
      },
    ],
    usual: shippedPricing(job.system).stages.map(({ name, share }) => [name, share]),
  });
  s.row = top;
  const stages = s.spill({
    name: "PaymentStages",
    at: 4,
    header: "function",
    rows: STAGE_ROWS,
    formula: "=RILL.STAGES(PriceTotal,StageShares)",
    needs: ["PriceBeforeTax", "StageShares"],
    columns: [{ kind: "number" }, { kind: "share" }, { kind: "money" }, { kind: "money" }],
  });
  const amounts = stages.body.column(3);
  s.define("StageAmounts", amounts.top, amounts.left, amounts.bottom, amounts.left);
  if (job.system === "SI") s.note("Where the law asks for it, give tax number and due date on the invoice, not here.");
}

const SCOPE = [
  "Set the stream out with you on site before digging starts.",
  "Start the pump, set the water level with you, and show you what to clean and when.",
];

const EXCLUSIONS = [
  "Rock, roots of trees, old foundations or groundwater that cannot be seen before digging.",
  "Mains cable to the pump and its protection, unless named above: a licensed electrician's work.",
  "Permits, unless named above.",
  "Filling water, and water lost to evaporation and splash.",
];
