/** A picture placed on a sheet at a cell, with its size in pixels. */
export interface Picture {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly png: Uint8Array;
}
