import { beforeEach, describe, expect, it } from "vitest";
import { HostRefusal, type Host } from "../../../src/host/port";
import type { FakeWorkbook } from "../fakeWorkbook";
import { openBook, task } from "./book";

let book: FakeWorkbook;
let host: Host;

beforeEach(() => {
  ({ book, host } = openBook());
});

describe("a host that refuses", () => {
  it.each([
    ["InvalidOperationInCellEditMode", "press Enter or Esc"],
    ["InvalidSelection", "Select one block of cells"],
    ["AccessDenied", "protected or read-only"],
    ["ApiNotFound", "update Excel"],
    ["ApiNotAvailable", "update Excel"],
    ["InactiveWorkbook", "click into this one"],
    ["RequestPayloadSizeLimitExceeded", "fewer rows"],
    ["ItemNotFound", "not in this workbook"],
  ])("is explained: %s", async (code, cure) => {
    book.refuses = code;
    const asked = [
      () => host.selected(),
      () => host.insertFormula("=RILL.FTIN(2)"),
      () => host.write([{ place: "Wanted", values: [[1], [2]] }]),
      () => host.select("StaticLift"),
      () => host.read(["StaticLift"]),
      () => host.placePicture(new Uint8Array([1]), "Plan"),
      () => host.repairFormulas(task),
      () => host.recalculate(),
    ];
    for (const ask of asked) {
      const refusal = await ask().then(
        () => undefined,
        (error: unknown) => error,
      );
      expect(refusal).toBeInstanceOf(HostRefusal);
      expect((refusal as HostRefusal).message).toMatch(/^Could not .*\. /);
      expect((refusal as HostRefusal).message).toContain(cure);
    }
    book.refuses = undefined;
    expect(book.cell("Pump!B3")?.value).toBe(7);
    expect(book.cell("Own!A1")).toBeUndefined();
  });

  it("finds names again on a sheet that the user renamed", async () => {
    // Excel keeps names on their cells when a sheet is renamed.
    Object.assign(book.requireSheet("Pump"), { name: "Pump of the job" });
    book.names.set("StaticLift", "'Pump of the job'!$B$2");
    expect(await host.read(["StaticLift"])).toEqual([[[4.75]]]);
    await host.select("StaticLift");
    expect(book.selection.sheet).toBe("Pump of the job");
  });
});
