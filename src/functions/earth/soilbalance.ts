import type { SoilVolume } from "../../calc/earth/soil";
import { BALANCE_RANGE, soilBalance } from "../../calc/earth/soilBalance";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { quantity } from "../contract/scalars";
import { DIGGING_CAUTION, EARTH, soil } from "./arguments";

export const SOILBALANCE = declare({
  name: "SOILBALANCE",
  topic: "earth",
  summary: "Weighs what is dug against what the berm takes: spoil left or fill to bring, in truckloads.",
  formula:
    "loose = bank × (1 + swell); compacted = bank × (1 - shrink); left over = dug bank - berm compacted / (1 - shrink); " +
    "loads = loose / truck, rounded up",
  source:
    "US Army FM 5-434 (2000), chapter 1 and Table 1-1 (from memory); gravel and silt: Alaska DOT (1983) and UFC 3-220-20 (2025)",
  limits:
    "Dug is bank volume, the berm compacted volume, the truck loose volume. Swell tables disagree (sand 5 or 11%): " +
    "state your own figures where you know the soil. Fill is taken as the same soil. Watch the truck's weight limit too.",
  caution: DIGGING_CAUTION,
  args: {
    dug: quantity("earth", "Volume dug, as it lies in the ground (bank)", EARTH),
    berm: quantity("earth", "Volume of the berm, compacted", EARTH),
    soil,
    truck: optional(quantity("earth", "What one truck takes, loose", BALANCE_RANGE.truck), "10 yd³ | 8 m³", {
      US: 10,
      SI: 8,
    }),
  },
  result: tableResult("the soil balance", [
    { title: "Soil" },
    { title: "Bank", measure: "earth" },
    { title: "Loose", measure: "earth" },
    { title: "Compacted", measure: "earth" },
    { title: "Truckloads" },
  ]),
  examples: [
    {
      args: [30, 18, "loam", 10],
      gives: [
        { at: [1, 2], is: 37.5 },
        { at: [2, 1], is: 20 },
        { at: [3, 1], is: 10 },
        { at: [3, 2], is: 12.5 },
        { at: [3, 4], is: 2 },
        { at: [4, 1], is: 0 },
      ],
      within: 1e-9,
      from: "by hand, FM 5-434 loam 1.25 and 0.90: 18 / 0.9 = 20 bank; 30 - 20 = 10 bank; × 1.25 = 12.5 loose; / 10 = 1.25, so 2 loads",
    },
    {
      args: [10, 18, "swell 30% shrink 10%", 8, "SI"],
      gives: [
        { at: [3, 4], is: 0 },
        { at: [4, 1], is: 10 },
        { at: [4, 2], is: 13 },
        { at: [4, 4], is: 2 },
      ],
      within: 1e-9,
      from: "by hand: 18 / 0.9 = 20 bank; 20 - 10 = 10 bank to bring; × 1.3 = 13 loose; / 8 = 1.6, so 2 loads",
    },
  ],
  compute({ dug, berm, soil, truck }) {
    const balance = soilBalance(dug, berm, soil, truck);
    const row = (name: string, { bank, loose, compacted }: SoilVolume, loads: TableCell): TableCell[] => [
      name,
      bank,
      loose,
      compacted,
      loads,
    ];
    return [
      row("Dug", balance.dug, ""),
      row("Berm", balance.berm, ""),
      row("Spoil to take away", balance.away, balance.loadsAway),
      row("Fill to bring", balance.fill, balance.loadsFill),
    ];
  },
});
