import { serialOf } from "../../calc/quantity/dateSerial";
import type { CurvePoint } from "../../calc/pump/curve";
import { shippedBook } from "../../book/shipped";
import type { Book, BookPump } from "../../book/types";
import { newsForBook } from "../../job/company/takeBack";
import type { JobRow } from "../../job/facts";
import type { Recalculated } from "../recalculate";
import { BookRows } from "./bookRows";
import { changeInWords, heldRows, moneyInWords, sameValue, type Compared, type Difference } from "./difference";
import { TABLES } from "./tables";

/** Full is full: nothing is dropped without a word. */
export const noRow = (name: string, sheet: string): string => `${name} finds no free row on ${sheet} of the book.`;

/**
 * What a job knows that the book does not: changed prices, products and pumps of its own, each as the cells of the book
 * that it would change.
 *
 * @param file the book as it was opened
 */
export function bookNews(book: Book, file: Recalculated, job: Recalculated): Compared {
  const { system } = book;
  const { news, left } = newsForBook({ prices: heldRows("prices", job), ownLines: heldRows("ownLines", job) }, book);
  const rows = new BookRows(TABLES.products, file, system);
  const said = left.map(({ name, reason }) => `${name}: ${reason}.`);
  const differences = news.flatMap((one): Difference[] => {
    const { to } = one;
    if (one.what === "price") {
      const { from } = one;
      const day = from.day === to.day ? "" : `, ${changeInWords("day", serialOf(from.day), serialOf(to.day))}`;
      const words = `${changeInWords("price", from.price, to.price)} by the ${to.unit}${day}`;
      return [{ name: to.code, words, cells: rows.changed(to.row ?? 0, to, ["price", "supplier", "day", "mark"]) }];
    }
    const cells = rows.added(to);
    if (!cells) said.push(noRow(to.code, TABLES.products.sheet));
    const from = to.supplier === "" ? "" : `, from ${to.supplier}`;
    const words = `new: ${to.description}, ${moneyInWords(to.price ?? 0)} by the ${to.unit}${from}`;
    return cells ? [{ name: to.code, words, cells }] : [];
  });
  const pumps = pumpNews(book, file, job);
  return { differences: [...differences, ...pumps.differences], left: [...said, ...pumps.left] };
}

/** Pumps of the job that the book does not hold, and prices of those it holds; what came with the tool is no news. */
function pumpNews(book: Book, file: Recalculated, job: Recalculated): Compared {
  const byName = (pumps: readonly BookPump[]): Map<string, BookPump> =>
    new Map(pumps.map((pump) => [pump.name.toLowerCase(), pump]));
  const [known, shipped] = [byName(book.pumps), byName(shippedBook(book.system).pumps)];
  const rows = new BookRows(TABLES.pumps, file, book.system);
  const left: string[] = [];
  const held: readonly JobRow<"pumps">[] = heldRows("pumps", job);
  const differences = held.flatMap((row): Difference[] => {
    const name = row.name ?? "";
    const { price } = row;
    if (name === "" || typeof price !== "number") return [];
    const there = known.get(name.toLowerCase());
    const first = shipped.get(name.toLowerCase());
    if (sameValue(price, (there ?? first)?.price)) return [];
    if (there) {
      const to = { ...there, price, invented: false };
      return [
        {
          name,
          words: changeInWords("price", there.price, price),
          cells: rows.changed(there.row ?? 0, to, ["price", "mark"]),
        },
      ];
    }
    const curve = curveOf(row);
    if (curve.length < 2) {
      left.push(`${name} has no curve in the job: its head at no flow and one point more are needed.`);
      return [];
    }
    const to = {
      name,
      price,
      watts: row.watts ?? undefined,
      curve,
      supplier: "",
      theirs: "",
      day: "",
      invented: false,
    };
    const cells = rows.added(to);
    if (!cells) left.push(noRow(name, TABLES.pumps.sheet));
    return cells ? [{ name, words: `new pump, ${moneyInWords(price)}, ${curve.length} points`, cells }] : [];
  });
  return { differences, left };
}

function curveOf(row: JobRow<"pumps">): CurvePoint[] {
  const shutOff = row.shutOffHead ?? undefined;
  const points = ([1, 2, 3, 4, 5] as const).flatMap((place) => {
    const [flow, head] = [row[`flow${place}`], row[`head${place}`]];
    return typeof flow === "number" && typeof head === "number" ? [{ flow, head }] : [];
  });
  return shutOff === undefined ? [] : [{ flow: 0, head: shutOff }, ...points];
}
