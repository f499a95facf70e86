import { shippedCompany, shippedPricing } from "../../../book/shipped/office";
import type { Job, SheetLayout } from "../../layout";

export const STAGE_ROWS = 6;
export const SCOPE_ROWS = 4;
export const EXCLUSION_ROWS = 6;
export const TERM_ROWS = 4;

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
  s.input({
    name: "StartDay",
    label: "Work begins on",
    kind: "date",
    demo: { US: 46188, SI: 46194 },
    message: "Day the work begins; blank says that it is agreed when the quote is signed.",
    optional: true,
  });
  s.input({
    name: "CancelNotice",
    label: "Notice of cancellation",
    kind: "text",
    demo: CANCEL_NOTICE,
    max: 250,
    message:
      "The sentence your law asks for above the client's signature. Ask a lawyer for it and for the form that goes with it.",
    optional: true,
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
  const words = shippedCompany(job.system);
  terms(
    "ScopeLines",
    SCOPE_ROWS,
    "Also part of the work, in plain words",
    words.scope,
    "One sentence; it stands in the scope of the quote.",
  );
  terms(
    "ExclusionLines",
    EXCLUSION_ROWS,
    "Not part of the price",
    // The demo prices its electrician and its permit.
    words.exclusions.filter((text) => job.filled === "blank" || !/electrician|permit/i.test(text)),
    "One sentence; it stands among the exclusions of the quote.",
  );
  terms(
    "TermLines",
    TERM_ROWS,
    "Terms and warranty",
    words.terms,
    "One sentence; it stands among the terms of the quote.",
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
        input: { min: 0, max: 1, message: "Share of the price with tax; all shares make 100%." },
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
    formula: "=RILL.STAGES(PriceTotal,StageShares,Currency)",
    needs: ["PriceBeforeTax", "StageShares"],
    columns: [{ kind: "number" }, { kind: "share" }, { kind: "money" }, { kind: "money" }],
  });
  const amounts = stages.body.column(3);
  s.define("StageAmounts", amounts.top, amounts.left, amounts.bottom, amounts.left);
  depositLimits(s);
  if (job.system === "SI") s.note("Where the law asks for it, give tax number and due date on the invoice, not here.");
}

/** What the law allows of the first payment, which is asked for before any work is done. */
function depositLimits(s: SheetLayout): void {
  s.skip();
  s.input({
    name: "DepositShareLimit",
    label: "Largest deposit by law, as a share",
    kind: "share",
    min: 0,
    max: 1,
    demo: 0.4,
    message: "Of the price with tax. 100% where your law sets no limit.",
    note: "Set by state or country",
    optional: true,
  });
  s.input({
    name: "DepositAmountLimit",
    label: "Largest deposit by law, as an amount",
    kind: "money",
    min: 0,
    max: 1_000_000,
    message: "Blank where your law sets no amount. With a share as well, the smaller of the two holds.",
    optional: true,
  });
  s.notice(
    "Many states and countries limit deposits and say how payments must follow the work. California, for one: 10% of the price, at most $1,000 (Business and Professions Code 7159.5). Ask a lawyer for yours.",
  );
}

/** What the checks of the terms are held to. */
export function termResults(s: SheetLayout): void {
  s.section("Behind the checks of the terms");
  s.result({
    name: "DepositAllowed",
    label: "Largest deposit the law allows",
    // The smaller of the two; the price itself where one of them is not typed.
    formula:
      '=IF(NOT(ISNUMBER(PriceTotal)),"",IF(COUNT(DepositShareLimit,DepositAmountLimit)=0,"not known",' +
      "MIN(IF(ISNUMBER(DepositShareLimit),ROUND(DepositShareLimit*PriceTotal,MoneyDigits),PriceTotal),IF(ISNUMBER(DepositAmountLimit),DepositAmountLimit,PriceTotal))))",
    kind: "money",
  });
  s.result({
    name: "ScopeClash",
    label: "Priced and excluded at once",
    formula:
      '=IF(OR(COUNTIF(ExclusionLines,"?*")=0,COUNTIF(OwnWords,"?*")=0),"",RILL.SCOPECLASH(ExclusionLines,OwnWords))',
    kind: "text",
  });
}

/**
 * What the demo prints above the client's signature. US: 16 CFR 429.1(a), for sales at the buyer's home. SI: the sense of
 * Directive 2011/83/EU, article 9, for contracts made away from the trader's premises.
 */
const CANCEL_NOTICE = {
  US: "You, the buyer, may cancel this transaction at any time prior to midnight of the third business day after the date of this transaction. See the attached notice of cancellation form for an explanation of this right.",
  SI: "You may withdraw from this contract within 14 days without giving a reason; see the attached instructions and form.",
};
