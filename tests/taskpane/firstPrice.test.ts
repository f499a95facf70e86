import { expect, it } from "vitest";
import { readFirstPrice } from "../../src/taskpane/firstPrice";

it("shows the draft as Start does, and nothing where there is none", () => {
  const numbers = [
    ["Price before tax, low", "6,380", "$"],
    ["Pump", "Demo A", ""],
  ];
  const remark = "12 of 300 trial designs came to no price and were left out.";
  expect(
    readFirstPrice([numbers, [["How wide is the top lip? $6,850 to $9,080, 22%"], [""]], [[remark], [""]]]),
  ).toEqual({
    numbers: [
      ["Price before tax, low", "$6,380"],
      ["Pump", "Demo A"],
    ],
    next: ["How wide is the top lip? $6,850 to $9,080, 22%"],
    remarks: [remark],
  });
  expect(readFirstPrice([[["Price before tax, low", "", ""]], [[""]], [[""]]])).toBeUndefined();
  expect(readFirstPrice([undefined, undefined])).toBeUndefined();
});
