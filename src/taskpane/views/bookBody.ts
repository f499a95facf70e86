import { askWorker } from "../ownBook/askWorker";
import { bookLine } from "../ownBook/bookLine";
import type { CompanyBook } from "../ownBook/companyBook";
import { differencesPreview, type PreviewWords } from "../ownBook/differences";
import { takeIntoJob } from "../ownBook/intoJob";
import type { Difference } from "../../workbook/company/difference";
import { counted } from "../counted";
import { button, make } from "../ui/elements";
import type { Desk } from "../ui/desk";
import { logoLine } from "./logoLine";
import { pumpImport } from "./pumpImport";

type Way = "prices" | "news";

/** What the preview says of each way. */
const WORDS: Readonly<Record<Way, PreviewWords>> = {
  prices: {
    title: "Differ from the book",
    none: "The job's prices and rates are those of the book.",
    take: "Copy the marked rows into the job",
    leave: "Leave the job as it is",
  },
  news: {
    title: "News for the book",
    none: "The job has nothing that the book lacks.",
    take: "Copy the marked rows into the book",
    leave: "Leave the book as it is",
  },
};

/** What the tab of the company's book holds, and what looks at the workbook that is open. */
export function bookBody(desk: Desk, company: CompanyBook): { readonly body: HTMLElement; look(): void } {
  const preview = make("div", { class: "preview-place" });
  const close = (): void => preview.replaceChildren();
  const compare = make("div", {});
  const openBook = make("div", {});

  const compared = async (way: Way, take: (taken: readonly Difference[]) => Promise<string>): Promise<string> => {
    const book = company.need();
    const found = await desk.long("Comparing the job with the book", async (task) =>
      askWorker({ ask: way, book, job: await desk.host.file(task.progress) }, task),
    );
    preview.replaceChildren(...differencesPreview(desk, found, WORDS[way], take, close));
    return "The job was compared with the book; nothing is changed yet.";
  };
  const intoJob = (taken: readonly Difference[]): Promise<string> =>
    desk.long("Writing into the job", (task) => takeIntoJob(desk.host, taken, task));
  const intoBook = async (taken: readonly Difference[]): Promise<string> => {
    const book = company.need();
    const { bytes, about } = await desk.long(`Writing ${book.name}`, (task) =>
      askWorker({ ask: "take", book, taken }, task),
    );
    await company.replace(bytes, about);
    return `${counted(taken.length, "row")} of the book ${taken.length === 1 ? "is" : "are"} new; save the book to have it as a file.`;
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
      button("Bring the job's prices up to date", () => desk.attempt(() => compared("prices", intoJob))),
      button("From the finished job into the book", () => desk.attempt(() => compared("news", intoBook))),
    ),
    preview,
    make("h2", {}, "Logo over the quote"),
    logoLine(desk, company),
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
