import type { Declaration } from "../../functions/contract/declaration";
import { parseArea } from "../../xlsx/address";
import { cellAddress } from "../layout/address";
import type { Area, SheetModel, WorkbookModel } from "../model";
import { unitFaults, type Places } from "./formulaUnits";

/** Rows of a table that are looked at: those below are of the same kinds. */
const ROWS_LOOKED_AT = 100;

/** Every formula of a workbook in which a number meets another of a different unit, as "Site!B7 adds …". */
export function lintUnits(model: WorkbookModel, catalogue: readonly Declaration[]): string[] {
  const places = placesOf(model, catalogue);
  return model.sheets.flatMap(({ name, rows }) =>
    [...rows].flatMap(([row, cells]) =>
      [...cells].flatMap(([column, { formula, kind, spill }]) =>
        formula === undefined
          ? []
          : unitFaults(formula.slice(1), name, kind, places, kindsBelow(rows, row, column, spill?.rows)).map(
              (fault) => `${name}!${cellAddress(row, column)} ${fault}: ${formula}`,
            ),
      ),
    ),
  );
}

/** The kinds of cells below each other that one formula fills, where they differ. */
function kindsBelow(rows: SheetModel["rows"], top: number, column: number, count = 1): (string | undefined)[] {
  const kinds = Array.from({ length: count }, (_, index) => rows.get(top + index)?.get(column)?.kind);
  return new Set(kinds).size > 1 ? kinds : [];
}

function placesOf({ system, sheets, names }: WorkbookModel, catalogue: readonly Declaration[]): Places {
  const bySheet = new Map(sheets.map((sheet) => [sheet.name, sheet]));
  const byName = new Map(names.map((one) => [one.name.toLowerCase(), one]));
  const among = (sheet: string, { top, left, bottom, right }: Area, column?: number): string | undefined => {
    const found = new Set<string>();
    const [first, last] = column === undefined ? [left, right] : [left + column - 1, left + column - 1];
    for (let row = top; row <= Math.min(bottom, top + ROWS_LOOKED_AT); row++) {
      for (let at = first; at <= last; at++) {
        const kind = bySheet.get(sheet)?.rows.get(row)?.get(at)?.kind;
        if (kind !== undefined) found.add(kind);
      }
    }
    const [kind] = found;
    return found.size === 1 ? kind : undefined;
  };
  return {
    system,
    functions: new Map(catalogue.map((declaration) => [declaration.name, declaration])),
    kindOf(area, sheet, column) {
      const place = parseArea(area, sheet);
      if (!place) return undefined;
      const { top, left, bottom, right } = place;
      return among(sheet, { top: top + 1, left: left + 1, bottom: bottom + 1, right: right + 1 }, column);
    },
    kindOfName(name, column) {
      const named = byName.get(name.toLowerCase());
      return named && among(named.sheet, named.area, column);
    },
  };
}
