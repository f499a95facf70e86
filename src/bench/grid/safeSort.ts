import { ArrayValueObject, functionLookup, type BaseFunction, type BaseValueObject } from "@univerjs/engine-formula";

type FunctionClass = new (name: string) => BaseFunction;

/** The engine's SORT orders the cached source range in place, so that its other readers see it sorted; this one sorts a copy. */
export function safeSort(): [FunctionClass, string][] {
  const entry = (functionLookup as [FunctionClass, string][]).find(([, name]) => name === "SORT");
  if (!entry) return [];
  const Sort = entry[0];
  class SafeSort extends Sort {
    override calculate(...given: BaseValueObject[]): ReturnType<BaseFunction["calculate"]> {
      const [source, ...rest] = given;
      if (!source?.isArray()) return super.calculate(...given);
      const array = source as ArrayValueObject;
      const copy = ArrayValueObject.create({
        calculateValueList: array.getArrayValue().map((row) => [...row]),
        rowCount: array.getRowCount(),
        columnCount: array.getColumnCount(),
        unitId: "",
        sheetId: "",
        row: -1,
        column: -1,
      });
      return super.calculate(copy, ...rest);
    }
  }
  return [[SafeSort, "SORT"]];
}
