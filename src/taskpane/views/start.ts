import { HostRefusal, type TemplateWay } from "../../host/port";
import { bookLine } from "../ownBook/bookLine";
import type { CompanyBook } from "../ownBook/companyBook";
import { TEMPLATE_LABELS } from "../templateLabels";
import { fillDraftForm } from "./fillDraft";
import { firstPrice } from "./firstPrice";
import { notesForm } from "./notes";
import { button, make } from "../ui/elements";
import type { Desk, View } from "../ui/desk";

/** Begins a job: which units, demo or blank, and how to take the workbook. */
export function startView(desk: Desk, company: CompanyBook): View {
  const units = choices("units", "Units", [
    ["us", "US: feet, inches, gallons per hour"],
    ["si", "SI: meters, millimeters, liters per hour"],
  ]);
  const filled = choices("filled", "Filled in", [
    ["blank", "Blank, for a job of yours"],
    ["demo", "Demo, with an invented job to look around in"],
  ]);
  const file = (): string => `rillwright-${units.chosen()}-${filled.chosen()}.xlsx`;
  const link = make("a", { class: "button" }, TEMPLATE_LABELS.download[desk.host.kind]);
  const point = (): void => {
    link.href = `templates/${file()}`;
    link.download = file();
  };
  let picked = false;
  const first = firstPrice(desk);
  units.body.addEventListener("change", () => {
    picked = true;
    point();
  });
  filled.body.addEventListener("change", point);
  point();

  /** Until a person picks units, those of the open job are offered. */
  const follow = async (): Promise<undefined> => {
    const [cells] = await desk.host.read(["Units"]);
    const system = cells?.[0]?.[0];
    if (picked || typeof system !== "string") return;
    units.choose(system.toLowerCase());
    point();
  };

  const take = (way: TemplateWay) => async (): Promise<string> => {
    // Asked once: the choice may change while the file is on its way.
    const name = file();
    const report = await desk.long(`Fetching ${name}`, async (task) => {
      const answer = await fetch(`templates/${name}`, { signal: task.signal }).catch(() => undefined);
      if (!answer?.ok) throw new HostRefusal(`${name} could not be fetched; check the connection and try again.`);
      return desk.host.takeTemplate({ file: name, bytes: new Uint8Array(await answer.arrayBuffer()) }, way, task);
    });
    return report.said;
  };

  const ways = desk.host.templateWays.map((way, index) => {
    const element =
      way === "download" ? link : button(TEMPLATE_LABELS[way][desk.host.kind], () => desk.attempt(take(way)));
    if (index === 0) element.classList.add("main");
    return element;
  });
  return {
    title: "Start",
    refresh: () => {
      void company.look();
      desk.attempt(follow);
      desk.attempt(first.refresh);
    },
    body: make(
      "div",
      {},
      make("h2", {}, "Start a job"),
      units.body,
      filled.body,
      make("div", { class: "actions" }, ...ways),
      make("h2", {}, "Start from your company book"),
      bookLine(desk, company, "start-book-file"),
      notesForm(desk),
      first.body,
      fillDraftForm(desk),
      make("h2", {}, "How a job runs"),
      make(
        "ol",
        {},
        ...[
          "Answer the six questions on Start for a first price; then fill in Site.",
          "Read down Water, Basin, Pump, Liner, Stone, Earth, Levels; change the shaded cells.",
          "Set your prices on Rates, production rates on Hours, markups on Price.",
          "Clear every check, then print Quote and Crew and send Orders.",
          "Enter tickets and invoices on Receipts; Reconcile finds what does not match.",
        ].map((step) => make("li", {}, step)),
      ),
    ),
  };
}

function choices(
  name: string,
  legend: string,
  options: readonly (readonly [string, string])[],
): { body: HTMLElement; chosen(): string; choose(value: string): void } {
  const inputs = options.map(([value], index) =>
    make("input", { type: "radio", name, value, id: `${name}-${value}`, checked: index === 0 }),
  );
  const body = make(
    "fieldset",
    {},
    make("legend", {}, legend),
    ...options.map(([value, label], index) =>
      make("div", { class: "choice" }, inputs[index], make("label", { for: `${name}-${value}` }, label)),
    ),
  );
  return {
    body,
    chosen: () => inputs.find((input) => input.checked)?.value ?? options[0]?.[0] ?? "",
    choose(value) {
      for (const input of inputs) input.checked ||= input.value === value;
    },
  };
}
