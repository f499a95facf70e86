import type { PriceItem } from "../../csv/priceItem";
import { readPriceList, type PriceListFile } from "../../csv/readPriceList";
import { resolvePlace } from "../../host/places";
import { RATE_TABLE } from "../../workbook/rateColumns";
import { comparePriceRows, priceWrites, readPriceRows, type PriceChanges, type PriceRow } from "../prices";
import { button, make } from "../ui/elements";
import type { Desk } from "../ui/desk";

/** Rows of each kind that the preview lists; the rest is counted. */
const SHOWN = 100;

/** Takes a supplier's price list in: what would change is shown, and nothing is written before the user says so. */
export function priceImport(desk: Desk): HTMLElement {
  const preview = make("div", { class: "preview-place" });
  const input = make("input", { type: "file", id: "price-file", accept: ".csv,.txt,text/csv" });

  async function show(file: File): Promise<string> {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const [read, rows, changes] = await desk.long(`Reading ${file.name}`, async (task) => {
      const [grid] = await desk.host.read([RATE_TABLE]);
      if (!grid) throw new Error("This workbook has no price list; start a job to get one.");
      task.progress(1, 3);
      await task.pause();
      const list = readPriceList(bytes);
      task.progress(2, 3);
      await task.pause();
      const held = readPriceRows(grid);
      const compared = comparePriceRows(held, list.items, list.said);
      await task.pause();
      return [list, held, compared] as const;
    });
    preview.replaceChildren(...describe(desk, read, rows, changes, () => preview.replaceChildren()));
    return `${file.name} was read; nothing is changed yet.`;
  }

  input.addEventListener("change", () => {
    const file = input.files?.[0];
    input.value = "";
    if (file) desk.attempt(() => show(file));
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
  const { changed, same, kept } = changes.preview;
  const boxes = new Map<string, HTMLInputElement>();
  const line = (code: string, words: string): HTMLElement => {
    const id = `take-${code}`;
    const box = make("input", { type: "checkbox", id, checked: true });
    boxes.set(code, box);
    return make("li", { class: "choice" }, box, make("label", { for: id }, make("strong", {}, code), ` ${words}`));
  };
  const list = (title: string, items: readonly HTMLElement[], total: number): HTMLElement[] =>
    total === 0
      ? []
      : [
          make("h3", {}, `${title} (${total})`),
          make("ul", { class: "plain" }, ...items),
          ...(total > items.length
            ? [make("p", { class: "quiet" }, `and ${total - items.length} more, taken too`)]
            : []),
        ];

  const take = async (): Promise<string> => {
    const area = resolvePlace(RATE_TABLE, await desk.host.names());
    if (!area) throw new Error("The price list moved; read the file again.");
    const accepts = (code: string): boolean => boxes.get(code)?.checked ?? true;
    const [free, guarded] = await desk.long("Taking the prices over", async (task) => {
      const writes = priceWrites(rows, changes, area, accepts);
      const allowed = await desk.host.canWrite(writes.map(({ place }) => place));
      task.progress(1, 2);
      // The last moment to stop: the writing itself is one step, which undo takes back where the host can.
      await task.pause();
      const parts = split(writes, allowed);
      await desk.host.write(parts[0]);
      return parts;
    });
    close();
    const left = guarded > 0 ? ` ${guarded} protected cells stay as they are.` : "";
    const cells = free.reduce((sum, { values }) => sum + values.length * (values[0]?.length ?? 0), 0);
    return `${cells.toLocaleString("en")} cells of the price list were changed.${left}`;
  };

  const facts = [
    `${changed.length} items change, ${changes.preview.added.length} are new, ${same.length} are the same.`,
    kept.length > 0 ? `${kept.length} items that the file does not have stay.` : "",
    changes.crowded.length > 0 ? `${changes.crowded.length} new items find no free row on Rates and stay out.` : "",
    read.ignored.length > 0 ? `Columns left out: ${read.ignored.join(", ")}.` : "",
  ].filter(Boolean);
  return [
    make("h3", {}, "What the file would change"),
    ...facts.map((fact) => make("p", {}, fact)),
    ...list(
      "Changed",
      changed
        .slice(0, SHOWN)
        .map(({ code, changes: fields }) =>
          line(code, fields.map(({ field, from, to }) => `${field} ${from} → ${to}`).join(", ")),
        ),
      changed.length,
    ),
    ...list(
      "New",
      changes.fitting.slice(0, SHOWN).map((item) => line(item.code, newWords(item))),
      changes.fitting.length,
    ),
    ...list(
      "Rows left out",
      read.refused.slice(0, SHOWN).map(({ row, problem }) => make("li", {}, `Row ${row} ${problem}`)),
      read.refused.length,
    ),
    make(
      "div",
      { class: "actions" },
      button("Take the marked prices over", () => desk.attempt(take), {
        class: "main",
        disabled: changed.length + changes.fitting.length === 0,
      }),
      button("Leave the list as it is", close),
    ),
  ];
}

function newWords({ description, cost, unit }: PriceItem): string {
  return [description, `${cost} per ${unit}`].filter(Boolean).join(", ");
}

/** The writes to free cells, and how many went to protected ones. */
function split<T>(writes: readonly T[], allowed: readonly boolean[]): [T[], number] {
  const free = writes.filter((_, index) => allowed[index]);
  return [free, writes.length - free.length];
}
