import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Book } from "../types";
import { shippedCompany, shippedPastJobs, shippedPricing } from "./office";
import { shippedLabor, shippedMachines } from "./people";
import { shippedProducts } from "./products";
import { shippedPumps } from "./pumps";

const books: Partial<Record<UnitSystem, Book>> = {};

/** The book that ships: a company, products, prices, pumps and rates of our own invention, every row marked so. */
export function shippedBook(system: UnitSystem): Book {
  return (books[system] ??= {
    system,
    company: shippedCompany(system),
    products: shippedProducts(system),
    pumps: shippedPumps(system),
    labor: shippedLabor(system),
    machines: shippedMachines(system),
    pricing: shippedPricing(system),
    pastJobs: shippedPastJobs(system),
  });
}
