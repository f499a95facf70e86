import { toInside } from "../calc/quantity/measures";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import { askingCode, type Wanted } from "./ask";
import { PRODUCT_KINDS, type KindOfProduct, type ProductKind } from "./kinds";

/** The kinds whose codes begin with a word: a price list may hold 20,000 codes that begin with none. */
const KINDS = new Map<string, (typeof PRODUCT_KINDS)[number][]>();
for (const kind of PRODUCT_KINDS) {
  if (kind.name === "other") continue;
  const word = kind.word.toLowerCase();
  KINDS.set(word, [...(KINDS.get(word) ?? []), kind]);
}

/** The product that a code of the takeoff asks for; undefined where the code is somebody's own. */
export function wantedByCode(code: string, system: UnitSystem): Wanted | undefined {
  const [word = ""] = code.trim().split(/\s+/, 1);
  for (const kind of KINDS.get(word.toLowerCase()) ?? []) {
    const wanted = readCode(code, kind, kind.name, system);
    // What makes the same code again was read right.
    if (askingCode(wanted, system).toLowerCase() === code.trim().toLowerCase()) return wanted;
  }
  return undefined;
}

function readCode(code: string, kind: KindOfProduct, name: ProductKind, system: UnitSystem): Wanted {
  const [, ...rest] = code.trim().split(/\s+/);
  const wanted: { -readonly [K in keyof Wanted]: Wanted[K] } = { kind: name };
  if (kind.size && Number(rest[0]) > 0) {
    wanted.size = toInside(kind.size.measure === "volume" ? "water" : "size", Number(rest.shift()), system);
  }
  const sides = rest[0]?.split("x").map(Number);
  if (kind.sides && sides?.length === kind.sides.length && sides.every((side) => side > 0)) {
    rest.shift();
    kind.sides.forEach((side, index) => (wanted[side] = toInside("size", sides[index] ?? NaN, system)));
  }
  if (kind.type !== undefined && rest.length > 0) wanted.type = rest.join(" ");
  return wanted;
}
