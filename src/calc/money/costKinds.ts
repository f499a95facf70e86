import type { UnitSystem } from "../quantity/unitSystem";

/** What a cost is for; tax can be owed on some kinds and not on others. */
export const COST_KINDS = ["material", "labor", "machine", "subcontract", "hauling", "other"] as const;
export type CostKind = (typeof COST_KINDS)[number];

/** Kinds that are spelled otherwise outside America. */
const ABROAD = { labor: "labour", hauling: "haulage" } as const;
type CostKindWord = CostKind | (typeof ABROAD)[keyof typeof ABROAD];

/** The kinds as a workbook in feet or in meters shows them, in the order of `COST_KINDS`. */
export const COST_KIND_WORDS: Readonly<Record<UnitSystem, readonly CostKindWord[]>> = {
  US: COST_KINDS,
  SI: COST_KINDS.map((kind) => (kind in ABROAD ? ABROAD[kind as keyof typeof ABROAD] : kind)),
};

/**
 * What a kind of cost is called.
 *
 * @example costKindWord("hauling", "SI") => "haulage"; as it is spelled outside America
 */
export function costKindWord(kind: CostKind, system: UnitSystem): CostKindWord {
  return COST_KIND_WORDS[system][COST_KINDS.indexOf(kind)] ?? kind;
}

/**
 * The kind of cost that a word names, in either spelling and any case; undefined when it names none.
 *
 * @example readCostKind("Labour") => "labor"; the same word in America
 */
export function readCostKind(word: string): CostKind | undefined {
  return BY_WORD.get(word) ?? BY_WORD.get(word.trim().toLowerCase());
}

const BY_WORD: ReadonlyMap<string, CostKind> = new Map(
  COST_KINDS.flatMap((kind) => [kind, costKindWord(kind, "SI")].map((word) => [word, kind] as const)),
);

/** What the sales tax is worked out on. */
export const TAX_BASES = ["nothing", "taxable lines at cost", "materials with markup", "whole price"] as const;
export type TaxBase = (typeof TAX_BASES)[number];
