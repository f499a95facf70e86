import { expect, it } from "vitest";
import { askingCode } from "../../src/book/ask";
import { wantedByCode } from "../../src/book/fromCode";
import { shippedBook } from "../../src/book/shipped";

it("reads kind, size and type from a code of the takeoff", () => {
  // 3 in are 0.0762 m by definition of the inch.
  expect(wantedByCode("pipe 3 Sch 40 PVC", "US")).toEqual({
    kind: "pipe",
    size: expect.closeTo(0.0762, 12),
    type: "Sch 40 PVC",
  });
  expect(wantedByCode("Mulch", "US")).toBeUndefined();
});

it.each(["US", "SI"] as const)("makes every code of the shipped book's kinds again, %s", (system) => {
  const codes = shippedBook(system)
    .products.filter(({ kind }) => kind !== "other")
    .map((product) => askingCode(product, system));
  expect(codes.length).toBeGreaterThan(20);
  expect(codes.filter((code) => askingCode(wantedByCode(code, system) ?? { kind: "other" }, system) !== code)).toEqual(
    [],
  );
});
