import type { ISheetDataValidationRule } from "@univerjs/core";
import type { DataValidation, Sheet } from "hucre";
import { rangeOf } from "./conditional";
import { fromFile } from "../../workbook/formulaText";

const STYLES: Readonly<Record<string, number>> = { information: 0, stop: 1, warning: 2 };

/** The sheet's validation rules: drop-down lists, ranges and their messages. */
export function validationRules(sheet: Sheet): ISheetDataValidationRule[] {
  return (sheet.dataValidations ?? []).map((rule, index) => ({
    uid: `dv${index}`,
    type: rule.type,
    ranges: rule.range.split(" ").flatMap((part) => rangeOf(part, sheet.name)),
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
