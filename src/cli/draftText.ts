import type { Draft } from "../job/draft/draft";
import { about, money, tape } from "../job/draft/words";
import { FACTS, type FactKey, type Job } from "../job/facts";
import type { HowComplete } from "../job/facts/complete";
import type { NumberFact } from "../job/facts/fact";
import { fromSi, unitOf } from "../job/facts/units";
import type { Understood } from "../job/notes/readNotes";
import type { PriceRange } from "../job/range/range";
import { remarksOf } from "../job/range/remarks";
import type { FactState } from "../job/facts/standing";
import { known } from "../job/derived";

/** A draft with what it was made from, ready to be shown. */
export interface Drafted {
  readonly draft: Draft;
  readonly range: PriceRange | undefined;
  readonly typed: Job;
  readonly understood: readonly Understood[];
  /** Sentences on what could not be used. */
  readonly problems: readonly string[];
  /** The prices were made up for this tool. */
  readonly invented: readonly string[];
  readonly complete: HowComplete;
}

/** Facts whose reasons are the design; the others are how it is calculated. */
const SHOWN: readonly FactKey[] = [
  "fallTyped",
  "run",
  "dropCount",
  "lips",
  "sheetWanted",
  "bedWidth",
  "bankHeight",
  "pools",
  "chosenPump",
  "pumpCount",
  "route",
  "basinLength",
  "basinWaterDepth",
  "rolls",
  "boulderSizes",
  "lipStonesPerDrop",
  "machineWidth",
  "difficulty",
  "soil",
  "tasks",
  "trenchLength",
  "bermGround",
  "prices",
];

/** How many facts to measure next are named. */
const NEXT = 5;

/** The draft as a page of text. */
export function draftText(drafted: Drafted): string {
  const { draft, range, typed, understood, problems, invented } = drafted;
  const { system } = typed;
  const blocks: (string | string[])[] = [
    `DRAFT (${system === "US" ? "US units" : "metric units"}): assumed where you said nothing`,
  ];
  if (understood.length > 0) {
    const lines = understood.map(({ called, shown, remark }) => `  ${called}: ${shown}${remark && ` (${remark})`}`);
    blocks.push(["Understood from your notes", ...lines]);
  }
  if (problems.length > 0) blocks.push(["Please check", ...problems.map((line) => `  ${line}`)]);
  blocks.push([
    "Price before tax",
    `  ${priceLine(drafted)}`,
    ...(range ? remarksOf(range).map((remark) => `  ${remark}`) : []),
    ...(invented.length > 0 ? [`  Invented in the book: ${invented.join(", ")}. Sign nothing on them.`] : []),
  ]);
  blocks.push(["How complete", `  ${completeLine(drafted.complete)}`]);
  blocks.push(["At a glance", ...glance(draft, system).map(([label, value]) => `  ${label.padEnd(8)}${value}`)]);
  const reasons = SHOWN.flatMap((key) => {
    const fact = draft.facts.get(key);
    return fact ? [`  ${label(key)}: ${value(key, draft.job, system)}${fact.reason}`] : [];
  });
  blocks.push(["Assumed, and why", ...reasons]);
  const failing = draft.shortfalls.filter(({ ofDesign }) => ofDesign);
  blocks.push(
    failing.length === 0
      ? "The draft passes every design check."
      : [
          "Checks that this draft fails",
          ...failing.map(({ verdict, sheet, label: name, help }) => `  ${verdict} ${name} (${sheet}): ${help}`),
        ],
  );
  const waiting = draft.shortfalls.filter(({ ofDesign }) => !ofDesign);
  if (waiting.length > 0)
    blocks.push(["Still to come before a quote", ...waiting.map(({ sheet, label: name }) => `  ${name} (${sheet})`)]);
  if (range && range.next.length > 0)
    blocks.push(["Measure next", ...range.next.slice(0, NEXT).map((one) => `  ${nextLine(one, draft.job.currency)}`)]);
  return blocks.map((block) => (typeof block === "string" ? block : block.join("\n"))).join("\n\n");
}

function priceLine({ draft, range }: Drafted): string {
  if (!range) return "no price: the book lacks what the design needs";
  const { currency } = draft.job;
  const [low, likely, high] = [range.low, range.likely, range.high].map((amount) => money(amount, currency));
  return `${likely ?? ""}, four times in five between ${low ?? ""} and ${high ?? ""}`;
}

/** In the words of the sheet that lists every fact. */
const STATE_WORDS: readonly (readonly [state: FactState, words: string])[] = [
  ["yours", "typed for this job"],
  ["company", "your company's"],
  ["assumed", "assumed"],
  ["invented", "invented"],
  ["unknown", "needed and unknown"],
  ["wrong", "wrong"],
];

function completeLine(complete: HowComplete): string {
  const counts = STATE_WORDS.flatMap(([state, words]) =>
    complete[state] === 0 ? [] : [`${complete[state]} ${words}`],
  );
  return `Facts: ${counts.join(", ")}.`;
}

function nextLine(
  { question, share, atLow, atHigh }: PriceRange["next"][number],
  currency: string | undefined,
): string {
  const percent = Math.round(100 * share);
  const [low, high] = [atLow, atHigh].map((price) => (price === undefined ? "no price" : money(price, currency)));
  return `${question} ${percent}% of the range: ${low ?? ""} to ${high ?? ""}`;
}

/** The main numbers of a draft. */
export function glance({ job, state }: Draft, system: Job["system"]): [string, string][] {
  const { water, pump, basin, stone, labor } = state;
  const say = (amount: number | undefined, words: (amount: number) => string): string =>
    amount === undefined ? "not known" : words(amount);
  const count = job.pumpCount ?? 1;
  const side = (metres: number | undefined): string => say(metres, (value) => tape(value, system));
  return [
    [
      "Flow",
      `${say(known(water.designFlow), (flow) => about("flow", flow, system))} wanted, ${say(known(pump.deliveredFlow), (flow) => about("flow", flow, system))} delivered`,
    ],
    ["Pump", `${count > 1 ? `${count} of ` : ""}${job.chosenPump ?? "none in the book"}`],
    [
      "Basin",
      `${side(job.basinLength)} x ${side(job.basinWidth)}, ${side(job.basinWaterDepth)} of water, holds ${say(known(basin.hold), (held) => about("water", held, system))}`,
    ],
    [
      "Stone",
      `${say(known(stone.boulders), (weight) => about("load", weight, system))} of boulders, ${say(known(stone.gravel), (weight) => about("load", weight, system))} of gravel`,
    ],
    [
      "Days",
      say(known(labor.workingDays), (days) => `${days.toFixed(1)} with a crew of ${known(labor.crewSize) ?? 0}`),
    ],
  ];
}

function label(key: FactKey): string {
  return FACTS[key].question.replace(/\?$/, "?");
}

/** A drafted number in front of its reason; of words and tables the reason says it. */
function value(key: FactKey, job: Job, system: Job["system"]): string {
  const held = job[key];
  const fact = FACTS[key];
  if (fact.type !== "number" || typeof held !== "number") return "";
  return `${plain(fact, held, system)}. `;
}

function plain({ kind }: NumberFact, held: number, system: Job["system"]): string {
  if (kind === "length" || kind === "size") return tape(held, system);
  const shown = Number(fromSi(kind, held, system).toPrecision(4));
  return `${shown}${unitOf(kind, system) && ` ${unitOf(kind, system)}`}`;
}

/** The draft as JSON: numbers in SI. */
export function draftJson({ draft, range, typed, understood, problems, invented, complete }: Drafted): object {
  return {
    units: typed.system,
    answers: said(typed),
    understood,
    problems,
    invented,
    price: range ? { ...range, remarks: remarksOf(range) } : null,
    complete,
    glance: Object.fromEntries(glance(draft, typed.system)),
    facts: Object.fromEntries(
      [...draft.facts].map(([key, { value: assumed, low, high, reason, source }]) => [
        key,
        { value: assumed, low, high, reason, source },
      ]),
    ),
    shortfalls: draft.shortfalls,
  };
}

function said(job: Job): object {
  const known = Object.entries(job).filter(
    ([key, held]) => key !== "system" && held !== undefined && !(Array.isArray(held) && held.length === 0),
  );
  return Object.fromEntries(known);
}
