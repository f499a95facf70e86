import { requireRange } from "../problem";

const SECONDS_PER_DAY = 86_400;
/** kg/m³; the density's change with temperature is far below the equation's accuracy. */
const WATER_DENSITY = 1000;

/** Constants of the equation in its SI set: kPa, m/s, kJ/kg. The IP set is 95 and 0.425; never mix them. */
const ASHRAE_SI = { still: 0.089, perSpeed: 0.0782 } as const;

/** What the calculation accepts: m², °C, share, m/s. */
export const EVAPORATION_RANGE = {
  area: { min: 0, max: 100_000 },
  waterTemperature: { min: 0, max: 45 },
  airTemperature: { min: -30, max: 55 },
  humidity: { min: 0, max: 1 },
  wind: { min: 0, max: 20 },
} as const;

export interface EvaporationInputs {
  /** Open water surface, m². */
  readonly area: number;
  /** °C */
  readonly waterTemperature: number;
  /** °C */
  readonly airTemperature: number;
  /** Relative humidity, 0 to 1. */
  readonly humidity: number;
  /** Wind over the water, m/s. */
  readonly wind: number;
}

/**
 * Pressure of saturated water vapour: es = 0.6108 exp(17.27 T / (T + 237.3)).
 *
 * @param temperature T, °C, -30 to 55
 * @returns kPa
 * @throws Problem outside this range
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998), Eq. 11 (Tetens).
 */
export function saturationPressure(temperature: number): number {
  const { min, max } = EVAPORATION_RANGE.airTemperature;
  requireRange("temperature", temperature, min, max, "°C");
  return 0.6108 * Math.exp((17.27 * temperature) / (temperature + 237.3));
}

/**
 * Heat that turns a kilogram of water into vapour: λ = 2501 - 2.361 T.
 *
 * @param temperature T of the water, °C
 * @returns kJ/kg
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998), annex 3, Eq. 3-1.
 */
export function latentHeat(temperature: number): number {
  return 2501 - 2.361 * temperature;
}

/**
 * Evaporation from a still, open surface: w = (pw - pa) (0.089 + 0.0782 V) / Y.
 *
 * @param pressureDifference pw - pa, kPa: saturated at the water's temperature less that in the air
 * @param wind V, m/s
 * @param heat Y, kJ/kg
 * @returns kg/(s m²)
 *
 * Source: ASHRAE Handbook, HVAC Applications, natatoriums; SI set of constants.
 */
export function evaporationRate(pressureDifference: number, wind: number, heat: number): number {
  return (pressureDifference * (ASHRAE_SI.still + ASHRAE_SI.perSpeed * wind)) / heat;
}

/**
 * Water that evaporates from an open surface in a day; 0 where the air is so moist that none leaves.
 *
 * Undisturbed pools lose about 74 % of this and pools in use 40 to 70 % more (ASHRAE Transactions 104, 1998).
 * Splash, drift and wicking at the edges come on top, and are often larger.
 *
 * @returns m³/day
 * @throws Problem for an input outside EVAPORATION_RANGE
 *
 * Source: as `evaporationRate` and `saturationPressure`.
 */
export function evaporationPerDay(inputs: EvaporationInputs): number {
  const { area, waterTemperature, airTemperature, humidity, wind } = inputs;
  const { waterTemperature: water } = EVAPORATION_RANGE;
  requireRange("area", area, EVAPORATION_RANGE.area.min, EVAPORATION_RANGE.area.max, "m²");
  requireRange("water temp", waterTemperature, water.min, water.max, "°C");
  requireRange("humidity", humidity, EVAPORATION_RANGE.humidity.min, EVAPORATION_RANGE.humidity.max);
  requireRange("wind", wind, EVAPORATION_RANGE.wind.min, EVAPORATION_RANGE.wind.max, "m/s");
  const difference = saturationPressure(waterTemperature) - humidity * saturationPressure(airTemperature);
  if (difference <= 0) return 0;
  return (area * evaporationRate(difference, wind, latentHeat(waterTemperature)) * SECONDS_PER_DAY) / WATER_DENSITY;
}
