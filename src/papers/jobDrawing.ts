import type { Sheet } from "../drawing/client";
import { Problem } from "../calc/problem";
import { Reading } from "../taskpane/reading";
import type { PaperCells } from "./cells";

/** A drawing made from the workbook's named cells. */
interface Drawing {
  readonly places: readonly string[];
  draw(reading: Reading, sheet?: Sheet): string;
}

/** The drawing of this job, or why there is none yet. */
export function jobDrawing(
  drawing: Drawing,
  cells: PaperCells,
  sheet?: Sheet,
): { readonly svg: string } | { readonly reason: string } {
  const reading = new Reading(
    drawing.places,
    drawing.places.map((place) => cells.workbook.named(place)),
  );
  try {
    return { svg: drawing.draw(reading, sheet) };
  } catch (error) {
    if (error instanceof Problem) return { reason: error.message };
    throw error;
  }
}
