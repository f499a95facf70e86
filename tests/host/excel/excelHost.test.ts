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
    expect(told).toBe(1);
    stop();
    await new Promise((resolve) => setTimeout(resolve, 20));
    await host.write([{ place: "Wanted", values: [[3], [4]] }]);
    expect(told).toBe(1);
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
