import { columnLetters, columnNumber } from "../../xlsx/address";
import { LAST_COLUMN, LAST_ROW } from "./block";
import type { AstNode } from "./library";

/** The kinds of a formula's parts that name cells; the library's own enumeration exists for the compiler only. */
export const TYPE = { error: 4, cell: 5, area: 6 } as const;
const BEYOND = { type: TYPE.error, value: "#REF!" };

interface CellPart {
  readonly type: number;
  readonly row: string;
  readonly col: string;
  readonly rowAbsolute: boolean;
  readonly colAbsolute: boolean;
}

/** A formula's tree as it reads when it is copied so many rows down and columns across. */
export function moved(tree: AstNode, down: number, across: number): AstNode {
  return down === 0 && across === 0 ? tree : (movedPart(tree, down, across) as AstNode);
}

function movedPart(part: unknown, down: number, across: number): unknown {
  if (Array.isArray(part)) return part.map((one) => movedPart(one, down, across));
  if (typeof part !== "object" || part === null) return part;
  const changed = Object.fromEntries(Object.entries(part).map(([key, value]) => [key, movedPart(value, down, across)]));
  if (changed.type === TYPE.area && [changed.start, changed.end].includes(BEYOND)) return BEYOND;
  if (changed.type !== TYPE.cell) return changed;
  const cell = changed as unknown as CellPart;
  const row = Number(cell.row) + (cell.rowAbsolute ? 0 : down);
  const column = columnNumber(cell.col) + (cell.colAbsolute ? 0 : across);
  if (row < 1 || row > LAST_ROW || column < 0 || column >= LAST_COLUMN) return BEYOND;
  return { ...cell, row: String(row), col: columnLetters(column) };
}
