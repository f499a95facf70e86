import { Problem } from "../../calc/problem";
import type { Declaration } from "../../functions/contract/declaration";
import type { Cell, Value } from "../../functions/contract/result";
import { EACH_FUNCTIONS } from "./each";
import type { FunctionDescriptor } from "./library";
import { lift, liftedFunctions } from "./lifted";
import { pick } from "./pick";
import { asTable, isTable, KIND, type Given, type Invoke, type Scalar } from "./values";

/**
 * The functions of the catalogue and those that do better here than the calculating library's, by their names in formulas.
 * Why a function gave an error is told to `failed`.
 */
export function worksheetFunctions(
  catalogue: readonly Declaration[],
  failed: (reason: string) => void,
): Map<string, FunctionDescriptor> {
  const functions = new Map<string, FunctionDescriptor>();
  const add = (name: string, minArity: number, maxArity: number, invoke: (given: Given[]) => unknown): void =>
    void functions.set(name, { name, minArity, maxArity, invoke: invoke as unknown as FunctionDescriptor["invoke"] });
  for (const native of liftedFunctions()) functions.set(native.name, native);
  for (const declaration of catalogue) {
    const parameters = Object.values(declaration.args);
    const least = parameters.filter(({ optional }) => !optional).length;
    add(`RILL.${declaration.name}`, least, parameters.length, (given) => {
      // Excel hands an error cell on without asking the function.
      const passedOn = given.find(({ kind }) => kind === KIND.error);
      try {
        return fromValue(declaration.evaluate(given.map(toRaw)));
      } catch (error) {
        failed(error instanceof Error ? error.message : String(error));
        if (passedOn) return passedOn;
        return { kind: KIND.error, code: error instanceof Problem && error.kind === "missing" ? "#N/A" : "#VALUE!" };
      }
    });
  }
  for (const [name, toWhole] of ROUNDING)
    add(
      name,
      2,
      2,
      lifted((given) => rounded(given, toWhole)),
    );
  for (const [name, toWhole] of TO_MULTIPLES)
    add(
      name,
      2,
      2,
      lifted((given) => multiple(given, toWhole)),
    );
  add("FIXED", 1, 3, lifted(fixed));
  add("INDEX", 2, 3, pick);
  for (const [name, least, invoke] of EACH_FUNCTIONS) add(name, least, 255, invoke);
  return functions;
}

/** One of ours that takes single values, for ranges as well. */
function lifted(invoke: (given: readonly Scalar[]) => Scalar): Invoke {
  return lift((given) => invoke(given as readonly Scalar[]));
}

/** What the function contract expects for a value of the library: rows for ranges, {error} for error cells. */
function toRaw(value: Given): unknown {
  if (isTable(value)) return value.rows.map((row) => row.map(toRaw));
  if (value.kind === KIND.error) return { error: value.code };
  return value.kind === KIND.blank ? null : value.value;
}

function fromValue(value: Value): unknown {
  if (!Array.isArray(value)) return scalar(value);
  return asTable(value.map((row) => row.map(scalar)));
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

/** A blank is 0, an empty text no number. */
function numberIn({ value }: Scalar): number {
  return value === "" ? NaN : Number(value ?? 0);
}

/** Two numbers, or the error of what is none. */
function twoNumbers(args: readonly Scalar[]): readonly [number, number] | Scalar {
  const error = args.find(({ kind }) => kind === KIND.error);
  if (error) return error;
  const [one = NaN, other = NaN] = args.map(numberIn);
  return Number.isNaN(one + other) ? { kind: KIND.error, code: "#VALUE!" } : [one, other];
}

function rounded(args: readonly Scalar[], toWhole: (size: number) => number): Scalar {
  const numbers = twoNumbers(args);
  if ("kind" in numbers) return numbers;
  const [value, digits] = numbers;
  const scale = 10 ** Math.trunc(digits);
  const shown = Number((Math.abs(value) * scale).toPrecision(15));
  return { kind: KIND.number, value: (Math.sign(value) * toWhole(shown)) / scale };
}

/** The library takes 0.55 for more than eleven times 0.05, and no negative number by a positive multiple. */
const TO_MULTIPLES: typeof ROUNDING = [
  ["CEILING", Math.ceil],
  ["FLOOR", Math.floor],
];

function multiple(args: readonly Scalar[], toWhole: (size: number) => number): Scalar {
  const numbers = twoNumbers(args);
  if ("kind" in numbers) return numbers;
  const [value, step] = numbers;
  if (step === 0) return toWhole(0.5) === 1 || value === 0 ? ZERO : { kind: KIND.error, code: "#DIV/0!" };
  if (value > 0 && step < 0) return { kind: KIND.error, code: "#NUM!" };
  const times = toWhole(Number((value / step).toPrecision(15)));
  return { kind: KIND.number, value: Number((times * step).toPrecision(15)) };
}

const ZERO: Scalar = { kind: KIND.number, value: 0 };

/** The library rounds the binary value here too. */
function fixed([value, decimals, plain]: readonly Scalar[]): Scalar {
  const digits: Scalar = decimals ?? { kind: KIND.number, value: 2 };
  const number = rounded([value ?? { kind: KIND.blank }, digits], Math.round);
  if (number.kind !== KIND.number) return number;
  const places = Math.max(0, Math.trunc(Number(digits.value ?? 0)));
  const [whole = "", part] = Math.abs(Number(number.value)).toFixed(places).split(".");
  const grouped = plain?.value ? whole : whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return { kind: KIND.text, value: `${Number(number.value) < 0 ? "-" : ""}${grouped}${part ? `.${part}` : ""}` };
}
