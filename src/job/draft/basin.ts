import type { JobRow } from "../facts";
import type { OfferedBox, OfferedTub, Offers, UnitPrices } from "./offers";

/** What the basin must do; m, m³. */
export interface BasinWish {
  /** Water that must be there over the pump's low water: drain-back, days of loss, rain. */
  readonly room: number;
  readonly lowWater: number;
  /** Deepest and least water from the floor to the overflow. */
  readonly deepest: number;
  /** Depth somebody has typed. */
  readonly depth?: number;
  readonly voids: number;
  /** Rim and bedding, dug besides the water. */
  readonly dugAbove: number;
  readonly coverDepth: number;
  readonly overlap: number;
  readonly cutRounding: number;
  readonly sheets: readonly Sheet[];
  readonly fabricLayers: number;
  /** kg/m³ */
  readonly stoneDensity: number;
  readonly gravelDensity: number;
  readonly waste: number;
  /** Width of the way in; a tub must pass it. */
  readonly way: number | undefined;
  /** Sides somebody has typed. */
  readonly length: number | undefined;
  readonly width: number | undefined;
}

/** A roll of liner: its width, and money for a m². */
export interface Sheet {
  readonly width: number;
  readonly price: number;
}

export type BasinKind = "gravel" | "modules" | "tub";

export interface BasinPlan {
  readonly kind: BasinKind;
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly parts: readonly JobRow<"basinParts">[];
  readonly module: OfferedBox | undefined;
  readonly tub: OfferedTub | undefined;
  /** Water between the low water and the overflow, m³. */
  readonly usable: number;
  /** Water from the floor to the overflow, m³. */
  readonly hold: number;
  /** Money, by the unit prices; to compare plans by. */
  readonly cost: number;
}

/** Inside of the pump well, m: 24 in or 600 mm pipe. */
const WELL = 0.6;
const WELL_AREA = (Math.PI / 4) * WELL * WELL;
/** Stone between modules, well and the wall of the pit, m. */
const GAP = 0.1;
const MODULE_VOIDS = 0.95;
/** Steps in which depths are tried, and sides are rounded up to, m. */
const DEPTH_STEP = 0.1;
const SIDE_STEP = 0.0254;
/** Sheet of a seamed piece, as a multiple of its own. */
const SEAMED = 1.2;
const ASPECTS = [1, 1.4, 2] as const;
/** No basin is made shallower over its low water than this. */
const LEAST_OVER_LOW = 0.15;

/** A kind of basin, shallow and wide or deep: a wide one sinks less while the pump runs, which saves it head. */
export type Build = `${"deep" | "shallow"} ${BasinKind}`;

/** Water no deeper than this is shallow, m. */
const SHALLOW = 0.65;

export function buildOf({ kind, depth }: Pick<BasinPlan, "kind" | "depth">): Build {
  return `${depth <= SHALLOW ? "shallow" : "deep"} ${kind}`;
}

/** The cheapest basin of each build that does what is asked; of one build alone where no other is wanted. */
export function cheapestBasins(
  wish: BasinWish,
  offers: Offers,
  prices: UnitPrices,
  only?: Build,
): Map<Build, BasinPlan> {
  const best = new Map<Build, { readonly candidate: Candidate; readonly cost: number }>();
  const search: Search = {
    wants: (kind, depth) => only === undefined || buildOf({ kind, depth }) === only,
    consider: (candidate) => {
      const cost = costOf(candidate, wish, prices);
      const build = buildOf(candidate);
      if (cost < (best.get(build)?.cost ?? Infinity)) best.set(build, { candidate, cost });
    },
  };
  gravelPlans(wish, search);
  modulePlans(wish, offers.modules, search);
  tubPlans(wish, offers.tubs, search);
  return new Map([...best].map(([build, { candidate, cost }]) => [build, planOf(candidate, wish, cost)]));
}

/** A basin that does what is asked, in the numbers that its cost takes. */
interface Candidate {
  readonly kind: BasinKind;
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  /** Water that a meter of depth holds, m². */
  readonly held: number;
  /** Side of the modules along and across, m; 0 without any. */
  readonly along: number;
  readonly across: number;
  readonly module: OfferedBox | undefined;
  readonly tub: OfferedTub | undefined;
}
/** What is looked for among the basins that could be. */
interface Search {
  readonly wants: (kind: BasinKind, depth: number) => boolean;
  readonly consider: (candidate: Candidate) => void;
}

function planOf(candidate: Candidate, { lowWater }: BasinWish, cost: number): BasinPlan {
  const { kind, length, width, depth, held, along, across, module, tub } = candidate;
  const well = { kind: "round well", length: WELL, depth } as const;
  const [usable, hold] = [held * (depth - lowWater), held * depth];
  return { kind, length, width, depth, module, tub, parts: partsOf(), usable, hold, cost };

  function partsOf(): BasinPlan["parts"] {
    if (!tub) return along > 0 ? [{ kind: "modules", length: along, width: across, depth }, well] : [well];
    const share = shareOf(tub);
    return [{ kind: "tub", length: tub.length, width: tub.width, depth, ...(share < 1 ? { voids: share } : {}) }];
  }
}

/** What a tub holds of its box: less where its sides lean. */
function shareOf({ length, width, height, volume }: OfferedTub): number {
  return Math.min(1, volume / (length * width * height));
}

function depths({ lowWater, deepest, depth }: BasinWish): number[] {
  if (depth !== undefined) return [depth];
  const least = lowWater + LEAST_OVER_LOW;
  if (deepest <= least) return [least];
  const count = Math.min(9, Math.floor((deepest - least) / DEPTH_STEP));
  return [...Array.from({ length: count + 1 }, (_, step) => least + step * DEPTH_STEP), deepest];
}

function sidesUp(value: number): number {
  return Math.ceil(value / SIDE_STEP - 1e-6) * SIDE_STEP;
}

/** Length and width of a bottom of some area, with what is typed kept. */
function bottom(area: number, aspect: number, { length, width }: BasinWish): readonly [number, number] {
  if (length !== undefined) return [length, width ?? Math.max(WELL + 2 * GAP, area / length)];
  if (width !== undefined) return [Math.max(WELL + 2 * GAP, area / width), width];
  const across = Math.max(WELL + 2 * GAP, sidesUp(Math.sqrt(area / aspect)));
  return [Math.max(WELL + 2 * GAP, sidesUp(area / across)), across];
}

function gravelPlans(wish: BasinWish, { wants, consider }: Search): void {
  const { voids, lowWater, room } = wish;
  for (const depth of depths(wish)) {
    if (!wants("gravel", depth)) continue;
    const useful = depth - lowWater;
    const area = Math.max(0, room / useful - (1 - voids) * WELL_AREA) / voids;
    for (const aspect of ASPECTS) {
      const [length, width] = bottom(area, aspect, wish);
      const held = voids * length * width + (1 - voids) * WELL_AREA;
      consider({ kind: "gravel", length, width, depth, held, along: 0, across: 0, module: undefined, tub: undefined });
    }
  }
}

/** Water for each meter of depth in a block of modules so long, with the well behind it and gravel around both, m². */
function heldBy(blockLength: number, width: number, block: number, voids: number): number {
  const gravel = (blockLength + WELL + 3 * GAP) * width - blockLength * block - WELL_AREA;
  return MODULE_VOIDS * blockLength * block + voids * gravel + WELL_AREA;
}

function modulePlans(wish: BasinWish, modules: readonly OfferedBox[], { wants, consider }: Search): void {
  const { voids, lowWater, room, deepest, length: ownLength, width: ownWidth } = wish;
  if (ownLength !== undefined || ownWidth !== undefined) return;
  for (const module of modules) {
    for (let layers = 1; layers * module.height <= deepest + 1e-9 && layers <= 12; layers++) {
      const depth = wish.depth ?? layers * module.height;
      const useful = depth - lowWater;
      if (useful < LEAST_OVER_LOW || !wants("modules", depth)) continue;
      for (let across = 1; across <= 8; across++) {
        const block = across * module.width;
        const width = Math.max(block, WELL) + 2 * GAP;
        const none = heldBy(0, width, block, voids);
        const each = heldBy(module.length, width, block, voids) - none;
        const along = Math.max(1, Math.ceil((room / useful - none) / each - 1e-9));
        const blockLength = along * module.length;
        if (blockLength > 3 * block + module.length || block > 3 * blockLength + module.width) continue;
        consider({
          kind: "modules",
          length: blockLength + WELL + 3 * GAP,
          width,
          depth,
          held: heldBy(blockLength, width, block, voids),
          along: blockLength,
          across: block,
          module,
          tub: undefined,
        });
      }
    }
  }
}

function tubPlans(wish: BasinWish, tubs: readonly OfferedTub[], { wants, consider }: Search): void {
  const { lowWater, room, deepest, way, length: ownLength, width: ownWidth } = wish;
  if (ownLength !== undefined || ownWidth !== undefined) return;
  for (const tub of tubs) {
    // A tub is sold whole: one that would have to be cut down is none. It is the basin itself, without stone or liner.
    const { length, width, height: depth } = tub;
    if (!wants("tub", depth)) continue;
    const fitsDepth = wish.depth === undefined ? depth <= deepest + 1e-9 : Math.abs(depth - wish.depth) < 1e-6;
    const passes = way === undefined || Math.min(length, width) < way;
    const held = shareOf(tub) * length * width;
    if (!fitsDepth || !passes || held * (depth - lowWater) < room) continue;
    consider({ kind: "tub", length, width, depth, held, along: 0, across: 0, module: undefined, tub });
  }
}

/** A piece off the roll that costs least for it: a cut runs from edge to edge, so a piece pays for the roll's width. */
function sheetCost(
  along: number,
  across: number,
  sheets: readonly Sheet[],
  { linerArea, layLiner }: UnitPrices,
): number {
  let least = Infinity;
  for (const { width, price } of sheets) {
    if (across <= width + 1e-9) least = Math.min(least, along * width * (price + layLiner));
    if (along <= width + 1e-9) least = Math.min(least, across * width * (price + layLiner));
  }
  // No roll is wide enough: it is seamed, and some of it is waste.
  return least < Infinity ? least : SEAMED * along * across * (linerArea + layLiner);
}

function costOf(candidate: Candidate, wish: BasinWish, prices: UnitPrices): number {
  const { length, width, depth, along, across, module, tub } = candidate;
  const floor = length * width;
  const cover = floor * wish.coverDepth * wish.gravelDensity * (1 + wish.waste);
  const dug = prices.dig * floor * (depth + wish.dugAbove) + prices.beddingVolume * floor * 0.05;
  if (tub) return dug + cover * prices.gravel + (tub.price + prices.setTub(tub.volume));
  const block = along * across * depth;
  const stone = Math.max(0, floor * depth - (block + WELL_AREA * depth)) * wish.stoneDensity * (1 + wish.waste);
  const modules = module
    ? Math.round(block / (module.length * module.width * module.height)) * (module.price + prices.setModule)
    : 0;
  return (
    dug +
    sheetsCost(candidate, wish, prices) +
    stone * prices.stone +
    prices.haulStone(stone) +
    cover * prices.gravel +
    modules +
    prices.well
  );
}

/** Liner and fabric, cut to size. */
function sheetsCost({ length, width, depth }: Candidate, wish: BasinWish, prices: UnitPrices): number {
  const cut = (side: number): number =>
    Math.ceil((side + 2 * (depth + wish.overlap)) / wish.cutRounding - 1e-9) * wish.cutRounding;
  const [along, across] = [cut(length), cut(width)];
  return sheetCost(along, across, wish.sheets, prices) + along * across * wish.fabricLayers * prices.fabricArea;
}
