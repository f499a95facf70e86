import {
  boulderFaceWeight,
  boulderWeight,
  boulderWeightRange,
  USUAL_SHAPE,
  USUAL_SOLID_SHARE,
} from "../calc/stone/boulder";
import { gravelWeight, stoneWeight } from "../calc/stone/bulk";
import { readDensityRange, type Density, type DensityKind } from "../calc/stone/density";
import { boulderMix, type MixPart } from "../calc/stone/mix";
import type { Basin } from "./basin";
import type { Job } from "./facts";
import { isKnown, known, derive, type Derived } from "./derived";
import { filledRows, needed, total, wholeUp } from "./rows";
import { MOST_DROPS, type Water } from "./water";

/** A stone face; m, m², kg. */
export interface Face {
  readonly length: number | undefined;
  readonly height: number | undefined;
  readonly area: number | undefined;
  /** Its share of the boulders. */
  readonly weight: Derived<number>;
}

/** Stone by weight, and how it comes. SI: kg, m, m³. */
export interface Stone {
  readonly dropFaces: readonly Face[];
  readonly bankFaces: readonly Face[];
  readonly dropStone: Derived<number>;
  readonly bankStone: Derived<number>;
  readonly boulders: Derived<number>;
  readonly lipStoneWeight: Derived<number>;
  /** The most one can weigh, which its lift is planned for. */
  readonly lipStoneHeavy: Derived<number>;
  readonly lipStoneCount: Derived<number>;
  readonly lipStones: Derived<number>;
  readonly sizes: Derived<readonly MixPart[]>;
  /** Heaviest stone of the job, at its heaviest. */
  readonly heaviest: Derived<number>;
  readonly bedArea: Derived<number>;
  readonly bedGravel: Derived<number>;
  readonly coverGravel: Derived<number>;
  readonly gravel: Derived<number>;
  readonly basinStone: Derived<number>;
  readonly orders: readonly StoneOrder[];
  readonly truckloads: Derived<number>;
}

/** One stone as it can be ordered. */
export interface StoneOrder {
  readonly weight: Derived<number>;
  /** Loose volume, for what is bought by volume. */
  readonly volume: Derived<number>;
  readonly bags: Derived<number>;
  readonly pallets: Derived<number>;
  readonly loads: Derived<number>;
}

export function deriveStone(job: Job, water: Water, basin: Basin): Stone {
  const { dropReach, bankReach, stoneWaste: waste = 0 } = job;
  const rock = (): Density => densityOf(job, "rock", job.rockFigure ?? job.rock ?? "fieldstone");
  const loose = (name: string | undefined): number => densityOf(job, "stone", name ?? "washed gravel").usual;
  const face = (length: number, height: number, reach: number): number =>
    boulderFaceWeight(length, height, reach, rock().usual, job.solidShare ?? USUAL_SOLID_SHARE, waste);

  const drops = dropFaces(job, water);
  const dropStone = derive(
    [areasOf(drops.filter(({ height }) => height !== undefined)), dropReach, job.solidShare],
    (areas, reach) => {
      const fallen = total(drops.map(({ height = 0 }) => height));
      return face(quotient(total(areas), fallen), fallen, reach);
    },
  );
  const banks = bankFaces(job, known(water.fall));
  const bankStone = derive([areasOf(banks), bankReach, job.solidShare], (areas, reach) => {
    const along = total(banks.map(({ length = 0 }) => length));
    return face(along, quotient(total(areas), along), reach);
  });
  const boulders = derive([dropStone, bankStone], (a, b) => a + b);

  const bedArea = derive([job.bedWidth, job.run], (width, run) => width * run);
  const gravelUsed = job.gravelFigure ?? job.gravel;
  const layer = (area: Derived<number>, depth: number | undefined): Derived<number> =>
    derive([area, depth], (covered, deep) => gravelWeight(covered, deep, loose(gravelUsed), waste));
  const bedGravel = layer(bedArea, job.bedGravelDepth);
  const coverGravel = layer(basin.footprint, job.coverDepth);
  const gravel = derive([bedGravel, coverGravel], (a, b) => a + b);
  const basinStone = derive([basin.stoneVolume], (volume) => stoneWeight(volume, loose(job.basinStone), waste));

  const box = [job.lipStoneLength, job.lipStoneWidth, job.lipStoneHeight] as const;
  const lipStoneWeight = derive(box, (length, width, height) =>
    boulderWeight(length, width, height, rock().usual, job.lipStoneShape ?? USUAL_SHAPE),
  );
  const lipStoneHeavy = derive(box, (length, width, height) => boulderWeightRange(length, width, height, rock()).heavy);
  const lipStoneCount = derive([anyOf(water.drops), job.lipStonesPerDrop], (given, each) => each * given.length);
  const lipStones = derive([lipStoneCount, lipStoneWeight], (count, each) => count * each);

  const sizes = sizesOf(job, boulders, rock);
  const gravelVolume = derive(
    [bedArea, job.bedGravelDepth, basin.footprint, job.coverDepth],
    (bed, bedDepth, cover, coverDepth) => (bed * bedDepth + cover * coverDepth) * (1 + waste),
  );
  const orders = [
    orderOf(job, gravel, gravelVolume),
    orderOf(
      job,
      basinStone,
      derive([basin.stoneVolume], (volume) => volume * (1 + waste)),
    ),
    orderOf(job, boulders),
    orderOf(job, lipStones),
  ];
  return {
    dropFaces: shared(drops, dropStone),
    bankFaces: shared(banks, bankStone),
    dropStone,
    bankStone,
    boulders,
    lipStoneWeight,
    lipStoneHeavy,
    lipStoneCount,
    lipStones,
    sizes,
    heaviest: heaviestOf(job, sizes, lipStoneHeavy),
    bedArea,
    bedGravel,
    coverGravel,
    gravel,
    basinStone,
    orders,
    truckloads: derive(
      [gravel, basinStone, boulders, lipStones, job.truckPayload],
      (small, filling, big, lips, truck) =>
        wholeUp(small / truck) + wholeUp(filling / truck) + wholeUp((big + lips) / truck),
    ),
  };
}

function densityOf({ system }: Job, kind: DensityKind, written: string): Density {
  return readDensityRange(kind, written, system, kind);
}

function quotient(a: number, b: number): number {
  return b === 0 ? NaN : a / b;
}

/** The numbers among values, where there is one. */
function anyOf(values: readonly (number | undefined)[]): number[] | undefined {
  const given = values.filter(isKnown);
  return given.length === 0 ? undefined : given;
}

type BareFace = Omit<Face, "weight">;

function dropFaces(job: Job, { drops }: Water): BareFace[] {
  return Array.from({ length: MOST_DROPS }, (_, index) => {
    const height = drops[index];
    const typed = job.dropFaces[index]?.width;
    const length = typed === undefined ? (height === undefined ? undefined : job.bedWidth) : (typed ?? undefined);
    return { length, height, area: areaOf(length, height) };
  });
}

function bankFaces({ run, bankHeight, bankFaces: typed }: Job, fall: number | undefined): BareFace[] {
  return [0, 1].map((index) => {
    const { length: ownLength, height: ownHeight } = typed[index] ?? {};
    const along = run === undefined || fall === undefined ? undefined : run + fall;
    const length = ownLength === undefined ? along : (ownLength ?? undefined);
    const height = ownHeight === undefined ? bankHeight : (ownHeight ?? undefined);
    return { length, height, area: areaOf(length, height) };
  });
}

function areaOf(length: number | undefined, height: number | undefined): number | undefined {
  return length === undefined || height === undefined ? undefined : length * height;
}

/** The areas of all faces; nothing while one is told in part, whose stones the sum would leave out. */
function areasOf(faces: readonly BareFace[]): number[] | undefined {
  const inPart = faces.some(({ length, height, area }) => (length ?? height) !== undefined && area === undefined);
  return inPart ? undefined : anyOf(faces.map(({ area }) => area));
}

/** Hands the weight of all faces out by their areas. */
function shared(faces: readonly BareFace[], weight: Derived<number>): Face[] {
  const whole = total(faces.map(({ area = 0 }) => area));
  return faces.map((face) => ({
    ...face,
    weight: derive([weight, face.area], (all, area) => (area > 0 ? (all * area) / whole : 0)),
  }));
}

function sizesOf(job: Job, boulders: Derived<number>, rock: () => Density): Stone["sizes"] {
  if (!job.boulderSizes.some(({ size }) => size !== undefined)) return undefined;
  return derive([boulders], (weight) => {
    const mix = filledRows(job.boulderSizes).map(({ size, share, row }) => ({
      size: needed(size, "sizes", row, "size"),
      share: needed(share, "sizes", row, "share"),
    }));
    return boulderMix(
      weight,
      mix,
      rock(),
      job.handLimit ?? USUAL_HAND_LIMIT[job.system],
      job.boulderShape ?? USUAL_SHAPE,
    );
  });
}

function heaviestOf(job: Job, sizes: Stone["sizes"], lipStone: Derived<number>): Derived<number> {
  const ofSizes = derive([sizes], (parts) => Math.max(...parts.map(({ heavy }) => heavy)));
  return (job.lipStonesPerDrop ?? 0) === 0 ? ofSizes : derive([ofSizes, lipStone], (a, b) => Math.max(a, b));
}

/** What a blank hand limit stands for, kg: 50 lb or 23 kg. */
const USUAL_HAND_LIMIT = { US: 50 * 0.45359237, SI: 23 } as const;

function orderOf(job: Job, weight: Derived<number>, volume?: Derived<number>): StoneOrder {
  const by = (one: number | undefined): Derived<number> => derive([weight, one], (all, each) => wholeUp(all / each));
  return {
    weight,
    volume: isKnown(known(weight)) ? volume : undefined,
    bags: volume === undefined ? undefined : by(job.bagWeight),
    pallets: by(job.palletLoad),
    loads: derive([weight, job.truckPayload], (all, truck) => all / truck),
  };
}
