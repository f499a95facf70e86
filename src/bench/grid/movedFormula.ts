import { LexerTreeBuilder } from "@univerjs/engine-formula";

/** The kind of a formula's part that names cells, as the library numbers it. */
const REFERENCE = 4;
const reader = new LexerTreeBuilder();

/** Lets the library move formulas with their texts whole: copied ones, those it fills down, and those that a file holds once for many cells. */
export function keepTextsOfMoved(): void {
  const move = LexerTreeBuilder.prototype.moveFormulaRefOffset;
  LexerTreeBuilder.prototype.moveFormulaRefOffset = function (formula, ...how) {
    return textsAside(formula, (bare) => move.call(this, bare, ...how));
  };
}

/**
 * A formula as it reads when it is copied so many rows down and columns across: relative references go along, absolute
 * ones stay, and those that would leave the sheet become #REF!.
 */
export function copiedFormula(formula: string, down: number, across: number): string {
  return reader.moveFormulaRefOffset(formula, across, down);
}

/** A formula as it reads when it is cut from a sheet and put on another: it goes on reading the cells that it read. */
export function cutFormula(formula: string, from: string): string {
  const sheet = `'${from.replaceAll("'", "''")}'!`;
  return textsAside(formula, (bare) => {
    const parts = (reader.sequenceNodesBuilder(bare) ?? []).map((part) => {
      if (typeof part === "string") return part;
      return part.nodeType === REFERENCE && !part.token.includes("!") ? sheet + part.token : part.token;
    });
    return `=${parts.join("")}`;
  });
}

/** Rewrites a formula with its texts put aside: the library loses a quotation mark of each "" within them. */
function textsAside(formula: string, rewrite: (bare: string) => string): string {
  const texts: string[] = [];
  const bare = formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, (quoted) =>
    quoted.startsWith('"') ? `"${texts.push(quoted) - 1}"` : quoted,
  );
  return rewrite(bare).replace(/'(?:[^']|'')*'|"(\d+)"/g, (quoted, index?: string) =>
    index === undefined ? quoted : (texts[Number(index)] ?? quoted),
  );
}
