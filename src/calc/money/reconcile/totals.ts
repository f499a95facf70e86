import { CENT_DIGITS } from "../cents";
import { NO_AMOUNTS, type Amounts, type ReconciledLine, type State, type UnreadVerdict } from "./lines";
import { money } from "./remarks";

/** The sum of some lines. */
export interface Total {
  readonly name: string;
  readonly supplier: string;
  readonly amounts: Amounts;
  readonly state: State;
  readonly verdict: string;
}

export const GRAND_TOTAL = "Grand total";

type Counting = ReconciledLine | UnreadVerdict;

/** Totals per order, then per supplier, then of everything; each line counts once in each kind. */
export function totalsOf(
  lines: readonly ReconciledLine[],
  unread: readonly UnreadVerdict[] = [],
  digits = CENT_DIGITS,
): Total[] {
  const all = [...lines, ...unread];
  return [
    ...totalsBy(
      all,
      ({ order }) => order,
      digits,
      (order) => (order === "" ? "Total without order" : `Total ${order}`),
    ),
    ...totalsBy(
      all,
      ({ supplier }) => supplier,
      digits,
      (supplier) => `Total ${supplier === "" ? "without supplier" : supplier}`,
    ),
    total(GRAND_TOTAL, "", all, digits),
  ];
}

function totalsBy(
  lines: readonly Counting[],
  key: (line: Counting) => string,
  digits: number,
  name: (key: string) => string,
): Total[] {
  const parts = new Map<string, Counting[]>();
  for (const line of lines) {
    const part = parts.get(key(line));
    if (part) part.push(line);
    else parts.set(key(line), [line]);
  }
  return [...parts].map(([value, part]) => total(name(value), part[0]?.supplier ?? "", part, digits));
}

function total(name: string, supplier: string, lines: readonly Counting[], digits: number): Total {
  const counts: Record<State, number> = { Query: 0, Open: 0, Agrees: 0 };
  let unread = 0;
  const sum: { -readonly [K in keyof Amounts]: number } = { ...NO_AMOUNTS };
  for (const line of lines) {
    counts[line.state]++;
    if (!("amounts" in line)) {
      unread++;
      continue;
    }
    const { amounts } = line;
    sum.ordered += amounts.ordered;
    sum.billed += amounts.billed;
    sum.priceDifference += amounts.priceDifference;
    sum.toCome += amounts.toCome;
    sum.atStake += amounts.atStake;
  }
  const state = counts.Query > 0 ? "Query" : counts.Open > 0 ? "Open" : "Agrees";
  const parts = [
    counts.Query > 0 ? `${counts.Query} to query` : "",
    counts.Open > 0 ? `${counts.Open} open` : "",
    counts.Agrees > 0 ? `${counts.Agrees} agree` : "",
  ].filter(Boolean);
  const stake = sum.atStake > 0 ? `; ${money(sum.atStake, digits)} at stake` : "";
  const missing = unread > 0 ? `; ${unread === 1 ? "1 row" : `${unread} rows`} not read and not in these sums` : "";
  return { name, supplier, amounts: sum, state, verdict: `${parts.join(", ")}${stake}${missing}` };
}
