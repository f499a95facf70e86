import { RUNNING_RANGE, runCostCents } from "../../calc/pump/power";
import { fromCents } from "../../calc/money/cents";
import { currency, digitsOf } from "../money/arguments";
import { declare } from "../contract/declaration";
import { numberResult } from "../contract/result";
import { number } from "../contract/scalars";

export const RUNCOST = declare({
  name: "RUNCOST",
  topic: "pump",
  summary: "Gives what the electricity of a pump costs in a year.",
  formula: "cost = watts / 1000 × hours a day × days a year × tariff, rounded to the smallest unit of the currency",
  source: "Arithmetic: a kilowatt-hour is 1000 W for an hour",
  limits:
    "As good as the watts: a plate shows the most a pump draws, a plug-in meter what it does. Standing charges and seasonal tariffs are left out.",
  args: {
    watts: number("Power drawn", RUNNING_RANGE.watts, { unit: "W" }),
    hours_per_day: number("Hours a day it runs", RUNNING_RANGE.hoursPerDay),
    days_per_year: number("Days a year it runs", RUNNING_RANGE.daysPerYear),
    tariff: number("Price of a kWh", RUNNING_RANGE.tariff),
    currency,
  },
  result: numberResult("the cost of a year's electricity"),
  examples: [
    {
      args: [662.4, 12, 210, 0.16],
      gives: 267.08,
      within: 0,
      from: "by hand: 0.6624 kW × 12 h × 210 d × 0.16 = 267.08",
    },
    {
      args: [662.4, 12, 210, 31, "JPY"],
      gives: 51747,
      within: 0,
      from: "by hand, yen: 0.6624 kW × 12 h × 210 d × 31 = 51,746.688",
    },
  ],
  compute({ watts, hours_per_day, days_per_year, tariff, currency: said }) {
    const digits = digitsOf(said);
    return fromCents(
      runCostCents(watts, { hoursPerDay: hours_per_day, daysPerYear: days_per_year, tariff }, digits),
      digits,
    );
  },
});
