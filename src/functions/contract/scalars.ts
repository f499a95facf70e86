import { invalid, plain } from "../../calc/problem";
import { dateOf } from "../../calc/quantity/dateSerial";
import { kindOf } from "../../calc/quantity/kinds";
import { defaultUnit, unitLabel, type Measure } from "../../calc/quantity/measures";
import { readNumber, readQuantity } from "../../calc/quantity/readQuantity";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Argument } from "./argument";
import { insideOf, insideRange, rangeInWords, zeroIsBlank, type Range } from "./range";
import { isBlank, refuseErrorCell, shown, single } from "./raw";

/** Shared by every one-cell argument: error cells and blanks are refused by name before `convert` sees the cell. */
function scalar<T>(
  about: string,
  rest: Pick<Argument<T>, "rule"> &
    Partial<Pick<Argument<T>, "measure" | "range" | "choices">> & {
      need: string;
      convert(cell: string | number | boolean, label: string, system: UnitSystem): T;
    },
): Argument<T> {
  const { need, convert, ...facts } = rest;
  const blank = (raw: unknown): boolean =>
    isBlank(raw) || (raw === 0 && facts.range !== undefined && zeroIsBlank(facts.range, facts.measure));
  return {
    about,
    hostType: "any",
    optional: false,
    dimensioned: facts.measure !== undefined,
    ...facts,
    blank,
    read(raw, label, system) {
      refuseErrorCell(raw, label);
      const cell = single(raw, label);
      refuseErrorCell(cell, label);
      if (isBlank(cell)) throw invalid(`${label} is needed: ${need}`);
      if (typeof cell !== "string" && typeof cell !== "number" && typeof cell !== "boolean") {
        throw invalid(`${label} must be ${need}; got something a cell cannot hold`);
      }
      // No cell holds such a number, but another engine's arithmetic can pass one on.
      if (typeof cell === "number" && !Number.isFinite(cell)) {
        throw invalid(`${label} must be ${need}; got a number without a finite value`);
      }
      return convert(cell, label, system);
    },
  };
}

/**
 * A value with a unit: a number in the default unit of the system, or text with its own unit. Arrives in SI.
 * The range is the calculation's, in SI, so that the same thing is taken or refused in whatever unit it is typed.
 */
export function quantity(measure: Measure, about: string, range: Range = {}): Argument<number> {
  const rule = (system: UnitSystem): string =>
    `${unitLabel(measure, system)}, ${rangeInWords(range, system, measure, "")}`;
  return scalar(about, {
    measure,
    range,
    rule,
    need: "a number, or text with a unit",
    convert(cell, label, system) {
      if (typeof cell === "boolean") {
        throw invalid(
          `${label} must be a number (${unitLabel(measure, system)}) or text with a unit; got ${shown(cell)}`,
        );
      }
      const value = typeof cell === "number" ? cell : readQuantity(cell, defaultUnit(measure, system), label);
      const inside = insideOf(value, measure, system, range);
      if (inside === undefined) {
        const unit = unitLabel(measure, system);
        const got = typeof cell === "number" ? `${shown(cell)} ${unit}` : `${shown(cell)}, ${plain(value)} ${unit}`;
        const hint = typeof cell === "number" ? ofDate(cell, defaultUnit(measure, system)) : "";
        throw invalid(`${label} must be ${rangeInWords(range, system, measure)}; got ${got}${hint}`);
      }
      return inside;
    },
  });
}

/** Excel makes dates of 3/4 and 9-4 before anyone sees them: what to type instead. */
function ofDate(cell: number, unit: string): string {
  const date = dateOf(cell);
  const kind = kindOf(unit);
  return date && kind ? `, which Excel may have made of a date (${date}); write it like ${kind.examples}` : "";
}

/** A number without a unit (or with one that is the same in both systems, named in `unit`). */
export function number(
  about: string,
  range: Range = {},
  options: { whole?: boolean; unit?: string } = {},
): Argument<number> {
  const kind = options.whole ? "a whole number" : "a number";
  const rule = (system: UnitSystem): string =>
    [options.unit, options.whole ? "whole" : undefined, rangeInWords(range, system)].filter(Boolean).join(", ");
  return scalar(about, {
    range,
    rule,
    need: kind,
    convert(cell, label, system) {
      if (typeof cell === "string" && options.unit === undefined && /[A-Za-z'"°]/.test(cell)) {
        throw invalid(`${label} must be ${kind}${/\d/.test(cell) ? " without a unit" : ""}; got ${shown(cell)}`);
      }
      const read = (written: string): number =>
        options.unit === undefined ? readNumber(written, label) : readQuantity(written, options.unit, label);
      const value = typeof cell === "string" ? read(cell) : cell;
      if (typeof value !== "number") throw invalid(`${label} must be ${kind}; got ${shown(cell)}`);
      if (options.whole && !Number.isInteger(value))
        throw invalid(`${label} must be a whole number; got ${shown(cell)}`);
      const inside = insideRange(value, range);
      if (inside === undefined) {
        throw invalid(`${label} must be ${rangeInWords(range, system, undefined, options.unit)}; got ${shown(cell)}`);
      }
      return inside;
    },
  });
}

/** A share: 0.1 in a cell, or "10%" as text. */
export function share(about: string, range: Range = { min: 0, max: 1 }): Argument<number> {
  const words = (): string => `share, ${rangeInWords(range, "US")}`;
  return scalar(about, {
    range,
    rule: words,
    need: "a share such as 0.1 or 10%",
    convert(cell, label) {
      const percent = typeof cell === "string" ? /^\s*([-+]?\d+(?:[.,]\d+)?|[-+]?\.\d+)\s*(%?)\s*$/.exec(cell) : null;
      const value = percent
        ? Number(percent[1]?.replace(",", ".")) / (percent[2] ? 100 : 1)
        : typeof cell === "number"
          ? cell
          : NaN;
      if (insideRange(value, range) === undefined) {
        const hint =
          value > 1 && value <= 100 ? `; for ${plain(value)}% write ${plain(value / 100)} or ${plain(value)}%` : "";
        throw invalid(`${label} must be a share of ${rangeInWords(range, "US")}; got ${shown(cell)}${hint}`);
      }
      return value;
    },
  });
}

/** Free text. */
export function text(about: string, options: { longest?: number } = {}): Argument<string> {
  const longest = options.longest ?? 200;
  return scalar(about, {
    rule: () => "text",
    need: "some text",
    convert(cell, label) {
      const value = typeof cell === "boolean" ? shown(cell) : String(cell).trim();
      if (value.length > longest) throw invalid(`${label} must be at most ${longest} characters; got ${value.length}`);
      return value;
    },
  });
}

/** One of a table's names, read without regard to case and spacing. */
export function choice<T extends string>(about: string, names: readonly T[]): Argument<T> {
  const key = (name: string): string =>
    name
      .toLowerCase()
      .replace(/[\s_-]+/g, " ")
      .trim();
  const byKey = new Map(names.flatMap((name) => [name, key(name)].map((written) => [written, name])));
  return scalar(about, {
    choices: names,
    rule: () => `one of: ${names.join(", ")}`,
    need: `one of ${names.join(", ")}`,
    convert(cell, label) {
      const written = String(cell);
      const found = byKey.get(written) ?? byKey.get(key(written.slice(0, 100)));
      if (found === undefined) throw invalid(`${label} must be one of ${names.join(", ")}; got ${shown(cell)}`);
      return found;
    },
  });
}

/** Yes or no: TRUE/FALSE, 1/0, "yes"/"no". */
export function flag(about: string): Argument<boolean> {
  return scalar(about, {
    rule: () => "TRUE or FALSE",
    need: "TRUE or FALSE",
    convert(cell, label) {
      if (typeof cell === "boolean") return cell;
      const word = String(cell).trim().toLowerCase();
      if (["1", "true", "yes", "y"].includes(word)) return true;
      if (["0", "false", "no", "n"].includes(word)) return false;
      throw invalid(`${label} must be TRUE or FALSE; got ${shown(cell)}`);
    },
  });
}
