import type { Workbook } from "@cj-tech-master/excelts";
import { Problem } from "../../calc/problem";
import type { Declaration } from "../../functions/contract/declaration";
import type { Cell, Value } from "../../functions/contract/result";
import type { Size } from "./cells";
import { pick } from "./pick";

/** The kinds of the calculating library's values; its own enumeration exists for the compiler only. */
const KIND = { blank: 0, number: 1, text: 2, flag: 3, error: 4, table: 5 } as const;

/** The name of the placeholder; no worksheet function has it. */
export const PLACEHOLDER = "RILL.PLACEHOLDER";

interface Scalar {
  readonly kind: number;
  readonly value?: Cell;
  readonly code?: string;
}
type Given = Scalar | { readonly kind: number; readonly rows: readonly (readonly Scalar[])[] };

/**
 * Gives the workbook the functions of the catalogue. Each call carries the address it is made from as its first argument;
 * the reasons for errors are kept by it in the map that is returned.
 */
export function registerFunctions(workbook: Workbook, catalogue: readonly Declaration[]): Map<string, string> {
  const reasons = new Map<string, string>();
  for (const declaration of catalogue) {
    const parameters = Object.values(declaration.args);
    const call = ([caller, ...given]: unknown[]): unknown => {
      const key = String((caller as Scalar).value);
      // Excel hands an error cell on without asking the function.
      const passedOn = (given as Scalar[]).find(({ kind }) => kind === KIND.error);
      try {
        return fromValue(declaration.evaluate((given as Given[]).map(toRaw)));
      } catch (error) {
        reasons.set(key, error instanceof Error ? error.message : String(error));
        if (passedOn) return passedOn;
        return { kind: KIND.error, code: error instanceof Problem && error.kind === "missing" ? "#N/A" : "#VALUE!" };
      }
    };
    workbook.registerFunction(`RILL.${declaration.name}`, call, {
      minArity: 1 + parameters.filter(({ optional }) => !optional).length,
      maxArity: 1 + parameters.length,
    });
  }
  for (const [name, toWhole] of ROUNDING) {
    workbook.registerFunction(name, (given) => rounded(given as Scalar[], toWhole), { minArity: 2, maxArity: 2 });
  }
  workbook.registerFunction("INDEX", (given) => pick(given as Scalar[]), { minArity: 2, maxArity: 3 });
  return reasons;
}

/**
 * A function that fills as many cells as a formula filled before, by the address of the formula: with it the library learns
 * which cells hang on which formula before it puts the formulas in order.
 */
export function registerPlaceholder(workbook: Workbook, sizes: ReadonlyMap<string, Size>): void {
  const place = ([caller]: unknown[]): unknown => {
    const { rows, columns } = sizes.get(String((caller as Scalar).value)) ?? { rows: 1, columns: 1 };
    return fromValue(Array.from({ length: rows }, () => Array.from({ length: columns }, () => 0)));
  };
  workbook.registerFunction(PLACEHOLDER, place, { minArity: 1, maxArity: 1 });
}

/** What the function contract expects for a value of the library: rows for ranges, {error} for error cells. */
function toRaw(value: Given): unknown {
  if ("rows" in value) return value.rows.map((row) => row.map(toRaw));
  if (value.kind === KIND.error) return { error: value.code };
  return value.kind === KIND.blank ? null : value.value;
}

function fromValue(value: Value): unknown {
  if (!Array.isArray(value)) return scalar(value);
  const rows = value.map((row) => row.map(scalar));
  return { kind: KIND.table, rows, height: rows.length, width: rows[0]?.length ?? 0 };
}

function scalar(value: Cell): Scalar {
  const kind = typeof value === "number" ? KIND.number : typeof value === "boolean" ? KIND.flag : KIND.text;
  return { kind, value };
}

/** The library rounds the binary value (1.005 → 1.00, 1136.9 up → 1136.91); Excel rounds the 15 digits it shows. */
const ROUNDING: readonly (readonly [name: string, toWhole: (size: number) => number])[] = [
  ["ROUND", Math.round],
  ["ROUNDUP", Math.ceil],
  ["ROUNDDOWN", Math.floor],
];

function rounded(args: readonly Scalar[], toWhole: (size: number) => number): Scalar {
  const error = args.find(({ kind }) => kind === KIND.error);
  if (error) return error;
  const [value = NaN, digits = NaN] = args.map((one) => Number(one.value ?? 0));
  if (Number.isNaN(value + digits)) return { kind: KIND.error, code: "#VALUE!" };
  const scale = 10 ** Math.trunc(digits);
  const shown = Number((Math.abs(value) * scale).toPrecision(15));
  return { kind: KIND.number, value: (Math.sign(value) * toWhole(shown)) / scale };
}
