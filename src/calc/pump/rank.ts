import { toCents } from "../money/cents";
import { pipeSpeed } from "../pipe/friction";
import type { System } from "../pipe/route";
import { Problem } from "../problem";
import { makeCurve, type CurvePoint } from "./curve";
import { dutyPoint, type DutyPoint } from "./duty";
import { overYears, runCostCents, type Running } from "./power";

/** A pump on offer. */
export interface PumpOffer {
  readonly name: string;
  /** Money. */
  readonly price: number;
  readonly watts: number;
  readonly points: readonly CurvePoint[];
}

/** Years a purchase may be reckoned over. */
export const YEARS_RANGE = { min: 0, max: 50 } as const;

/** How a pump does on a system. Money in cents. */
export interface RankedPump {
  readonly offer: PumpOffer;
  /** Undefined when the curve is not usable; then `fault` says why. */
  readonly duty: DutyPoint | undefined;
  readonly fault: string;
  readonly meets: boolean;
  readonly energyCents: number;
  readonly ownCents: number;
}

/**
 * Pumps that deliver the wanted flow through a system, the cheapest to own first; then the others, the one that
 * delivers most first. Cost to own = price + years × yearly electricity; each yearly cost is rounded to the cent.
 * A pump that runs off the end of its curve does not count as meeting the flow: what it does there is not known.
 *
 * @param wanted m³/s, above 0
 * @param years 0 to 50
 * A pump whose curve is not usable comes last with the reason, so that one typing error does not hide the others.
 *
 * @throws Problem for running hours, tariff and the like outside RUNNING_RANGE
 */
export function rankPumps(
  offers: readonly PumpOffer[],
  wanted: number,
  system: System,
  running: Running,
  years: number,
): RankedPump[] {
  const ranked = offers.map((offer): RankedPump => {
    const { duty, fault } = tryDuty(offer, system);
    const energyCents = runCostCents(offer.watts, running);
    return {
      offer,
      duty,
      fault,
      // The solver's last digit must not decide.
      meets: duty?.state === "delivers" && duty.flow >= wanted * (1 - 1e-6),
      energyCents,
      ownCents: toCents(offer.price) + overYears(energyCents, years),
    };
  });
  return ranked.sort((a, b) => {
    if (a.meets !== b.meets) return a.meets ? -1 : 1;
    return a.meets ? a.ownCents - b.ownCents : (b.duty?.flow ?? -1) - (a.duty?.flow ?? -1);
  });
}

function tryDuty(offer: PumpOffer, system: System): Pick<RankedPump, "duty" | "fault"> {
  try {
    return { duty: dutyPoint(makeCurve(offer.points), system), fault: "" };
  } catch (error) {
    if (error instanceof Problem) return { duty: undefined, fault: error.message };
    throw error;
  }
}

/** The speed in the fastest pipe of a system, m/s. */
export function fastestSpeed(system: System, flow: number): number {
  return system.pipes.reduce((most, { pipe }) => Math.max(most, pipeSpeed(flow, pipe.bore)), 0);
}
