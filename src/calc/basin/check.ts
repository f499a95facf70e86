import { requireRange } from "../problem";
import { BASIN_RANGE } from "./hold";

/** What a basin must do; water in m³. */
export interface BasinDuty {
  /** Water from the bottom to the overflow. */
  readonly hold: number;
  /** Water that runs back when the pump stops. */
  readonly drainBack: number;
  /** Water that must stay over the pump's inlet. */
  readonly lowWater: number;
  /** Evaporation and splash. */
  readonly lossPerDay: number;
  /** Days without topping up. */
  readonly days: number;
  /** Area of the basin near its full level, m²; with the void fraction there, gives the level drop. */
  readonly footprint: number | undefined;
  readonly voidFraction: number;
}

export interface BasinVerdict {
  /** drain-back + low water + loss × days, m³ */
  readonly need: number;
  /** hold - need, m³ */
  readonly margin: number;
  /** How far the water sinks when the pump fills the stream, m; undefined without a footprint. */
  readonly drop: number | undefined;
  /** Days of running until the pump sucks air; undefined when nothing is lost. 0: at once. */
  readonly daysToAir: number | undefined;
  /** Water that spills when the pump stops, m³: running needs more than the basin holds. */
  readonly overflow: number;
}

/** What the calculation accepts: m³, m³/day, days, m². */
export const BASIN_DUTY_RANGE = {
  water: { min: 0, max: 100_000 },
  loss: { min: 0, max: 10_000 },
  days: { min: 0, max: 366 },
  footprint: { min: 0.01, max: 250_000 },
} as const;

/**
 * Whether a basin can feed its stream: need = drain-back + low water + loss × days against what it holds.
 *
 * Starting lowers the water by drain-back / (footprint × void fraction): lift is counted from there.
 * The pump sucks air after (hold - drain-back - low water) / loss days of running.
 * Filled to the overflow with the pump off, it spills nothing on stopping; only where drain-back + low water exceed
 * the hold must so much water be added while it runs that the rest spills when it stops.
 *
 * @throws Problem for a value outside BASIN_DUTY_RANGE
 * @example basinCheck({ hold: 2, drainBack: 0.6, lowWater: 0.5, lossPerDay: 0.05, days: 10, footprint: 4,
 *   voidFraction: 0.5 }).margin => 0.4; 2 - (0.6 + 0.5 + 0.05 × 10)
 *
 * Source: balance of water; common practice for what a basin must hold.
 */
export function basinCheck(duty: BasinDuty): BasinVerdict {
  const { water, loss, days: dayRange, footprint: area } = BASIN_DUTY_RANGE;
  const { hold, drainBack, lowWater, lossPerDay, days, footprint, voidFraction } = duty;
  requireRange("hold", hold, water.min, water.max, "m³");
  requireRange("drainback", drainBack, water.min, water.max, "m³");
  requireRange("low water", lowWater, water.min, water.max, "m³");
  requireRange("loss per day", lossPerDay, loss.min, loss.max, "m³");
  requireRange("days", days, dayRange.min, dayRange.max);
  if (footprint !== undefined) requireRange("footprint", footprint, area.min, area.max, "m²");
  requireRange("void fraction", voidFraction, BASIN_RANGE.voidFraction.min, BASIN_RANGE.voidFraction.max);

  const running = hold - drainBack - lowWater;
  const need = drainBack + lowWater + lossPerDay * days;
  return {
    need,
    margin: hold - need,
    drop: footprint === undefined ? undefined : drainBack / (footprint * voidFraction),
    daysToAir: running <= 0 ? 0 : lossPerDay === 0 ? undefined : running / lossPerDay,
    overflow: Math.max(0, -running),
  };
}
