import { FLOW_RANGE } from "../../calc/pipe/route";
import { CURVE_POINTS, CURVE_RANGE, makeCurve, SPEED_RANGE, type PumpCurve } from "../../calc/pump/curve";
import { RUNNING_RANGE } from "../../calc/pump/power";
import { YEARS_RANGE } from "../../calc/pump/rank";
import type { Argument } from "../contract/argument";
import { optional } from "../contract/optional";
import type { Range } from "../contract/range";
import { number, quantity } from "../contract/scalars";
import { table } from "../contract/tables";

/** Heads of pumps. */
export const HEAD: Range = CURVE_RANGE.head;

/** Flows of curve points: 0 is the shut-off head. */
export const CURVE_FLOW: Range = FLOW_RANGE;

const curveRows = table(
  "Pump curve: flow, head; from shut-off head at flow 0",
  { flow: quantity("flow", "Flow", CURVE_FLOW), head: quantity("head", "Head", HEAD) },
  { mostRows: CURVE_POINTS.max },
);

/** A pump curve as rows of flow and head. */
export const curve: Argument<PumpCurve> = {
  ...curveRows,
  read: (raw, label, system) => makeCurve(curveRows.read(raw, label, system), label),
};

export const speed: Argument<number> = optional(
  number("Speed as a share of the curve's", { above: 0, ...SPEED_RANGE }),
  "1",
  1,
);

/** How long it runs and what electricity costs; blanks are common practice. */
export const running = {
  hours_per_day: optional(number("Hours a day it runs", RUNNING_RANGE.hoursPerDay), "24", 24),
  days_per_year: optional(number("Days a year it runs", RUNNING_RANGE.daysPerYear), "365", 365),
  tariff: optional(number("Price of a kWh", RUNNING_RANGE.tariff), "0.17 (US) or 0.30 (SI)", { US: 0.17, SI: 0.3 }),
} as const;

export const years: Argument<number> = optional(number("Years to count", YEARS_RANGE), "10", 10);
