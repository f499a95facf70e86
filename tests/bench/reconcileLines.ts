/** Rows for RECONCILE: `count` in all, with split units, unordered codes and a few hundred orders. */
export function manyPapers(count: number): [orders: unknown[][], deliveries: unknown[][], invoices: unknown[][]] {
  const third = Math.ceil(count / 3);
  const rows = Array.from({ length: third }, (_, i) => i);
  const order = (i: number): string => `PO-${Math.floor(i / 8)}`;
  const item = (i: number): string => `ITEM-${i % 8}`;
  const tons = (i: number): number => 20 + (i % 7) / 4;
  return [
    rows.map((i) => [order(i), item(i), tons(i), "ton", 31.5 + (i % 3), `Supplier ${i % 40}`, i % 5 ? "" : "gravel"]),
    rows.map((i) => [
      order(i),
      item(i),
      i % 4 ? tons(i) : tons(i) * 2000,
      i % 4 ? "ton" : "lb",
      `T${i}`,
      46000 + (i % 300),
    ]),
    rows.map((i) => [
      order(i),
      i % 11 ? item(i) : `X-${i}`,
      tons(i),
      "ton",
      31.5 + (i % 3),
      `I${i}`,
      46001 + (i % 300),
    ]),
  ];
}
