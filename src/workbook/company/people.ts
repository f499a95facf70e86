import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { BurdenLine, Machine, ProductionRate, SizeHours, Wage } from "../../book/types";
import type { ColumnSpec } from "../layout/tableColumns";
import type { CellValue } from "../model";
import { sizeHoursCells, sizeHoursColumns } from "../sizeHours";
import { markCell, markColumn, orBlank, type RowReader } from "./cells";
import { typedIn } from "../typedIn";

const words = (key: string, title: string, max: number, message: string): ColumnSpec => ({
  key,
  title,
  kind: "text",
  input: { max, message },
});
const hourly = (key: string, title: string, message: string): ColumnSpec => ({
  key,
  title,
  kind: "money",
  input: { min: 0, max: 2000, message },
});

export const burdenColumns: readonly ColumnSpec[] = [
  words("line", "Burden line", 60, "What is paid on top of wages."),
  {
    key: "share",
    title: "Share of wage",
    kind: "share",
    format: "0.00%",
    input: { min: 0, max: 1, message: "Share of the wage, from your payroll or insurer." },
  },
  markColumn,
];

export const burdenRow = (line: BurdenLine): CellValue[] => [line.line, orBlank(line.share), markCell(line)];

export const readBurden = (row: RowReader): BurdenLine => ({
  line: row.text("line"),
  share: row.number("share", { min: 0, max: 1 }),
  invented: row.invented,
  row: row.row,
});

export const wageColumns: readonly ColumnSpec[] = [
  words("role", "Role", 40, "Who works."),
  hourly("wage", "Wage per hour", "Wage paid for an hour, before burden."),
  {
    key: "people",
    title: "On the crew",
    kind: "count",
    input: { min: 0, max: 30, message: "How many of them are on the usual crew." },
  },
  markColumn,
];

export const wageRow = (wage: Wage): CellValue[] => [wage.role, orBlank(wage.wage), wage.people, markCell(wage)];

export const readWage = (row: RowReader): Wage => ({
  role: row.text("role"),
  wage: row.number("wage", { min: 0 }),
  people: row.number("people", { min: 0 }) ?? 0,
  invented: row.invented,
  row: row.row,
});

export const rateColumns: readonly ColumnSpec[] = [
  words("task", "Task", 80, "What is done, in the words of the job's sheet Hours."),
  words("unit", "Unit", 20, "In which unit it is counted."),
  {
    key: "hours",
    title: "Hours of one person for one unit",
    kind: "factor",
    input: { min: 0, max: 1000, message: "From your own finished jobs." },
  },
  {
    key: "machineHours",
    title: "Machine hours for one unit",
    kind: "factor",
    input: { min: 0, max: 1000, message: "From your own finished jobs." },
  },
  markColumn,
];

export const rateRow = (rate: ProductionRate): CellValue[] => [
  rate.task,
  rate.unit,
  orBlank(rate.hours),
  orBlank(rate.machineHours),
  markCell(rate),
];

export const readRate = (row: RowReader): ProductionRate => ({
  task: row.text("task"),
  unit: row.text("unit"),
  hours: row.number("hours", { min: 0 }),
  machineHours: row.number("machineHours", { min: 0 }),
  invented: row.invented,
  row: row.row,
});

export function sizeColumns(system: UnitSystem): readonly ColumnSpec[] {
  return [...sizeHoursColumns(system), markColumn];
}

export const sizeRow = (size: SizeHours, system: UnitSystem): CellValue[] => [
  ...sizeHoursCells(size, system),
  markCell(size),
];

export const readSize = (row: RowReader): SizeHours => ({
  pipe: row.measure("pipe", "size"),
  pipeTimes: row.number("pipeTimes", { min: 0 }),
  stone: row.measure("stone", "weight"),
  stoneTimes: row.number("stoneTimes", { min: 0 }),
  tub: row.measure("tub", "water"),
  tubTimes: row.number("tubTimes", { min: 0 }),
  tubMachineTimes: row.number("tubMachineTimes", { min: 0 }),
  boulder: row.measure("boulder", "weight"),
  boulderTimes: row.number("boulderTimes", { min: 0 }),
  invented: row.invented,
  row: row.row,
});

export function machineColumns(system: UnitSystem): readonly ColumnSpec[] {
  return [
    words("name", "Machine", 60, "Which machine."),
    hourly("own", "Rental or ownership per hour", "Rental, or what it loses in value, per hour at work."),
    hourly("fuel", "Fuel per hour", "Fuel and oil for an hour at work."),
    hourly("upkeep", "Upkeep per hour", "Wear parts and repairs for an hour at work."),
    {
      key: "share",
      title: "Share of the hours",
      kind: "share",
      input: { min: 0, max: 1, message: "Share of the usual machine hours that it works." },
    },
    {
      key: "width",
      title: "Narrowest way in",
      kind: "length",
      input: {
        min: 0,
        max: { US: 60, SI: 20 }[system],
        message: "Width it needs to pass, room at its sides included.",
      },
    },
    {
      key: "lift",
      title: "Lift",
      kind: "weight",
      input: {
        min: 0,
        max: { US: 40_000, SI: 20_000 }[system],
        message:
          "What it lifts at that reach by its own load chart, slings and bucket taken off; blank if it lifts nothing.",
      },
    },
    {
      key: "reach",
      title: "at reach",
      kind: "length",
      input: {
        min: 0,
        max: { US: 60, SI: 20 }[system],
        message: "From its slewing center, as the load chart counts it.",
      },
    },
    markColumn,
  ];
}

export const machineRow = (machine: Machine, system: UnitSystem): CellValue[] => [
  machine.name,
  orBlank(machine.own),
  orBlank(machine.fuel),
  orBlank(machine.upkeep),
  machine.share,
  typedIn("length", machine.width, system),
  typedIn("weight", machine.lift, system),
  typedIn("length", machine.reach, system),
  markCell(machine),
];

export const readMachine = (row: RowReader): Machine => ({
  name: row.text("name"),
  own: row.number("own", { min: 0 }),
  fuel: row.number("fuel", { min: 0 }),
  upkeep: row.number("upkeep", { min: 0 }),
  share: row.number("share", { min: 0, max: 1 }) ?? 0,
  width: row.measure("width", "length"),
  lift: row.measure("lift", "weight"),
  reach: row.measure("reach", "length"),
  invented: row.invented,
  row: row.row,
});
