import { HostRefusal, type Host } from "../host/port";
import { newJob, takeBook } from "./ownBook/bookLine";
import { CompanyBook } from "./ownBook/companyBook";
import type { NamedFile } from "./ownBook/messages";
import { dropFile } from "./dropFile";
import { Following } from "./following";
import { make } from "./ui/elements";
import { Desk, type View } from "./ui/desk";
import { Tabs } from "./ui/tabs";
import { bookView } from "./views/book";
import { drawingsView } from "./views/drawings";
import { functionsView } from "./views/functions";
import { helpView } from "./views/help";
import { jobView } from "./views/job";
import { listsView } from "./views/lists";
import { startView } from "./views/start";

/** What the page around the pane tells it. */
export interface Pane {
  /** Another workbook is open. */
  beginAnew(): void;
  /** A person wants a new job from this company book. */
  newJobFrom(book: NamedFile): void;
}

/** Builds the pane over a host. The same pane stands beside Excel and beside the bench. */
export function mountPane(root: HTMLElement, host: Host): Pane {
  const desk = new Desk(host);
  const company = new CompanyBook(host);
  const views: readonly View[] = [
    startView(desk, company),
    bookView(desk, company),
    jobView(desk),
    functionsView(desk),
    drawingsView(desk),
    listsView(desk),
    helpView(desk),
  ];
  const tabs: Tabs = new Tabs(views, () => following.pin());
  const following = new Following(host, ({ tab, choice }) => {
    const index = views.findIndex(({ title }) => title === tab);
    if (choice !== undefined) views[index]?.choose?.(choice);
    tabs.show(index);
  });
  desk.stay = () => following.pin();
  const byHand = make("p", { class: "quiet small", role: "status" });
  const lookAtCalculation = async (): Promise<void> => {
    const byItself = await host.calculatesByItself().catch(() => true);
    const words = byItself ? "" : "Excel calculates only when told here (manual calculation): press F9 after edits.";
    if (byHand.textContent !== words) byHand.textContent = words;
  };
  root.classList.add("pane");
  root.replaceChildren(make("div", { class: "head" }, tabs.bar, following.switch, byHand), tabs.pages, desk.foot);
  let waiting = false;
  host.onChange(() => {
    // Changes come in bursts; one look at the workbook follows each burst.
    if (waiting) return;
    waiting = true;
    setTimeout(() => {
      waiting = false;
      tabs.refresh();
      void lookAtCalculation();
    });
  });
  tabs.show(0);
  void lookAtCalculation();
  const take = (book: NamedFile): Promise<string> => takeBook(desk, company, book);
  // The bench takes files dropped anywhere on its page.
  if (host.kind === "excel") {
    const dropped = async (file: File): Promise<string> =>
      take({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) });
    dropFile(
      document.body,
      (file) => desk.attempt(() => dropped(file)),
      (sentence) => desk.complain(new HostRefusal(sentence)),
    );
  }
  const begin = async (book: NamedFile): Promise<string> => {
    await take(book);
    return newJob(desk, company, "open");
  };
  return { beginAnew: () => desk.forget(), newJobFrom: (book) => desk.attempt(() => begin(book)) };
}
