import { expect, it } from "vitest";
import { shippedBook } from "../../../src/book/shipped";
import { offersOfBook } from "../../../src/job/draft/offersOfBook";
import { draftOf } from "../../../src/job/draft/draft";
import { takeoffTerms } from "../../../src/job/takeoff/terms";
import { FOOT, POUND, product } from "../../book/products";
import { wishOf } from "../draft/sites";

// A yard of 2,700 lb is 1.35 tons of 2,000 lb: at 70.00 it is 51.85 a ton, sold by 0.675 ton where half a yard is sold.
const byTheYard = product({ code: "Y", kind: "gravel", unit: "yd³", price: 70, weight: 2700 * POUND, pack: 0.5 });

it("turns what is sold by volume or by the roll into the takeoff's tons and square feet", () => {
  expect(takeoffTerms(byTheYard, "US")).toMatchObject({ unit: "ton" });
  expect(takeoffTerms(byTheYard, "US")?.cost).toBeCloseTo(51.85185, 5);
  expect(takeoffTerms(byTheYard, "US")?.pack).toBeCloseTo(0.675, 9);
  // A roll of 6 x 250 ft is 1,500 ft²: at 510.00 it is 0.34 a square foot.
  const roll = product({ code: "R", kind: "fabric", size: 6 * FOOT, length: 250 * FOOT, unit: "roll", price: 510 });
  expect(takeoffTerms(roll, "US")).toMatchObject({ unit: "ft²", cost: 0.34, pack: 1500 });
  expect(takeoffTerms(product({ code: "B", kind: "gravel", unit: "bag" }), "US")).toBeUndefined();
});

it("prices the stone of a draft so, in its list and where it chooses the basin", () => {
  const shipped = shippedBook("US");
  const products = shipped.products.map((one) => (one.kind === "gravel" ? { ...byTheYard, type: one.type } : one));
  const offers = offersOfBook({ ...shipped, products: products as typeof shipped.products });
  // 70.00 for 2,700 lb is 0.05716 a kg.
  expect(offers.price("gravel")).toBeCloseTo(0.05716, 5);
  const { job } = draftOf({ ...wishOf({}, "US"), offers });
  const gravel = job.prices.find(({ code }) => code?.startsWith("GRAVEL"));
  expect(gravel).toMatchObject({ unit: "ton" });
  expect(gravel?.cost).toBeCloseTo(51.85185, 5);
});
