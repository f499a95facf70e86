import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { FACTS, type FactKey } from "./index";
import type { ColumnFact, TableFact } from "./fact";
import { inSystem, toSi } from "./units";

/** Stands between the cells of a table that is handed over as one text, and in no text that a person types. */
export const BETWEEN = "¦";

/** Columns of a table that stand side by side and that a person types: what a rule fills follows from them. */
export interface TypedBlock {
  /** Defined name of the range that they are counted in. */
  readonly name: string;
  /** Their places in it, from 1. */
  readonly from: number;
  readonly to: number;
}

/**
 * Whether a column's cells follow from the design by a rule. Fittings and own lines come with a rule too, but of nothing that
 * an option or a draft changes: what they show is as good as typed.
 */
export function follows(table: TableFact, column: string): boolean {
  const pipes = table.name === FACTS.route.name || table.name === FACTS.riser.name;
  if (table.name === FACTS.ownLines.name || ruledRows(table) > 0 || (pipes && column !== "sumOfK")) return false;
  return table.columns[column]?.worked === true;
}

/** How many of a table's first rows follow from the design by a rule, where the others are typed: the liner's two main pieces. */
export function ruledRows(table: TableFact): number {
  return table.name === FACTS.pieces.name ? 2 : 0;
}

/** The typed columns of a table, in the order in which they are handed over. */
export function typedBlocks(table: TableFact): TypedBlock[] {
  const blocks: { name: string; from: number; to: number }[] = [];
  for (const [column, { name = table.name, at }] of Object.entries(table.columns)) {
    if (follows(table, column)) continue;
    const last = blocks.at(-1);
    if (last?.name === name && last.to === at - 1) last.to = at;
    else blocks.push({ name, from: at, to: at });
  }
  return blocks;
}

/** Tables that are handed over whole: those that the work is calculated from, but for the lists that have a range of their own. */
export const HANDED_OVER: ReadonlySet<FactKey> = new Set<FactKey>([
  ...([
    "shots",
    "poolDepths",
    "lips",
    "drops",
    "pools",
    "beds",
    "route",
    "riser",
    "basinParts",
    "pieces",
    "rolls",
  ] as const),
  ...(["boulderSizes", "tasks", "sizeHours", "burden", "wages", "machines", "ownLines", "markups"] as const),
]);

/** The rows of a table from the text that its cells were joined to; a cell that does not hold what belongs there is blank. */
export function rowsOfText(key: FactKey, text: string, system: UnitSystem): Record<string, unknown>[] {
  const table = FACTS[key] as TableFact;
  const cells = text.split(BETWEEN);
  const ruled = ruledRows(table);
  const typed: Record<string, unknown>[] = Array.from({ length: table.rows - ruled }, () => ({}));
  let start = 0;
  for (const { name, from, to } of typedBlocks(table)) {
    const width = to - from + 1;
    for (const [column, fact] of Object.entries(table.columns)) {
      if (follows(table, column) || (fact.name ?? table.name) !== name || fact.at < from || fact.at > to) continue;
      typed.forEach((row, down) => {
        const value = valueOf(fact, cells[start + down * width + fact.at - from] ?? "", system);
        if (value !== undefined) row[column] = value;
      });
    }
    start += width * typed.length;
  }
  const rows = [...Array.from({ length: ruled }, () => ({})), ...typed];
  while (rows.length > 0 && Object.keys(rows.at(-1) ?? {}).length === 0) rows.pop();
  return rows;
}

/** A number is joined as its host writes it, with a point or a comma. */
function valueOf(fact: ColumnFact, cell: string, system: UnitSystem): unknown {
  if (cell === "") return undefined;
  if (fact.type === "text") return cell;
  if (fact.type === "choice") return inSystem<readonly string[]>(fact.choices, system).find((one) => one === cell);
  const number = Number(cell.replace(",", "."));
  return Number.isFinite(number) ? toSi(fact.kind, number, system) : undefined;
}
