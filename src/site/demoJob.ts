import { readFile } from "node:fs/promises";
import path from "node:path";
import type { DemoJob } from "../help/guide";
import { clientsDrawing } from "../taskpane/clientsDrawing";
import { Reading } from "../taskpane/reading";
import { recalculate } from "../workbook/recalculate";

/** As wide as the column of a help page, in its pixels. */
const DRAWING_WIDTH = 800;

/** The demo job of the built US workbook, calculated afresh: what the guide quotes is what a reader finds there. */
export async function demoJob(top: string): Promise<DemoJob> {
  const workbook = await recalculate(await readFile(path.join(top, "templates/rillwright-us-demo.xlsx")));
  const reading = new Reading(
    clientsDrawing.places,
    clientsDrawing.places.map((place) => workbook.named(place)),
  );
  return {
    drawing: clientsDrawing.draw(reading, { width: DRAWING_WIDTH }),
    value(name) {
      const value = workbook.named(name)?.[0]?.[0];
      if (value === undefined || value === "") throw new Error(`the demo job has nothing named ${name}`);
      return value;
    },
  };
}
