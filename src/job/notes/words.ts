import { SOILS } from "../../calc/tables/soils";
import { ROCKS } from "../../calc/tables/rocks";
import type { FactKey } from "../facts";
import type { CHARACTERS } from "../facts/start";

/** A fact that notes give as a measure: the words that name it, and how large it can be meant to be, in m or m³/s. */
export interface MeasuredWord {
  readonly fact: FactKey;
  readonly called: string;
  readonly words: RegExp;
  readonly measure: "length" | "flow";
  /** Sizes that a person could mean; they tell feet from inches where no unit was written. */
  readonly plausible: readonly [least: number, most: number];
}

const length = (fact: FactKey, called: string, words: RegExp, plausible: MeasuredWord["plausible"]): MeasuredWord => ({
  fact,
  called,
  words,
  measure: "length",
  plausible,
});

/**
 * In the order in which they are looked for: what is said with more words comes first. Measures are blanked by then: "over"
 * before one, as in "falls 3 ft over 16 ft", names the run.
 */
export const MEASURED: readonly MeasuredWord[] = [
  length("groundwaterDepth", "groundwater", /\b(?:ground ?water|water table)\b/, [0.3, 15]),
  length("bankHeight", "banks", /\bbanks?\b/, [0.08, 0.9]),
  length("bedWidth", "bed", /\b(?:stream ?bed|bed|stream(?= \S+ (?:\S+ )?wide))\b/, [0.3, 6]),
  length("trenchLength", "trench", /\btrench\b/, [1, 200]),
  length("sheetWanted", "sheet", /\b(?:sheet|water over the lip)\b/, [0.005, 0.06]),
  length("lips", "lip", /\b(?:top lip|lip|weir|spillway|spill ?box)\b/, [0.15, 3]),
  length("accessWidth", "way in", /\b(?:gate(?:way)?|way in|access|opening|side ?yard|passage|alley)\b/, [0.5, 6]),
  length("run", "run", /\b(?:run|runs|long|length|over(?=\s{3}))\b/, [1, 100]),
  length("fallTyped", "fall", /\b(?:fall|falls|falling|drop|drops|rise|rises|high|height|tall)\b/, [0.15, 8]),
  {
    fact: "flowTyped",
    called: "flow",
    words: /\b(?:flow|pump(?:ing)?|water)\b/,
    measure: "flow",
    plausible: [1e-5, 0.2],
  },
];

const spelled = (name: string): string => name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&").replace(/ /g, "\\s+");
const oneOf = (names: readonly string[]): RegExp =>
  new RegExp(
    `\\b(?:${[...names]
      .sort((a, b) => b.length - a.length)
      .map(spelled)
      .join("|")})\\b`,
    "i",
  );

/** A fact that notes give by a word. */
export interface NamedWord {
  readonly fact: FactKey;
  readonly called: string;
  readonly value: string;
  readonly words: RegExp;
}

const CHARACTER_WORDS: readonly (readonly [(typeof CHARACTERS)[number], RegExp])[] = [
  ["trickle", /\b(?:trickl\w*|quiet|soft|gentle)\b/i],
  ["clear sheet", /\b(?:clear(?: sheet)?|sheet of water|glassy)\b/i],
  ["loud", /\b(?:loud|roar\w*|rushing|noisy)\b/i],
];

/** Gravel is both a soil and a stone: as soil only where it is called sandy. */
const notSoils = new Set(["gravel", "rock", "earth", "soil"]);

export const NAMED: readonly NamedWord[] = [
  ...CHARACTER_WORDS.map(([value, words]): NamedWord => ({ fact: "waterCharacter", called: "water", value, words })),
  ...SOILS.map(({ name, also }): NamedWord => ({
    fact: "soil",
    called: "soil",
    value: name,
    words: oneOf([name, ...also].filter((word) => !notSoils.has(word))),
  })),
  ...ROCKS.map(({ name }): NamedWord => ({ fact: "rock", called: "rock", value: name, words: oneOf([name]) })),
];

/** Words that say nothing of their own. */
export const FILLERS =
  /\b(?:about|approx\w*|around|roughly|circa|ca|the|a|an|is|are|it|of|to|at|has|have|with|and|over|by|wide|width|deep|depth|clear|soil|ground|stone|stones|rock|rocks|dig|digging|all|some|heavy|good|nice|water|top|main|back|garden|yard|from|grade|in|on|will|be|total|overall|shot|taped|measured|below|down|stands?|feature|want|wants|they|client|sound|should|i|we|got|s|thru|through|side|high|both sides|each side)\b|[~≈=:.!()/+±-]/gi;

/** Words that say that something is not known. */
export const OPEN =
  /\b(?:not?|un(?:known|clear|measured)|don'?t|didn'?t|do not|did not|forgot|tbd|ask|check|maybe|perhaps|guess)\b|\?/i;
