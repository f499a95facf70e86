import { COLUMNS, type Field } from "../../csv/priceItem";
import type { PriceListShape, ReadAs } from "../../csv/readPriceList";
import { make } from "../ui/elements";
import { decimalSelect, select } from "../ui/fields";

/** How a file was read, with everything about it that the user may know better; a change reads the file again. */
export function priceReading(
  { headings, columns, customs }: PriceListShape,
  as: ReadAs,
  again: (as: ReadAs) => void,
  open = false,
): HTMLElement {
  const named = headings.map((heading, index) => [String(index), heading.trim() || `column ${index + 1}`] as const);
  const mapped = COLUMNS.map(({ field, heading }) => {
    const needed = field === "code" || field === "cost";
    const options =
      needed && columns.has(field)
        ? named
        : [["", needed ? "choose the column" : "not in the file"] as const, ...named];
    const column = select(heading, `price-column-${field}`, options, String(columns.get(field) ?? ""));
    column.field.addEventListener("change", () => again({ ...as, columns: moved(columns, field, column.field.value) }));
    return column.row;
  });
  return make(
    "details",
    { open: open || Boolean(as.columns ?? as.decimal) },
    make("summary", {}, "How the file was read: change it here"),
    decimalSelect("price-decimal", customs.decimal, (decimal) => again({ ...as, decimal })),
    ...mapped,
  );
}

/** The columns with one field moved; a column serves one field only. */
function moved(columns: ReadonlyMap<Field, number>, field: Field, chosen: string): ReadonlyMap<Field, number> {
  const others = [...columns].filter(([other, index]) => other !== field && String(index) !== chosen);
  return new Map(chosen === "" ? others : [...others, [field, Number(chosen)]]);
}
