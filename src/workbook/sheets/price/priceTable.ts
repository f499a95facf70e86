import { originOf } from "../../layout/forms";
import { shippedPricing } from "../../../book/shipped/office";
import { COST_KINDS, costKindWord, type CostKind } from "../../../calc/money/costKinds";
import { Ref, type Job, type SheetLayout, type TableRef } from "../../layout";
import { cellAddress } from "../../layout/address";
import { fill, fillDown } from "../money/cells";
import { costLabel } from "../money/costKinds";
import { costsOn, hoursOn } from "./optionEffects";
import { MARKUPS_IN_USE } from "./wantedMarkups";

/** The three ways to build that stand side by side. */
export const OPTIONS = ["A", "B", "C"] as const;

const KINDS = COST_KINDS.length;

/** Costs and prices of the three options, line by line, with the markups between. */
export function priceTable(s: SheetLayout, job: Job, extra: Extra): TableRef {
  const option = (letter: string) => [
    { key: `cost${letter}`, title: `${letter}: cost`, kind: "money" as const, name: `Costs${letter}` },
    {
      key: `price${letter}`,
      title: `${letter}: price`,
      source: "by definition: cost and its markup, rounded to a cent",
      kind: "money" as const,
      whole: true as const,
      formula: `=IF([cost${letter}]="","",ROUND([cost${letter}]*(1+[used]),MoneyDigits))`,
    },
  ];
  const table = s.table({
    rows: KINDS + 2,
    columns: [
      {
        key: "line",
        title: "Cost",
        kind: "text",
        fixed: [...COST_KINDS.map((kind) => costLabel(kind, job.system)), "Overhead", "Contingency"],
      },
      {
        key: "markup",
        title: "Markup",
        kind: "share",
        name: "Markups",
        input: { min: 0, max: 10, message: "Share of the cost that is added to it." },
      },
      { key: "used", title: "In use", kind: "share", name: "MarkupsUsed", whole: true, formula: MARKUPS_IN_USE },
      ...OPTIONS.flatMap(option),
    ],
    usual: shippedPricing(job.system).markups.map((markup) => [markup]),
    totals: {
      label: "Cost and price before rounding",
      keys: OPTIONS.flatMap((letter) => [`cost${letter}`, `price${letter}`]),
    },
  });
  OPTIONS.forEach((letter, index) => costs(s, table, letter, index, extra));
  return table;
}

/** What Hours adds to each kind of cost, below the printed sheet, for formulas to read. */
export function hoursCosts(s: SheetLayout, job: Job, extra: Extra): void {
  s.section("Costs from Hours");
  const table = s.table({
    rows: KINDS,
    columns: [
      { key: "line", title: "Cost", kind: "text", fixed: COST_KINDS.map((kind) => costLabel(kind, job.system)) },
      { key: "hours", title: "From Hours", kind: "money", name: "HoursCosts", fixed: COST_KINDS.map(() => 0) },
    ],
  });
  COST_KINDS.forEach((kind, row) => {
    if (extra[kind]) fill(s, table.cell("hours", row + 1), `N(${extra[kind]})`);
  });
}

/** Names of costs that stand on Hours. */
export type Extra = Readonly<Partial<Record<CostKind, string>>>;

/** Costs of one option: the takeoff with the changes of the option, then overhead and contingency on their sum. */
function costs(s: SheetLayout, table: TableRef, letter: string, index: number, extra: Extra): void {
  const key = `cost${letter}`;
  // Nothing is known of the cost while no line of it is.
  const nothing = `COUNT(${["TakeoffCosts", ...Object.values(extra)].join(",")})=0`;
  const used = (formula: string): string =>
    `=IF(${index === 0 ? nothing : `OR(${nothing},INDEX(OptionNames,${index + 1})="")`},"",${formula})`;
  const changes = index > 0 ? `+SUMIFS(OptionChanges${letter},OptionKinds,CostKinds)${costsOn(s.job, letter)}` : "";
  const first = table.cell(key, 1);
  const kinds = new Ref(s.name, first.top, first.left, first.top + KINDS - 1, first.left);
  fillDown(s, kinds, used(`ROUND(SUMIFS(TakeoffCosts,TakeoffKinds,CostKinds)+HoursCosts${changes},MoneyDigits)`));
  const direct = `SUM(${cellAddress(first.top, first.left)}:${cellAddress(first.top + KINDS - 1, first.left)})`;
  const more = index > 0 ? `+${hoursOn(s.job, letter)}` : "";
  const hours = `IF(CrewHours="",0,OverheadPerHour*(CrewHours*${crewShare(s.job, index)}${more}))`;
  const overhead = `ROUND(IF(OverheadBy="crew hours",${hours},OverheadShare*${direct}),MoneyDigits)`;
  const share = "by definition: a share of direct cost";
  fill(s, table.cell(key, KINDS + 1), used(overhead), { label: "Overhead", source: `${share}, or crew hours × rate` });
  fill(s, table.cell(key, KINDS + 2), used(`ROUND(ContingencyShare*${direct},MoneyDigits)`), {
    label: "Contingency",
    source: share,
  });
}

/**
 * The crew's hours in an option over those of the takeoff: they change as the cost of labor does, because an hour costs
 * the same in every option.
 */
export function crewShare(job: Job, index: number): string {
  if (index === 0 || !job.names.has("LaborCost")) return "1";
  const change = `SUMIFS(OptionChanges${OPTIONS[index]},OptionKinds,"${costKindWord("labor", job.system)}")`;
  return `IF(N(LaborCost)>0,MAX(0,1+${change}/LaborCost),1)`;
}

/** A line under the table with one value for each option, in the option's price column. */
export function optionRow(
  s: SheetLayout,
  table: TableRef,
  spec: {
    label: string;
    kind: "money" | "share" | "number" | "flow" | "load";
    /** Formula of an option from its cells; it stays blank while the option has no price. */
    formula: (cells: OptionCells) => string;
    /** What it rests on. */
    source?: string;
    name?: string;
    strong?: boolean;
  },
): Ref {
  const { row } = s;
  s.put(row, 1, { value: spec.label, style: spec.strong ? "strong" : "label", look: { align: "left" }, across: 3 });
  for (const letter of OPTIONS) {
    const cells = optionCells(table, letter);
    s.put(row, cells.column - 1, { style: spec.strong ? "strong" : "label" });
    s.put(row, cells.column, {
      formula: `=IF(SUM(${cells.prices})=0,"",${spec.formula(cells)})`,
      style: spec.strong ? "strong" : "result",
      kind: spec.kind,
      origin: originOf(s, spec.label, spec.source),
      ...(spec.kind === "number" ? { look: { format: "0.0" } } : {}),
    });
  }
  s.row++;
  const columns = OPTIONS.map((letter) => optionCells(table, letter).column);
  const [from, to] = [columns[0] ?? 0, columns[columns.length - 1] ?? 0];
  return spec.name ? s.define(spec.name, row, from, row, to) : s.put(row, to + 1, {});
}

/** Where an option's figures stand, as addresses on the sheet. */
export interface OptionCells {
  readonly index: number;
  readonly column: number;
  readonly costs: string;
  readonly prices: string;
  readonly materialPrice: string;
  /** Direct cost and contingency: what the job itself costs. */
  readonly jobCost: string;
  readonly totalCost: string;
  readonly beforeRounding: string;
  /** A row of the option that was laid out before, by its distance up from the row at hand. */
  at(row: number): string;
}

function optionCells(table: TableRef, letter: string): OptionCells {
  const cost = table.column(`cost${letter}`);
  const price = table.column(`price${letter}`);
  const address = (row: number, column: number): string => cellAddress(row, column);
  const costAt = (row: number): string => address(cost.top + row, cost.left);
  return {
    index: OPTIONS.indexOf(letter as (typeof OPTIONS)[number]) + 1,
    column: price.left,
    costs: `${costAt(0)}:${address(cost.bottom, cost.left)}`,
    prices: `${address(price.top, price.left)}:${address(price.bottom, price.left)}`,
    materialPrice: address(price.top, price.left),
    jobCost: `(SUM(${costAt(0)}:${costAt(KINDS - 1)})+${costAt(KINDS + 1)})`,
    totalCost: address(cost.bottom + 1, cost.left),
    beforeRounding: address(price.bottom + 1, price.left),
    at: (row) => address(row, price.left),
  };
}
