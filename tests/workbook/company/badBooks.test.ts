import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { saveWorkbook } from "../../../src/bench/saving/saveWorkbook";
import { shippedBook } from "../../../src/book/shipped";
import { buildCompanyBook } from "../../../src/workbook/company/build";
import { readBook } from "../../../src/workbook/company/readBook";
import { TABLES } from "../../../src/workbook/company/tables";
import { recalculate } from "../../../src/workbook/recalculate";
import { parseArea } from "../../../src/xlsx/address";
import { badFiles } from "../../badFiles";
import { smallTemplate } from "../../host/smallTemplate";

let good: Uint8Array;
let top: number;
beforeAll(async () => {
  good = await buildCompanyBook("US", shippedBook("US"));
  top = parseArea((await recalculate(good)).names.get("ProductTable") ?? "")?.top ?? NaN;
});

const columns = TABLES.products.columns("US").map(({ key }) => key);

/** The book with cells of Products typed over: row of the table from 1, column, what is typed. */
function typed(...cells: readonly (readonly [row: number, key: string, content: string | number])[]): Uint8Array {
  const edits = cells.map(([row, key, content]) => ({
    sheet: "Products",
    row: top + row - 1,
    column: columns.indexOf(key),
    content,
  }));
  return saveWorkbook(good, { edits, results: [], pictures: [] });
}

const sentences = async (bytes: Uint8Array): Promise<string[]> =>
  (await readBook("Book.xlsx", bytes)).problems.map(({ sentence }) => sentence);

describe("a bad book", () => {
  it.each(badFiles.map(({ what, bytes, asWorkbook }) => [what, bytes, asWorkbook] as const))(
    "is refused: %s",
    async (_, bytes, words) => {
      await expect(async () => readBook("Book.xlsx", await bytes())).rejects.toThrow(words);
    },
  );

  it("is refused where it is a job, of the other system, short of a sheet, or too long", async () => {
    await expect(readBook("Job.xlsx", await smallTemplate())).rejects.toThrow("Job.xlsx is a job, not a company book");
    await expect(readBook("Book.xlsx", good, "SI")).rejects.toThrow(
      "Book.xlsx is in US units, and the job in metric units; prices for a foot say nothing of a meter",
    );
    const parts = unzipSync(good);
    const list = strFromU8(parts["xl/workbook.xml"] ?? new Uint8Array());
    const deleted = list.replace(/>Machines!\$A\$\d+:\$I\$\d+</, ">#REF!<");
    expect(deleted).not.toBe(list);
    await expect(readBook("Book.xlsx", zipSync({ ...parts, "xl/workbook.xml": strToU8(deleted) }))).rejects.toThrow(
      "Book.xlsx has no sheet Machines",
    );
    await expect(readBook("Book.xlsx", typed([50_000, "kind", "pipe"]))).rejects.toThrow(
      "Book.xlsx has more than 20,000 rows on Products; nothing was read",
    );
  });

  it("names the cell and what would be right", async () => {
    const said = await sentences(
      typed([1, "price", -3], [2, "unit", "furlong"], [3, "kind", "hose"], [4, "price", "ask"], [5, "day", "spring"]),
    );
    const cell = (row: number, letter: string): string => `Products!${letter}${top + row}`;
    expect(said).toEqual([
      `${cell(1, "L")} holds -3: price must be 0 or more.`,
      `${cell(2, "K")} holds "furlong": unit must be a unit of sale: each, load, roll, bag, pallet, ft, ft², yd², ft³, yd³, gal, lb, ton.`,
      `${cell(3, "A")} holds "hose": kind must be pipe, 90 elbow, 90 sweep, 45 elbow, tee, ball valve, check valve, union or another of the list.`,
      `${cell(4, "L")} holds "ask": price must be a number, 0 or more.`,
      `${cell(5, "T")} holds "spring": price of must be a date.`,
    ]);
  });

  it("tells of products that stand twice, by code or by size", async () => {
    // Row 2 is the 2 in pipe; typed as 3 in under a code of its own it is a second 3 in pipe.
    const said = await sentences(typed([1, "code", "pipe 6 sch 40 pvc"], [2, "size", 3]));
    expect(said).toHaveLength(2);
    expect(said[0]).toMatch(
      /^Products!J\d+ holds the code PIPE 6 Sch 40 PVC a second time; it stands in row \d+ already/,
    );
    expect(said[1]).toMatch(/^Products!A\d+ is a second Sch 40 PVC pipe of 3 in: PIPE 2 Sch 40 PVC stands in row \d+/);
  });

  it("asks for the size of a pipe, in place of pricing every size", async () => {
    const [said] = await sentences(typed([1, "size", ""], [1, "type", ""]));
    expect(said).toMatch(/^Products!C\d+ is blank: a pipe is priced by its size\.$/);
  });

  it("keeps every other row, and loses the mark where a price was typed", async () => {
    const { book } = await readBook("Book.xlsx", typed([1, "price", -3], [2, "price", 2.71]));
    expect(book.products).toHaveLength(shippedBook("US").products.length);
    expect(book.products.slice(0, 3).map(({ price, invented }) => [price, invented])).toEqual([
      [undefined, false],
      [2.71, false],
      [3.35, true],
    ]);
  });
});
