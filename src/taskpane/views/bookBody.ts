import { askWorker } from "../ownBook/askWorker";
import { bookLine } from "../ownBook/bookLine";
import type { CompanyBook } from "../ownBook/companyBook";
import { differencesPreview } from "../ownBook/differences";
import { takeIntoJob } from "../ownBook/intoJob";
import type { Difference } from "../../workbook/company/difference";
import { counted } from "../counted";
import { button, make } from "../ui/elements";
import type { Desk } from "../ui/desk";
import { pumpImport } from "./pumpImport";

/** What the tab of the company's book holds, and what looks at the workbook that is open. */
export function bookBody(desk: Desk, company: CompanyBook): { readonly body: HTMLElement; look(): void } {
  const preview = make("div", { class: "preview-place" });
  const close = (): void => preview.replaceChildren();
  const compare = make("div", {});
  const openBook = make("div", {});

  const updates = async (): Promise<string> => {
    const book = company.need();
    const found = await desk.long("Comparing the prices", async (task) =>
      askWorker({ ask: "prices", book, job: await desk.host.file(task.progress) }, task),
    );
    const words = {
      title: "Differ from the book",
      none: "The job's prices are those of the book.",
      take: "Take the marked prices into the job",
      leave: "Leave the job as it is",
    };
    const take = (taken: readonly Difference[]): Promise<string> =>
      desk.long("Writing the prices", (task) => takeIntoJob(desk.host, taken, task));
    preview.replaceChildren(...differencesPreview(desk, found, words, take, close));
    return "The prices were compared; nothing is changed yet.";
  };
  const intoBook = async (taken: readonly Difference[]): Promise<string> => {
    const book = company.need();
    const { bytes, about } = await desk.long(`Writing ${book.name}`, (task) =>
      askWorker({ ask: "take", book, taken }, task),
    );
    await company.replace(bytes, about);
    return `${counted(taken.length, "row")} of the book ${taken.length === 1 ? "is" : "are"} new; save the book to have it as a file.`;
  };
  const news = async (): Promise<string> => {
    const book = company.need();
    const found = await desk.long("Looking for news", async (task) =>
      askWorker({ ask: "news", book, job: await desk.host.file(task.progress) }, task),
    );
    const words = {
      title: "News for the book",
      none: "The job has nothing that the book lacks.",
      take: "Take the marked rows into the book",
      leave: "Leave the book as it is",
    };
    preview.replaceChildren(...differencesPreview(desk, found, words, intoBook, close));
    return "The job was compared with the book; nothing is changed yet.";
  };

  const show = (): void => {
    close();
    const { kept } = company;
    compare.hidden = !kept;
    save.classList.toggle("main", kept?.changed ?? false);
  };
  const save = button("Save the book", () => desk.attempt(() => company.save()));
  compare.append(
    make(
      "div",
      { class: "actions" },
      save,
      button("Forget the book", () => desk.attempt(() => company.forget())),
    ),
    make("h2", {}, "The open job and the book"),
    make("p", {}, "Every difference is shown before anything is taken."),
    make(
      "div",
      { class: "actions" },
      button("Bring the job's prices up to date", () => desk.attempt(updates)),
      button("From the finished job into the book", () => desk.attempt(news)),
    ),
    preview,
    make("h2", {}, "Pump curves into the book"),
    pumpImport(desk, company, intoBook),
  );
  openBook.append(
    make("p", {}, "The open workbook is a company book."),
    make(
      "div",
      { class: "actions" },
      button("Use it for new jobs", () =>
        desk.attempt(() => desk.long("Reading the open workbook", (task) => company.takeOpen(task))),
      ),
    ),
  );
  openBook.hidden = true;
  const lookAtOpen = async (): Promise<undefined> => {
    const names = await desk.host.names();
    openBook.hidden = !names.some(({ name }) => name === "BookUnits");
  };
  company.onChange(show);
  show();
  return {
    look: () => desk.attempt(lookAtOpen),
    body: make("div", {}, openBook, bookLine(desk, company, "book-file"), compare),
  };
}
