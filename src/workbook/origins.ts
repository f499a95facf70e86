import { cellAddress } from "./layout/address";
import { isWords, arithmeticOf, type Arithmetic } from "./lint/arithmetic";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import type { CellModel, SheetModel, WorkbookModel } from "./model";

/** A formula of the workbook that does more than add up or read, and what it rests on. */
export interface NumberOrigin extends Arithmetic {
  readonly sheet: string;
  /** The cell, or the first of those that hold the same: "B7". */
  readonly cell: string;
  readonly label: string;
  /** Its defined name, which Excel shows in its name box. */
  readonly name?: string;
  readonly formula: string;
  /** Cells that hold the same for other rows. */
  readonly more: number;
  /** What was stated of it. */
  readonly source?: string;
}

/** Every number of a workbook that is calculated rather than added up or read, with its source, sheet by sheet. */
export function originsOf({ sheets, names, system }: WorkbookModel): NumberOrigin[] {
  const nameAt = new Map<string, string>();
  for (const { name, sheet, area } of names)
    if (area.top === area.bottom && area.left === area.right)
      nameAt.set(`${sheet}!${cellAddress(area.top, area.left)}`, name);
  return sheets.flatMap((sheet) => {
    const found = new Map<string, NumberOrigin>();
    for (const [row, cells] of sheet.rows) {
      for (const [column, cell] of cells) {
        const told = toldOf(cell, system);
        if (told === undefined) continue;
        if (told.needs.length + told.functions.length === 0 && !told.turnsUnits) continue;
        const { source } = cell.origin ?? {};

        const address = cellAddress(row, column);
        const name = nameAt.get(`${sheet.name}!${address}`);
        const label = cell.origin?.label || labelBefore(sheet, row, column) || (name ?? address);
        const key = [label, name, source ?? told.functions.join()].join("|");
        const same = found.get(key);
        found.set(
          key,
          same
            ? { ...same, more: same.more + 1, ...joined(same, told) }
            : {
                sheet: sheet.name,
                cell: address,
                label,
                ...(name === undefined ? {} : { name }),
                formula: cell.formula ?? String(cell.value),
                more: 0,
                ...(source === undefined ? {} : { source }),
                ...told,
              },
        );
      }
    }
    return [...found.values()];
  });
}

function joined(one: Arithmetic, other: Arithmetic): Arithmetic {
  return {
    functions: [...new Set([...one.functions, ...other.functions])],
    needs: [...new Set([...one.needs, ...other.needs])],
    turnsUnits: one.turnsUnits || other.turnsUnits,
  };
}

/** What a cell does, unless it only says something; a limit that was typed into its cell of a check is a number of our own. */
function toldOf(cell: CellModel, system: UnitSystem): Arithmetic | undefined {
  const { formula, value, origin } = cell;
  if (formula !== undefined)
    return isSaid(cell) && !origin?.judges ? undefined : arithmeticOf(formula.slice(1), system);
  if (origin === undefined || typeof value !== "number" || value === 0 || value === 1) return undefined;
  return { functions: [], needs: [String(value)], turnsUnits: false };
}

function isSaid({ kind, formula }: CellModel): boolean {
  return kind === "text" || isWords(formula?.slice(1) ?? "");
}

/** The words nearest in front of a cell. */
function labelBefore({ rows }: SheetModel, row: number, column: number): string {
  for (let at = column - 1; at > 0; at--) {
    const value = rows.get(row)?.get(at)?.value;
    if (typeof value === "string" && value !== "") return value;
  }
  return "";
}
