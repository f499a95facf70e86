import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { issue } from "../../src/cli/issue";
import { typedFile } from "../../src/company/typedFile";
import { packOf } from "../../src/papers";
import { PaperCells } from "../../src/papers/cells";
import { clientPack } from "../../src/papers/client";
import { PAPER_NAMES } from "../../src/workbook/issued";
import { openWorkbook, type Recalculated } from "../../src/workbook/recalculate";
import { answerCell } from "../../src/workbook/yoursName";

const folder = mkdtempSync(path.join(tmpdir(), "issue-"));
const file = path.join(folder, "job.xlsx");
afterAll(() => rmSync(folder, { recursive: true }));

/** Types into the job's file by the names of cells. */
async function type(values: Readonly<Record<string, number>>): Promise<void> {
  const bytes = readFileSync(file);
  const opened = await openWorkbook(bytes);
  const typed = Object.entries(values).map(([name, value]): [string, number] => [
    answerCell(name, opened.names) ?? "",
    value,
  ]);
  writeFileSync(file, typedFile(bytes, opened, new Map(typed)));
}

const now = async (): Promise<Recalculated> => (await openWorkbook(readFileSync(file))).recalculate();
const value = (workbook: Recalculated, name: string): unknown => workbook.named(name)?.[0]?.[0];

describe("issuing the demo's quote", () => {
  let signed: string;
  beforeAll(async () => {
    writeFileSync(file, readFileSync("templates/rillwright-us-demo.xlsx"));
    await expect(issue([file, "--day", "2026-05-18"])).rejects.toThrow("made-up prices");
    await type({ PricesConfirmed: 46160, FactsConfirmed: 46160 });
    signed = JSON.stringify(packOf("client", await openWorkbook(readFileSync(file)), { today: 46160 }).content);
    expect(await issue([file, "--day", "2026-05-18"])).toContain("Revision 1 is issued");
  }, 120_000);

  it("stands as issued until something changes, then says what and by how much", async () => {
    const before = await now();
    expect(value(before, "QuoteIssue")).toBe("Revision 1, as issued");
    await type({ FallTyped: 3 });
    const after = await now();
    // The demo's price before and after, to the cent, and its fall.
    const money = (workbook: Recalculated): string =>
      Number(value(workbook, "PriceTotal")).toLocaleString("en-US", { minimumFractionDigits: 2 });
    expect(value(after, "QuoteIssue")).toContain(`Price with tax ${money(before)} to ${money(after)}`);
    expect(value(after, "QuoteIssue")).toMatch(/^Changed since revision 1: .*Fall 2\.75 to 3\.00/);
    expect(await issue([file, "--list"])).toMatch(/Revision 1, 2026-05-18\nChanged since:[^]*Fall 2\.75 to 3 ft/);
  });

  it("prints the earlier revision as the client holds it, its drawing with it", async () => {
    const again = packOf("client", await openWorkbook(readFileSync(file)), { today: 46170, revision: 1 });
    expect(
      JSON.stringify(again.content).replace('{"text":"Revision 1, issued May 18, 2026","margin":[0,0,0,4]},', ""),
    ).toBe(signed);
  });

  it("keeps every name that the client's paper reads", async () => {
    const workbook = await now();
    const read = new Set<string>();
    clientPack(
      new PaperCells({
        ...workbook,
        named: (name) => {
          read.add(name);
          return workbook.named(name);
        },
      }),
    );
    read.delete("QuoteIssue");
    expect([...read].filter((name) => !PAPER_NAMES.includes(name))).toEqual([]);
  });
});
