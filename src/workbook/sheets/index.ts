import type { SheetDefinition } from "../layout";
import { basin } from "./basin";
import { crew } from "./crew";
import { earth } from "./earth";
import { facts } from "./facts";
import { ground } from "./ground";
import { issued } from "./issued";
import { labor } from "./labor";
import { levels } from "./levels";
import { liner } from "./liner";
import { orders } from "./orders";
import { price } from "./price";
import { pump } from "./pump";
import { quote } from "./quote";
import { rates } from "./rates";
import { receipts } from "./receipts";
import { reconcile } from "./reconcile";
import { site } from "./site";
import { start } from "./start";
import { stone } from "./stone";
import { takeoff } from "./takeoff";
import { water } from "./water";

/** Every sheet of the workbook. A new one is a file of its own and a line here; its `order` places its tab. */
export const sheets: readonly SheetDefinition[] = [
  start,
  site,
  ground,
  water,
  pump,
  basin,
  liner,
  stone,
  earth,
  levels,
  labor,
  rates,
  takeoff,
  price,
  quote,
  issued,
  orders,
  receipts,
  reconcile,
  crew,
  facts,
];
