import { repeatableRandom } from "../../calc/liner/cutplan/random";
import { boxLength } from "../planPools";
import { lipStations, sum } from "../steps";
import { lengthOfFeet, seedOf, type ClientFacts } from "./facts";
import { layFirst, layOn, type Laid, type Wall } from "./laying";
import { Deck, type Boulder } from "./stones";

/** The feature as it is drawn, in its own lengths: stations from the top lip, levels up from it. */
export interface Feature {
  readonly facts: ClientFacts;
  readonly foot: number;
  readonly fall: number;
  /** Level of the basin's rim. */
  readonly rim: number;
  readonly run: number;
  /** Station of each lip, and the level of each; the last level is that of the finished grade. */
  readonly lips: readonly number[];
  readonly levels: readonly number[];
  /** How deep the water stands on each tread. */
  readonly depths: readonly number[];
  /** Length of the spillway box behind the first lip. */
  readonly box: number;
  readonly far: readonly Laid[];
  readonly near: readonly Laid[];
  /** The stones of each drop's face; here a stone's station is its place across the bed. */
  readonly faces: readonly (readonly Laid[])[];
  /** Boulders that were counted and are not in a wall stand round the basin. */
  readonly around: readonly Boulder[];
  readonly random: () => number;
}

/** Gaps that are tried until the boulders that were counted are enough: first between upper stones, then between all. */
const GAPS = [0, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.65, 0.8, 1, 1.3, 1.7, 2.2, 3, 4, 6];
const TRIES = [...GAPS.map((upperGap) => ({ gap: 0, upperGap })), ...GAPS.map((gap) => ({ gap, upperGap: Infinity }))];

export function featureOf(facts: ClientFacts): Feature {
  const { drops, treads } = facts;
  const foot = lengthOfFeet(facts.system);
  const lips = lipStations(treads);
  const levels = [0, ...drops.map((_, index) => -sum(drops.slice(0, index + 1)))];
  const run = sum(treads);
  // The shape of the bed is free: as deep as pools of such steps are, and shallow before the basin.
  const depths = drops.map((drop, index) =>
    index === drops.length - 1 ? 0.12 * foot : Math.min(0.35 * foot, 0.45 * Math.min(drop, drops[index + 1] ?? drop)),
  );
  const box = boxLength(facts.pools, facts.bedWidth, run) ?? 1.3 * foot;
  const fall = sum(drops);
  const bed = { facts, foot, fall, rim: -fall - facts.rimBelowGrade, run, lips, levels, depths, box };
  return { ...bed, ...laid(bed), random: repeatableRandom(seedOf(facts) ^ 0x5f3759df) };
}

/** How much of a boulder's width in a drop's face lies behind the lip. */
export const FACE_BACK = 0.86;

/** How far water leaves the lip before the face: by the lip stone, where there is one. */
export function overhang({ lipStone: { width } }: ClientFacts, foot: number): number {
  return width > 0 ? 0.12 * width : 0.1 * foot;
}

type Bed = Pick<Feature, "facts" | "foot" | "run" | "lips" | "levels" | "depths" | "box">;

function laid(bed: Bed): Pick<Feature, "far" | "near" | "faces" | "around"> {
  for (const gaps of TRIES) {
    const deck = new Deck(bed.facts.boulders, repeatableRandom(seedOf(bed.facts)));
    const walls = layAll(deck, bed, gaps);
    if (deck.left > 0 || gaps === TRIES.at(-1)) return { ...walls, around: someOf(deck, bed) };
  }
  throw new Error("one of the tries is the last");
}

function layAll(deck: Deck, bed: Bed, gaps: Pick<Wall, "gap" | "upperGap">): Pick<Feature, "far" | "near" | "faces"> {
  const { facts, run, levels, lips, depths, box } = bed;
  const half = facts.bedWidth / 2;
  const base = (at: number): number => {
    const step = lips.filter((lip) => lip <= at).length;
    return (levels[step] ?? 0) - 0.3 * (depths[step - 1] ?? 0);
  };
  const bank: Wall = { from: -0.5 * box, to: run, base, height: facts.bankHeight, ...gaps };
  const faces = facts.drops.map((drop, index): Wall => {
    const foot = (levels[index + 1] ?? 0) - (depths[index] ?? 0);
    const height = Math.max(0.25 * drop, drop - facts.lipStone.height);
    return { from: -half, to: half, base: () => foot, height, ...gaps };
  });
  // What stands on the ground comes first everywhere; the rest of the boulders goes on top.
  const walls = [...faces, bank, bank].map((wall) => ({ wall, first: layFirst(deck, wall) }));
  const [far = [], near = [], ...rest] = walls.reverse().map(({ wall, first }) => layOn(deck, wall, first));
  return {
    far,
    near,
    faces: rest.reverse().map((stones, index) => sunk(stones, (levels[index] ?? 0) - facts.lipStone.height)),
  };
}

/** What is higher than the drop stands in the ground: the lip stone lies on the highest. */
function sunk(stones: readonly Laid[], level: number): Laid[] {
  const top = Math.max(...stones.map(({ bottom, boulder }) => bottom + boulder.high));
  return stones.map((stone) => ({ ...stone, bottom: stone.bottom + level - top }));
}

/** A few of what is left. */
function someOf(deck: Deck, { facts, foot }: Bed): Boulder[] {
  const most = Math.min(deck.left, Math.round((facts.basinLength + facts.basinWidth) / (1.6 * foot)), 24);
  return Array.from({ length: most }, () => deck.take()).flatMap((boulder) => boulder ?? []);
}
