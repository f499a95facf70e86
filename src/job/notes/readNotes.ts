import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { tape } from "../draft/words";
import { FACTS, blankJob, type FactKey, type Job } from "../facts";
import { fromSi, inSystem, toSi, unitOf } from "../facts/units";
import { QUANTITY, quantityFor } from "./quantity";
import { FILLERS, MEASURED, NAMED, OPEN, type MeasuredWord } from "./words";

/** A fact that was understood. */
export interface Understood {
  readonly fact: FactKey;
  readonly called: string;
  /** The words it was read from. */
  readonly said: string;
  /** SI, or a word. */
  readonly value: number | string;
  /** How it was understood, for a person: "34 in". */
  readonly shown: string;
  readonly remark: string;
}

export interface NotesRead {
  readonly understood: readonly Understood[];
  /** What was said and not understood, and why. */
  readonly open: readonly { readonly said: string; readonly why: string }[];
  readonly job: Job;
}

type Open = NotesRead["open"][number];

/** Notes longer than this are no notes of a visit. */
const LONGEST = 4000;

/**
 * Reads what was noted on a visit, fact by fact: "falls 3'2, 14 ft long, 30 in lip, clay, gate 34". What was not said is
 * not guessed; what was not understood, was said twice, or was left open comes back with the reason.
 */
export function readNotes(notes: string, system: UnitSystem): NotesRead {
  const found: Understood[] = [];
  const open: Open[] = [];
  for (const part of partsOf(notes.slice(0, LONGEST))) readPart(part, system, found, open);
  if (notes.length > LONGEST) open.push({ said: notes.slice(LONGEST, LONGEST + 40), why: "the notes are too long" });
  const understood = withoutContradictions(found, open);
  const job: Record<string, unknown> = { ...blankJob(system) };
  for (const { fact, value } of understood) job[fact] = fact === "lips" ? [{ width: value }] : value;
  return { understood, open, job: job as unknown as Job };
}

/** A minus before a number, where no feet stand before it: 3'-2 is 38 in, but -2 may be a fall the other way. */
const MINUS = /(?<![\d'"′″’”½¼¾⅓⅔⅛⅜⅝⅞]\s*|\b(?:ft|feet|foot|in|yd)\.?\s*)[-−](?=\d)/i;

/** Parts that stand between commas, semicolons, ends of sentences and lines; a comma inside a number is none. */
function partsOf(notes: string): string[] {
  return notes
    .split(
      /[;\n\r]+|,(?!\d)|(?<!\d),|(?<!\b(?:ft|in|yd|approx))\.\s+(?=[A-Za-z])|(?<=[a-z]{3})\.\s+(?=\d)|\s+(?:and|with|but)\s+(?=\D*\d)|\s+[–—]\s+/,
    )
    .map((part) => part.trim())
    .filter((part) => part !== "");
}

function readPart(part: string, system: UnitSystem, found: Understood[], open: Open[]): void {
  const quantities = [...part.matchAll(QUANTITY)].map((match) => ({
    text: match[0].trim(),
    at: match.index + match[0].length / 2,
  }));
  if (OPEN.test(part)) {
    open.push({ said: part, why: "it was left open" });
    return;
  }
  if (MINUS.test(part)) {
    open.push({ said: part, why: "a minus stands before the number: write it without, if none is meant" });
    return;
  }
  let rest = part.replace(QUANTITY, (text) => " ".repeat(text.length));
  const count = /^\s*(\d{1,2})\s+(?:drops|steps|falls)\b/i.exec(part) ?? /\b(\d{1,2})\s+(?:drops|steps)\b/i.exec(part);
  if (count) {
    const dropCount = Number(count[1]);
    take({ fact: "dropCount", called: "drops", said: part, value: dropCount, shown: String(dropCount), remark: "" });
    const others = part.replace(count[0], " ").replace(FILLERS, " ").trim();
    if (others !== "") open.push({ said: others, why: `of "${part}" this was not understood` });
    return;
  }
  const measured: { word: MeasuredWord; at: number }[] = [];
  for (const word of MEASURED) {
    const match = new RegExp(word.words.source, "i").exec(rest);
    if (!match) continue;
    // Words that only a measure makes a fact of: a sheet or a flow without one is a way of speaking.
    if (quantities.length === 0 && (word.fact === "sheetWanted" || word.fact === "flowTyped")) continue;
    if (word.fact === "flowTyped" && !quantities.some(({ text }) => /g|l\/|m3/i.test(text))) continue;
    if (measured.length >= quantities.length && quantities.length > 0) break;
    measured.push({ word, at: match.index + match[0].length / 2 });
    rest = blank(rest, match.index, match[0].length);
  }
  let named = 0;
  for (const { fact, called, value, words } of NAMED) {
    const match = words.exec(rest);
    if (!match) continue;
    if (fact === "waterCharacter" && quantities.length > 0 && /clear/i.test(match[0])) continue;
    named++;
    rest = blank(rest, match.index, match[0].length);
    take({ fact, called, said: part, value, shown: value, remark: "" });
  }
  const [alone] = quantities;
  const flow = MEASURED.find(({ fact }) => fact === "flowTyped");
  // A flow needs no name: its unit says what it is.
  if (measured.length === 0 && alone && quantities.length === 1 && flow && /gp[hm]|l\/|m3\//i.test(alone.text)) {
    measured.push({ word: flow, at: 0 });
  }
  if (quantities.length !== measured.length) {
    const why =
      measured.length === 0
        ? `${quantities.map(({ text }) => text).join(" and ")}: of what?`
        : quantities.length === 0
          ? `${measured.map(({ word }) => word.called).join(" and ")}: how much?`
          : `${measured.map(({ word }) => word.called).join(" and ")}: which of ${quantities.map(({ text }) => text).join(" and ")}?`;
    open.push({ said: part, why });
    return;
  }
  for (const { word, text } of paired(measured, quantities)) {
    const read = quantityFor(text, word, system);
    if ("why" in read) {
      open.push({ said: part, why: read.why });
      continue;
    }
    const wrong = outOfRange(word.fact, read.value, system);
    if (wrong) open.push({ said: part, why: wrong });
    else
      take({
        ...word,
        said: part,
        value: read.value,
        shown: shownAs(word.fact, read.value, system),
        remark: read.remark,
      });
  }
  const unread = rest.replace(FILLERS, " ").replace(/\s+/g, " ").trim();
  if (measured.length === 0 && named === 0) open.push({ said: part, why: "it names no fact that is known here" });
  else if (unread !== "") open.push({ said: unread, why: `of "${part}" this was not understood` });

  function take({ fact, called, said, value, shown, remark }: Understood): void {
    found.push({ fact, called, said, value, shown, remark });
  }
}

function blank(text: string, at: number, length: number): string {
  return text.slice(0, at) + " ".repeat(length) + text.slice(at + length);
}

/** Each word with the measure that stands nearest to it. */
function paired(
  words: readonly { readonly word: MeasuredWord; readonly at: number }[],
  quantities: readonly { readonly text: string; readonly at: number }[],
): { word: MeasuredWord; text: string }[] {
  const inOrder = [...words].sort((a, b) => a.at - b.at);
  return inOrder.map(({ word }, index) => ({ word, text: quantities[index]?.text ?? "" }));
}

function outOfRange(key: FactKey, value: number, system: UnitSystem): string | undefined {
  const held = FACTS[key];
  const fact = key === "lips" ? FACTS.lips.columns.width : held;
  if (fact.type !== "number") return undefined;
  const [least, most] = inSystem(fact.range, system);
  if (value >= toSi(fact.kind, least, system) && value <= toSi(fact.kind, most, system)) return undefined;
  return `it must be ${least} to ${most} ${unitOf(fact.kind, system)}`;
}

function shownAs(key: FactKey, value: number, system: UnitSystem): string {
  const fact = key === "lips" ? FACTS.lips.columns.width : FACTS[key];
  if (fact.type !== "number") return String(value);
  if (fact.kind === "length" || fact.kind === "size") return tape(value, system);
  return `${Number(fromSi(fact.kind, value, system).toPrecision(6))} ${unitOf(fact.kind, system)}`.trim();
}

/** A fact that was said twice in different ways is not known: both sayings come back. */
function withoutContradictions(found: readonly Understood[], open: Open[]): Understood[] {
  const kept: Understood[] = [];
  for (const fact of new Set(found.map((one) => one.fact))) {
    const sayings = found.filter((one) => one.fact === fact);
    const [first] = sayings;
    const same = sayings.every(({ value }) => value === first?.value);
    if (first && same) kept.push(first);
    else {
      const both = sayings.map(({ shown }) => shown).join(" and ");
      open.push({
        said: sayings.map(({ said }) => said).join("; "),
        why: `${first?.called ?? ""} was said as ${both}: which?`,
      });
    }
  }
  return kept;
}
