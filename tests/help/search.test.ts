import { describe, expect, it } from "vitest";
import { findEntries } from "../../src/help/search";

const texts = ["TDH Total dynamic head of a pipe", "LIPFLOW Flow over a lip", "PIPEBORE Bore of a pipe"];

describe("the search of the function list", () => {
  it("finds every word, in any order and case", () => {
    expect(findEntries(texts, "PIPE head")).toEqual([0]);
    expect(findEntries(texts, "pipe")).toEqual([0, 2]);
  });

  it("keeps everything when nothing is typed", () => {
    expect(findEntries(texts, "  ")).toEqual([0, 1, 2]);
  });

  it("finds nothing for a word nobody wrote, special characters included", () => {
    expect(findEntries(texts, "(.*")).toEqual([]);
  });
});
