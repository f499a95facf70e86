import { defineSheet, Ref, type SheetLayout } from "../../layout";
import { areaAddress } from "../../layout/address";
import { hideBlankRows } from "../../layout/conditions";
import { STYLE } from "../../layout/style";
import { fillDown } from "../money/cells";
import { OPTIONS } from "../price/priceTable";
import { NO_PRICE } from "./noPrice";
import { list, QUOTE_COLUMNS, quoteCautions, rowFrom, scope, sentence } from "./quoteText";
import { EXCLUSION_ROWS, STAGE_ROWS, TERM_ROWS } from "./quoteTerms";

/**
 * The offer as the client gets it: what is built, what it costs, and what is agreed, a page each.
 * Reads what the client may know and nothing else: no cost, markup, margin or quantity of the takeoff.
 */
export const quote = defineSheet({
  name: "Quote",
  order: 14,
  turn: 1,
  build(s, job) {
    s.widths([20, 16, 15, 14, 14, 14]);
    s.purpose =
      "Print it or make a PDF for the client: the workbook itself holds your costs. Its terms are set on Price.";
    s.print({ plain: true, lastColumn: QUOTE_COLUMNS });
    s.takesPictures();
    heading(s);
    block(s, "What you get");
    scope(s, job);
    s.pageBreak();
    block(s, "Price");
    prices(s);
    block(s, "Payments");
    payments(s);
    block(s, "Not part of the price");
    list(s, "ExclusionLines", EXCLUSION_ROWS);
    block(s, "Terms");
    list(s, "TermLines", TERM_ROWS);
    s.pageBreak();
    block(s, "Please know");
    quoteCautions(job).forEach((text) => sentence(s, `•  ${text}`, text));
    block(s, "Agreed");
    agreement(s);
  },
});

function heading(s: SheetLayout): void {
  s.put(s.row, 1, { formula: '=CompanyName&""', style: "title", look: { size: 14, wrap: true }, across: 4 });
  s.put(s.row, 5, {
    formula: '=IF(QuoteDraft="","Quote","Draft")',
    style: "title",
    look: { align: "right" },
    across: 2,
  });
  s.roomFor(s.row, 3);
  s.put(s.row + 1, 1, {
    formula:
      '=TEXTJOIN(" · ",TRUE,CompanyAddress,CompanyPhone,CompanyEmail,IF(CompanyLicense="","","License "&CompanyLicense),Estimator)',
    style: "plain",
    look: { color: "4F5D63", wrap: true, vertical: "top" },
    across: QUOTE_COLUMNS,
  });
  s.roomFor(s.row + 1, 2);
  // An estimate that is not finished must not look like an offer.
  s.put(s.row + 2, 1, {
    formula:
      '=IF(SUMPRODUCT((DraftReasons<>"")*1)=0,"","Draft, not to be signed: "&INDEX(DraftReasons,MATCH("?*",DraftReasons,0)))',
    style: "plain",
    look: { bold: true, color: STYLE.caution.color, wrap: true },
    name: "QuoteDraft",
    across: QUOTE_COLUMNS,
  });
  s.roomFor(s.row + 2, 3);
  // What the client holds, and what this paper says otherwise.
  s.put(s.row + 3, 1, {
    formula:
      '=IF(LastRevision=0,"",IF(COUNTIF(FigureChanges,"?*")=0,"Revision "&LastRevision&", as issued","Changed since revision "&LastRevision&": "&TEXTJOIN("; ",TRUE,FigureChanges)&"."))',
    style: "plain",
    look: { bold: true, wrap: true, vertical: "top" },
    name: "QuoteIssue",
    across: QUOTE_COLUMNS,
  });
  s.roomFor(s.row + 3, 2);
  s.row += 4;
  const facts: readonly (readonly [string, string, string, string, "date"?])[] = [
    ["For", '=ClientName&""', "Quote no.", '=QuoteNumber&""'],
    ["Where", '=SiteAddress&""', "Date", '=IF(COUNT(QuoteDate)=0,"",QuoteDate)', "date"],
    ["Work", '=JobName&""', "Valid until", '=IF(COUNT(QuoteDate,ValidDays)<2,"",QuoteDate+ValidDays)', "date"],
    [
      "Takes",
      '=IF(N(WorkingDays)>0,"about "&ROUNDUP(WorkingDays,0)&IF(WorkingDays>1," working days"," working day"),"")',
      "Begins",
      '=IF(ISNUMBER(StartDay),StartDay,"as agreed")',
      "date",
    ],
  ];
  for (const [left, leftFormula, right, rightFormula, kind] of facts) {
    s.put(s.row, 1, { value: left, style: "unit", look: { indent: 0 } });
    s.put(s.row, 2, { formula: leftFormula, style: "resultText", look: { bold: true }, across: 3 });
    s.put(s.row, 5, { value: right, style: "unit", look: { align: "right" } });
    s.put(s.row, 6, {
      formula: rightFormula,
      style: "resultText",
      ...(kind ? { kind } : {}),
      look: { bold: true, align: "right" },
    });
    s.roomFor(s.row, 2);
    s.row++;
  }
}

function block(s: SheetLayout, title: string): void {
  s.row++;
  s.put(s.row, 1, { value: title, style: "section", across: QUOTE_COLUMNS });
  s.sheet.heights.set(s.row, 19);
  s.row++;
}

/** The tax by its name, and by its rate where all of the price bears it. */
const TAX = 'IF(TaxName="","Tax",TaxName)&IF(TaxBase="whole price"," "&ROUND(100*TaxRate,3)&"%","")';

function prices(s: SheetLayout): void {
  const titles: readonly [string, number, number][] = [
    ["Option", 1, 1],
    ["What it is", 2, 3],
    ["", 5, 1],
  ];
  for (const [title, column, across] of titles) s.put(s.row, column, { value: title, style: "headText", across });
  s.put(s.row, 6, { formula: '="With tax ("&Currency&")"', style: "head" });
  s.row++;
  const first = s.row;
  OPTIONS.forEach((letter, index) => {
    // The prices of the options stand two columns apart on Price.
    const total = `INDEX(OptionTotals,1,${2 * index + 1})`;
    const unused = `COUNT(${total})=0`;
    s.put(s.row, 1, { formula: `=IF(${unused},"","${letter}")`, style: "resultText" });
    const name = `INDEX(OptionNames,${index + 1})`;
    s.put(s.row, 2, {
      formula:
        letter === "A"
          ? `=IF(${unused},"",${name}&"")`
          : `=IF(${unused},"",${name}&IF(COUNTIF(Differences${letter},"?*")=0,"",": "&TEXTJOIN("; ",TRUE,Differences${letter})))`,
      style: "resultText",
      look: { wrap: true, vertical: "top" },
      across: 3,
    });
    s.roomFor(s.row, letter === "A" ? 1 : 2);
    s.put(s.row, 5, { style: "resultText", look: { italic: true } });
    s.put(s.row, 6, { formula: `=IF(OR(${unused},QuoteDraft<>""),"",${total})`, style: "result", kind: "money" });
    s.row++;
  });
  const column = (at: number, from: number): Ref => new Ref(s.name, from, at, s.row - 1, at);
  const letters = areaAddress(column(1, first));
  fillDown(s, column(5, first), `IF(${letters}="","",IF(${letters}=ChosenOption,"offered here","on request"))`);
  hideBlankRows(s, { top: first, left: 1, bottom: s.row - 1, right: QUOTE_COLUMNS });
  s.row++;
  const amounts = s.row;
  const lines: readonly (readonly [string, string, boolean])[] = [
    ['"Option offered here, before tax"', "PriceBeforeTax", false],
    [TAX, "TaxAmount", false],
    ['"Price with tax"', "PriceTotal", true],
  ];
  for (const [label, name, strong] of lines) {
    const style = strong ? "strong" : "result";
    s.put(s.row, 1, { formula: `=IF(QuoteDraft="",${label},"")`, style, look: { align: "left" }, across: 4 });
    s.put(s.row, 5, { style, look: { align: "right" } });
    s.put(s.row, 6, { formula: `=IF(QuoteDraft="",${name},"")`, style, kind: "money" });
    s.row++;
  }
  fillDown(s, column(5, amounts), `IF(${areaAddress(column(1, amounts))}="","",Currency&"")`);
  range(s);
}

/** What the draft on Start says in place of a price's low or high. */
function drafted(name: string): string {
  return name.replace("Price", "Draft");
}

/** A draft has no price to sign, but a range. */
function range(s: SheetLayout): void {
  const { job } = s;
  s.put(s.row, 1, {
    formula:
      '=IF(QuoteDraft="","",IF(PriceLow<>"","Draft: likely price with tax, from and to ("&ROUND(100*RangeShare,0)&"% of cases)",' +
      `IF(${job.hasFacts ? "COUNT(DraftLow)=0" : "TRUE"},"${NO_PRICE}","Draft: likely price before tax, from and to (8 cases in 10)")))`,
    style: "resultText",
    look: { bold: true },
    across: 4,
  });
  for (const [column, name] of [
    [5, "PriceLow"],
    [6, "PriceHigh"],
  ] as const) {
    s.put(s.row, column, {
      formula: `=IF(QuoteDraft="","",${job.hasFacts ? `IF(${name}="",IF(COUNT(${drafted(name)})=0,"",${drafted(name)}),${name})` : name})`,
      style: "result",
      kind: "money",
      look: { bold: true, format: "#,##0" },
    });
  }
  s.row++;
  if (job.hasFacts) assumed(s);
}

/** Facts that a draft names where no share of the range is known. */
const NAMED = 6;
/** Characters of the columns right of the page: one that keeps apart, and those of a long sentence each. */
const [GAP_WIDTH, SENTENCE_WIDTH] = [9, 200];

/** What a draft rests on: what moves its price most, or measures that are taken for granted, and how many more there are. */
function assumed(s: SheetLayout): void {
  const share = '" ("&ROUND(100*IF(ISNUMBER(DraftDoubtShares),DraftDoubtShares,0),0)&"% of the range)"';
  const drafted = `TEXTJOIN("; ",TRUE,FILTER(DraftDoubts&${share},DraftDoubts<>"",""))`;
  const count = "(FactsAssumed+FactsInvented)";
  const taken = 'FILTER(FactNames,((FactStates="assumed")+(FactStates="invented"))*(FactUnits<>""),"")';
  const rows: readonly (readonly [name: string, formula: string])[] = [
    ["QuoteDoubts", `=IF(OR(QuoteDraft="",DraftWanted<>"yes"),"","•  Assumed until measured: "&${drafted})`],
    [
      "QuoteAssumed",
      `=IF(OR(QuoteDraft="",DraftWanted="yes",${count}=0),"","•  Assumed: "&TEXTJOIN("; ",TRUE,INDEX(${taken},SEQUENCE(${NAMED})))&" and "&(${count}-${NAMED})&" more")`,
    ],
  ];
  // Right of the page, in columns wide enough to be read there; one of the two is blank.
  s.sheet.widths.push(GAP_WIDTH, SENTENCE_WIDTH, SENTENCE_WIDTH);
  rows.forEach(([name, formula], index) => {
    s.put(s.row, QUOTE_COLUMNS + 2 + index, { formula, style: "unit", look: { wrap: false }, name });
  });
  s.put(s.row, 1, {
    formula: `=${rows.map(([name]) => name).join("&")}`,
    style: "plain",
    look: { italic: true, wrap: true, vertical: "top" },
    across: QUOTE_COLUMNS,
  });
  s.roomFor(s.row, 3);
  s.row++;
}

function payments(s: SheetLayout): void {
  s.put(s.row, 1, { value: "When", style: "headText", across: 4 });
  s.put(s.row, 5, { value: "Share", style: "head" });
  s.put(s.row, 6, { formula: '="Amount ("&Currency&")"', style: "head" });
  s.row++;
  const first = s.row;
  for (let row = 1; row <= STAGE_ROWS; row++) {
    s.put(s.row, 1, {
      formula: `=IF(E${s.row}="","",INDEX(StageNames,${rowFrom(first, s.row)})&"")`,
      style: "resultText",
      across: 4,
    });
    s.put(s.row, 5, { style: "result", kind: "share" });
    s.put(s.row, 6, { style: "result", kind: "money" });
    s.row++;
  }
  const column = (at: number): Ref => new Ref(s.name, first, at, s.row - 1, at);
  const unused = "ISNUMBER(StageShares)*(StageShares<>0)=0";
  fillDown(s, column(5), `IF(${unused},"",StageShares)`);
  fillDown(s, column(6), `IF((${unused})+(QuoteDraft<>""),"",StageAmounts)`);
  hideBlankRows(s, { top: first, left: 1, bottom: s.row - 1, right: QUOTE_COLUMNS });
  s.put(s.row, 1, {
    formula: '=IF(QuoteDraft="","All payments","")',
    style: "strong",
    look: { align: "left" },
    across: 5,
  });
  s.put(s.row, 6, {
    formula: `=IF(QuoteDraft="",SUM(F${first}:F${s.row - 1}),"")`,
    style: "strong",
    kind: "money",
    name: "QuotePayments",
  });
  s.row++;
}

function agreement(s: SheetLayout): void {
  const text = "We accept this quote with its scope, exclusions, terms and payments.";
  sentence(s, text, text);
  // Which option is built is asked for where more than one is offered; the shares of the payments are those of every option.
  const offered = OPTIONS.map((letter, index) =>
    index === 0 ? `"${letter}  [   ]"` : `IF(COUNT(INDEX(OptionTotals,1,${2 * index + 1}))=0,"","${letter}  [   ]")`,
  );
  sentence(
    s,
    `=IF(QuoteDraft<>"","",IF(COUNT(INDEX(OptionTotals,1,3),INDEX(OptionTotals,1,5))=0,"","Option accepted, mark one:     "&TEXTJOIN("     ",TRUE,${offered.join(",")})&"     The payments keep their shares."))`,
  );
  s.put(s.row, 1, {
    formula: '=CancelNotice&""',
    style: "plain",
    look: { bold: true, wrap: true, vertical: "top" },
    across: QUOTE_COLUMNS,
  });
  s.roomFor(s.row, 3);
  s.row += 2;
  const line = (column: number, across: number, label: string, name: string): void => {
    s.put(s.row, column, { style: "plain", look: { lines: { bottom: "thin" }, lineColor: "1F2A2E" }, across });
    s.put(s.row + 1, column, {
      formula: `=IF(QuoteDraft="","${label}","Draft: not to be signed")`,
      style: "note",
      across,
    });
    s.put(s.row + 2, column, { formula: `=${name}&""`, style: "note", look: { vertical: "top" }, across });
  };
  s.sheet.heights.set(s.row, 30);
  s.roomFor(s.row + 2, 3);
  line(1, 2, "Client: signature and date", "ClientName");
  line(4, 3, "Company: signature and date", "CompanyName");
  s.row += 3;
}
