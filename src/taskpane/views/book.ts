import type { CompanyBook } from "../ownBook/companyBook";
import type { Desk, View } from "../ui/desk";
import { make } from "../ui/elements";

/** The company's own book: new jobs from it, its prices into the open job, and a job's news back into it. */
export function bookView(desk: Desk, company: CompanyBook): View {
  const place = make("div", {});
  // Loaded when it is first looked at: Excel waits for the pane before its first cell answers.
  let loaded: Promise<{ look(): void }> | undefined;
  const load = async (): Promise<{ look(): void }> => {
    const { bookBody } = await import("./bookBody");
    const { body, look } = bookBody(desk, company);
    place.replaceChildren(body);
    return { look };
  };
  return {
    title: "Book",
    refresh: () => {
      void company.look();
      desk.attempt(async () => {
        loaded ??= load();
        (await loaded).look();
        return undefined;
      });
    },
    body: make("div", {}, make("h2", {}, "Your company book"), place),
  };
}
