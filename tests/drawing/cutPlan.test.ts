import { DOMParser } from "@xmldom/xmldom";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CUTPLAN } from "../../src/functions/liner/cutplan";
import { curvesDrawing } from "../../src/drawing/curves";
import { cutPlanDrawing } from "../../src/drawing/cutPlan";
import type { CutPlanFacts } from "../../src/drawing/cutPlanFacts";
import { planDrawing } from "../../src/drawing/plan";
import { readCutPlan } from "../../src/drawing/readCutPlan";
import { sectionDrawing } from "../../src/drawing/section";

/** The drawing as an XML reader sees it; throws where it is not well-formed. */
function parsed(svg: string): Element {
  const fail = (level: string, message: string): never => {
    throw new Error(`${level}: ${message}`);
  };
  const root = new DOMParser({ onError: fail }).parseFromString(svg, "image/svg+xml").documentElement;
  if (!root) throw new Error("no drawing");
  return root as unknown as Element;
}

const all = (root: Element, name: string): Element[] => Array.from(root.getElementsByTagName(name));
const number = (element: Element, name: string): number => Number(element.getAttribute(name));

function expectSound(svg: string): Element {
  const root = parsed(svg);
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  expect(root.getAttribute("viewBox")).toMatch(/^0 0 \d+ \d+$/);
  for (const name of ["title", "desc"]) expect(all(root, name)[0]?.textContent).toBeTruthy();
  return root;
}

const facts: CutPlanFacts = {
  system: "US",
  name: "Hollow Bank stream",
  bought: [
    { roll: 1, start: 0, length: 18, width: 15 },
    { roll: 2, start: 0, length: 7.5, width: 20 },
  ],
  cuts: [
    { name: "Basin", roll: 1, along: 0, across: 0, length: 15.5, width: 13, turned: false },
    { name: "Skirt", roll: 1, along: 15.5, across: 0, length: 2.5, width: 4.5, turned: true },
    { name: "Stream", roll: 2, along: 0, across: 0, length: 7.5, width: 15.5, turned: true },
  ],
};

/** Rectangles of cuts and sheets, without the ground, the pattern's sample and the hatching. */
function boxes(root: Element): { x: number; y: number; width: number; height: number }[] {
  return all(root, "rect")
    .filter((rect) => rect.getAttribute("stroke-width") === "1")
    .map((rect) => ({
      x: number(rect, "x"),
      y: number(rect, "y"),
      width: number(rect, "width"),
      height: number(rect, "height"),
    }));
}

describe("the drawing of the cut plan", () => {
  it("shows every cut in proportion, with its name, size and place", () => {
    const svg = cutPlanDrawing(facts);
    const root = expectSound(svg);
    for (const words of ["Roll 1, 15 ft wide", "18 ft", "Roll 2, 20 ft wide", "1 Basin", "15.5 × 13", "not used"])
      expect(svg).toContain(words);
    const [basin, skirt, stream] = boxes(root);
    if (!basin || !skirt || !stream) throw new Error("three cuts wanted");
    // 15.5 along and 13 across; the stream is as long as 7.5 / 15.5 of the basin.
    expect(basin.width / basin.height).toBeCloseTo(15.5 / 13, 2);
    expect(stream.width / basin.width).toBeCloseTo(7.5 / 15.5, 2);
    expect(skirt.x).toBeCloseTo(basin.x + basin.width, 1);
    expect(stream.y).toBeGreaterThan(basin.y + basin.height);
  });

  it("marks turned pieces by word and sign, and waste by hatching", () => {
    const root = parsed(cutPlanDrawing(facts));
    const texts = all(root, "text").map((t) => t.textContent ?? "");
    expect(texts).toContain("7.5 × 15.5 ft, turned");
    expect(texts).toContain("15.5 × 13 ft");
    const hatched = all(root, "rect").filter((rect) => rect.getAttribute("fill") === "url(#cut-plan-waste)");
    expect(hatched.length).toBe(3);
    expect(all(root, "pattern")[0]?.getAttribute("id")).toBe("cut-plan-waste");
    // The stream has room for the bent arrow, the small skirt has none.
    expect(all(root, "path").length).toBe(1);
  });

  it("writes a user's names as text", () => {
    const hostile = `<script>alert("1")</script>&amp;]]>`;
    const cuts = facts.cuts.map((cut) => ({ ...cut, name: hostile }));
    const root = expectSound(cutPlanDrawing({ ...facts, name: hostile, cuts }));
    expect(all(root, "script")).toEqual([]);
    expect(all(root, "desc")[0]?.textContent).toContain(hostile);
  });

  it("is sound, and keeps every cut on its sheet, for any plan", () => {
    const side = fc.integer({ min: 1, max: 160 }).map((quarters) => quarters / 4);
    const rows = fc.array(fc.tuple(fc.string({ maxLength: 30 }), side, side), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(rows, fc.constantFrom("US" as const, "SI" as const), (pieces, system) => {
        const cuts = pieces.map(([name, length, width]) => [name.trim() === "" ? null : name, length, width]);
        const table = CUTPLAN.evaluate([
          cuts,
          [[12, 3, "length", 45]],
          null,
          system === "US" ? 4 : 100,
          2,
          null,
          null,
          system,
        ]);
        const read = readCutPlan(table as unknown[][]);
        const root = expectSound(cutPlanDrawing({ system, name: "", ...read }));
        const [, , paperWidth = 0, paperHeight = 0] = (root.getAttribute("viewBox") ?? "").split(" ").map(Number);
        expect(boxes(root).length).toBe(read.cuts.length);
        for (const { x, y, width, height } of boxes(root)) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x + width).toBeLessThanOrEqual(paperWidth);
          expect(y + height).toBeLessThanOrEqual(paperHeight);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("draws every cut on the length it is cut from", () => {
    const twice: CutPlanFacts = {
      ...facts,
      bought: [
        { roll: 1, start: 0, length: 10, width: 4 },
        { roll: 1, start: 10, length: 5, width: 4 },
      ],
      cuts: [0, 5, 10].map((along, i) => ({
        name: `P${i}`,
        roll: 1,
        along,
        across: 0,
        length: 5,
        width: 4,
        turned: false,
      })),
    };
    const [first, second, third] = boxes(parsed(cutPlanDrawing(twice)));
    expect(second?.y).toBe(first?.y);
    expect(third?.x).toBe(first?.x);
    expect(third?.y).toBeGreaterThan(first?.y ?? Infinity);
  });

  it.each([
    ["nothing to cut", { cuts: [] }, "at least one cut"],
    ["nothing bought", { bought: [] }, "at least one cut"],
    ["a length of 0", { bought: [{ roll: 1, start: 0, length: 0, width: 4 }] }, "lengths and widths above 0"],
    ["no number", { cuts: facts.cuts.map((cut) => ({ ...cut, width: Number.NaN })) }, "lengths and widths above 0"],
  ])("refuses %s", (_, wrong, sentence) => expect(() => cutPlanDrawing({ ...facts, ...wrong })).toThrow(sentence));
});

describe("reading the rows of the plan", () => {
  it("takes cuts and lengths, and passes over the rest", () => {
    const rows = [
      ["Cut", "Roll", "Along (ft)", "Across (ft)", "Length (ft)", "Width (ft)", "Turned"],
      ["Basin", 2, 0, 1, 15.5, 13, "turned"],
      ["Length to buy", 2, 0, 0, 16, 15, ""],
      ["Area to buy", 240, "ft²", "", "", "", ""],
      ["", "", "", "", "", "", ""],
    ];
    expect(readCutPlan(rows)).toEqual({
      bought: [{ roll: 2, start: 0, length: 16, width: 15 }],
      cuts: [{ name: "Basin", roll: 2, along: 0, across: 1, length: 15.5, width: 13, turned: true }],
    });
  });
});

describe("the other drawings", () => {
  it("are well-formed too", () => {
    const name = `A<&>"'`;
    const size = { drops: [0.2, 0.3], treads: [1, 1.2], basinLength: 2.9, basinDepth: 0.75 };
    expectSound(sectionDrawing({ system: "SI", name, ...size, rimBelowGrade: 0.08, levelDrop: 0.2 }));
    expectSound(
      planDrawing({ system: "SI", name, treads: [1, 1.2], bedWidth: 1, basinLength: 2.9, basinWidth: 2, pools: [] }),
    );
    const points = [0, 1000, 2000].map((flow) => ({ flow, pumpHead: 8 - flow / 500, systemHead: 1 + flow / 900 }));
    expectSound(curvesDrawing({ system: "SI", pump: name, points }));
  });
});
