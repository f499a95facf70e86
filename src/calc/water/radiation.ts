import { requireRange } from "../problem";

/** Latitudes for which the sun rises and sets every day of the year, degrees; south is negative. */
export const LATITUDE_RANGE = { min: -65, max: 65 } as const;

const DEGREE = Math.PI / 180;
/** MJ/(m² min) */
const SOLAR_CONSTANT = 0.082;
/** MJ/(K⁴ m² d) */
const STEFAN_BOLTZMANN = 4.903e-9;
const KELVIN = 273.16;
/** Share of the sun that open water throws back. Shuttleworth (1993) in Maidment, Handbook of Hydrology (from memory). */
const WATER_ALBEDO = 0.08;

/** Day of the year in the middle of a month, 1 to 12: J = 30.4 M - 15. Source: FAO-56 (1998), annex 2. */
export function midMonth(month: number): number {
  return Math.round(30.4 * month - 15);
}

/**
 * Radiation that would reach the ground without an atmosphere, MJ/(m² d):
 * Ra = 24 × 60 / π Gsc dr (ωs sin φ sin δ + cos φ cos δ sin ωs).
 *
 * @param latitude φ, degrees, -65 to 65
 * @param day of the year, 1 to 366
 * @throws Problem outside these ranges
 * @example extraterrestrialRadiation(-20, 246) => 32.2; FAO-56, example 8
 *
 * Source: FAO Irrigation and Drainage Paper 56 (1998), Eq. 21 to 25.
 */
export function extraterrestrialRadiation(latitude: number, day: number): number {
  requireRange("latitude", latitude, LATITUDE_RANGE.min, LATITUDE_RANGE.max, "degrees");
  requireRange("day of the year", day, 1, 366);
  const phi = latitude * DEGREE;
  const year = (2 * Math.PI * day) / 365;
  const distance = 1 + 0.033 * Math.cos(year);
  const declination = 0.409 * Math.sin(year - 1.39);
  const sunset = Math.acos(-Math.tan(phi) * Math.tan(declination));
  return (
    ((24 * 60) / Math.PI) *
    SOLAR_CONSTANT *
    distance *
    (sunset * Math.sin(phi) * Math.sin(declination) + Math.cos(phi) * Math.cos(declination) * Math.sin(sunset))
  );
}

/**
 * Radiation of the sun on level ground: Rs = (0.25 + 0.50 n/N) Ra.
 *
 * @param extraterrestrial Ra, MJ/(m² d)
 * @param sunshine n/N, sunny share of the daylight, 0 to 1
 *
 * Source: FAO-56 (1998), Eq. 35 with its recommended constants.
 */
export function solarRadiation(extraterrestrial: number, sunshine: number): number {
  requireRange("sunshine", sunshine, 0, 1);
  return (0.25 + 0.5 * sunshine) * extraterrestrial;
}

/** Radiation of the sun under a clear sky: Rso = (0.75 + 0.00002 z) Ra, z the elevation in m. Source: FAO-56, Eq. 37. */
export function clearSkyRadiation(extraterrestrial: number, elevation: number): number {
  return (0.75 + 2e-5 * elevation) * extraterrestrial;
}

/**
 * Radiation that open water keeps, MJ/(m² d): Rn = (1 - α) Rs - σ T⁴ (0.34 - 0.14 √ea)(1.35 Rs/Rso - 0.35).
 *
 * @param solar Rs, MJ/(m² d)
 * @param clearSky Rso, MJ/(m² d)
 * @param temperature T of the air, °C
 * @param vapor ea, kPa in the air
 * @param albedo α, 0.08 for open water
 *
 * Source: FAO-56 (1998), Eq. 38 to 40, with one mean temperature in place of the day's extremes.
 */
export function netRadiation(
  solar: number,
  clearSky: number,
  temperature: number,
  vapor: number,
  albedo = WATER_ALBEDO,
): number {
  const cloud = 1.35 * Math.min(1, solar / clearSky) - 0.35;
  const longWave = STEFAN_BOLTZMANN * (temperature + KELVIN) ** 4 * (0.34 - 0.14 * Math.sqrt(vapor)) * cloud;
  return (1 - albedo) * solar - longWave;
}
