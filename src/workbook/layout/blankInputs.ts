import { cellAddress, type Ref } from "./address";
import type { CheckSpec } from "./job";
import type { Page } from "./page";

/** Rows of an input that are looked through for what is no number. */
const LONGEST_SEARCHED = 50;

/** What the check is called, before the name of the sheet. */
const BLANK = "Inputs still blank on ";

/** An input, and the formula of how many of its cells are not as they must be. */
interface Counted {
  readonly label: string;
  readonly count: string;
}

/** The check of a sheet's inputs: none that the job needs is blank, and none holds something else than the number it asks for. */
export function blankInputs(page: Page): CheckSpec[] {
  const [first] = page.required;
  if (!first) return [];
  if (page.job.hasFacts) return [factsToFill(page, first.ref)];
  const blank = page.required.map(({ label, ref }) => ({
    label,
    count: `COUNTBLANK(${ref.cell(1).address.replace(`${page.name}!`, "")})`,
  }));
  const wrong = noNumbers(page);
  const [blanks, wrongs] = [sumOf(blank), sumOf(wrong)];
  return [
    {
      label: `${BLANK}${page.name}`,
      value: `${blanks}+${wrongs}`,
      limit: 0,
      cure: "Fill in what is marked and still blank.",
      cureNow:
        `IF(${wrongs}>0,"No number in: "&${firstOf(wrong)}&". Type one, or use =RILL.QTY.",` +
        `"Fill in: "&${firstOf(blank)}&IF(${blanks}>1," and "&(${blanks}-1)&" more.","."))`,
      fix: first.ref.name ?? first.ref.address.replace(/\$/g, ""),
      kind: "count",
    },
  ];
}

/** The same where the sheet of facts knows of every one how it stands: needed and unknown, or typed wrong. */
function factsToFill({ name }: Page, first: Ref): CheckSpec {
  // The sheet's heading is its name, so that the same formula serves every sheet.
  const here = `$A$1&": *"`;
  const sheet = `MID([label],${BLANK.length + 1},99)`;
  const there = `MATCH(${sheet}&": *",FactMissing,0)`;
  const count = `COUNTIF(FactMissing,${here})`;
  const named = `MID(INDEX(FactMissing,MATCH(${here},FactMissing,0)),LEN($A$1)+3,99)`;
  return {
    label: `${BLANK}${name}`,
    value: count,
    limit: 0,
    cure: "Fill in what is marked and still blank.",
    cureNow: `"See: "&${named}&IF([value]>1," and "&([value]-1)&" more.",".")`,
    fix: first.name ?? first.address.replace(/\$/g, ""),
    calledNow: `IFERROR(INDEX(FactMissing,${there}),${sheet}&": all filled in")`,
    fixNow: `IFERROR(INDEX(FactPlaces,${there}),${sheet}&"!A1")`,
    kind: "count",
  };
}

/**
 * Cells with something else where a number belongs: what is pasted is not held to the rules of a cell, and sums would pass
 * over a text without a word. Tables that may grow are too long to look through; their readers do.
 */
function noNumbers({ sheet }: Page): Counted[] {
  return sheet.validations.flatMap(({ kind, area, title }) => {
    const { top, left, bottom, right } = area;
    if (kind === "list" || kind === "text" || bottom - top >= LONGEST_SEARCHED) return [];
    const cells = `${cellAddress(top, left)}:${cellAddress(bottom, right)}`;
    const all = (bottom - top + 1) * (right - left + 1);
    return [{ label: title, count: `${all}-COUNTBLANK(${cells})-COUNT(${cells})` }];
  });
}

function sumOf(inputs: readonly Counted[]): string {
  return inputs.map(({ count }) => count).join("+") || "0";
}

/** The label of the first input that is not as it must be. */
function firstOf(inputs: readonly Counted[]): string {
  return inputs.reduceRight((rest, { label, count }) => `IF(${count}>0,"${label}",${rest})`, '""');
}
