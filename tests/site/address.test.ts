import { describe, expect, it } from "vitest";
import { atBase, baseAddress, WORKING_ADDRESS } from "../../src/site/address";

describe("the base address of a build", () => {
  it("is the working address unless one is given", () => {
    expect(baseAddress(undefined)).toBe(WORKING_ADDRESS);
  });

  it("takes a folder, and drops the slash behind it", () => {
    expect(baseAddress("https://example.org/rillwright/")).toBe("https://example.org/rillwright");
    expect(baseAddress("https://example.org")).toBe("https://example.org");
  });

  it.each(["http://example.org", "example.org", "https://example.org/?a=1", "", "file:///tmp"])(
    "refuses %j",
    (base) => {
      expect(() => baseAddress(base)).toThrow("base must be an https address");
    },
  );

  it("replaces every working address, not only the first", () => {
    const text = `${WORKING_ADDRESS}/a.js ${WORKING_ADDRESS} ${WORKING_ADDRESS}/b.js`;
    expect(atBase(text, "https://example.org/x")).toBe(
      "https://example.org/x/a.js https://example.org/x https://example.org/x/b.js",
    );
  });
});
