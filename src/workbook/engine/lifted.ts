import { ensureRegistryInitialized, lookupFunction, type FunctionDescriptor } from "./library";
import { matching } from "./matching";
import { asTable, isTable, KIND, type Given, type Invoke, type Scalar, type Table } from "./values";

const NOT_THERE: Scalar = { kind: KIND.error, code: "#N/A" };

/** Functions of single values: each of their arguments may be a range, and the result then has a value for each cell. */
const OF_VALUES =
  "ISNUMBER ISTEXT ISBLANK ISLOGICAL ISERROR ISERR ISNA ISNONTEXT NOT LEFT RIGHT MID LEN TRIM LOWER UPPER PROPER SUBSTITUTE " +
  "REPLACE FIND SEARCH REPT TEXT VALUE EXACT CODE CHAR CLEAN YEAR MONTH DAY DATE HOUR MINUTE SECOND WEEKDAY EOMONTH EDATE DAYS " +
  "ISEVEN ISODD CONCATENATE ADDRESS HYPERLINK DATEVALUE TIME TIMEVALUE WEEKNUM ISOWEEKNUM UNICHAR UNICODE FACT COMBIN " +
  "CEILING.MATH FLOOR.MATH EVEN ODD ERROR.TYPE DATEDIF YEARFRAC PMT SINH COSH TANH " +
  "ABS INT MOD POWER SQRT LN LOG LOG10 EXP SIGN TRUNC MROUND QUOTIENT DEGREES RADIANS SIN COS TAN ASIN ACOS ATAN ATAN2";

/** Where criteria stand among ranges, or ranges among criteria: more of them than anyone types. */
export function everySecond(first: number): number[] {
  return Array.from({ length: 30 }, (_, index) => first + 2 * index);
}

/** Functions that look one value up, or count by it, and the argument with that value, counted from 0. */
const BY_VALUE: readonly (readonly [name: string, ...at: number[]])[] = [
  ["MATCH", 0],
  ["XMATCH", 0],
  ["XLOOKUP", 0],
  ["VLOOKUP", 0, 2],
  ["HLOOKUP", 0, 2],
  ["COUNTIF", 1],
  ["SUMIF", 1],
  ["AVERAGEIF", 1],
  ["COUNTIFS", ...everySecond(1)],
  ...["SUMIFS", "AVERAGEIFS", "MAXIFS", "MINIFS"].map((name) => [name, ...everySecond(2)] as const),
];

/**
 * The library's functions that take one value, for ranges too: of a range it reads the first cell alone and gives one
 * result without a word, where Excel gives one for each cell.
 */
export function* liftedFunctions(): Generator<FunctionDescriptor> {
  ensureRegistryInitialized();
  const lifted: readonly (readonly [name: string, at?: readonly number[]])[] = [
    ...OF_VALUES.split(" ").map((name) => [name] as const),
    ...BY_VALUE.map(([name, ...at]) => [name, at] as const),
  ];
  for (const [name, at] of lifted) {
    const native = lookupFunction(name);
    if (!native) continue;
    const many = lift(native.invoke as unknown as Invoke, at);
    yield { ...native, invoke: (name === "MATCH" ? matching(many) : many) as unknown as typeof native.invoke };
  }
  yield* productOfNumbers();
}

/** SUMPRODUCT counts nothing but numbers; the library takes TRUE for 1. */
function* productOfNumbers(): Generator<FunctionDescriptor> {
  const native = lookupFunction("SUMPRODUCT");
  if (!native) return;
  const invoke = native.invoke as unknown as Invoke;
  const ofNumbers: Invoke = (given) =>
    invoke(given.map((one) => (isTable(one) ? asTable(one.rows.map((row) => row.map(noFlag))) : noFlag(one))));
  yield { ...native, invoke: ofNumbers as unknown as typeof native.invoke };
}

function noFlag(value: Scalar): Scalar {
  return value.kind === KIND.flag ? { kind: KIND.number, value: 0 } : value;
}

/** A function of single values made one of ranges: its arguments at these places, or all of them, are gone through cell by cell. */
export function lift(invoke: Invoke, at?: readonly number[]): Invoke {
  return (given) => {
    const [height, width] = sizeOf(at ? given.filter((_, index) => at.includes(index)) : given);
    if (height * width === 0) return invoke(given);
    const rows = Array.from({ length: height }, (_, row) =>
      Array.from({ length: width }, (__, column): Scalar => {
        const one = invoke(
          given.map((from, index) => (isTable(from) && (!at || at.includes(index)) ? cellOf(from, row, column) : from)),
        );
        return isTable(one) ? (one.rows[0]?.[0] ?? NOT_THERE) : one;
      }),
    );
    return asTable(rows);
  };
}

/** Rows and columns of the largest of the lists among what is given; 0 where there is none. */
export function sizeOf(given: readonly Given[]): [height: number, width: number] {
  let [height, width] = [0, 0];
  for (const one of given) {
    if (!isTable(one)) continue;
    height = Math.max(height, one.rows.length);
    width = Math.max(width, one.rows[0]?.length ?? 0);
  }
  return [height, width];
}

/** A single row or column serves every row or column, as in every spreadsheet. */
export function cellOf({ rows }: Table, row: number, column: number): Scalar {
  const line = rows.length === 1 ? rows[0] : rows[row];
  return (line?.length === 1 ? line[0] : line?.[column]) ?? NOT_THERE;
}
