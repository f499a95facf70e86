import { make } from "./elements";

/** Rows of each kind that a preview lists; the rest is counted. */
const SHOWN = 100;
let made = 0;

/** Rows of a preview that a person takes or leaves one by one; everything is marked to begin with. */
export class MarkedList {
  private readonly boxes = new Map<string, HTMLInputElement>();

  /** A heading with its rows; nothing where there are none. */
  rows(title: string, items: readonly { readonly name: string; readonly words: string }[]): HTMLElement[] {
    return listed(
      title,
      items.slice(0, SHOWN).map(({ name, words }) => {
        const id = `take-${++made}`;
        const box = make("input", { type: "checkbox", id, checked: true });
        this.boxes.set(name, box);
        const label = make("label", { for: id }, make("strong", {}, name), ` ${words}`);
        return make("li", { class: "choice" }, box, label);
      }),
      items.length,
      "taken too",
    );
  }

  /** Whether a row is to be taken; those beyond the listed ones are. */
  accepts(name: string): boolean {
    return this.boxes.get(name)?.checked ?? true;
  }
}

/** A heading with sentences that nobody chooses among. */
export function told(title: string, sentences: readonly string[]): HTMLElement[] {
  const rows = sentences.slice(0, SHOWN).map((sentence) => make("li", {}, sentence));
  return listed(title, rows, sentences.length, "of the same sort");
}

function listed(title: string, rows: readonly HTMLElement[], total: number, rest: string): HTMLElement[] {
  if (total === 0) return [];
  const more = total > rows.length ? [make("p", { class: "quiet" }, `and ${total - rows.length} more, ${rest}`)] : [];
  return [make("h3", {}, `${title} (${total})`), make("ul", { class: "plain" }, ...rows), ...more];
}
