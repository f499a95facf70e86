import { BooleanNumber } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  FunctionType,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
  type IFunctionInfo,
} from "@univerjs/engine-formula";
import { Problem } from "../../calc/problem";
import { catalogue } from "../../functions/catalogue";
import type { Declaration } from "../../functions/contract/declaration";
import type { Cell } from "../../functions/contract/result";
import type { Reasons } from "./reasons";

type FunctionClass = new (name: string) => BaseFunction;

/** The namespace every worksheet function is called under. */
const NAMESPACE = "RILL";

/** The worksheet functions as the grid's engine takes them; the reasons for errors are kept in `reasons`. */
export function rillFunctions(reasons: Reasons): [FunctionClass, string][] {
  return catalogue.map((declaration) => [functionClass(declaration, reasons), `${NAMESPACE}.${declaration.name}`]);
}

function functionClass(declaration: Declaration, reasons: Reasons): FunctionClass {
  const parameters = Object.values(declaration.args);
  return class extends BaseFunction {
    override minParams = parameters.filter((parameter) => !parameter.optional).length;
    override maxParams = parameters.length;

    override calculate(...given: BaseValueObject[]): BaseValueObject {
      const { subUnitId, row, column } = this;
      try {
        const result = declaration.evaluate(given.map(rawValue));
        reasons.clear(subUnitId ?? "", row, column);
        return Array.isArray(result) ? spill(result, this) : cellValue(result);
      } catch (error) {
        const sentence = error instanceof Error ? error.message : String(error);
        reasons.set(subUnitId ?? "", row, column, sentence);
        // Excel hands an error cell on without asking the function; so does the bench, but it keeps the sentence.
        const passedOn = given.find((value) => value.isError());
        if (passedOn) return passedOn as ErrorValueObject;
        const code = error instanceof Problem && error.kind === "missing" ? ErrorType.NA : ErrorType.VALUE;
        return ErrorValueObject.create(code, sentence);
      }
    }
  } as unknown as FunctionClass;
}

/** What the function contract expects for a value of the engine: rows for ranges, {error} for error cells. */
function rawValue(value: BaseValueObject | undefined): unknown {
  if (value === undefined || value === null) return undefined;
  if (value.isError()) return { error: (value as ErrorValueObject).getErrorType() };
  if (!value.isArray()) return value.isNull() ? null : value.getValue();
  return (value as ArrayValueObject)
    .getArrayValue()
    .map((row) => row.map((cell) => rawValue(cell ?? undefined) ?? null));
}

function cellValue(value: Cell): BaseValueObject {
  if (typeof value === "number") return NumberValueObject.create(value);
  return typeof value === "boolean" ? BooleanValueObject.create(value) : StringValueObject.create(value);
}

function spill(table: readonly (readonly Cell[])[], at: BaseFunction): BaseValueObject {
  return ArrayValueObject.create({
    calculateValueList: table.map((row) => row.map(cellValue)),
    rowCount: table.length,
    columnCount: table[0]?.length ?? 0,
    unitId: at.unitId ?? "",
    sheetId: at.subUnitId ?? "",
    row: at.row,
    column: at.column,
  });
}

/** What the formula bar says of each function while its formula is typed. */
export function rillDescriptions(): IFunctionInfo[] {
  return catalogue.map((declaration) => ({
    functionName: `${NAMESPACE}.${declaration.name}`,
    functionType: FunctionType.User,
    description: declaration.summary,
    abstract: declaration.summary,
    functionParameter: Object.entries(declaration.args).map(([name, argument]) => ({
      name,
      detail: `${argument.about} (${argument.rule("US")})`,
      example: "",
      require: argument.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  }));
}
