import { findNamed, namedRows } from "../named";
import { pitVolume } from "../earth/earthworks";
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

/** Volume, void fraction and water of one part, of the whole, or of a layer. */
export interface BasinShare {
  readonly name: string;
  /** m³ */
  readonly volume: number;
  /** Undefined for a layer that is not there. */
  readonly voidFraction: number | undefined;
  /** m³ */
  readonly water: number;
}

/** What the calculation accepts. */
export const BASIN_PART_RANGE = { side: { min: 0.01, max: 500 }, depth: { min: 0.01, max: 6.1 } } as const;

const kinds = namedRows(BASIN_PARTS);

/**
 * The kind of part a name stands for; letter case and spacing do not matter.
 * @throws Problem "missing" that lists the names
 * @example findBasinPart("Pump well").name => "pump well"; its row of the table
 */
export function findBasinPart(name: string, label = "kind"): BasinPartKind {
  return findNamed(kinds, name, label, "with the pit itself as one row");
}

/**
 * Water in a basin made of parts inside a pit: gravel = pit - modules - wells, and water = Σ volume × void fraction.
 * The layer above the tallest module, gravel with wells, is where the level moves first; it is given by itself.
 *
 * @param parts one pit, and any modules and wells that stand in it; the pit's void fraction is that of its gravel
 * @returns the inner parts in order, the gravel, the basin as a whole with its mean void fraction, the layer above modules
 * @throws Problem without exactly one pit, for a part that does not fit into it, and outside BASIN_PART_RANGE
 * @example basinMix([{ kind: findBasinPart("pit"), length: 3, width: 2, depth: 1, voidFraction: 0.4, sideSlope: 0,
 *   label: "parts row 1" }])[0].water => 2.4; 3 × 2 × 1 × 0.4
 *
 * Source: geometry (prismoidal formula of `pitVolume`, cylinder); void fractions as their table says.
 */
export function basinMix(parts: readonly BasinPart[]): BasinShare[] {
  parts.forEach(requireRanges);
  const pits = parts.filter(({ kind }) => kind.role === "pit");
  const pit = pits[0];
  if (pit === undefined) throw invalid("parts must hold one row for the pit; there is none");
  if (pits.length > 1) throw invalid(`${pits[1]?.label ?? "parts"} is a second pit; give the basin's pit as one row`);
  const inner = parts.filter(({ kind }) => kind.role !== "pit");
  inner.forEach((part) => requireFits(part, pit));

  const whole = below(pit, inner, pit.depth);
  if (whole.gravel < -1e-9 * whole.volume) {
    throw invalid(
      `parts must fit into the pit: modules and wells take ${sayBoth("earth", whole.volume - whole.gravel)} ` +
        `of its ${sayBoth("earth", whole.volume)}`,
    );
  }
  const named = inner.map((part): BasinShare => {
    const same = inner.filter(({ kind }) => kind === part.kind);
    const number = same.length > 1 ? ` ${same.indexOf(part) + 1}` : "";
    return share(capital(part.kind.name) + number, volumeBelow(part, part.depth), water(part, part.depth));
  });
  const modules = inner.filter(({ kind }) => kind.role === "modules");
  const lower = below(pit, inner, Math.max(0, ...modules.map(({ depth }) => depth)));
  const gravel = Math.max(0, whole.gravel);
  return [
    ...named,
    share("Gravel", gravel, gravel * voidsOf(pit)),
    share("Basin", whole.volume, whole.water),
    share("Above the modules", whole.volume - lower.volume, whole.water - lower.water),
  ];
}

/** The pit up to a level above its floor: its volume, the gravel in it, and the water, m³. */
function below(
  pit: BasinPart,
  inner: readonly BasinPart[],
  level: number,
): { readonly volume: number; readonly gravel: number; readonly water: number } {
  const volume = volumeBelow(pit, level);
  const gravel = volume - sum(inner.map((part) => volumeBelow(part, level)));
  return { volume, gravel, water: gravel * voidsOf(pit) + sum(inner.map((part) => water(part, level))) };
}

/** Volume of a part up to a level above the floor it stands on, m³. */
function volumeBelow({ kind, length, width = length, depth, sideSlope }: BasinPart, level: number): number {
  const height = Math.min(level, depth);
  return kind.round ? (Math.PI / 4) * length * length * height : pitVolume(length, width, height, sideSlope);
}

function water(part: BasinPart, level: number): number {
  return volumeBelow(part, level) * voidsOf(part);
}

function voidsOf({ voidFraction, kind }: BasinPart): number {
  return voidFraction ?? kind.voidFraction;
}

function share(name: string, volume: number, held: number): BasinShare {
  // Modules as high as the water leave no layer above them.
  const there = volume > 1e-9;
  return { name, volume: there ? volume : 0, voidFraction: there ? held / volume : undefined, water: there ? held : 0 };
}

function requireRanges(part: BasinPart): void {
  const { kind, length, width = length, depth, voidFraction, sideSlope, label } = part;
  const { side, depth: deep } = BASIN_PART_RANGE;
  requireRange(`${label}: length`, length, side.min, side.max, "m");
  requireRange(`${label}: width`, width, side.min, side.max, "m");
  requireRange(`${label}: depth`, depth, deep.min, deep.max, "m");
  if (voidFraction !== undefined) requireRange(`${label}: void fraction`, voidFraction, 0, 1);
  if (sideSlope !== 0 && kind.role !== "pit") {
    throw invalid(`${label}: side slope belongs to the pit; leave it blank here`);
  }
  if (kind.round && width !== length) {
    throw invalid(`${label}: width of a round well must be blank, or the diameter as its length`);
  }
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

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
