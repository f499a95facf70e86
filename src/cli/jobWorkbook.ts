import type { Book } from "../book/types";
import { madeJob } from "../company/files";
import type { Draft } from "../job/draft/draft";
import { ownFacts } from "../workbook/company/newJob";
import { blankJob, type FactKey, type Job } from "../job/facts";
import { ANSWERED } from "../job/facts/answered";
import { howComplete, type HowComplete } from "../job/facts/complete";
import { standingsOf, type Standings } from "../job/facts/standing";
import { SHIPPED_TABLES } from "../job/facts/usual";
import { buildWorkbook } from "../workbook/build";
import { draftCells } from "../workbook/jobCells/typeDraft";
import { cellsToType, type SomeFacts } from "../workbook/jobCells/typeJob";

/**
 * A new job workbook from a book, with what was said of it typed into its cells and the draft in those that nothing was said
 * of, marked as assumed. Prices, pumps and rolls are the book's own rows.
 */
export async function jobWorkbook(book: Book, typed: Job, draft: Draft): Promise<Uint8Array> {
  const { system } = typed;
  const drafted = [...draft.facts.keys()].filter((key) => !OF_BOOK.has(key));
  const { bytes } = await madeJob(book, await buildWorkbook(system, "blank"), (names) => {
    const at = { system, names };
    return new Map([...draftCells(draft, drafted, at), ...cellsToType(onStart(typed), { ...at, digits: 6 })]);
  });
  return bytes;
}

/** How complete the job is that `jobWorkbook` makes. */
export function completenessOf(book: Book, typed: Job, draft: Draft): HowComplete {
  const drafted = [...draft.facts].filter(([key]) => !OF_BOOK.has(key));
  const held = {
    ...blankJob(typed.system),
    ...Object.fromEntries(drafted.map(([key, { value }]) => [key, value])),
    ...onStart(typed),
  } as Job;
  const company = Object.fromEntries(ownFacts(book));
  const standings = withLists(standingsOf(held, { company, drafted: new Set(drafted.map(([key]) => key)) }));
  return howComplete(standings);
}

/** Lists that every job comes with, as a workbook has them from its first day. */
function withLists(standings: Standings): Standings {
  const lists = Object.entries({ ...SHIPPED_TABLES, scope: YOURS, exclusions: YOURS, terms: YOURS });
  const known = lists.flatMap(([key, { state }]) => {
    const one = standings[key as FactKey];
    return one.state === "unknown" ? [[key, { ...one, state }] as const] : [];
  });
  return { ...standings, ...Object.fromEntries(known) };
}

/** The sentences of a quote can be signed as they come. */
const YOURS = { state: "yours" } as const;

/** What was said, the six answers where Start asks for them; the lip also where the water is laid out. */
function onStart(typed: Job): SomeFacts {
  const facts: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(typed)) {
    if (key === "system" || value === undefined || (Array.isArray(value) && value.length === 0)) continue;
    facts[ANSWERED[key as FactKey] ?? key] = value;
  }
  const width = typed.lips[0]?.width;
  return width === undefined ? facts : { ...facts, lipAsked: width };
}

/** The job gets the whole price list of the book, and looks up in it what the design asks for. */
const OF_BOOK: ReadonlySet<FactKey> = new Set<FactKey>(["prices"]);
