import { defineSheet, VERDICT, type Both, type Job, type SheetLayout } from "../../layout";
import { listOf } from "../../layout/conditions";
import { GLANCE } from "../../glance";
import { draft, DRAFT_WIDTHS } from "./draft";
import { questions } from "./questions";
import { checkList, VERDICT_COLUMN, WEIGHT_COLUMN } from "./checkList";

const STEPS: readonly Both<string>[] = [
  "Work through the sheets from left to right. Fill in the cells with a thick left edge; select one to see what goes in it. All others are calculated and protected.",
  {
    US: 'Type lengths the way you read them off a tape (9\' 4, 112 in, 2.8 m); in a table write =RILL.QTY("12 ft 6 in","ft").',
    SI: 'Type lengths the way you read them off a tape (2.8 m, 280 cm, 9\' 4); in a table write =RILL.QTY("85 cm","m").',
  },
  "Then come back here: the list at the bottom shows every check, its limit, and where to fix it.",
];

const CAUTIONS = [
  "Pumps and water: line-voltage wiring, GFCI (RCD) protection and bonding are work for a licensed electrician. Voltage drop figures are for planning only.",
  "People drown in deep or fast water and in open basins: fence and cover them as local code requires.",
  "Walls, dams and stacked boulders that hold back earth or water may need an engineer. This workbook does not design structures.",
];

/** What costs money rather than a limb. */
const NOTICE =
  "Weir, friction and stone figures are estimates: flows over rough natural lips are good to 10 to 20% (rule of thumb). Check the finished feature against the plan with a rod and a bucket.";

/** What the drawing rests on. */
const SECTION_SAYS =
  '=IF(COUNT(SectionTop)=0,"Nothing to draw yet: answer the questions above, or fill in Site and Basin.",' +
  'IF(COUNT(TopLipLevel,RunningLevel)=2,"As the sheets have it.",IF(DraftWanted="yes",' +
  '"What is still open is drafted; the running level comes with Basin and Pump.","As far as the sheets have it.")))';
/** With these it fits the first page, below the first price. */
const CHART_ROWS = 13;

/** The section as Water draws it, which takes from the draft what is still open. */
function section(s: SheetLayout, job: Job): void {
  const chart = job.charts.get("Section");
  if (!chart) return;
  s.section(chart.title);
  s.put(s.row++, 1, { formula: SECTION_SAYS, style: "note", name: "SectionSays", across: s.lastColumn });
  s.chart({ ...chart, rows: CHART_ROWS });
}

/** How many checks stand where. */
const STANDING: readonly (readonly [name: string, label: string, verdicts: readonly string[]])[] = [
  ["ChecksToFix", "To fix before the job is priced", [VERDICT.fix, VERDICT.error]],
  ["ChecksToLook", "To look at (rules of thumb)", [VERDICT.look]],
  ["ChecksToFill", "Waiting for inputs", [VERDICT.blank]],
  ["ChecksOk", "Passed", [VERDICT.ok]],
];

/** Checks that stop the job and cannot be made yet. */
const STOPS_TO_FILL = `SUMPRODUCT((INDEX(Checks,0,${VERDICT_COLUMN})="${VERDICT.blank}")*(CheckWeights="stop"))`;

/** How to use the workbook, the job at a glance, and every check in one list. */
export const start = defineSheet({
  name: "Start",
  order: 1,
  turn: 2,
  build(s, job) {
    s.widths([32, 16, 9, 14, 9, 28, 63]);
    s.title(
      "Estimate of a recirculating stream",
      "Answer what you know for a first price; then fill in Site, and come back here.",
    );
    s.print({ landscape: true });
    // Both need the facts, which a workbook of a few sheets has not.
    if (job.hasFacts) {
      questions(s);
      draft(s, job);
      section(s, job);
    }

    s.section("How to use this workbook");
    STEPS.forEach((text, index) => s.note(`${index + 1}.  ${job.pick(text)}`));
    s.put(s.row, 1, { value: "A cell to fill in looks like this", style: "label" });
    s.put(s.row, 2, { value: "12.50", style: "input", look: { align: "right", unlocked: false } });
    s.put(s.row, 4, { value: "A result looks like this", style: "label", across: 2 });
    s.put(s.row, 6, { value: "12.50", style: "result" });
    s.row++;

    s.section("Cautions");
    CAUTIONS.forEach((text) => s.caution(text));
    s.notice(NOTICE);

    const top = s.row;
    standing(s, job);
    const left = s.row;
    // A section leaves a gap above itself.
    s.row = top + 1;
    sheetList(s, job);
    s.row = Math.max(s.row, left);

    // Each sheet prints its own checks; how many stand where is above.
    s.notPrinted();
    s.section("Checks");
    checkList(s, job);
    signature(s, job);
    s.sheet.widths[WEIGHT_COLUMN - 1] = 7;
    if (job.hasFacts) DRAFT_WIDTHS.forEach((width, index) => (s.sheet.widths[WEIGHT_COLUMN + index] = width));
  },
});

/** The first column of the list of sheets, which stands right of the job's numbers. */
const RIGHT = 4;

/** The checks counted, and the job in a dozen numbers. */
function standing(s: SheetLayout, job: Job): void {
  s.within(RIGHT - 1, () => {
    s.section("Where the job stands");
    const count = (words: readonly string[]): string =>
      words.map((word) => `COUNTIF(INDEX(Checks,0,${VERDICT_COLUMN}),"${word}")`).join("+");
    s.results(
      `=${listOf(STANDING.map(([, , words]) => count(words)))}`,
      STANDING.map(([name, label]) => ({ name, label, kind: "count", unit: "checks" })),
    );
    const told = GLANCE.filter(({ name }) => job.names.has(name));
    const shown = told.filter(({ name }) => name !== "PriceTotal");
    if (shown.length > 0)
      s.results(
        `=${listOf(shown.map(({ name, kind }) => (kind === "text" ? `${name}&""` : name)))}`,
        shown.map(({ label, kind }) => ({ label, kind })),
      );
    const total = told.find(({ name }) => name === "PriceTotal");
    if (total) price(s, total.label);
    s.put(s.row, 1, {
      formula: '=IF(QuoteDraft="","The quote is ready to sign.",QuoteDraft)',
      style: "strong",
      look: { align: "left", wrap: true },
      across: s.lastColumn,
    });
    s.roomFor(s.row, 2);
    s.row++;
  });
}

/** The price, or the words that stand in its place, which take the room of its unit too. */
function price(s: SheetLayout, label: string): void {
  s.put(s.row, 1, { formula: `="${label}"&IF(ISNUMBER(PriceTotal)," ("&Currency&")","")`, style: "label" });
  s.put(s.row, 2, {
    formula: "=PriceTotal",
    style: "result",
    kind: "money",
    look: { wrap: true, indent: 1 },
    across: 2,
  });
  s.roomFor(s.row, 2);
  s.row++;
}

/** Everything that keeps the quote a draft, in plain words; and the first of it, which the papers say. */
function signature(s: SheetLayout, job: Job): void {
  const invented = ['COUNTIF(NeedsInvented,">0")', ...(job.hasFacts ? ["FactsInvented"] : [])];
  const reasons = [
    'IF(FunctionsRun="yes","","the add-in\'s functions are not running here, and nothing is worked out without them.")',
    'IF(OR(FunctionsRun<>"yes",PriceStanding=""),"","no price yet, "&PriceStanding&".")',
    'IF(ChecksToFix+StopsToFill=0,"",IF(ChecksToFix+StopsToFill=1,"a check on Start","checks on Start ("&(ChecksToFix+StopsToFill)&")")&" must be fixed or filled in first.")',
    `IF(${invented.join("+")}=0,"","made-up prices or rates are in it; change or confirm them on Rates${job.hasFacts ? " and Facts" : ""}.")`,
  ];
  s.section("What keeps the quote a draft");
  s.result({
    name: "StopsToFill",
    label: "Checks still to fill",
    formula: STOPS_TO_FILL,
    kind: "count",
    unit: "checks",
  });
  const top = s.row;
  for (const reason of reasons) s.put(s.row++, 1, { formula: `=${reason}`, style: "resultText", across: s.lastColumn });
  s.define("DraftReasons", top, 1, s.row - 1, 1);
}

/** None is hidden, since nothing in a file can bring a sheet back; which of them have to wait is said instead. */
const SHEETS = "Sheets (Issued, Orders, Receipts and Reconcile come after the quote)";

function sheetList(s: SheetLayout, job: Job): void {
  const across = s.lastColumn - RIGHT;
  s.put(s.row, RIGHT, { value: SHEETS, style: "section", across: across + 1 });
  s.row++;
  for (const { name, purpose } of [...job.pages].sort((a, b) => a.order - b.order)) {
    s.put(s.row, RIGHT, { value: name, style: "link", look: { indent: 1 }, link: `${name}!A1` });
    s.textAcross(s.row, RIGHT + 1, across, purpose, "remark");
    s.row++;
  }
}
