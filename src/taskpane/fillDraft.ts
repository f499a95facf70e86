import { fromInside } from "../calc/quantity/measures";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import { missing } from "../calc/problem";
import { sectionDrawing } from "../drawing/section";
import { facts as factRows } from "../functions/job/arguments";
import { draftFor } from "../functions/job/drafting";
import type { CellValue, Change, Grid, Place } from "../host/port";
import { tape } from "../job/draft/words";
import type { Draft } from "../job/draft/draft";
import { FACTS, type FactKey } from "../job/facts";
import type { Fact } from "../job/facts/fact";
import { fromSi, unitOf } from "../job/facts/units";
import { SHIPPED_TABLES } from "../job/facts/usual";
import { known } from "../job/derived";
import { hasPlaces, type Names } from "../workbook/jobCells/places";
import { draftCells } from "../workbook/jobCells/typeDraft";

/** What the form reads of the workbook, in this order. */
export const FILL_PLACES = [
  "Units",
  "DraftWanted",
  "FactKeys",
  "FactStates",
  "FactsSaid",
  "RateTable",
  "PumpTable",
  "LipTable",
] as const satisfies readonly Place[];

/** A fact as the draft takes it, before it is written. */
export interface FilledFact {
  readonly sheet: string;
  readonly question: string;
  /** Empty where the reason says it all. */
  readonly shown: string;
  readonly reason: string;
}

export interface FilledDraft {
  readonly facts: readonly FilledFact[];
  readonly changes: readonly Change[];
  /** The section of the design as SVG; nothing where the draft has none. */
  readonly section: string | undefined;
}

/** Facts in these states are filled in: nobody has said anything of them. */
const OPEN = new Set(["unknown", "assumed"]);

/**
 * What the draft would write into the cells that nobody has filled in, and the section that it makes. Prices, wages and rates
 * stay the workbook's own.
 *
 * @param grids what the workbook holds at FILL_PLACES
 * @throws Problem where nothing was answered yet, or the workbook has no facts
 */
export function draftToFill(grids: readonly (Grid | undefined)[], names: Names): FilledDraft {
  const [units, wanted, keys, states, said, prices = [], pumps = [], lips] = grids;
  const system = String(units?.[0]?.[0] ?? "") as UnitSystem;
  if (!keys || !states || !said) throw missing("this workbook has no sheet of facts; start a job to get one");
  if (wanted?.[0]?.[0] !== "yes")
    throw missing("there is no draft: answer a question on Start, or fix what Start names");
  const rows: CellValue[][] = keys.map(([key = ""], row) => [key, said[row]?.[0] ?? ""]);
  const width = lips?.[0]?.[0];
  if (typeof width === "number") rows.push(["lip", width]);
  const stateOf = new Map(keys.map(([key], row) => [String(key), String(states[row]?.[0] ?? "")]));
  // Pumps that a draft put there are those of the book, less the ones that it passed over.
  const ownPumps = stateOf.get(FACTS.pumps.name) === "yours" ? pumps : [];
  const draft = draftFor({ facts: factRows.read(rows, "facts", system), values: [], prices, pumps: ownPumps }, system);
  const open = (Object.keys(FACTS) as FactKey[]).filter((key) => {
    const isDrafted = draft.facts.has(key) || (key === "lips" && draft.job.lips.length > 0);
    return (
      isDrafted &&
      !(key in SHIPPED_TABLES) &&
      OPEN.has(stateOf.get(FACTS[key].name) ?? "") &&
      hasPlaces(FACTS[key], names)
    );
  });
  const cells = draftCells(draft, open, { system, names });
  return {
    facts: open.map((key) => shownFact(key, draft, system)),
    changes: [...cells].flatMap(([place, value]) => (value === "" ? [] : [{ place, values: [[value]] }])),
    section: sectionOf(draft, system),
  };
}

function shownFact(key: FactKey, { job, facts }: Draft, system: UnitSystem): FilledFact {
  const fact: Fact = FACTS[key];
  const held: unknown = job[key];
  const number = fact.type === "number" && typeof held === "number" ? fact : undefined;
  const unit = number ? unitOf(number.kind, system) : "";
  const shown =
    number === undefined
      ? typeof held === "string"
        ? held
        : ""
      : number.kind === "length" || number.kind === "size"
        ? tape(held as number, system)
        : `${Number(fromSi(number.kind, held as number, system).toPrecision(4))}${unit && ` ${unit}`}`;
  return {
    sheet: fact.sheet,
    question: fact.question,
    shown,
    reason: facts.get(key)?.reason ?? "As answered on Start.",
  };
}

/** The drafted feature cut along its run. */
function sectionOf({ job, state }: Draft, system: UnitSystem): string | undefined {
  const length = (metres: number): number => fromInside("length", metres, system);
  const lengths = (all: readonly (number | undefined)[]): number[] =>
    all.flatMap((one) => (one === undefined ? [] : [length(one)]));
  const { basinLength, basinWaterDepth, rimBelowGrade = 0 } = job;
  const [drops, treads] = [lengths(state.water.drops), lengths(state.water.treads)];
  if (drops.length === 0 || drops.length !== treads.length || !basinLength || !basinWaterDepth) return undefined;
  return sectionDrawing({
    system,
    name: "the draft",
    drops,
    treads,
    basinLength: length(basinLength),
    basinDepth: length(basinWaterDepth),
    rimBelowGrade: length(rimBelowGrade),
    levelDrop: length(known(state.basin.levelDrop) ?? 0),
  });
}
