import { base64 } from "../base64";
import { inExcel } from "./run";

/** Where pictures go when the protection of the sheet in view takes none. */
const PICTURE_SHEET = "Drawings";

/** Points between one picture and the next on that sheet. */
const GAP = 12;

/** Places a PNG at the active cell, or on a sheet of its own when the sheet in view takes none. */
export function placePictureInExcel(png: Uint8Array, title: string): Promise<string> {
  return inExcel("place the picture", async (context) => {
    const cell = context.workbook.getActiveCell();
    const own = context.workbook.worksheets.getItemOrNullObject(PICTURE_SHEET);
    const inView = context.workbook.worksheets.getActiveWorksheet();
    const guard = context.workbook.worksheets.getActiveWorksheet().protection;
    cell.load({ left: true, top: true });
    inView.load({ name: true });
    guard.load({ protected: true, options: true });
    own.load({ name: true });
    await context.sync();
    const elsewhere = guard.protected && guard.options.allowEditObjects !== true;
    const sheet = !elsewhere ? inView : own.isNullObject ? context.workbook.worksheets.add(PICTURE_SHEET) : own;
    const top = elsewhere && !own.isNullObject ? await belowAll(context, own) : 0;
    const picture = sheet.shapes.addImage(base64(png));
    picture.name = title;
    picture.altTextDescription = title;
    picture.left = elsewhere ? 0 : cell.left;
    picture.top = elsewhere ? top : cell.top;
    await context.sync();
    return elsewhere
      ? `${title} is on the sheet ${PICTURE_SHEET}, because ${inView.name} is protected.`
      : `${title} is on the sheet ${inView.name}, at the selected cell.`;
  });
}

/** Where the next picture hides none of those that stand on the sheet. */
async function belowAll(context: Excel.RequestContext, { shapes }: Excel.Worksheet): Promise<number> {
  shapes.load({ top: true, height: true });
  await context.sync();
  return Math.max(0, ...shapes.items.map(({ top, height }) => top + height + GAP));
}
