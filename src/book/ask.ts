import { fromInside, say } from "../calc/quantity/measures";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import { aboutKind, type ProductKind, type Side } from "./kinds";

/** Which product is meant: kind, and size, sides and type where the kind has them. SI. */
export interface Wanted {
  readonly kind: ProductKind;
  /** m, or m³ of a tub. */
  readonly size?: number;
  readonly type?: string;
  /** m */
  readonly length?: number;
  readonly width?: number;
  readonly height?: number;
}

/** How far two sizes of one product may be apart: what is lost when 2 1/2 in are typed as 63.5 mm, and no more. */
const SAME = 2e-4;

export function sameSize(a: number, b: number): boolean {
  return Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));
}

/** Whether a product is the one that is wanted: what it leaves open fits all, what is not asked for is no reason. */
export function fits(product: Wanted, wanted: Wanted): boolean {
  if (product.kind !== wanted.kind) return false;
  const { size, sides = [], type } = aboutKind(wanted.kind);
  const same = (a: number | undefined, b: number | undefined): boolean =>
    a === undefined || (b !== undefined && sameSize(a, b));
  if (size && !same(product.size, wanted.size)) return false;
  if (!sides.every((side: Side) => same(product[side], wanted[side]))) return false;
  return type === undefined || product.type === undefined || sameType(product.type, wanted.type);
}

function sameType(a: string, b: string | undefined): boolean {
  return a.toLowerCase() === b?.toLowerCase();
}

/** How exactly a product says what it is: the more, the better it fits. */
export function exactness(product: Wanted): number {
  const { sides = [] } = aboutKind(product.kind);
  const said = [product.size, product.type, ...sides.map((side) => product[side])];
  return said.filter((value) => value !== undefined).length;
}

/** The code that the takeoff asks by, sizes in in or mm and gal or L: "PIPE 3 Sch 40 PVC", "MODULE 27x16x17". */
export function askingCode(wanted: Wanted, system: UnitSystem): string {
  const { word, size, sides, type } = aboutKind(wanted.kind);
  const short = (measure: "size" | "water", inside: number): string =>
    String(Number(fromInside(measure, inside, system).toFixed(2)));
  const parts = [word];
  if (size && wanted.size !== undefined) parts.push(short(size.measure === "volume" ? "water" : "size", wanted.size));
  const known = sides?.map((side) => wanted[side]);
  if (known?.every((side) => side !== undefined)) parts.push(known.map((side) => short("size", side)).join("x"));
  if (type !== undefined && wanted.type !== undefined) parts.push(wanted.type);
  return parts.join(" ");
}

/** A wanted product in words: "Sch 40 PVC pipe of 3 in". */
export function inWords(wanted: Wanted, system: UnitSystem): string {
  const { size, sides, type } = aboutKind(wanted.kind);
  const name = type !== undefined && wanted.type !== undefined ? `${wanted.type} ${wanted.kind}` : wanted.kind;
  const sizes = sizeWords(wanted, system);
  return (size ?? sides) && sizes !== "" ? `${name} of ${sizes}` : name;
}

/** Its size or sides in words: "3 in", "27 x 16 x 17 in"; "" where it has none. */
export function sizeWords(wanted: Wanted, system: UnitSystem): string {
  const { size, sides } = aboutKind(wanted.kind);
  if (size && wanted.size !== undefined) {
    return say(size.measure === "volume" ? "water" : "size", rounded(wanted.size), system);
  }
  const known = sides?.map((side) => wanted[side]);
  if (!known?.every((side) => side !== undefined)) return "";
  const [last = 0] = known.slice(-1);
  const before = known.slice(0, -1).map((side) => String(Number(fromInside("size", side, system).toFixed(2))));
  return [...before, say("size", rounded(last), system)].join(" x ");
}

function rounded(value: number): number {
  return Number(value.toPrecision(9));
}
