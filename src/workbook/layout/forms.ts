import { whenFilled } from "./conditions";
import { formatOf, type Kind } from "./formats";
import type { Ref } from "./address";
import type { Both } from "./job";
import type { CellSpec, Page } from "./page";
import type { Origin } from "../model";

/** One calculated value in one row: label, value, unit, note. */
export interface ResultSpec {
  readonly name?: string;
  readonly label: string;
  readonly formula: string;
  /**
   * What the formula rests on: a standard, "common practice, no source", or "by definition". Needless for a sum, a reference,
   * a factor between two units, or one call of a function of ours.
   */
  readonly source?: Both<string>;
  readonly kind: Kind;
  readonly unit?: Both<string>;
  /** Number cells or ranges without which the result stays blank. */
  readonly needs?: readonly string[];
  readonly note?: Both<string>;
  /** A result the sheet leads up to. */
  readonly strong?: boolean;
  readonly format?: string;
}

export function addResult(page: Page, spec: ResultSpec): Ref {
  return resultRow(page, spec, {
    formula: whenFilled(spec.formula, spec.needs),
    origin: originOf(page, spec.label, spec.source),
    ...(spec.kind === "text" ? { across: Math.min(3, page.lastColumn - 1) } : {}),
  });
}

/** A row of several results that one formula gives. */
export type ResultRow = Omit<ResultSpec, "formula" | "needs" | "source">;

/**
 * Results in rows below each other that one formula gives, with "" for each that is blank. An input may be typed as a formula
 * over any of them, so none of them may rest on an input that another could be typed over.
 */
export function addResults(page: Page, formula: string, rows: readonly ResultRow[], source?: Both<string>): Ref[] {
  const origin = originOf(page, rows.map(({ label }) => label).join("; "), source);
  const spill = { rows: rows.length, columns: 1 };
  return rows.map((row, index) => resultRow(page, row, index === 0 ? { formula, origin, spill } : {}));
}

function resultRow(
  page: Page,
  spec: ResultRow,
  filled: Pick<CellSpec, "formula" | "origin" | "spill" | "across">,
): Ref {
  const { row } = page;
  label(page, row, spec.label);
  const ref = page.put(row, 2, {
    ...filled,
    style: spec.strong ? "strong" : spec.kind === "text" ? "resultText" : "result",
    look: {
      format: spec.format ?? (spec.kind === "text" ? "General" : formatOf(spec.kind, page.job.system)),
      // What spills may not meet merged cells: its texts run on over the blank ones beside them.
      ...(spec.kind === "text" && filled.across === undefined ? { wrap: false } : {}),
    },
    ...(spec.unit === undefined ? { kind: spec.kind } : {}),
    ...(spec.name ? { name: spec.name } : {}),
  });
  if (spec.kind !== "text") unit(page, row, spec.kind, spec.unit);
  remark(page, row, spec.kind === "text" ? 5 : 4, spec.note);
  page.row++;
  return ref;
}

/** What a formula's result is called and what the formula rests on. */
export function originOf(page: Page, label: string, source?: Both<string>): Origin {
  return source === undefined ? { label } : { label, source: page.job.pick(source) };
}

export function label(page: Page, row: number, text: string): void {
  page.fitHeight(row, text, page.charactersAcross(1, 1));
  page.put(row, 1, { value: text, style: "label" });
}

export function unit(page: Page, row: number, kind: Kind, text?: Both<string>): void {
  const shown = page.unitOf(kind, text);
  page.put(row, 3, { ...(shown.startsWith("=") ? { formula: shown } : { value: shown }), style: "unit" });
}

export function remark(page: Page, row: number, column: number, text?: Both<string>): void {
  const across = page.lastColumn - column + 1;
  if (across < 1) return;
  // Beside what is used, or a text that runs up to it, words stand off a little.
  const look = column > 4 ? { indent: 1 } : {};
  const words = text && page.job.pick(text);
  if (words?.startsWith("=")) page.put(row, column, { formula: words, style: "remark", look, across });
  else if (words) page.textAcross(row, column, across, words, "remark", look);
  else page.put(row, column, { style: "remark", across });
}
