import type { CellValue, Validation } from "../model";
import type { Ref } from "./address";
import { whenFilled } from "./conditions";
import { formatOf, unitOf, type Kind } from "./formats";
import type { Both } from "./job";
import type { Page } from "./page";

/** One input in one row: label, cell, unit, note. */
export interface InputSpec {
  /** Defined name. */
  readonly name?: string;
  readonly label: string;
  /** What it measures; gives unit and number format. "text" and "date" are kinds too. */
  readonly kind: Kind;
  /** Unit text where the kind has none of its own. */
  readonly unit?: Both<string>;
  /** Value in the demo only. */
  readonly demo?: Both<CellValue>;
  /** Value in demo and blank alike: a usual setting the user may change. */
  readonly usual?: Both<CellValue>;
  /** Least and most that may be typed. */
  readonly min?: Both<number>;
  readonly max?: Both<number>;
  readonly whole?: boolean;
  /** Names to choose from, or a formula such as "=PumpNames". */
  readonly choices?: Both<readonly string[]> | string;
  /** What to type, in a sentence; shown when the cell is selected and when it is refused. */
  readonly message: Both<string>;
  /** A remark printed beside it. */
  readonly note?: Both<string>;
  /** May stay blank. */
  readonly optional?: boolean;
  readonly format?: string;
}

/** One calculated value in one row: label, value, unit, note. */
export interface ResultSpec {
  readonly name?: string;
  readonly label: string;
  readonly formula: string;
  readonly kind: Kind;
  readonly unit?: Both<string>;
  /** Number cells or ranges without which the result stays blank. */
  readonly needs?: readonly string[];
  readonly note?: Both<string>;
  /** A result the sheet leads up to. */
  readonly strong?: boolean;
  readonly format?: string;
}

export function addInput(page: Page, spec: InputSpec): Ref {
  const { row } = page;
  const { job } = page;
  const value =
    spec.usual !== undefined
      ? job.pick(spec.usual)
      : job.filled === "demo" && spec.demo !== undefined
        ? job.pick(spec.demo)
        : undefined;
  // Text the user makes up needs room; so does a choice among names the user made up.
  const wide = spec.kind === "text" && (spec.choices === undefined || typeof spec.choices === "string");
  label(page, row, spec.label);
  const ref = page.put(row, 2, {
    ...(value === undefined ? {} : { value }),
    style: "input",
    look: {
      format: spec.format ?? formatOf(spec.kind, job.system),
      align: spec.kind === "text" ? "left" : "right",
      ...(wide ? { wrap: true } : {}),
    },
    ...(spec.name ? { name: spec.name } : {}),
    ...(wide ? { across: 3 } : {}),
  });
  if (wide && typeof value === "string") page.fitHeight(row, value, page.charactersAcross(2, 3));
  if (!wide) unit(page, row, spec.kind, spec.unit);
  remark(page, row, wide ? 5 : 4, spec.note);
  page.sheet.validations.push(validationFor(page, { top: row, left: 2, bottom: row, right: 2 }, spec));
  if (!spec.optional) page.required.push({ label: spec.label, ref });
  page.row++;
  return ref;
}

export function addResult(page: Page, spec: ResultSpec): Ref {
  const { row } = page;
  label(page, row, spec.label);
  const ref = page.put(row, 2, {
    formula: whenFilled(spec.formula, spec.needs),
    style: spec.strong ? "strong" : spec.kind === "text" ? "resultText" : "result",
    look: { format: spec.format ?? (spec.kind === "text" ? "General" : formatOf(spec.kind, page.job.system)) },
    ...(spec.name ? { name: spec.name } : {}),
    ...(spec.kind === "text" ? { across: Math.min(3, page.lastColumn - 1) } : {}),
  });
  if (spec.kind !== "text") unit(page, row, spec.kind, spec.unit);
  remark(page, row, spec.kind === "text" ? 5 : 4, spec.note);
  page.row++;
  return ref;
}

/** The rule and the message of an input, for one cell or a column of them. */
export function validationFor(
  page: Page,
  area: Validation["area"],
  spec: Pick<InputSpec, "label" | "kind" | "unit" | "min" | "max" | "whole" | "choices" | "message">,
): Validation {
  const { job } = page;
  const min = spec.min === undefined ? undefined : job.pick(spec.min);
  const max = spec.max === undefined ? undefined : job.pick(spec.max);
  const unitText = spec.unit !== undefined ? job.pick(spec.unit) : unitOf(spec.kind, job.system);
  const shownUnit = unitText.startsWith("=") ? "money" : unitText;
  const common = { area, title: spec.label.slice(0, 32) };
  const message = cut(job.pick(spec.message));
  if (spec.choices !== undefined) {
    const choices = typeof spec.choices === "string" ? spec.choices : job.pick(spec.choices);
    return { ...common, kind: "list", choices, message };
  }
  if (spec.kind === "text") return { ...common, kind: "text", max: max ?? 200, message };
  if (spec.kind === "date") return { ...common, kind: "date", min: min ?? 36526, max: max ?? 73050, message };
  if (min === undefined || max === undefined)
    throw new Error(`${page.name}: the input "${spec.label}" needs min and max`);
  const factor = spec.kind === "share" ? 100 : 1;
  const range = `${[shownUnit, `${plainNumber(min * factor)} to ${plainNumber(max * factor)}`].filter(Boolean).join(", ")}.`;
  return {
    ...common,
    kind: spec.whole || spec.kind === "count" ? "whole" : "decimal",
    min,
    max,
    message: cut(`${message} In ${range}`.replace("In 0", "0").replace(/In (?=[\d-])/, "From ")),
  };
}

function plainNumber(value: number): string {
  return String(Number(value.toPrecision(12)));
}

/** The longest error text a file may hold. */
function cut(message: string): string {
  if (message.length > 225) throw new Error(`a message is longer than 225 characters: ${message}`);
  return message;
}

function label(page: Page, row: number, text: string): void {
  page.fitHeight(row, text, page.charactersAcross(1, 1));
  page.put(row, 1, { value: text, style: "label" });
}

function unit(page: Page, row: number, kind: Kind, text?: Both<string>): void {
  const shown = text !== undefined ? page.job.pick(text) : unitOf(kind, page.job.system);
  page.put(row, 3, { ...(shown.startsWith("=") ? { formula: shown } : { value: shown }), style: "unit" });
}

function remark(page: Page, row: number, column: number, text?: Both<string>): void {
  const across = page.lastColumn - column + 1;
  if (across < 1) return;
  if (text) page.textAcross(row, column, across, page.job.pick(text), "remark");
  else page.put(row, column, { style: "remark", across });
}
