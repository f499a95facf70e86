/** What the drawing is to fit: its width, and the most it may be high. The lettering is as large on every sheet. */
export interface Sheet {
  readonly width: number;
  readonly height?: number;
  /** Without name and notes, for a page that has its own. */
  readonly bare?: boolean;
}
