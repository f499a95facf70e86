import { findNamed, namedRows } from "../named";
import { invalid, plain, requireRange } from "../problem";
import { SOILS } from "../tables/soils";

/** How the volume of a soil changes: loose and compacted volume of one bank volume. */
export interface Soil {
  readonly loose: number;
  readonly compacted: number;
}

/**
 * One heap of soil in its three states. Cuts are measured in bank volume, trucks in loose, fills in compacted;
 * keeping them in one record keeps them from being mixed.
 */
export interface SoilVolume {
  /** m³ in the ground */
  readonly bank: number;
  /** m³ dug up */
  readonly loose: number;
  /** m³ after compacting */
  readonly compacted: number;
}

/**
 * Physical limits. A soil dug up is never denser than in the ground, so swell is not below 0; shrink is below 0 for
 * rock, which stays bulkier than it was however it is compacted.
 */
export const SOIL_RANGE = { swell: { min: 0, max: 1 }, shrink: { min: -0.6, max: 0.4 } } as const;

const table = namedRows(SOILS);

/** The names a soil can be asked for by. */
export const SOIL_NAMES: readonly string[] = SOILS.map((row) => row.name);

/**
 * A soil of the user's own figures: loose = 1 + swell, compacted = 1 - shrink, both of the bank volume.
 *
 * @param swell share the bank volume gains when dug, 0 to 1
 * @param shrink share it loses when compacted, -0.6 to 0.4
 * @throws Problem outside these ranges, and when compacting would leave more than digging made
 * @example soilOf(0.25, 0.1).loose => 1.25; 1 + 0.25
 *
 * Source: definitions as in US Army FM 5-434 (2000); other books call 1.25 or 0.80 the "swell factor" of 25 % swell.
 */
export function soilOf(swell: number, shrink: number): Soil {
  requireRange("swell", swell, SOIL_RANGE.swell.min, SOIL_RANGE.swell.max, "of the bank volume");
  requireRange("shrink", shrink, SOIL_RANGE.shrink.min, SOIL_RANGE.shrink.max, "of the bank volume");
  if (1 - shrink > 1 + swell) {
    throw invalid(
      `shrink ${plain(shrink)} and swell ${plain(swell)} cannot both be right: compacted soil is never bulkier than loose soil`,
    );
  }
  return { loose: 1 + swell, compacted: 1 - shrink };
}

const OWN_FIGURES =
  /^\s*swell\s*[:=]?\s*(-?\d*[.,]?\d+)\s*(%?)\s*(?:[,;]|and)?\s*shrink(?:age)?\s*[:=]?\s*(-?\d*[.,]?\d+)\s*(%?)\s*$/i;

/**
 * The soil a person means: a name of the table, or his own figures as "swell 30% shrink 10%".
 *
 * @param label names the argument in sentences
 * @throws Problem for an unknown name and for figures outside their physical range
 * @example readSoil("heavy clay").loose => 1.43; US Army FM 5-434, from memory
 */
export function readSoil(written: string, label = "soil"): Soil {
  const own = OWN_FIGURES.exec(written);
  if (own) return soilOf(share(own[1], own[2]), share(own[3], own[4]));
  if (/^\s*swell\b/i.test(written) || /\d/.test(written)) {
    throw invalid(
      `${label} "${written.trim().slice(0, 40)}" is not understood; write both figures, as in "swell 30% shrink 10%"`,
    );
  }
  return findNamed(table, written, label, 'or your own figures, as in "swell 30% shrink 10%"');
}

function share(figure = "", percent = ""): number {
  return Number(figure.replace(",", ".")) / (percent === "%" ? 100 : 1);
}

/**
 * A heap of soil from its volume in one of the three states: bank × loose factor, bank × compacted factor.
 *
 * @example soilVolume({ loose: 1.25, compacted: 0.9 }, "bank", 10).loose => 12.5; 10 × 1.25
 */
export function soilVolume(soil: Soil, state: keyof SoilVolume, volume: number): SoilVolume {
  const bank = volume / (state === "bank" ? 1 : soil[state]);
  return { bank, loose: bank * soil.loose, compacted: bank * soil.compacted, [state]: volume };
}
