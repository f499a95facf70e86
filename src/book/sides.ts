import { fromInside, toInside } from "../calc/quantity/measures";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import type { Wanted } from "./ask";

type Sides = Required<Pick<Wanted, "length" | "width" | "height">>;

const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
const SIDES = new RegExp(String.raw`${NUMBER} ?[x\u00d7] ?${NUMBER} ?[x\u00d7] ?${NUMBER} ?(in|mm)\b`, "i");

/**
 * Length, width and height as a description names them, "48 x 36 x 18 in": a tub is asked for by what it holds, so that
 * only its description says how much room it takes. Undefined where it does not.
 */
export function sidesIn(description: string): Sides | undefined {
  const [, ...found] = SIDES.exec(description) ?? [];
  const system: UnitSystem = found.pop()?.toLowerCase() === "mm" ? "SI" : "US";
  const [length, width, height] = found.map((side) => toInside("size", Number(side), system));
  if (!length || !width || !height) return undefined;
  return { length, width, height };
}

/** The description of a product that is asked for by its volume, with its sides in it; any other as it is. */
export function withSides(product: Wanted & { readonly description: string }, system: UnitSystem): string {
  const { kind, description, length, width, height } = product;
  if (kind !== "tub" || length === undefined || width === undefined || height === undefined) return description;
  if (sidesIn(description)) return description;
  const sides = [length, width, height].map((side) => Number(fromInside("size", side, system).toFixed(2)));
  return `${description}, ${sides.join(" x ")} ${system === "US" ? "in" : "mm"}`;
}
