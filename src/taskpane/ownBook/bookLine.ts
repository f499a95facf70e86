import { HostRefusal, type TemplateWay } from "../../host/port";
import { counted } from "../counted";
import { download, WORKBOOK } from "../download";
import { TEMPLATE_LABELS } from "../templateLabels";
import { button, make } from "../ui/elements";
import type { Desk } from "../ui/desk";
import { told } from "../ui/markedList";
import { askWorker } from "./askWorker";
import type { CompanyBook, KeptBook } from "./companyBook";
import type { NamedFile } from "./messages";

const NEW_JOB = "job.xlsx";

/** A new job from the book that is here, opened, inserted or handed out as this host can. */
export async function newJob(desk: Desk, company: CompanyBook, way: TemplateWay): Promise<string> {
  const { name, bytes, about } = company.need();
  return desk.long(`Making a job from ${name}`, async (task) => {
    const template = `rillwright-${about.system.toLowerCase()}-blank.xlsx`;
    const answer = await fetch(`templates/${template}`, { signal: task.signal }).catch(() => undefined);
    if (!answer?.ok) throw new HostRefusal(`${template} could not be fetched; check the connection and try again.`);
    const blank = new Uint8Array(await answer.arrayBuffer());
    const made = await askWorker({ ask: "job", book: { name, bytes }, blank }, task);
    await task.pause();
    const notes = made.notes.length > 0 ? ` ${made.notes.join(" ")}` : "";
    if (way === "download") {
      download(NEW_JOB, made.bytes as BlobPart, WORKBOOK);
      return `${NEW_JOB} with the prices of ${name} is in your downloads.${notes}`;
    }
    const { said } = await desk.host.takeTemplate({ file: NEW_JOB, bytes: made.bytes }, way, task);
    return `${said} It holds its own copy of the prices of ${name}, with their dates.${notes}`;
  });
}

/** Takes a book from a file that a person picked or dropped. */
export function takeBook(desk: Desk, company: CompanyBook, file: NamedFile): Promise<string> {
  return desk.long(`Reading ${file.name}`, (task) => company.take(file, task));
}

/** The book that is here and a job from it, or the way to choose one; for every place that offers it. */
export function bookLine(desk: Desk, company: CompanyBook, id: string): HTMLElement {
  const place = make("div", {});
  const input = make("input", { type: "file", id, accept: ".xlsx" });
  input.addEventListener("change", () => {
    const file = input.files?.[0];
    input.value = "";
    if (!file) return;
    desk.attempt(async () =>
      takeBook(desk, company, { name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) }),
    );
  });
  const ways = desk.host.templateWays.map((way) =>
    button(`New job: ${TEMPLATE_LABELS[way][desk.host.kind].toLowerCase()}`, () =>
      desk.attempt(() => newJob(desk, company, way)),
    ),
  );
  ways[0]?.classList.add("main");
  const show = (): void => {
    const { kept } = company;
    const words = kept
      ? aboutWords(kept, company.remembered)
      : [make("p", { class: "quiet" }, "No company book here yet.")];
    const label = make(
      "label",
      { for: id },
      kept ? "Choose another company book (.xlsx)" : "Choose your company book (.xlsx)",
    );
    const actions = kept ? [make("div", { class: "actions" }, ...ways)] : [];
    place.replaceChildren(...words, ...actions, label, input);
  };
  company.onChange(show);
  show();
  return place;
}

function aboutWords({ name, about, at, changed }: KeptBook, remembered: boolean): HTMLElement[] {
  const { company, system, products, priced, invented, pumps, problems } = about;
  const day = new Date(at).toLocaleDateString([], { dateStyle: "medium" });
  const unpriced = priced < products ? `, ${priced} of them with a price` : "";
  const sentences = [
    `${company === "" ? "" : `${company}: `}${counted(products, "product")}${unpriced}, ${counted(pumps, "pump")}, in ` +
      `${system === "US" ? "US units" : "metric units"}; taken on ${day}.`,
    invented > 0
      ? `${counted(invented, "price")} came with the tool and ${invented === 1 ? "is" : "are"} marked invented.`
      : "",
    remembered ? "" : "This browser keeps nothing here: choose the book again next time.",
    changed ? "It holds changes that are in no file of yours yet: save the book under Book." : "",
  ];
  return [
    make("p", {}, make("strong", {}, name)),
    ...sentences.filter(Boolean).map((sentence) => make("p", {}, sentence)),
    ...told("To look at in the book", problems),
  ];
}
