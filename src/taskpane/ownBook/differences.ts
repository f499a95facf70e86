import type { Compared, Difference } from "../../workbook/company/difference";
import { button, make } from "../ui/elements";
import type { Desk } from "../ui/desk";
import { MarkedList, told } from "../ui/markedList";

/** What a preview says in its own words. */
export interface PreviewWords {
  readonly title: string;
  readonly none: string;
  readonly take: string;
  readonly leave: string;
}

/** Every difference, to be taken or left; nothing is changed before the person says so. */
export function differencesPreview(
  desk: Desk,
  { differences, left }: Compared,
  words: PreviewWords,
  take: (taken: readonly Difference[]) => Promise<string>,
  close: () => void,
): HTMLElement[] {
  const list = new MarkedList();
  const rows = list.rows(words.title, differences);
  const act = async (): Promise<string> => {
    const taken = differences.filter(({ name }) => list.accepts(name));
    if (taken.length === 0) return "Nothing is marked, so nothing was changed.";
    const said = await take(taken);
    close();
    return said;
  };
  return [
    ...(differences.length === 0 ? [make("p", {}, words.none)] : rows),
    ...told("Left as it is", left),
    make(
      "div",
      { class: "actions" },
      differences.length > 0 && button(words.take, () => desk.attempt(act), { class: "main" }),
      button(differences.length > 0 ? words.leave : "Close", close),
    ),
  ];
}
