import type { CostKind, TaxBase } from "../calc/money/costKinds";
import type { CurvePoint } from "../calc/pump/curve";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import type { ProductKind } from "./kinds";
import type { SaleUnit } from "./units";

/** The company's own book: what it buys, at which prices, who works with what, and how it prices. SI where it is physical. */
export interface Book {
  /** The system it is written in; its units of sale belong to it. */
  readonly system: UnitSystem;
  readonly company: Company;
  readonly products: readonly Product[];
  readonly pumps: readonly BookPump[];
  readonly labor: Labor;
  readonly machines: readonly Machine[];
  readonly pricing: Pricing;
  readonly pastJobs: readonly PastJob[];
}

/** What every row of the book says of itself. */
export interface Row {
  /** Came with the tool and nobody has changed or confirmed it: nothing is signed on it. */
  readonly invented: boolean;
  /** Row of its sheet in the book's file, for sentences. */
  readonly row?: number;
}

/** When and from whom a price is. */
export interface Offer extends Row {
  /** Money for one unit, without tax; undefined where nobody has asked yet. */
  readonly price: number | undefined;
  /** Day of the price, yyyy-mm-dd; "" where it is not known. */
  readonly day: string;
  readonly supplier: string;
  /** What the supplier calls it; "" where it has no name of its own there. */
  readonly theirs: string;
}

export interface Product extends Offer {
  /** What the company calls it; each code once. */
  readonly code: string;
  readonly description: string;
  readonly kind: ProductKind;
  /** Nominal size, lip width, roll width or stone size in m, volume of a tub in m³; undefined fits all: see PRODUCT_KINDS. */
  readonly size?: number;
  /** Pipe type, rock, grade, conductor; undefined fits all. */
  readonly type?: string;
  /** Sides of a module, a tub or a stone, of a roll its length; m. */
  readonly length?: number;
  readonly width?: number;
  readonly height?: number;
  /** kg of one unit. */
  readonly weight?: number;
  /** What the price is for. */
  readonly unit: SaleUnit;
  /** Units sold in one piece; 1 where any whole number can be bought. */
  readonly pack: number;
  /** Least number of units sold. */
  readonly minimum: number;
  /** Share added to the need. */
  readonly waste: number;
  /** Money charged once for bringing an order of it. */
  readonly freight: number;
  readonly costKind: CostKind;
  readonly taxable: boolean;
}

export interface BookPump extends Offer {
  readonly name: string;
  /** W */
  readonly watts: number | undefined;
  /** Maker's curve with its shut-off head, flow rising; m³/s and m. */
  readonly curve: readonly CurvePoint[];
  /** Of its outlet, m. */
  readonly outlet?: number;
}

/** Points a maker's curve in the book may have, its shut-off head among them. */
export const BOOK_CURVE_POINTS = 12;

export interface Labor {
  readonly burden: readonly BurdenLine[];
  readonly wages: readonly Wage[];
  readonly rates: readonly ProductionRate[];
  readonly sizes: readonly SizeHours[];
  /** Hours of a working day. */
  readonly dayHours: number | undefined;
  /** The most that one person lifts, kg. */
  readonly handLimit: number | undefined;
}

export interface BurdenLine extends Row {
  readonly line: string;
  readonly share: number | undefined;
}

export interface Wage extends Row {
  readonly role: string;
  /** Money an hour, before burden. */
  readonly wage: number | undefined;
  /** How many of them are on the usual crew. */
  readonly people: number;
}

export interface ProductionRate extends Row {
  readonly task: string;
  /** In which unit the task is counted, as the trade writes it. */
  readonly unit: string;
  /** Hours of one person for one unit. */
  readonly hours: number | undefined;
  /** Machine hours for one unit. */
  readonly machineHours: number | undefined;
}

/** How many times the hours of its rate the work takes, by the size of a pipe or tub or the weight of a stone. */
export interface SizeHours extends Row {
  /** Nominal size up to which it holds, m. */
  readonly pipe: number | undefined;
  readonly pipeTimes: number | undefined;
  /** Weight up to which it holds, kg. */
  readonly stone: number | undefined;
  readonly stoneTimes: number | undefined;
  /** Volume of a tub up to which it holds, m³. */
  readonly tub: number | undefined;
  readonly tubTimes: number | undefined;
  /** The same of its machine hours; 0 where the crew carries it. */
  readonly tubMachineTimes: number | undefined;
  /** Weight of one boulder up to which it holds, kg. */
  readonly boulder: number | undefined;
  readonly boulderTimes: number | undefined;
}

export interface Machine extends Row {
  readonly name: string;
  /** Money an hour: hire or ownership, fuel, upkeep. */
  readonly own: number | undefined;
  readonly fuel: number | undefined;
  readonly upkeep: number | undefined;
  /** Share of the usual machine hours it works. */
  readonly share: number;
  /** Narrowest way it passes, m. */
  readonly width: number | undefined;
  /** What it lifts at that reach by its load chart, kg; undefined or 0 where it lifts nothing. */
  readonly lift: number | undefined;
  /** m from its slewing center. */
  readonly reach: number | undefined;
}

/** Rows of the markups: every cost kind, then overhead and contingency. */
export interface Pricing extends Row {
  readonly markups: readonly (number | undefined)[];
  readonly wantedMargin: number | undefined;
  readonly overheadBy: "share of cost" | "crew hours" | undefined;
  readonly overheadShare: number | undefined;
  readonly overheadPerHour: number | undefined;
  readonly contingencyShare: number | undefined;
  readonly taxName: string;
  readonly taxBase: TaxBase | undefined;
  readonly taxRate: number | undefined;
  readonly roundTo: number | undefined;
  readonly validDays: number | undefined;
  /** Money for a kilowatt-hour. */
  readonly tariff: number | undefined;
  readonly ownYears: number | undefined;
  readonly stages: readonly { readonly name: string; readonly share: number | undefined }[];
}

/** The picture that stands over a company's papers. */
export interface Logo {
  readonly type: "png" | "jpeg" | "svg";
  readonly bytes: Uint8Array;
  /** Pixels of the picture itself. */
  readonly width: number;
  readonly height: number;
  /** An SVG as a PNG, for programs that show none. */
  readonly png?: Uint8Array;
}

export interface Company extends Row {
  readonly name: string;
  readonly address: string;
  readonly phone: string;
  readonly email: string;
  readonly license: string;
  readonly estimator: string;
  /** ISO 4217 code: USD. */
  readonly currency: string;
  readonly logo?: Logo;
  readonly terms: readonly string[];
  readonly scope: readonly string[];
  readonly exclusions: readonly string[];
}

/** What a finished job was and what it cost. */
export interface PastJob extends Row {
  readonly name: string;
  /** Day it was finished, yyyy-mm-dd. */
  readonly day: string;
  /** m */
  readonly run: number | undefined;
  /** m */
  readonly fall: number | undefined;
  /** Money. */
  readonly price: number | undefined;
  readonly estimatedCost: number | undefined;
  readonly cost: number | undefined;
  readonly estimatedHours: number | undefined;
  readonly hours: number | undefined;
}

/** A book in which nothing stands yet. */
export function blankBook(system: UnitSystem): Book {
  const row = { invented: false };
  return {
    system,
    company: {
      ...row,
      name: "",
      address: "",
      phone: "",
      email: "",
      license: "",
      estimator: "",
      currency: "",
      terms: [],
      scope: [],
      exclusions: [],
    },
    products: [],
    pumps: [],
    labor: { burden: [], wages: [], rates: [], sizes: [], dayHours: undefined, handLimit: undefined },
    machines: [],
    pricing: {
      ...row,
      markups: [],
      wantedMargin: undefined,
      overheadBy: undefined,
      overheadShare: undefined,
      overheadPerHour: undefined,
      contingencyShare: undefined,
      taxName: "",
      taxBase: undefined,
      taxRate: undefined,
      roundTo: undefined,
      validDays: undefined,
      tariff: undefined,
      ownYears: undefined,
      stages: [],
    },
    pastJobs: [],
  };
}
