import type { Ref } from "./address";

export interface ChartSpec {
  readonly title: string;
  /** What it shows, for those who cannot see it. */
  readonly description: string;
  readonly xTitle: string;
  readonly yTitle: string;
  /** Areas of one column each: `spill.body.column(1)`. */
  readonly series: readonly {
    readonly title: string;
    readonly x: Ref;
    readonly y: Ref;
    readonly dashed?: boolean;
    readonly markers?: boolean;
    readonly line?: boolean;
  }[];
  /** Rows of the sheet it covers. */
  readonly rows?: number;
  /** The sheet column it begins at; 1 if left out. */
  readonly at?: number;
}
