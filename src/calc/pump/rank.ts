import { CENT_DIGITS, toCents } from "../money/cents";
import type { System } from "../pipe/route";
import { Problem } from "../problem";
import { makeCurve, type CurvePoint } from "./curve";
import { dutyPoint, PARALLEL_PUMPS, type DutyPoint } from "./duty";
import { overYears, RUNNING_RANGE, runCostCents, type Running } from "./power";

/** A pump on offer. */
export interface PumpOffer {
  readonly name: string;
  /** Money. */
  readonly price: number;
  readonly watts: number;
  readonly points: readonly CurvePoint[];
}

/** Years a purchase may be calculated over. */
export const YEARS_RANGE = { min: 0, max: 50 } as const;

/** Pumps of one kind side by side that a ranking tries. */
export const RANKED_PUMPS = { usual: 3, min: 1, max: PARALLEL_PUMPS.max } as const;

/** How a pump, or several of it side by side, do on a system. Money in cents. */
export interface RankedPump {
  readonly offer: PumpOffer;
  /** How many side by side. */
  readonly pumps: number;
  /** Undefined when the curve is not usable; then `fault` says why. */
  readonly duty: DutyPoint | undefined;
  readonly fault: string;
  readonly meets: boolean;
  readonly energyCents: number;
  readonly ownCents: number;
}

/** What pumps are compared by. */
export interface RankTerms {
  readonly running: Running;
  /** 0 to 50 */
  readonly years: number;
  /** Most pumps of one kind side by side that are tried; 1 to 12. */
  readonly most: number;
  /** Behind the point, where the smallest unit of the currency is no cent. */
  readonly digits?: number;
}

/**
 * Pumps that deliver the wanted flow through a system, the cheapest to own first; then the others, the one that
 * delivers most first. Of each pump as many stand side by side as the flow needs, up to the most that are tried; where
 * none of these meets it, as many as deliver most. Cost to own = pumps × price + years × yearly electricity of
 * all; each yearly cost is rounded to the cent.
 * A pump that runs off the end of its curve does not count as meeting the flow: what it does there is not known.
 * A pump whose curve is not usable comes last with the reason, so that one typing error does not hide the others.
 *
 * @param wanted m³/s, above 0
 * @throws Problem for running hours, tariff and the like outside RUNNING_RANGE
 * @example rankPumps([{ name: "Low", price: 100, watts: 90, points: [{ flow: 0, head: 2 }, { flow: 0.002, head: 1 }]
 *   }, { name: "High", price: 200, watts: 150, points: [{ flow: 0, head: 6 }, { flow: 0.002, head: 4 }] }], 0.001,
 *   makeSystem(3, [{ pipe: findPipe({ size: 0.05, isBore: true }, "Bore"), length: 10, k: 1 }]), { running: {
 *   hoursPerDay: 12, daysPerYear: 200, tariff: 0.15 }, years: 5, most: 1 })[0].offer.name => "High"; the other lifts
 *   2 m of 3
 */
export function rankPumps(
  offers: readonly PumpOffer[],
  wanted: number,
  system: System,
  { running, years, most, digits = CENT_DIGITS }: RankTerms,
): RankedPump[] {
  const ranked = offers.map((offer): RankedPump => {
    // More of a pump than the running cost can be calculated for are not tried.
    const few = Math.max(1, Math.min(most, Math.floor(RUNNING_RANGE.watts.max / offer.watts)));
    const { pumps, duty, fault } = asMany(offer, wanted, system, few);
    const energyCents = runCostCents(pumps * offer.watts, running, digits);
    const meets = meetsFlow(duty, wanted);
    const ownCents = pumps * toCents(offer.price, "price", digits) + overYears(energyCents, years, digits);
    return { offer, pumps, duty, fault, meets, energyCents, ownCents };
  });
  return ranked.sort((a, b) => {
    if (a.meets !== b.meets) return a.meets ? -1 : 1;
    return a.meets ? a.ownCents - b.ownCents : (b.duty?.flow ?? -1) - (a.duty?.flow ?? -1);
  });
}

function meetsFlow(duty: DutyPoint | undefined, wanted: number): boolean {
  // The solver's last digit must not decide.
  return duty?.state === "delivers" && duty.flow >= wanted * (1 - 1e-6);
}

/** The fewest of a pump that meet the flow, else those that deliver most: more of the same cost more in every way. */
function asMany(
  offer: PumpOffer,
  wanted: number,
  system: System,
  most: number,
): Pick<RankedPump, "pumps" | "duty" | "fault"> {
  try {
    const curve = makeCurve(offer.points);
    let best = { pumps: 1, duty: dutyPoint(curve, system, 1) };
    for (let pumps = 2; pumps <= most && !meetsFlow(best.duty, wanted); pumps++) {
      const duty = dutyPoint(curve, system, pumps);
      if (meetsFlow(duty, wanted) || isBetter(duty, best.duty)) best = { pumps, duty };
    }
    return { ...best, fault: "" };
  } catch (error) {
    if (error instanceof Problem) return { pumps: 1, duty: undefined, fault: error.message };
    throw error;
  }
}

/** More flow, or a flow that is known in place of one off the curve. */
function isBetter(duty: DutyPoint, best: DutyPoint): boolean {
  if ((duty.state === "delivers") !== (best.state === "delivers")) return duty.state === "delivers";
  return duty.flow > best.flow * (1 + 1e-6);
}
