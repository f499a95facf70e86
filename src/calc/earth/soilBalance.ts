import { requireRange } from "../problem";
import { soilVolume, type Soil, type SoilVolume } from "./soil";

/** Limits of a soil balance; SI. */
export const BALANCE_RANGE = { volume: { min: 0, max: 100_000 }, truck: { min: 0.01, max: 100 } } as const;

/** What becomes of the soil of a job. */
export interface SoilBalance {
  readonly dug: SoilVolume;
  readonly berm: SoilVolume;
  /** Spoil that leaves the site; nothing when the berm takes it all. */
  readonly away: SoilVolume;
  /** Fill that must come, of the same soil; nothing when the spoil suffices. */
  readonly fill: SoilVolume;
  /** Whole truckloads, each way. */
  readonly loadsAway: number;
  readonly loadsFill: number;
}

/**
 * Weighs what is dug against what the berm takes, in bank volume: left over = dug - berm / compacted factor.
 * Truckloads = loose volume / truck, rounded up.
 *
 * @param dug bank m³, 0 to 100,000
 * @param berm compacted m³, 0 to 100,000
 * @param soil loose and compacted volume of one bank volume
 * @param truck loose m³ of one load, 0.01 to 100
 * @throws Problem outside these ranges
 * @example soilBalance(10, 0, { loose: 1.25, compacted: 0.9 }, 5).loadsAway => 3; 10 × 1.25 / 5 = 2.5, in whole loads
 *
 * Source: US Army FM 5-434 (2000), chapter 1: cuts in bank, hauling in loose, fills in compacted yards.
 */
export function soilBalance(dug: number, berm: number, soil: Soil, truck: number): SoilBalance {
  const { volume, truck: load } = BALANCE_RANGE;
  requireRange("dug", dug, volume.min, volume.max, "m³");
  requireRange("berm", berm, volume.min, volume.max, "m³");
  requireRange("truck", truck, load.min, load.max, "m³");
  const cut = soilVolume(soil, "bank", dug);
  const need = soilVolume(soil, "compacted", berm);
  const away = soilVolume(soil, "bank", Math.max(0, cut.bank - need.bank));
  const fill = soilVolume(soil, "bank", Math.max(0, need.bank - cut.bank));
  return { dug: cut, berm: need, away, fill, loadsAway: loads(away, truck), loadsFill: loads(fill, truck) };
}

function loads({ loose }: SoilVolume, truck: number): number {
  // A load that is full on paper, but not in binary, must not become two.
  return Math.max(0, Math.ceil(loose / truck - 1e-9));
}
