import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Declaration } from "../../functions/contract/declaration";
import { parse, tokenize } from "../engine/library";
import { common, inWords, PURE, sizeOf, times, timesNumbers, type UnitSize } from "./unitSize";

/** What is read of a parsed formula; the numbers are the calculating library's kinds of nodes. */
type Node =
  | { readonly type: 1; readonly value: number }
  | { readonly type: 5; readonly col: string; readonly row: string; readonly sheet?: string }
  | { readonly type: 6; readonly start: CellNode; readonly end: CellNode; readonly sheet?: string }
  | { readonly type: 7; readonly op: string; readonly left: Node; readonly right: Node }
  | { readonly type: 8 | 11; readonly operand: Node }
  | { readonly type: 9; readonly name: string; readonly args: readonly Node[] }
  | { readonly type: 12; readonly name: string }
  | { readonly type: 0 };
type CellNode = Extract<Node, { type: 5 }>;

/** A unit; a plain number, as all that it may turn one unit into another by; or what nothing is known of. */
type Known = UnitSize | readonly number[] | undefined;

/** What stands where, for the units of a workbook's formulas. */
export interface Places {
  readonly system: UnitSystem;
  readonly functions: ReadonlyMap<string, Declaration>;
  /**
   * The kind of the numbers in an area such as "B7" or "B7:B9" of a sheet, or in one of its columns counted from 1; undefined
   * where they differ or none is known.
   */
  kindOf(area: string, sheet: string, column?: number): string | undefined;
  /** The same for a defined name. */
  kindOfName(name: string, column?: number): string | undefined;
}

/** Functions that give one of their arguments, or something between them: from which on. */
const AMONG: Readonly<Record<string, number>> = {
  MAX: 0,
  MIN: 0,
  SUM: 0,
  MEDIAN: 0,
  AVERAGE: 0,
  IFERROR: 0,
  IFNA: 0,
  IF: 1,
  CHOOSE: 1,
};
/** Functions that keep the unit of one argument: which. */
const KEEPING: Readonly<Record<string, number>> = {
  ROUND: 0,
  ROUNDUP: 0,
  ROUNDDOWN: 0,
  INT: 0,
  ABS: 0,
  N: 0,
  SUMIF: 2,
  SUMIFS: 0,
  MAXIFS: 0,
  MINIFS: 0,
  XLOOKUP: 2,
  FILTER: 0,
};
const COUNTING = new Set(["COUNT", "COUNTA", "COUNTIF", "COUNTIFS", "COUNTBLANK", "MATCH", "ROWS"]);

/** Where a formula adds, compares, shows or hands on a number in another unit than belongs there. */
export function unitFaults(
  formula: string,
  sheet: string,
  kind: string | undefined,
  places: Places,
  /** The kinds of the cells that it fills, where they differ. */
  kinds: readonly (string | undefined)[] = [],
): string[] {
  const faults: string[] = [];
  const tree = parse(tokenize(formula)) as unknown as Node;
  gives(walk(tree, new Map()), kind);
  return faults;

  function gives(found: Known, belongs: string | undefined): void {
    const wanted = sizeOf(belongs, places.system);
    if (wanted && isUnit(found) && !common(found, wanted))
      faults.push(`gives ${inWords(found)} where ${belongs ?? ""} belongs, ${inWords(wanted)}`);
  }

  function walk(node: Node, bound: Map<string, Known>): Known {
    switch (node.type) {
      case 1:
        return [node.value];
      case 5:
      case 6:
        return at(node);
      case 7:
        return operation(node.op, walk(node.left, bound), walk(node.right, bound));
      case 8:
        return walk(node.operand, bound);
      case 11:
        return PURE;
      case 12:
        return bound.has(node.name) ? bound.get(node.name) : at(node);
      case 9:
        return call(node.name.toUpperCase(), node.args, bound);
      case 0:
        return undefined;
    }
    // Texts, arrays and whole rows.
    return undefined;
  }

  /** The unit of what stands in a cell, a range or under a name, or in one column of them. */
  function at(node: Node, column?: number): Known {
    const kind =
      node.type === 12
        ? places.kindOfName(node.name, column)
        : node.type === 5
          ? places.kindOf(`${node.col}${node.row}`, node.sheet ?? sheet, column)
          : node.type === 6
            ? places.kindOf(
                `${node.start.col}${node.start.row}:${node.end.col}${node.end.row}`,
                node.sheet ?? sheet,
                column,
              )
            : undefined;
    return sizeOf(kind, places.system);
  }

  function operation(op: string, left: Known, right: Known): Known {
    if (op === "*") return product(left, right, 1);
    if (op === "/") return product(left, right, -1);
    if (op === "+" || op === "-") return together([left, right], op === "+" ? "adds" : "takes");
    if (op === "&" || op === "^") return undefined;
    together([left, right], "compares");
    return PURE;
  }

  function product(left: Known, right: Known, sign: 1 | -1): Known {
    if (left === undefined || right === undefined) return undefined;
    if (!isUnit(left)) {
      if (!isUnit(right)) {
        const others = right.map((one) => (sign === 1 ? one : 1 / one));
        return [...left, ...others, ...left.flatMap((one) => others.map((other) => one * other))];
      }
      return sign === 1 ? timesNumbers(right, left) : times(PURE, right, -1);
    }
    if (isUnit(right)) return times(left, right, sign);
    return timesNumbers(
      left,
      right.map((one) => (sign === 1 ? one : 1 / one)),
    );
  }

  function together(all: readonly Known[], how: string): Known {
    let sum: UnitSize | undefined;
    for (const one of all) {
      if (!isUnit(one)) continue;
      const both = sum === undefined ? one : common(sum, one);
      if (both === undefined) faults.push(`${how} ${inWords(one)} and ${inWords(sum ?? one)}`);
      sum = both ?? one;
    }
    return sum;
  }

  function call(name: string, args: readonly Node[], bound: Map<string, Known>): Known {
    if (name === "LET") return letIn(args, bound);
    const known = args.map((one) => walk(one, bound));
    if (name.startsWith("RILL.")) return ours(name.slice(5), known);
    if (name === "INDEX") return indexed(args, known[0]);
    if (name === "IF" && handsOn(args)) return known[1];
    if (name === "CHOOSE" && kinds.length === args.length - 1) {
      known.slice(1).forEach((one, index) => gives(one, kinds[index]));
      return undefined;
    }
    if (name in AMONG) return together(known.slice(AMONG[name]), `${name} takes`);
    if (name in KEEPING) return known[KEEPING[name] ?? 0];
    if (name === "SUMPRODUCT") return known.reduce<Known>((sum, one) => product(sum, one, 1), PURE);
    return COUNTING.has(name) ? PURE : undefined;
  }

  /** INDEX(table,row,3) is of the kind of that column. */
  function indexed([from, , column]: readonly Node[], whole: Known): Known {
    const counted = column?.type === 1 ? column.value : 0;
    return from && counted > 0 ? at(from, counted) : whole;
  }

  function letIn(args: readonly Node[], outer: Map<string, Known>): Known {
    const bound = new Map(outer);
    for (let at = 0; at + 1 < args.length; at += 2) {
      const [name, value] = [args[at], args[at + 1]];
      if (name?.type === 12 && value) bound.set(name.name, walk(value, bound));
    }
    const last = args.at(-1);
    return last && walk(last, bound);
  }

  function ours(name: string, known: readonly Known[]): Known {
    const declaration = places.functions.get(name);
    if (!declaration) return undefined;
    Object.entries(declaration.args).forEach(([argument, { measure }], index) => {
      const [given, wanted] = [known[index], sizeOf(measure, places.system)];
      if (isUnit(given) && wanted && !common(given, wanted))
        faults.push(`hands ${inWords(given)} to ${name} for its ${argument}, ${inWords(wanted)}`);
    });
    return sizeOf(declaration.result.measure, places.system);
  }
}

/** IF(ISNUMBER(x),…,x): what is handed on there is no number, but a blank or the words of why there is none. */
function handsOn([asked, , otherwise]: readonly Node[]): boolean {
  if (asked?.type !== 9 || asked.name.toUpperCase() !== "ISNUMBER" || otherwise === undefined) return false;
  return JSON.stringify(asked.args[0]) === JSON.stringify(otherwise);
}

function isUnit(known: Known): known is UnitSize {
  return known !== undefined && !Array.isArray(known);
}
