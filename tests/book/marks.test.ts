import { expect, it } from "vitest";
import { changedByHand } from "../../src/book/marks";
import { shippedBook } from "../../src/book/shipped";

const shipped = shippedBook("US");
const [first] = shipped.products.filter(({ price }) => price !== undefined);
if (first?.price === undefined) throw new Error("the shipped book has no price");

// Worked out by hand: an invented number stays invented under whatever name it stands; 0.37 more is a number of one's own.
it.each([
  ["as it came", {}, true],
  ["under a code of its own", { code: "OWN-1" }, true],
  ["of another day", { day: "2027-01-05" }, true],
  ["with a price of one's own", { price: first.price + 0.37 }, false],
  ["with code and price of one's own", { code: "OWN-1", price: first.price + 0.3717 }, false],
  ["with its mark cleared", { invented: false }, false],
])("a price %s", (_, change, invented) => {
  const products = [{ ...first, ...change }];
  expect(changedByHand({ ...shipped, products }).products.map((one) => one.invented)).toEqual([invented]);
});
