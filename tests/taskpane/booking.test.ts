import { describe, expect, it } from "vitest";
import { bookingWords, bookOrders } from "../../src/taskpane/booking";
import { TAKEOFF_KEYS } from "../../src/workbook/sheets/takeoff/takeoffColumns";

const row = (cells: Partial<Record<(typeof TAKEOFF_KEYS)[number], string | number>>) =>
  TAKEOFF_KEYS.map((key) => cells[key] ?? "");
const takeoff = [
  row({ code: "PACKS", unit: "each", price: 4, supplier: "South" }),
  row({ code: "LEAST", unit: "ton", price: 57.5, supplier: "South" }),
  row({ code: "ROUND", unit: "each", price: 1, supplier: "North" }),
  row({ code: "", unit: "job", price: 9, supplier: "South" }),
  row({ description: "What", supplier: "Supplier" }),
];
const open = [[5], [0], [7], [1], ["Still to order"]];
const suppliers = [
  ["North", "", ""],
  ["South", "P-2", 46_200],
];
const blank = ["", "", "", "", "", "", ""];
const book = [["P-1", "OLD", 1, "each", 2, "West", ""], blank, ["P-1", "CUT", -1, "each", 2, "West", ""], blank, blank];
const place = { sheet: "Orders", top: 69, left: 1, bottom: 73, right: 7 };

describe("orders into the book", () => {
  it("are what is still open, below the book's last line, under the supplier's number", () => {
    const booking = bookOrders([takeoff, open, suppliers, book], place, 46_205);
    // The last line of the book is its third, row 72 of the sheet; the day stands in column I.
    expect(booking.change).toEqual({
      place: "Orders!B73:I73",
      values: [["P-2", "PACKS", 5, "each", 4, "South", "", 46_205]],
    });
    expect(booking).toMatchObject({ lines: 1, unnumbered: ["North"], uncoded: 1, crowded: 0 });
    expect(bookingWords(booking)).toMatch(/^1 line entered.*North.*want of a code/);
  });

  it("begin at the top of an empty book, and leave out what no supplier is named for", () => {
    const homeless = [row({ code: "LOOSE", unit: "each", price: 2 }), ...takeoff];
    const booking = bookOrders([homeless, [[3], ...open], suppliers, [blank, blank]], place, 46_205);
    expect(booking.change?.place).toBe("Orders!B70:I70");
    expect(bookingWords(booking)).toBe(
      "1 line entered at the end of the order book on Orders. " +
        "Give an order number on Orders first: North. Left out for want of a code on Takeoff: 1 line.",
    );
  });

  it("say nothing of what there is none of", () => {
    const all = [
      ["North", "P-1", ""],
      ["South", "P-2", ""],
    ];
    const booking = bookOrders([takeoff.slice(0, 3), open, all, [blank, blank, blank]], place, 46_205);
    expect(bookingWords(booking)).toBe("2 lines entered at the end of the order book on Orders.");
  });

  it("overwrite nothing where the book is full", () => {
    const full = bookOrders([takeoff, open, suppliers, book.slice(0, 3)], { ...place, bottom: 71 }, 46_205);
    expect(full).toMatchObject({ change: undefined, lines: 0, crowded: 1 });
    expect(bookingWords(full)).toContain("No free row in the book for 1 line.");
  });

  it("are none when everything is ordered", () => {
    const none = bookOrders([takeoff, [[0], [0], [0], [0], [""]], suppliers, book], place, 46_205);
    expect(none.change).toBeUndefined();
    expect(bookingWords(none)).toContain("nothing left to order");
  });
});
