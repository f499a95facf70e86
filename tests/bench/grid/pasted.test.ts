import { describe, expect, it } from "vitest";
import { asTyped, pastedTexts, spread } from "../../../src/bench/grid/pasted";

const pastedRows = (text: string) => pastedTexts(text).map((row) => row.map(asTyped));

describe("pasted text", () => {
  it("is what it would be if it were typed", () => {
    // 26 November 2026 is day 46352 of a spreadsheet: 46023 is 1 January 2026, and 329 days follow to that day.
    const text = "Flagstone, tan\t1,420.50\t28%\t$6.4\t-3\t2026-11-26\tTRUE\t=A1*2";
    expect(pastedRows(text)).toEqual([["Flagstone, tan", 1420.5, 0.28, 6.4, -3, 46352, true, "=A1*2"]]);
  });

  it.each(["2' 6 1/2\"", "3-inch pipe", "1,42", "12345678901234567890", "007 B"])("keeps %s as text", (text) =>
    expect(pastedRows(text.includes('"') ? `"${text.replaceAll('"', '""')}"` : text)).toEqual([[text]]),
  );

  it("has a cell for each tab and a row for each line, and its last line end begins no row", () => {
    expect(pastedRows("1\t2\r\n\r\n3\r\n")).toEqual([
      [1, 2],
      ["", ""],
      [3, ""],
    ]);
    expect(pastedRows('"two\nlines"\t4')).toEqual([["two\nlines", 4]]);
    expect(pastedRows("")).toEqual([]);
  });
});

describe("a place to paste", () => {
  const at = (bottom: number, right: number) => ({ sheet: "Site", top: 2, left: 1, bottom, right });

  it("is as large as what is pasted, from the first selected cell on", () => {
    const { area, values } = spread(
      [
        [1, 2],
        [3, 4],
      ],
      at(2, 1),
    );
    expect(area).toEqual({ sheet: "Site", top: 2, left: 1, bottom: 3, right: 2 });
    expect(values).toEqual([
      [1, 2],
      [3, 4],
    ]);
    expect(
      spread(
        [
          [1, 2],
          [3, 4],
        ],
        at(4, 1),
      ).area,
    ).toEqual(area);
  });

  it("is filled again where the selection holds it a whole number of times", () => {
    expect(spread([[7]], at(4, 2)).values).toEqual([
      [7, 7],
      [7, 7],
      [7, 7],
    ]);
    expect(spread([[1, 2]], at(3, 4)).values).toEqual([
      [1, 2, 1, 2],
      [1, 2, 1, 2],
    ]);
  });
});
