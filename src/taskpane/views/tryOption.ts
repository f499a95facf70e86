import type { Compared, Trial } from "../options/trial";
import type { Desk } from "../ui/desk";
import { button, make } from "../ui/elements";

/** A part of a view that follows the workbook. */
export interface Following {
  readonly body: HTMLElement;
  refresh(): Promise<void>;
  /** Drops what belongs to a workbook that is there no longer. */
  forget(): void;
}

/** Two ways to build side by side, live: the job as it was remembered, and as it stands while its cells are changed. */
export function tryOption(desk: Desk): Following {
  const shown = make("div", {});
  const name = make("input", { id: "option-name", autocomplete: "off", maxlength: 80 });
  const keeping = make(
    "div",
    { hidden: true },
    make("label", { for: "option-name" }, "Name of the option, as the client reads it"),
    make(
      "div",
      { class: "with-button" },
      name,
      button("Keep as option", () => desk.attempt(keep)),
    ),
  );
  let trial: Trial | undefined;

  const begin = async (): Promise<string> => {
    const { Trial } = await import("../options/trial");
    trial = await Trial.begin(desk.host);
    // What changes stands on other sheets, which the pane would follow.
    desk.stay();
    await refresh();
    return "Remembered. Now change what would be different, on any sheet: a pump, a width, a stone.";
  };

  async function refresh(): Promise<void> {
    const now = trial;
    keeping.hidden = now === undefined;
    if (!now) return shown.replaceChildren();
    const compared = await now.compare();
    const rows = await table(compared);
    if (trial !== now) return;
    shown.replaceChildren(
      rows,
      make("p", { class: "small" }, compared.inWords === "" ? "Nothing changed yet." : `Changed: ${compared.inWords}.`),
    );
    name.placeholder = compared.inWords.slice(0, 80);
  }

  async function keep(): Promise<string | undefined> {
    const said = await trial?.keep(name.value);
    name.value = "";
    await refresh();
    return said;
  }

  return {
    body: make(
      "details",
      {},
      make("summary", {}, "Try an option"),
      make(
        "p",
        { class: "small" },
        "Remember the job, change a few cells, and see both side by side. Kept as an option, the difference goes to Price and the quote, and your cells go back.",
      ),
      make(
        "div",
        { class: "actions" },
        button("Remember this job", () => desk.attempt(begin)),
      ),
      shown,
      keeping,
    ),
    refresh,
    forget() {
      trial = undefined;
      shown.replaceChildren();
      keeping.hidden = true;
    },
  };
}

async function table({ before, now }: Compared): Promise<HTMLElement> {
  const { sideBySide } = await import("../options/sideBySide");
  const head = ["", "Remembered", "Now"].map((title) => make("th", { scope: "col" }, title));
  const rows = sideBySide(before, now).map((row) => {
    const differs = row.before !== row.now;
    return make(
      "tr",
      {},
      make("th", { scope: "row" }, row.label),
      make("td", {}, row.before),
      make("td", {}, differs ? make("strong", {}, row.now) : row.now),
    );
  });
  return make("table", { class: "beside" }, make("thead", {}, make("tr", {}, ...head)), make("tbody", {}, ...rows));
}
