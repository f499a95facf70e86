import { requireRange } from "../problem";

/**
 * Weight of sheet goods: area × weight per area.
 *
 * @param area m², 0 to 1,000,000
 * @param perArea kg/m², 0 to 50
 * @returns kg
 * @throws Problem outside these ranges
 * @example sheetWeight(50, 1.2) => 60; 50 × 1.2
 *
 * Source: arithmetic; mass per area as ASTM D5261 measures it.
 */
export function sheetWeight(area: number, perArea: number): number {
  requireRange("area", area, 0, 1_000_000, "m²");
  requireRange("weight per area", perArea, 0, 50, "kg/m²");
  return area * perArea;
}
