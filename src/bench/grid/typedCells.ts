import type { ICommandInfo, IExecutionOptions } from "@univerjs/core";

const CONTENT_MUTATION = "sheet.mutation.set-range-values";
const CONTENT_KEYS = ["v", "f", "si", "p"];

interface Mutation {
  readonly subUnitId: string;
  readonly cellValue?: Record<number, Record<number, Record<string, unknown> | null>>;
}

/** The cells whose content a person's command changed; undefined for anything else. */
export function typedCells(
  command: Pick<ICommandInfo, "id" | "params">,
  options: IExecutionOptions | undefined,
): { subUnitId: string; list: { row: number; column: number }[] } | undefined {
  if (command.id !== CONTENT_MUTATION || options?.fromFormula || options?.applyFormulaCalculationResult)
    return undefined;
  const { subUnitId, cellValue } = command.params as Mutation;
  const list: { row: number; column: number }[] = [];
  for (const [row, cells] of Object.entries(cellValue ?? {})) {
    for (const [column, cell] of Object.entries(cells)) {
      if (cell === null || CONTENT_KEYS.some((key) => key in cell))
        list.push({ row: Number(row), column: Number(column) });
    }
  }
  return list.length > 0 ? { subUnitId, list } : undefined;
}
