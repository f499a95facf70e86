import { cellAddress } from "./address";
import { anyBlank, bare } from "./conditions";
import { formatOf, unitOf } from "./formats";
import { originOf } from "./forms";
import type { CheckSpec } from "./job";
import type { Page } from "./page";

/** Words of the verdicts; Start counts them, the pane reads them. */
export const VERDICT = { ok: "OK", fix: "FIX", look: "LOOK", blank: "to fill", error: "ERROR" } as const;

/** Where a check stands in its row, on its own sheet. */
export const CHECK_COLUMN = { value: 2, verdict: 5, cure: 6 } as const;

/** Lays out the sheet's checks as one block and hands them to Start. */
export function addChecks(page: Page, checks: readonly CheckSpec[]): void {
  if (checks.length === 0) return;
  const across = page.lastColumn - 5;
  const titles = ["Check", "Value", "Unit", "Limit", "Verdict", "What to do"];
  titles.forEach((title, index) =>
    page.put(page.row, index + 1, {
      value: title,
      style: index === 1 ? "head" : "headText",
      ...(index === 4 ? { look: { indent: 1 } } : {}),
      ...(index === 5 ? { across } : {}),
    }),
  );
  page.row++;
  const first = page.row;
  for (const check of checks) {
    layOut(page, check, across);
    page.row++;
  }
  markVerdicts(page, { top: first, left: 5, bottom: page.row - 1, right: 5 });
}

function layOut(page: Page, check: CheckSpec, across: number): void {
  const { row, job } = page;
  const kind = check.kind ?? "number";
  const unit = check.unit ?? unitOf(kind, job.system);
  const blank = (otherwise: string, instead: string, failed: string): string =>
    check.needs && check.needs.length > 0
      ? `=IFERROR(IF(${anyBlank(check.needs)},${instead},${otherwise}),"${failed}")`
      : `=IFERROR(${otherwise},"${failed}")`;
  const stop = `"${VERDICT.fix}"`;
  const look = `"${VERDICT.look}"`;
  const bad = check.weight !== "look" ? stop : check.stopIf ? `IF(${bare(check.stopIf)},${stop},${look})` : look;
  const format = formatOf(kind, job.system);
  const origin = originOf(page, check.label, check.source);
  page.fitHeight(row, check.label, page.charactersAcross(1, 1));
  page.put(row, 1, { value: check.label, style: "label" });
  page.put(row, 2, {
    formula: blank(bare(check.value), '""', "error"),
    style: "result",
    look: { format },
    ...(check.unit === undefined ? { kind } : {}),
    origin,
  });
  page.put(row, 3, unit.startsWith("=") ? { formula: unit, style: "unit" } : { value: unit, style: "unit" });
  page.put(row, 4, {
    ...(typeof check.limit === "number"
      ? { value: check.limit }
      : check.limit.startsWith("=")
        ? { formula: blank(bare(check.limit), '""', "error") }
        : { value: check.limit }),
    style: "resultText",
    look: { format, align: "right" },
    origin,
  });
  if (typeof check.limit === "string" && !check.limit.startsWith("="))
    page.fitHeight(row, check.limit, page.charactersAcross(4, 1));
  page.put(row, 5, {
    formula: blank(`IF(${bare(check.ok)},"${VERDICT.ok}",${bad})`, `"${VERDICT.blank}"`, VERDICT.error),
    style: "resultText",
    look: { bold: true, indent: 1 },
    origin: { ...origin, judges: true },
  });
  page.fitHeight(row, check.cure, page.charactersAcross(6, across));
  page.put(row, 6, {
    ...(check.cureNow === undefined
      ? { value: check.cure }
      : { formula: `=IFERROR(IF(${bare(check.ok)},"${check.cure}",${bare(check.cureNow)}),"${check.cure}")` }),
    style: "remark",
    across,
  });
  // What is changed of a fact is the cell it is typed into.
  const fix = job.inputs.get(check.fix)?.yours.name ?? check.fix;
  job.checks.push({ ...check, fix, sheet: page.name, row });
}

/** Verdicts that ask for something stand out by weight and ground as well as by their word. */
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
