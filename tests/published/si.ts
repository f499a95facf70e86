import type { PublishedCase } from "./cases";

/** SI value of one of each unit the published hydraulics cases use (NIST SP 811, appendix B.8). */
const FACTORS: Readonly<Record<string, number>> = {
  "-": 1,
  ft: 0.3048,
  in: 0.0254,
  m: 1,
  mm: 0.001,
  gpm: 3.785411784e-3 / 60,
  "L/s": 0.001,
  "L/min": 0.001 / 60,
  "m3/s": 1,
  "ft3/s": 0.3048 ** 3,
  "ft/s": 0.3048,
  "m/s": 1,
  "ft2/s": 0.3048 ** 2,
  "m2/s": 1,
  MGD: (3.785411784e-3 * 1e6) / 86400,
};

/** An input of a case in SI; its unit may carry a remark behind a space. */
export function inSI(c: PublishedCase, name: string): number {
  const input = c.inputs[name];
  const unit = input?.unit.split(" ")[0] ?? "";
  const factor = FACTORS[unit === "" ? "-" : unit];
  if (typeof input?.value !== "number" || factor === undefined) {
    throw new Error(`${c.id}: "${name}" is not a number in a unit known here`);
  }
  return input.value * factor;
}

export const FOOT = 0.3048;
export const INCH = 0.0254;
export const GPM = 3.785411784e-3 / 60;
