import type { Both, Kind } from "./units";

/** Who can know a fact: whoever visits the site, the office that plans and asks for prices, or the company's own book. */
export type Knower = "visit" | "office" | "book";

/** What every fact says of itself. */
interface Common {
  /** Defined name of its cell in the workbook; of its column, or of the table it is a column of. */
  readonly name?: string;
  /** The question it answers, in plain words. */
  readonly question: string;
  /** The job can do without it. */
  readonly optional?: boolean;
}

/** A number; inside the job in SI, however it was typed. */
export interface NumberFact extends Common {
  readonly type: "number";
  readonly kind: Kind;
  /** Least and most that may be typed, in the unit of either system. */
  readonly range: Both<readonly [least: number, most: number]>;
  readonly whole?: boolean;
}

/** Words the user makes up. */
export interface TextFact extends Common {
  readonly type: "text";
}

/** One of several words. */
export interface ChoiceFact<C extends string = string> extends Common {
  readonly type: "choice";
  readonly choices: Both<readonly C[]>;
}

export type CellFact = NumberFact | TextFact | ChoiceFact;

/** A fact with a cell to itself. */
export type SingleFact<F extends CellFact = CellFact> = F & {
  readonly name: string;
  readonly sheet: string;
  readonly knower: Knower;
};

/** A column of a table. */
export type ColumnFact<F extends CellFact = CellFact> = F & {
  /** Its place in the table's named range, from 1; 1 where the column has a name of its own. */
  readonly at: number;
  /** The workbook fills it by a rule until somebody types over it. */
  readonly worked?: true;
  /** The workbook fills it, and nobody types over it. */
  readonly told?: true;
};

/** Rows of facts that belong together: the lips, the pumps on offer. */
export interface TableFact<C extends Readonly<Record<string, ColumnFact>> = Readonly<Record<string, ColumnFact>>> {
  readonly type: "table";
  /** Defined name of the range its columns are counted in. */
  readonly name: string;
  readonly sheet: string;
  readonly knower: Knower;
  readonly question: string;
  /** Rows it has room for. */
  readonly rows: number;
  /** The job cannot do without its first row. */
  readonly required?: boolean;
  readonly columns: C;
}

export type Fact = SingleFact | TableFact;

/** What a cell's fact holds; undefined where nobody has typed it. */
export type ValueOf<F extends CellFact> = F extends NumberFact ? number : F extends ChoiceFact<infer C> ? C : string;

/** Where a rule fills the cell, null says that it was emptied by hand. */
type CellOf<F extends ColumnFact> = F extends { readonly worked: true } ? ValueOf<F> | null : ValueOf<F>;

export type RowOf<T extends TableFact> = { readonly [K in keyof T["columns"]]?: CellOf<T["columns"][K]> };

export type HeldBy<F extends Fact> = F extends TableFact
  ? readonly RowOf<F>[]
  : F extends CellFact
    ? ValueOf<F> | undefined
    : never;

export function table<const C extends Readonly<Record<string, ColumnFact>>>(
  facts: Omit<TableFact<C>, "type">,
): TableFact<C> {
  return { type: "table", ...facts };
}

type About = { readonly optional?: boolean; readonly whole?: boolean };

/** How a topic declares its facts: those of one sheet, known by one kind of person unless said otherwise. */
export function factsOf(sheet: string) {
  return {
    number: (
      name: string,
      knower: Knower,
      kind: Kind,
      range: NumberFact["range"],
      question: string,
      about: About = {},
    ): SingleFact<NumberFact> => ({ type: "number", name, sheet, knower, kind, range, question, ...about }),
    text: (name: string, knower: Knower, question: string, about: About = {}): SingleFact<TextFact> => ({
      type: "text",
      name,
      sheet,
      knower,
      question,
      ...about,
    }),
    choice: <const C extends string>(
      name: string,
      knower: Knower,
      choices: Both<readonly C[]>,
      question: string,
      about: About = {},
    ): SingleFact<ChoiceFact<C>> => ({ type: "choice", name, sheet, knower, choices, question, ...about }),
  };
}

/** A column of numbers; by its place in the table, or by a name of its own. */
export function numbers(
  at: number | string,
  kind: Kind,
  range: NumberFact["range"],
  question: string,
  about: About = {},
): ColumnFact<NumberFact> {
  return { type: "number", ...place(at), kind, range, question, ...about };
}

export function texts(at: number | string, question: string): ColumnFact<TextFact> {
  return { type: "text", ...place(at), question };
}

export function choices<const C extends string>(
  at: number | string,
  of: Both<readonly C[]>,
  question: string,
): ColumnFact<ChoiceFact<C>> {
  return { type: "choice", ...place(at), choices: of, question };
}

/** A column that the workbook fills until somebody types over it. */
export function worked<F extends ColumnFact>(column: F): F & { readonly worked: true } {
  return { ...column, worked: true };
}

/** A column that the workbook fills and nobody types into. */
export function told<F extends ColumnFact>(column: F): F & { readonly worked: true; readonly told: true } {
  return { ...worked(column), told: true };
}

function place(at: number | string): { at: number; name?: string } {
  return typeof at === "number" ? { at } : { at: 1, name: at };
}
