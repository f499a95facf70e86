import type { Host } from "../host/port";
import { Following } from "./following";
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
export function mountPane(root: HTMLElement, host: Host): { beginAnew(): void } {
  const desk = new Desk(host);
  const views = [
    startView(desk),
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
  return { beginAnew: () => desk.forget() };
}
