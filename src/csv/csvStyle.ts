import type { Customs } from "./cells";

/** How a CSV file is written. */
export interface CsvStyle {
  /** "," writes decimal commas and separates cells by semicolons, as spreadsheets of that custom expect. */
  readonly decimal: Customs["decimal"];
  /** The mark by which a spreadsheet knows UTF-8. */
  readonly mark: boolean;
}

export const USUAL_STYLE: CsvStyle = { decimal: ".", mark: true };
