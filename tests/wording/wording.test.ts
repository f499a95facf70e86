import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { assemble } from "../../src/workbook/assemble";
import { sheets } from "../../src/workbook/sheets";
import { NUMBERS, AMERICAN, SPELLINGS, TRANSLATED } from "./words";
import { paragraphsOf, shownTexts, textsIn, textsOfFile, type UserText } from "./texts";

/** What says the same to users in feet and in meters: American. */
const TEXTS: Readonly<Record<string, () => UserText[]>> = {
  "the help": () => textsIn("src/help"),
  "the pane": () => [...textsIn("src/taskpane"), ...textsIn("src/bench")],
  "the command line": () => textsIn("src/cli"),
  "the papers": () => textsIn("src/papers"),
  "the drawings": () => textsIn("src/drawing"),
  "the README": () => paragraphsOf("README.md"),
  "the release": () => textsOfFile("src/site/release.ts"),
  "the functions": () => functionTexts(),
  "the errors": () => textsIn("src/calc"),
};

/** The name of a file of the site. */
const FILE_NAMES = /licences\.txt/g;

/** Words that are spelled in two ways: in America, and abroad. */
const HOME = SPELLINGS.map(([home]) => new RegExp(`\\b${home}\\b`, "gi"));
const ABROAD = SPELLINGS.map(([, abroad]) => new RegExp(`\\b${abroad}\\b`, "gi"));

describe.each(Object.keys(TEXTS))("%s", (name) => {
  it("is in American English, without words that read translated", () => {
    const faults = (TEXTS[name]?.() ?? []).flatMap(({ place, text, abroad }) =>
      faultsOf(text, abroad).map((fault) => `${place}: ${fault}`),
    );
    expect(faults).toEqual([]);
  });
});

describe("the sheets", () => {
  it("have no words that read translated, and no fault of American English in US", () => {
    const faults = textsIn("src/workbook").flatMap(({ place, text, abroad }) =>
      faultsOf(text, abroad).map((fault) => `${place}: ${fault}`),
    );
    expect(faults).toEqual([]);
  });
});

describe.each(["US", "SI"] as const)("the workbook as it is laid out, %s", (system) => {
  it("spells as its readers do, whatever the words are made of", () => {
    const [wrong, right] = system === "US" ? [ABROAD, HOME] : [HOME, ABROAD];
    const model = assemble(sheets, system, "demo");
    const faults = shownTexts(model).flatMap(({ place, text }) => [
      ...wrong.flatMap((pattern, index) =>
        [...text.matchAll(pattern)].map(([found]) => `${place}: ${found}: ${right[index]}`),
      ),
      ...NUMBERS.flatMap(({ wrong: number, right: rule }) =>
        [...text.matchAll(number)].map(([found]) => `${place}: ${found}: ${rule}`),
      ),
    ]);
    expect(faults).toEqual([]);
  });
});

describe("the lists of words", () => {
  it("find what they are made to find, and pass over what only looks like it", () => {
    expect(faultsOf("The colour hangs on the litres, 10 % of them.")).toEqual([
      "colour: color",
      "litres: liter",
      "hangs on: depends on",
      "0 %: no space before %",
    ]);
    expect(faultsOf("Set hours on Labour.")).toEqual(["Labour: labor"]);
    expect(faultsOf("Hours on Hours; a parameter, recommended; 10%; diameter; the change hangs.")).toEqual([]);
  });
});

function faultsOf(text: string, abroad = false): string[] {
  const prose = text.replace(FILE_NAMES, "");
  const words = Object.entries({ ...(abroad ? {} : AMERICAN), ...TRANSLATED }).flatMap(([word, right]) => {
    const pattern = new RegExp(`\\b${word.replace("…", "[a-z]*")}\\b`, "gi");
    return [...prose.matchAll(pattern)].map(([found]) => `${found}: ${right}`);
  });
  const numbers = NUMBERS.flatMap(({ wrong, right }) =>
    [...prose.matchAll(wrong)].map(([found]) => `${found}: ${right}`),
  );
  return [...words, ...numbers];
}

/** What Excel and the help show of every function. */
function functionTexts(): UserText[] {
  return catalogue.flatMap((declaration) => {
    const { name, summary, formula, limits, args } = declaration;
    const described = Object.values(args).map(({ about }) => about);
    return [summary, formula, limits, ...described].map((text) => ({
      place: `RILL.${name}`,
      text: String(text ?? ""),
    }));
  });
}
