import { COLUMNS, type PriceItem } from "./priceItem";
import type { CsvStyle } from "./csvStyle";
import { writeCsv } from "./writeCsv";

/** A price list as a CSV file that `readPriceList` reads back unchanged. */
export function priceListCsv(items: readonly PriceItem[], style?: CsvStyle): string {
  return writeCsv(
    COLUMNS.map(({ heading }) => heading),
    items.map((item) =>
      COLUMNS.map(({ field }) => {
        const value = item[field];
        return typeof value === "boolean" ? (value ? "yes" : "no") : value;
      }),
    ),
    style,
  );
}
