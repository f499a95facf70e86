import { basinFunctions } from "./basin";
import { groundFunctions } from "./ground";
import { jobFunctions } from "./job";
import { levelFunctions } from "./level";
import { moneyFunctions } from "./money";
import { pipeFunctions } from "./pipe";
import { pumpFunctions } from "./pump";
import { quantitiesFunctions } from "./quantities";
import { sheetFunctions } from "./sheet";
import { stoneFunctions } from "./stone";
import { waterFunctions } from "./water";
import type { Declaration } from "./contract/declaration";

/** Every worksheet function, in the order help and the pane list them. A new one goes into its topic's index. */
export const catalogue: readonly Declaration[] = [
  ...quantitiesFunctions,
  ...waterFunctions,
  ...basinFunctions,
  ...pipeFunctions,
  ...pumpFunctions,
  ...sheetFunctions,
  ...stoneFunctions,
  ...groundFunctions,
  ...levelFunctions,
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
