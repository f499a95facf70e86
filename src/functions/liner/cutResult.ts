import { tableResult, type Result, type TableCell } from "../contract/result";

/** One row: the size of a cut, its area, and what it weighs as the usual liner. */
export function cutResult(about: string): Result<readonly (readonly TableCell[])[]> {
  return tableResult(about, [
    { title: "Length", measure: "length" },
    { title: "Width", measure: "length" },
    { title: "Area", measure: "area" },
    { title: "Weight as usual EPDM", measure: "weight" },
  ]);
}
