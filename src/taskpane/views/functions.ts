import { catalogue } from "../../functions/catalogue";
import type { Declaration } from "../../functions/contract/declaration";
import { exampleCall } from "../../functions/contract/exampleCall";
import { counted } from "../counted";
import { make } from "../ui/elements";
import type { Desk, View } from "../ui/desk";
import { functionForm } from "./functionForm";

/** The functions: search them, read their help, see an example, insert one. */
export function functionsView(desk: Desk): View {
  const list = make("ul", { class: "plain list" });
  const count = make("p", { class: "quiet", role: "status" });
  const card = make("div", { class: "card-place" });
  const listing = make("div", {});
  const search = make("input", { type: "search", id: "function-search", autocomplete: "off", oninput: () => fill() });
  listing.append(
    make("label", { for: "function-search" }, "Find a function by name or by what it works out"),
    search,
    count,
    list,
  );

  function fill(): void {
    const found = searchFunctions(search.value);
    count.textContent = counted(found.length, "function");
    list.replaceChildren(
      ...found.map((declaration) =>
        make(
          "li",
          {},
          make(
            "button",
            { type: "button", class: "row", onclick: () => open(declaration) },
            make("strong", {}, declaration.name),
            make("span", {}, declaration.summary),
          ),
        ),
      ),
    );
  }

  function open(declaration: Declaration): void {
    const back = (): void => {
      card.replaceChildren();
      listing.hidden = false;
      search.focus();
    };
    const head = make("h2", { tabindex: -1 }, declaration.name);
    card.replaceChildren(
      make("button", { type: "button", onclick: back }, "All functions"),
      head,
      make("p", {}, declaration.summary),
      ...(declaration.caution ? [make("p", { class: "caution" }, declaration.caution)] : []),
      functionForm(desk, declaration),
      help(declaration),
    );
    listing.hidden = true;
    head.focus();
  }

  fill();
  return { title: "Functions", body: make("div", {}, listing, card) };
}

function help(declaration: Declaration): HTMLElement {
  const { name, formula, limits, source, result, examples } = declaration;
  return make(
    "div",
    { class: "help" },
    make("h3", {}, "Gives"),
    make("p", {}, `${result.about}.`),
    make("h3", {}, "Formula"),
    make("p", {}, formula),
    make("h3", {}, "Limits"),
    make("p", {}, limits),
    make("h3", {}, "Example"),
    ...examples
      .slice(0, 2)
      .map((example) => make("p", {}, make("code", {}, `=RILL.${exampleCall(name, example.args)}`))),
    make("h3", {}, "Source"),
    make("p", {}, source),
    make(
      "p",
      {},
      make("a", { href: `help/${name.toLowerCase()}.html`, target: "_blank", rel: "noopener" }, `Help page of ${name}`),
    ),
  );
}

/** Functions whose name, summary or topic holds every word; those named so come first. */
export function searchFunctions(text: string): readonly Declaration[] {
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  const matches = catalogue.filter(({ name, summary, topic }) => {
    const all = `${name} ${summary} ${topic}`.toLowerCase();
    return words.every((word) => all.includes(word));
  });
  const named = (declaration: Declaration): boolean =>
    words.some((word) => declaration.name.toLowerCase().startsWith(word));
  return [...matches.filter(named), ...matches.filter((declaration) => !named(declaration))];
}
