import { inPounds, type DensityRow } from "./densities";

const COMMON_ROCKS = "From memory: the usual span, as in handbooks of engineering geology";
const MARBLE = "ASTM C503: at least 162 lb/ft³; usual and dolomite marble, 2.87: from memory";
const GRAMS_PER_CM3 = 1000;

function inGrams(row: DensityRow): DensityRow {
  return {
    ...row,
    low: row.low * GRAMS_PER_CM3,
    usual: row.usual * GRAMS_PER_CM3,
    high: row.high * GRAMS_PER_CM3,
  };
}

/** Rock of which it is only known that it is rock. */
const ANY_ROCK: DensityRow = inPounds({
  name: "fieldstone",
  also: ["mixed", "mixed rock", "rock", "boulder", "boulders", "unknown"],
  low: 150,
  usual: 165,
  high: 170,
  source: "USACE, Streambank Manual, app. A; 165: EM 1110-2-1601 (from memory)",
});

/** Solid rock, without any voids. Usual is the middle of what the source spans, where it gives no usual figure. */
export const ROCKS: readonly DensityRow[] = [
  ANY_ROCK,
  ...[
    { name: "granite", also: [], low: 2.6, usual: 2.65, high: 2.7, source: COMMON_ROCKS },
    { name: "limestone", also: ["ledge stone"], low: 2.3, usual: 2.5, high: 2.7, source: COMMON_ROCKS },
    { name: "sandstone", also: [], low: 2.2, usual: 2.5, high: 2.8, source: COMMON_ROCKS },
    { name: "basalt", also: ["trap rock"], low: 2.8, usual: 2.9, high: 3, source: COMMON_ROCKS },
    { name: "gneiss", also: [], low: 2.6, usual: 2.75, high: 2.9, source: COMMON_ROCKS },
    { name: "quartzite", also: [], low: 2.6, usual: 2.7, high: 2.8, source: COMMON_ROCKS },
    // Calcite marble from the least that the standard allows; dolomite marble is the heavy end.
    { name: "marble", also: ["white marble"], low: 2.595, usual: 2.7, high: 2.87, source: MARBLE },
    { name: "slate", also: [], low: 2.7, usual: 2.75, high: 2.8, source: COMMON_ROCKS },
    { name: "lava", also: ["lava boulder"], low: 1.2, usual: 1.6, high: 2.2, source: "From memory" },
  ].map(inGrams),
];
