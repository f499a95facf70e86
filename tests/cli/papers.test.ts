import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { papers } from "../../src/cli/papers";

const JOB = "templates/rillwright-us-demo.xlsx";

describe("npm run papers", () => {
  it("writes a PDF and says so", async () => {
    const out = path.join(mkdtempSync(path.join(tmpdir(), "papers-")), "order.pdf");
    const said = await papers([JOB, "--pack", "supplier", "--supplier", "kettle", "--out", out], new Date(2026, 4, 18));
    expect(said).toMatch(/order\.pdf: the supplier pack, \d+ kB/);
    expect(readFileSync(out).subarray(0, 5).toString("latin1")).toBe("%PDF-");
  }, 30_000);

  it.each([
    [[], "Usage"],
    [[JOB, "--out", "x.pdf"], "--pack must be client, crew, supplier, office"],
    [[JOB, "--pack", "all", "--out", "x.pdf"], 'got "all"'],
    [[JOB, "--pack", "crew"], "Usage"],
    [[JOB, "--pack", "crew", "--out", "x.pdf", "--supplier", "A"], "--supplier is for the supplier pack"],
    [[JOB, "--pack", "crew", "--out", "x.pdf", "--paper", "A4"], "Unknown option"],
    [["none.xlsx", "--pack", "crew", "--out", "x.pdf"], "There is no file none.xlsx"],
    [["package.json", "--pack", "crew", "--out", "x.pdf"], "package.json"],
  ])("refuses %j in a sentence", async (args, said) => {
    await expect(papers(args)).rejects.toThrow(said);
  });
});
