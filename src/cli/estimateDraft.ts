import { readFile, writeFile } from "node:fs/promises";
import { parseArgs } from "node:util";
import { shippedBook } from "../book/shipped";
import type { Book } from "../book/types";
import { readQuantity } from "../calc/quantity/readQuantity";
import { SOIL_NAMES } from "../calc/earth/soil";
import { readUnitSystem, type UnitSystem } from "../calc/quantity/unitSystem";
import { defaultUnit, toInside, type Measure } from "../calc/quantity/measures";
import { companyOf } from "../job/draft/company";
import { draftOf, type DraftWish } from "../job/draft/draft";
import { offersOfBook } from "../job/draft/offersOfBook";
import { blankJob, type Job } from "../job/facts";
import { CHARACTERS } from "../job/facts/start";
import { usedJob } from "../job/facts/standing";
import { readNotes } from "../job/notes/readNotes";
import { rangeOf } from "../job/range/range";
import { readBook } from "../workbook/company/readBook";
import { draftJson, draftText, type Drafted } from "./draftText";
import { completenessOf, jobWorkbook } from "./jobWorkbook";

export const DRAFT_USAGE =
  `Usage: npm run estimate -- --fall "3'2" --run "14 ft" --lip "30 in" --sound clear --soil clay --gate "34 in" ` +
  `[--notes "falls 3'2, 14 ft long"] [--groundwater "5 ft"] [--units US|SI] [--book BOOK.xlsx] [--out JOB.xlsx] [--json]`;

const OPTIONS = {
  fall: { type: "string" },
  run: { type: "string" },
  lip: { type: "string" },
  sound: { type: "string" },
  soil: { type: "string" },
  gate: { type: "string" },
  groundwater: { type: "string" },
  notes: { type: "string" },
  units: { type: "string" },
  book: { type: "string" },
  out: { type: "string" },
  json: { type: "boolean" },
} as const;

type Given = Readonly<Partial<Record<keyof typeof OPTIONS, string | boolean>>>;

/** Whether a command line asks for a draft from answers, and not for the estimate of a file. */
export function asksForDraft(args: readonly string[]): boolean {
  return args.some((argument) =>
    /^--(?:fall|run|lip|sound|soil|gate|groundwater|notes|book|out|units)(?:=|$)/.test(argument),
  );
}

/**
 * Drafts a job from answers or notes and gives what to print. An answer that cannot be read is left out, with a sentence,
 * and the rest is drafted. Throws a sentence for the user where the command itself makes no sense.
 */
export async function estimateDraft(args: readonly string[]): Promise<string> {
  const problems: string[] = [];
  const given = optionsOf(joined(args, problems));
  const book = await bookOf(given, problems);
  const { system } = book;
  const { typed, understood } = answersOf(given, system, problems);
  const usual = usedJob(blankJob(system), companyOf(book));
  const wish: DraftWish = { typed, offers: offersOfBook(book), usual };
  const draft = draftOf(wish);
  const drafted: Drafted = {
    draft,
    range: rangeOf(wish, draft),
    typed,
    understood,
    problems: [...problems, ...draft.unclear],
    invented: inventedIn(book),
    complete: completenessOf(book, typed, draft),
  };
  const out = text(given.out);
  if (out !== undefined) {
    if (!/\.xlsx$/i.test(out)) throw new Error(`${out} must end in .xlsx.`);
    await writeFile(out, await jobWorkbook(book, typed, draft));
  }
  const written = out === undefined ? "" : `\n\nWritten: ${out}, with your answers, and the draft marked as assumed.`;
  return given.json === true ? JSON.stringify(draftJson(drafted), null, 2) : draftText(drafted) + written;
}

/** What of a book nobody has changed or confirmed. */
function inventedIn({ products, labor, machines, pricing }: Book): string[] {
  const parts: readonly (readonly [string, readonly { readonly invented: boolean }[]])[] = [
    ["prices", products],
    ["wages", labor.wages],
    ["burden", labor.burden],
    ["production rates", [...labor.rates, ...labor.sizes]],
    ["machines", machines],
    ["markups", [pricing]],
  ];
  return parts.flatMap(([part, rows]) => (rows.some(({ invented }) => invented) ? [part] : []));
}

/** Options whose values are answers: without one the rest is drafted. */
const ANSWERS: ReadonlySet<string> = new Set(["fall", "run", "lip", "sound", "soil", "gate", "groundwater", "notes"]);

/**
 * Each option and its value in one, as the parser of options would take `--fall "-3 ft"` for two options. An answer that has
 * no value is told of and left open.
 */
function joined(args: readonly string[], problems: string[]): string[] {
  const all: string[] = [];
  for (let at = 0; at < args.length; at++) {
    const argument = args[at] ?? "";
    const name = argument.slice(2);
    const value = args[at + 1];
    if (!argument.startsWith("--") || !(name in OPTIONS) || OPTIONS[name as keyof typeof OPTIONS].type !== "string")
      all.push(argument);
    else if (value !== undefined && !value.startsWith("--")) {
      all.push(`${argument}=${value}`);
      at++;
    } else if (ANSWERS.has(name)) problems.push(`${argument}: no answer stands behind it; it is left open.`);
    else all.push(argument);
  }
  return all;
}

function optionsOf(args: readonly string[]): Given {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true });
    if (positionals.length > 0) throw new Error(`"${positionals[0] ?? ""}" belongs to no option.`);
    return values;
  } catch (error) {
    const reason = error instanceof Error ? (error.message.split(/[.\n]/)[0] ?? "") : String(error);
    throw new Error(`${reason.replace(/\.?$/, ".")} ${DRAFT_USAGE}`);
  }
}

function text(value: string | boolean | undefined): string | undefined {
  return typeof value === "string" && value.trim() !== "" ? value.trim() : undefined;
}

/** The company's book, else the one that ships for the units asked for. */
async function bookOf(given: Given, problems: string[]): Promise<Book> {
  const units = text(given.units);
  let wanted: UnitSystem | undefined;
  try {
    wanted = units === undefined ? undefined : readUnitSystem(units);
  } catch {
    throw new Error(`--units is US or SI; got "${units ?? ""}".`);
  }
  const file = text(given.book);
  if (file === undefined) return shippedBook(wanted ?? "US");
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch {
    throw new Error(`There is no book ${file}, or it cannot be read.`);
  }
  const { book, problems: faults } = await readBook(file, bytes, wanted);
  problems.push(...faults.map(({ sentence }) => sentence));
  return book;
}

type AnswersRead = Pick<Drafted, "typed" | "understood">;

/** What notes and options say together; an option wins over the notes. */
function answersOf(given: Given, system: UnitSystem, problems: string[]): AnswersRead {
  const notes = readNotes(text(given.notes) ?? "", system);
  problems.push(
    ...notes.open.map(({ said, why }) => `Notes, "${said}": ${why.replace(/[.?]?$/, (end) => end || ".")}`),
  );
  const measure = (option: keyof typeof OPTIONS, what: string, kind: Measure): number | undefined => {
    const said = text(given[option]);
    if (said === undefined || /^(?:don'?t know|unknown|\?)$/i.test(said)) return undefined;
    try {
      return toInside(kind, readQuantity(said, defaultUnit(kind, system), what), system);
    } catch (error) {
      problems.push(`--${option}: ${error instanceof Error ? error.message : String(error)}.`);
      return undefined;
    }
  };
  const lip = measure("lip", "lip", "size");
  const said: Partial<Job> = {
    fallTyped: measure("fall", "fall", "length"),
    run: measure("run", "run", "length"),
    lips: lip === undefined ? [] : [{ width: lip }],
    soil: soilOf(text(given.soil), problems),
    waterCharacter: characterOf(text(given.sound), problems),
    accessWidth: measure("gate", "way in", "length"),
    groundwaterDepth: measure("groundwater", "groundwater", "length"),
  };
  const typed: Record<string, unknown> = { ...notes.job };
  for (const [key, value] of Object.entries(said)) {
    if (value !== undefined && !(Array.isArray(value) && value.length === 0)) typed[key] = value;
  }
  return {
    typed: typed as unknown as Job,
    understood: notes.understood,
  };
}

function soilOf(said: string | undefined, problems: string[]): string | undefined {
  if (said === undefined) return undefined;
  const name = SOIL_NAMES.find((one) => one === said.toLowerCase());
  if (name === undefined) problems.push(`--soil: "${said}" is none of ${SOIL_NAMES.join(", ")}.`);
  return name;
}

function characterOf(said: string | undefined, problems: string[]): Job["waterCharacter"] {
  if (said === undefined) return undefined;
  const name = CHARACTERS.find((one) => one === said.toLowerCase() || one.startsWith(said.toLowerCase()));
  if (name === undefined) problems.push(`--sound: "${said}" is none of ${CHARACTERS.join(", ")}.`);
  return name;
}
