import { button, make } from "./elements";
import type { View } from "./desk";

/** The pane's one navigation: tabs that arrow keys walk through. */
export class Tabs {
  readonly bar = make("div", { role: "tablist", class: "tabs", "aria-label": "Job pane" });
  readonly pages = make("div", { class: "pages" });
  private readonly tabs: HTMLButtonElement[] = [];
  private open = -1;

  constructor(
    private readonly views: readonly View[],
    /** Told when a person chose a tab themselves. */
    private readonly chosen: () => void = () => undefined,
  ) {
    views.forEach(({ title, body }, index) => {
      const tab = button(title, () => this.choose(index), {
        role: "tab",
        id: `tab-${index}`,
        "aria-controls": `page-${index}`,
        "aria-selected": "false",
        tabindex: -1,
      });
      tab.addEventListener("keydown", (event) => this.walk(event, index));
      this.tabs.push(tab);
      this.bar.append(tab);
      const page = make(
        "div",
        { role: "tabpanel", id: `page-${index}`, "aria-labelledby": `tab-${index}`, hidden: true },
        body,
      );
      this.pages.append(page);
    });
  }

  private choose(index: number): void {
    this.chosen();
    this.show(index);
  }

  show(index: number): void {
    if (index === this.open) return;
    this.open = index;
    this.tabs.forEach((tab, at) => {
      tab.setAttribute("aria-selected", String(at === index));
      tab.tabIndex = at === index ? 0 : -1;
    });
    [...this.pages.children].forEach((page, at) => ((page as HTMLElement).hidden = at !== index));
    this.refresh();
  }

  /** Brings the view in sight up to date. */
  refresh(): void {
    this.views[this.open]?.refresh?.();
  }

  private walk(event: KeyboardEvent, index: number): void {
    const last = this.tabs.length - 1;
    const next = {
      ArrowRight: index === last ? 0 : index + 1,
      ArrowLeft: index === 0 ? last : index - 1,
      Home: 0,
      End: last,
    }[event.key];
    if (next === undefined) return;
    event.preventDefault();
    this.choose(next);
    this.tabs[next]?.focus();
  }
}
