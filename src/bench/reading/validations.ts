import type { IRange, ISheetDataValidationRule } from "@univerjs/core";
import type { DataValidation, Sheet } from "hucre";
import { mergedRanges } from "./cellSets";
import { rangeOf } from "./conditional";
import { fromFile } from "../../workbook/formulaText";

const STYLES: Readonly<Record<string, number>> = { information: 0, stop: 1, warning: 2 };

/** The sheet's validation rules: drop-down lists, ranges and their messages. */
export function validationRules(sheet: Sheet): ISheetDataValidationRule[] {
  return (sheet.dataValidations ?? []).map((rule, index) => ({
    uid: `dv${index}`,
    type: rule.type,
    ranges: rule.range
      .split(" ")
      .flatMap((part) => rangeOf(part, sheet.name))
      .flatMap((range) => [range, ...mergesFrom(sheet, range)]),
    allowBlank: rule.allowBlank ?? true,
    ...criteria(rule),
    showErrorMessage: rule.showErrorMessage ?? true,
    errorStyle: STYLES[rule.errorStyle ?? "stop"],
    error: rule.errorMessage,
    errorTitle: rule.errorTitle,
    showInputMessage: rule.showInputMessage,
    prompt: rule.inputMessage,
    promptTitle: rule.inputTitle,
    ...(rule.type === "list" ? { showDropDown: true, renderMode: 1 } : {}),
  })) as ISheetDataValidationRule[];
}

/** The merged cells that begin in a range and reach beyond it: the list of one opens by a click anywhere in it. */
function mergesFrom(sheet: Sheet, { startRow, endRow, startColumn, endColumn }: IRange): IRange[] {
  return mergedRanges(sheet).filter(
    (merge) =>
      merge.startRow >= startRow &&
      merge.startRow <= endRow &&
      merge.startColumn >= startColumn &&
      merge.startColumn <= endColumn &&
      (merge.endRow > endRow || merge.endColumn > endColumn),
  );
}

function criteria(rule: DataValidation): Pick<ISheetDataValidationRule, "formula1" | "formula2" | "operator"> {
  const operator = rule.operator as ISheetDataValidationRule["operator"];
  if (rule.type !== "list") return { formula1: asFormula(rule.formula1), formula2: asFormula(rule.formula2), operator };
  const listed = rule.values ?? /^"(.*)"$/.exec(rule.formula1 ?? "")?.[1]?.split(",");
  if (listed) return { formula1: listed.join(",") };
  return { formula1: rule.formula1 === undefined ? undefined : `=${fromFile(rule.formula1)}` };
}

/** A bound: a plain number stays one, anything else is a formula. */
function asFormula(text: string | undefined): string | undefined {
  if (text === undefined || text === "" || Number.isFinite(Number(text))) return text;
  return `=${fromFile(text)}`;
}
