import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Problem } from "../../src/calc/problem";
import { catalogue, loadLater } from "../../src/functions/catalogue";
import { inWords, type Argument } from "../../src/functions/contract/argument";
import type { Declaration } from "../../src/functions/contract/declaration";
import { tries } from "../effort";
import { calls, type Call } from "./hostile";

await loadLater();

const RUNS = Number(process.env.HARDENING_RUNS ?? tries(300, 2000));
const ONLY = process.env.HARDENING_ONLY?.split(",");
/** The longest a cell may take; plans and reconciliations weigh many rows and may take longer. */
const LIMIT_MS = 200;
const LONGER = new Map([
  // What Excel may be kept waiting for, and then some for a busy machine; the cut plan's own tests hold its time.
  ["CUTPLAN", 1000],
  ["RECONCILE", 1000],
  // A hundred whole drafts; 0.4 s where nothing else runs.
  ["PRICERANGE", 1500],
]);
/** Calls that answer take a whole draft or a hundred: one in so many of the usual number is made. */
const FEWER = new Map([
  ["DRAFT", 5],
  ["OPTION", 10],
  ["PRICERANGE", 30],
]);

/** Why an answer is not what a cell can show; undefined when it is. */
function wrongWith(value: unknown): string | undefined {
  const wrongCell = (cell: unknown): boolean =>
    typeof cell === "number" ? !Number.isFinite(cell) : typeof cell !== "string" && typeof cell !== "boolean";
  if (!Array.isArray(value)) return wrongCell(value) ? `answered ${String(value)}` : undefined;
  const rows = value as unknown[][];
  const width = rows[0]?.length ?? 0;
  if (width === 0) return "answered an empty table";
  for (const row of rows) {
    if (row.length !== width) return "answered a ragged table";
    const bad = row.find(wrongCell);
    if (bad !== undefined || row.includes(undefined)) return `answered a table that holds ${String(bad)}`;
  }
  return undefined;
}

/** How else a sentence may say a word of an argument's name: "give a wider lip" means lip_width. */
const ALSO: Readonly<Record<string, string>> = { length: "longer", width: "wider", slope: "steeper" };

/** Whether a sentence names an argument or one of its columns. */
function names(sentence: string, [key, { columns, repeated }]: [string, Argument<unknown>]): boolean {
  const words = [key, ...Object.keys({ ...columns, ...repeated })].flatMap((name) => inWords(name).split(" "));
  return words
    .flatMap((word) => [word.replace(/s$/, ""), ALSO[word] ?? word])
    .some((word) => sentence.toLowerCase().includes(word));
}

/** Why a sentence does not lead the user to the cell to fix; undefined when it does. */
function misleading(declaration: Declaration, sentence: string, { spoilt }: Call): string | undefined {
  const entries = Object.entries(declaration.args);
  if (sentence.includes("failed inside")) return `a defect: ${sentence}`;
  if (!entries.some((entry) => names(sentence, entry))) return `names no argument: "${sentence}"`;
  if (/NaN|Infinity|undefined|\[object|function/.test(sentence.replace(/"[^"]*"/g, "")))
    return `unreadable: "${sentence}"`;
  const wrong = spoilt && entries[spoilt.at];
  // Units change what every other number means: then another argument may be the one out of range.
  if (!wrong || wrong[0].startsWith("unit") || names(sentence, wrong) || !answers(declaration, spoilt.before))
    return undefined;
  return `names another argument than ${wrong[0]}, the only strange one: "${sentence}"`;
}

function answers(declaration: Declaration, args: readonly unknown[]): boolean {
  try {
    declaration.evaluate(args);
    return true;
  } catch {
    return false;
  }
}

function freeze<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  Object.values(value).forEach(freeze);
  return Object.freeze(value);
}

/** The processor time a call takes on this machine, the least of a few tries: what other programs take is not counted. */
function leastMilliseconds(call: () => void, enough: number): number {
  let least = Infinity;
  for (let tried = 0; tried < 5 && least > enough; tried++) {
    const began = process.cpuUsage();
    call();
    const { user, system } = process.cpuUsage(began);
    least = Math.min(least, (user + system) / 1000);
  }
  return least;
}

describe.each(catalogue.filter((d) => ONLY === undefined || ONLY.includes(d.name)).map((d) => [d.name, d] as const))(
  "RILL.%s",
  (name, declaration) => {
    const limit = LONGER.get(name) ?? LIMIT_MS;
    const runs = Math.ceil(RUNS / (FEWER.get(name) ?? 1));

    it(`stands ${runs} calls of every kind`, () => {
      let answered = 0;
      fc.assert(
        fc.property(calls(declaration), (call) => {
          // A frozen argument makes every attempt to change it throw.
          freeze(call);
          const run = (): void => {
            let value: unknown;
            try {
              value = declaration.evaluate(call.args);
            } catch (error) {
              if (!(error instanceof Problem)) throw error;
              refusal = error.message;
              return;
            }
            const wrong = wrongWith(value);
            if (wrong !== undefined) throw new Error(wrong);
          };
          let refusal: string | undefined;
          const took = leastMilliseconds(run, limit);
          if (took > limit) throw new Error(`took ${Math.round(took)} ms`);
          const wrong = refusal === undefined ? undefined : misleading(declaration, refusal, call);
          if (wrong !== undefined) throw new Error(wrong);
          if (refusal === undefined) answered++;
        }),
        { numRuns: runs },
      );
      // A test whose calls are mostly refused at the first argument would prove little; in few calls the share scatters.
      expect(answered).toBeGreaterThan(runs / (runs < 2000 ? 6 : 4));
    });
  },
);
