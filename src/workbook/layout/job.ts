import type { CostKind } from "../../calc/money/costKinds";
import { GRAVITY } from "../../calc/pipe/friction";
import { toInside, type Measure } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Ref } from "./address";
import type { ChartSpec } from "./chartSpec";
import type { Kind } from "./formats";
import type { Area } from "../model";
import type { TableRef } from "./tableRef";

/** A value for the US workbook and one for the SI workbook, or one for both. */
export type Both<T> = T | { readonly US: T; readonly SI: T };

/** How a value must stand to its limit. */
export type Sign = "at most" | "at least" | "less than" | "more than";

/**
 * A check: a mistake this workbook catches. It is laid out at the end of its own sheet and listed on Start. All is well while
 * the value keeps to the limit; a value "to spare" has 0 as its limit, and what is asked with yes or no is of the kind "answer".
 * Formulas are without error handling: the layout says "to fill" while `needs` are blank and "ERROR" where one fails.
 */
export interface CheckSpec {
  /** What is checked, in a few words: "Water speed in the pipe". */
  readonly label: string;
  /** Formula of the value looked at. */
  readonly value: string;
  /** How the value must stand to the limit: "at most" if left out. */
  readonly sign?: Sign;
  /** The limit: a number wherever it is one, else the formula of a number, or of "not known". */
  readonly limit: string | number;
  /** The value may not be less than this either, where the limit is the most it may be. */
  readonly least?: number;
  /** What stands in the cell of a number in place of sign and limit: "within ⅛ in". */
  readonly words?: string;
  /** What value and limit rest on, as of a result. */
  readonly source?: Both<string>;
  /** What to do, in one sentence. */
  readonly cure: string;
  /**
   * Formula of what to do as things stand, where that says more while the check fails; about as long as the cure. "[value]" is
   * the cell of the value. It may not fail itself while the check does.
   */
  readonly cureNow?: string;
  /** What to do while the check fails and this holds as well, beside the cure that else stands there. */
  readonly cureIf?: { readonly when: string; readonly cure: string };
  /** What to do where the verdict is FIX, if a check may also say LOOK; about as long as the cure. */
  readonly cureStop?: string;
  /** The defined name (or Sheet!A1) of the cell to change. */
  readonly fix: string;
  /** Formula of the address of the cell to change as things stand, where that is not always the same one; "[label]" is the cell of the label on Start. */
  readonly fixNow?: string;
  /** Formula of what that cell is called. */
  readonly calledNow?: string;
  readonly kind?: Kind;
  readonly unit?: string;
  /** What is said of the value behind its unit: "spare". */
  readonly over?: string;
  /** "stop" says FIX, "look" (a rule of thumb) says LOOK. */
  readonly weight?: "stop" | "look";
  /** Formula under which a look that fails is no rule of thumb any more, and says FIX. */
  readonly stopIf?: string;
  /** A look that says FIX wherever its limit is known. */
  readonly stopOnceKnown?: true;
  /** Names of number cells or ranges without which there is nothing to check. */
  readonly needs?: readonly string[];
}

/** A line of the takeoff: what the job needs, found on Rates by its code. */
export interface TakeoffLine {
  readonly code: string;
  readonly description: string;
  /** Formula of the same, where it says which size. */
  readonly described?: string;
  readonly unit: string;
  /** Formula of the quantity, before waste and packs. */
  readonly quantity: string;
  readonly category: Category;
  readonly needs?: readonly string[];
  /** Formula that is TRUE while the quantity cannot be known, where that is not just a blank among `needs`. */
  readonly unknownIf?: string;
  /** Formula of the words that tell a supplier which one: its size, kind or name. "[counts]" is how much of each product it asks for. */
  readonly which?: string;
  /** So many lines from this one on, whose quantities and words its formulas give one in a row; the others say "" there. */
  readonly down?: number;
  /**
   * The products it stands for, by size and type; they price it where its own line of the price list does not. None here where
   * the line before tells of them too.
   */
  readonly asks?: readonly AskSpec[];
}

/** A product a line asks the price list for, or several of which one formula each tells codes and amounts. */
export interface AskSpec {
  /** How much of the line it is, pieces or a share: a formula that always gives a number, or 1 where it is all of it. */
  readonly count: string | 1;
  /** What that rests on, as of a result. */
  readonly source?: string;
  /**
   * Formulas of the codes it may have, at most two, the more exact first; "" while the size is not known. "[line]" is the
   * line's own code, "[row]" the number of the row among its rows: products one below the other that have the same formula
   * with it share one.
   */
  readonly codes: readonly string[];
  /** How many rows count and codes fill; 1 if left out. */
  readonly rows?: number;
  /** The codes of the lines of these rows, where they are not all of this one. */
  readonly lines?: readonly string[];
}

/** A takeoff line with the sheet that asks for it. */
export interface PlacedTakeoffLine extends TakeoffLine {
  readonly sheet: string;
}

/** A line of the price list, with prices of our own invention. */
export interface RateLine {
  readonly code: string;
  readonly description: string;
  readonly unit: string;
  readonly category: Category;
  /** What kind of cost it is, where the category does not say: hauling, subcontract. */
  readonly cost?: CostKind;
  readonly supplier: string;
  /** Price per unit; none where products by size price it. */
  readonly price?: Both<number>;
  /** Formula of the price where another sheet knows it; it stands in place of `price`. */
  readonly priceFormula?: string;
  /** Share added for waste. */
  readonly waste?: number;
  /** What is sold in one piece, in `unit`: 1 where any amount can be bought. */
  readonly pack?: Both<number>;
  /** Least that is sold. */
  readonly minimum?: Both<number>;
}

export const CATEGORIES = [
  "Liner",
  "Pipe",
  "Pump",
  "Basin",
  "Stone",
  "Ground",
  "Finish",
  "Labor",
  "Equipment",
  "Other",
] as const;
export type Category = (typeof CATEGORIES)[number];

/** A check as it stands in a row of its sheet; those of a sheet stand one below the other. */
export interface PlacedCheck extends CheckSpec {
  readonly sheet: string;
  readonly row: number;
}

/** The input of a fact as it was laid out on its own sheet; the sheet of facts reads it. */
export interface LaidInput {
  readonly label: string;
  readonly yours: Ref;
  /** What is used stands on the sheet of facts, where the input itself takes the room of its row. */
  readonly wide: boolean;
  readonly format: string;
  readonly note: string;
}

/** The workbook being laid out: its system and filling, and what its sheets contribute to the collecting ones. */
export class Job {
  readonly checks: PlacedCheck[] = [];
  readonly takeoffLines: PlacedTakeoffLine[] = [];
  readonly rateLines: RateLine[] = [];
  /** Tables laid out so far, by name. */
  readonly tables = new Map<string, TableRef>();
  /** Tables that a function fills, head included. */
  readonly spilled: { readonly name?: string; readonly sheet: string; readonly area: Area }[] = [];
  /** Defined names laid out so far. */
  readonly names = new Set<string>();
  /** Charts laid out so far that another sheet shows too. */
  readonly charts = new Map<string, ChartSpec>();
  /** Where each defined name lies. */
  readonly places = new Map<string, Ref>();
  /** What each defined name's place is called, in plain words: "Site: Fall as measured". */
  readonly called = new Map<string, string>();
  /** Inputs of facts laid out so far, by the fact's name. */
  readonly inputs = new Map<string, LaidInput>();
  /** Sheets laid out so far, for the list of links. */
  readonly pages: {
    readonly name: string;
    readonly order: number;
    readonly purpose: string;
    /** Rows and columns laid out, as far as the price may rest on them. */
    readonly rows: number;
    readonly columns: number;
  }[] = [];

  constructor(
    readonly system: UnitSystem,
    readonly filled: "demo" | "blank",
    /** Whether the workbook has a sheet of facts, which fills what nobody has typed. */
    readonly hasFacts = false,
  ) {}

  /** How many units of a small measure make one of a large one: 12 in to the ft, 27 ft³ to the yd³ with its third power. */
  per(small: Measure, large: Measure, power = 1): number {
    return Number((toInside(large, 1, this.system) / toInside(small, 1, this.system) ** power).toPrecision(12));
  }

  /** Standard gravity in this workbook's lengths per second squared. */
  gravity(): number {
    return Number((GRAVITY / toInside("length", 1, this.system)).toPrecision(12));
  }

  /** The one of two values that belongs to this workbook. */
  pick<T>(value: Both<T>): T {
    return isPair(value) ? value[this.system] : value;
  }
}

function isPair<T>(value: Both<T>): value is { readonly US: T; readonly SI: T } {
  return typeof value === "object" && value !== null && "US" in value && "SI" in value;
}
