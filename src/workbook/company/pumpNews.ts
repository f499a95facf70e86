import { fromInside, unitLabel } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Book, BookPump } from "../../book/types";
import type { ListedPump } from "../../csv/readPumpList";
import type { Recalculated } from "../recalculate";
import { noRow } from "./bookNews";
import { BookRows } from "./bookRows";
import { changeInWords, moneyInWords, sameValue, type Compared, type Difference } from "./difference";
import { TABLES } from "./tables";

/** What a maker's list of pumps would change in the book: new pumps, and curves, prices and power of those it holds. */
export function pumpListNews(book: Book, file: Recalculated, list: readonly ListedPump[]): Compared {
  const known = new Map(book.pumps.map((pump) => [pump.name.toLowerCase(), pump]));
  const rows = new BookRows(TABLES.pumps, file, book.system);
  const left: string[] = [];
  const differences = list.flatMap((listed): Difference[] => {
    const there = known.get(listed.name.toLowerCase());
    const to = pumpOf(listed, there);
    const cells = there ? rows.changed(there.row ?? 0, to) : rows.added(to);
    if (!cells) {
      left.push(noRow(listed.name, TABLES.pumps.sheet));
      return [];
    }
    if (cells.length === 0) return [];
    const words = there ? changes(there, to, book.system) : `new: ${pumpInWords(to, book.system)}`;
    return [{ name: there?.name ?? listed.name, words, cells }];
  });
  return { differences, left };
}

/** What a list leaves blank stays as the book has it; its curve takes the place of the old one. */
function pumpOf(listed: ListedPump, there: BookPump | undefined): BookPump {
  const { name, curve } = listed;
  return {
    ...(there ?? { day: "" }),
    name: there?.name ?? name,
    price: listed.price ?? there?.price,
    watts: listed.watts ?? there?.watts,
    supplier: listed.supplier || (there?.supplier ?? ""),
    theirs: listed.theirs || (there?.theirs ?? ""),
    curve,
    invented: false,
  };
}

function changes(from: BookPump, to: BookPump, system: UnitSystem): string {
  const said = (["price", "watts", "supplier", "theirs"] as const)
    .filter((key) => !sameValue(from[key], to[key]))
    .map((key) => changeInWords(key, from[key], to[key]));
  const sameCurve =
    from.curve.length === to.curve.length &&
    from.curve.every(({ flow, head }, index) => near(flow, to.curve[index]?.flow) && near(head, to.curve[index]?.head));
  if (!sameCurve) said.push(`curve ${curveInWords(from, system)} → ${curveInWords(to, system)}`);
  return said.length > 0 ? said.join(", ") : "no longer marked invented";
}

function near(a: number, b: number | undefined): boolean {
  return b !== undefined && Math.abs(a - b) <= 1e-6 * Math.max(a, b);
}

function pumpInWords(pump: BookPump, system: UnitSystem): string {
  const price = pump.price === undefined ? "no price" : moneyInWords(pump.price);
  return `${price}, ${curveInWords(pump, system)}`;
}

/** "5 points, 18 ft at no flow to 4 ft at 3,000 gph" */
export function curveInWords({ curve }: Pick<BookPump, "curve">, system: UnitSystem): string {
  const shown = (measure: "flow" | "head", value: number): string =>
    `${fromInside(measure, value, system).toLocaleString("en", { maximumSignificantDigits: 4 })} ${unitLabel(measure, system)}`;
  const [first, last] = [curve[0], curve.at(-1)];
  if (!first || !last || curve.length < 2) return "no curve";
  return `${curve.length} points, ${shown("head", first.head)} at no flow to ${shown("head", last.head)} at ${shown("flow", last.flow)}`;
}
