import { describe, expect, it } from "vitest";
import fc from "fast-check";
import { curvesDrawing } from "../../src/drawing/curves";
import { planDrawing } from "../../src/drawing/plan";
import { sectionDrawing } from "../../src/drawing/section";
import { escapeText, niceStep } from "../../src/drawing/svg";

const size = fc.double({ min: 0.01, max: 500, noNaN: true });
const sizes = fc.array(size, { minLength: 1, maxLength: 12 });
const pools = fc.array(fc.record({ area: size, lip: fc.oneof(fc.constant(0), size) }), { maxLength: 8 });

function expectSound(svg: string): void {
  expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
  // Every element that opens closes again, in order: what an XML reader would ask of it.
  const open: string[] = [];
  for (const [, closing, name, selfClosing] of svg.matchAll(/<(\/?)([a-z]+)(?:\s[^<>]*?)?(\/?)>/gi)) {
    if (closing) expect(open.pop()).toBe(name);
    else if (!selfClosing && name) open.push(name);
  }
  expect(open).toEqual([]);
  expect(svg.replace(/<[^<>]*>/g, "")).not.toMatch(/[<>]/);
}

describe("the drawings", () => {
  it("are sound for every feature that can be built", () => {
    fc.assert(
      fc.property(sizes, size, size, size, fc.string(), pools, (treads, width, length, depth, name, pools) => {
        const drops = treads.map((tread) => tread / 3);
        const facts = { system: "US" as const, name, treads };
        expectSound(
          sectionDrawing({
            ...facts,
            drops,
            basinLength: length,
            basinDepth: depth,
            rimBelowGrade: 0.25,
            levelDrop: 0.5,
          }),
        );
        expectSound(planDrawing({ ...facts, bedWidth: width, basinLength: length, basinWidth: width, pools }));
      }),
    );
  });

  it("name every drop that has room, in the user's unit", () => {
    const svg = sectionDrawing({
      system: "SI",
      name: "Bach",
      drops: [0.2, 0.3],
      treads: [1, 1.2],
      basinLength: 2.9,
      basinDepth: 0.75,
      rimBelowGrade: 0.08,
      levelDrop: 0.2,
    });
    for (const words of ["1: 0.2", "2: 0.3", "run 2.2 m", "0.5 m", "basin 2.9 m", "0.75 m"])
      expect(svg).toContain(words);
  });

  it("say where the curves meet, and when they do not", () => {
    const points = [
      { flow: 0, pumpHead: 20, systemHead: 5 },
      { flow: 4000, pumpHead: 8, systemHead: 12 },
    ];
    expect(curvesDrawing({ system: "US", pump: "A & B", points, duty: { flow: 3000, head: 11 } })).toContain(
      "delivers 3000 gph at 11 ft",
    );
    const apart = curvesDrawing({ system: "US", pump: "A & B", points });
    expect(apart).toContain("do not meet");
    expect(apart).toContain("A &amp; B");
    expectSound(apart);
  });

  it("refuse what cannot be drawn, with a sentence", () => {
    expect(() => curvesDrawing({ system: "US", pump: "", points: [] })).toThrow("at least two points");
    expect(() =>
      planDrawing({ system: "US", name: "", treads: [], bedWidth: 1, basinLength: 1, basinWidth: 1, pools: [] }),
    ).toThrow("at least one tread");
  });

  it("write a user's text as text", () => {
    expect(escapeText(`<script>"'&\u0000`)).toBe("&lt;script&gt;&quot;&apos;&amp;");
  });

  it("count ticks in 1, 2 or 5", () => {
    // By hand: 7,200 over 4 ticks is 1,800, next step up 2,000; 24 over 5 is 4.8, next 5.
    expect(niceStep(7200, 4)).toBe(2000);
    expect(niceStep(24, 5)).toBe(5);
  });
});
