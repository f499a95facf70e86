import { basinCheck, BASIN_DUTY_RANGE, type BasinVerdict } from "../../calc/basin/check";
import { unitLabel, type Measure } from "../../calc/quantity/measures";
import { GRAVEL_VOIDS } from "../../calc/tables/basinParts";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { number, quantity } from "../contract/scalars";
import { VOID_LIMITS, voidFraction } from "./arguments";

const { water: WATER, loss: LOSS } = BASIN_DUTY_RANGE;

export const BASINCHECK = declare({
  name: "BASINCHECK",
  topic: "basin",
  summary: "Holds a basin against its need: margin, level drop on starting, days until the pump sucks air, overflow.",
  formula:
    "need = drain-back + low water + loss × days; margin = hold - need; drop = drain-back / (footprint × void fraction); " +
    "days to air = (hold - drain-back - low water) / loss",
  source: "Balance of water; what a basin must hold: common practice, no source",
  limits:
    "Hold counts from the floor, or from wherever low water counts from, up to the overflow. The drop takes upright walls and " +
    `one void fraction over it. Rain and leaks are not in it. ${VOID_LIMITS}`,
  caution:
    "A pump that runs dry overheats and fails; a basin that overflows soaks what stands beside it. Lead the overflow away from buildings.",
  args: {
    hold: quantity("water", "Water from the floor to the overflow", WATER),
    drainback: quantity("water", "Water that runs back when the pump stops", WATER),
    low_water: quantity("water", "Water that must stay over the pump's inlet", WATER),
    loss_per_day: quantity("water", "Evaporation and splash per day", LOSS),
    days: number("Days without topping up", BASIN_DUTY_RANGE.days),
    footprint: optional(
      quantity("area", "Area of the basin near its full level", BASIN_DUTY_RANGE.footprint),
      "no level drop",
    ),
    void_fraction: optional(voidFraction, `${GRAVEL_VOIDS}, gravel`, GRAVEL_VOIDS),
  },
  result: tableResult("the basin against its need", [
    { title: "Item" },
    { title: "Value" },
    { title: "Unit" },
    { title: "Verdict" },
  ]),
  examples: [
    {
      args: [598.442, 200, 120, 15, 14, 80, 0.4],
      gives: [
        { at: [1, 1], is: 530 },
        { at: [3, 1], is: 68.442 },
        { at: [3, 3], is: "enough" },
        { at: [4, 1], is: 0.8355 },
        { at: [5, 1], is: 18.5628 },
        { at: [6, 1], is: 0 },
      ],
      within: 1e-4,
      from:
        "by hand: 200 + 120 + 15 × 14 = 530 gal; 598.442 - 530 = 68.442; 200 / 7.48052 / (80 × 0.4) = 0.8355 ft; " +
        "(598.442 - 320) / 15 = 18.56 days",
    },
    {
      args: [300, 250, 120, 15, 14],
      gives: [
        { at: [3, 1], is: -280 },
        { at: [5, 1], is: 0 },
        { at: [6, 1], is: 70 },
      ],
      within: 1e-9,
      from: "by hand: 300 - (250 + 120 + 210) = -280 gal; running needs 370 gal, 70 more than the basin holds",
    },
  ],
  compute(values, system) {
    const { hold, drainback, low_water, loss_per_day, days, footprint, void_fraction } = values;
    const verdict = basinCheck({
      hold,
      drainBack: drainback,
      lowWater: low_water,
      lossPerDay: loss_per_day,
      days,
      footprint,
      voidFraction: void_fraction,
    });
    const { need, margin, drop, daysToAir, overflow } = verdict;
    const measured = (item: string, measure: Measure, inside: number, words: string): TableCell[] => [
      item,
      { measure, inside },
      unitLabel(measure, system),
      words,
    ];
    return [
      measured("Need", "water", need, "drain-back, low water and reserve together"),
      measured("Hold", "water", hold, "from the floor to the overflow"),
      measured("Margin", "water", margin, marginWords(verdict)),
      drop === undefined
        ? ["Level drop on starting", "", "", "give the footprint to see it"]
        : measured("Level drop on starting", "length", drop, "lift counts from the lowered level"),
      ["Days until the pump sucks air", daysToAir ?? "", "days", daysWords(daysToAir, days)],
      measured("Overflow on stopping", "water", overflow, overflowWords(verdict)),
    ];
  },
});

function marginWords({ margin, overflow }: BasinVerdict): string {
  if (margin >= 0) return "enough";
  return overflow > 0
    ? "short: too small even to run; make the basin larger"
    : "short: make the basin larger, or plan fewer days without topping up";
}

function daysWords(daysToAir: number | undefined, planned: number): string {
  if (daysToAir === undefined) return "never: nothing is lost";
  if (daysToAir === 0) return "at once: it cannot run";
  return daysToAir >= planned ? "as long as planned, or longer" : "sooner than planned: top up earlier";
}

function overflowWords({ overflow }: BasinVerdict): string {
  return overflow > 0
    ? "spills: what must be added to keep it running does not fit when it stops"
    : "none if filled with the pump off; never top up to the overflow while it runs";
}
