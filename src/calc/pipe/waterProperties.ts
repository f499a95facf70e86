import { requireRange } from "../problem";

/** Temperatures the formulas hold for as they are used here, °C: liquid water outdoors. */
export const WATER_TEMPERATURE_RANGE = { min: 0, max: 40 } as const;

/** Water temperature where none is given, °C (59 °F). */
export const USUAL_WATER_TEMPERATURE = 15;

/** Coefficients of density, rising powers of t. Kell (1975), Eq. 16. */
const DENSITY_TOP = [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12];
const DENSITY_BOTTOM = 16.87985e-3;

/** Factor and exponent of each term of viscosity. IAPWS SR6-08(2011), Table 5 (dynamic viscosity at 0.1 MPa). */
const VISCOSITY_TERMS: readonly (readonly [factor: number, exponent: number])[] = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
];

/**
 * Density of water at atmospheric pressure.
 * ρ = Σ aᵢ tⁱ / (1 + b t)
 *
 * @param temperature t, °C, 0 to 40
 * @returns kg/m³
 * @throws Problem outside the range
 * @example waterDensity(20) => 998.2; IAPWS-95, any table
 *
 * Source: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97, Eq. 16 (coefficients as in other transcriptions;
 * checked against MWH appendix C).
 */
export function waterDensity(temperature: number): number {
  requireRange("water temperature", temperature, WATER_TEMPERATURE_RANGE.min, WATER_TEMPERATURE_RANGE.max, "°C");
  const top = DENSITY_TOP.reduceRight((sum, factor) => sum * temperature + factor, 0);
  return top / (1 + DENSITY_BOTTOM * temperature);
}

/**
 * Kinematic viscosity of water at atmospheric pressure.
 * ν = μ / ρ, μ = 10⁻⁶ Σ aᵢ (T / 300 K)^bᵢ Pa·s
 *
 * @param temperature °C, 0 to 40
 * @returns m²/s
 * @throws Problem outside the range
 *
 * Source: IAPWS SR6-08(2011), Eq. for viscosity at 0.1 MPa (coefficients as in other transcriptions;
 * checked against MWH appendix C).
 */
export function waterViscosity(temperature: number): number {
  const density = waterDensity(temperature);
  const ratio = (temperature + 273.15) / 300;
  const micro = VISCOSITY_TERMS.reduce((sum, [factor, exponent]) => sum + factor * ratio ** exponent, 0);
  return (micro * 1e-6) / density;
}
