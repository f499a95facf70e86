import { fileURLToPath } from "node:url";
import { asksForDraft, DRAFT_USAGE, estimateDraft } from "./estimateDraft";
import { evaluate } from "../job/evaluate";
import { compareCalculations, type Difference } from "../workbook/jobCells/compare";
import { readJob } from "../workbook/jobCells/readJob";
import { unsound } from "../workbook/jobCells/soundness";
import { tapeTexts } from "../workbook/jobCells/tapeTexts";
import type { OpenedWorkbook, Recalculated } from "../workbook/recalculate";
import { unitsHeld } from "../workbook/unitsHeld";
import { summarize, summaryText } from "../workbook/summary";
import { runCommand } from "./runCommand";
import { openWorkbookFile } from "./workbookFile";

const USAGE =
  'Usage: npm run estimate -- FILE.xlsx [--json], or from answers: npm run estimate -- --fall 3\'2 --run "14 ft"';

/** What the command prints, and whether both calculations of the job came to the same. */
export interface Estimate {
  readonly text: string;
  readonly agrees: boolean;
}

/**
 * Recalculates a workbook, works its job out a second time by functions that share no formula with it, and gives what to
 * print: the text for people, or JSON. Throws a sentence for the user where there is no price that could be trusted.
 */
export async function estimate(args: readonly string[]): Promise<Estimate> {
  if (asksForDraft(args)) return { text: await estimateDraft(args), agrees: true };
  const unknown = args.find((argument) => argument.startsWith("-") && argument !== "--json");
  if (unknown !== undefined) throw new Error(`There is no option ${unknown}. ${USAGE}`);
  const [file, ...more] = args.filter((argument) => argument !== "--json");
  if (file === undefined || more.length > 0) throw new Error(USAGE);
  const { workbook, taken } = readAsTape(await openWorkbookFile(file));
  const summary = summarize(workbook);
  if (!summary) throw new Error(`${file} is not a Rillwright estimate: it has no cell named Units that says US or SI.`);
  refuseUnsound(file, unsound(workbook));
  const { used, wrong } = readJob(workbook);
  refuseUnsound(
    file,
    wrong.map(({ cell, shown }) => `${cell} holds "${shown}", which is not what it asks for`),
  );
  const differences = compareCalculations(workbook, evaluate(used), used);
  const agrees = differences.length === 0;
  if (args.includes("--json"))
    return { text: JSON.stringify({ file, ...summary, taken, differences }, null, 2), agrees };
  const told =
    taken.length === 0 ? [] : [["Texts in tables, read as a tape says them:", ...taken.map(indented)].join("\n")];
  return { text: [summaryText(summary), ...told, secondCalculation(differences)].join("\n\n"), agrees };
}

/** The workbook calculated with numbers in place of what a tape says in columns of tables, and a sentence for each. */
function readAsTape(opened: OpenedWorkbook): { workbook: Recalculated; taken: readonly string[] } {
  const workbook = opened.recalculate();
  const { names, formulas, named } = workbook;
  const system = unitsHeld(named("Units"));
  const texts = tapeTexts(named, { system, names }).filter(({ cell }) => !formulas.has(cell));
  if (texts.length === 0) return { workbook, taken: [] };
  return {
    workbook: opened.recalculate(new Map(texts.map(({ cell, value }) => [cell, value]))),
    taken: texts.map(({ said }) => said),
  };
}

/** How many reasons are listed before the rest is only counted. */
const MOST_REASONS = 12;

function indented(line: string): string {
  return `  ${line}`;
}

function refuseUnsound(file: string, reasons: readonly string[]): void {
  if (reasons.length === 0) return;
  const more = reasons.length - MOST_REASONS;
  const listed = reasons.slice(0, MOST_REASONS).map(indented);
  throw new Error(
    [`${file} has no price that could be trusted:`, ...listed, ...(more > 0 ? [`  and ${more} more`] : [])].join("\n"),
  );
}

function secondCalculation(differences: readonly Difference[]): string {
  if (differences.length === 0) return "Calculated a second time by other code: the same in every result and check.";
  const rows = differences.map(
    ({ name, workbook, job }) => `  ${name}: ${shown(workbook)} by the cells, ${shown(job)} by the job`,
  );
  return ["THE TWO CALCULATIONS DIFFER: do not use this price before it is known why.", ...rows].join("\n");
}

function shown(value: Difference["job"]): string {
  return value === "" ? "nothing" : String(value);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await runCommand(`${USAGE}\n${DRAFT_USAGE}`, async (args) => {
    const { text, agrees } = await estimate(args);
    if (!agrees) process.exitCode = 1;
    return text;
  });
}
