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

const VIEW_SETTING = "pane-view";
/** Changes come in bursts while a workbook recalculates; the pane follows when they pause. */
const REFRESH_AFTER = 60;

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
  const tabs = new Tabs(views, (index) => void host.keepSetting(VIEW_SETTING, String(index)).catch(() => undefined));
  root.classList.add("pane");
  root.replaceChildren(make("div", { class: "head" }, tabs.bar), tabs.pages, desk.foot);
  let timer: ReturnType<typeof setTimeout> | undefined;
  host.onChange(() => {
    clearTimeout(timer);
    timer = setTimeout(() => tabs.refresh(), REFRESH_AFTER);
  });
  tabs.show(0);
}
