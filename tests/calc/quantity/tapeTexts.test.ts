import { describe, expect, it } from "vitest";
import { readQuantity } from "../../../src/calc/quantity/readQuantity";
import { TAPE_TEXTS } from "./tapeTexts";

const CELLS = [
  ["feet", "ft"],
  ["meters", "m"],
] as const;

describe.each(CELLS)("what tapes say, in a cell of %s", (key, unit) => {
  const meant = TAPE_TEXTS.flatMap(({ text, [key]: length }) =>
    length === undefined ? [] : [[text, length] as const],
  );
  it.each(meant)("%s", (text, length) => {
    expect(readQuantity(text, unit)).toBeCloseTo(length, 9);
  });

  const refused = TAPE_TEXTS.filter((row) => row[key] === undefined);
  it.each(refused.map(({ text, refused: holds = [] }) => [text, holds] as const))("refuses %s", (text, holds) => {
    const sentence = refusalOf(text, unit);
    expect(sentence).toContain(`"${text}"`);
    expect(sentence).toMatch(/^run /);
    holds.forEach((words) => expect(sentence).toContain(words));
    // Each way to read it that is offered must be one, and lead to the number beside it.
    for (const [, reading = "", value] of sentence.matchAll(/(?:mean|or) ([^()]+) \((-?[\d.]+) (?:ft|m)\)/g)) {
      expect(readQuantity(reading, unit), reading).toBeCloseTo(Number(value), 1);
    }
  });
});

describe("the table itself", () => {
  it("says of every text what it means in both cells, or how it is refused", () => {
    for (const { text, feet, meters, refused } of TAPE_TEXTS) {
      expect(refused !== undefined || (feet !== undefined && meters !== undefined), text).toBe(true);
    }
    expect(new Set(TAPE_TEXTS.map(({ text }) => text)).size).toBe(TAPE_TEXTS.length);
    expect(TAPE_TEXTS.length).toBeGreaterThanOrEqual(60);
  });
});

function refusalOf(text: string, unit: string): string {
  try {
    return `read as ${readQuantity(text, unit, "run")} ${unit}`;
  } catch (error) {
    return (error as Error).message;
  }
}
