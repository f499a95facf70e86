import { CHECK_LIST, readChecks, type Check } from "../checks";
import { GLANCE_PLACES, readGlance } from "../glance";
import { make } from "../ui/elements";
import type { Desk, View } from "../ui/desk";

const HEADINGS: Readonly<Record<Check["state"], string>> = {
  bad: "To fix",
  look: "To look at",
  fill: "Waiting for inputs",
  good: "In order",
};

/** The job at a glance, and its checks; each leads to the cell that mends it. */
export function jobView(desk: Desk): View {
  const list = make("div", {});
  const numbers = make("dl", { class: "glance" });
  let shownLast = "";

  async function refresh(): Promise<void> {
    const [rows, ...values] = await desk.host.show([CHECK_LIST, ...GLANCE_PLACES]);
    numbers.replaceChildren(
      ...readGlance(values).flatMap(({ label, text, name }) => [
        make("dt", {}, label),
        make("dd", { "data-name": name }, text),
      ]),
    );
    const checks = rows && readChecks(rows);
    const now = JSON.stringify(checks ?? "");
    // Building the list again would take the focus from a person walking through it.
    if (now === shownLast) return;
    shownLast = now;
    list.replaceChildren(
      ...(checks
        ? describe(desk, checks)
        : [make("p", {}, "This workbook has no list of checks. Start a job to get one.")]),
    );
  }

  return {
    title: "Job",
    body: make("div", {}, make("h2", {}, "The job at a glance"), numbers, make("h2", {}, "Checks"), list),
    refresh: () => desk.attempt(() => refresh().then(() => undefined)),
  };
}

function describe(desk: Desk, checks: readonly Check[]): HTMLElement[] {
  const open = checks.filter(({ state }) => state !== "good").length;
  const summary =
    open === 0 ? `All ${checks.length} checks are in order.` : `${open} of ${checks.length} checks want attention.`;
  const groups = (Object.keys(HEADINGS) as Check["state"][]).flatMap((state): HTMLElement[] => {
    const members = checks.filter((check) => check.state === state);
    if (members.length === 0) return [];
    const rows = make("ul", { class: "plain" }, ...members.map((check) => row(desk, check)));
    const heading = `${HEADINGS[state]} (${members.length})`;
    return state === "good"
      ? [make("details", {}, make("summary", {}, heading), rows)]
      : [make("h3", {}, heading), rows];
  });
  return [make("p", { role: "status" }, summary), ...groups];
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
      { type: "button", class: `row check ${check.state}`, onclick: go },
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
