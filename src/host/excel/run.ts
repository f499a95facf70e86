import { HostRefusal } from "../port";

/** What Excel's error codes mean to the person at the pane. */
const SENTENCES: Readonly<Record<string, string>> = {
  AccessDenied: "Excel refused: the sheet is protected or read-only.",
  InvalidSelection: "Select one block of cells first; several separate blocks cannot be used.",
  ItemNotFound: "A sheet or name of the job is not in this workbook.",
  ApiNotFound: "This version of Excel cannot do that; update Excel or use Excel on the web.",
  ApiNotAvailable: "This version of Excel cannot do that; update Excel or use Excel on the web.",
  UnsupportedFeature: "This version of Excel cannot do that with this workbook; download the file and open it instead.",
  InactiveWorkbook: "Another workbook is in front; click into this one, then try again.",
  RequestPayloadSizeLimitExceeded: "It is too much for Excel at once; take fewer rows at a time.",
  InvalidOperationInCellEditMode: "A cell is being edited; press Enter or Esc in the sheet, then try again.",
};

/** Runs a batch against Excel; failures come out as a sentence that says what was being done. */
export async function inExcel<T>(doing: string, batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    // Excel itself waits with it until the person has left the cell that is being edited.
    return await Excel.run({ delayForCellEdit: true }, batch);
  } catch (error) {
    if (error instanceof HostRefusal) throw error;
    const { code, message } = error as { code?: string; message?: string };
    const known = code === undefined ? undefined : SENTENCES[code];
    throw new HostRefusal(
      known ? `Could not ${doing}. ${known}` : `Could not ${doing}: ${message ?? "Excel gave no reason."}`,
    );
  }
}
