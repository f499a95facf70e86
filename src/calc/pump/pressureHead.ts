import { GRAVITY } from "../pipe/friction";
import { USUAL_WATER_TEMPERATURE, waterDensity } from "../pipe/waterProperties";
import { requireRange } from "../problem";

/** Pressures above the air's, Pa: from full suction to what a pipe of this trade bears. */
export const PRESSURE_RANGE = { min: -101_325, max: 2_000_000 } as const;

/**
 * Head of water that a gauge's pressure stands for: h = p / (ρ g).
 *
 * @param pressure p above the air's, Pa, -101325 to 2000000; below zero is suction
 * @param temperature of the water, °C, 0 to 40
 * @returns m
 * @throws Problem outside these ranges
 * @example pressureHead(98_066.5, 4) => 10.000; 98,066.5 / (999.97 × 9.80665)
 *
 * Source: hydrostatics, any hydraulics text; density as `waterDensity`.
 */
export function pressureHead(pressure: number, temperature = USUAL_WATER_TEMPERATURE): number {
  requireRange("pressure", pressure, PRESSURE_RANGE.min, PRESSURE_RANGE.max, "Pa");
  return pressure / (waterDensity(temperature) * GRAVITY);
}
