import { SUPPLIERS, PACKS, printPack, type Pack } from "../printing";
import type { Desk } from "../ui/desk";
import { button, make } from "../ui/elements";
import { rebuild } from "../ui/rebuild";

const LABELS: Readonly<Record<Pack, string>> = {
  client: "Client: quote and drawing",
  crew: "Crew: two pages for the site",
  supplier: "Supplier: the order to",
  office: "Office: price and invoices",
};

/** Buttons that give the papers of the job as PDF files, each for one reader. */
export function papersPart(desk: Desk): { readonly body: HTMLElement; refresh(): Promise<void> } {
  const suppliers = make("select", { "aria-label": "Supplier" });
  const print = (pack: Pack) => (): void =>
    desk.attempt(() => desk.long("Making the pages", (task) => printPack(desk.host, pack, suppliers.value, task)));
  let shown = "";

  return {
    body: make(
      "div",
      {},
      make("h2", {}, "Papers to print"),
      make("p", {}, "Each reader's pages as one PDF, of the job as it stands."),
      ...PACKS.map((pack) =>
        make(
          "div",
          { class: "actions" },
          button(LABELS[pack], print(pack)),
          ...(pack === "supplier" ? [suppliers] : []),
        ),
      ),
    ),
    async refresh() {
      const [rows] = await desk.host.read([SUPPLIERS]);
      const names = (rows ?? []).flatMap(([name]) => (name === "" || name === undefined ? [] : [String(name)]));
      if (names.join("\n") === shown) return;
      shown = names.join("\n");
      const chosen = suppliers.value;
      rebuild(
        suppliers,
        names.map((name) => make("option", { value: name }, name)),
      );
      if (names.includes(chosen)) suppliers.value = chosen;
    },
  };
}
