// Written by "npm run generate" from the declarations of the topic "money"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { MARGINOF as declaredMARGINOF } from "../money/marginof";
import { MARKUPFOR as declaredMARKUPFOR } from "../money/markupfor";
import { ORDERQTY as declaredORDERQTY } from "../money/orderqty";
import { COSTODDS as declaredCOSTODDS } from "../money/costodds";
import { STAGES as declaredSTAGES } from "../money/stages";
import { RECONCILE as declaredRECONCILE } from "../money/reconcile";

/**
 * Gives the gross margin (share of the price) that a markup on cost brings.
 * @customfunction MARGINOF
 * @helpurl https://localhost:3000/help/marginof.html
 * @param markup Markup as a share of cost (share, 0 to 10)
 * @returns The gross margin as a share of the price.
 * @remarks Formula: margin = markup / (1 + markup). Limits: Exact. Markup is a share of cost, margin a share of the price; they are never the same number.
 * @remarks Source: Definition: price = cost × (1 + markup) = cost / (1 - margin)
 * @example =RILL.MARGINOF(0.25)
 * @example =RILL.MARGINOF("50%")
 */
export function MARGINOF(markup: any): any {
  return callFromSheet(declaredMARGINOF, [markup]);
}

/**
 * Gives the markup on cost that a wanted gross margin (share of the price) needs.
 * @customfunction MARKUPFOR
 * @helpurl https://localhost:3000/help/markupfor.html
 * @param margin Gross margin as a share of the price (share, 0 to 0.9)
 * @returns The markup as a share of cost.
 * @remarks Formula: markup = margin / (1 - margin). Limits: Exact. Using the margin itself as the markup prices too low: at a margin of 0.35 by 12 % of the price.
 * @remarks Source: Definition: price = cost × (1 + markup) = cost / (1 - margin)
 * @example =RILL.MARKUPFOR(0.2)
 * @example =RILL.MARKUPFOR("35%")
 */
export function MARKUPFOR(margin: any): any {
  return callFromSheet(declaredMARKUPFOR, [margin]);
}

/**
 * Gives the quantity to order: the need with waste, rounded up to whole packs, at least the minimum.
 * @customfunction ORDERQTY
 * @helpurl https://localhost:3000/help/orderqty.html
 * @param need Quantity needed in place, in the unit of sale (0 to 1e+9)
 * @param [waste] Waste as a share of the need (share, 0 to 2; blank: 0)
 * @param [pack] Quantity in one pack (more than 1e-6, at most 1000000; blank: 1)
 * @param [minimum] Least quantity the supplier sells (0 to 1e+9; blank: 0)
 * @returns The quantity to order.
 * @remarks Formula: packs = ⌈max(need × (1 + waste), minimum) / pack⌉; order = packs × pack; a millionth of a pack is ignored. Limits: Waste is added to the need (100 and 10 % make 110), not taken as a yield. Nothing needed orders nothing.
 * @remarks Source: Arithmetic; waste as an add-on to the need: common practice, no source
 * @example =RILL.ORDERQTY(23.2, , 5)
 * @example =RILL.ORDERQTY(100, "10%", 10)
 * @example =RILL.ORDERQTY(3, , 0.5, 8)
 */
export function ORDERQTY(need: any, waste?: any, pack?: any, minimum?: any): any {
  return callFromSheet(declaredORDERQTY, [need, waste, pack, minimum]);
}

/**
 * Gives the mean and spread of uncertain costs, and the cost you will keep with a given confidence.
 * @customfunction COSTODDS
 * @helpurl https://localhost:3000/help/costodds.html
 * @param items Uncertain costs: low, likely, high (rows of low, likely, high)
 * @param [confidence] Chance of keeping the cost (share, 0.5 to 0.99; blank: 0.8)
 * @returns The odds of the cost.
 * @remarks Formula: per item mean = (low + 4 likely + high) / 6, spread = (high - low) / 6; means add, spreads add as squares; cost = mean + z × spread. Limits: A normal approximation for items that do not depend on each other: good to a few percent of the spread from about five items of like size on. Costs that rise together (fuel, weather, one slow crew) spread wider.
 * @remarks Source: PERT three-point estimate (Malcolm et al., 1959; from memory); the sum taken as normal (central limit theorem)
 * @example =RILL.COSTODDS({2,3,5;5,8,14;3,4,6;1,2,3}, 0.5)
 */
export function COSTODDS(items: any[][], confidence?: any): any[][] {
  return callFromSheet(declaredCOSTODDS, [items, confidence]) as any[][];
}

/**
 * Splits a total into payment stages that add up to it to the cent.
 * @customfunction STAGES
 * @helpurl https://localhost:3000/help/stages.html
 * @param total Total to split, in money (0 to 1e+12)
 * @param shares Share of each stage; together 1 (list; each share, 0 to 1)
 * @returns The payment stages.
 * @remarks Formula: each stage = whole cents of total × share; cents left over go to the largest remainders, earlier stages first. Limits: The shares must add up to 1. A blank share is a stage that is not used: its row stays, with amount 0.
 * @remarks Source: Largest-remainder method (Hamilton), any text on apportionment
 * @example =RILL.STAGES(100, {0.5;0.25;0.25})
 * @example =RILL.STAGES(1000.01, {"30%";"30%";"40%"})
 */
export function STAGES(total: any, shares: any[][]): any[][] {
  return callFromSheet(declaredSTAGES, [total, shares]) as any[][];
}

/**
 * Squares orders, delivery tickets and invoices per order and item, with a verdict in plain words and totals.
 * @customfunction RECONCILE
 * @helpurl https://localhost:3000/help/reconcile.html
 * @param orders Orders: order, item, quantity, unit, price, supplier, stone or density
 * @param deliveries Tickets: order, item, quantity, unit, ticket, date (rows of order, item, quantity, unit, ticket, date)
 * @param invoices Invoices: order, item, quantity, unit, price, invoice, date (rows of order, item, quantity, unit, price, invoice, date)
 * @param [tolerance] Share by which quantities may differ (share, 0 to 1; blank: 0.02)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The reconciliation, totals last.
 * @remarks Formula: outstanding = ordered - delivered; price difference = Σ (invoice line - its quantity at the nearest ordered price); at stake = billed - the least of ordered, delivered and invoiced at the ordered price, at least 0. Limits: Order lines of the same order and item add up (a cut is a line below zero); invoices are held against the nearest of their prices. A ticket or invoice line entered twice with the same quantity counts once. Weight meets volume only with a density. Prices agree to the cent, quantities to the tolerance.
 * @remarks Source: Three-way match of order, receipt and invoice, any text on purchasing; weights and volumes by NIST SP 811
 * @example =RILL.RECONCILE({"PO-1","GRAVEL",24,"ton",32,"Quarry"}, {"PO-1","GRAVEL",48000,"lb","T-7","2031-05-28"}, {"PO-1","GRAVEL",24,"ton",33,"88","2031-05-30"})
 */
export function RECONCILE(orders: any[][], deliveries: any[][], invoices: any[][], tolerance?: any, units?: any): any[][] {
  return callFromSheet(declaredRECONCILE, [orders, deliveries, invoices, tolerance, units]) as any[][];
}
