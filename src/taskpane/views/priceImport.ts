import { Problem } from "../../calc/problem";
import type { PriceListFile, ReadAs } from "../../csv/readPriceList";
import { resolvePlace } from "../../host/places";
import { RATE_TABLE } from "../../workbook/rateColumns";
import { HostRefusal, type Change } from "../../host/port";
import { changeWords, newWords, previewWords, takenWords } from "../priceWords";
import { comparePriceRows, priceWrites, readPriceRows, type PriceChanges, type PriceRow } from "../prices";
import { button, make } from "../ui/elements";
import type { Desk } from "../ui/desk";
import { MarkedList, told } from "../ui/markedList";
import { priceReading } from "./priceReading";

/** Takes a supplier's price list in: what would change is shown, and nothing is written before the user says so. */
export function priceImport(desk: Desk): HTMLElement {
  const preview = make("div", { class: "preview-place" });
  const input = make("input", { type: "file", id: "price-file", accept: ".csv,.txt,text/csv" });

  async function show(name: string, bytes: Uint8Array, as: ReadAs = {}): Promise<string> {
    const again = (changed: ReadAs): void => desk.attempt(() => show(name, bytes, changed));
    const found = await desk.long(`Reading ${name}`, async (task) => {
      const [grid] = await desk.host.read([RATE_TABLE]);
      if (!grid) throw new HostRefusal("This workbook has no price list; start a job to get one.");
      task.progress(1, 3);
      await task.pause();
      const { readPriceList, priceListShape } = await import("../../csv/readPriceList");
      let list: PriceListFile;
      try {
        list = readPriceList(bytes, as);
      } catch (error) {
        if (!(error instanceof Problem)) throw error;
        // A table whose headings nobody knows is shown all the same: the person says which columns they are.
        return { shape: priceListShape(bytes, as), problem: error.message };
      }
      task.progress(2, 3);
      await task.pause();
      const held = readPriceRows(grid);
      const compared = comparePriceRows(held, list.items, list.said);
      await task.pause();
      return { list, held, compared };
    });
    if (found.shape) {
      const { shape, problem } = found;
      preview.replaceChildren(
        priceReading(shape, as, again, true),
        make("p", { class: "bad" }, `${name}: ${problem}.`),
      );
      return `${name} cannot be read as it is mapped; nothing is changed.`;
    }
    const { list: read, held: rows, compared: changes } = found;
    const close = (): void => {
      preview.replaceChildren();
      input.focus();
    };
    const reading = priceReading(read, as, again);
    preview.replaceChildren(reading, ...describe(desk, read, rows, changes, close));
    return `${name} was read; nothing is changed yet.`;
  }

  input.addEventListener("change", () => {
    const file = input.files?.[0];
    input.value = "";
    if (file) desk.attempt(async () => show(file.name, new Uint8Array(await file.arrayBuffer())));
  });
  return make("div", {}, make("label", { for: "price-file" }, "Read a price list (CSV)"), input, preview);
}

function describe(
  desk: Desk,
  read: PriceListFile,
  rows: readonly PriceRow[],
  changes: PriceChanges,
  close: () => void,
): HTMLElement[] {
  const { changed } = changes.preview;
  const marked = new MarkedList();
  const take = async (): Promise<string> => {
    const area = resolvePlace(RATE_TABLE, await desk.host.names());
    if (!area) throw new HostRefusal("The price list moved; read the file again.");
    const [free, guarded] = await desk.long("Writing the prices", async (task) => {
      const [now] = await desk.host.read([RATE_TABLE]);
      // What was shown holds for these rows only: sorted or edited ones would take another item's price.
      if (!now || JSON.stringify(readPriceRows(now)) !== JSON.stringify(rows)) {
        close();
        throw new HostRefusal(
          "The price list changed since the file was read; nothing was written. Read the file again.",
        );
      }
      const writes = priceWrites(rows, changes, area, (code) => marked.accepts(code), now);
      const allowed = await desk.host.canWrite(writes.map(({ place }) => place));
      task.progress(1, 2);
      // The last moment to stop: the writing itself is one step, which undo takes back where the host can.
      await task.pause();
      const taken = writes.filter((_, index) => allowed[index]);
      await desk.host.write(taken, task.progress);
      return [taken, writes.filter((_, index) => !allowed[index])] as const;
    });
    close();
    return takenWords(cellsOf(free), cellsOf(guarded));
  };
  return [
    make("h3", {}, "What the file would change"),
    ...previewWords(changes, read).map((sentence) => make("p", {}, sentence)),
    ...marked.rows(
      "Changed",
      changed.map((entry) => ({ name: entry.code, words: changeWords(entry.changes) })),
    ),
    ...marked.rows(
      "New",
      changes.fitting.map((item) => ({ name: item.code, words: newWords(item) })),
    ),
    ...told(
      "Rows left out",
      read.refused.map(({ row, problem }) => `Row ${row} ${problem}`),
    ),
    make(
      "div",
      { class: "actions" },
      button("Apply the marked prices", () => desk.attempt(take), {
        class: "main",
        disabled: changed.length + changes.fitting.length === 0,
      }),
      button("Leave the list as it is", close),
    ),
  ];
}

function cellsOf(writes: readonly Change[]): number {
  return writes.reduce((sum, { values }) => sum + values.length * (values[0]?.length ?? 0), 0);
}
