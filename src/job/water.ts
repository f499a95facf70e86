import { invalid } from "../calc/problem";
import { findLipShape, lipFlow } from "../calc/water/lip";
import { splitFlow, type LipShare } from "../calc/water/split";
import type { Job } from "./facts";
import { attempt, isKnown, known, derive, type Derived } from "./derived";
import { filledRows, needed, sumOf } from "./rows";

/** Drops that a fall can have. */
export const MOST_DROPS = 12;

/** The wanted water: its flow, how the lips share it, and the steps it comes down over. SI. */
export interface Water {
  /** Flow over each lip at the wanted sheet, m³/s; by the row of the lip. */
  readonly lipFlows: readonly Derived<number>[];
  /** Flow that the wanted sheet needs, m³/s. */
  readonly lipFlow: Derived<number>;
  /** The flow everything is designed for: the user's own, or the lips'. */
  readonly designFlow: Derived<number>;
  /** What each lip gets of the design flow. */
  readonly split: Derived<readonly LipShare[]>;
  /** Deepest water over a lip at the design flow, m. */
  readonly sheetMost: Derived<number>;
  /** From the top lip down to finished grade, wherever it was measured from. */
  readonly fall: Derived<number>;
  readonly topLipLevel: Derived<number>;
  /** Height of each drop and length of the tread below it, m; undefined where there is none. */
  readonly drops: readonly (number | undefined)[];
  readonly treads: readonly (number | undefined)[];
  readonly dropTotal: Derived<number>;
  readonly treadTotal: Derived<number>;
}

export function deriveWater(job: Job): Water {
  const lipFlows = job.lips.map(({ width, level = 0 }) =>
    derive([width, job.sheetWanted], (across, sheet) =>
      sheet > level ? lipFlow(across, sheet - level, findLipShape(job.lipShape ?? "broad")) : 0,
    ),
  );
  const atSheet = sumOf(lipFlows);
  const designFlow = job.flowTyped ?? (isKnown(atSheet) ? atSheet : undefined);
  const split = splitOver(job, designFlow);
  const fall = derive([job.fallTyped, job.rimBelowGrade], (typed, rim) =>
    job.fallFrom === "rim of the basin" ? typed - rim : typed,
  );
  const drops = equalSteps(job, "drop", known(fall));
  const treads = equalSteps(job, "tread", job.run);
  return {
    lipFlows,
    lipFlow: atSheet,
    designFlow,
    split,
    sheetMost: derive([split], (shares) => Math.max(...shares.map(({ depth }) => depth))),
    fall,
    topLipLevel: derive([job.gradeLevel, fall], (grade, height) => grade + height),
    drops,
    treads,
    dropTotal: sumOf(drops),
    treadTotal: sumOf(treads),
  };
}

interface Shares {
  readonly flow: number;
  readonly shape: string;
  readonly over: Derived<readonly LipShare[]>;
}
const divided = new WeakMap<Job["lips"], Shares>();

/** How the flow divides over the lips, found once for the same lips: a draft asks for it at every step. */
function splitOver(job: Job, flow: Derived<number>): Derived<readonly LipShare[]> {
  if (!isKnown(flow) || !job.lips.some(({ width }) => width !== undefined)) return undefined;
  const shape = job.lipShape ?? "broad";
  const known = divided.get(job.lips);
  if (known?.flow === flow && known.shape === shape) return known.over;
  const over = shareOut(job.lips, flow, shape);
  divided.set(job.lips, { flow, shape, over });
  return over;
}

function shareOut(lipRows: Job["lips"], designFlow: number, shape: string): Derived<readonly LipShare[]> {
  return attempt(() => {
    if (!(designFlow > 0)) throw invalid("flow must be more than 0");
    const lips = filledRows(lipRows).map(({ width, level = 0, row }) => ({
      width: needed(width, "lips", row, "lip width"),
      level,
    }));
    return splitFlow(designFlow, lips, findLipShape(shape));
  });
}

/** Equal shares of the whole, as many as there are drops; over any of them stands what was typed. */
function equalSteps(job: Job, key: "drop" | "tread", whole: number | undefined): (number | undefined)[] {
  const count = job.dropCount;
  const steps: (number | undefined)[] = [];
  for (let index = 0; index < MOST_DROPS; index++) {
    const typed = job.drops[index]?.[key];
    const equal = whole === undefined || count === undefined || index >= count ? undefined : whole / count;
    steps.push(typed === undefined ? equal : (typed ?? undefined));
  }
  return steps;
}
