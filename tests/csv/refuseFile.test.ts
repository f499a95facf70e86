import { describe, expect, it } from "vitest";
import { Problem } from "../../src/calc/problem";
import { readPriceList } from "../../src/csv/readPriceList";
import { badFiles } from "../badFiles";

const refused = badFiles.filter(({ asPriceList }) => asPriceList !== undefined);

describe("reading a price list", () => {
  it.each(refused)("refuses $what in a sentence", async ({ bytes, asPriceList }) => {
    const file = await bytes();
    const reading = (): unknown => readPriceList(file);
    expect(reading).toThrow(Problem);
    expect(reading).toThrow(asPriceList);
  });

  it("takes the one that is a price list", async () => {
    const [good] = badFiles.filter(({ asPriceList }) => asPriceList === undefined);
    expect(readPriceList((await good?.bytes()) ?? new Uint8Array()).items).toHaveLength(1);
  });
});
