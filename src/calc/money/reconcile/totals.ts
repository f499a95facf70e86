import { NO_AMOUNTS, type Amounts, type ReconciledLine, type State } from "./lines";
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

/** Totals per order, then per supplier, then of everything; each line counts once in each kind. */
export function totalsOf(lines: readonly ReconciledLine[]): Total[] {
  return [
    ...totalsBy(
      lines,
      ({ order }) => order,
      (order) => (order === "" ? "Total without order" : `Total ${order}`),
    ),
    ...totalsBy(
      lines,
      ({ supplier }) => supplier,
      (supplier) => `Total ${supplier === "" ? "without supplier" : supplier}`,
    ),
    total(GRAND_TOTAL, "", lines),
  ];
}

function totalsBy(
  lines: readonly ReconciledLine[],
  key: (line: ReconciledLine) => string,
  name: (key: string) => string,
): Total[] {
  const parts = new Map<string, ReconciledLine[]>();
  for (const line of lines) {
    const part = parts.get(key(line));
    if (part) part.push(line);
    else parts.set(key(line), [line]);
  }
  return [...parts].map(([value, part]) => total(name(value), part[0]?.supplier ?? "", part));
}

function total(name: string, supplier: string, lines: readonly ReconciledLine[]): Total {
  const counts: Record<State, number> = { Query: 0, Open: 0, Agrees: 0 };
  const sum: { -readonly [K in keyof Amounts]: number } = { ...NO_AMOUNTS };
  for (const { amounts, state } of lines) {
    counts[state]++;
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
  const stake = sum.atStake > 0 ? `; ${money(sum.atStake)} at stake` : "";
  return { name, supplier, amounts: sum, state, verdict: `${parts.join(", ")}${stake}` };
}
