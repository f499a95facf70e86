import type { PurchaseLine } from "../csv/purchaseOrdersCsv";
import { isoDay } from "../host/dates";
import type { Grid } from "../host/port";
import { TAKEOFF_KEYS } from "../workbook/sheets/takeoff/takeoffColumns";

/** The names that `purchaseLines` needs, in its order. */
export const ORDER_PLACES = ["TakeoffLines", "SupplierTable", "ParticularCodes", "ParticularTexts"] as const;

/**
 * The lines to order, supplier by supplier: whatever Takeoff orders from a named supplier at a known price.
 * A supplier without an order number on Orders goes by name.
 */
export function purchaseLines([takeoff = [], suppliers = [], codes = [], texts = []]: readonly Grid[]): PurchaseLine[] {
  const known = new Map(suppliers.map(([supplier, order, wanted]) => [String(supplier), { order, wanted }]));
  const which = new Map(codes.map(([code], index) => [String(code), String(texts[index]?.[0] ?? "")]));
  const lines = takeoff.flatMap((row): PurchaseLine[] => {
    const cell = (key: (typeof TAKEOFF_KEYS)[number]) => row[TAKEOFF_KEYS.indexOf(key)] ?? "";
    const [quantity, price, supplier] = [cell("order"), cell("price"), String(cell("supplier"))];
    if (typeof quantity !== "number" || typeof price !== "number" || !(quantity > 0) || supplier === "") return [];
    const { order, wanted } = known.get(supplier) ?? {};
    return [
      {
        order: String(order ?? "") || supplier,
        supplier,
        wanted: isoDay(wanted),
        code: String(cell("code")),
        description: String(cell("description")),
        which: which.get(String(cell("code"))) ?? "",
        quantity,
        unit: String(cell("unit")),
        price,
      },
    ];
  });
  const rank = [...known.keys()];
  const place = (supplier: string): number => (rank.includes(supplier) ? rank.indexOf(supplier) : rank.length);
  return lines.sort((a, b) => place(a.supplier) - place(b.supplier));
}
