import type { NameModel, SheetModel, Validation } from "../model";
import type { Job } from "./job";
import { Page } from "./page";

/** Characters of choices that a file can hold inside a validation. */
const LONGEST = 250;

/** Moves choices that a validation cannot hold itself to a hidden sheet of lists, which it adds only when there are any. */
export function choiceLists(
  job: Job,
  sheets: readonly SheetModel[],
): { sheet: SheetModel; names: readonly NameModel[] } | undefined {
  const page = new Page("Lists", job);
  page.sheet.widths.splice(0);
  const known = new Map<string, string>();
  for (const { validations } of sheets) {
    validations.forEach((validation, index) => {
      if (!tooLong(validation)) return;
      const choices = validation.choices as readonly string[];
      const key = choices.join("\n");
      const name = known.get(key) ?? addList(page, validation.title, choices);
      known.set(key, name);
      validations[index] = { ...validation, choices: `=${name}` };
    });
  }
  return known.size === 0 ? undefined : { sheet: { ...page.sheet, hidden: true }, names: page.names };
}

function tooLong({ choices }: Validation): boolean {
  return (
    Array.isArray(choices) && (choices.join(",").length > LONGEST || choices.some((one: string) => /[",]/.test(one)))
  );
}

function addList(page: Page, title: string, choices: readonly string[]): string {
  const column = page.sheet.widths.push(Math.max(title.length, ...choices.map((one) => one.length)) + 3);
  if (column === 1) page.put(1, 1, { value: "Lists to choose from", style: "title" });
  page.put(3, column, { value: title, style: "headText" });
  choices.forEach((value, index) => page.put(4 + index, column, { value, style: "resultText" }));
  const name = `List${title.replace(/[^A-Za-z]+(.)?/g, (_, next?: string) => next?.toUpperCase() ?? "")}`;
  const free = page.job.names.has(name) ? `${name}${column}x` : name;
  page.define(free, 4, column, 3 + choices.length, column);
  return free;
}
