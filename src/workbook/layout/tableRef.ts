import type { Ref } from "./address";

/** A table as laid out: its body, and a column of it by key. */
export interface TableRef {
  readonly body: Ref;
  column(key: string): Ref;
  cell(key: string, row: number): Ref;
  total(key: string): Ref;
}
