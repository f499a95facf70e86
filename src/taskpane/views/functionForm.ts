import { inWords } from "../../functions/contract/argument";
import type { Declaration } from "../../functions/contract/declaration";
import type { NamedCells } from "../../host/port";
import { callText, exampleText } from "../callText";
import { button, make } from "../ui/elements";
import type { Desk } from "../ui/desk";

/** The name of the cell that holds a job's unit system. */
const UNITS_CELL = "Units";

/** Fields for a function's arguments, a preview of the formula, and its insertion at the selected cell. */
export function functionForm(desk: Desk, declaration: Declaration): HTMLElement {
  const entries = Object.entries(declaration.args);
  const inputs = new Map<string, HTMLInputElement>();
  const problem = make("p", { class: "bad", role: "alert" });
  const preview = make("code", { class: "preview" });
  const place = make("p", { class: "quiet" });
  let names: readonly NamedCells[] = [];

  const fields = (): { name: string; optional: boolean; text: string }[] =>
    entries.map(([name, { optional }]) => ({ name, optional, text: inputs.get(name)?.value ?? "" }));
  const show = (): void => {
    problem.textContent = "";
    const call = callText(declaration.name, fields(), names);
    preview.textContent =
      "formula" in call ? call.formula : `=RILL.${declaration.name}(… ${inWords(call.missing)} is needed)`;
  };

  const rows = entries.map(([name, argument]) => {
    const id = `argument-${name}`;
    const input = make("input", {
      id,
      autocomplete: "off",
      spellcheck: "false",
      "aria-describedby": `${id}-rule`,
      list: argument.choices ? `${id}-choices` : undefined,
      oninput: show,
    });
    inputs.set(name, input);
    const take = (): Promise<undefined> =>
      desk.host.selected().then(({ address }) => {
        input.value = address;
        show();
        return undefined;
      });
    const [us, si] = argument.choices
      ? ["pick from the list", "pick from the list"]
      : [argument.rule("US"), argument.rule("SI")];
    const list =
      argument.choices &&
      make("datalist", { id: `${id}-choices` }, ...argument.choices.map((value) => make("option", { value })));
    const rule = `${us === si ? us : `${us} (US); ${si} (SI)`}${argument.optional ? `. Blank: ${argument.fallback ?? "left out"}` : ""}`;
    return make(
      "div",
      { class: "field" },
      make(
        "label",
        { for: id },
        inWords(name),
        argument.optional ? make("span", { class: "quiet" }, " (optional)") : undefined,
      ),
      make(
        "div",
        { class: "with-button" },
        input,
        list,
        button("Use selection", () => desk.attempt(take), {
          "aria-label": `Use selection for ${inWords(name)}`,
        }),
      ),
      make("p", { class: "quiet small", id: `${id}-rule` }, `${argument.about}: ${rule}`),
    );
  });

  const fillExample = (): void => {
    const [example] = declaration.examples;
    entries.forEach(([name], index) => {
      const input = inputs.get(name);
      if (input) input.value = exampleText(example?.args[index]);
    });
    show();
  };

  const insert = async (): Promise<string | undefined> => {
    const call = callText(declaration.name, fields(), names);
    if ("missing" in call) {
      problem.textContent = `${inWords(call.missing)} is needed: ${declaration.args[call.missing]?.rule("US") ?? ""}.`;
      inputs.get(call.missing)?.focus();
      return undefined;
    }
    const { address, value, formula } = await desk.host.selected();
    const held = formula || String(value);
    if (held !== "" && replacing !== address) {
      replacing = address;
      problem.textContent = `${address} holds ${held}. Press Insert again to replace it.`;
      return undefined;
    }
    replacing = "";
    problem.textContent = "";
    return `${call.formula} is in ${await desk.host.insertFormula(call.formula)}.`;
  };
  let replacing = "";

  /** Which names the workbook has, and where the formula would go. */
  const look = async (): Promise<void> => {
    names = await desk.host.names();
    show();
    place.textContent = `Goes into the selected cell, now ${(await desk.host.selected()).address}.`;
  };
  desk.attempt(async () => {
    await look();
    const units = inputs.get("units");
    if (units && names.some(({ name }) => name === UNITS_CELL)) units.value = UNITS_CELL;
    show();
    return undefined;
  });
  const stop = desk.host.onSelect(() => {
    if (!form.isConnected) stop();
    // Several blocks at once are no place for a formula, but no reason to complain while a person selects.
    else look().catch(() => (place.textContent = "Goes into the selected cell."));
  });

  const form = make(
    "form",
    { class: "function-form", novalidate: true, onsubmit: (event: Event) => event.preventDefault() },
    ...rows,
    make("p", { class: "label" }, "Formula"),
    make("p", {}, preview),
    place,
    problem,
    make(
      "div",
      { class: "actions" },
      button("Insert", () => desk.attempt(insert), { class: "main" }),
      button("Fill in the example", fillExample),
    ),
  );
  return form;
}
