import { shippedBook } from "../../book/shipped";
import type { Book, Row } from "../../book/types";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { FACTS } from "../../job/facts";
import type { CellFact, TableFact } from "../../job/facts/fact";
import { fromSi, unitOf } from "../../job/facts/units";
import { factCell } from "../layout/factCells";
import type { CellValue } from "../model";
import type { Recalculated } from "../recalculate";
import { tablePlaces } from "../jobCells/places";
import {
  heldIn,
  heldRows,
  moneyInWords,
  sameValue,
  type CellChange,
  type Compared,
  type Difference,
} from "./difference";
import { MARKUP_ROWS } from "./fields";
import { companyCell, companyValue, ownFacts } from "./newJob";

type Held = Readonly<Record<string, unknown>>;

/** A row of the book beside the columns of a job that it fills. */
interface Line {
  readonly name: string;
  readonly says: Held;
  /** What the tool shipped in its place, where the row is still marked as such. */
  readonly shipped: Held | undefined;
}

/** A table of the job that is the company's: which row is which, and what of it the book knows better. */
interface Compare {
  readonly key: "burden" | "wages" | "machines" | "tasks" | "sizeHours" | "markups";
  readonly what: string;
  readonly fields: Readonly<Record<string, string>>;
  readonly nameOf: (row: Held, at: number) => string;
  readonly lines: (book: Book) => readonly (Row & Held)[];
}

const named =
  (field: string) =>
  (row: Held): string =>
    String(row[field] ?? "").trim();
const sized = ({ pipe, stone }: Held): string =>
  [pipe, stone].map((size) => (typeof size === "number" ? size.toPrecision(6) : "")).join("|");

/** How many are on the crew and what a machine's share of the hours is belongs to the job. */
const COMPARED: readonly Compare[] = [
  {
    ...{ key: "burden", what: "Burden", nameOf: named("line"), fields: { share: "share" } },
    lines: ({ labor }) => labor.burden.map((line) => ({ ...line })),
  },
  {
    ...{ key: "wages", what: "Wage", nameOf: named("role"), fields: { wage: "wage" } },
    lines: ({ labor }) => labor.wages.map((wage) => ({ ...wage })),
  },
  {
    ...{ key: "machines", what: "Machine", nameOf: named("name") },
    fields: { own: "hire or ownership", fuel: "fuel", upkeep: "upkeep", width: "way in", lift: "lift", reach: "reach" },
    lines: ({ machines }) => machines.map((machine) => ({ ...machine })),
  },
  {
    ...{ key: "tasks", what: "Task", nameOf: named("name"), fields: { hours: "hours", machineHours: "machine hours" } },
    lines: ({ labor }) => labor.rates.map((rate) => ({ ...rate, name: rate.task })),
  },
  {
    ...{ key: "sizeHours", what: "Hours by size", nameOf: sized },
    fields: { pipeTimes: "pipe", stoneTimes: "lip stone", boulderTimes: "boulders" },
    lines: ({ labor }) => labor.sizes.map((size) => ({ ...size })),
  },
  {
    ...{ key: "markups", what: "Markup", nameOf: (_, at) => MARKUP_ROWS[at] ?? "", fields: { markup: "share" } },
    lines: ({ pricing }) => pricing.markups.map((markup) => ({ markup, invented: pricing.invented })),
  },
];

/**
 * What would change in a job's wages, burden, machines, production rates, markups and pricing if they were brought up to
 * date with the book. What came with the tool and nobody changed is nobody's news.
 */
export function rateUpdates(book: Book, job: Recalculated): Compared {
  const tables = COMPARED.map((compare) => tableUpdates(compare, book, job));
  return {
    differences: [...tables.flatMap(({ differences }) => differences), ...factUpdates(book, job)],
    left: tables.flatMap(({ left }) => left),
  };
}

function tableUpdates(compare: Compare, book: Book, job: Recalculated): Compared {
  const { key, what, fields, nameOf } = compare;
  const places = new Map(tablePlaces(FACTS[key] as TableFact, job.names).map((place) => [place.key, place]));
  const rows = new Map<string, number>();
  heldRows(key, job).forEach((row, at) => {
    const name = nameOf(row, at).toLowerCase();
    if (name !== "" && !rows.has(name)) rows.set(name, at);
  });
  const missing: string[] = [];
  const differences = linesOf(compare, book).flatMap(({ name, says, shipped }): Difference[] => {
    const at = rows.get(name.toLowerCase());
    if (at === undefined) {
      if (!shipped) missing.push(name);
      return [];
    }
    const changed = Object.entries(fields).flatMap(([field, title]): { words: string; cell: CellChange }[] => {
      const [place, value] = [places.get(field), says[field]];
      if (!place || value === undefined || (shipped && sameValue(value as number, shipped[field] as number))) return [];
      const to = written(place.fact, value, book.system);
      const cell = place.cell(at);
      const from = heldIn(job, cell);
      if (sameValue(from, to)) return [];
      const words = `${title} ${inWords(place.fact, from, book.system)} → ${inWords(place.fact, to, book.system)}`;
      return [{ words, cell: { cell, from, to } }];
    });
    if (changed.length === 0) return [];
    const shown = key === "sizeHours" ? sizeInWords(says, book.system) : name;
    return [
      {
        name: `${what}: ${shown}`,
        words: changed.map(({ words }) => words).join(", "),
        cells: changed.map(({ cell }) => cell),
      },
    ];
  });
  const names = key === "sizeHours" || key === "markups" ? [] : missing;
  const left = names.map((name) => `${what}: ${name} stands in the book and not in the job.`);
  return { differences, left };
}

function linesOf({ lines, nameOf }: Compare, book: Book): Line[] {
  const first = new Map(lines(shippedBook(book.system)).map((row, at) => [nameOf(row, at).toLowerCase(), row]));
  return lines(book).flatMap((row, at): Line[] => {
    const name = nameOf(row, at);
    if (name === "") return [];
    return [{ name, says: row, shipped: row.invented ? first.get(name.toLowerCase()) : undefined }];
  });
}

/** Cells of their own: what the job takes from the company, beneath what was typed for this job. */
function factUpdates(book: Book, job: Recalculated): Difference[] {
  return ownFacts(book).flatMap(([key, value]): Difference[] => {
    const fact = FACTS[key] as CellFact & { readonly name: string };
    // A job of another edition may have its facts in other rows.
    if (heldIn(job, factCell(fact.name, "key")) !== fact.name) return [];
    const cell = companyCell(key);
    const [from, to] = [heldIn(job, cell), companyValue(key, value, book.system)];
    // What is assumed already changes nothing.
    const used = heldIn(job, factCell(fact.name, "used"));
    if (sameValue(from, to) || (from === "" && sameValue(used, to))) return [];
    const own = heldIn(job, factCell(fact.name, "yours")) !== "" ? "; what is typed in the job stays above it" : "";
    const label = String(heldIn(job, factCell(fact.name, "label")));
    const words = `${inWords(fact, from, book.system)} → ${inWords(fact, to, book.system)}${own}`;
    return [{ name: label, words, cells: [{ cell, from, to }] }];
  });
}

function written(fact: CellFact, value: unknown, system: UnitSystem): CellValue {
  if (fact.type !== "number") return value as string;
  return Number(fromSi(fact.kind, value as number, system).toPrecision(9));
}

/** A cell as a person reads it: 8%, 31.50, 6.5 ft. */
function inWords(fact: CellFact, value: CellValue, system: UnitSystem): string {
  if (value === "") return "nothing";
  if (typeof value !== "number" || fact.type !== "number") return String(value);
  if (fact.kind === "money") return moneyInWords(value);
  if (fact.kind === "share") return `${Number((100 * value).toPrecision(6))}%`;
  return `${Number(value.toPrecision(6))} ${unitOf(fact.kind, system)}`.trim();
}

function sizeInWords({ pipe, stone }: Held, system: UnitSystem): string {
  const { columns } = FACTS.sizeHours;
  const size = (fact: CellFact, value: unknown, what: string): string[] =>
    typeof value === "number" ? [`${what} to ${inWords(fact, written(fact, value, system), system)}`] : [];
  return [...size(columns.pipe, pipe, "pipe"), ...size(columns.stone, stone, "lip stone")].join(", ");
}
