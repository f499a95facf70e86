import type { Cell, DataValidation, MergeRange, SheetChart, WriteSheet } from "hucre";
import { isDynamic, toFile } from "../formulaText";
import { areaAddress, columnLetters } from "../layout/address";
import type { CellModel, CellValue, ChartModel, NameModel, SheetModel, Validation } from "../model";
import { lastPrintedColumn, lastPrintedRow, MARGINS, pageScale } from "../layout/paging";
import { heightsInFile, rowsInFile } from "./openRows";
import { differentialStyle, writerStyle } from "./styles";
import { tabColor } from "./tabColors";

/** Everything of one sheet as the writing library takes it. */
export function writerSheet(sheet: SheetModel, names: readonly NameModel[], paper: "letter" | "a4"): WriteSheet {
  const { print, freeze } = sheet;
  const isOpen = sheet.openFrom !== undefined;
  const spilled = spilledValues(sheet);
  const holds = (row: number, column: number, { value, formula }: CellModel): boolean =>
    formula !== undefined || (spilled.get(`${row},${column}`) ?? value ?? "") !== "";
  const rows = rowsInFile(sheet, holds);
  const color = tabColor(sheet.name);
  return {
    name: sheet.name,
    ...(sheet.hidden ? { hidden: true } : {}),
    rows: [],
    cells: cellsOf(rows, spilled, names),
    columns: sheet.widths.map((width) => ({ width })),
    rowDefs: new Map(
      [...heightsInFile(sheet)]
        .filter(([row]) => !isOpen || rows.has(row))
        .map(([row, height]) => [row - 1, { height }]),
    ),
    merges: sheet.merges.map(({ top, left, bottom, right }): MergeRange => ({
      startRow: top - 1,
      startCol: left - 1,
      endRow: bottom - 1,
      endCol: right - 1,
    })),
    dataValidations: sheet.validations.map(validation),
    conditionalRules: sheet.conditionals.map(({ area, formula, style }, index) => ({
      type: "expression",
      priority: index + 1,
      formula: toFile(formula.slice(1)),
      style: differentialStyle(style),
      range: areaAddress(area),
    })),
    ...(freeze.rows + freeze.columns > 0 ? { freezePane: freeze } : {}),
    charts: sheet.charts.map(chart),
    ...(sheet.filter ? { autoFilter: { range: areaAddress(sheet.filter) } } : {}),
    // Rows are neither put in nor taken out: one amid formulas would be without its own. Lists grow at their end.
    protection: {
      sheet: true,
      objects: sheet.pictures !== true,
      scenarios: true,
      formatColumns: true,
      formatRows: true,
      sort: true,
      autoFilter: true,
    },
    pageSetup: {
      paperSize: paper,
      orientation: print.landscape ? "landscape" : "portrait",
      // Fitting to pages makes Excel forget the page breaks, so that longer sheets are scaled instead.
      ...(print.pagesHigh > 0
        ? { fitToPage: true, fitToWidth: 1, fitToHeight: print.pagesHigh }
        : { scale: pageScale(sheet) }),
      horizontalCentered: true,
      margins: MARGINS,
      ...(sheet.hidden ? {} : printArea(sheet)),
      ...(print.titleRows ? { printTitlesRow: `$${print.titleRows[0]}:$${print.titleRows[1]}` } : {}),
    },
    headerFooter: {
      // The file's name is the job's; the client's and the crew's pages head themselves.
      oddHeader: print.plain ? "" : `&L&"Arial,Regular"&8&F&R&"Arial,Regular"&8${sheet.name}`,
      oddFooter: `&L&"Arial,Regular"&8${sheet.name}&R&"Arial,Regular"&8Page &P of &N`,
    },
    // The library counts rows from 0 here.
    rowBreaks: print.breaks.map((row) => row - 1),
    view: { showGridLines: false, ...(color === undefined ? {} : { tabColor: { rgb: color } }) },
  };
}

/**
 * What is printed. A table that may grow prints down to the last cell, however far it has grown: without an area, or with whole
 * columns where something stands right of them.
 */
function printArea(sheet: SheetModel): { printArea?: string } {
  const right = lastPrintedColumn(sheet);
  if (sheet.openFrom === undefined || sheet.print.lastRow !== undefined)
    return { printArea: areaAddress({ top: 1, left: 1, bottom: lastPrintedRow(sheet), right }, true) };
  return right < sheet.widths.length ? { printArea: `$A:$${columnLetters(right)}` } : {};
}

function cellsOf(
  rows: ReadonlyMap<number, ReadonlyMap<number, CellModel>>,
  spilled: ReadonlyMap<string, CellValue>,
  names: readonly NameModel[],
): Map<string, Partial<Cell>> {
  const cells = new Map<string, Partial<Cell>>();
  for (const row of [...rows.keys()].sort((a, b) => a - b)) {
    for (const [column, cell] of [...(rows.get(row) ?? [])].sort(([a], [b]) => a - b)) {
      const value = spilled.get(`${row},${column}`);
      cells.set(`${row - 1},${column - 1}`, {
        ...(value === undefined ? content(cell, row, column) : { value }),
        style: writerStyle(cell.style),
        ...(cell.link
          ? {
              hyperlink: {
                target: "",
                location: locationOf(cell.link, names),
                ...(typeof cell.value === "string" ? { display: cell.value } : {}),
              },
            }
          : {}),
      });
    }
  }
  return cells;
}

/** What spilling formulas leave in other cells than their own. */
function spilledValues(sheet: SheetModel): Map<string, CellValue> {
  const values = new Map<string, CellValue>();
  for (const [row, cells] of sheet.rows) {
    for (const [column, { result }] of cells) {
      if (!Array.isArray(result)) continue;
      result.forEach((line, down) =>
        line.forEach((value, across) => {
          if (down + across > 0) values.set(`${row + down},${column + across}`, value);
        }),
      );
    }
  }
  return values;
}

function content(cell: CellModel, row: number, column: number): Partial<Cell> {
  if (cell.formula === undefined) return { value: cell.value ?? null };
  const { result } = cell;
  const table = Array.isArray(result) ? result : undefined;
  const first = table ? table[0]?.[0] : (result as CellValue | undefined);
  const dynamic = cell.spill !== undefined || isDynamic(cell.formula);
  const area = {
    top: row,
    left: column,
    bottom: row + Math.max(1, table?.length ?? 1) - 1,
    right: column + Math.max(1, table?.[0]?.length ?? 1) - 1,
  };
  return {
    formula: toFile(cell.formula.slice(1)),
    ...(first === undefined ? {} : { formulaResult: first }),
    ...(dynamic ? { formulaType: "array" as const, formulaRef: areaAddress(area), formulaDynamic: true } : {}),
  };
}

function locationOf(link: string, names: readonly NameModel[]): string {
  const named = names.find(({ name }) => name === link);
  return named ? `${named.sheet}!${areaAddress(named.area)}` : link;
}

function validation({ area, kind, min, max, choices, title, message, lenient }: Validation): DataValidation {
  const told = { inputTitle: title, inputMessage: message, errorTitle: title, errorMessage: message };
  const common = {
    range: areaAddress(area),
    allowBlank: true,
    showInputMessage: true,
    showErrorMessage: lenient !== "silent",
    ...(lenient === undefined ? {} : { errorStyle: "warning" as const }),
    ...told,
  };
  if (kind === "list") {
    return typeof choices === "string"
      ? { ...common, type: "list", formula1: toFile(choices.slice(1)) }
      : { ...common, type: "list", values: [...(choices ?? [])] };
  }
  if (kind === "text")
    return { ...common, type: "textLength", operator: "lessThanOrEqual", formula1: String(max ?? 200) };
  return { ...common, type: kind, operator: "between", formula1: String(min), formula2: String(max) };
}

function chart({ title, description, xTitle, yTitle, series, area }: ChartModel): SheetChart {
  const axis = {
    axisTitleFontSize: 9,
    axisTitleBold: false,
    axisTitleFontFamily: "Arial",
    labelFontSize: 8,
    labelFontFamily: "Arial",
    minorTickMark: "none" as const,
  };
  return {
    type: "scatter",
    scatterStyle: "lineMarker",
    title,
    titleFontSize: 11,
    titleBold: true,
    titleFontFamily: "Arial",
    altText: description,
    frameTitle: title,
    dispBlanksAs: "gap",
    legend: "bottom",
    legendFontSize: 9,
    legendFontFamily: "Arial",
    axes: {
      x: { ...axis, title: xTitle, gridlines: { major: true } },
      y: { ...axis, title: yTitle, gridlines: { major: true } },
    },
    series: series.map(({ title: name, x, y, color, dashed, markers, line }) => ({
      name,
      categories: x,
      values: y,
      color,
      stroke: line === false ? { width: 0 } : { width: 1.75, dash: dashed ? ("dash" as const) : ("solid" as const) },
      marker: markers ? { symbol: "diamond" as const, size: 8, fill: color, line: color } : { symbol: "none" as const },
    })),
    anchor: { from: { row: area.top - 1, col: area.left - 1 }, to: { row: area.bottom, col: area.right } },
  };
}
