import { Problem } from "../../calc/problem";
import { HostRefusal } from "../../host/port";
import type { Desk } from "../ui/desk";
import { button, make } from "../ui/elements";
import { markupsWanted, WANTED_PLACES, type Wanted } from "../wantedPrice";

/** A field for the price or the gross margin that somebody wants; the markups on Price follow, exact to the cent. */
export function wantedPriceForm(desk: Desk): HTMLElement {
  const what = make(
    "select",
    { id: "wanted-what", "aria-label": "What you want" },
    make("option", { value: "price" }, "Price before tax"),
    make("option", { value: "margin" }, "Gross margin, of the price"),
  );
  const field = make("input", { id: "wanted-price", autocomplete: "off", inputmode: "decimal" });
  const set = async (): Promise<string> => {
    const grids = await desk.host.read(WANTED_PLACES);
    const { changes, said } = told(() => markupsWanted(what.value as Wanted, field.value, grids));
    await desk.host.write(changes);
    return said;
  };
  const form = make(
    "form",
    {
      onsubmit: (event) => {
        event.preventDefault();
        desk.attempt(set);
      },
    },
    make("p", { class: "small" }, "All markups on Price change in proportion until the quoted option comes to this."),
    make("div", { class: "field" }, what),
    make("label", { for: "wanted-price" }, "Wanted"),
    make(
      "div",
      { class: "with-button" },
      field,
      button("Set markups", () => form.requestSubmit()),
    ),
  );
  return make("details", {}, make("summary", {}, "Set a price or a margin"), form);
}

/** A problem of the calculation as a sentence of the pane. */
function told<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    throw new HostRefusal(`${error.message.slice(0, 1).toUpperCase()}${error.message.slice(1)}.`);
  }
}
