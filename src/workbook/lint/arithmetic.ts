import { toInside, type Measure } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { parse, tokenize } from "../engine/library";

/** What is read of a parsed formula; the numbers are the calculating library's kinds of nodes. */
type Node =
  | { readonly type: 1; readonly value: number }
  | { readonly type: 2; readonly value: string }
  | { readonly type: 7; readonly op: string; readonly left: Node; readonly right: Node }
  | { readonly type: 8 | 11; readonly operand: Node }
  | { readonly type: 9; readonly name: string; readonly args: readonly Node[] }
  | { readonly type: 0 };

/** What a formula does beyond adding up and reading other cells. */
export interface Arithmetic {
  /** Our functions in it, without the namespace; each states its source itself. */
  readonly functions: readonly string[];
  /** Whether it turns one unit into another, which is right by definition. */
  readonly turnsUnits: boolean;
  /** What of it needs a source: "multiplies", "0.5". */
  readonly needs: readonly string[];
}

const COMPARES = new Set(["=", "<>", "<", ">", "<=", ">="]);
const ASKS = new Set(["ISNUMBER", "ISERROR", "ISTEXT", "ISBLANK", "AND", "OR", "NOT", "EXACT"]);
/** Counts and places, which are compared with typed numbers to tell what is there. */
const COUNTS = new Set(["COUNT", "COUNTA", "COUNTIF", "COUNTIFS", "COUNTBLANK", "ROWS", "COLUMNS", "LEN", "MATCH"]);
/** Functions that hand on or join what they are given, by the first argument that is a value: a typed number there is ours. */
const HANDS_ON = new Map<string, number>([
  ...["IFERROR", "IFNA", "MAX", "MIN", "SUM", "AVERAGE", "N", "LET"].map((name) => [name, 0] as const),
  ["IF", 1],
  ["CHOOSE", 1],
]);
/** Functions that read from a place: only what they read from is a value, not the numbers of its row and column. */
const READS = new Set(["INDEX", "MATCH", "XMATCH", "SUMIF", "SUMIFS", "COUNTIF", "COUNTIFS", "FIXED", "MID"]);
const ROOTS = new Set(["SQRT", "EXP", "LN", "LOG10", "POWER", "PI", "SIN", "COS", "TAN", "STDEV.S", "NORM.S.INV"]);
const WORDS = new Set([
  "MID",
  "LEFT",
  "RIGHT",
  "FIXED",
  "TEXT",
  "TEXTJOIN",
  "CONCAT",
  "SUBSTITUTE",
  "TRIM",
  "HYPERLINK",
]);

/** What a formula needs a source for. Plain sums, references, and questions whether something is there need none. */
export function arithmeticOf(formula: string, system: UnitSystem): Arithmetic {
  const functions = new Set<string>();
  const needs = new Set<string>();
  let turnsUnits = false;
  walk(parse(tokenize(formula)) as unknown as Node);
  return { functions: [...functions], turnsUnits, needs: [...needs] };

  function walk(node: Node): void {
    if (node.type === 7) operation(node);
    else if (node.type === 8 || node.type === 11) walk(node.operand);
    else if (node.type === 9) call(node.name.toUpperCase(), node.args);
  }

  /** A number that stands where a value belongs; 0 and 1 are nothing and one of something. */
  function value(node: Node): void {
    if (node.type === 1 && node.value !== 0 && node.value !== 1) needs.add(String(node.value));
    else walk(node);
  }

  function operation({ op, left, right }: Extract<Node, { type: 7 }>): void {
    if (op === "*" || op === "/") return product(op, left, right);
    if (op === "^") needs.add("raises to a power");
    if (op === "&" || (COMPARES.has(op) && (isCount(left) || isCount(right)))) {
      walk(left);
      return walk(right);
    }
    // Two typed numbers are the row that a formula stands in, and how far a list reaches.
    if (left.type === 1 && right.type === 1) return;
    value(left);
    value(right);
  }

  function product(op: "*" | "/", left: Node, right: Node): void {
    const asked = isAsked(left) || isAsked(right);
    if (asked && op === "*") {
      walk(left);
      return walk(right);
    }
    const factor = op === "*" && left.type === 1 ? left : right;
    const other = factor === left ? right : left;
    if (factor.type === 1 && isUnitFactor(factor.value, system)) {
      turnsUnits = true;
      return walk(other);
    }
    needs.add(op === "*" ? "multiplies" : "divides");
    value(left);
    value(right);
  }

  function call(name: string, args: readonly Node[]): void {
    if (name.startsWith("RILL.")) functions.add(name.slice(5));
    if (ROOTS.has(name)) needs.add(name);
    if (name === "SUMPRODUCT" && args.filter((one) => !isAsked(one)).length > 1) needs.add("multiplies");
    const from = HANDS_ON.get(name) ?? Infinity;
    (READS.has(name) ? args.slice(0, 1) : args).forEach((one, index) => (index >= from ? value : walk)(one));
  }
}

/** Whether a node answers yes or no: a sum of those counts, and times one of those keeps or drops. */
function isAsked(node: Node): boolean {
  if (node.type === 9) return ASKS.has(node.name.toUpperCase());
  if (node.type === 8) return isAsked(node.operand);
  if (node.type !== 7) return false;
  const { op, left, right } = node;
  if (COMPARES.has(op)) return true;
  const one = (side: Node): boolean => isAsked(side) || (side.type === 1 && side.value <= 1);
  return (op === "*" || op === "+" || op === "-") && one(left) && one(right) && (isAsked(left) || isAsked(right));
}

function isCount(node: Node): boolean {
  return node.type === 9 && COUNTS.has(node.name.toUpperCase());
}

/** Whether a formula gives words for people. */
export function isWords(formula: string): boolean {
  return gives(parse(tokenize(formula)) as unknown as Node);

  function gives(node: Node): boolean {
    if (node.type === 2) return node.value !== "";
    if (node.type === 7) return node.op === "&";
    if (node.type !== 9) return false;
    const name = node.name.toUpperCase();
    if (WORDS.has(name)) return true;
    if (name === "IF") return node.args.slice(1).some(gives);
    if (name === "LET") return node.args.slice(-1).some(gives);
    return name === "IFERROR" && gives(node.args[0] ?? node);
  }
}

const LIKE: readonly (readonly [Measure, Measure, number])[] = [
  ["size", "length", 1],
  ["size", "length", 2],
  ["size", "length", 3],
  ["length", "area", 2],
  ["length", "earth", 3],
  ["size", "area", 2],
  ["size", "earth", 3],
  ["weight", "load", 1],
];

function isUnitFactor(number: number, system: UnitSystem): boolean {
  const close = (factor: number): boolean => Math.abs(number / factor - 1) < 1e-9;
  // A share is a hundredth, an hour 60 minutes, a day 24 hours.
  return (
    [100, 60, 24].some(close) ||
    LIKE.some(([small, large, power]) => close(toInside(large, 1, system) / toInside(small, 1, system) ** power))
  );
}
