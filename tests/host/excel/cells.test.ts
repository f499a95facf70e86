import { beforeEach, describe, expect, it } from "vitest";
import type { Host } from "../../../src/host/port";
import type { FakeWorkbook } from "../fakeWorkbook";
import { openBook } from "./book";

let book: FakeWorkbook;
let host: Host;

beforeEach(() => {
  ({ book, host } = openBook());
});

describe("reading", () => {
  it("gives values by name and by address, and nothing for what is not there", async () => {
    expect(await host.read(["StaticLift", "Pump!B3:B4", "Missing", "Gone!A1", "Rate"])).toEqual([
      [[4.75]],
      [[7], [8]],
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("takes two round trips however many places are read", async () => {
    await host.read(Array.from({ length: 40 }, () => "StaticLift"));
    // One for names and sheets, one for values, and the one with which every request ends.
    expect(book.syncs).toBe(3);
  });

  it("takes the names it is asked for, and not the hundreds of a job", async () => {
    for (let number = 0; number < 400; number++) book.names.set(`Other${number}`, "Pump!$B$2");
    expect(await host.read(["staticlift", "Wanted", "Pump!B2"])).toEqual([[[4.75]], [[7], [8]], [[4.75]]]);
    await host.write([{ place: "Wanted", values: [[1], [2]] }]);
    expect(book.namesLoaded).toBe(3);
  });

  it("shows cells as the sheet does, as text", async () => {
    book.addSheet("Sums", { A1: { value: 1234.567 }, A2: { value: "yes" } });
    expect(await host.show(["Sums!A1:A2", "Missing"])).toEqual([[["1,234.57"], ["yes"]], undefined]);
  });

  it("gives formulas, and nothing for a cell that has none", async () => {
    await host.write([{ place: "Wanted", values: [[1.5], ["=A1*2"]] }]);
    expect(await host.formulas(["Wanted", "Missing"])).toEqual([[[""], ["=A1*2"]], undefined]);
  });

  it("gives the names that a person may use, each with its cells", async () => {
    book.names.set("Broken", "#REF!");
    book.names.set("_Own", "Pump!$B$2");
    book.hiddenNames.add("_Own");
    expect(await host.names()).toEqual([
      { name: "StaticLift", address: "Pump!B2", broken: false },
      { name: "Wanted", address: "Pump!B3:B4", broken: false },
      { name: "Rate", address: "", broken: false },
      { name: "Broken", address: "", broken: true },
    ]);
  });
});

describe("writing", () => {
  it("knows what may be written: unlocked cells, and any on a sheet without protection", async () => {
    // Half of the third is locked; the sheet of the fourth guards nothing.
    const places = ["Wanted", "StaticLift", "Pump!B2:B3", "Own!A1", "Missing"];
    expect(await host.canWrite(places)).toEqual([true, false, false, true, false]);
  });

  it("writes values and formulas into unlocked cells", async () => {
    await host.write([{ place: "Wanted", values: [[1.5], ["=A1*2"]] }]);
    expect(book.cell("Pump!B3")?.value).toBe(1.5);
    expect(book.cell("Pump!B4")?.formula).toBe("=A1*2");
  });

  it("changes nothing when one of the cells is locked", async () => {
    const changes = [
      { place: "Wanted", values: [[1], [2]] },
      { place: "StaticLift", values: [[3]] },
    ];
    await expect(host.write(changes)).rejects.toThrow("Pump!B2 holds results and is protected");
    expect(book.cell("Pump!B3")?.value).toBe(7);
  });

  it("refuses a grid of the wrong size and a place that is not there", async () => {
    await expect(host.write([{ place: "Wanted", values: [[1]] }])).rejects.toThrow("do not fit Pump!B3:B4");
    await expect(host.write([{ place: "Nowhere", values: [[1]] }])).rejects.toThrow(
      '"Nowhere" is not in this workbook, so nothing was written.',
    );
  });
});
