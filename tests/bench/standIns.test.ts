import * as theirs from "cjk-regex";
import { describe, expect, it } from "vitest";
import * as ours from "../../src/bench/standIns/cjk";

// Both are held to the Unicode standard: letters, a mark and a full-width sign of the blocks, and what is none of them.
const SIGNS = "石水アあ한ㄅ、。（！｜〜㈱㎡〇々ー ⿰㇀ aZ9é.,'\"ft²×½ЖאΩ漢";

describe("what stands in for the package of East Asian letters", () => {
  it.each(["all", "letters", "punctuations"] as const)("knows %s as the package does", (kind) => {
    const [one, other] = [ours[kind]().toRegExp(), theirs[kind]().toRegExp()];
    const differing = [...SIGNS].filter((sign) => one.test(sign) !== new RegExp(other.source, other.flags).test(sign));
    expect(differing).toEqual([]);
  });
});
