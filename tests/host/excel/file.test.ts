import { expect, it } from "vitest";
import { createExcelHost } from "../../../src/host/excel/excelHost";
import { installFakeExcel } from "../fakeExcel";
import { FakeWorkbook } from "../fakeWorkbook";

function bookWith(url: string, size: number): FakeWorkbook {
  const book = new FakeWorkbook();
  book.file = Uint8Array.from({ length: size }, (_, index) => index % 251);
  book.url = url;
  book.pieceSize = 100;
  installFakeExcel(book);
  return book;
}

it("takes the workbook over piece by piece, and lets go of it", async () => {
  const book = bookWith("C:\\Jobs\\Hollow Bank.xlsx", 250);
  const told: string[] = [];
  const { name, bytes } = await createExcelHost().file((done, total) => told.push(`${done}/${total}`));
  expect(name).toBe("Hollow Bank.xlsx");
  expect([...bytes]).toEqual([...book.file]);
  expect(told).toEqual(["1/3", "2/3", "3/3"]);
  expect(book.openFiles).toBe(0);
});

it.each([
  ["https://firm.example/sites/jobs/Hollow%20Bank.xlsx?web=1", "Hollow Bank.xlsx"],
  ["/Users/ann/100%/Hollow Bank.xlsm", "Hollow Bank.xlsx"],
  ["", "Job.xlsx"],
])("names it after the place %s", async (url, name) => {
  bookWith(url, 3);
  expect((await createExcelHost().file()).name).toBe(name);
});

it("says in a sentence that Excel refused", async () => {
  const book = bookWith("", 3);
  book.refuses = "AccessDenied";
  await expect(createExcelHost().file()).rejects.toThrow(/did not hand over the workbook.*Leave the cell/);
});
