import type { IRange } from "@univerjs/core";
import { FormulaDependencyGenerator } from "@univerjs/engine-formula";
import { isCell, orderOf, sheetKey, type Formula } from "./graph";
import type { Inside } from "./inside";
import { Remaining } from "./remaining";
import { cameToAnother } from "./results";
import { sameSignature, signatureOf } from "./signature";

interface Kept {
  readonly signature: readonly unknown[];
  /** Missing where only the engine's own way can tell the order. */
  readonly formulas: readonly Formula[] | undefined;
}

const kept = new WeakMap<Inside, Kept>();
let installed = false;

/**
 * The engine finds out anew at every edit which formula reads which, and runs all that hang on the edit, however far
 * away and whether or not anything they read has changed. An edit of the fall would run 2,400 formulas of the
 * workbook, of which some 200 come to another value. So the order is kept as long as no formula changes, and a formula
 * runs only if something it reads did change.
 */
export function keepOrder(): void {
  if (installed) return;
  installed = true;
  const engine = FormulaDependencyGenerator.prototype;
  const everything = engine.generate;
  engine.generate = async function (this: FormulaDependencyGenerator, forModel) {
    const inside = this as unknown as Inside;
    const plain = !forModel && isPlainEdit(inside);
    if (!plain) kept.delete(inside);
    const formulas = plain ? await knownOrder(inside) : undefined;
    if (!formulas) {
      // Otherwise the engine's index would hold every range once more after each pass.
      inside._dependencyManagerService.reset();
      return everything.call(this, forModel);
    }
    inside._runtimeService.clearArrayObjectCache();
    // The engine asks the list only for its length and its last item.
    return toRun(inside, formulas) as unknown as Awaited<ReturnType<typeof everything>>;
  };
}

/** Some cells were written, and perhaps conditional formats asked for; no sheet, name, table or order of all. */
function isPlainEdit({ _currentConfigService: config }: Inside): boolean {
  const others = [
    config.getDirtyNameMap(),
    config.getDirtyDefinedNameMap(),
    config.getDirtySuperTableMap(),
    config.getDirtyUnitFeatureMap(),
    config.getExcludedRange(),
    config.getClearDependencyTreeCache(),
  ];
  return !config.isForceCalculate() && others.every((one) => Object.keys(one ?? {}).length === 0);
}

async function knownOrder(inside: Inside): Promise<readonly Formula[] | undefined> {
  const signature = signatureOf(inside);
  const last = kept.get(inside);
  if (last && sameSignature(last.signature, signature)) return last.formulas;
  inside._dependencyManagerService.reset();
  const formulas = await orderOf(inside);
  kept.set(inside, { signature, formulas });
  return formulas;
}

function toRun(inside: Inside, formulas: readonly Formula[]): Remaining {
  const config = inside._currentConfigService;
  const dirty = new Map<string, IRange[]>();
  for (const { unitId, sheetId, range } of config.getDirtyRanges()) {
    const sheet = sheetKey(unitId, sheetId);
    const ranges = dirty.get(sheet);
    if (ranges) ranges.push(range);
    else dirty.set(sheet, [range]);
  }
  const asked = config.getDirtyUnitOtherFormulaMap();
  const isFirst = ({ tree, sheet, reads, restless }: Formula): boolean =>
    restless ||
    (isCell(tree) && dirty.get(sheet)?.some((range) => tree.inRangeData(range))) ||
    reads.some((read) => dirty.get(read.sheet)?.some((range) => meet(read.range, range))) ||
    asked[tree.unitId]?.[tree.subUnitId]?.[tree.formulaId ?? ""] !== undefined;
  return new Remaining(formulas, isFirst, (tree) => cameToAnother(inside, tree));
}

/** Whole rows and columns have no number where they have no end. */
function meet(one: IRange, other: IRange): boolean {
  return !(
    one.startRow > other.endRow ||
    other.startRow > one.endRow ||
    one.startColumn > other.endColumn ||
    other.startColumn > one.endColumn
  );
}
