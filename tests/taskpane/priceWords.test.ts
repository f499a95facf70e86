import { describe, expect, it } from "vitest";
import { USUAL, type PriceItem } from "../../src/csv/priceItem";
import { counted } from "../../src/taskpane/counted";
import { comparePriceRows } from "../../src/taskpane/prices";
import { changeWords, newWords, previewWords, takenWords } from "../../src/taskpane/priceWords";

const item = (code: string, cost: number): PriceItem => ({ code, cost, ...USUAL });

describe("what is said of a price list", () => {
  it("counts in one and in many", () => {
    expect([counted(0, "line"), counted(1, "line"), counted(20_000, "line")]).toEqual([
      "0 lines",
      "1 line",
      "20,000 lines",
    ]);
  });

  it("sums up what the file would change", () => {
    const changes = comparePriceRows(
      [item("A", 1), item("B", 2), item("C", 3), undefined],
      [item("A", 9), item("C", 3), item("D", 4), item("E", 5)],
    );
    expect(
      previewWords(changes, {
        ignored: ["Colour"],
        unread: [{ field: "pack", cells: 3, row: 7, example: "Box of 10" }],
      }),
    ).toEqual([
      "1 item changes, 2 new, 1 the same.",
      "Not in the file, and left as they are: 1 item.",
      "New, but without a free row on Rates, and left out: 1 item.",
      "Columns left out: Colour.",
      'Not read, and left as it is or as it usually is: pack of 3 items, such as "Box of 10" in row 7.',
    ]);
  });

  it("says nothing of what there is none of", () => {
    expect(previewWords(comparePriceRows([item("A", 1)], [item("A", 1)]), { ignored: [], unread: [] })).toEqual([
      "0 items change, 0 new, 1 the same.",
    ]);
  });

  it("names a field as the sheet does, and shows yes, no and blank", () => {
    expect(
      changeWords([
        { field: "cost", from: 10, to: 0 },
        { field: "taxable", from: true, to: false },
        { field: "theirs", from: "", to: "40-118" },
      ]),
    ).toBe("cost 10 → 0, taxable yes → no, supplier's code blank → 40-118");
    expect(newWords({ ...item("N", 6.5), description: "Clamp" })).toBe("Clamp, 6.5 per each");
    expect(newWords(item("N", 6.5))).toBe("6.5 per each");
  });

  it("tells what was written from what is protected", () => {
    expect(takenWords(1, 0)).toBe("1 cell of the price list was changed.");
    expect(takenWords(2400, 12)).toBe(
      "2,400 cells of the price list were changed. Protected, and left as they are: 12 cells.",
    );
  });
});
