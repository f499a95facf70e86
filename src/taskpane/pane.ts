import type { Host } from "../host/port";
import { make } from "./ui/elements";
import { Desk } from "./ui/desk";
import { Tabs } from "./ui/tabs";
import { drawingsView } from "./views/drawings";
import { functionsView } from "./views/functions";
import { helpView } from "./views/help";
import { jobView } from "./views/job";
import { listsView } from "./views/lists";
import { startView } from "./views/start";

/** Builds the pane over a host. The same pane stands beside Excel and beside the bench. */
export function mountPane(root: HTMLElement, host: Host): void {
  const desk = new Desk(host);
  const views = [
    startView(desk),
    jobView(desk),
    functionsView(desk),
    drawingsView(desk),
    listsView(desk),
    helpView(desk),
  ];
  const tabs = new Tabs(views);
  root.classList.add("pane");
  root.replaceChildren(make("div", { class: "head" }, tabs.bar), tabs.pages, desk.foot);
  let waiting = false;
  host.onChange(() => {
    // Changes come in bursts; one look at the workbook follows each burst.
    if (waiting) return;
    waiting = true;
    setTimeout(() => {
      waiting = false;
      tabs.refresh();
    });
  });
  tabs.show(0);
}
