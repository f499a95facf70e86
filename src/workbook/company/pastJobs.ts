import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { PastJob } from "../../book/types";
import type { ColumnSpec } from "../layout/tableColumns";
import type { CellValue } from "../model";
import { dayCell, markCell, markColumn, orBlank, type RowReader } from "./cells";
import { typedIn } from "../typedIn";

const MOST = 10_000_000;

export const pastJobColumns: readonly ColumnSpec[] = [
  { key: "name", title: "Job", kind: "text", input: { max: 80, message: "What the job was called." } },
  { key: "day", title: "Finished", kind: "date", input: { message: "Day it was handed over." } },
  {
    key: "run",
    title: "Run",
    kind: "length",
    input: { min: 0, max: 1000, message: "Length of the stream on the level." },
  },
  { key: "fall", title: "Fall", kind: "length", input: { min: 0, max: 100, message: "From the highest lip down." } },
  { key: "price", title: "Price", kind: "money", input: { min: 0, max: MOST, message: "Paid for it, without tax." } },
  {
    key: "estimatedCost",
    title: "Cost, estimated",
    kind: "money",
    input: { min: 0, max: MOST, message: "Cost when it was quoted." },
  },
  { key: "cost", title: "Cost, as it came", kind: "money", input: { min: 0, max: MOST, message: "Cost in the end." } },
  {
    key: "estimatedHours",
    title: "Hours, estimated",
    kind: "hours",
    input: { min: 0, max: 100_000, message: "Crew hours when it was quoted." },
  },
  {
    key: "hours",
    title: "Hours, as they came",
    kind: "hours",
    input: { min: 0, max: 100_000, message: "Crew hours in the end." },
  },
  markColumn,
];

export const pastJobRow = (job: PastJob, system: UnitSystem): CellValue[] => [
  job.name,
  dayCell(job.day),
  typedIn("length", job.run, system),
  typedIn("length", job.fall, system),
  orBlank(job.price),
  orBlank(job.estimatedCost),
  orBlank(job.cost),
  orBlank(job.estimatedHours),
  orBlank(job.hours),
  markCell(job),
];

export const readPastJob = (row: RowReader): PastJob => ({
  name: row.text("name"),
  day: row.day("day"),
  run: row.measure("run", "length"),
  fall: row.measure("fall", "length"),
  price: row.number("price", { min: 0 }),
  estimatedCost: row.number("estimatedCost", { min: 0 }),
  cost: row.number("cost", { min: 0 }),
  estimatedHours: row.number("estimatedHours", { min: 0 }),
  hours: row.number("hours", { min: 0 }),
  invented: row.invented,
  row: row.row,
});
