import { repairWords } from "../repairWords";
import { button, make } from "../ui/elements";
import type { Desk, View } from "../ui/desk";

/** Repairing what a host broke, and where to read on. */
export function helpView(desk: Desk): View {
  const repair = async (): Promise<string> => {
    return repairWords(await desk.long("Looking through the sheets", (task) => desk.host.repairFormulas(task)));
  };
  const recalculate = async (): Promise<string> => {
    await desk.host.recalculate();
    return "Every formula was worked out again.";
  };
  const page = (address: string, label: string): HTMLElement =>
    make("li", {}, make("a", { href: address, target: "_blank", rel: "noopener" }, label));
  return {
    title: "Help",
    body: make(
      "div",
      {},
      make("h2", {}, "When formulas show #NAME?"),
      make(
        "p",
        {},
        "A workbook opened before the functions were ready keeps formulas that do not know them. Entering them again fixes them; nothing else is touched.",
      ),
      make(
        "div",
        { class: "actions" },
        button("Repair formulas", () => desk.attempt(repair)),
        button("Recalculate", () => desk.attempt(recalculate)),
      ),
      make("h2", {}, "Read on"),
      make(
        "ul",
        {},
        page("help/index.html", "Every function, with formula, limits and source"),
        page("help/numbers.html", "Where each number of the workbook comes from"),
        page("help/first-job.html", "Your first job"),
        page("help/guide.html", "Guide to a job"),
        page("help/support.html", "Support"),
        page("help/privacy.html", "Privacy"),
      ),
      make("h2", {}, "Privacy in one sentence"),
      make("p", {}, "Everything is worked out on this machine; no job, price or name is sent anywhere."),
    ),
  };
}
