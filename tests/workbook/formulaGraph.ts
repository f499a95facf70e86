import { cellAddress } from "../../src/workbook/layout/address";
import { namesIn } from "../../src/workbook/lint/formula";
import { parseArea } from "../../src/xlsx/address";
import type { Area, CellModel, WorkbookModel } from "../../src/workbook/model";

interface Node {
  readonly key: string;
  readonly cell: CellModel;
  readonly needs: string[];
}

/** Which formula cells a workbook's formulas read, from the text of the formulas alone. */
export class FormulaGraph {
  private readonly nodes = new Map<string, Node>();
  private readonly names: ReadonlyMap<string, { sheet: string; area: Area }>;
  /** Formula cells that fill other cells, by the cells they may fill. */
  private readonly fillers = new Map<string, string>();
  readonly unknownNames: string[] = [];

  constructor(readonly model: WorkbookModel) {
    this.names = new Map(model.names.map(({ name, sheet, area }) => [name.toLowerCase(), { sheet, area }]));
    for (const { name, rows } of model.sheets) {
      for (const [row, cells] of rows) {
        for (const [column, cell] of cells) {
          if (cell.formula === undefined) continue;
          const key = `${name}!${cellAddress(row, column)}`;
          this.nodes.set(key, { key, cell, needs: [] });
          for (let down = 0; down < (cell.spill?.rows ?? 1); down++) {
            for (let across = 0; across < (cell.spill?.columns ?? 1); across++) {
              this.fillers.set(`${name}!${cellAddress(row + down, column + across)}`, key);
            }
          }
        }
      }
    }
    for (const node of this.nodes.values()) {
      const [sheet = ""] = node.key.split("!");
      node.needs.push(...this.reads(node.cell.formula ?? "", sheet));
    }
  }

  /** Cells with a function of ours. */
  get ours(): string[] {
    return [...this.nodes.values()].filter(({ cell }) => isOurs(cell)).map(({ key }) => key);
  }

  /** The longest chain of cells with our functions that ends in each cell; throws on a circle. */
  longestChain(): string[] {
    const known = new Map<string, string[]>();
    const walking = new Set<string>();
    const chain = (key: string): string[] => {
      const done = known.get(key);
      if (done) return done;
      if (walking.has(key)) throw new Error(`${key} depends on itself`);
      walking.add(key);
      const node = this.nodes.get(key);
      const before = (node?.needs ?? [])
        .map(chain)
        .reduce((longest, one) => (one.length > longest.length ? one : longest), []);
      const own = node && isOurs(node.cell) ? [...before, key] : before;
      walking.delete(key);
      known.set(key, own);
      return own;
    };
    return [...this.nodes.keys()]
      .map(chain)
      .reduce((longest, one) => (one.length > longest.length ? one : longest), []);
  }

  private reads(formula: string, sheet: string): Set<string> {
    const found = new Set<string>();
    const bare = formula.replace(/"(?:[^"]|"")*"/g, '""');
    const add = (where: string, area: Area): void => {
      for (let row = area.top; row <= area.bottom; row++) {
        for (let column = area.left; column <= area.right; column++) {
          const key = this.fillers.get(`${where}!${cellAddress(row, column)}`);
          if (key) found.add(key);
        }
      }
    };
    for (const [, where, ref = ""] of bare.matchAll(
      /(?:([A-Za-z]+)!)?(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)(?![\w(])/g,
    )) {
      const { top = 0, left = 0, bottom = 0, right = 0 } = parseArea(ref, where ?? sheet) ?? {};
      // The model counts from 1.
      add(where ?? sheet, { top: top + 1, left: left + 1, bottom: bottom + 1, right: right + 1 });
    }
    for (const name of namesIn(formula.slice(1))) {
      const named = this.names.get(name.toLowerCase());
      if (named) add(named.sheet, named.area);
      else if (!isBound(name, formula)) this.unknownNames.push(`${name} in ${formula}`);
    }
    return found;
  }
}

/** Whether a cell calls a function of ours; one that is named in a sentence is not called. */
function isOurs(cell: CellModel): boolean {
  return /\bRILL\./.test((cell.formula ?? "").replace(/"(?:[^"]|"")*"/g, '""'));
}

/** Whether LET or LAMBDA gives the name its meaning. */
function isBound(name: string, formula: string): boolean {
  return /\b(LET|LAMBDA)\(/.test(formula) && new RegExp(`[(,]\\s*${name}\\s*,`).test(formula);
}
