import { describe, expect, it } from "vitest";
import { convert } from "../../src/calc/quantity/units";
import { expectPublished, given, publishedCases } from "./cases";

describe("units against NIST SP 811", () => {
  it.each(publishedCases("16 units", "UN-").map((c) => [c.description, c] as const))("%s", (_, c) => {
    const from = c.inputs["value"]?.unit ?? "";
    const to = c.expected["factor"]?.unit ?? "";
    expect(given(c.inputs, "value")).toBe(1);
    expectPublished(c, "factor", convert(1, from, to));
  });
});
