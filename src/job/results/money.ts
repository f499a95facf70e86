import { roundingOf } from "../money";
import type { Job } from "../facts";
import type { CostOdds } from "../../calc/money/odds/costOdds";
import { OPTIONS } from "../price";
import { isKnown, known, type Derived } from "../derived";
import type { TakeoffLine } from "../takeoff";
import { column, one, type Result, type ResultValue } from "./result";

const labor: readonly Result[] = [
  one("CrewSize", "count", ({ labor }) => labor.crewSize),
  one("CrewHourRate", "money", ({ labor }) => labor.crewHourRate),
  one("MachineHourRate", "money", ({ labor }) => labor.machineHourRate),
  one("LaborRate", "money", ({ labor }) => labor.laborRate),
  one("MachineRate", "money", ({ labor }) => labor.machineRate),
  one("StoneMachine", "number", ({ labor }) => labor.setting.by),
  one("StoneMachineRate", "money", ({ labor }) => labor.stoneMachineRate),
  column("LaborTable", "number", 2, ({ labor }) => labor.tasks.map(({ quantity }) => quantity)),
  one("PipeSizeTimes", "factor", ({ labor }) => labor.pipeTimes),
  one("LipSizeTimes", "factor", ({ labor }) => labor.stoneTimes),
  one("BoulderSizeTimes", "factor", ({ labor }) => labor.boulderTimes),
  column("LaborTable", "hours", 7, ({ labor }) => labor.tasks.map(({ hours }) => hours)),
  column("LaborTable", "hours", 8, ({ labor }) => labor.tasks.map(({ machineHours }) => machineHours)),
  column("LaborTable", "money", 9, ({ labor }) => labor.tasks.map((task) => task.labor)),
  column("LaborTable", "money", 10, ({ labor }) => labor.tasks.map(({ machines }) => machines)),
  one("LaborHours", "hours", ({ labor }) => labor.hours),
  one("MachineHours", "hours", ({ labor }) => labor.machineHours),
  one("WorkingDays", "number", ({ labor }) => labor.workingDays),
  one("LaborCost", "money", ({ labor }) => labor.laborCost),
  one("MachineCost", "money", ({ labor }) => labor.machineCost),
];

/** The columns of Takeoff begin with the lines of the design; other rows stand between them and the user's own. */
const designLines = (name: string, kind: "number" | "money", value: (line: TakeoffLine) => ResultValue): Result => ({
  ...column(name, kind, 1, ({ takeoff }) => takeoff.designLines.map(value)),
  partly: true,
});

const takeoff: readonly Result[] = [
  designLines("TakeoffOrders", "number", ({ order }) => known(order)),
  designLines("TakeoffPrices", "money", ({ price }) => price),
  designLines("TakeoffFreights", "money", ({ freight }) => known(freight) ?? 0),
  designLines("TakeoffCosts", "money", ({ cost }) => known(cost)),
  designLines("TakeoffLooks", "number", ({ look }) => look || undefined),
  column("OwnLinesUsed", "number", 8, ({ takeoff }) => takeoff.ownLines.map(({ order }) => known(order))),
  column("OwnLinesUsed", "money", 9, ({ takeoff }) => takeoff.ownLines.map(({ price }) => price)),
  column("OwnLinesUsed", "money", 10, ({ takeoff }) => takeoff.ownLines.map(({ cost }) => known(cost))),
  one("TakeoffTotal", "money", ({ takeoff }) => takeoff.total),
];

const price: readonly Result[] = [
  one("MaterialCost", "money", ({ price }) => price.quoted?.costs[0]),
  one("TotalCost", "money", ({ price }) => price.quoted?.totalCost),
  one("PriceBeforeTax", "money", ({ price }) => price.quoted?.beforeTax),
  one("TaxAmount", "money", ({ price }) => price.quoted?.tax),
  one("PriceTotal", "money", ({ price }) => price.standing.words || price.quoted?.withTax),
  one("PriceStanding", "number", ({ price }) => price.standing.words || undefined),
  one("GrossMargin", "share", ({ price }) => price.quoted?.grossMargin),
  one("CrewDayProfit", "money", ({ price }) => price.quoted?.dayProfit),
  one("MarkupWanted", "share", ({ price }) => price.markupWanted),
  ...OPTIONS.map((option) => column(`Costs${option}`, "money", 1, ({ price }) => price.options[option]?.costs ?? [])),
  column("CostOdds", "money", 2, ({ price }, job) => oddsCells(price.odds, job)),
  one("PriceLow", "money", ({ price }) => price.low),
  one("PriceHigh", "money", ({ price }) => price.high),
  one("PriceAtConfidence", "money", ({ price }) => price.priceAtConfidence),
  column("StageAmounts", "money", 1, ({ price }) => known(price.stages) ?? []),
  ...(
    [
      ["OptionPrices", "money", "beforeTax"],
      ["OptionTaxes", "money", "tax"],
      ["OptionTotals", "money", "withTax"],
      ["OptionMargins", "share", "grossMargin"],
      ["OptionDays", "number", "crewDays"],
      ["OptionDayProfits", "money", "dayProfit"],
      ["SmallestMarkups", "share", "smallestMarkup"],
    ] as const
  ).map(([name, kind, key]): Result => ({
    name,
    kind,
    // The options stand in every second column.
    values: ({ price }) => OPTIONS.flatMap((option) => [price.options[option]?.[key], undefined]).slice(0, -1),
  })),
];

/** The six rows of the odds, to the cent. */
function oddsCells(odds: Derived<CostOdds>, job: Job): number[] {
  if (!isKnown(odds)) return [];
  const { low, likely, mean, spread, atConfidence } = odds;
  return [low, likely, mean, spread, atConfidence, Math.max(0, atConfidence - likely)].map(roundingOf(job));
}

/** Hours, quantities to buy, and what it all costs. */
export const moneyResults = { labor, takeoff, price } as const;
