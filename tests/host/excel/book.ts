import type { Host } from "../../../src/host/port";
import { createExcelHost } from "../../../src/host/excel/excelHost";
import { installFakeExcel } from "../fakeExcel";
import { FakeWorkbook } from "../fakeWorkbook";

/** A long task that nobody stops. */
export const task = {
  signal: new AbortController().signal,
  progress: () => undefined,
  pause: () => Promise.resolve(),
};

/** A fake Excel with a small workbook: a protected sheet with a result and two inputs, one without protection, and names. */
export function openBook(): { book: FakeWorkbook; host: Host } {
  const book = new FakeWorkbook();
  installFakeExcel(book);
  book.addSheet(
    "Pump",
    { B2: { value: 4.75, formula: "=Fall+2" }, B3: { value: 7, locked: false }, B4: { value: 8, locked: false } },
    true,
  );
  book.addSheet("Own");
  book.names.set("StaticLift", "Pump!$B$2");
  book.names.set("Wanted", "Pump!$B$3:$B$4");
  book.names.set("Rate", "0.0825");
  return { book, host: createExcelHost() };
}
