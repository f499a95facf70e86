import { textIn, type PaperCells } from "./cells";

/** The steps of the sheet Crew, with their numbers. */
export function stepsOf(cells: PaperCells): string[] {
  return cells
    .sheet("Crew")
    .map((row) => textIn(row, 0))
    .filter((text) => /^\d+\. /.test(text))
    .map((text) => text.replace(/^\d+\. +/, ""));
}

/** Labels and texts of a part of the sheet Crew, those that say anything. */
export function linesUnder(cells: PaperCells, title: string): [string, string][] {
  const sheet = cells.sheet("Crew");
  for (const [index, row] of sheet.entries()) {
    const column = row.findIndex((value) => value === title);
    if (column < 0) continue;
    const below = sheet.slice(index + 1);
    const end = below.findIndex((line) => textIn(line, column) === "");
    return below
      .slice(0, end < 0 ? undefined : end)
      .map((line): [string, string] => [textIn(line, column), textIn(line, column + 1)])
      .filter(([, text]) => text !== "");
  }
  return [];
}
