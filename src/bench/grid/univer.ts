import {
  DataValidationStatus,
  type Workbook,
  type Worksheet,
  IUniverInstanceService,
  LocaleType,
  LogLevel,
  mergeLocales,
  Univer,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import formatLocale from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { IEditorBridgeService, UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreLocale from "@univerjs/preset-sheets-core/locales/en-US";
import {
  DataValidatorRegistryService,
  SheetsDataValidationValidatorService,
  UniverSheetsDataValidationPreset,
} from "@univerjs/preset-sheets-data-validation";
import validationLocale from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsDrawingPreset } from "@univerjs/preset-sheets-drawing";
import drawingLocale from "@univerjs/preset-sheets-drawing/locales/en-US";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-drawing/lib/index.css";
import { defaultTheme } from "@univerjs/themes";
import { keepTextsOfMoved } from "./movedFormula";
import { rillDescriptions } from "./rillFunctions";
import { runOnWithIndentation } from "./runOn";

/** The bench's own colour in place of the spreadsheet's, from the palest to the darkest. */
const ACCENT = {
  50: "#f0f7f8",
  100: "#dcedef",
  200: "#b9dbe0",
  300: "#8fc3ca",
  400: "#3f95a1",
  500: "#1d7885",
  600: "#0b5f6b",
  700: "#094f59",
  800: "#073f47",
  900: "#052f35",
};

/** As the library numbers what it calculates when a workbook is opened. */
const NO_CALCULATION = 2;

/** The embedded spreadsheet, bare: our functions in its engine, its own toolbar and menus off. */
export function startUniver(container: HTMLElement): { univer: Univer; api: FUniver } {
  runOnWithIndentation();
  keepTextsOfMoved();
  const univer = new Univer({
    theme: { ...defaultTheme, primary: ACCENT },
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(coreLocale, validationLocale, formatLocale, drawingLocale) },
    logLevel: LogLevel.ERROR,
  });
  const presets = [
    UniverSheetsCorePreset({
      container,
      header: true,
      toolbar: false,
      contextMenu: false,
      disableAutoFocus: true,
      footer: { statisticBar: true, menus: false, zoomSlider: false, addSheetButtonConfig: { show: false } },
      sheets: { disableForceStringAlert: true, disableForceStringMark: true },
      formula: { description: rillDescriptions(), initialFormulaComputing: NO_CALCULATION },
    }),
    UniverSheetsDrawingPreset(),
    // A search field in the list would take the keys of whoever types into the cell.
    UniverSheetsDataValidationPreset({ showEditOnDropdown: false, showSearchOnDropdown: false }),
    UniverSheetsConditionalFormattingPreset(),
  ];
  for (const { plugins } of presets) {
    for (const plugin of plugins) {
      if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], { ...plugin[1], ...settingsOf(plugin[0]) });
      else univer.registerPlugin(plugin);
    }
  }
  return { univer, api: FUniver.newAPI(univer) };
}

/** The grid's own calculation stays out: only its commands and models are there, which our results go through. */
function settingsOf({ pluginName }: { readonly pluginName?: string }): object {
  return pluginName === "UNIVER_ENGINE_FORMULA_PLUGIN" ? { notExecuteFormula: true } : {};
}

/** Results that arrive while a person types reset the cell's editor, and letters are lost; they can wait for its end. */
export function keepWhatIsTyped(univer: Univer): void {
  const editor = univer.__getInjector().get(IEditorBridgeService);
  const refresh = editor.refreshEditCellState.bind(editor);
  editor.refreshEditCellState = () => {
    if (!editor.isVisible().visible) refresh();
  };
}

/** Cells are checked a while after they are shown, and a check of a sheet that was put away meanwhile would throw. */
export function forgetSheetsPutAway(univer: Univer): void {
  const injector = univer.__getInjector();
  const books = injector.get(IUniverInstanceService);
  const validator = injector.get(SheetsDataValidationValidatorService);
  const stands = (unit: string, sheet: string): boolean =>
    Boolean(books.getUnit<Workbook>(unit)?.getSheetBySheetId(sheet));
  const checkCell = validator.validatorCell.bind(validator);
  validator.validatorCell = (unit, sheet, row, column) =>
    stands(unit, sheet) ? checkCell(unit, sheet, row, column) : Promise.resolve(DataValidationStatus.VALID);
  const checkRanges = validator.validatorRanges.bind(validator);
  validator.validatorRanges = (unit, sheet, ranges) =>
    stands(unit, sheet) ? checkRanges(unit, sheet, ranges) : Promise.resolve([]);
}

/** What a rule says of a blank cell is never shown; most cells with a rule wait for input, and checking them takes a second. */
export function checkFilledCells(univer: Univer): void {
  const validator = univer.__getInjector().get(SheetsDataValidationValidatorService) as unknown as CellValidator;
  const check = validator._validatorByCell.bind(validator);
  validator._validatorByCell = (workbook, worksheet, row, column) => {
    const cell = worksheet.getCellRaw(row, column);
    const blank = !cell || ((cell.v ?? "") === "" && !cell.f && !cell.si && !cell.p);
    return blank && !worksheet.getMergedCell(row, column)
      ? Promise.resolve(DataValidationStatus.VALID)
      : check(workbook, worksheet, row, column);
  };
}

/** The library's check of one cell, which it keeps to itself. */
interface CellValidator {
  _validatorByCell(
    workbook: Workbook,
    worksheet: Worksheet,
    row: number,
    column: number,
  ): Promise<DataValidationStatus>;
}

/** The library reads a day as the cell shows it, month first: 15/03/2026 would be none. A number is a day as it is. */
export function takeDaysAsShown(univer: Univer): void {
  const days = univer.__getInjector().get(DataValidatorRegistryService).getValidatorItem("date");
  if (!days) return;
  const isDay = days.isValidType.bind(days);
  days.isValidType = (cell, formula, rule) =>
    typeof cell.value === "number" ? Promise.resolve(true) : isDay(cell, formula, rule);
}
