import { CURVE_RANGE } from "../../calc/pump/curve";
import { aboveZero } from "../contract/range";
import { currency, digitsOf } from "../money/arguments";
import { fromCents } from "../../calc/money/cents";
import { makeSystem } from "../../calc/pipe/route";
import { RUNNING_RANGE } from "../../calc/pump/power";
import { RANKED_PUMPS, rankPumps, type PumpOffer, type RankedPump } from "../../calc/pump/rank";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Argument } from "../contract/argument";
import { declare } from "../contract/declaration";
import { tableResult, type TableCell } from "../contract/result";
import { number, quantity, text } from "../contract/scalars";
import { optional } from "../contract/optional";
import { table } from "../contract/tables";
import { FLOW, LIFT, method, riser, route, waterTemp } from "../pipe/arguments";
import { CURVE_FLOW, HEAD, running, years } from "./arguments";
import { dutyVerdict, ELECTRIC_CAUTION, PARALLEL_LIMITS } from "./words";

const pumpRows = table(
  "Pumps: name, price, watts, shut-off head, then flow and head repeated",
  {
    name: text("Pump", { longest: 60 }),
    price: number("Price", { min: 0, max: 1_000_000 }),
    watts: number("Power drawn", { above: 0, max: RUNNING_RANGE.watts.max }, { unit: "W" }),
    shut_off_head: quantity("head", "Shut-off head", aboveZero(CURVE_RANGE.head)),
  },
  { repeated: { flow: quantity("flow", "Flow", CURVE_FLOW), head: quantity("head", "Head", HEAD) }, mostRows: 2000 },
);

const pumps: Argument<PumpOffer[]> = {
  ...pumpRows,
  read: (raw, label, system) =>
    pumpRows.read(raw, label, system).map(({ name, price, watts, shut_off_head, groups }) => ({
      name,
      price,
      watts,
      points: [{ flow: 0, head: shut_off_head }, ...groups],
    })),
};

export const PUMPRANK = declare({
  name: "PUMPRANK",
  topic: "pump",
  summary: "Ranks pumps, alone or side by side: those that meet the flow, cheapest to own first, and why others fail.",
  formula:
    "duty point as in DUTY of the fewest of each pump that meet the flow; cost to own = number × (price + years × watts / 1000 × hours × days × tariff)",
  source: "Duty point as DUTY; money by arithmetic, each yearly cost rounded to the smallest unit of the currency",
  limits:
    "At full speed; of each pump as many alike stand side by side as the flow needs, up to the most asked for. The cost leaves " +
    `out what each riser and its check valve cost. ${PARALLEL_LIMITS} ` +
    "The watts are taken as the same at every flow. A pump that runs off the end of its curve is not counted as meeting " +
    "the flow. Interest, repairs and the pump's life are left out. " +
    "The tariff taken for a blank is a round guess: type your own.",
  caution: ELECTRIC_CAUTION,
  args: {
    pumps,
    flow: quantity("flow", "Flow wanted", FLOW),
    lift: quantity("head", "Lift from the running water level to the outlet", LIFT),
    route,
    ...running,
    years,
    method,
    water_temp: waterTemp,
    riser,
    most_pumps: optional(
      number("Most of one pump side by side to try", { above: 0, ...RANKED_PUMPS }, { whole: true }),
      `${RANKED_PUMPS.usual}`,
      RANKED_PUMPS.usual,
    ),
    currency,
  },
  result: tableResult("the ranked pumps", [
    { title: "Rank" },
    { title: "Pump" },
    { title: "How many" },
    { title: "Flow delivered", measure: "flow" },
    { title: "Head", measure: "head" },
    { title: "Energy per year" },
    { title: "Cost to own" },
    { title: "Verdict" },
  ]),
  examples: [
    {
      args: [
        [
          ["Too weak", 150, 200, 7, 1800, 2, null, null],
          ["Serves", 400, 500, 26, 2400, 22, 4800, 10],
        ],
        3500,
        8,
        [[2, 100, "Sch 40 PVC", 6]],
        20,
        300,
        0.15,
        10,
      ],
      gives: [
        { at: [1, 0], is: 1 },
        { at: [1, 1], is: "Serves" },
        { at: [1, 2], is: 1 },
        { at: [1, 3], is: 3584.09 },
        { at: [1, 5], is: 450 },
        { at: [1, 6], is: 4900 },
        { at: [2, 0], is: "" },
        { at: [2, 3], is: 0 },
        { at: [2, 7], is: "Cannot lift: its shut-off head of 7 ft is not above the lift of 8 ft." },
      ],
      within: 0.002,
      from: "flow: EPANET 2.3.5, 59.735 gpm; by hand: 0.5 kW × 20 h × 300 d × 0.15 = 450 a year, 400 + 10 × 450 = 4900",
    },
    {
      args: [
        [["Serves", 48000.4, 500, 26, 2400, 22, 4800, 10]],
        3500,
        8,
        [[2, 100, "Sch 40 PVC", 6]],
        20,
        300,
        31.1,
        0.5,
        null,
        null,
        null,
        null,
        "JPY",
      ],
      gives: [
        { at: [1, 5], is: 93_300 },
        { at: [1, 6], is: 94_650 },
      ],
      within: 0,
      from: "by hand, yen: 0.5 kW × 20 h × 300 d × 31.1 = 93,300 a year; 48,000 and half of 93,300",
    },
  ],
  compute({ pumps, flow, lift, route, years, method, water_temp, riser, most_pumps, currency: said, ...rest }, units) {
    const running = { hoursPerDay: rest.hours_per_day, daysPerYear: rest.days_per_year, tariff: rest.tariff };
    const system = makeSystem(lift, route, { method, waterTemperature: water_temp, riser });
    const digits = digitsOf(said);
    const ranked = rankPumps(pumps, flow, system, { running, years, most: most_pumps, digits });
    return ranked.map((pump, index): TableCell[] => [
      pump.meets ? index + 1 : "",
      pump.offer.name,
      pump.pumps,
      pump.duty?.flow ?? "",
      pump.duty?.head ?? "",
      fromCents(pump.energyCents, digits),
      fromCents(pump.ownCents, digits),
      verdict(pump, flow, lift, units) + dearer(pump, ranked[0], digits),
    ]);
  },
});

/** Why a pump that meets the flow still stands behind the first. */
function dearer({ meets, ownCents }: RankedPump, first: RankedPump | undefined, digits: number): string {
  if (!meets || first === undefined || ownCents === first.ownCents) return "";
  return ` Costs ${fromCents(ownCents - first.ownCents, digits).toFixed(digits)} more than the first.`;
}

function verdict({ duty, fault, offer }: RankedPump, wanted: number, lift: number, units: UnitSystem): string {
  if (!duty) return `Its ${fault}.`;
  const lastKnown = Math.max(...offer.points.map((point) => point.flow));
  return dutyVerdict(duty, wanted, lift, lastKnown, units);
}
