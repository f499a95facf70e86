import type { Declaration } from "../contract/declaration";
import { COSTODDS } from "./costodds";
import { MARGINOF } from "./marginof";
import { MARKUPFOR } from "./markupfor";
import { ORDERQTY } from "./orderqty";
import { RECONCILE } from "./reconcile";
import { SCOPECLASH } from "./scopeclash";
import { STAGES } from "./stages";

export const moneyFunctions: readonly Declaration[] = [
  MARGINOF,
  MARKUPFOR,
  ORDERQTY,
  COSTODDS,
  STAGES,
  SCOPECLASH,
  RECONCILE,
];
