import type { SheetDefinition } from "../layout";
import { basin } from "./basin";
import { pump } from "./pump";
import { site } from "./site";
import { start } from "./start";
import { water } from "./water";

/** Every sheet of the workbook. A new one is a file of its own and a line here; its `order` places its tab. */
export const sheets: readonly SheetDefinition[] = [start, site, water, pump, basin];
