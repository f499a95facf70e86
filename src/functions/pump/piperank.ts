import { aboveZero } from "../contract/range";
import { currency, digitsOf } from "../money/arguments";
import { fromCents } from "../../calc/money/cents";
import { sumOfK } from "../../calc/pipe/fittings";
import { USUAL_SPEED_LIMIT } from "../../calc/pipe/routeParts";
import { rankPipes, SPEED_LIMIT_RANGE, type PipeOffer } from "../../calc/pump/rankPipes";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { number, quantity, share } from "../contract/scalars";
import { table } from "../contract/tables";
import { FLOW, LIFT, PIPE_LENGTH, fittings, method, pipeOf, pipeSize, pipeType, waterTemp } from "../pipe/arguments";
import { running, years } from "./arguments";
import { roughly } from "./words";

export const PIPERANK = declare({
  name: "PIPERANK",
  topic: "pump",
  summary: "Ranks pipe sizes for a flow: speed, head, and cost of pipe and electricity over the years.",
  formula: "cost = price × length + years × P / 1000 × hours × days × tariff; P = ρ g Q TDH / efficiency",
  source:
    "TDH as in TDH; power as in PUMPWATTS; money by arithmetic, each amount rounded to the smallest unit of the currency",
  limits:
    "Assumes a pump that gives just the head each pipe needs; real pumps come in steps, so check the choice with DUTY. " +
    "The speed limit of 5 ft/s (1.5 m/s), the efficiency and the tariff taken for a blank are common practice, no source: type your own.",
  args: {
    flow: quantity("flow", "Flow wanted", FLOW),
    lift: quantity("head", "Lift from the running water level to the outlet", LIFT),
    length: quantity("length", "Pipe length", PIPE_LENGTH),
    pipes: table(
      "Pipes: size, pipe type, price per ft or m",
      { size: pipeSize, pipe_type: pipeType, price: number("Price per ft or m", { min: 0, max: 100_000 }) },
      { mostRows: 200 },
    ),
    fittings: optional(fittings, "none"),
    efficiency: optional(
      share("Efficiency, wire to water: pump × motor × drive", { above: 0.001, max: 1 }),
      "0.35",
      0.35,
    ),
    ...running,
    years,
    speed_limit: optional(quantity("speed", "Fastest allowed", aboveZero(SPEED_LIMIT_RANGE)), "5 ft/s | 1.52 m/s", {
      US: `${USUAL_SPEED_LIMIT} m/s`,
      SI: USUAL_SPEED_LIMIT,
    }),
    method,
    water_temp: waterTemp,
    currency,
  },
  result: tableResult("the ranked pipes", [
    { title: "Rank" },
    { title: "Pipe" },
    { title: "Speed", measure: "speed" },
    { title: "Head", measure: "head" },
    { title: "Power", measure: "power" },
    { title: "Pipe cost" },
    { title: "Energy per year" },
    { title: "Cost over the years" },
    { title: "Verdict" },
  ]),
  examples: [
    {
      args: [2400, 6, 100, [[2, "Sch 40 PVC", 2.5]], null, 0.4, 20, 300, 0.15, 10],
      gives: [
        { at: [1, 0], is: 1 },
        { at: [1, 1], is: "2 in Sch 40 PVC" },
        { at: [1, 2], is: 3.8244 },
        { at: [1, 3], is: 8.847 },
        { at: [1, 4], is: 166.6 },
        { at: [1, 5], is: 250 },
        { at: [1, 6], is: 149.9 },
        { at: [1, 7], is: 1749 },
      ],
      within: 0.012,
      from:
        "by hand: TDH 6 + 2.62 + 0.227 ft (Illinois Administrative Code 77, part 906, exhibit I); " +
        "40 gpm × 8.847 ft / 3960 × 745.7 W / 0.4 = 166.6 W; 0.1666 kW × 6000 h × 0.15 = 149.9; 250 + 1499",
    },
    {
      args: [2400, 6, 100, [[2, "Sch 40 PVC", 250.006]], null, 0.4, 1, 100, 30, 2.5, null, null, null, "JPY"],
      gives: [
        { at: [1, 5], is: 25_001 },
        { at: [1, 6], is: 500 },
        { at: [1, 7], is: 26_251 },
      ],
      within: 0,
      from:
        "by hand, yen: 100 × 250.006 = 25,000.6; 0.1666 kW as above × 1 h × 100 d × 30 = 499.8 a year; " +
        "25,001 + 2.5 × 500",
    },
  ],
  compute({ flow, lift, length, pipes, fittings, method, water_temp, years, currency: said, ...rest }, units) {
    const perMetre = units === "US" ? 1 / 0.3048 : 1;
    const offers = pipes.map(({ size, pipe_type, price, row }): PipeOffer => {
      const pipe = pipeOf(size, pipe_type, `pipes row ${row}: size`);
      return { pipe, length, k: sumOfK(fittings ?? [], pipe.bore), pricePerMetre: price * perMetre };
    });
    const digits = digitsOf(said);
    const ranked = rankPipes(offers, flow, lift, {
      efficiency: rest.efficiency,
      running: { hoursPerDay: rest.hours_per_day, daysPerYear: rest.days_per_year, tariff: rest.tariff },
      years,
      speedLimit: rest.speed_limit,
      method,
      waterTemperature: water_temp,
      digits,
    });
    return ranked.map((pipe, index): TableCell[] => [
      pipe.tooFast ? "" : index + 1,
      pipe.offer.pipe.label,
      pipe.speed,
      pipe.head,
      pipe.watts,
      fromCents(pipe.pipeCents, digits),
      fromCents(pipe.energyCents, digits),
      fromCents(pipe.ownCents, digits),
      pipe.tooFast
        ? `Too fast: ${roughly("speed", pipe.speed, units)}, limit ${roughly("speed", rest.speed_limit, units)}.`
        : index === 0
          ? "Cheapest over the years within the speed limit."
          : "Within the speed limit.",
    ]);
  },
});
