/** Resistance of one copper conductor. */
export interface Wire {
  readonly name: string;
  /** Ω/m, direct current, warm conductor (75 °C). */
  readonly resistance: number;
  readonly source: string;
}

const OHM_PER_KILOFOOT = 1 / 304.8;
const NEC = "NFPA 70 (NEC) chapter 9, Table 8, uncoated copper, stranded, 75 °C";

/** AWG size and Ω per 1000 ft. */
const AWG: readonly (readonly [size: string, ohms: number, remark: string])[] = [
  ["18", 7.95, "from memory"],
  ["16", 4.99, "from memory"],
  ["14", 3.14, "from memory"],
  ["12", 1.98, "read in a page citing CEC 2022, Table 8"],
  ["10", 1.24, "from memory"],
  ["8", 0.778, "from memory"],
  ["6", 0.491, "from memory"],
  ["4", 0.308, "read in an annotated page"],
  ["3", 0.245, "from memory"],
  ["2", 0.194, "read in an annotated page"],
  ["1", 0.154, "from memory"],
  ["1/0", 0.122, "read in an annotated page"],
];

/** Cross-section in mm² and Ω per km at 20 °C of plain stranded copper (class 2). */
const METRIC: readonly (readonly [section: number, ohms: number])[] = [
  [1.5, 12.1],
  [2.5, 7.41],
  [4, 4.61],
  [6, 3.08],
  [10, 1.83],
  [16, 1.15],
  [25, 0.727],
  [35, 0.524],
];

/** Copper's resistance at 75 °C over that at 20 °C: 1 / (1 + 0.00323 (20 - 75)). NEC chapter 9, Table 8, note 2. */
const WARM = 1 / (1 + 0.00323 * (20 - 75));

/** Cable sizes by name. */
export const WIRES: readonly Wire[] = [
  ...AWG.map(([size, ohms, remark]): Wire => ({
    name: `${size} AWG`,
    resistance: ohms * OHM_PER_KILOFOOT,
    source: `${NEC} (${remark})`,
  })),
  ...METRIC.map(([section, ohms]): Wire => ({
    name: `${section} mm2`,
    resistance: (ohms / 1000) * WARM,
    source: "IEC 60228, Table 2, class 2 plain copper at 20 °C (from memory), brought to 75 °C",
  })),
];
