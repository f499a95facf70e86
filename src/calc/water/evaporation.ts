import { requireRange } from "../problem";
import {
  clearSkyRadiation,
  extraterrestrialRadiation,
  LATITUDE_RANGE,
  midMonth,
  netRadiation,
  solarRadiation,
} from "./radiation";

/** MJ/kg. FAO-56 (1998), annex 3: constant, its change with temperature is below the accuracy. */
const LATENT_HEAT = 2.45;
/** Sea-level pressure, kPa, and the standard atmosphere. FAO-56 (1998), Eq. 7. */
const STANDARD_PRESSURE = 101.3;

/** What the calculation accepts: m², °C, share, m/s, m, degrees. */
export const EVAPORATION_RANGE = {
  area: { min: 0, max: 100_000 },
  airTemperature: { min: -10, max: 55 },
  humidity: { min: 0, max: 1 },
  wind: { min: 0, max: 20 },
  windHeight: { min: 0.5, max: 30 },
  latitude: LATITUDE_RANGE,
  month: { min: 1, max: 12 },
  sunshine: { min: 0, max: 1 },
  shelter: { min: 0, max: 1 },
  elevation: { min: 0, max: 4000 },
} as const;

/** What the weather does to open water. */
export interface Weather {
  /** Mean of day and night, °C. */
  readonly airTemperature: number;
  /** Mean relative humidity, 0 to 1. */
  readonly humidity: number;
  /** Mean wind where it is measured, m/s. */
  readonly wind: number;
  /** How high above open ground it is measured, m; weather reports 10. */
  readonly windHeight: number;
  /** Share of the open wind that walls, hedges and trees leave over the water; 1 in the open. */
  readonly shelter: number;
  /** Degrees, south negative. */
  readonly latitude: number;
  /** 1 to 12 */
  readonly month: number;
  /** Sunny share of the daylight, 0 to 1. */
  readonly sunshine: number;
  /** Above sea level, m. */
  readonly elevation: number;
}

/**
 * Pressure of saturated water vapor: es = 0.6108 exp(17.27 T / (T + 237.3)).
 *
 * @param temperature T, °C
 * @returns kPa
 * @example saturationPressure(24.5) => 3.075; FAO-56, example 3
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998), Eq. 11 (Tetens).
 */
export function saturationPressure(temperature: number): number {
  return 0.6108 * Math.exp((17.27 * temperature) / (temperature + 237.3));
}

/**
 * Psychrometric constant, kPa/°C: γ = 0.000665 P, P = 101.3 ((293 - 0.0065 z) / 293)^5.26. Source: FAO-56, Eq. 7 and 8.
 *
 * @example psychrometricConstant(1800) => 0.054; FAO-56, example 2
 */
export function psychrometricConstant(elevation: number): number {
  return 0.665e-3 * STANDARD_PRESSURE * ((293 - 0.0065 * elevation) / 293) ** 5.26;
}

/**
 * Wind at 2 m from wind measured higher up over open ground: u₂ = u 4.87 / ln(67.8 z - 5.42).
 *
 * @param speed u, m/s
 * @param height z, m, 0.5 to 30
 * @example windAtTwoMetres(2.78, 10) => 2.08; FAO-56, example 18
 *
 * Source: FAO-56 (1998), Eq. 47.
 */
export function windAtTwoMetres(speed: number, height: number): number {
  const { min, max } = EVAPORATION_RANGE.windHeight;
  requireRange("wind height", height, min, max, "m");
  return (speed * 4.87) / Math.log(67.8 * height - 5.42);
}

/**
 * Evaporation of open water from its radiation and the drying power of the air, mm/d:
 * E = (Δ Rn + γ 6.43 (1 + 0.536 u₂)(es - ea)) / (λ (Δ + γ)); 0 where the air gives more than it takes.
 *
 * @param net Rn, MJ/(m² d)
 * @param weather air temperature in °C, humidity as a share
 * @param wind u₂ at 2 m, m/s
 * @param elevation m
 * @example penman(0, { airTemperature: 20, humidity: 1 }, 2, 0) => 0; air that is full takes no more
 *
 * Source: H. L. Penman, Proc. R. Soc. A 193 (1948) 120-145 and Neth. J. Agric. Sci. 4 (1956) 9-29, in the units of
 * Shuttleworth (1993), Maidment's Handbook of Hydrology, Eq. 4.2.30 (from memory); Δ: FAO-56 (1998), Eq. 13.
 */
export function penman(
  net: number,
  { airTemperature, humidity }: Pick<Weather, "airTemperature" | "humidity">,
  wind: number,
  elevation: number,
): number {
  const saturated = saturationPressure(airTemperature);
  const slope = (4098 * saturated) / (airTemperature + 237.3) ** 2;
  const gamma = psychrometricConstant(elevation);
  const drying = 6.43 * (1 + 0.536 * wind) * saturated * (1 - humidity);
  return Math.max(0, (slope * net + gamma * drying) / (LATENT_HEAT * (slope + gamma)));
}

/**
 * Depth of open water that evaporates in a day of a month, mm: Penman, with the sun of the latitude and month.
 *
 * It goes by the weather alone: a thin sheet over warm stone and falling water lose more, shaded water less.
 *
 * @throws Problem for a value outside EVAPORATION_RANGE
 * @example evaporationDepth({ airTemperature: 30, humidity: 0.3, wind: 4, windHeight: 10, shelter: 1, latitude: 36,
 *   month: 7, sunshine: 0.88, elevation: 360 }) > 7.5 * 304.8 / 365.25 => true; in July more than the mean day of
 *   Lake Mead, 7.5 ft a year (USGS SIR 2006-5252)
 *
 * Source: as `penman`, `netRadiation` and `windAtTwoMetres`.
 */
export function evaporationDepth(weather: Weather): number {
  const { airTemperature, humidity, wind, windHeight, shelter, latitude, month, sunshine, elevation } = weather;
  const range = EVAPORATION_RANGE;
  requireRange("air temp", airTemperature, range.airTemperature.min, range.airTemperature.max, "°C");
  requireRange("humidity", humidity, range.humidity.min, range.humidity.max);
  requireRange("wind", wind, range.wind.min, range.wind.max, "m/s");
  requireRange("shelter", shelter, range.shelter.min, range.shelter.max);
  requireRange("month", month, range.month.min, range.month.max);
  requireRange("elevation", elevation, range.elevation.min, range.elevation.max, "m");
  const above = extraterrestrialRadiation(latitude, midMonth(month));
  const net = netRadiation(
    solarRadiation(above, sunshine),
    clearSkyRadiation(above, elevation),
    airTemperature,
    humidity * saturationPressure(airTemperature),
  );
  return penman(net, weather, windAtTwoMetres(wind, windHeight) * shelter, elevation);
}

/**
 * Water that evaporates from an open surface in a day, m³: depth × area. See `evaporationDepth`.
 *
 * @param area m², 0 to 100,000
 * @throws Problem for a value outside EVAPORATION_RANGE
 * @example evaporationPerDay(100, { airTemperature: 30, humidity: 0.3, wind: 4, windHeight: 10, shelter: 1, latitude: 36,
 *   month: 7, sunshine: 0.88, elevation: 360 }) / evaporationDepth({ airTemperature: 30, humidity: 0.3, wind: 4,
 *   windHeight: 10, shelter: 1, latitude: 36, month: 7, sunshine: 0.88, elevation: 360 }) => 0.1; 100 m² by 1 mm
 */
export function evaporationPerDay(area: number, weather: Weather): number {
  requireRange("area", area, EVAPORATION_RANGE.area.min, EVAPORATION_RANGE.area.max, "m²");
  return (area * evaporationDepth(weather)) / 1000;
}
