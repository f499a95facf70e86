import { evaluate, type State } from "../../../src/job/evaluate";
import type { Job } from "../../../src/job/facts";
import { assemble } from "../../../src/workbook/assemble";
import { readJob } from "../../../src/workbook/jobCells/readJob";
import { cellsToType } from "../../../src/workbook/jobCells/typeJob";
import { openWorkbook, type OpenedWorkbook, type Recalculated } from "../../../src/workbook/recalculate";
import { sheets } from "../../../src/workbook/sheets";
import { writeWorkbook } from "../../../src/workbook/write";
import type { TrialJob } from "./jobs";

const opened = new Map<"US" | "SI", Promise<OpenedWorkbook>>();

/** The demo workbook of a system, opened once for all jobs that are typed into it. */
export function demoOf(system: "US" | "SI"): Promise<OpenedWorkbook> {
  const known = opened.get(system);
  if (known) return known;
  const fresh = writeWorkbook(assemble(sheets, system, "demo"), { charts: false }).then(openWorkbook);
  opened.set(system, fresh);
  return fresh;
}

/** Digits that a person types: enough to tell a tape's eighths apart. */
const DIGITS = 5;

/** A job typed into the workbook, calculated there, read back, and calculated by the job's own functions. */
export function calculateBoth(
  workbook: OpenedWorkbook,
  { system, facts }: TrialJob,
  digits: number | "all" = DIGITS,
): { readonly workbook: Recalculated; readonly job: Job; readonly state: State } {
  const calculated = workbook.recalculate(typedCells(workbook, { system, facts }, digits));
  const { used: job, wrong } = readJob(calculated);
  if (wrong.length > 0) throw new Error(`cells that cannot be read: ${JSON.stringify(wrong)}`);
  return { workbook: calculated, job, state: evaluate(job) };
}

export function typedCells(
  { names }: OpenedWorkbook,
  { system, facts }: TrialJob,
  digits: number | "all" = DIGITS,
): ReadonlyMap<string, string | number | boolean> {
  return cellsToType(facts, digits === "all" ? { system, names } : { system, names, digits });
}

/** The first cell of a named area, or one so many rows below it. */
export function cellIn({ names }: Pick<OpenedWorkbook, "names">, name: string, down = 0): string {
  const [, sheet = "", column = "", top = ""] = /^(.+)!\$(\w+)\$(\d+)/.exec(names.get(name) ?? "") ?? [];
  return `${sheet}!${column}${Number(top) + down}`;
}
