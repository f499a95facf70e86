import { cutPlan } from "../calc/liner/cutplan/plan";
import type { Plan, PlanRequest } from "../calc/liner/cutplan/request";
import { tapeFor } from "../calc/liner/cutplan/seams";
import { fabricCut, type FabricCut } from "../calc/liner/fabric";
import { fallCut } from "../calc/liner/fall";
import { linerCut, type SheetCut } from "../calc/liner/liner";
import { USUAL_LINER_WEIGHT } from "../calc/tables/sheets";
import { toInside } from "../calc/quantity/measures";
import { tubsAsPit } from "./basin";
import type { Job } from "./facts";
import { wasShot, type Ground } from "./ground";
import { moneyDigits } from "./money";
import { from, isKnown, known, derive, type Derived } from "./derived";
import { filledRows, mostOf, needed, sumOf, total, wholeUp } from "./rows";
import type { Water } from "./water";

/** Pieces that the plan has room for. */
export const MOST_PIECES = 8;

/** A piece to cut; m. */
export interface LinerPiece {
  readonly name: string | undefined;
  readonly length: Derived<number>;
  readonly width: Derived<number>;
  readonly count: number | undefined;
  /** kg */
  readonly weight: Derived<number>;
  /** Whether it comes off one sheet, unturned if it must. */
  readonly fits: boolean | undefined;
}

/** Liner and fabric: what to cut, what to buy, what to carry. SI. */
export interface Liner {
  readonly streamCut: Derived<SheetCut>;
  readonly basinCut: Derived<SheetCut>;
  readonly pieces: readonly LinerPiece[];
  /** Rows with a length; unknown while the stream's or the basin's is still to be worked out. */
  readonly pieceCount: Derived<number>;
  /** Pieces and rolls that are not told in full: without one the plan is not the whole price. */
  readonly gaps: number;
  readonly plan: Derived<Plan>;
  readonly buyLength: Derived<number>;
  readonly buyArea: Derived<number>;
  readonly cost: Derived<number>;
  readonly wasteShare: Derived<number>;
  readonly seamTape: Derived<number>;
  readonly streamFabric: Derived<FabricCut>;
  readonly basinFabric: Derived<FabricCut>;
  readonly skirtFabric: Derived<number>;
  readonly fabricArea: Derived<number>;
  readonly fabricLength: Derived<number>;
  readonly fabricWeight: Derived<number>;
  /** kg/m² */
  readonly weight: Derived<number>;
  readonly heaviestPiece: Derived<number>;
  readonly carriers: Derived<number>;
}

/** What a blank allowance stands for, m. Common practice, no source. */
const usual = {
  overlap: { US: toInside("length", 1, "US"), SI: 0.3 },
  slack: { US: toInside("length", 0.25, "US"), SI: 0.08 },
  rounding: { US: toInside("length", 0.5, "US"), SI: 0.1 },
  fabricLap: { US: toInside("length", 1, "US"), SI: 0.3 },
} as const;

/** Thickness that the usual liner's weight is for, m: 45 mil. */
const USUAL_THICKNESS = 45 * 0.0254e-3;

export function deriveLiner(job: Job, water: Water, ground: Ground): Liner {
  const { system, fabricRollWidth } = job;
  const layers = (job.fabricUnder ?? 0) + (job.fabricOver ?? 0);
  const weight = derive([job.linerThickness], (thickness) => (USUAL_LINER_WEIGHT * thickness) / USUAL_THICKNESS);
  const cuts = [streamCut(job, water), basinCut(job)];
  const below = tubsAsPit(job) > 0 ? undefined : cuts[1];
  // By station once the ground was shot; until then the rectangle over drops and treads.
  const stream = wasShot(ground) ? byStation(ground) : cuts[0];
  const pieces = piecesOf(job, [stream, below], weight);
  const pieceCount = countOf(job, pieces);
  const plan = planOf(job, pieces, pieceCount);
  const buyArea = from(plan, ({ area }) => area);
  const strips = (piece: LinerPiece | undefined): Derived<FabricCut> =>
    layers === 0
      ? undefined
      : derive([piece?.length, piece?.width], (length, width) =>
          fabricCut(
            length,
            width,
            needed(fabricRollWidth, "fabric", 1, "roll width"),
            job.fabricLap ?? usual.fabricLap[system],
            layers,
          ),
        );
  const [streamFabric, basinFabric] = [strips(pieces[0]), strips(pieces[1])];
  const skirtFabric = derive([pieceCount], () => skirts(pieces, layers));
  const areas = [known(streamFabric)?.area, known(basinFabric)?.area, skirtFabric];
  const fabricArea = derive([pieceCount], () => total(areas.filter(isKnown)));
  const heaviestPiece = derive([mostOf(pieces.map((piece) => piece.weight)), pieceCount], (heaviest) => heaviest);
  return {
    streamCut: cuts[0],
    basinCut: cuts[1],
    pieces,
    pieceCount,
    gaps: gapsIn(job, pieces),
    plan,
    buyLength: from(plan, ({ bought }) => total(bought.map(({ length }) => length))),
    buyArea,
    cost: from(plan, ({ rollCost }) => rollCost),
    wasteShare: from(plan, ({ waste, area }) => (area > 0 ? waste / area : 0)),
    seamTape: from(plan, ({ seamLength }) => tapeFor(seamLength)),
    streamFabric,
    basinFabric,
    skirtFabric,
    fabricArea,
    fabricLength: derive([fabricArea, fabricRollWidth], (area, width) => area / width),
    fabricWeight: derive([fabricArea, job.fabricMass], (area, mass) => area * mass),
    weight,
    heaviestPiece,
    carriers: derive([heaviestPiece, job.handLimit], (heaviest, limit) => wholeUp(heaviest / limit)),
  };
}

function streamCut(job: Job, { drops, treads }: Water): Derived<SheetCut> {
  const steps = (values: readonly (number | undefined)[]): Derived<number[]> => {
    const given = values.filter(isKnown);
    return given.length === 0 ? undefined : given.filter((value) => value > 0);
  };
  const needs = [steps(drops), steps(treads), job.bedWidth, job.bankHeight, job.bankReach] as const;
  return derive(needs, (heights, lengths, width, bankHeight, reach) =>
    fallCut({
      drops: heights,
      treads: lengths,
      bedWidth: width + 2 * reach,
      bankHeight,
      overlap: job.linerOverlap ?? usual.overlap[job.system],
      slackPerDrop: job.slackPerDrop ?? usual.slack[job.system],
      roundTo: job.cutRounding ?? usual.rounding[job.system],
    }),
  );
}

function byStation({ linerLength, linerWidth }: Ground): Derived<SheetCut> {
  return derive([linerLength, linerWidth], (length, width) => ({ length, width }));
}

function basinCut(job: Job): Derived<SheetCut> {
  const { basinLength, basinWidth, basinWaterDepth } = job;
  return derive([basinLength, basinWidth, basinWaterDepth], (length, width, depth) =>
    linerCut({
      length,
      width,
      depth,
      overlap: job.linerOverlap ?? usual.overlap[job.system],
      sideSlope: job.basinSideSlope ?? 0,
      roundTo: job.cutRounding ?? usual.rounding[job.system],
    }),
  );
}

/** Stream and basin as they are worked out, then what was added; over any of them stands what was typed. */
function piecesOf(job: Job, cuts: readonly Derived<SheetCut>[], weight: Derived<number>): LinerPiece[] {
  const widest = Math.max(0, ...job.rolls.map(({ width = 0 }) => width));
  return Array.from({ length: MOST_PIECES }, (_, index) => {
    const typed = job.pieces[index] ?? {};
    const cut = cuts[index];
    const side = (key: "length" | "width"): Derived<number> =>
      typed[key] === undefined ? derive([cut], (size) => size[key]) : (typed[key] ?? undefined);
    const [length, width] = [side("length"), side("width")];
    const count = typed.count === undefined ? (isKnown(length) ? 1 : undefined) : (typed.count ?? undefined);
    const both = derive([length, width], (a, b) => ({ area: a * b, least: Math.min(a, b), width: b }));
    const size = known(both);
    return {
      name: typed.name ?? undefined,
      length,
      width,
      count,
      weight: derive([both, weight], ({ area }, perArea) => area * perArea),
      fits: size && widest > 0 ? size.least <= widest || (job.linerTurn === "no" && size.width <= widest) : undefined,
    };
  });
}

/** Area of fabric for what is cut beside stream and basin, a tenth more for laps (common practice, no source). */
function gapsIn({ rolls }: Job, pieces: readonly LinerPiece[]): number {
  const isGap = (cells: readonly unknown[]): boolean =>
    cells.some((cell) => cell !== undefined) && cells.some((cell) => cell === undefined);
  return (
    pieces.filter(({ length, width, count }) => isGap([known(length), known(width), count])).length +
    rolls.filter(({ width, price, per }) => (width ?? price) !== undefined && isGap([width, price, per])).length
  );
}

function skirts(pieces: readonly LinerPiece[], layers: number): number {
  const areas = pieces
    .slice(2)
    .map(({ length, width, count = 0 }) => (known(length) ?? 0) * (known(width) ?? 0) * count);
  return 1.1 * layers * total(areas);
}

/** The pieces with a length, once stream and basin have theirs or it was taken out by hand. */
function countOf(job: Job, pieces: readonly LinerPiece[]): Derived<number> {
  const rows = tubsAsPit(job) > 0 ? [0] : [0, 1];
  const needed = rows.filter((row) => job.pieces[row]?.length === undefined).map((row) => pieces[row]?.length);
  return derive([mostOf(pieces.map(({ length }) => length)), ...needed], () => {
    return pieces.filter(({ length }) => isKnown(length)).length;
  });
}

function planOf(job: Job, pieces: readonly LinerPiece[], pieceCount: Derived<number>): Derived<Plan> {
  const anyRoll = mostOf(job.rolls.map(({ width }) => width));
  return derive([pieceCount, anyRoll], () => planned(requestOf(job, pieces)));
}

function requestOf(job: Job, pieces: readonly LinerPiece[]): PlanRequest {
  const rows = pieces.map(({ name, length, width, count }) => ({
    name,
    length: known(length),
    width: known(width),
    count,
  }));
  return {
    pieces: filledRows(rows).flatMap(({ name, length, width, count = 1, row }) =>
      Array.from({ length: count }, () => ({
        name: name ?? `Piece ${row}`,
        length: needed(length, "pieces", row, "length"),
        width: needed(width, "pieces", row, "width"),
      })),
    ),
    rolls: filledRows(job.rolls).map(({ width, price = 0, per = "length", longest = Infinity, row }) => ({
      width: needed(width, "rolls", row, "width"),
      price: per === "roll" ? price : price / toInside(per, 1, job.system),
      per,
      longest,
      row,
    })),
    turn: job.linerTurn !== "no",
    ...(job.seamLap === undefined ? {} : { seamLap: job.seamLap }),
    ...(job.seamPrice === undefined ? {} : { seamPrice: job.seamPrice / toInside("length", 1, job.system) }),
    ...(job.linerKeptPlan === undefined ? {} : { kept: job.linerKeptPlan }),
    digits: moneyDigits(job),
  };
}

/** Plans made before: while pieces and rolls are the same, so is the plan, and it takes most of the time of a job. */
const plans = new Map<string, Plan>();
/** How many are kept: what a price range goes through comes back to the same cuts, which are rounded to the tape. */
const MOST_PLANS = 200;

function planned(request: PlanRequest): Plan {
  // A roll without a limit is written as null, and nothing else is.
  const key = JSON.stringify(request);
  const known = plans.get(key);
  if (known) return known;
  const [oldest] = plans.keys();
  if (plans.size >= MOST_PLANS && oldest !== undefined) plans.delete(oldest);
  const plan = cutPlan(request);
  plans.set(key, plan);
  return plan;
}

/** How many pieces need a seam. */
export function seamedPieces({ pieces }: Liner): number {
  return pieces.filter(({ fits }) => fits === false).length;
}

/** The weight of all pieces together; for what is carried and hauled. */
export function piecesWeight({ pieces }: Liner): Derived<number> {
  return sumOf(pieces.map(({ weight, count = 1 }) => derive([weight], (each) => each * count)));
}
