import { expect, it } from "vitest";
import fc from "fast-check";
import { joined, type Write } from "../../src/host/joined";

const write = fc
  .record({
    top: fc.nat(6),
    left: fc.nat(2),
    height: fc.integer({ min: 1, max: 2 }),
    width: fc.integer({ min: 1, max: 2 }),
  })
  .chain(({ top, left, height, width }) =>
    fc
      .array(fc.array(fc.nat(99), { minLength: width, maxLength: width }), { minLength: height, maxLength: height })
      .map((values): Write => ({
        area: { sheet: "A", top, left, bottom: top + height - 1, right: left + width - 1 },
        values,
      })),
  );

/** What cells hold after the writes, one after the other. */
function written(writes: readonly Write[]): Map<string, unknown> {
  const cells = new Map<string, unknown>();
  for (const { area, values } of writes)
    values.forEach((row, down) =>
      row.forEach((value, across) => cells.set(`${area.top + down},${area.left + across}`, value)),
    );
  return cells;
}

it("joined writes write the same", () => {
  fc.assert(
    fc.property(fc.array(write, { maxLength: 12 }), (writes) => {
      const pieces = joined(writes);
      expect(written(pieces)).toEqual(written(writes));
      for (const { area, values } of pieces) expect(values).toHaveLength(area.bottom - area.top + 1);
    }),
  );
});

it("rows that follow each other become one piece, others stay apart", () => {
  const row = (sheet: string, top: number): Write => ({
    area: { sheet, top, left: 0, bottom: top, right: 1 },
    values: [[top, 0]],
  });
  const pieces = joined([row("A", 3), row("A", 4), row("A", 6), row("B", 7)]);
  expect(pieces.map(({ area }) => [area.sheet, area.top, area.bottom])).toEqual([
    ["A", 3, 4],
    ["A", 6, 6],
    ["B", 7, 7],
  ]);
});
