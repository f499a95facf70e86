import { HostRefusal } from "../../host/port";
import { Problem } from "../../calc/problem";
import type { FilledDraft, FilledFact } from "../fillDraft";
import type { Desk } from "../ui/desk";
import { button, make } from "../ui/elements";
import { picture } from "../ui/picture";

/** Shows the draft fact by fact with its section, and writes it into the blank cells only then. */
export function fillDraftForm(desk: Desk): HTMLElement {
  const shown = make("div", { role: "status" });
  let ready: FilledDraft | undefined;

  const look = async (): Promise<undefined> => {
    const { FILL_PLACES, draftToFill } = await import("../fillDraft");
    const [grids, cells] = await Promise.all([desk.host.read(FILL_PLACES), desk.host.names()]);
    const names = new Map(cells.map(({ name, address }) => [name, address]));
    try {
      ready = draftToFill(grids, names);
    } catch (error) {
      shown.replaceChildren();
      if (!(error instanceof Problem)) throw error;
      throw new HostRefusal(`${error.message.slice(0, 1).toUpperCase()}${error.message.slice(1)}.`);
    }
    shown.replaceChildren(...described(ready));
  };
  const write = async (): Promise<string> => {
    const { facts = [], changes = [] } = ready ?? {};
    await desk.host.write(changes);
    ready = undefined;
    shown.replaceChildren();
    const undo = desk.host.undoesInOneStep ? " One undo takes them back." : "";
    return `${facts.length} facts are in the workbook, marked as assumed; what you type over one makes it yours.${undo}`;
  };
  const described = ({ facts, section }: FilledDraft): HTMLElement[] => {
    const sheets = [...new Set(facts.map(({ sheet }) => sheet))];
    return [
      ...(section === undefined ? [] : [make("div", { class: "drawing" }, picture(section))]),
      make(
        "p",
        { class: "small" },
        "Goes into cells that nobody has filled in; prices, wages and rates stay as they are.",
      ),
      ...(facts.length === 0
        ? [make("p", {}, "There is nothing left for the draft to fill in.")]
        : [
            make(
              "div",
              { class: "actions" },
              button(`Write these ${facts.length} facts`, () => desk.attempt(write)),
            ),
          ]),
      ...sheets.map((sheet) =>
        list(
          sheet,
          facts.filter((fact) => fact.sheet === sheet),
        ),
      ),
    ];
  };
  return make(
    "details",
    {},
    make("summary", {}, "Fill in the draft"),
    make("p", { class: "small" }, "What the answers on Start make, fact by fact, before any of it is written."),
    make(
      "div",
      { class: "actions" },
      button("Show the draft", () => desk.attempt(look)),
    ),
    shown,
  );
}

function list(sheet: string, facts: readonly FilledFact[]): HTMLElement {
  return make(
    "details",
    {},
    make("summary", {}, `${sheet}: ${facts.length}`),
    make(
      "dl",
      {},
      ...facts.flatMap(({ question, shown, reason }) => [
        make("dt", {}, question),
        make("dd", {}, [shown, reason].filter(Boolean).join(". ")),
      ]),
    ),
  );
}
