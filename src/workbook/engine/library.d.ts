export { bind } from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/compile/binder";
export {
  analyzeExpr,
  detectDynamicArrayFunction,
  detectSubtotalOutput,
  extractStaticDeps,
  type CompiledFormula,
} from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/compile/compiled-formula";
export type { BoundExpr } from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/compile/bound-ast";
export { setDate1904 } from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/functions/_date-context";
export {
  scopedNameKey,
  type CellSnapshot,
  type DefinedNameSnapshot,
  type WorkbookSnapshot,
  type WorksheetSnapshot,
} from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/integration/workbook-snapshot";
export {
  EvalSession,
  evaluateFormula,
  evaluateFormulaRaw,
  type EvalContext,
} from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/runtime/evaluator";
export {
  ensureRegistryInitialized,
  lookupFunction,
  type FunctionDescriptor,
} from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/runtime/function-registry";
export type {
  RuntimeValue,
  ScalarValue,
} from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/runtime/values";
export type { AstNode } from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/syntax/ast";
export { parse } from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/syntax/parser";
export { tokenize } from "../../../node_modules/@cj-tech-master/excelts/dist/types/modules/formula/syntax/tokenizer";
