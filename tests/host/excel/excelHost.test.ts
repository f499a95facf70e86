import { beforeEach, describe, expect, it } from "vitest";
import type { Host } from "../../../src/host/port";
import type { FakeWorkbook } from "../fakeWorkbook";
import { openBook } from "./book";

let book: FakeWorkbook;
let host: Host;

beforeEach(() => {
  ({ book, host } = openBook());
});

describe("settings and events", () => {
  it("keeps settings with the workbook", async () => {
    expect(await host.setting("view")).toBeUndefined();
    await host.keepSetting("view", "2");
    expect(await host.setting("view")).toBe("2");
  });

  it("tells of changes until it is stopped", async () => {
    let told = 0;
    const stop = host.onChange(() => (told += 1));
    await host.write([{ place: "Wanted", values: [[1], [2]] }]);
    await expect.poll(() => told).toBe(1);
    stop();
    await new Promise((resolve) => setTimeout(resolve, 20));
    await host.write([{ place: "Wanted", values: [[3], [4]] }]);
    await new Promise((resolve) => setTimeout(resolve, 250));
    expect(told).toBe(1);
  });

  it("tells once of a calculation that runs through several sheets", async () => {
    let told = 0;
    host.onChange(() => (told += 1));
    await expect.poll(() => book.calculationListeners.size).toBe(1);
    for (let sheet = 0; sheet < 16; sheet++) {
      for (const tell of book.calculationListeners) await tell();
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(told).toBe(1);
  });

  it("waits until a cell is no longer edited, and then does what was asked", async () => {
    let leave = (): void => undefined;
    book.editing = new Promise((resolve) => (leave = resolve));
    let written = false;
    const writing = host.write([{ place: "Wanted", values: [[5], [6]] }]).then(() => (written = true));
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect(written).toBe(false);
    leave();
    await writing;
    expect(book.cell("Pump!B3")?.value).toBe(5);
  });

  it("notices that Excel calculates only when told", async () => {
    expect(await host.calculatesByItself()).toBe(true);
    book.calculationMode = "Manual";
    expect(await host.calculatesByItself()).toBe(false);
  });

  it("writes many cells in pieces and says how far it is", async () => {
    const before = book.syncs;
    const changes = Array.from({ length: 1000 }, (_, index) => ({ place: `Own!A${index + 1}`, values: [[index]] }));
    const done: number[] = [];
    await host.write(changes, (count) => done.push(count));
    expect(done).toEqual([400, 800, 1000]);
    expect(book.cell("Own!A1000")?.value).toBe(999);
    // Locks, and three pieces; the fake ends each batch with one more.
    expect(book.syncs - before).toBe(5);
  });

  it("stops watching a workbook that it could not watch without a fault", async () => {
    const faults: unknown[] = [];
    const note = (reason: unknown): number => faults.push(reason);
    process.on("unhandledRejection", note);
    book.refuses = "ApiNotFound";
    host.onChange(() => undefined)();
    await new Promise((resolve) => setTimeout(resolve, 20));
    process.off("unhandledRejection", note);
    expect(faults).toEqual([]);
  });

  it("recalculates everything", async () => {
    await host.recalculate();
    expect(book.calculations).toBe(1);
  });
});
