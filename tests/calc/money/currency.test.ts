import { expect, it } from "vitest";
import { currencySign, isCurrency, isWrongCode, minorDigits } from "../../../src/calc/money/currency";

// Codes and minor units of ISO 4217's list one.
it.each([
  ["USD", 2],
  ["EUR", 2],
  ["JPY", 0],
  ["KRW", 0],
  ["ISK", 0],
  ["KWD", 3],
  ["TND", 3],
  ["NZD", 2],
] as const)("knows %s and its %i digits, by code and by sign", (code, digits) => {
  expect(isCurrency(code)).toBe(true);
  expect([minorDigits(code), minorDigits(currencySign(code))]).toEqual([digits, digits]);
});

it("tells every currency from every other by its sign", () => {
  const codes = Intl.supportedValuesOf("currency");
  expect(new Set(codes.map(currencySign)).size).toBe(codes.length);
});

it("knows no currency by another word, and takes a sign of nobody's for one with cents", () => {
  expect(["DOLLAR", "usd", "", "XXQ"].filter(isCurrency)).toEqual([]);
  expect(minorDigits("kr")).toBe(2);
});

it("takes three capital letters for a code that is right or wrong, and anything else for a sign", () => {
  // KES is the shilling of Kenya, UDS nothing; "kr." and "CA$" are signs.
  const said = ["UDS", "KES", "kr.", "CA$", "uds", "UD", "$"];
  expect(said.filter(isWrongCode)).toEqual(["UDS"]);
});
