import { CENT_DIGITS, fromCents } from "../../calc/money/cents";
import { lastFlow, makeCurve, pumpHead, type PumpCurve } from "../../calc/pump/curve";
import { runCostCents, RUNNING_RANGE, type Running } from "../../calc/pump/power";
import { attempt, isKnown } from "../derived";
import type { OfferedPump } from "./offers";

/** One pump, or several of it side by side, at the wanted flow: what neither pipe nor basin changes. */
export interface PumpSet {
  readonly pump: OfferedPump;
  readonly count: number;
  readonly curve: PumpCurve;
  /** At its share of the wanted flow, m; 0 past the end of its curve. */
  readonly head: number;
  /** Pumps and electricity over the years. */
  readonly ownCost: number;
}

/** What pumps are looked at for. */
export interface SetWish {
  readonly flow: number;
  readonly running: Running;
  readonly years: number;
  /** Behind the point, where the smallest unit of the currency is no cent. */
  readonly digits?: number;
  /** How many side by side, where somebody has typed it. */
  readonly count?: number;
}

/** How many side by side are tried. */
const COUNTS = [1, 2, 3] as const;

export function countsFor({ count }: Pick<SetWish, "count">): readonly number[] {
  return count === undefined ? COUNTS : [count];
}

/** Of each pump with a curve as many side by side as could make sense, the fewest first. */
export function pumpSets(wish: SetWish, pumps: readonly OfferedPump[]): PumpSet[][] {
  return pumps.flatMap((pump) => {
    const curve = curveOf(pump);
    return curve ? [countsFor(wish).flatMap((count) => setOf(wish, pump, curve, count))] : [];
  });
}

function setOf(
  { flow, running, years, digits = CENT_DIGITS }: SetWish,
  pump: OfferedPump,
  curve: PumpCurve,
  count: number,
): PumpSet[] {
  const watts = count * pump.watts;
  if (watts > RUNNING_RANGE.watts.max) return [];
  const each = flow / count;
  const head = each > lastFlow(curve) ? 0 : pumpHead(curve, each);
  const ownCost = count * pump.price + years * fromCents(runCostCents(watts, running, digits), digits);
  return [{ pump, count, curve, head, ownCost }];
}

const curves = new WeakMap<OfferedPump, PumpCurve | null>();

/** The curve of a pump, made once; undefined where its points are no curve. */
function curveOf(pump: OfferedPump): PumpCurve | undefined {
  const known = curves.get(pump);
  if (known !== undefined) return known ?? undefined;
  const made = attempt(() => makeCurve(pump.points));
  const curve = isKnown(made) ? made : null;
  curves.set(pump, curve);
  return curve ?? undefined;
}
