import {
  analyzeExpr,
  bind,
  detectDynamicArrayFunction,
  detectSubtotalOutput,
  extractStaticDeps,
  parse,
  tokenize,
  type AstNode,
  type BoundExpr,
  type CompiledFormula,
  type WorkbookSnapshot,
} from "./library";
import { cellAddress } from "../layout/address";
import { moved } from "./moved";
import { PART, spreading } from "./spreading";
import type { Block } from "./block";
import type { Held } from "./values";

/** A block of a sheet that a formula reads. */
export interface Read {
  readonly sheet: string;
  readonly block: Block;
}

/** What may follow from a formula's result. */
export type Spilling =
  /** It fills as many cells as it needs. */
  | "free"
  /** It fills this block, however large the result is. */
  | Block
  /** It stays in its cell. */
  | undefined;

/** A formula that was parsed and bound, at its place; rows and columns counted from 1. */
export interface Formula {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly text: string;
  readonly spilling: Spilling;
  /** Missing where the text is no formula. */
  readonly compiled: CompiledFormula | undefined;
  readonly reads: Read[];
  /** Runs each time, whatever it reads. */
  readonly restless: boolean;
  /** What it fills besides its own cell. */
  filled: Block | undefined;
  /** The formulas of the circle it is part of. */
  circle: readonly Formula[] | undefined;
  /** Place in the order of calculation. */
  rank: number;
  /** Whether it is to run, because something it reads came to another value. */
  wanted: boolean;
  /** How often it ran since the last edit. */
  runs: number;
  /** Areas so long that they are read only as far as their sheets hold something. */
  readonly long: readonly LongArea[];
  /** Told of the result where the formula stands in no cell: a rule of a sheet. */
  readonly told: ((rows: Held[][]) => void) | undefined;
}

/** An area of a bound formula, with the row it really ends at. */
export interface LongArea {
  readonly area: { readonly sheet: string; readonly top: number; bottom: number };
  readonly end: number;
}

/** A formula's place: "Site!B7". */
export function nameOf({ sheet, row, column }: Pick<Formula, "sheet" | "row" | "column">): string {
  return `${sheet}!${cellAddress(row, column)}`;
}

export interface FormulaText {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** As a person types it, without "=". */
  readonly text: string;
  readonly spilling?: Spilling;
  /** How far the text was copied: rows down and columns across. */
  readonly by?: readonly [down: number, across: number];
  readonly told?: (rows: Held[][]) => void;
}

const parsed = new Map<string, AstNode | undefined>();
const MOST_KEPT = 20_000;

/** The tree of a formula's text; undefined where it is none. */
export function treeOf(text: string): AstNode | undefined {
  if (parsed.has(text)) return parsed.get(text);
  let tree: AstNode | undefined;
  try {
    tree = parse(tokenize(text));
  } catch {
    tree = undefined;
  }
  if (parsed.size >= MOST_KEPT) parsed.clear();
  parsed.set(text, tree);
  return tree;
}

/** Parses and binds a formula. */
export function compile(given: FormulaText, snapshot: WorkbookSnapshot, sheetId: number): Formula {
  const { sheet, row, column, text, spilling, by, told } = given;
  const written = treeOf(text);
  const tree = written && by ? moved(written, by[0], by[1]) : written;
  const bound = tree && boundTo(tree, snapshot, sheet);
  const names = nameReader(snapshot, sheet);
  const facts = bound && analyzeExpr(bound, names);
  const compiled: CompiledFormula | undefined = tree &&
    bound && {
      // The library would note spills of its own, where the engine keeps all of them in cells.
      instance: {
        sheetName: sheet,
        sheetId,
        row,
        col: column,
        sourceText: text,
        kind: "normal",
        isDynamicArray: false,
      },
      isDynamicArrayFunction: false,
      bound: spreading(bound),
      staticDeps: extractStaticDeps(bound, snapshot, names),
      isVolatile: facts?.isVolatile ?? false,
      hasDynamicRefs: facts?.hasDynamicRefs ?? false,
      containsLambda: facts?.containsLambda ?? false,
      isSubtotalOutput: detectSubtotalOutput(tree, bound),
    };
  return {
    sheet,
    row,
    column,
    text,
    spilling: spilling ?? (tree && bound && detectDynamicArrayFunction(tree, bound) ? "free" : undefined),
    compiled,
    reads: compiled ? readsOf(compiled) : [],
    // OFFSET and INDIRECT follow what they read, so that they need not run each time.
    restless: compiled !== undefined && compiled.isVolatile && !compiled.hasDynamicRefs,
    filled: undefined,
    circle: undefined,
    rank: 0,
    wanted: false,
    runs: 0,
    long: bound ? longAreas(bound) : [],
    told,
  };
}

/** Areas of fewer rows cost nothing worth sparing. */
const MANY_ROWS = 1000;

function longAreas(part: unknown, found: LongArea[] = []): LongArea[] {
  if (Array.isArray(part)) part.forEach((one) => longAreas(one, found));
  else if (typeof part === "object" && part !== null) {
    const area = part as { kind?: number; sheet: string; top: number; bottom: number };
    if (area.kind === PART.area && area.bottom - area.top >= MANY_ROWS) found.push({ area, end: area.bottom });
    else Object.values(part).forEach((one) => longAreas(one, found));
  }
  return found;
}

function boundTo(tree: AstNode, snapshot: WorkbookSnapshot, currentSheet: string): BoundExpr | undefined {
  try {
    return bind(tree, { snapshot, currentSheet });
  } catch {
    return undefined;
  }
}

function readsOf({ staticDeps: { cells, areas } }: CompiledFormula): Read[] {
  return [
    ...cells.map(({ sheet, row, col }) => ({ sheet, block: { top: row, left: col, bottom: row, right: col } })),
    ...areas.map(({ sheet, top, left, bottom, right }) => ({ sheet, block: { top, left, bottom, right } })),
  ];
}

type NameReader = NonNullable<Parameters<typeof extractStaticDeps>[2]>;

/** Reads what a name's own formula reads, so that whoever uses the name follows it. */
function nameReader(snapshot: WorkbookSnapshot, sheet: string): NameReader {
  const found = new Map<string, ReturnType<NameReader>>();
  const read: NameReader = (name) => {
    const key = name.toUpperCase();
    if (found.has(key)) return found.get(key);
    // A name that uses itself ends here.
    found.set(key, undefined);
    const known = snapshot.definedNames.get(`${sheet.toUpperCase()}\0${key}`) ?? snapshot.definedNames.get(key);
    const tree = known?.ranges.length === 1 ? treeOf(known.ranges[0] ?? "") : undefined;
    const bound = tree && boundTo(tree, snapshot, sheet);
    if (!bound) return undefined;
    const { isVolatile, hasDynamicRefs } = analyzeExpr(bound, read);
    const result = { deps: extractStaticDeps(bound, snapshot, read), isVolatile, hasDynamicRefs };
    found.set(key, result);
    return result;
  };
  return read;
}
