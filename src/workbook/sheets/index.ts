import type { SheetDefinition } from "../layout";
import { basin } from "./basin";
import { ground } from "./ground";
import { levels } from "./levels";
import { pump } from "./pump";
import { site } from "./site";
import { start } from "./start";
import { stone } from "./stone";
import { water } from "./water";

/** Every sheet of the workbook. A new one is a file of its own and a line here; its `order` places its tab. */
export const sheets: readonly SheetDefinition[] = [start, site, water, pump, basin, stone, ground, levels];
