import { columnLetters as lettersFromZero } from "../../xlsx/address";
import type { Area } from "../model";

/** "A" for 1, "AB" for 28: the layout counts rows and columns from 1, as a person does. */
export function columnLetters(column: number): string {
  return lettersFromZero(column - 1);
}

/** "B7", or "$B$7" when `fixed`. */
export function cellAddress(row: number, column: number, fixed = false): string {
  const sign = fixed ? "$" : "";
  return `${sign}${columnLetters(column)}${sign}${row}`;
}

/** "B7:D9" or "B7" for a single cell; with signs when `fixed`. */
export function areaAddress({ top, left, bottom, right }: Area, fixed = false): string {
  const first = cellAddress(top, left, fixed);
  return top === bottom && left === right ? first : `${first}:${cellAddress(bottom, right, fixed)}`;
}

/**
 * Where something was laid out. Inside a template literal it reads as formula text:
 * its defined name if it has one, else its full address.
 */
export class Ref implements Area {
  constructor(
    readonly sheet: string,
    readonly top: number,
    readonly left: number,
    readonly bottom: number,
    readonly right: number,
    readonly name?: string,
  ) {}

  /** "Site!$B$7:$C$9" */
  get address(): string {
    return `${this.sheet}!${areaAddress(this, true)}`;
  }

  /** One cell of the area, by row and column counted from 1. */
  cell(row: number, column = 1): Ref {
    return new Ref(this.sheet, this.top + row - 1, this.left + column - 1, this.top + row - 1, this.left + column - 1);
  }

  /** So many rows from its first on. */
  down(rows: number): Ref {
    return new Ref(this.sheet, this.top, this.left, this.top + rows - 1, this.right);
  }

  /** One column of the area, counted from 1; optionally without its first rows. */
  column(column: number, skipRows = 0): Ref {
    const at = this.left + column - 1;
    return new Ref(this.sheet, this.top + skipRows, at, this.bottom, at);
  }

  toString(): string {
    return this.name ?? this.address;
  }
}
