import { describe, expect, it } from "vitest";
import { fileNameOf } from "../../../src/bench/saving/fileName";

describe("the name a job is saved under", () => {
  it.each([
    ["rillwright-us-blank.xlsx", "Fern hollow stream", "Fern hollow stream.xlsx"],
    ["rillwright-si-blank.xlsx", ' A/B: "east"\u0007 garden. ', "A B east garden.xlsx"],
    ["rillwright-us-blank.xlsx", " ", "rillwright-us-blank.xlsx"],
    ["rillwright-us-blank.xlsx", "...", "rillwright-us-blank.xlsx"],
    // A file that has a name of its own keeps it.
    ["Miller.xlsx", "Fern hollow stream", "Miller.xlsx"],
    ["rillwright-us-demo.xlsx", "Fern hollow stream", "rillwright-us-demo.xlsx"],
  ])("%s, job %j: %s", (opened, job, name) => {
    expect(fileNameOf(opened, job)).toBe(name);
  });

  it("is no longer than file systems take, in bytes as well", () => {
    const name = fileNameOf("rillwright-us-blank.xlsx", "\u6d41".repeat(300));
    expect(Buffer.byteLength(name)).toBeLessThanOrEqual(255);
  });
});
