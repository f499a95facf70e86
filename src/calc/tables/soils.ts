/** How the volume of a soil changes once it is dug and once it is compacted; both as a share of its bank volume. */
export interface SoilRow {
  readonly name: string;
  /** Other things people call it. */
  readonly also: readonly string[];
  /** Loose volume of one bank volume. */
  readonly loose: number;
  /** Compacted volume of one bank volume. */
  readonly compacted: number;
  readonly source: string;
}

const FM = "US Army FM 5-434 (2000), Table 1-1 (from memory)";
const ALASKA = "Alaska Department of Transportation (1983), bulking of materials";
const UFC = "UFC 3-220-20 (2025): without test data 10 to 15% shrinkage; taken as a tenth of the bank volume";

/** Sources disagree: Alaska DOT gives sand 5 % swell where FM 5-434 gives 11 %. The user can state his own. */
export const SOILS: readonly SoilRow[] = [
  {
    name: "loam",
    also: ["common earth", "earth", "topsoil", "soil", "sandy loam", "dirt"],
    loose: 1.25,
    compacted: 0.9,
    source: FM,
  },
  { name: "sand", also: ["dry sand"], loose: 1.11, compacted: 0.95, source: FM },
  { name: "clay", also: ["clay soil", "heavy clay"], loose: 1.43, compacted: 0.9, source: FM },
  {
    name: "sandy gravel",
    also: ["gravel", "gravel, sandy", "gravelly sand"],
    loose: 1.05,
    compacted: 0.9,
    source: `loose: ${ALASKA}; compacted: ${UFC}`,
  },
  {
    name: "silt",
    also: ["silty soil", "loess"],
    loose: 1.35,
    compacted: 0.9,
    source: `loose: ${ALASKA}; compacted: ${UFC}`,
  },
  { name: "blasted rock", also: ["rock", "rock, blasted", "ledge"], loose: 1.5, compacted: 1.3, source: FM },
];
