/** One line of a purchase order, as it stands in the range. */
export interface OrderLine {
  readonly order: string;
  readonly item: string;
  readonly quantity: number;
  /** Unit of quantity and price; blank is a plain count. */
  readonly unit?: string;
  /** Whole money per unit. */
  readonly price: number;
  readonly supplier?: string;
  /** kg/m³ as delivered (bulk), needed only where weight and volume meet. */
  readonly density?: number;
  readonly row: number;
}

/** One line of a delivery ticket. */
export interface DeliveryLine {
  readonly order?: string;
  readonly item: string;
  /** Negative when goods went back. */
  readonly quantity?: number;
  /** Blank is the order's unit. */
  readonly unit?: string;
  readonly ticket?: string;
  /** Day number of the spreadsheet. */
  readonly date?: number;
  readonly row: number;
}

/** One line of an invoice or credit note. */
export interface InvoiceLine {
  readonly order?: string;
  readonly item: string;
  /** Negative for goods credited. */
  readonly quantity?: number;
  readonly unit?: string;
  /** Whole money per unit; negative for a credit of money alone. */
  readonly price?: number;
  readonly invoice?: string;
  readonly date?: number;
  readonly row: number;
}

/** A row of one of the three lists that could not be read. */
export interface UnreadLine {
  readonly paper: Paper;
  readonly row: number;
  /** Order and item as far as they could be made out; "" where not. */
  readonly order: string;
  readonly item: string;
  /** The paper's own number: "ticket 4711". */
  readonly number?: string;
  /** What was wrong, without a full stop. */
  readonly reason: string;
}

/** A row that could not be read, as a line to query; what it comes to is unknown, which is not nothing. */
export type UnreadVerdict = Pick<ReconciledLine, "order" | "supplier" | "item" | "verdict"> & {
  readonly state: "Query";
};

/** What a row is called in sentences. */
export type Paper = "Order" | "Delivery" | "Invoice";

/** How a line or a total stands. */
export type State = "Agrees" | "Open" | "Query";

/** What ordering, delivery and invoicing of one item on one order come to; money in whole cents. */
export interface ReconciledLine {
  /** "" when the papers name no order. */
  readonly order: string;
  readonly supplier: string;
  readonly item: string;
  readonly unit: string;
  /** Quantities in the order's unit; undefined for charges, which are not delivered. */
  readonly quantities?: {
    readonly ordered: number;
    readonly delivered: number;
    readonly invoiced: number;
  };
  readonly amounts: Amounts;
  readonly state: State;
  readonly verdict: string;
}

/** Money of a line or a total, in whole cents. */
export interface Amounts {
  /** All order lines at their prices. */
  readonly ordered: number;
  /** All invoice lines as they stand, duplicates and credits included. */
  readonly billed: number;
  /** Invoiced at another price than ordered: positive is too much. */
  readonly priceDifference: number;
  /** Ordered and not delivered yet, at the prices that are left. */
  readonly toCome: number;
  /** Paid too much if the invoices were paid as they stand. */
  readonly atStake: number;
}

export const NO_AMOUNTS: Amounts = { ordered: 0, billed: 0, priceDifference: 0, toCome: 0, atStake: 0 };
