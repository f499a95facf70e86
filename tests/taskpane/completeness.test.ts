import { expect, it } from "vitest";
import { COMPLETENESS_PLACES, readCompleteness } from "../../src/taskpane/completeness";
import { assemble } from "../../src/workbook/assemble";
import { sheets } from "../../src/workbook/sheets";

const shown = (...texts: string[]): string[][][] => texts.map((text) => [[text]]);

/** The facts' places, and what those are called that need a person. */
const facts = [
  [["Site!B18"], ["Site!B19"]],
  [[""], ["Site: Run"]],
];

it("counts the facts by how far to trust them, and leads to the next cell in plain words", () => {
  expect(readCompleteness([...shown("43", "0", "70", "18", "2", "1", "Site!B19"), ...facts])).toEqual({
    said: "Facts: 43 yours, 70 assumed, 18 invented, 2 unknown, 1 wrong.",
    anyWrong: true,
    next: { place: "Site!B19", called: "Site: Run" },
  });
  expect(readCompleteness([...shown("120", "31", "0", "0", "0", "0", ""), ...facts])).toEqual({
    said: "Facts: 120 yours, 31 your company's.",
    anyWrong: false,
    next: undefined,
  });
});

it("says nothing of a workbook that has no facts", () => {
  expect(readCompleteness([...shown("43"), undefined])).toBeUndefined();
});

it("reads names that every workbook has", () => {
  const names = assemble(sheets, "SI", "blank").names.map(({ name }) => name);
  expect(names).toEqual(expect.arrayContaining([...COMPLETENESS_PLACES]));
});
