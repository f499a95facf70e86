/** A rectangle of cells on one sheet; rows and columns counted from 1, as formulas count them. */
export interface Block {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export const LAST_ROW = 1_048_576;
export const LAST_COLUMN = 16_384;

export function isIn({ top, left, bottom, right }: Block, row: number, column: number): boolean {
  return row >= top && row <= bottom && column >= left && column <= right;
}

export function isOneCell({ top, left, bottom, right }: Block): boolean {
  return top === bottom && left === right;
}

export function meet(one: Block, other: Block): boolean {
  return one.top <= other.bottom && other.top <= one.bottom && one.left <= other.right && other.left <= one.right;
}

export function eachCell({ top, left, bottom, right }: Block, call: (row: number, column: number) => void): void {
  for (let row = top; row <= bottom; row++) for (let column = left; column <= right; column++) call(row, column);
}
