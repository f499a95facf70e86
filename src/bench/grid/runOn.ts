import { SpreadsheetSkeleton } from "@univerjs/preset-sheets-core";
import { INDENT } from "../reading/styles";

/** The pixels that a cell keeps free at both its edges. */
const MARGINS = 4;

/**
 * Has text run on over blank cells as far as it reaches with its indentation, which the library leaves out when it measures; else
 * the last letters of a text are cut that ends just beyond an edge.
 */
export function runOnWithIndentation(): void {
  const { prototype } = SpreadsheetSkeleton;
  const measured = prototype.getOverflowPosition;
  prototype.getOverflowPosition = function (size, ...place) {
    return measured.call(this, size && { ...size, width: size.width + INDENT + MARGINS }, ...place);
  };
}
