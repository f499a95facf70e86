import { beforeEach, describe, expect, it } from "vitest";
import type { Host } from "../../../src/host/port";
import { PICTURE_HEIGHT } from "../fakeExcel";
import type { FakeWorkbook } from "../fakeWorkbook";
import { openBook } from "./book";

let book: FakeWorkbook;
let host: Host;

beforeEach(() => {
  ({ book, host } = openBook());
});

describe("pictures", () => {
  it("places a picture at the cell, or on a sheet of its own beside a protected one", async () => {
    book.select("Own!B3");
    expect(await host.placePicture(new Uint8Array([1]), "Section")).toContain("sheet Own");
    expect(book.sheet("Own")?.pictures).toEqual([{ title: "Section", alt: "Section", left: 64, top: 40 }]);
    book.select("Pump!B2");
    expect(await host.placePicture(new Uint8Array([1]), "Plan")).toContain("Drawings, because Pump is protected");
    expect(book.sheet("Drawings")?.pictures).toEqual([{ title: "Plan", alt: "Plan", left: 0, top: 0 }]);
    // A sheet whose protection takes pictures.
    Object.assign(book.requireSheet("Pump"), { allows: { allowEditObjects: true } });
    expect(await host.placePicture(new Uint8Array([1]), "Photo")).toContain("sheet Pump, at the selected cell");
    Object.assign(book.requireSheet("Pump"), { allows: {} });
    // The next one must not lie on the first.
    await host.placePicture(new Uint8Array([1]), "Cut plan");
    expect(book.sheet("Drawings")?.pictures[1]?.title).toBe("Cut plan");
    expect(book.sheet("Drawings")?.pictures[1]?.top).toBeGreaterThan(PICTURE_HEIGHT);
  });
});
