import { beforeEach, describe, expect, it } from "vitest";
import type { Host } from "../../../src/host/port";
import type { FakeWorkbook } from "../fakeWorkbook";
import { openBook } from "./book";

let book: FakeWorkbook;
let host: Host;

beforeEach(() => {
  ({ book, host } = openBook());
});

describe("the selection", () => {
  it("is read with its value and formula", async () => {
    book.select("Pump!B2:C3");
    expect(await host.selected()).toEqual({ sheet: "Pump", address: "Pump!B2:C3", value: 4.75, formula: "=Fall+2" });
  });

  it("is read where no formula stands, and where nothing does", async () => {
    book.select("Pump!B3");
    expect(await host.selected()).toMatchObject({ address: "Pump!B3", value: 7, formula: "" });
    book.select("Own!C9");
    expect(await host.selected()).toEqual({ sheet: "Own", address: "Own!C9", value: "", formula: "" });
  });

  it("stays where it is when there is no such place", async () => {
    await expect(host.select("Missing")).rejects.toThrow(/^"Missing" is not in this workbook\.$/);
  });

  it("moves to a name", async () => {
    await host.select("Wanted");
    expect(book.selection).toMatchObject({ sheet: "Pump", top: 2, bottom: 3 });
  });

  it("takes a formula, but not into a locked cell", async () => {
    book.select("Own!D4");
    expect(await host.insertFormula("=RILL.FTIN(2)")).toBe("Own!D4");
    expect(book.cell("Own!D4")?.formula).toBe("=RILL.FTIN(2)");
    book.select("Pump!B2");
    await expect(host.insertFormula("=1")).rejects.toThrow(
      "Pump!B2 is protected; select an unlocked cell or a sheet of your own.",
    );
    // On a protected sheet too, into a cell that is not locked.
    book.select("Pump!B3");
    expect(await host.insertFormula("=RILL.FTIN(2)")).toBe("Pump!B3");
  });
});
