import { FIRST_PRICE_PLACES, readFirstPrice } from "../firstPrice";
import type { Desk } from "../ui/desk";
import { make } from "../ui/elements";

/** The draft that the answers on Start make, as Start shows it. */
export function firstPrice(desk: Desk): { readonly body: HTMLElement; refresh(): Promise<undefined> } {
  const body = make("div", {});
  let shown = "";
  return {
    body,
    async refresh() {
      const now = readFirstPrice(await desk.host.show(FIRST_PRICE_PLACES));
      if (JSON.stringify(now ?? "") === shown) return;
      shown = JSON.stringify(now ?? "");
      body.replaceChildren(
        ...(now
          ? [
              make("h2", {}, "First price, and nothing to sign"),
              make(
                "dl",
                { class: "glance" },
                ...now.numbers.flatMap(([label, text]) => [make("dt", {}, label), make("dd", {}, text)]),
              ),
              ...now.remarks.map((remark) => make("p", {}, remark)),
              make("h3", {}, "Measure next: the price if it comes in low or high, and its share of the range"),
              make("ol", {}, ...now.next.map((line) => make("li", {}, line))),
            ]
          : []),
      );
    },
  };
}
