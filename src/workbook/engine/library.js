// The inside of the calculating library: its package opens a whole workbook at a time alone, which would have every formula
// bound and run again for each cell that a person types. Whoever changes the pinned version looks here first.
export { bind } from "../../../node_modules/@cj-tech-master/excelts/dist/esm/modules/formula/compile/binder.js";
export {
  analyzeExpr,
  detectDynamicArrayFunction,
  detectSubtotalOutput,
  extractStaticDeps,
} from "../../../node_modules/@cj-tech-master/excelts/dist/esm/modules/formula/compile/compiled-formula.js";
export { setDate1904 } from "../../../node_modules/@cj-tech-master/excelts/dist/esm/modules/formula/functions/_date-context.js";
export { scopedNameKey } from "../../../node_modules/@cj-tech-master/excelts/dist/esm/modules/formula/integration/workbook-snapshot.js";
export {
  EvalSession,
  evaluateFormula,
  evaluateFormulaRaw,
} from "../../../node_modules/@cj-tech-master/excelts/dist/esm/modules/formula/runtime/evaluator.js";
export {
  ensureRegistryInitialized,
  lookupFunction,
} from "../../../node_modules/@cj-tech-master/excelts/dist/esm/modules/formula/runtime/function-registry.js";
export { parse } from "../../../node_modules/@cj-tech-master/excelts/dist/esm/modules/formula/syntax/parser.js";
export { tokenize } from "../../../node_modules/@cj-tech-master/excelts/dist/esm/modules/formula/syntax/tokenizer.js";
