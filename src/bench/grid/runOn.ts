import { SpreadsheetSkeleton } from "@univerjs/preset-sheets-core";
import { INDENT } from "../reading/styles";

/** The library's class is shared by all grids of a page. */
let isDone = false;

/** The pixels that a cell keeps free at both its edges. */
const MARGINS = 4;

/**
 * Has text run on over blank cells as far as it reaches with one step of indentation, whether it has one or not: the library
 * leaves it out when it measures, and the last letters of a text were cut that ends just beyond an edge.
 */
export function runOnWithIndentation(): void {
  if (isDone) return;
  isDone = true;
  const { prototype } = SpreadsheetSkeleton;
  const measured = prototype.getOverflowPosition;
  prototype.getOverflowPosition = function (size, ...place) {
    return measured.call(this, size && { ...size, width: size.width + INDENT + MARGINS }, ...place);
  };
}
