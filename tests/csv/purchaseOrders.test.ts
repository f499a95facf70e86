import { describe, expect, it } from "vitest";
import { purchaseOrdersCsv, type PurchaseLine } from "../../src/csv/purchaseOrdersCsv";

const line = (order: string, code: string, quantity: number, price: number): PurchaseLine => ({
  order,
  supplier: order === "PO-1" ? "Quarry" : "Pipe yard",
  wanted: "2031-05-28",
  code,
  description: `About ${code}`,
  which: code === "C" ? '1 1/2 in, "Sch 40"' : "",
  quantity,
  unit: "each",
  price,
});

describe("purchaseOrdersCsv", () => {
  const lines = [
    line("PO-1", "A", 7, 1.115),
    line("PO-2", "B", 2, 10),
    line("PO-1", "C", 7, 1.115),
    line("PO-1", "D", -1, 0.05),
  ];

  it("writes each order with rounded lines and a total that is their sum", () => {
    // 7 × 1.115 = 7.805, 7.81 rounded; 7.81 + 7.81 - 0.05 = 15.57. A credit's minus is no formula.
    expect(purchaseOrdersCsv(lines, { decimal: ".", mark: false })).toBe(
      [
        "Order,Supplier,Wanted,Code,Description,Which,Quantity,Unit,Price,Amount",
        "PO-1,Quarry,2031-05-28,A,About A,,7,each,1.115,7.81",
        `PO-1,Quarry,2031-05-28,C,About C,"1 1/2 in, ""Sch 40""",7,each,1.115,7.81`,
        "PO-1,Quarry,2031-05-28,D,About D,,-1,each,0.05,-0.05",
        "PO-1,Quarry,,,Total PO-1,,,,,15.57",
        "PO-2,Pipe yard,2031-05-28,B,About B,,2,each,10,20",
        "PO-2,Pipe yard,,,Total PO-2,,,,,20",
        "",
      ].join("\r\n"),
    );
  });

  it("writes decimal commas between semicolons, behind a mark", () => {
    const csv = purchaseOrdersCsv(lines.slice(0, 1), { decimal: ",", mark: true });
    expect(csv.startsWith("\uFEFFOrder;Supplier")).toBe(true);
    expect(csv).toContain(";7;each;1,115;7,81\r\n");
  });

  it("guards what suppliers and descriptions may hide", () => {
    const csv = purchaseOrdersCsv([
      { ...line("=PO", "A", 1, 1), supplier: "@x", description: '=HYPERLINK("http://x")', which: "=1+1" },
    ]);
    expect(csv).toContain("'=PO,'@x,");
    expect(csv).toContain('"\'=HYPERLINK(""http://x"")",\'=1+1,1,each');
  });
});
