import { ICommandService } from "@univerjs/core";
import { IEditorBridgeService, SetCellEditVisibleOperation } from "@univerjs/preset-sheets-core";
import { SheetsDataValidationValidatorService } from "@univerjs/preset-sheets-data-validation";
import { areaName, cellArea } from "../../xlsx/address";
import type { EmbeddedGrid } from "./grid";
import { UNIT } from "./model";

/** The library's number for "by the pointer": the selection stays where it is, where Enter would move it on. */
const BY_POINTER = 1;

type Entered = Pick<EmbeddedGrid, "univer" | "model">;

/** Whether something is being typed into a cell. */
export function isTyping({ univer }: Entered): boolean {
  return univer.__getInjector().get(IEditorBridgeService).isVisible().visible;
}

/**
 * Puts what is being typed into its cell, as a click on another one would; the cell holds it when this returns. Resolves
 * to the cell's address where its rule does not take it.
 */
export async function commitEntry({ univer, model }: Entered): Promise<string | undefined> {
  const injector = univer.__getInjector();
  const editor = injector.get(IEditorBridgeService);
  const at = editor.getEditCellState();
  if (!at || !editor.isVisible().visible) return undefined;
  const { row, column, sheetId } = at;
  const sheet = model.sheetName(sheetId);
  const before = model.content(sheet, row, column);
  injector.get(ICommandService).syncExecuteCommand(SetCellEditVisibleOperation.id, {
    visible: false,
    eventType: BY_POINTER,
    unitId: UNIT,
  });
  const typed = model.content(sheet, row, column);
  await injector.get(SheetsDataValidationValidatorService).validatorCell(UNIT, sheetId, row, column);
  // The library's own check ends in the same turn, and takes back what the rule refuses.
  await new Promise((resolve) => setTimeout(resolve));
  const refused = typed !== before && model.content(sheet, row, column) === before;
  return refused ? areaName(cellArea(sheet, row, column)) : undefined;
}
