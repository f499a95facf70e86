import { beforeEach, describe, expect, it } from "vitest";
import type { Host } from "../../../src/host/port";
import type { FakeWorkbook } from "../fakeWorkbook";
import { openBook, task } from "./book";

let book: FakeWorkbook;
let host: Host;

beforeEach(() => {
  ({ book, host } = openBook());
});

describe("repair", () => {
  it("enters unbound formulas again, protected sheets included, and leaves all others", async () => {
    book.addSheet(
      "Old",
      { A1: { value: "#NAME?", formula: "=@RILL.TDH(1,2)" }, A2: { value: 3, formula: "=_xldudf_RILL_FTIN(2)" } },
      true,
    );
    const allows = { allowFormatColumns: true };
    Object.assign(book.requireSheet("Old"), { allows });
    const note = "A file writes _xldudf_RILL_FTIN";
    book.addSheet("Sound", { A1: { value: 3, formula: "=RILL.TDH(1,2)" }, A2: { value: note } });
    expect(await host.repairFormulas(task)).toEqual({ found: 2, repaired: 2, left: [], stopped: false });
    expect(book.cell("Old!A1")?.formula).toBe("=RILL.TDH(1,2)");
    expect(book.cell("Old!A2")?.formula).toBe("=RILL.FTIN(2)");
    expect(book.sheet("Old")).toMatchObject({ protected: true, allows });
    expect(book.cell("Sound!A2")?.value).toBe(note);
  });

  it("says how far it is, sheet by sheet", async () => {
    const told: number[][] = [];
    await host.repairFormulas({ ...task, progress: (done, total) => told.push([done, total]) });
    expect(told).toEqual([
      [1, 2],
      [2, 2],
    ]);
  });

  it("names the cells of sheets that a password keeps", async () => {
    const cells = { B3: { value: 1 }, C7: { value: "#NAME?", formula: "=RILL.TDH(1,2)" } };
    book.addSheet("Kept", cells, true).password = true;
    expect(await host.repairFormulas(task)).toEqual({ found: 1, repaired: 0, left: ["Kept!C7"], stopped: false });
  });

  it("stops when it is cancelled", async () => {
    const stopped = new AbortController();
    stopped.abort();
    book.addSheet("Old", { A1: { value: "#NAME?", formula: "=RILL.TDH(1,2)" } });
    expect(await host.repairFormulas({ ...task, signal: stopped.signal })).toEqual({
      found: 0,
      repaired: 0,
      left: [],
      stopped: true,
    });
  });
});
