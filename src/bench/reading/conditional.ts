import type { IConditionFormattingRule } from "@univerjs/sheets-conditional-formatting";
import type { ConditionalRule, Sheet } from "hucre";
import { parseArea } from "../../xlsx/address";
import { fromFile } from "../../workbook/formulaText";
import type { StyleTable } from "./styles";

/** The sheet's conditional formats that the grid can show; the others stay in the file, unseen. */
export function conditionalRules(sheet: Sheet, styles: StyleTable): IConditionFormattingRule[] {
  const rules = [...(sheet.conditionalRules ?? [])].sort((a, b) => a.priority - b.priority);
  return rules.flatMap((rule, index) => {
    const highlight = highlightOf(rule);
    if (!highlight || !rule.style) return [];
    const { bg, cl, bl, it, ul, st } = styles.convert(rule.style);
    return {
      cfId: `cf${index}`,
      ranges: rule.range.split(" ").flatMap((part) => rangeOf(part, sheet.name)),
      stopIfTrue: rule.stopIfTrue ?? false,
      rule: { type: "highlightCell", style: { bg, cl, bl, it, ul, st }, ...highlight },
    } as IConditionFormattingRule;
  });
}

export function rangeOf(
  text: string,
  sheet: string,
): { startRow: number; endRow: number; startColumn: number; endColumn: number }[] {
  const area = parseArea(text, sheet);
  if (!area) return [];
  return [{ startRow: area.top, endRow: area.bottom, startColumn: area.left, endColumn: area.right }];
}

/** Everything but ranges and colours: what is compared with what. */
function highlightOf(rule: ConditionalRule): object | undefined {
  const formulas = [rule.formula ?? []].flat().map((formula) => fromFile(formula));
  const [first] = formulas;
  if (rule.type === "expression" && first !== undefined) return { subType: "formula", value: `=${first}` };
  if (rule.type === "containsText" && rule.text !== undefined)
    return { subType: "text", operator: "containsText", value: rule.text };
  if (rule.type === "beginsWith" && rule.text !== undefined)
    return { subType: "text", operator: "beginsWith", value: rule.text };
  if (rule.type !== "cellIs" || first === undefined) return undefined;
  const text = /^"(.*)"$/.exec(first)?.[1];
  if (text !== undefined && rule.operator === "equal") return { subType: "text", operator: "equal", value: text };
  const numbers = formulas.map(Number);
  if (!numbers.every(Number.isFinite)) return undefined;
  return { subType: "number", operator: rule.operator, value: numbers.length > 1 ? numbers : numbers[0] };
}
