import type { ReadPumpsAs } from "../../csv/readPumpList";
import type { Difference } from "../../workbook/company/difference";
import { askWorker } from "../ownBook/askWorker";
import type { CompanyBook } from "../ownBook/companyBook";
import { differencesPreview } from "../ownBook/differences";
import { make } from "../ui/elements";
import type { Desk } from "../ui/desk";
import { told } from "../ui/markedList";
import { counted } from "../counted";
import { pumpReading } from "./pumpReading";

/** Takes a maker's curves into the book: how they were read and what would change is shown first. */
export function pumpImport(
  desk: Desk,
  company: CompanyBook,
  take: (taken: readonly Difference[]) => Promise<string>,
): HTMLElement {
  const preview = make("div", { class: "preview-place" });
  const input = make("input", { type: "file", id: "pump-file", accept: ".csv,.txt,text/csv" });
  const close = (): void => {
    preview.replaceChildren();
    input.focus();
  };
  const show = async (name: string, list: Uint8Array, as: ReadPumpsAs = {}): Promise<string> => {
    const book = company.need();
    const found = await desk.long(`Reading ${name}`, (task) => askWorker({ ask: "pumps", book, list, as }, task));
    const { shape, file, problem } = found;
    const again = (changed: ReadPumpsAs): void => desk.attempt(() => show(name, list, changed));
    const words = {
      title: "Pumps that are new or differ",
      none: "The book holds every pump of the list as it is.",
      take: "Copy the marked pumps into the book",
      leave: "Leave the book as it is",
    };
    const refused = file?.refused.map(({ row, problem: why }) => `Row ${row} ${why}.`) ?? [];
    preview.replaceChildren(
      pumpReading(shape, as, again, problem !== undefined),
      ...(problem === undefined
        ? [
            make("p", {}, `${counted(file?.pumps.length ?? 0, "pump")} read from ${name}.`),
            ...told("Rows left out", refused),
            ...differencesPreview(desk, found, words, take, close),
          ]
        : [make("p", { class: "bad" }, problem)]),
    );
    return `${name} was read; nothing is changed yet.`;
  };
  input.addEventListener("change", () => {
    const file = input.files?.[0];
    input.value = "";
    if (file) desk.attempt(async () => show(file.name, new Uint8Array(await file.arrayBuffer())));
  });
  return make(
    "div",
    {},
    make(
      "p",
      {},
      "From a maker's list: a row for each pump, or for each point of its curve; any unit of flow and head.",
    ),
    make("label", { for: "pump-file" }, "Read pump curves (CSV)"),
    input,
    preview,
  );
}
