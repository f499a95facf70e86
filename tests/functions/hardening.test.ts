import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Problem } from "../../src/calc/problem";
import { catalogue } from "../../src/functions/catalogue";
import { inWords, type Argument } from "../../src/functions/contract/argument";
import type { Declaration } from "../../src/functions/contract/declaration";
import { calls } from "./hostile";

const RUNS = Number(process.env.HARDENING_RUNS ?? 2000);
const ONLY = process.env.HARDENING_ONLY?.split(",");
/** The longest a cell may take; plans and reconciliations weigh many rows and may take longer. */
const LIMIT_MS = 200;
const LONGER = new Map([
  ["CUTPLAN", 3000],
  ["RECONCILE", 1000],
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

/** Every name a sentence may use for what the user passed: arguments and the columns of their ranges. */
function namesOf(declaration: Declaration): string[] {
  const of = ([key, { columns, repeated }]: [string, Argument<unknown>]): string[] => [
    inWords(key),
    ...Object.keys({ ...columns, ...repeated }).map(inWords),
  ];
  return Object.entries(declaration.args).flatMap(of);
}

function freeze<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  Object.values(value).forEach(freeze);
  return Object.freeze(value);
}

/** The time a call takes on this machine, without what other programs take of it: the least of a few tries. */
function leastMilliseconds(call: () => void, enough: number): number {
  let least = Infinity;
  for (let tried = 0; tried < 5 && least > enough; tried++) {
    const began = performance.now();
    call();
    least = Math.min(least, performance.now() - began);
  }
  return least;
}

describe.each(catalogue.filter((d) => ONLY === undefined || ONLY.includes(d.name)).map((d) => [d.name, d] as const))(
  "RILL.%s",
  (name, declaration) => {
    const names = namesOf(declaration);
    const limit = LONGER.get(name) ?? LIMIT_MS;

    it(`stands ${RUNS} calls of every kind`, () => {
      let answered = 0;
      fc.assert(
        fc.property(calls(declaration), (args) => {
          // A frozen argument makes every attempt to change it throw.
          freeze(args);
          const run = (): void => {
            let value: unknown;
            try {
              value = declaration.evaluate(args);
            } catch (error) {
              if (!(error instanceof Problem)) throw error;
              if (error.message.includes("failed inside")) throw new Error(error.message, { cause: error });
              if (!names.some((word) => error.message.toLowerCase().includes(word)))
                throw new Error(`names no argument: "${error.message}"`, { cause: error });
              if (/NaN|Infinity|undefined|\[object|function/.test(error.message.replace(/"[^"]*"/g, "")))
                throw new Error(`unreadable: "${error.message}"`, { cause: error });
              return;
            }
            const wrong = wrongWith(value);
            if (wrong !== undefined) throw new Error(wrong);
            answered++;
          };
          const took = leastMilliseconds(run, limit);
          if (took > limit) throw new Error(`took ${Math.round(took)} ms`);
        }),
        { numRuns: RUNS },
      );
      // A test whose calls are all refused would prove little.
      expect(answered).toBeGreaterThan(RUNS / 20);
    });
  },
);
