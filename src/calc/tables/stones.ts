import { inPounds, type DensityRow } from "./densities";

const LISTED = "table of masses of dry bulk materials (simetric.co.uk, si_materials)";
const EPA = "US EPA, Standard Volume-to-Weight Conversion Factors: crushed stone 2,700 lb/yd³";
const AGGREGATES = "bulk density of normal-weight aggregates 75 to 110 lb/ft³, as measured by ASTM C29";
const COMPUTED = "computed: specific gravity × 62.43 lb/ft³ × (1 - voids)";

/**
 * Loose stone as it comes off a truck, dry; lb/ft³ in the rows as the sources state it.
 * A row's low and high are what its sources span; damp stone weighs a tenth to a fifth more (same table: gravel of
 * 1/4 to 2 in is 105 lb/ft³ dry and 125 wet).
 */
export const STONES: readonly DensityRow[] = [
  {
    name: "washed gravel",
    also: ["gravel", "round gravel", "drain gravel", "basin gravel"],
    low: 95,
    usual: 100,
    high: 105,
    source: `${LISTED}: gravel, loose, dry 95; dry, 1/4 to 2 in, 105; the middle is ours`,
  },
  {
    name: "pea gravel",
    also: ["pea stone", "pea shingle"],
    low: 95,
    usual: 103,
    high: 112,
    source: `${LISTED}: gravel, loose, dry 95; high: pea gravel 1,788 kg/m³, compilation read second-hand; the middle is ours`,
  },
  {
    name: "river stone",
    also: ["river rock", "river gravel", "creek stone", "round stone"],
    low: 94,
    usual: 99,
    high: 108,
    source: `${COMPUTED}: 2.50 at 40 %, 2.65 at 40 %, 2.65 at 35 %`,
  },
  {
    name: "crushed stone",
    also: ["crushed rock", "crushed gravel", "clean stone", "angular stone", "chips", "chippings"],
    low: 85,
    usual: 100,
    high: 110,
    source: `${EPA}; high: ${AGGREGATES}; low: specific gravity 2.5 at 45 % voids, from memory`,
  },
  {
    name: "cobble",
    also: ["cobbles", "cobblestone", "boulder fill", "gabion stone", "rip rap", "riprap"],
    low: 94,
    usual: 99,
    high: 108,
    source: `${COMPUTED}: 2.50 at 40 %, 2.65 at 40 %, 2.65 at 35 % (voids of dumped rock 35 to 40 %, FHWA and USACE practice, from memory)`,
  },
  {
    name: "gravel with sand",
    also: ["pit run", "bank run", "base gravel", "road base", "crusher run"],
    low: 110,
    usual: 120,
    high: 125,
    source: `${LISTED}: gravel with sand, natural, 120; low and high from memory`,
  },
  {
    name: "sand",
    also: ["bedding sand", "fill sand", "washed sand"],
    low: 90,
    usual: 100,
    high: 110,
    source: `${LISTED}: sand, dry, 100; low and high from memory`,
  },
  {
    name: "lava rock",
    also: ["lava stone", "scoria"],
    low: 45,
    usual: 50,
    high: 60,
    source: "from memory",
  },
].map(inPounds);
