import { Ref, type SheetLayout, type TableRef } from "../../layout";
import { areaAddress } from "../../layout/address";
import { fillDown } from "../money/cells";

/** Numbers the suppliers from whom something is to be ordered, in the order of their first lines, and tells each line its own. */
export function supplierNumbers(s: SheetLayout, lines: TableRef, own: TableRef): void {
  s.section("Suppliers, by the first line that orders from them");
  const [first, last] = [lines.column("supplier").top, own.column("supplier").bottom];
  // The headings between the lines are no orders: they are text.
  const wanted = "IF(ISNUMBER(TakeoffOrders),TakeoffOrders>0,FALSE)";
  const table = s.table({
    rows: last - first + 1,
    columns: [
      {
        key: "first",
        title: "First line",
        kind: "count",
        whole: true,
        formula: `=IF(${wanted}*(TakeoffSuppliers<>""),MATCH(TakeoffSuppliers,IF(${wanted},TakeoffSuppliers,""),0),"")`,
      },
      {
        key: "share",
        title: "Share of a supplier",
        source: "by definition: all lines of a supplier come to 1 together",
        kind: "number",
        whole: true,
        formula: '=IF([first]="",0,1/COUNTIF([first],[first]))',
      },
    ],
  });
  const [firsts, shares] = ["first", "share"].map((key) => areaAddress(table.column(key), true));
  for (const numbers of [lines.column("number"), own.column("number")]) {
    const column = table.column("first").left;
    const row = table.body.top + numbers.top - first;
    const mine = areaAddress(new Ref(s.name, row, column, row + numbers.bottom - numbers.top, column));
    fillDown(s, numbers, `IF(${mine}="","",ROUND(SUMIFS(${shares},${firsts},"<="&${mine}),0))`);
  }
}
