import type { NamedCells } from "../host/port";
import { parseArea } from "../xlsx/address";

/** What the user put into the fields of a function's form, in the order of its arguments. */
export interface Field {
  readonly name: string;
  readonly optional: boolean;
  readonly text: string;
}

/** The formula for the fields, or the first needed field that is blank. */
export type Call = { readonly formula: string } | { readonly missing: string };

/** Builds a call with the right blanks: left-out arguments stay empty between commas, and none trail at the end. */
export function callText(functionName: string, fields: readonly Field[], names: readonly NamedCells[]): Call {
  const blank = fields.find(({ optional, text }) => !optional && text.trim() === "");
  if (blank) return { missing: blank.name };
  const args = fields.map(({ text }) => argumentText(text, names));
  while (args.length > 0 && args[args.length - 1] === "") args.pop();
  return { formula: `=RILL.${functionName}(${args.join(",")})` };
}

/** A number, a reference, a name of the workbook, a list in braces or a formula stays as it is; all else is text in quotes. */
export function argumentText(text: string, names: readonly NamedCells[]): string {
  const written = text.trim();
  if (written === "" || /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?%?$/i.test(written)) return written;
  if (written.startsWith("=")) return written.slice(1).trim();
  if (/^(TRUE|FALSE)$/i.test(written)) return written.toUpperCase();
  if (/^\{.*\}$/.test(written)) return written;
  const isReference =
    parseArea(written, "") !== undefined || names.some(({ name }) => name.toLowerCase() === written.toLowerCase());
  return isReference ? written : `"${written.replace(/"/g, '""')}"`;
}

/** A value of a worked example, as it would be typed into a field. */
export function exampleText(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (!Array.isArray(value)) return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
  const cell = (item: unknown): string =>
    typeof item === "string"
      ? `"${item.replace(/"/g, '""')}"`
      : typeof item === "boolean"
        ? String(item).toUpperCase()
        : String(item ?? "");
  return `{${value.map((row) => (Array.isArray(row) ? row.map(cell).join(",") : cell(row))).join(";")}}`;
}
