import { Problem } from "../../calc/problem";
import { VERDICTS, type Check } from "../../job/checks";
import type { State } from "../../job/evaluate";
import type { Job } from "../../job/facts";
import { fromSi, type Kind } from "../../job/facts/units";
import { RESULTS, type Result, type ResultValue, type Topic } from "../../job/results";
import type { CellValue } from "../model";
import type { Recalculated } from "../recalculate";

/** How far two numbers may lie apart, as a share of them; amounts agree to the cent. */
const TOLERANCE = 1e-6;
const HALF_A_CENT = 0.005;

/** A result on which the two calculations differ. */
export interface Difference {
  readonly topic: string;
  /** Its name, and its place where the name stands for more than a cell. */
  readonly name: string;
  readonly workbook: CellValue | "(no such name)";
  readonly job: CellValue;
}

/** Lays what the workbook's cells came to beside what the job's own functions came to. */
export function compareCalculations(workbook: Recalculated, state: State, job: Job): Difference[] {
  const { wrong } = state.price.standing;
  const results = (Object.keys(RESULTS) as Topic[]).flatMap((topic) =>
    RESULTS[topic].flatMap((result) => differencesIn(topic, result, workbook, state, job)),
  );
  const differing = [...results, ...differingVerdicts(workbook, state.checks)];
  // Where something is wrong, what follows from it is in error in cells of which the job keeps no account.
  return wrong ? differing.filter(({ workbook: cell }) => !FAILED.test(String(cell))) : differing;
}

/** What cells show that are in error, and checks of them. */
const FAILED = /^(#[A-Z]|ERROR$|FIX$)/;

/** Checks of the workbook that only papers decide, which are no facts of the job. */
const OF_PAPERS = new Set(["Receipts", "Reconcile"]);
/** Checks that go by what is picked to print, or by cells that no fact can be read from. */
const OF_CELLS = new Set(["Lines of the order that is shown", "Order quantities or prices in text"]);

function differingVerdicts(workbook: Recalculated, checks: readonly Check[]): Difference[] {
  const left = new Map(checks.map((check) => [check.label, check.verdict]));
  const shown = (workbook.named("Checks") ?? []).flatMap(([label, , , , verdict = "", where = ""]): Difference[] => {
    const sheet = String(where).replace(/[:!].*$/, "");
    if (OF_PAPERS.has(sheet) || OF_CELLS.has(String(label))) return [];
    const calculated = left.get(String(label)) ?? "(no such check)";
    left.delete(String(label));
    // A table in error shows its sentence in its head and nothing below it, which its checks wait for.
    const waits = calculated === VERDICTS.error && verdict === VERDICTS.blank;
    return calculated === verdict || waits
      ? []
      : [{ topic: "checks", name: String(label), workbook: verdict, job: calculated }];
  });
  const missing = [...left].map(([name, verdict]): Difference => ({
    topic: "checks",
    name,
    workbook: "(no such check)",
    job: verdict,
  }));
  return [...shown, ...missing];
}

function differencesIn(topic: Topic, result: Result, workbook: Recalculated, state: State, job: Job): Difference[] {
  const { name, column, kind, partly, values } = result;
  const rows = workbook.named(name);
  if (!rows) return [{ topic, name, workbook: "(no such name)", job: "" }];
  const shown = column === undefined ? rows.flat() : rows.map((row) => row[column - 1] ?? "");
  const calculated = values(state, job);
  const toItsEnd = column !== undefined && partly === undefined;
  const length = Math.max(calculated.length, toItsEnd ? shown.length : 1);
  return Array.from({ length }, (_, index): Difference[] => {
    const cell = shown[index] ?? "";
    const kindHere: Kind = typeof kind === "string" ? kind : (kind[index] ?? "number");
    const value = inUnits(calculated[index], kindHere, job);
    if (agrees(cell, value, kindHere)) return [];
    return [{ topic, name: length > 1 ? `${name} ${index + 1}` : name, workbook: cell, job: wordsFor(value) }];
  }).flat();
}

function inUnits(value: ResultValue, kind: Kind, { system }: Job): ResultValue {
  return typeof value === "number" ? fromSi(kind, value, system) : value;
}

function agrees(cell: CellValue, value: ResultValue, kind: Kind): boolean {
  if (typeof value === "number") {
    if (typeof cell !== "number") return false;
    const apart = Math.abs(cell - value);
    return kind === "money" ? apart < HALF_A_CENT : apart <= TOLERANCE * Math.max(1, Math.abs(value));
  }
  // Only the cells know which of them is in error.
  if (value === "wrong") return String(cell).startsWith("wrong: ");
  if (typeof value === "string") return cell === value;
  // A table in error shows its sentence in its head and nothing below it.
  return value instanceof Problem ? cell === "" || /^#[A-Z]/.test(String(cell)) : cell === "";
}

function wordsFor(value: ResultValue): CellValue {
  if (value === undefined) return "";
  return value instanceof Problem ? `(${value.message})` : value;
}
