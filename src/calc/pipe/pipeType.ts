import { invalid, missing, plain } from "../problem";
import { readQuantity } from "../quantity/readQuantity";
import { PIPE_TYPES } from "../tables/pipes";
import { PIPE_TYPE_NAMES, type OwnSmoothness } from "./bore";

const names = new Set(PIPE_TYPE_NAMES);

/** A pipe type as a person writes it: its name, left out where only a smoothness stands, and a smoothness of one's own. */
export interface WrittenPipeType extends OwnSmoothness {
  readonly type?: string;
}

/**
 * What a user may state for the inside of a pipe: C of Hazen-Williams, roughness in m.
 * From old, crusted iron (from memory) to new plastic: EPANET 2.2 User Manual (EPA/600/R-20/133), Table 3.2.
 */
export const OWN_SMOOTHNESS_RANGE = {
  hazenWilliams: { min: 60, max: 160 },
  roughness: { min: 0, max: 0.005 },
} as const;

const ROUGHNESS = /[,;\s]*\broughness\b\s*[=:]?\s*(.*)$/i;
const COEFFICIENT = /[,;\s]*\bC\s*[=:]?\s*(\d+(?:\.\d+)?)\s*[,;]?\s*$/i;

/**
 * A pipe type with a smoothness behind it: "Flexible PVC", "Bore, C 120", "PE100 PN10 roughness 0.02 mm", "C 130".
 *
 * @returns what was written of each; a type that was not written is left out
 * @throws Problem for an unknown type, or a smoothness outside OWN_SMOOTHNESS_RANGE
 * @example readWrittenPipeType("sch40 pvc").type => "Sch 40 PVC"; the one type that fits
 */
export function readWrittenPipeType(text: string, name = "pipe type"): WrittenPipeType {
  if (names.has(text)) return { type: text };
  const roughnessPart = ROUGHNESS.exec(text);
  const beforeRoughness = roughnessPart ? text.slice(0, roughnessPart.index) : text;
  const coefficientPart = COEFFICIENT.exec(beforeRoughness);
  const words = (coefficientPart ? beforeRoughness.slice(0, coefficientPart.index) : beforeRoughness).trim();
  const only = roughnessPart !== null || coefficientPart !== null;
  return {
    ...(words === "" && only ? {} : { type: readPipeType(words, name) }),
    ...(coefficientPart ? { hazenWilliams: coefficient(Number(coefficientPart[1]), name) } : {}),
    ...(roughnessPart ? { roughness: roughness(roughnessPart[1] ?? "", name) } : {}),
  };
}

function coefficient(value: number, name: string): number {
  const { min, max } = OWN_SMOOTHNESS_RANGE.hazenWilliams;
  if (value >= min && value <= max) return value;
  throw invalid(`${name}: C of Hazen-Williams must be ${min} to ${max}, 130 to 150 for plastic; got ${plain(value)}`);
}

function roughness(written: string, name: string): number {
  const { min, max } = OWN_SMOOTHNESS_RANGE.roughness;
  const value = readQuantity(written, "mm", `${name}: roughness`) / 1000;
  if (value >= min && value <= max) return value;
  throw invalid(`${name}: roughness must be ${min} to ${max * 1000} mm; got ${plain(value * 1000)} mm`);
}

/** Words people use for those of the names. */
const WORDS: ReadonlyMap<string, string> = new Map([
  ["schedule", "sch"],
  ["flex", "flexible"],
  ["upvc", "pvc u"],
  ["poly", "pe"],
  ["polyethylene", "pe"],
  ["hdpe", "pe 100"],
]);

interface Words {
  readonly name: string;
  readonly words: ReadonlySet<string>;
}

const wordsByName: readonly Words[] = PIPE_TYPE_NAMES.map((name) => ({ name, words: new Set(split(name)) }));
/** With the words a type is also known by, for what no name fits: "PE100 SDR 13.6". */
const wordsByBoth: readonly Words[] = wordsByName.map(({ name, words }) => ({
  name,
  words: new Set([...words, ...split(PIPE_TYPES.find((type) => type.name === name)?.also ?? "")]),
}));

/**
 * The pipe type a person means: letter case, spacing, order and left-out words do not matter as long as only one
 * type fits ("sch40", "SDR 26", "flex PVC").
 *
 * @example readPipeType("sch40 pvc") => "Sch 40 PVC"; the one type that fits
 */
export function readPipeType(text: string, name = "pipe type"): string {
  if (names.has(text)) return text;
  const words = split(text);
  const fitting = (types: readonly Words[]): Words[] =>
    types.filter((type) => words.length > 0 && words.every((word) => type.words.has(word)));
  const byName = fitting(wordsByName);
  const found = byName.length > 0 ? byName : fitting(wordsByBoth);
  const exact = found.find((type) => type.words.size === new Set(words).size);
  const only = exact ?? (found.length === 1 ? found[0] : undefined);
  if (only) return only.name;
  const offered = (found.length > 1 ? found.map((type) => type.name) : PIPE_TYPE_NAMES).join(", ");
  const why = found.length > 1 ? "fits more than one" : "is not known";
  throw missing(`${name} "${text.trim().slice(0, 40)}" ${why}; use one of ${offered}`);
}

function split(text: string): string[] {
  return text
    .toLowerCase()
    .replace(/([a-z])(\d)/g, "$1 $2")
    .split(/[^a-z0-9.]+/)
    .flatMap((word) => (WORDS.get(word) ?? word).split(" "))
    .filter((word) => word !== "");
}
