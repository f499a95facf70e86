/** A piece to cut; m. */
export interface Piece {
  readonly name: string;
  readonly length: number;
  readonly width: number;
}

/** What a roll's price is for. */
export type PriceBasis = "length" | "area" | "roll";
export const PRICE_BASES: readonly PriceBasis[] = ["length", "area", "roll"];

/** A roll on offer. */
export interface Roll {
  /** m */
  readonly width: number;
  /** Money per m, per m² or per full roll; 0 on every roll plans for the least area instead. */
  readonly price: number;
  readonly per: PriceBasis;
  /** Longest length sold in one piece, m; the length of a full roll when the price is for the roll. Infinity: no limit. */
  readonly longest: number;
  /** Number the caller's sentences know it by; its place in the list if left out. */
  readonly row?: number;
}

export interface PlanRequest {
  readonly pieces: readonly Piece[];
  readonly rolls: readonly Roll[];
  /** Whether a piece's length may lie across the roll. */
  readonly turn: boolean;
  /** Lap of a seam, m; undefined: no piece may be put together from parts. */
  readonly seamLap?: number;
  /** What a metre of seam costs in tape and labor; undefined: seams count for nothing when plans are compared. */
  readonly seamPrice?: number;
  /** A plan to begin from, as `Plan.kept` of an earlier one; of no use for other pieces. */
  readonly kept?: string;
  /** Behind the point of amounts, where the smallest unit of the currency is no cent. */
  readonly digits?: number;
}

/** Where a cut lies on the lengths bought of a roll, laid end to end; m. */
export interface Placement {
  readonly name: string;
  /** Index of the roll in the request. */
  readonly roll: number;
  readonly along: number;
  readonly across: number;
  /** Along the roll. */
  readonly length: number;
  /** Across the roll. */
  readonly width: number;
  /** Whether the piece's own length lies across the roll. */
  readonly turned: boolean;
}

/** A length bought of a roll; m. */
export interface Bought {
  readonly roll: number;
  /** Where it begins when the lengths bought of this roll are laid end to end. */
  readonly start: number;
  readonly length: number;
  /** What is cut of it; the rest of a full roll stays whole. */
  readonly used: number;
}

export interface Plan {
  readonly placements: readonly Placement[];
  readonly bought: readonly Bought[];
  /** Money for rolls and seams. */
  readonly cost: number;
  /** Of it what the rolls cost, rounded to the cent roll by roll. */
  readonly rollCost: number;
  /** No plan can cost less than this, however pieces are parted. */
  readonly lowerBound: number;
  /** Whether no cheaper plan with edge-to-edge cuts exists; where a piece may be parted, with none of the partings looked at. */
  readonly proven: boolean;
  /** The plan as a text to begin another search from. */
  readonly kept: string;
  /** Whether partings were looked at. */
  readonly mayPart: boolean;
  /** m² bought. */
  readonly area: number;
  /** m² of what is bought that ends up in no piece. */
  readonly waste: number;
  /** m of seams that join parts. */
  readonly seamLength: number;
}
