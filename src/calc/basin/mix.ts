import { findNamed, namedRows } from "../named";
import { pitVolume } from "../ground/earthworks";
import { invalid, requireRange } from "../problem";
import { sayBoth } from "../quantity/measures";
import { BASIN_PARTS, type BasinPartKind } from "../tables/basinParts";

/** A part of a basin as the user lists it; SI. */
export interface BasinPart {
  readonly kind: BasinPartKind;
  /** m; the bottom of a pit, the diameter of a round well */
  readonly length: number;
  /** m; left out: as the length */
  readonly width: number | undefined;
  /** m, below the full water level */
  readonly depth: number;
  /** Left out: that of its kind. */
  readonly voidFraction: number | undefined;
  /** Of a pit's walls; 0 for the others. */
  readonly sideSlope: number;
  /** Names the part in sentences: "parts row 2". */
  readonly label: string;
}

/** Volume, void fraction and water of one part or of the whole. */
export interface BasinShare {
  readonly name: string;
  /** m³ */
  readonly volume: number;
  readonly voidFraction: number;
  /** m³ */
  readonly water: number;
}

/** What the calculation accepts. */
export const BASIN_PART_RANGE = { side: { min: 0.01, max: 500 }, depth: { min: 0.01, max: 6.1 } } as const;

const kinds = namedRows(BASIN_PARTS);

/**
 * The kind of part a name stands for; letter case and spacing do not matter.
 * @throws Problem "missing" that lists the names
 */
export function findBasinPart(name: string, label = "kind"): BasinPartKind {
  return findNamed(kinds, name, label, "with the pit itself as one row");
}

/**
 * Water in a basin made of parts inside a pit: gravel = pit - modules - wells, and water = Σ volume × void fraction.
 *
 * @param parts one pit, and any modules and wells that stand in it; the pit's void fraction is that of its gravel
 * @returns the inner parts in order, then the gravel, then the basin as a whole with its mean void fraction
 * @throws Problem without exactly one pit, for a part that does not fit into it, and outside BASIN_PART_RANGE
 *
 * Source: geometry (prismoidal formula of `pitVolume`, cylinder); void fractions as their table says.
 */
export function basinMix(parts: readonly BasinPart[]): BasinShare[] {
  const pits = parts.filter(({ kind }) => kind.isPit);
  const pit = pits[0];
  if (pit === undefined) throw invalid("parts must hold one row for the pit; there is none");
  if (pits.length > 1) throw invalid(`${pits[1]?.label ?? "parts"} is a second pit; give the basin's pit as one row`);

  const whole = shareOf(pit, "Basin");
  const inner = parts
    .filter(({ kind }) => !kind.isPit)
    .map((part, _, all) => {
      requireFits(part, pit);
      const same = all.filter(({ kind }) => kind === part.kind);
      return shareOf(part, capital(part.kind.name) + (same.length > 1 ? ` ${same.indexOf(part) + 1}` : ""));
    });

  const gravelVolume = whole.volume - sum(inner, "volume");
  if (gravelVolume < -1e-9 * whole.volume) {
    throw invalid(
      `parts must fit into the pit: modules and wells take ${sayBoth("earth", sum(inner, "volume"))} ` +
        `of its ${sayBoth("earth", whole.volume)}`,
    );
  }
  const volume = Math.max(0, gravelVolume);
  const gravel = { name: "Gravel", volume, voidFraction: whole.voidFraction, water: volume * whole.voidFraction };
  const water = sum(inner, "water") + gravel.water;
  return [...inner, gravel, { name: "Basin", volume: whole.volume, voidFraction: water / whole.volume, water }];
}

function shareOf(part: BasinPart, name: string): BasinShare {
  const { kind, length, depth, label } = part;
  const width = part.width ?? length;
  const { side, depth: deep } = BASIN_PART_RANGE;
  requireRange(`${label}: length`, length, side.min, side.max, "m");
  requireRange(`${label}: width`, width, side.min, side.max, "m");
  requireRange(`${label}: depth`, depth, deep.min, deep.max, "m");
  const voidFraction = requireRange(`${label}: void fraction`, part.voidFraction ?? kind.voidFraction, 0, 1);
  if (part.sideSlope !== 0 && !kind.isPit)
    throw invalid(`${label}: side slope belongs to the pit; leave it blank here`);
  if (kind.round && width !== length) {
    throw invalid(`${label}: width of a round well must be blank, or the diameter as its length`);
  }
  const volume = kind.round ? (Math.PI / 4) * length * length * depth : pitVolume(length, width, depth, part.sideSlope);
  return { name, volume, voidFraction, water: volume * voidFraction };
}

/** Throws when a part is deeper than the pit's water or longer than the pit is at the water's level. */
function requireFits(part: BasinPart, pit: BasinPart): void {
  if (part.depth > pit.depth * (1 + 1e-9)) {
    throw invalid(
      `${part.label}: depth must be at most the pit's, ${sayBoth("length", pit.depth)}; got ${sayBoth("length", part.depth)}: ` +
        "count only what stands below the full water level",
    );
  }
  const widening = 2 * pit.sideSlope * pit.depth;
  const room = [pit.length + widening, (pit.width ?? pit.length) + widening].sort(ascending);
  const sides = [part.length, part.width ?? part.length].sort(ascending);
  if (sides.some((side, index) => side > (room[index] ?? 0) * (1 + 1e-9))) {
    throw invalid(
      `${part.label} is ${inWords(sides)} and does not fit into the pit, ${inWords(room)} at the water's level`,
    );
  }
}

function inWords(sides: readonly number[]): string {
  return sides.map((side) => sayBoth("length", side)).join(" by ");
}

const ascending = (a: number, b: number): number => a - b;

function sum(shares: readonly BasinShare[], key: "volume" | "water"): number {
  return shares.reduce((total, share) => total + share[key], 0);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
