import { sidesIn } from "../../book/sides";
import { wantedByCode } from "../../book/fromCode";
import type { Book, Product } from "../../book/types";
import { readSaleUnit } from "../../book/units";
import type { JobRow } from "../facts";

/**
 * A book whose products are those of a job's price list, by the codes that the takeoff asks for; undefined where the
 * list names no pipe by its size, and so does not come from a book. What a job keeps in tables of its own, liner and
 * machines, stays as the book has it. A tub is drafted
 * where its description names its sides.
 */
export function bookOfLines(lines: readonly JobRow<"prices">[], book: Book): Book | undefined {
  const { system } = book;
  const products = lines.flatMap((line): Product[] => {
    const { code = "", description = code, cost, pack, minimum, waste, mark } = line;
    const unit = readSaleUnit(line.unit ?? "each");
    const wanted = wantedByCode(code, system);
    if (!wanted || !unit || typeof cost !== "number") return [];
    return [
      {
        ...wanted,
        ...(wanted.kind === "tub" ? sidesIn(description) : {}),
        ...{
          code,
          description,
          unit,
          price: cost,
          freight: line.freight ?? 0,
          costKind: "material",
          taxable: line.taxable !== "no",
        },
        ...{ pack: pack ?? 1, minimum: minimum ?? 0, waste: waste ?? 0, supplier: "", theirs: "", day: "" },
        invented: (mark ?? "") !== "",
      },
    ];
  });
  if (!products.some(({ kind, size }) => kind === "pipe" && size !== undefined)) return undefined;
  return { ...book, products: [...products, ...book.products.filter(({ kind }) => kind === "liner")] };
}
