import { basinFunctions } from "./basin";
import { earthFunctions } from "./earth";
import { groundFunctions } from "./ground";
import { jobFunctions } from "./job";
import { levelsFunctions } from "./levels";
import { linerFunctions } from "./liner";
import { moneyFunctions } from "./money";
import { pipeFunctions } from "./pipe";
import { pumpFunctions } from "./pump";
import { quantityFunctions } from "./quantity";
import { stoneFunctions } from "./stone";
import { waterFunctions } from "./water";
import type { Declaration } from "./contract/declaration";

/** Every worksheet function, in the order help and the pane list them. A new one goes into its topic's index. */
export const catalogue: readonly Declaration[] = [
  ...quantityFunctions,
  ...waterFunctions,
  ...basinFunctions,
  ...pipeFunctions,
  ...pumpFunctions,
  ...linerFunctions,
  ...stoneFunctions,
  ...earthFunctions,
  ...groundFunctions,
  ...levelsFunctions,
  ...moneyFunctions,
  ...jobFunctions,
];

/** A declaration by its name, in any case. */
export function findDeclaration(name: string): Declaration | undefined {
  return catalogue.find((declaration) => declaration.name === name.toUpperCase());
}

/** Loads what some functions load on their first call, for those who call them in one go. */
export async function loadLater(): Promise<void> {
  await Promise.all(catalogue.flatMap(({ later }) => (later ? [later.load()] : [])));
}

/** Whether a function was called whose code is still to come. */
export function laterWanted(): boolean {
  return catalogue.some(({ later }) => later?.wanted);
}
