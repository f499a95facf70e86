import { CENT_DIGITS, lineCents } from "../money/cents";
import { invalid, plain } from "../problem";
import { pipeSpeed } from "../pipe/friction";
import { makeSystem, type RouteOptions, type RoutePipe } from "../pipe/route";
import { RUNNING_RANGE, overYears, pumpWatts, runCostCents, type Running } from "./power";

/** Speed limits that can be asked for, m/s. */
export const SPEED_LIMIT_RANGE = { min: 0, max: 9 } as const;

/** A pipe on offer for the whole length. */
export interface PipeOffer extends RoutePipe {
  /** Money per m. */
  readonly pricePerMetre: number;
}

/** What a pipe does and costs. Money in cents. */
export interface RankedPipe {
  readonly offer: PipeOffer;
  /** m/s */
  readonly speed: number;
  readonly tooFast: boolean;
  /** m */
  readonly head: number;
  readonly watts: number;
  readonly pipeCents: number;
  readonly energyCents: number;
  readonly ownCents: number;
}

/** What pipes are compared by. */
export interface PipeTerms extends RouteOptions {
  /** Wire to water, above 0 to 1. */
  readonly efficiency: number;
  readonly running: Running;
  /** 0 to 50 */
  readonly years: number;
  /** m/s, above 0 */
  readonly speedLimit: number;
  /** Behind the point, where the smallest unit of the currency is no cent. */
  readonly digits?: number;
}

/**
 * Pipe sizes for a flow, those within the speed limit first and among them the cheapest over the years:
 * pipe + years × electricity of a pump that gives just the head this pipe needs; each amount is rounded to the smallest
 * unit of the currency.
 *
 * @param flow m³/s, above 0
 * @param lift m
 * @throws Problem for values outside the ranges of makeSystem, pumpWatts and runCostCents
 * @example rankPipes([{ pipe: findPipe({ size: 0.05, isBore: true }, "Bore"), length: 10, k: 0, pricePerMetre: 3 }],
 *   0.002, 2, { efficiency: 0.5, running: { hoursPerDay: 12, daysPerYear: 200, tariff: 0.15 }, years: 5, speedLimit:
 *   1.5 })[0].pipeCents => 3000; 10 m at 3
 */
export function rankPipes(
  offers: readonly PipeOffer[],
  flow: number,
  lift: number,
  { efficiency, running, years, speedLimit, digits = CENT_DIGITS, ...options }: PipeTerms,
): RankedPipe[] {
  const ranked = offers.map((offer): RankedPipe => {
    const head = makeSystem(lift, [offer], options).headAt(flow);
    const speed = pipeSpeed(flow, offer.pipe.bore);
    const watts = pumpWatts(flow, head, efficiency);
    const pipeCents = lineCents(offer.length, offer.pricePerMetre, "price of the pipe", digits);
    if (watts > RUNNING_RANGE.watts.max) {
      throw invalid(`flow through ${offer.pipe.label} would take ${plain(watts)} W; leave that size out of pipes`);
    }
    const energyCents = runCostCents(watts, running, digits);
    return {
      offer,
      speed,
      tooFast: speed > speedLimit * (1 + 1e-9),
      head,
      watts,
      pipeCents,
      energyCents,
      ownCents: pipeCents + overYears(energyCents, years, digits),
    };
  });
  return ranked.sort((a, b) => {
    if (a.tooFast !== b.tooFast) return a.tooFast ? 1 : -1;
    return a.tooFast ? a.speed - b.speed : a.ownCents - b.ownCents;
  });
}
