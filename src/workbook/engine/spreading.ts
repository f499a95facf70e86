import { EACH } from "./each";
import { everySecond } from "./lifted";
import type { BoundExpr } from "./library";

/** The kinds of a bound formula's parts; the library's own enumeration exists for the compiler only. */
export const PART = {
  literal: 1,
  cell: 2,
  area: 3,
  binary: 7,
  unary: 8,
  percent: 9,
  call: 10,
  form: 11,
  name: 13,
} as const;

interface Part {
  readonly kind: number;
  readonly [key: string]: unknown;
}

/** Functions that give one value, whatever they are given. */
const REDUCING = new Set(
  "AND OR XOR SUM SUMSQ PRODUCT MAX MIN COUNT COUNTA COUNTBLANK AVERAGE MEDIAN SUMPRODUCT ROWS COLUMNS NOW TODAY PI".split(
    " ",
  ),
);
/** Functions that pass text and blanks over in cells, in a single one too, which the library reads as if it were typed. */
const OF_CELLS = new Set(
  "AND OR SUM SUMSQ PRODUCT MAX MIN COUNT AVERAGE MEDIAN STDEV.S STDEV.P VAR.S VAR.P LARGE SMALL NPV IRR".split(" "),
);
/** Functions that count in ranges, and which of their arguments are ranges, counted from 0; a single cell is one too. */
const IN_RANGES = new Map<string, readonly number[]>([
  ["COUNTIF", [0]],
  ["SUMIF", [0, 2]],
  ["AVERAGEIF", [0, 2]],
  ["COUNTIFS", everySecond(0)],
  ...["SUMIFS", "AVERAGEIFS", "MAXIFS", "MINIFS"].map((name) => [name, [0, ...everySecond(1)]] as const),
]);
const OF_REFERENCES = new Set([":", " ", ","]);

/** No typed formula can have names in small letters; they are in capitals once they are bound. */
const [HELD, OTHER] = ["held", "other"].map((upperName): Part => ({ kind: PART.name, name: upperName, upperName })) as [
  Part,
  Part,
];
const call = (name: string, args: readonly Part[]): Part => ({ kind: PART.call, name, args });
const form = (name: string, args: readonly Part[]): Part => ({ kind: PART.form, name, args });
const literal = (value: number | null, errorCode?: string): Part => ({ kind: PART.literal, value, errorCode });

/**
 * A bound formula in which IF, IFS, SWITCH, IFERROR, IFNA, CHOOSE and the operators give one value for each place of all
 * the lists they are given, as Excel does; the library goes by the first list, or by the first value of the others.
 */
export function spreading(bound: BoundExpr): BoundExpr {
  return spread(bound) as BoundExpr;
}

function spread(part: unknown): unknown {
  if (Array.isArray(part)) return part.map(spread);
  // Areas stay the objects they are: those that reach far below their sheet are cut and put back.
  if (typeof part !== "object" || part === null || (part as Part).kind === PART.area) return part;
  const all = Object.fromEntries(Object.entries(part).map(([key, value]) => [key, spread(value)])) as unknown as Part;
  if (all.kind === PART.binary) return operation(all);
  if (all.kind === PART.call) return called(all);
  return all.kind === PART.form ? chosen(all) : all;
}

function operation(part: Part): Part {
  const { op } = part as unknown as { op: string };
  const { left, right } = (op === "&" ? { left: inWords(part.left), right: inWords(part.right) } : part) as {
    left: Part;
    right: Part;
  };
  if (OF_REFERENCES.has(op) || isSingle(left) || isSingle(right)) return { ...part, left, right };
  const fitted = { ...part, left: call(EACH.fit, [HELD, OTHER]), right: call(EACH.fit, [OTHER, HELD]) };
  return form("LET", [HELD, left, OTHER, right, fitted]);
}

/** What "&" joins: a number has 15 digits there. */
function inWords(given: unknown): Part {
  const part = given as Part;
  const isText = part.kind === PART.literal || (part.kind === PART.binary && part.op === "&");
  return isText ? part : call(EACH.inWords, [part]);
}

function called(part: Part): Part {
  const { name, args } = part as unknown as { name: string; args: readonly Part[] };
  const [first] = args;
  const ranges = IN_RANGES.get(name);
  if (OF_CELLS.has(name) || ranges) {
    const inCells = (one: Part, at: number): boolean => one.kind === PART.cell && (ranges?.includes(at) ?? true);
    return { ...part, args: args.map((one, at) => (inCells(one, at) ? areaOfCell(one) : one)) };
  }
  if (first?.kind !== PART.area || (name !== "ROW" && name !== "COLUMN")) return part;
  const { top, left } = first as unknown as Record<"top" | "left", number>;
  return call(EACH.numbered, [first, literal(name === "ROW" ? top : left), literal(name === "ROW" ? 0 : 1)]);
}

function areaOfCell({ sheet, row, col }: Part): Part {
  return { kind: PART.area, sheet, top: row, bottom: row, left: col, right: col };
}

function chosen(part: Part): Part {
  const { name, args } = part as unknown as { name: string; args: readonly Part[] };
  const [first, ...rest] = args;
  if (!first) return part;
  switch (name) {
    case "IF":
      return rest.every(isSingle) ? part : byFirst(name, EACH.IF, first, rest);
    case "CHOOSE":
      return byFirst(name, EACH.CHOOSE, first, rest);
    case "IFERROR":
    case "IFNA":
      return rest.every(isSingle) ? part : call(EACH[name], args);
    case "IFS":
      return args.length % 2 === 0 ? (ifs(args) ?? part) : part;
    case "SWITCH": {
      if (isSingle(first) || rest.length < 2) return part;
      const cases = rest.flatMap((one, index) =>
        index % 2 === 1 ? [one] : index === rest.length - 1 ? [literal(1), one] : [equal(OTHER, one)],
      );
      const many = ifs(cases) ?? part;
      return form("LET", [OTHER, first, form("IF", [call(EACH.isMany, [OTHER]), many, form(name, [OTHER, ...rest])])]);
    }
    default:
      return part;
  }
}

function equal(left: Part, right: Part): Part {
  return { kind: PART.binary, op: "=", left, right };
}

/** IFS as IF in IF. */
function ifs(args: readonly Part[]): Part | undefined {
  let inner: Part | undefined;
  for (let at = args.length - 2; at >= 0; at -= 2) {
    const [test, value] = args.slice(at, at + 2);
    if (test && value) inner = chosen(form("IF", [test, value, inner ?? literal(null, "#N/A")]));
  }
  return inner;
}

/** The form as it is where its first argument is one value, so that it works out no more than it needs; else for each. */
function byFirst(name: string, each: string, first: Part, rest: readonly Part[]): Part {
  if (isSingle(first)) return form(name, [first, ...rest]);
  const many = call(each, [HELD, ...rest]);
  return form("LET", [HELD, first, form("IF", [call(EACH.isMany, [HELD]), many, form(name, [HELD, ...rest])])]);
}

/** Whether a part is known to give one value. */
function isSingle(part: Part): boolean {
  const { kind, name, args, left, right, operand } = part as unknown as Record<"left" | "right" | "operand", Part> & {
    kind: number;
    name: string;
    args: readonly Part[];
  };
  if (kind === PART.literal || kind === PART.cell) return true;
  if (kind === PART.binary) return isSingle(left) && isSingle(right);
  if (kind === PART.unary || kind === PART.percent) return isSingle(operand);
  if (kind === PART.call)
    return REDUCING.has(name) || ((LIFTED.has(name) || name === EACH.inWords) && args.every(isSingle));
  return kind === PART.form && (name === "IF" || name === "IFERROR" || name === "IFNA") && args.every(isSingle);
}

/** Functions often in conditions that give one value for single ones. */
const LIFTED = new Set(
  "ISNUMBER ISTEXT ISBLANK ISERROR NOT ABS ROUND ROUNDUP ROUNDDOWN INT LEN N FIND MID LEFT".split(" "),
);
