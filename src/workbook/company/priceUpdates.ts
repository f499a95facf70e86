import { sameSize } from "../../book/ask";
import { aboutUnit } from "../../book/units";
import type { Book } from "../../book/types";
import { FACTS, type JobRow } from "../../job/facts";
import type { TableFact } from "../../job/facts/fact";
import { refreshed } from "../../job/company/refresh";
import type { CellValue } from "../model";
import type { Recalculated } from "../recalculate";
import { tablePlaces } from "../jobCells/places";
import { changeInWords, heldIn, heldRows, sameValue, type Compared, type Difference } from "./difference";
import { rateUpdates } from "./rateUpdates";

/** What would change in a job if it were brought up to date with the book: its price list, pumps, rolls and rates. */
export function priceUpdates(book: Book, job: Recalculated): Compared {
  const { updates, left } = refreshed(heldRows("prices", job), book);
  const cellOf = cellsOf(FACTS.prices, job);
  const differences = updates.map(({ code, at, changes }): Difference => ({
    name: code,
    words: changes.map(({ field, from, to }) => changeInWords(field, from, to)).join(", "),
    cells: changes.map(({ field, to }) => {
      // A mark follows from how the price came.
      const cell = cellOf(field === "mark" ? "came" : field, at);
      return { cell, from: heldIn(job, cell), to: (to ?? "") as CellValue };
    }),
  }));
  const rates = rateUpdates(book, job);
  return {
    differences: [...differences, ...pumpPrices(book, job), ...rollPrices(book, job), ...rates.differences],
    left: [...left.map(({ name, reason }) => `${name} ${reason}.`), ...rates.left],
  };
}

function cellsOf(table: TableFact, { names }: Recalculated): (key: string, row: number) => string {
  const places = new Map(tablePlaces(table, names).map((place) => [place.key, place.cell]));
  return (key, row) => places.get(key)?.(row) ?? "";
}

function pumpPrices({ pumps }: Book, job: Recalculated): Difference[] {
  const known = new Map(pumps.map((pump) => [pump.name.toLowerCase(), pump]));
  const rows: readonly JobRow<"pumps">[] = heldRows("pumps", job);
  const cellOf = cellsOf(FACTS.pumps, job);
  return rows.flatMap(({ name = "", price }, row) => {
    const today = known.get(name.toLowerCase())?.price;
    return priceChange(name, price ?? undefined, today, cellOf("price", row), job);
  });
}

function rollPrices({ products }: Book, job: Recalculated): Difference[] {
  const rows: readonly JobRow<"rolls">[] = heldRows("rolls", job);
  const cellOf = cellsOf(FACTS.rolls, job);
  return rows.flatMap(({ width, price, per = "area" }, row) => {
    const product = products.find(
      ({ kind, size, unit, price: today }) =>
        kind === "liner" &&
        today !== undefined &&
        size !== undefined &&
        width !== undefined &&
        width !== null &&
        sameSize(size, width) &&
        perOf(aboutUnit(unit).counts) === per,
    );
    if (!product) return [];
    return priceChange(product.code, price ?? undefined, product.price, cellOf("price", row), job);
  });
}

/** What the price of a roll is for, by what its unit of sale counts. */
function perOf(counts: string): string {
  return counts === "area" || counts === "length" ? counts : "roll";
}

function priceChange(
  name: string,
  from: number | undefined,
  to: number | undefined,
  cell: string,
  job: Recalculated,
): Difference[] {
  if (to === undefined || sameValue(from, to)) return [];
  return [{ name, words: changeInWords("cost", from, to), cells: [{ cell, from: heldIn(job, cell), to }] }];
}
