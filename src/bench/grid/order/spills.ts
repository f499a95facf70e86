import type { IRange } from "@univerjs/core";
import { CalculateFormulaService, FormulaDependencyTree } from "@univerjs/engine-formula";

/** Where formulas spill, as far as it is known: by sheet id and the formula's cell. */
const areas = new Map<string, IRange>();

export function spillKey(sheetId: string, row: number, column: number): string {
  return `${sheetId}!${row},${column}`;
}

/** How often the areas were told anew. */
let told = 0;

/** Changes whenever a spill covers other cells. */
export function areasKnown(): number {
  return told;
}

/** Tells the order of calculation where formulas spill now. */
export function knowSpills(spills: Iterable<readonly [key: string, range: IRange]>): void {
  told++;
  areas.clear();
  for (const [key, range] of spills) areas.set(key, range);
}

interface Ranges {
  readonly dirtyRanges: { readonly sheetId: string; readonly range: IRange }[];
}
interface Engine {
  _getArrayFormulaDirtyRangeAndExcludedRange?: (...given: unknown[]) => Ranges;
}

let ordered = false;

/**
 * The engine takes a formula that spills for its first cell alone, calculates the readers of its other cells too early,
 * and then everything behind any spill a second time. With the areas known, readers come after the whole spill, and
 * only a spill that covers other cells than before asks for the second time.
 */
export function orderBySpills(): void {
  if (ordered) return;
  ordered = true;
  const ownCell = Object.getOwnPropertyDescriptor(FormulaDependencyTree.prototype, "toRTreeItem")
    ?.value as FormulaDependencyTree["toRTreeItem"];
  FormulaDependencyTree.prototype.toRTreeItem = function (this: FormulaDependencyTree) {
    const items = ownCell.call(this);
    const range = this.featureId ? undefined : areas.get(spillKey(this.subUnitId, this.row, this.column));
    return range ? items.map((item) => ({ ...item, range })) : items;
  };

  const engine = CalculateFormulaService.prototype as unknown as Engine;
  const allSpills = engine._getArrayFormulaDirtyRangeAndExcludedRange;
  if (!allSpills) return;
  engine._getArrayFormulaDirtyRangeAndExcludedRange = function (...given) {
    const found = allSpills.apply(this, given);
    return { ...found, dirtyRanges: found.dirtyRanges.filter(({ sheetId, range }) => !isKnown(sheetId, range)) };
  };
}

function isKnown(sheetId: string, range: IRange): boolean {
  const known = areas.get(spillKey(sheetId, range.startRow, range.startColumn));
  return known !== undefined && known.endRow === range.endRow && known.endColumn === range.endColumn;
}
