import { lift, sizeOf } from "./lifted";
import { asTable, isTable, KIND, type Given, type Invoke, type Scalar } from "./values";

/** What the forms of the library are called inside where they are given lists. */
export const EACH = {
  IF: "if each",
  CHOOSE: "choose each",
  IFERROR: "iferror each",
  IFNA: "ifna each",
  isMany: "is many",
  fit: "fit",
  inWords: "in words",
  numbered: "numbered",
} as const;

const VALUE: Scalar = { kind: KIND.error, code: "#VALUE!" };
const NOT_THERE: Scalar = { kind: KIND.error, code: "#N/A" };
const NO: Scalar = { kind: KIND.flag, value: false };

/** Those functions, with the fewest arguments of each. */
export const EACH_FUNCTIONS: readonly (readonly [name: string, least: number, invoke: Invoke])[] = [
  [EACH.IF, 2, each(ifOne)],
  [EACH.CHOOSE, 2, each(chooseOne)],
  [EACH.IFERROR, 2, each(([value = VALUE, other = VALUE]) => (value.kind === KIND.error ? other : value))],
  [EACH.IFNA, 2, each(([value = VALUE, other = VALUE]) => (isNotThere(value) ? other : value))],
  [EACH.isMany, 1, ([value = VALUE]) => ({ kind: KIND.flag, value: isTable(value) })],
  [EACH.fit, 2, ([value = VALUE, other = VALUE]) => fitted(value, other)],
  [EACH.numbered, 3, ([area = VALUE, first = VALUE, across = NO]) => numbered(area, first as Scalar, across as Scalar)],
  [EACH.inWords, 1, lift(([value = VALUE]) => fifteenDigits(value as Scalar))],
];

function fifteenDigits(value: Scalar): Scalar {
  return value.kind === KIND.number ? { ...value, value: Number(Number(value.value).toPrecision(15)) } : value;
}

function isNotThere({ kind, code }: Scalar): boolean {
  return kind === KIND.error && code === "#N/A";
}

function ifOne([condition = VALUE, yes = VALUE, no = NO]: readonly Scalar[]): Scalar {
  if (condition.kind === KIND.error) return condition;
  if (condition.kind !== KIND.text) return condition.value ? yes : no;
  const word = String(condition.value).toUpperCase();
  return word === "TRUE" ? yes : word === "FALSE" ? no : VALUE;
}

function chooseOne(given: readonly Scalar[]): Scalar {
  const [number = VALUE] = given;
  if (number.kind === KIND.error) return number;
  const which = number.value === "" ? NaN : Math.trunc(Number(number.value ?? 0));
  return (which >= 1 && given[which]) || VALUE;
}

/** A function of single values for each place of the lists it is given; of an area, its cell in the list's place. */
function each(one: (given: readonly Scalar[]) => Scalar): Invoke {
  return lift((given) => one(given as readonly Scalar[]));
}

/** A list beside a longer one, with #N/A where it has no value for it; one value, row or column serves all. */
function fitted(value: Given, other: Given): Given {
  if (!isTable(value) || !isTable(other)) return value;
  const [height, width] = sizeOf([value]);
  const [most, widest] = sizeOf([value, other]);
  const [down, across] = [height === 1 ? 1 : most, width === 1 ? 1 : widest];
  if (down === height && across === width) return value;
  return asTable(
    Array.from({ length: down }, (_, row) =>
      Array.from({ length: across }, (__, column) => value.rows[row]?.[column] ?? NOT_THERE),
    ),
  );
}

/** The numbers of an area's rows, or of its columns, from its first: of as many as it is handed over with. */
function numbered(area: Given, { value: first }: Scalar, { value: across }: Scalar): Given {
  const [height, width] = isTable(area) ? sizeOf([area]) : [1, 1];
  const numbers = Array.from({ length: across ? width : height }, (_, index): Scalar => ({
    kind: KIND.number,
    value: Number(first) + index,
  }));
  return asTable(across ? [numbers] : numbers.map((number) => [number]));
}
