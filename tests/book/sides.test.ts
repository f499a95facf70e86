import { expect, it } from "vitest";
import { sidesIn, withSides } from "../../src/book/sides";

const INCH = 0.0254;

it("reads the sides that a description names, in inches or millimeters", () => {
  expect(sidesIn("Tub, 95 gal, 48 x 36 x 18 in")).toEqual({ length: 48 * INCH, width: 36 * INCH, height: 18 * INCH });
  expect(sidesIn("Deep tub 1500×1200×500mm, black")).toEqual({ length: 1.5, width: 1.2, height: 0.5 });
  for (const text of ["Tub, 95 gal", "Tub 48 x 36 in", "Tub 0 x 36 x 18 in", "Tub 48 x 36 x 18"]) {
    expect(sidesIn(text), text).toBeUndefined();
  }
});

it("puts the sides of a tub behind its description, once", () => {
  const tub = { kind: "tub", size: 0.65, length: 1.5, width: 1.2, height: 0.5, description: "Tub, 650 L" } as const;
  const listed = withSides(tub, "SI");
  expect(listed).toBe("Tub, 650 L, 1500 x 1200 x 500 mm");
  expect(withSides({ ...tub, description: listed }, "SI")).toBe(listed);
  expect(withSides({ ...tub, kind: "pump well" }, "SI")).toBe("Tub, 650 L");
});
