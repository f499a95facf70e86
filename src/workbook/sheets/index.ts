import type { SheetDefinition } from "../layout";
import { site } from "./site";
import { start } from "./start";

/** Every sheet of the workbook. A new one is a file of its own and a line here; its `order` places its tab. */
export const sheets: readonly SheetDefinition[] = [start, site];
