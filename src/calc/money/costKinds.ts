/** What a cost is for; tax can be owed on some kinds and not on others. */
export const COST_KINDS = ["material", "labour", "machine", "subcontract", "haulage", "other"] as const;
export type CostKind = (typeof COST_KINDS)[number];

/**
 * Whether a word is the name of a kind of cost.
 *
 * @example isCostKind("haulage") => true; it stands in the list
 */
export function isCostKind(word: string): word is CostKind {
  return COST_KINDS.some((kind) => kind === word);
}

/** What the sales tax is worked out on. */
export const TAX_BASES = ["nothing", "taxable lines at cost", "materials with markup", "whole price"] as const;
export type TaxBase = (typeof TAX_BASES)[number];
