import type { ProductKind } from "../../book/kinds";
import type { Product } from "../../book/types";
import type { CurvePoint } from "../../calc/pump/curve";
import type { FittingColumn } from "../takeoff/fittings";

/** What can be bought and used, as the rules ask for it; SI, money without tax. */
export interface Offers {
  readonly pumps: readonly OfferedPump[];
  readonly pipes: readonly OfferedPipe[];
  readonly modules: readonly OfferedBox[];
  readonly tubs: readonly OfferedTub[];
  readonly lipStones: readonly OfferedBox[];
  /** Widths of spillway boxes, the narrowest first, m. */
  readonly boxes: readonly number[];
  /** Mean sizes of boulders, m. */
  readonly boulders: readonly number[];
  readonly rolls: readonly OfferedRoll[];
  readonly machines: readonly OfferedMachine[];
  /** What prices are taken from, where there is a book. */
  readonly products?: readonly Product[];
  /** Money for one m², m³, kg or piece of a kind; 0 where nobody says. */
  readonly price: (kind: ProductKind) => number;
  /** Money for a m² of liner off the cheapest roll. */
  readonly linerArea: number;
}

export interface OfferedPump {
  readonly name: string;
  readonly price: number;
  readonly watts: number;
  /** With the shut-off head. */
  readonly points: readonly CurvePoint[];
}

export interface OfferedPipe {
  /** Nominal, m. */
  readonly size: number;
  readonly type: string;
  /** Money for a meter. */
  readonly price: number;
  /** Length that it is sold by, m, and the share that is cut to waste; to the meter and without any where left out. */
  readonly pack?: number;
  readonly waste?: number;
  /** Money for one of each fitting of this size; what is not in it counts nothing. */
  readonly fittings?: Readonly<Partial<Record<FittingColumn, number>>>;
}

export interface OfferedBox {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly price: number;
}

export interface OfferedTub extends OfferedBox {
  readonly name: string;
  /** What it holds, m³; less than its box where its sides lean. */
  readonly volume: number;
}

export interface OfferedRoll {
  readonly width: number;
  /** Money for a m or m², or for the roll. */
  readonly price: number;
  readonly per: "length" | "area" | "roll";
  /** m */
  readonly longest: number;
}

export interface OfferedMachine {
  readonly name: string;
  /** Narrowest way it passes, m. */
  readonly width: number;
  /** What it lifts at its reach, kg. */
  readonly lift: number;
  /** It works some of the usual machine hours. */
  readonly usual: boolean;
  /** It has an engine, and more than a hoist. */
  readonly digs: boolean;
}

/** What a basin costs, part by part: money for m³, m², kg or a piece, hours and hauling included. */
export interface UnitPrices {
  /** Bank m³ of pit, dug and hauled away. */
  readonly dig: number;
  readonly beddingVolume: number;
  /** Off the cheapest roll. */
  readonly linerArea: number;
  /** Laying one m² of liner and fabric. */
  readonly layLiner: number;
  /** One layer. */
  readonly fabricArea: number;
  /** Filling stone in place, without its way here, kg. */
  readonly stone: number;
  /** Bringing so much of it, kg: it comes in loads of its own, at least one. */
  readonly haulStone: (weight: number) => number;
  /** Gravel over the top, kg. */
  readonly gravel: number;
  /** Setting one module. */
  readonly setModule: number;
  /** Setting one tub that holds so much, m³. */
  readonly setTub: (volume: number) => number;
  /** With setting it. */
  readonly well: number;
  /** Setting, plumbing and starting one pump. */
  readonly setPump: number;
}
