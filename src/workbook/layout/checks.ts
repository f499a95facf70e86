import { cellAddress } from "./address";
import { bare } from "./conditions";
import { formatOf, unitOf } from "./formats";
import { originOf } from "./forms";
import type { CheckSpec } from "./job";
import type { Page } from "./page";
import { BEHIND, CHECK_COLUMN, VERDICT, behind, cure, guarded, limitFormat, verdicts } from "./verdict";

/** Lays out the sheet's checks as one block and hands them to Start. */
export function addChecks(page: Page, checks: readonly CheckSpec[]): void {
  if (checks.length === 0) return;
  const across = page.lastColumn - 5;
  const apart = page.lastColumn + 1;
  const titles = ["Check", "Value", "Unit", "Limit", "Verdict", "What to do"];
  titles.forEach((title, index) =>
    page.put(page.row, index + 1, {
      value: title,
      style: index === 1 ? "head" : "headText",
      ...(index === 4 ? { look: { indent: 1 } } : {}),
      ...(index === 5 ? { across } : {}),
    }),
  );
  BEHIND.forEach(([value, width], index) => {
    page.put(page.row, apart + index, { value, style: "unit", look: { wrap: false } });
    page.besidePaper.set(apart + index, width);
  });
  page.row++;
  const first = page.row;
  for (const check of checks) {
    layOut(page, check, across);
    behind(check).forEach((held, index) => {
      const isFormula = typeof held === "string" && held.startsWith("=");
      const filled = isFormula ? { formula: held } : held === "" ? {} : { value: held };
      page.put(page.row, apart + index, { ...filled, style: "unit", look: { wrap: false } });
    });
    page.row++;
  }
  const { verdict } = CHECK_COLUMN;
  const anchor = page.sheet.rows.get(first)?.get(verdict);
  if (anchor) {
    anchor.formula = verdicts(first, page.row - 1, apart);
    anchor.spill = { rows: checks.length, columns: 1 };
  }
  markVerdicts(page, { top: first, left: verdict, bottom: page.row - 1, right: verdict });
}

/** The unit and what is said of the value; money keeps its currency here, since Start lists the row without the sheet's head. */
function unitSaid(unit: string, over = ""): string {
  return unit.startsWith("=") && over ? `${unit}&" ${over}"` : `${unit} ${over}`.trim();
}

function layOut(page: Page, check: CheckSpec, across: number): void {
  const { row, job } = page;
  const kind = check.kind ?? "number";
  const unit = check.unit ?? unitSaid(unitOf(kind, job.system), check.over);
  const origin = originOf(page, check.label, check.source);
  page.fitHeight(row, check.label, page.charactersAcross(1, 1));
  page.put(row, 1, { value: check.label, style: "label" });
  page.put(row, CHECK_COLUMN.value, {
    formula: guarded(check, bare(check.value)),
    style: "result",
    look: { format: formatOf(kind, job.system) },
    ...(check.unit === undefined ? { kind } : {}),
    origin,
  });
  page.put(row, 3, unit.startsWith("=") ? { formula: unit, style: "unit" } : { value: unit, style: "unit" });
  page.put(row, CHECK_COLUMN.limit, {
    ...(typeof check.limit === "number" ? { value: check.limit } : { formula: guarded(check, bare(check.limit)) }),
    style: "resultText",
    look: { format: limitFormat(check, job), align: "right" },
    ...(check.unit === undefined && typeof check.limit !== "number" ? { kind } : {}),
    origin,
  });
  page.put(row, CHECK_COLUMN.verdict, { style: "resultText", look: { bold: true, indent: 1 } });
  const said = cure(check, row);
  page.fitHeight(row, check.cure, page.charactersAcross(CHECK_COLUMN.cure, across));
  page.put(row, CHECK_COLUMN.cure, {
    ...(said === undefined ? { value: check.cure } : { formula: said }),
    style: "remark",
    across,
  });
  // What is changed of a fact is the cell it is typed into.
  const fix = job.inputs.get(check.fix)?.yours.name ?? check.fix;
  job.checks.push({ ...check, fix, sheet: page.name, row });
}

/** Verdicts that ask for something stand out by weight and fill as well as by their word. */
export function markVerdicts(page: Page, area: { top: number; left: number; bottom: number; right: number }): void {
  const cell = cellAddress(area.top, area.left).replace(/^([A-Z]+)/, "$$$1");
  page.sheet.conditionals.push(
    {
      area,
      formula: `=OR(${cell}="${VERDICT.fix}",${cell}="${VERDICT.error}")`,
      style: { bold: true, color: "FFFFFF", fill: "5A1F14" },
    },
    { area, formula: `=${cell}="${VERDICT.look}"`, style: { bold: true, color: "1F2A2E", fill: "E3D3A4" } },
    { area, formula: `=${cell}="${VERDICT.blank}"`, style: { italic: true, color: "4F5D63" } },
  );
}
