import { inPounds, type DensityRow } from "./densities";

const HANDBOOKS = "From memory, as in handbooks of weights of materials";
const EPA = "US EPA, Standard Volume-to-Weight Conversion Factors";
const COMPUTED = "62.43 lb/ft³ × 2.50 × 0.60, 2.65 × 0.60, 2.65 × 0.65";

/**
 * Loose stone as it comes off a truck, dry; lb/ft³ in the rows, as the sources state it. Low and high are what a row's
 * sources span; where they give no usual figure, the middle is taken. Computed rows: specific gravity × 62.43 lb/ft³ ×
 * what the voids leave, 35 to 40 % of dumped rock being voids (FHWA and USACE practice, from memory). Damp stone weighs
 * a tenth to a fifth more (gravel of 1/4 to 2 in: 105 lb/ft³ dry, 125 wet; from memory).
 */
export const STONES: readonly DensityRow[] = [
  {
    name: "washed gravel",
    also: ["gravel", "round gravel", "drain gravel", "basin gravel"],
    low: 95,
    usual: 100,
    high: 105,
    source: `${HANDBOOKS}: loose 95, 1/4 to 2 in 105`,
  },
  {
    name: "pea gravel",
    also: ["pea stone", "pea shingle"],
    low: 95,
    usual: 103,
    high: 112,
    source: `${HANDBOOKS}: loose gravel 95, pea gravel 112`,
  },
  {
    name: "river stone",
    also: ["river rock", "river gravel", "creek stone", "round stone"],
    low: 94,
    usual: 99,
    high: 108,
    source: `Computed: ${COMPUTED}`,
  },
  {
    name: "crushed stone",
    also: ["crushed rock", "crushed gravel", "clean stone", "angular stone", "chips", "chippings"],
    low: 85,
    usual: 100,
    high: 110,
    source: `${EPA}: 2,700 lb/yd³; low, high from memory`,
  },
  {
    name: "cobble",
    also: ["cobbles", "cobblestone", "boulder fill", "gabion stone", "rip rap", "riprap"],
    low: 94,
    usual: 99,
    high: 108,
    source: `Computed: ${COMPUTED}`,
  },
  {
    name: "gravel with sand",
    also: ["pit run", "bank run", "base gravel", "road base", "crusher run"],
    low: 110,
    usual: 120,
    high: 125,
    source: HANDBOOKS,
  },
  {
    name: "sand",
    also: ["bedding sand", "fill sand", "washed sand"],
    low: 90,
    usual: 100,
    high: 110,
    source: HANDBOOKS,
  },
  {
    name: "lava rock",
    also: ["lava stone", "scoria"],
    low: 45,
    usual: 50,
    high: 60,
    source: "From memory",
  },
].map(inPounds);
