import { shippedBook } from "../../book/shipped";
import { COST_KINDS, costKindWord } from "../../calc/money/costKinds";
import { missing } from "../../calc/problem";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { bookOfLines } from "../../job/company/bookOfLines";
import { companyOf } from "../../job/draft/company";
import { draftOf, type Draft, type DraftWish } from "../../job/draft/draft";
import { machinesOnOffer, offersOfBook } from "../../job/draft/offersOfBook";
import { offersOfJob } from "../../job/draft/offersOfJob";
import { tape } from "../../job/draft/words";
import { blankJob, FACTS, type Job } from "../../job/facts";
import { fromSi, unitOf } from "../../job/facts/units";
import { usedJob } from "../../job/facts/standing";
import { roundingOf } from "../../job/money";
import { evaluate } from "../../job/evaluate";
import { withChanges, WORKED_PRICES, type ChangedFact } from "../../job/options/changed";
import { changedPair, workOf, type Calculation, type Work } from "../../job/options/effect";
import { rangeInBits, type PriceRange } from "../../job/range/range";
import { remarksOf } from "../../job/range/remarks";
import { known } from "../../job/derived";
import type { Topics } from "../../job/topics";
import type { TableCell } from "../contract/result";
import { withValues, type FactRow } from "./arguments";
import { jobOf, tableOf } from "./said";

/** What the functions hand over: facts, and rows of the workbook's price list and of its pumps. */
export interface Asked {
  readonly facts: readonly FactRow[];
  readonly values: readonly (readonly unknown[])[];
  readonly prices: readonly (readonly unknown[])[];
  readonly pumps: readonly (readonly unknown[])[];
}

/** How many facts to measure next are named. */
const NEXT = 8;
/** Rows for remarks on the range: as many as there can be at once, so that the rows below keep their places. */
const REMARKS = 2;

const bases: Partial<Record<UnitSystem, Pick<DraftWish, "offers" | "usual">>> = {};

/** What the company says of every job: taken as it stands, and its rates as much in doubt as ever. */
const COMPANY_TABLES = ["burden", "wages", "machines", "tasks", "sizeHours", "markups"] as const;

/** What was handed over, read: facts and tables, the price list where it is one, and the pumps. */
function readAsked({ facts, values, prices, pumps }: Asked, system: UnitSystem) {
  const costed = tableOf(FACTS.prices, prices, system).filter(({ cost }) => typeof cost === "number");
  // Alone they are no price list.
  const priced = costed.some(({ code }) => !WORKED_PRICES.has(String(code))) ? costed : [];
  return {
    said: jobOf(withValues(facts, values), system),
    priced: priced as unknown as Job["prices"],
    offered: tableOf(FACTS.pumps, pumps, system) as unknown as Job["pumps"],
  };
}

/** The draft that is asked for: with the workbook's own prices, pumps and rates where it has any, else with the book that ships. */
function wishOf(asked: Asked, system: UnitSystem): DraftWish {
  const book = shippedBook(system);
  const base = (bases[system] ??= {
    offers: offersOfBook(book),
    usual: usedJob(blankJob(system), companyOf(book)),
  });
  const { said, priced, offered } = readAsked(asked, system);
  const company = Object.fromEntries(COMPANY_TABLES.flatMap((key) => (said[key].length > 0 ? [[key, said[key]]] : [])));
  // Boulders come in sizes that ship with every job: the draft picks its own. It cuts the liner in its own pieces too.
  const typed: Job = {
    ...said,
    ...Object.fromEntries(COMPANY_TABLES.map((key) => [key, []])),
    boulderSizes: [],
    pieces: [],
  };
  const own: Partial<Job> = {
    ...(priced.length > 0 ? { prices: priced } : {}),
    ...(offered.length > 0 ? { pumps: offered } : {}),
  };
  const usual = { ...base.usual, ...company, ...own };
  const ofJob = offersOfJob({ ...usual, system });
  // A job that was made from a company's book offers what its price list names by size.
  const made = bookOfLines(own.prices ?? [], book);
  const listed = made ? offersOfBook(made) : priced.length > 0 ? ofJob : base.offers;
  const machines = machinesOnOffer(said.machines);
  const offers = {
    ...listed,
    ...(offered.length > 0 ? { pumps: ofJob.pumps } : {}),
    ...(machines.length > 0 ? { machines } : {}),
  };
  return { offers, usual, typed };
}

/** The draft whole, for what shows it or writes it into a job. */
export function draftFor(asked: Asked, system: UnitSystem): Draft {
  return draftOf(wishOf(asked, system));
}

/** Every fact that was left open. */
export function drafted(asked: Asked, system: UnitSystem): TableCell[][] {
  const { facts } = draftOf(wishOf(asked, system));
  return [...facts].map(([key, { value, low, high, reason }]) => {
    const fact = FACTS[key];
    const shown = (held: unknown): number | string => {
      if (fact.type !== "number") return typeof held === "string" ? held : "";
      return typeof held === "number" ? Number(fromSi(fact.kind, held, system).toPrecision(12)) : "";
    };
    const unit = fact.type === "number" ? unitOf(fact.kind, system) : "";
    return [fact.name, shown(value), shown(low), shown(high), unit, reason];
  });
}

/** The price with its range, the main numbers of the draft, and what to measure next. */
export function ranged(asked: Asked, system: UnitSystem): TableCell[][] {
  const { range, draft } = rangeFor(asked, system);
  const { job, state } = draft;
  const side = (metres: number | undefined): string => (metres === undefined ? "?" : tape(metres, system));
  const count = job.pumpCount ?? 1;
  const measured = (what: string, measure: "flow" | "load", value: number | undefined): TableCell[] => [
    what,
    value === undefined ? "" : { measure, inside: value },
    unitOf(measure, system),
    "",
    "",
    "",
  ];
  const money = roundingOf(job);
  const currency = job.currency ?? "";
  const remarks = remarksOf(range);
  return [
    ["Low", money(range.low), currency, "", "", ""],
    ["Likely", money(range.likely), currency, "", "", ""],
    ["High", money(range.high), currency, "", "", ""],
    measured("Flow", "flow", known(state.pump.deliveredFlow)),
    ["Pump", `${count > 1 ? `${count} of ` : ""}${job.chosenPump ?? "none delivers"}`, "", "", "", ""],
    [
      "Basin",
      `${side(job.basinLength)} x ${side(job.basinWidth)}, water ${side(job.basinWaterDepth)} deep`,
      "",
      "",
      "",
      "",
    ],
    measured("Boulders", "load", known(state.stone.boulders)),
    measured("Gravel", "load", known(state.stone.gravel)),
    ["Days", known(state.labor.workingDays) ?? "", "days", "", "", ""],
    ["Trials without a price", range.priceless, `of ${range.trials}`, "", "", ""],
    ...Array.from({ length: REMARKS }, (_, at): TableCell[] => ["Remark", remarks[at] ?? "", "", "", "", ""]),
    ...range.next
      .slice(0, NEXT)
      .map(({ question, atLow, atHigh, share }): TableCell[] => [
        question,
        "",
        currency,
        atLow === undefined ? "" : money(atLow),
        atHigh === undefined ? "" : money(atHigh),
        share,
      ]),
  ];
}

type Whole = Calculation<Topics>;
type Pair = readonly [before: Whole, after: Whole];

/**
 * A job beside the same job with some facts changed: drafted from a few answers, or as a workbook holds it.
 */
export function option(asked: Asked, changes: readonly FactRow[], system: UnitSystem): TableCell[][] {
  const changed = changes.flatMap(({ at, name, value }) =>
    typeof value === "number" || typeof value === "string" ? [{ at, name, value }] : [],
  );
  const held = asked.values.length > 0;
  const [before, after] = (held ? heldPair : draftedPair)(asked, changed, system);
  const [from, to] = [workOf(before.job, before.state), workOf(after.job, after.state)];
  const row = (what: string, of: (from: Whole, work: Work) => number): TableCell[] => {
    const [was, is] = [of(before, from), of(after, to)];
    return [what, was, is, is - was];
  };
  const measured = (what: string, measure: "flow" | "load", of: (work: Work) => number): TableCell[] => [
    what,
    ...[of(from), of(to), of(to) - of(from)].map((inside) => ({ measure, inside })),
  ];
  const round = roundingOf(before.job);
  const money = (what: string, of: (work: Work) => number): TableCell[] => [
    what,
    ...[of(from), of(to), of(to) - of(from)].map((amount) => round(amount)),
  ];
  const price = ({ state }: Whole) => state.price.options.A;
  return [
    // The workbook makes its prices itself, by the markups on Price.
    held ? ["Price", "", "", ""] : row("Price", (calculated) => price(calculated)?.beforeTax ?? 0),
    held
      ? ["Gross margin", "", "", ""]
      : row("Gross margin", (calculated) => known(price(calculated)?.grossMargin) ?? 0),
    measured("Flow", "flow", ({ flow }) => flow),
    measured("Boulders", "load", ({ boulders }) => boulders),
    row("Days", (_, { days }) => days),
    ["Pump", before.job.chosenPump ?? "", after.job.chosenPump ?? "", ""],
    measured("Gravel", "load", ({ gravel }) => gravel),
    row("Crew hours", (_, { hours }) => hours),
    ...COST_KINDS.map((kind, index) => money(`Cost, ${costKindWord(kind, system)}`, ({ costs }) => costs[index] ?? 0)),
    money("Cost of lines with tax", ({ taxable }) => taxable),
  ];
}

/** Both jobs as a workbook holds them: values that stand apart from the names of the facts are those of a whole job. */
function heldPair(asked: Asked, changes: readonly ChangedFact[], system: UnitSystem): Pair {
  const { said, priced, offered } = readAsked(asked, system);
  return changedPair({ ...said, prices: priced, pumps: offered }, changes, evaluate);
}

function draftedPair(asked: Asked, changes: readonly ChangedFact[], system: UnitSystem): Pair {
  const wish = wishOf(asked, system);
  const pair = [draftOf(wish), draftOf({ ...wish, typed: withChanges(wish.typed, changes) })] as const;
  if (pair.some(({ state }) => !state.price.quoted)) throw noPrice();
  return pair;
}

const noPrice = () => missing("facts lead to no price: pumps or prices lack what this design needs");

interface Ranged {
  readonly range: PriceRange;
  readonly draft: Draft;
}

/** Ranges made before: a sheet asks for the same one again whenever something beside it changes. */
const ranges = new Map<string, Ranged | undefined>();
const MOST_RANGES = 20;

function rangeFor(asked: Asked, system: UnitSystem): Ranged {
  const bits = rangeAhead(asked, system);
  while (bits.next().done !== true);
  const found = ranges.get(keyOf(asked, system));
  if (!found) throw noPrice();
  return found;
}

function keyOf(asked: Asked, system: UnitSystem): string {
  return JSON.stringify([system, asked]);
}

/** Makes the range that is asked for, a draft at a time, and keeps it for who asks next. */
export function* rangeAhead(asked: Asked, system: UnitSystem): Generator<undefined, void> {
  const key = keyOf(asked, system);
  if (ranges.has(key)) return;
  const wish = wishOf(asked, system);
  const draft = draftOf(wish);
  yield;
  const range = yield* rangeInBits(wish, draft);
  const [oldest] = ranges.keys();
  if (ranges.size >= MOST_RANGES && oldest !== undefined) ranges.delete(oldest);
  ranges.set(key, range && { range, draft });
}
