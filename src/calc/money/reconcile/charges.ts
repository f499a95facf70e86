import { CHARGE_WORDS, FOLLOWING_WORDS, LEADING_WORDS, type ChargeKind } from "../../tables/charges";
import { codeKey } from "./codes";

const followers: ReadonlySet<string> = new Set(FOLLOWING_WORDS);
const leaders: ReadonlySet<string> = new Set(LEADING_WORDS);
const charges = CHARGE_WORDS.flatMap(({ kind, words, ...rules }) =>
  words.map((word) => ({ kind, words: word.split(" "), whateverFollows: "whateverFollows" in rules })),
);

/**
 * Whether an item is freight, tax or a deposit rather than goods. The charge must be what the name is about: its last
 * word, or followed by what it is for ("freight to site"). Carriage bolts and a freight elevator are goods.
 */
export function chargeKind(item: string): ChargeKind | undefined {
  const text = codeKey(item);
  // Most items are codes of goods; only a few pay for the closer look.
  if (!MAYBE.test(text)) return undefined;
  const words = text
    .replace(/\(.*?\)/g, " ")
    .split(/[^a-z]+/)
    .filter(Boolean);
  return charges.find((charge) => isAbout(words, charge))?.kind;
}

const MAYBE = new RegExp(charges.map(({ words }) => words.join("[^a-z]+")).join("|"));

function isAbout(words: readonly string[], charge: (typeof charges)[number]): boolean {
  const at = words.findIndex((_, start) => charge.words.every((word, index) => words[start + index] === word));
  if (at < 0 || (at > 0 && leaders.has(charge.words[0] ?? ""))) return false;
  const next = words[at + charge.words.length];
  return next === undefined || charge.whateverFollows || followers.has(next);
}
