/** What a cell holds. */
export type Held = string | number | boolean;
type Rows = readonly (readonly Held[])[];

/** What the client holds of a quote: by part (figures, facts, the quote's own rows, what its drawing is made from), its rows. */
export type QuoteState = ReadonlyMap<string, Rows>;

/** A quote as it was issued. */
export interface Issue {
  readonly revision: number;
  /** In the workbook's days. */
  readonly day: number;
  readonly state: QuoteState;
}

/** Columns of the list of what was issued: revision, day, part, and what the part's row holds. */
export const ISSUE_LEAD = 3;
export const ISSUE_CELLS = 8;

/** The figures come first in an issue, so that the sheet finds them from its first row on. */
export const FIGURES_PART = "Figure";
export const FACTS_PART = "Fact";
export const QUOTE_PART = "Quote";

/** The rows that an issue adds to the end of the list. */
export function issueRows({ revision, day, state }: Issue): Held[][] {
  const parts = [...state].sort(([a], [b]) => Number(b === FIGURES_PART) - Number(a === FIGURES_PART));
  return parts.flatMap(([part, rows]) =>
    rows.map((row) => [
      revision,
      day,
      part,
      ...Array.from({ length: ISSUE_CELLS }, (_, column) => plain(row[column] ?? "")),
    ]),
  );
}

/** A text that begins with "=" would be taken for a formula where it is written. */
function plain(cell: Held): Held {
  return typeof cell === "string" && cell.startsWith("=") ? ` ${cell}` : cell;
}

/** Every quote that was issued, from the rows of the list; the earliest first. */
export function issuesIn(list: Rows): Issue[] {
  const issues = new Map<number, { revision: number; day: number; state: Map<string, Held[][]> }>();
  for (const [revision, day, part, ...cells] of list) {
    if (typeof revision !== "number" || typeof day !== "number" || part === undefined || part === "") continue;
    const issue = issues.get(revision) ?? { revision, day, state: new Map<string, Held[][]>() };
    issues.set(revision, issue);
    const rows = issue.state.get(String(part)) ?? [];
    rows.push(cells);
    issue.state.set(String(part), rows);
  }
  return [...issues.values()].sort((a, b) => a.revision - b.revision);
}

/** A value that is another than it was. */
export interface Difference {
  readonly what: string;
  readonly unit: string;
  readonly before: Held;
  readonly after: Held;
}

/** Numbers that differ by less than this share are the same, worked out on another machine. */
const NOISE = 1e-9;

function same(a: Held, b: Held): boolean {
  return typeof a === "number" && typeof b === "number"
    ? Math.abs(a - b) <= NOISE * Math.max(Math.abs(a), Math.abs(b))
    : a === b;
}

/** What changed among figures and facts, each by its name: [what, value, unit]. */
export function differences(before: QuoteState, after: QuoteState): Difference[] {
  return [FIGURES_PART, FACTS_PART].flatMap((part) => {
    const old = new Map(numbered(before.get(part)).map(({ key, value }) => [key, value]));
    return numbered(after.get(part)).flatMap(({ key, what, value, unit }) => {
      const was = old.get(key) ?? "";
      return same(was, value) ? [] : [{ what, unit, before: was, after: value }];
    });
  });
}

/** Rows by their label and how often it stood before: several facts are called "Width". */
function numbered(rows: Rows = []): { key: string; what: string; value: Held; unit: string }[] {
  const seen = new Map<string, number>();
  return rows.map(([label = "", value = "", unit = ""]) => {
    const what = String(label);
    const nth = (seen.get(what) ?? 0) + 1;
    seen.set(what, nth);
    return { key: `${what} ${nth}`, what, value, unit: String(unit) };
  });
}

/** A difference in words: "Fall 2.75 to 3 ft". */
export function differenceWords({ what, unit, before, after }: Difference): string {
  const shown = (value: Held): string =>
    value === "" ? "nothing" : typeof value === "number" ? String(Number(value.toPrecision(7))) : String(value);
  return `${what} ${shown(before)} to ${shown(after)}${unit ? ` ${unit}` : ""}`;
}

/**
 * The next issue, or the sentence that says why there can be none.
 *
 * @param room rows that the list may take, those that hold something among them
 */
export function nextIssue(
  list: Rows,
  state: QuoteState,
  { day, draft, room }: { readonly day: number; readonly draft: string; readonly room: number },
): Issue | string {
  if (draft !== "") return `The quote cannot be issued: ${draft}`;
  const issues = issuesIn(list);
  const last = issues.at(-1);
  if (last && day < last.day) return `Revision ${last.revision} was issued on a later day; check the date.`;
  const rows = issueRows({ revision: (last?.revision ?? 0) + 1, day, state });
  if (rows.length > room - rowsUsed(list))
    return "The list on Issued is full; save the job under another name and clear it there.";
  return { revision: (last?.revision ?? 0) + 1, day, state };
}

/** Rows of the list down to the last that holds anything. */
export function rowsUsed(list: Rows): number {
  return list.reduce((used, row, index) => (row.some((cell) => cell !== "") ? index + 1 : used), 0);
}
