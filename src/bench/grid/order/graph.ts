import type { IRange } from "@univerjs/core";
import type { IFormulaDependencyTree } from "@univerjs/engine-formula";
import type { Inside } from "./inside";

/** A formula, in the order of calculation. */
export interface Formula {
  readonly tree: IFormulaDependencyTree;
  /** The sheet it stands on. */
  readonly sheet: string;
  /** The cells it reads. */
  readonly reads: readonly { readonly sheet: string; readonly range: IRange }[];
  /** To be calculated at every edit: TODAY, NOW, RAND. */
  readonly restless: boolean;
  /** Places in the order of the formulas that read it; all come later. */
  readonly readers: readonly number[];
}

/** A sheet of a workbook. */
export function sheetKey(unitId: string, sheetId: string): string {
  return `${unitId}!${sheetId}`;
}

/** Not a conditional format, whose place is no cell that could be read. */
export function isCell({ formulaId }: IFormulaDependencyTree): boolean {
  return (formulaId ?? "") === "";
}

/** Every formula after all that it reads; nothing where that cannot be told before they are calculated. */
export async function orderOf(inside: Inside): Promise<Formula[] | undefined> {
  const trees = await treesOf(inside);
  const order = trees.every((tree) => readsFixedCells(inside, tree))
    ? sorted(trees, readersOf(inside, trees))
    : undefined;
  const formulas = order?.map(({ tree, readers }): Formula => ({
    tree,
    sheet: sheetKey(tree.unitId, tree.subUnitId),
    reads: tree.rangeList.map(({ unitId, sheetId, range }) => ({
      sheet: sheetKey(unitId, sheetId),
      range: { ...range },
    })),
    restless: tree.formula !== "" && inside._detectForcedRecalculationNode(tree, inside._getTreeNode(tree)),
    readers,
  }));
  inside._dependencyTreeCache.clear();
  inside._dependencyRTreeCacheForAddressFunction.clear();
  return formulas;
}

/** Not a feature, OFFSET or INDIRECT: what these read is known only when they run. */
function readsFixedCells(inside: Inside, tree: IFormulaDependencyTree): boolean {
  if (tree.featureId) return false;
  return tree.formula === "" || inside._getAddressFunctionNodeList(inside._getTreeNode(tree)).length === 0;
}

function treesOf(inside: Inside): Promise<IFormulaDependencyTree[]> {
  const config = inside._currentConfigService;
  inside._updateRangeFlatten();
  return inside._generateTreeList(
    config.getFormulaData(),
    inside._otherFormulaManagerService.getOtherFormulaData(),
    config.getUnitData(),
  );
}

function readersOf(inside: Inside, trees: readonly IFormulaDependencyTree[]): number[][] {
  const indexOf = new Map(trees.map(({ treeId }, index) => [treeId, index]));
  const service = inside._dependencyManagerService;
  service.openKdTree();
  const readers = trees.map((tree) =>
    isCell(tree)
      ? [...service.searchDependency(tree.toRTreeItem())].flatMap((treeId) => indexOf.get(treeId) ?? [])
      : [],
  );
  service.closeKdTree();
  return readers;
}

interface Sorted {
  readonly tree: IFormulaDependencyTree;
  readonly readers: number[];
}

/** By counting what each still waits for; nothing when formulas wait for each other. */
function sorted(
  trees: readonly IFormulaDependencyTree[],
  readers: readonly (readonly number[])[],
): Sorted[] | undefined {
  const waits = new Int32Array(trees.length);
  for (const some of readers) for (const reader of some) waits[reader]!++;
  const order: number[] = [];
  waits.forEach((count, index) => count === 0 && order.push(index));
  for (const index of order) for (const reader of readers[index] ?? []) if (--waits[reader]! === 0) order.push(reader);
  if (order.length < trees.length) return undefined;
  const places = new Int32Array(trees.length);
  order.forEach((index, place) => (places[index] = place));
  return order.map((index) => ({
    tree: trees[index]!,
    readers: (readers[index] ?? []).map((reader) => places[reader]!),
  }));
}
