import {
  InterceptorEffectEnum,
  type ICellData,
  type IColumnData,
  type IStyleData,
  type IWorkbookData,
  type Univer,
} from "@univerjs/core";
import { INTERCEPTOR_POINT, INumfmtService, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import type { Workbook } from "hucre";
import { sheetId } from "../reading/sheetId";

/** Above whatever else looks at a cell: the others go by the look it has. */
const FIRST = 200;

interface Sheet {
  /** Whether the file holds a cell, which then has its own look or none. */
  holds(row: number, column: number): boolean;
  /** The look of each column that has one, by its id. */
  readonly looks: ReadonlyMap<number, string>;
}

/**
 * Gives cells that the file does not hold the look of their column, as spreadsheet programs do. The grid's own columns
 * would not do: they show in every cell of the file that has no fill, and give no number format.
 */
export class FreeCells {
  private sheets = new Map<string, Sheet>();
  private styles: IWorkbookData["styles"] = {};

  /** Begins to look at cells; possible only once there has been a workbook. */
  listen(univer: Univer): void {
    const injector = univer.__getInjector();
    injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
      priority: FIRST,
      effect: InterceptorEffectEnum.Value | InterceptorEffectEnum.Style,
      handler: (cell, at, next) => {
        const look = this.look(at.subUnitId, at.row, at.col);
        if (!look) return next(cell);
        const own = at.workbook.getStyles().getStyleByCell(cell);
        return next({ ...cell, s: own ? { ...own, ...look } : look } as ICellData);
      },
    });
    // What is typed is read by the form of its cell: "1-2" is a day, but not in a column of texts.
    const forms = injector.get(INumfmtService);
    const ownForm = forms.getValue.bind(forms);
    forms.getValue = (unit, sheet, row, column) =>
      ownForm(unit, sheet, row, column) ?? this.look(sheet, row, column)?.n ?? null;
  }

  /** Takes up a workbook that is to be shown. */
  begin({ sheets }: Workbook, { styles, sheets: shown }: IWorkbookData): void {
    this.styles = styles;
    this.sheets = new Map(
      sheets.flatMap(({ cells, rows }, index) => {
        const id = sheetId(index);
        const looks = columnLooks(shown[id]?.columnData ?? {});
        const holds = (row: number, column: number): boolean =>
          cells?.has(`${row},${column}`) === true || (rows[row]?.[column] ?? null) !== null;
        return looks.size > 0 ? [[id, { holds, looks }]] : [];
      }),
    );
  }

  private look(sheet: string, row: number, column: number): IStyleData | undefined {
    const known = this.sheets.get(sheet);
    const id = known?.looks.get(column);
    if (!known || id === undefined || known.holds(row, column)) return undefined;
    return this.styles[id] ?? undefined;
  }
}

function columnLooks(columns: Readonly<Record<number, Partial<IColumnData>>>): Map<number, string> {
  return new Map(
    Object.entries(columns).flatMap(([column, { custom }]) => {
      const look: unknown = custom?.look;
      return typeof look === "string" ? [[Number(column), look]] : [];
    }),
  );
}
