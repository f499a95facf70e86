import { invalid, plain } from "../../calc/problem";
import { defaultUnit, isMeasure } from "../../calc/quantity/measures";
import { readQuantity } from "../../calc/quantity/readQuantity";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { FACTS, type FactKey } from "./index";
import type { CellFact } from "./fact";
import { inSystem, toSi, unitOf } from "./units";

/** What people call the six answers, beside the names that cells have. */
const CALLED: Readonly<Record<string, FactKey>> = {
  fall: "fallTyped",
  run: "run",
  lip: "lips",
  "lip width": "lips",
  "top lip": "lips",
  water: "waterCharacter",
  sound: "waterCharacter",
  soil: "soil",
  ground: "soil",
  gate: "accessWidth",
  "way in": "accessWidth",
  groundwater: "groundwaterDepth",
};

/** Letters and digits alone: "Bed width" is BedWidth. */
function bare(name: string): string {
  return name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");
}

const KEYS = Object.keys(FACTS) as FactKey[];
/** A later entry wins: names of cells over questions. */
const BY_NAME: ReadonlyMap<string, FactKey> = new Map([
  ...KEYS.map((key) => [bare(FACTS[key].question), key] as const),
  ...Object.entries(CALLED).map(([words, key]) => [bare(words), key] as const),
  ...KEYS.map((key) => [bare(FACTS[key].name), key] as const),
]);

/** The fact that a name, its words, its question or what people call it stands for. */
export function factCalled(name: string): FactKey | undefined {
  return BY_NAME.get(bare(name));
}

/** What was said to a fact, in SI. Throws a `Problem` that begins with `at`. */
export function valueSaid(fact: CellFact, value: number | string, at: string, system: UnitSystem): number | string {
  if (fact.type === "text") return String(value).slice(0, 200);
  if (fact.type === "choice") return oneOf(inSystem<readonly string[]>(fact.choices, system), value, at);
  const { kind } = fact;
  const typed =
    typeof value === "number"
      ? value
      : isMeasure(kind)
        ? readQuantity(value, defaultUnit(kind, system), at)
        : Number(value.replace(",", "."));
  if (Number.isNaN(typed)) throw invalid(`${at}: the value must be a number; got "${String(value).slice(0, 40)}"`);
  const [least, most] = inSystem(fact.range, system);
  const slack = 1e-9 * Math.max(Math.abs(least), Math.abs(most));
  if (!(typed >= least - slack && typed <= most + slack)) {
    const unit = unitOf(kind, system);
    throw invalid(`${at}: the value must be ${least} to ${most}${unit && ` ${unit}`}; got ${plain(typed)}`);
  }
  return toSi(kind, typed, system);
}

function oneOf<C extends string>(choices: readonly C[], value: number | string, at: string): C {
  const said = String(value).trim().toLowerCase();
  const found =
    choices.find((choice) => choice.toLowerCase() === said) ??
    choices.find((choice) => choice.toLowerCase().startsWith(said));
  if (found === undefined) throw invalid(`${at}: the value must be one of ${choices.join(", ")}`);
  return found;
}
