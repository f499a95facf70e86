import type { Validation } from "../model";
import { unitOf } from "./formats";
import type { InputSpec } from "./inputSpec";
import type { Page } from "./page";

/** The rule and the message of an input, for one cell or a column of them. */
export function validationFor(
  page: Page,
  area: Validation["area"],
  spec: Pick<InputSpec, "label" | "kind" | "unit" | "min" | "max" | "whole" | "choices" | "message">,
): Validation {
  const { job } = page;
  const min = spec.min === undefined ? undefined : job.pick(spec.min);
  const max = spec.max === undefined ? undefined : job.pick(spec.max);
  const unitText = spec.unit !== undefined ? job.pick(spec.unit) : unitOf(spec.kind, job.system);
  const shownUnit = unitText.startsWith("=") ? "money" : unitText;
  const common = { area, title: shortened(spec.label) };
  const message = cut(job.pick(spec.message));
  if (spec.choices !== undefined) {
    const choices = typeof spec.choices === "string" ? spec.choices : job.pick(spec.choices);
    return { ...common, kind: "list", choices, message };
  }
  if (spec.kind === "text") return { ...common, kind: "text", max: max ?? 200, message };
  if (spec.kind === "date") return { ...common, kind: "date", min: min ?? 36526, max: max ?? 73050, message };
  if (min === undefined || max === undefined)
    throw new Error(`${page.name}: the input "${spec.label}" needs min and max`);
  const factor = spec.kind === "share" ? 100 : 1;
  const range = `${[shownUnit, `${plainNumber(min * factor)} to ${plainNumber(max * factor)}`].filter(Boolean).join(", ")}.`;
  return {
    ...common,
    kind: spec.whole || spec.kind === "count" ? "whole" : "decimal",
    min,
    max,
    message: cut(`${message} In ${range}`.replace("In 0", "0").replace(/In (?=[\d-])/, "From ")),
  };
}

/** Letters that the title of a message may have in a file. */
const LONGEST_TITLE = 32;

/** A label as the title of a message, cut between words. */
function shortened(label: string): string {
  if (label.length <= LONGEST_TITLE) return label;
  const words = label.slice(0, LONGEST_TITLE + 1);
  const end = words.lastIndexOf(" ");
  return (end > 0 ? words.slice(0, end) : label.slice(0, LONGEST_TITLE)).replace(/[\s,:;(-]+$/, "");
}

function plainNumber(value: number): string {
  return String(Number(value.toPrecision(12)));
}

/** The longest error text a file may hold. */
function cut(message: string): string {
  if (message.length > 225) throw new Error(`a message is longer than 225 characters: ${message}`);
  return message;
}
