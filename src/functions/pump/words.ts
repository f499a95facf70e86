import { fromInside, unitLabel, type Measure } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { DutyPoint } from "../../calc/pump/duty";

/** The caution beside everything that leads to an electric pump in a basin. */
export const ELECTRIC_CAUTION =
  "Line voltage near water kills. Every circuit that feeds the pump needs ground-fault protection (GFCI, RCD) " +
  "and belongs to a licensed electrician.";

/** How far to trust a curve that is read between its points. */
export const CURVE_LIMITS =
  "The curve bends between its points as they do and never rises. On smooth curves the flow comes out 0.7% off on average " +
  "with three points (6.5% too little to 2% too much), 0.1% with five (1.3% too little to 0.6% too much). " +
  "Makers hold their curves within 5 to 10%.";

/** What pumps side by side share. */
export const PARALLEL_LIMITS =
  "Pumps side by side are alike, run at one speed, share the route and have a riser each. Each needs its own check valve: " +
  "without one a pump that stops lets the other's water run back through it.";

/** A value in the user's units to three digits, as a verdict is read: "617 gph". */
export function roughly(measure: Measure, inside: number, system: UnitSystem): string {
  return `${Number(fromInside(measure, inside, system).toPrecision(3))} ${unitLabel(measure, system)}`;
}

/** How a pump does, in one word or two. */
export function dutyState(duty: DutyPoint, wanted: number | undefined): string {
  if (duty.state !== "delivers" || wanted === undefined) return duty.state;
  return meets(duty, wanted) ? "meets the flow" : "flow short";
}

/** How a pump does, in a sentence. `lastKnown` is the flow where the curve of all pumps ends. */
export function dutyVerdict(
  duty: DutyPoint,
  wanted: number | undefined,
  lift: number,
  lastKnown: number,
  system: UnitSystem,
): string {
  const { state, flow, head } = duty;
  const hint = unitHint(wanted, lastKnown, system);
  if (state === "cannot lift") {
    return `Cannot lift: its shut-off head of ${roughly("head", head, system)} is not above the lift of ${roughly("head", lift, system)}.`;
  }
  if (state === "off its curve") {
    return (
      `Runs off its curve, which ends at ${roughly("flow", flow, system)} and ${roughly("head", head, system)}; ` +
      `the true flow is more than that and not known.${hint}`
    );
  }
  if (wanted === undefined) return `Delivers ${roughly("flow", flow, system)}.`;
  const share = Math.round(Math.abs(flow / wanted - 1) * 100);
  const difference = `${roughly("flow", Math.abs(flow - wanted), system)} (${share}%)`;
  return meets(duty, wanted) ? `Meets the flow with ${difference} to spare.` : `Short by ${difference}.${hint}`;
}

function meets(duty: DutyPoint, wanted: number): boolean {
  return duty.flow >= wanted * (1 - 1e-6);
}

/** Flows 20 times too small beside the wanted one were almost always read off in another unit. */
function unitHint(wanted: number | undefined, lastKnown: number, system: UnitSystem): string {
  if (wanted === undefined || wanted < 20 * lastKnown) return "";
  return system === "US"
    ? " Its flows look far too small: gpm typed as gph?"
    : " Its flows look far too small: L/min or m³/h typed as L/h?";
}
