import { CHECK_COLUMN, limitFormat, markVerdicts, type Job, type PlacedCheck, type SheetLayout } from "../../layout";
import { areaAddress, cellAddress, Ref } from "../../layout/address";
import { formatOf } from "../../layout/formats";
import { fillDown } from "../money/cells";

/** Column of the verdicts in the list of checks. */
export const VERDICT_COLUMN = 5;
const CURE_COLUMN = 7;

/** Right of the list, for formulas: whether a check stops the job or is a rule of thumb. */
export const WEIGHT_COLUMN = 8;
/** Right of that: the name or address of the cell to change, for the pane to go to. */
const PLACE_COLUMN = 9;

/** Every check of the job in one list, with where to fix what it finds. */
export function checkList(s: SheetLayout, job: Job): void {
  const first = s.row + 1;
  const last = first + job.checks.length - 1;
  s.print({ landscape: true, titleRows: [s.row, s.row], lastColumn: s.lastColumn });
  const heads = ["Check", "Value", "Unit", "Limit", "Verdict", "Where to fix it", "What to do"];
  heads.forEach((title, index) => s.put(s.row, index + 1, { value: title, style: index === 1 ? "head" : "headText" }));
  s.row++;
  for (const check of job.checks) {
    checkRow(s, job, check);
    s.row++;
  }
  readChecks(s, job, first);
  if (job.checks.length > 0) {
    s.define("Checks", first, 1, last, s.lastColumn);
    s.filter(first - 1, 1, last, s.lastColumn);
    s.define("CheckPlaces", first, PLACE_COLUMN, last, PLACE_COLUMN);
    s.define("CheckWeights", first, WEIGHT_COLUMN, last, WEIGHT_COLUMN);
    markVerdicts(s, { top: first, left: 5, bottom: last, right: 5 });
  }
}

function checkRow(s: SheetLayout, job: Job, check: PlacedCheck): void {
  const { row } = s;
  const format = formatOf(check.kind ?? "number", job.system);
  s.fitHeight(row, check.label, s.charactersAcross(1, 1));
  s.put(row, 1, { value: check.label, style: "label" });
  s.put(row, 2, { style: "result", look: { format } });
  s.put(row, 3, { style: "unit" });
  s.put(row, 4, { style: "resultText", look: { format: limitFormat(check, job), align: "right" } });
  s.put(row, WEIGHT_COLUMN, { value: check.weight ?? "stop", style: "unit" });
  s.put(row, VERDICT_COLUMN, { style: "resultText", look: { bold: true, align: "center" } });
  const where = inShort(job.called.get(check.fix) ?? check.fix);
  const place = cellAddress(row, PLACE_COLUMN);
  const here = (formula: string): string => formula.replaceAll("[label]", cellAddress(row, 1));
  s.put(row, 6, {
    ...(check.calledNow === undefined
      ? { value: where, link: check.fix }
      : { formula: `=HYPERLINK("#"&${place},${here(check.calledNow)})` }),
    style: "link",
    look: { wrap: true },
  });
  s.put(row, PLACE_COLUMN, {
    ...(check.fixNow === undefined ? { value: check.fix } : { formula: `=${here(check.fixNow)}` }),
    style: "unit",
    look: { wrap: false },
  });
  s.fitHeight(row, where, s.charactersAcross(6, 1));
  s.fitHeight(row, check.cure, s.charactersAcross(7, 1));
  s.put(row, CURE_COLUMN, { style: "remark" });
}

/** The words of a place without what only explains them: "Basin: Water depth, floor to overflow" takes two lines. */
function inShort(called: string): string {
  const [sheet = "", ...label] = called.split(": ");
  const [first = ""] = label;
  return label.length === 0 ? sheet : `${sheet}: ${first.replace(/, .*$| \(.*\)$/, "")}`;
}

/** Each sheet's checks are read as a block, its words of what to do as another: the place to fix stands between them. */
function readChecks(s: SheetLayout, { checks }: Job, first: number): void {
  checks.forEach(({ sheet, row: top }, index) => {
    if (checks[index - 1]?.sheet === sheet) return;
    const bottom = top + checks.filter((one) => one.sheet === sheet).length - 1;
    const { value, verdict, cure } = CHECK_COLUMN;
    const numbers = `${sheet}!${areaAddress({ top, left: value, bottom, right: verdict }, true)}`;
    const words = `${sheet}!${areaAddress({ top, left: cure, bottom, right: cure }, true)}`;
    const at = (left: number, right = left): Ref =>
      new Ref(s.name, first + index, left, first + index + bottom - top, right);
    fillDown(s, at(value, VERDICT_COLUMN), `IF(${numbers}="","",${numbers})`);
    fillDown(s, at(CURE_COLUMN), words);
  });
}
