import { COLUMNS, type Field } from "../../csv/priceItem";
import type { PriceListFile, ReadAs } from "../../csv/readPriceList";
import { make } from "../ui/elements";

/** How a file was read, with everything about it that the user may know better; a change reads the file again. */
export function priceReading(
  { headings, columns, customs }: PriceListFile,
  as: ReadAs,
  again: (as: ReadAs) => void,
): HTMLElement {
  const select = (label: string, id: string, options: readonly (readonly [string, string])[], chosen: string) => {
    const field = make("select", { id }, ...options.map(([value, text]) => make("option", { value }, text)));
    field.value = chosen;
    return { field, row: make("p", {}, make("label", { for: id }, label), " ", field) };
  };
  const decimal = select(
    "Decimal mark",
    "price-decimal",
    [
      [".", "point: 1,250.50"],
      [",", "comma: 1.250,50"],
    ],
    customs.decimal,
  );
  decimal.field.addEventListener("change", () => again({ ...as, decimal: decimal.field.value === "," ? "," : "." }));
  const named = headings.map((heading, index) => [String(index), heading.trim() || `column ${index + 1}`] as const);
  const mapped = COLUMNS.map(({ field, heading }) => {
    const needed = field === "code" || field === "cost";
    const options = needed ? named : [["", "not in the file"] as const, ...named];
    const column = select(heading, `price-column-${field}`, options, String(columns.get(field) ?? ""));
    column.field.addEventListener("change", () => again({ ...as, columns: moved(columns, field, column.field.value) }));
    return column.row;
  });
  return make(
    "details",
    { open: Boolean(as.columns ?? as.decimal) },
    make("summary", {}, "How the file was read: change it here"),
    decimal.row,
    ...mapped,
  );
}

/** The columns with one field moved; a column serves one field only. */
function moved(columns: ReadonlyMap<Field, number>, field: Field, chosen: string): ReadonlyMap<Field, number> {
  const others = [...columns].filter(([other, index]) => other !== field && String(index) !== chosen);
  return new Map(chosen === "" ? others : [...others, [field, Number(chosen)]]);
}
