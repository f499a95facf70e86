import { whenFilled } from "./conditions";
import { formatOf, type Kind } from "./formats";
import type { Ref } from "./address";
import type { Both } from "./job";
import type { Page } from "./page";
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
  const { row } = page;
  label(page, row, spec.label);
  const ref = page.put(row, 2, {
    formula: whenFilled(spec.formula, spec.needs),
    style: spec.strong ? "strong" : spec.kind === "text" ? "resultText" : "result",
    look: { format: spec.format ?? (spec.kind === "text" ? "General" : formatOf(spec.kind, page.job.system)) },
    ...(spec.unit === undefined ? { kind: spec.kind } : {}),
    origin: originOf(page, spec.label, spec.source),
    ...(spec.name ? { name: spec.name } : {}),
    ...(spec.kind === "text" ? { across: Math.min(3, page.lastColumn - 1) } : {}),
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
  if (text) page.textAcross(row, column, across, page.job.pick(text), "remark");
  else page.put(row, column, { style: "remark", across });
}
