import { shippedBook } from "./shipped";
import type { Book, Row } from "./types";

/**
 * A book whose rows lose their mark where a person has put a number of his own in place of the invented one. A row under
 * a name of its own, copied from one that the tool shipped, keeps the mark with the number: a new code makes no price.
 * Whoever keeps an invented number clears the mark by hand.
 */
export function changedByHand(book: Book): Book {
  const shipped = shippedBook(book.system);
  const unmark = <R extends Row>(
    rows: readonly R[],
    first: readonly R[],
    name: (row: R) => string,
    same: Same<R>,
  ): R[] => {
    const known = new Map(first.map((row) => [name(row).toLowerCase(), row]));
    return rows.map((row) => {
      const before = known.get(name(row).toLowerCase());
      const asShipped = before ? same(row, before) : first.some((one) => same(row, one));
      return row.invented && !asShipped ? { ...row, invented: false } : row;
    });
  };
  const { company, products, pumps, labor, machines, pastJobs } = book;
  return {
    ...book,
    company: company.invented && company.name !== shipped.company.name ? { ...company, invented: false } : company,
    products: unmark(
      products,
      shipped.products,
      ({ code }) => code,
      (a, b) => equal(a.price, b.price),
    ),
    pumps: unmark(
      pumps,
      shipped.pumps,
      ({ name }) => name,
      (a, b) => equal(a.price, b.price),
    ),
    labor: {
      ...labor,
      burden: unmark(
        labor.burden,
        shipped.labor.burden,
        ({ line }) => line,
        (a, b) => equal(a.share, b.share),
      ),
      wages: unmark(
        labor.wages,
        shipped.labor.wages,
        ({ role }) => role,
        (a, b) => equal(a.wage, b.wage),
      ),
      rates: unmark(
        labor.rates,
        shipped.labor.rates,
        ({ task }) => task,
        (a, b) => equal(a.hours, b.hours) && equal(a.machineHours, b.machineHours),
      ),
      sizes: unmark(
        labor.sizes,
        shipped.labor.sizes,
        ({ pipe, stone }) => [pipe, stone].map((size) => size?.toPrecision(6) ?? "").join("|"),
        (a, b) =>
          equal(a.pipeTimes, b.pipeTimes) && equal(a.stoneTimes, b.stoneTimes) && equal(a.boulderTimes, b.boulderTimes),
      ),
    },
    // A lift can hurt: a price of one's own does not make the invented load chart one's own.
    machines: unmark(
      machines,
      shipped.machines,
      ({ name }) => name,
      (a, b) => equal(a.own, b.own) || (b.lift !== undefined && equal(a.lift, b.lift)),
    ),
    pastJobs: unmark(
      pastJobs,
      shipped.pastJobs,
      ({ name }) => name,
      (a, b) => equal(a.cost, b.cost),
    ),
  };
}

type Same<R> = (row: R, shipped: R) => boolean;

/** Equal but for what typing and converting lose. */
function equal(a: number | undefined, b: number | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  return Math.abs(a - b) <= 1e-7 * Math.max(Math.abs(a), Math.abs(b));
}
