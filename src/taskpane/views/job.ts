import { COMPLETENESS_PLACES, readCompleteness, type Completeness } from "../completeness";
import { CHECK_LIST, CHECK_PLACES, readChecks, type Check } from "../checks";
import { GLANCE_PLACES, readGlance } from "../glance";
import { handOverValues } from "../handOver";
import { issueQuote } from "../issuing";
import { button, make } from "../ui/elements";
import { rebuild } from "../ui/rebuild";
import type { Desk, View } from "../ui/desk";
import { papersPart } from "./papers";
import { tapeTextsPart } from "./tapeTexts";
import { tryOption } from "./tryOption";
import { wantedPriceForm } from "./wantedPrice";

const HEADINGS: Readonly<Record<Check["state"], string>> = {
  bad: "To fix",
  look: "To look at",
  fill: "Waiting for inputs",
  good: "Passed",
};

/** The job at a glance, and its checks; each leads to the cell that fixes it. */
export function jobView(desk: Desk): View {
  const list = make("div", {});
  const facts = make("div", {});
  const issued = make("p", {});
  const numbers = make("dl", { class: "glance" });
  // It stays while the list comes and goes, so that screen readers say what became of it.
  const summary = make("p", { role: "status" });
  let shownLast = "";

  const texts = tapeTextsPart(desk);
  let complete = "";
  function showComplete(now: Completeness | undefined): void {
    if (JSON.stringify(now ?? "") === complete) return;
    complete = JSON.stringify(now ?? "");
    rebuild(facts, now ? completeness(desk, now) : []);
    texts.show(now?.anyWrong ?? false);
  }

  async function refresh(): Promise<void> {
    const [rows, places, quote, ...all] = await desk.host.show([
      CHECK_LIST,
      CHECK_PLACES,
      "QuoteIssue",
      ...COMPLETENESS_PLACES,
      ...GLANCE_PLACES,
    ]);
    issued.textContent = quote?.[0]?.[0] || "Nothing was issued yet. Issuing keeps what the client holds in the job.";
    const values = all.slice(COMPLETENESS_PLACES.length);
    showComplete(readCompleteness(all.slice(0, COMPLETENESS_PLACES.length)));
    numbers.replaceChildren(
      ...readGlance(values).flatMap(({ label, text, name }) => [
        make("dt", {}, label),
        make("dd", { "data-name": name }, text),
      ]),
    );
    const checks = rows && readChecks(rows, places);
    const now = JSON.stringify(checks ?? "");
    if (now === shownLast) return;
    shownLast = now;
    summary.textContent = checks ? inShort(checks) : "This workbook has no list of checks. Start a job to get one.";
    rebuild(list, checks ? describe(desk, checks) : []);
  }

  const option = tryOption(desk);
  const papers = papersPart(desk);
  const handOver = (): Promise<string> =>
    desk.long("Copying the values", ({ progress }) => handOverValues(desk.host, progress));

  return {
    title: "Job",
    body: make(
      "div",
      {},
      make("h2", {}, "The job at a glance"),
      facts,
      texts.body,
      numbers,
      wantedPriceForm(desk),
      option.body,
      make("h2", {}, "Checks"),
      summary,
      list,
      make("h2", {}, "The quote"),
      issued,
      make(
        "div",
        { class: "actions" },
        button("Issue this quote", () => desk.attempt(() => issueQuote(desk.host))),
      ),
      papers.body,
      make("h2", {}, "For those without the add-in"),
      make(
        "p",
        {},
        "Other programs cannot calculate this workbook. A copy of its values shows the same in all of them.",
      ),
      make(
        "div",
        { class: "actions" },
        button("Save a copy of values", () => desk.attempt(handOver)),
      ),
    ),
    refresh: () =>
      desk.attempt(() => Promise.all([refresh(), option.refresh(), papers.refresh()]).then(() => undefined)),
    forget: () => {
      option.forget();
      texts.forget();
    },
  };
}

/** One line that leads to the next cell to fill in or fix. */
function completeness(desk: Desk, { said, next }: Completeness): HTMLElement[] {
  if (next === undefined) return [make("p", { class: "small" }, said)];
  const go = (): void =>
    desk.attempt(async () => {
      await desk.host.select(next.place);
      return `Fill in or correct ${next.called}.`;
    });
  return [
    make(
      "button",
      { type: "button", class: "row", "data-key": "completeness", onclick: go },
      make("span", {}, said),
      make("span", { class: "quiet small" }, `Go to ${next.called}`),
    ),
  ];
}

function inShort(checks: readonly Check[]): string {
  const open = checks.filter(({ state }) => state !== "good").length;
  return open === 0
    ? `All ${checks.length} checks are in order.`
    : `${open} of ${checks.length} checks ${open === 1 ? "wants" : "want"} attention.`;
}

function describe(desk: Desk, checks: readonly Check[]): HTMLElement[] {
  return (Object.keys(HEADINGS) as Check["state"][]).flatMap((state): HTMLElement[] => {
    const members = checks.filter((check) => check.state === state);
    if (members.length === 0) return [];
    const rows = make("ul", { class: "plain" }, ...members.map((check) => row(desk, check)));
    const heading = `${HEADINGS[state]} (${members.length})`;
    return state === "good"
      ? [make("details", {}, make("summary", { "data-key": state }, heading), rows)]
      : [make("h3", {}, heading), rows];
  });
}

function row(desk: Desk, check: Check): HTMLElement {
  const go = (): void =>
    desk.attempt(async () => {
      await desk.host.select(check.place);
      return `${check.label}: change ${check.where}.`;
    });
  return make(
    "li",
    {},
    make(
      "button",
      { type: "button", class: `row check ${check.state}`, "data-key": check.label, onclick: go },
      make(
        "span",
        { class: "check-head" },
        make("strong", {}, check.label),
        make("span", { class: "badge" }, check.verdict),
      ),
      check.value !== "" && make("span", {}, `${check.value} (limit: ${check.limit})`),
      check.state !== "good" && make("span", { class: "small" }, check.cure),
      make("span", { class: "quiet small" }, `Go to ${check.where}`),
    ),
  );
}
