import type { AstNode } from "./library";
import { cellOf } from "./lifted";
import { asTable, isTable, KIND, type Given, type Scalar } from "./values";

/** The kinds of a formula's parts; the library's own enumeration exists for the compiler only. */
const TYPE = { call: 9, list: 10 } as const;
/** What CHOOSE is called inside where it is given a list: under its own name the library takes the first of it alone. */
export const CHOOSE_EACH = "CHOOSE.EACH";
const VALUE: Scalar = { kind: KIND.error, code: "#VALUE!" };

/** A formula's tree in which CHOOSE({1;2;3},…) and CHOOSE(SEQUENCE(3),…) give one value for each of the list, as in Excel. */
export function choosing(tree: AstNode): AstNode {
  return changed(tree) as AstNode;
}

function changed(part: unknown): unknown {
  if (Array.isArray(part)) return part.map(changed);
  if (typeof part !== "object" || part === null) return part;
  const all = Object.fromEntries(Object.entries(part).map(([key, value]) => [key, changed(value)]));
  const { type, name, args } = all as { type?: number; name?: string; args?: { type: number; name?: string }[] };
  const [which] = args ?? [];
  const isList = which?.type === TYPE.list || (which?.type === TYPE.call && which.name?.endsWith("SEQUENCE"));
  return type === TYPE.call && name === "CHOOSE" && isList ? { ...all, name: CHOOSE_EACH } : all;
}

/** Of each number of a list, the value that stands there among the others; of an area, its cell in the list's place. */
export function chooseEach(given: readonly Given[]): Given {
  const tables = given.filter(isTable);
  const height = Math.max(1, ...tables.map(({ rows }) => rows.length));
  const width = Math.max(1, ...tables.map(({ rows }) => rows[0]?.length ?? 0));
  const at = (from: Given | undefined, row: number, column: number): Scalar =>
    from === undefined ? VALUE : isTable(from) ? cellOf(from, row, column) : from;
  return asTable(
    Array.from({ length: height }, (_, row) =>
      Array.from({ length: width }, (__, column) => {
        const number = at(given[0], row, column);
        if (number.kind === KIND.error) return number;
        const which = Math.trunc(Number(number.value ?? 0));
        return which < 1 ? VALUE : at(given[which], row, column);
      }),
    ),
  );
}
