import { describe, expect, it } from "vitest";
import { choose, offers, type Choice } from "../../src/book/choose";
import { askingCode } from "../../src/book/ask";
import { FOOT, INCH, POUND, product } from "./products";

const pipe = (inches: number, price: number | undefined, type = "Sch 40 PVC") =>
  product({ code: `P${inches}`, kind: "pipe", size: inches * INCH, type, unit: "ft", pack: 10, waste: 0.05, price });
const pipes = [pipe(2, 1.2), pipe(3, 2.6), pipe(4, 3.9)];

function found(choice: Choice): Exclude<Choice, { missing: string }> {
  if ("missing" in choice) throw new Error(choice.missing);
  return choice;
}

describe("choose", () => {
  it("buys the size that is drawn", () => {
    // 31 ft + 5 % = 32.55 ft, in lengths of 10 ft: 40 ft; 40 × 3.90 = 156.00, 40 × 1.20 = 48.00.
    const needed = { length: 31 * FOOT };
    const four = found(choose(pipes, { kind: "pipe", size: 4 * INCH, type: "Sch 40 PVC" }, needed, "US"));
    expect([four.product.code, four.order, four.cost]).toEqual(["P4", 40, 156]);
    const two = found(choose(pipes, { kind: "pipe", size: 2 * INCH, type: "Sch 40 PVC" }, needed, "US"));
    expect([two.product.code, two.order, two.cost]).toEqual(["P2", 40, 48]);
  });

  it("never takes another size or type, and says what there is", () => {
    const six = choose(pipes, { kind: "pipe", size: 6 * INCH, type: "Sch 40 PVC" }, { length: 1 }, "US");
    expect(six).toEqual({ missing: "the book holds no Sch 40 PVC pipe of 6 in; it has 2 in, 3 in, 4 in" });
    const other = choose(pipes, { kind: "pipe", size: 3 * INCH, type: "Sch 80 PVC" }, { length: 1 }, "US");
    expect(other).toEqual({ missing: "the book holds no Sch 80 PVC pipe of 3 in" });
    const box = choose(pipes, { kind: "spillway box", size: 24 * INCH }, { pieces: 1 }, "US");
    expect(box).toEqual({ missing: "the book holds no spillway box" });
  });

  it("tells 63 mm from 2 1/2 in", () => {
    const sold = [product({ code: "M63", kind: "pipe", size: 0.063, unit: "m" })];
    expect(choose(sold, { kind: "pipe", size: 2.5 * INCH }, { length: 1 }, "SI")).toHaveProperty("missing");
  });

  it("says that a product has no price", () => {
    const choice = choose([pipe(3, undefined)], { kind: "pipe", size: 3 * INCH, type: "Sch 40 PVC" }, {}, "US");
    expect(choice).toHaveProperty("missing", "P3 is sold by the ft: the book must say what one weighs");
    const length = { length: 1 };
    const blank = choose([pipe(3, undefined)], { kind: "pipe", size: 3 * INCH, type: "Sch 40 PVC" }, length, "US");
    expect(blank).toHaveProperty("missing", "P3 has no price");
  });

  it("takes a product that names no size for every size, and one that names it first", () => {
    const any = product({ code: "ANY", kind: "gravel", unit: "ton", price: 50 });
    const river = product({ code: "RIVER", kind: "gravel", type: "river stone", unit: "ton", price: 60 });
    const of = (type: string): string =>
      found(choose([any, river], { kind: "gravel", type }, { weight: 1 }, "US")).product.code;
    expect([of("river stone"), of("pea gravel")]).toEqual(["RIVER", "ANY"]);
  });

  it("buys at least the minimum, and adds freight once", () => {
    // 0.4 ton needed, 1 ton is the least: 57.50, and 85.00 to bring it; a ton is 2000 lb.
    const gravel = product({ code: "G", kind: "gravel", unit: "ton", price: 57.5, minimum: 1, pack: 0.5, freight: 85 });
    const bought = found(choose([gravel], { kind: "gravel" }, { weight: 800 * POUND }, "US"));
    expect([bought.need, bought.order, bought.cost, bought.freight]).toEqual([0.4, 1, 57.5, 85]);
    expect(bought.weight).toBeCloseTo(2000 * POUND, 9);
    expect(found(choose([gravel], { kind: "gravel" }, { weight: 0 }, "US"))).toMatchObject({ order: 0, freight: 0 });
  });

  it("buys stone by volume or by the bag where the book says what one weighs", () => {
    const byYard = product({ code: "Y", kind: "gravel", unit: "yd³", price: 70, weight: 2700 * POUND, pack: 0.5 });
    expect(found(choose([byYard], { kind: "gravel" }, { weight: 2700 * POUND }, "US")).order).toBe(1);
    const byBag = product({ code: "B", kind: "gravel", unit: "bag", price: 6 });
    expect(choose([byBag], { kind: "gravel" }, { weight: 1 }, "US")).toHaveProperty(
      "missing",
      "B is sold by the bag: the book must say what one weighs",
    );
  });

  it("buys a sheet by area, by length off the roll, and by the roll", () => {
    // 1200 ft² off a roll 20 ft wide: 60 ft; rolls of 20 × 50 ft: 1.2, so 2.
    const area = { area: 1200 * FOOT ** 2 };
    const roll = { kind: "liner", size: 20 * FOOT } as const;
    const byFoot = found(choose([product({ ...roll, code: "L", unit: "ft" })], roll, area, "US"));
    expect(byFoot.need).toBeCloseTo(60, 9);
    const whole = product({ ...roll, code: "R", unit: "roll", length: 50 * FOOT });
    expect(found(choose([whole], roll, area, "US")).order).toBe(2);
  });

  it("lists what has a price, the smallest first", () => {
    expect(offers([...pipes, pipe(6, undefined)].reverse(), "pipe", "sch 40 pvc").map(({ code }) => code)).toEqual([
      "P2",
      "P3",
      "P4",
    ]);
  });
});

describe("askingCode", () => {
  it("names kind, size and type", () => {
    expect(askingCode({ kind: "pipe", size: 2.5 * INCH, type: "Sch 40 PVC" }, "US")).toBe("PIPE 2.5 Sch 40 PVC");
    expect(askingCode({ kind: "pipe", size: 0.063, type: "PVC-U PN10" }, "SI")).toBe("PIPE 63 PVC-U PN10");
    const module = { kind: "void module", length: 27 * INCH, width: 16 * INCH, height: 17 * INCH } as const;
    expect(askingCode(module, "US")).toBe("MODULE 27x16x17");
    expect(askingCode({ kind: "tub", size: 231 * 150 * INCH ** 3 }, "US")).toBe("TUB 150");
    expect(askingCode({ kind: "gravel" }, "US")).toBe("GRAVEL");
  });
});
