import { DOMParser } from "@xmldom/xmldom";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clientDrawing, type ClientFacts } from "../../../src/drawing/client";

const FACTS: ClientFacts = {
  system: "US",
  name: "Hollow & Bank <stream>",
  drops: [0.6, 0.9, 0.75],
  treads: [3, 2, 4],
  bedWidth: 3,
  bankHeight: 1,
  basinLength: 8,
  basinWidth: 6,
  basinDepth: 2,
  basinLean: 0,
  rimBelowGrade: 0.25,
  lipStone: { length: 2.5, width: 1.5, height: 0.4 },
  lipStonesPerDrop: 1,
  boulders: [
    { size: 0.75, count: 40 },
    { size: 1.25, count: 12 },
  ],
  pools: [],
};
/** What a job may hold, from a trough to a brook: ft. */
const anyFacts = fc.record({
  system: fc.constantFrom("US" as const, "SI" as const),
  name: fc.string({ maxLength: 60 }),
  steps: fc.array(fc.tuple(length(0.1, 6), length(0.3, 60)), { minLength: 1, maxLength: 12 }),
  bedWidth: length(0.5, 30),
  bankHeight: length(0, 6),
  basinLength: length(1, 60),
  basinWidth: length(1, 30),
  basinDepth: length(0.3, 8),
  stones: fc.array(fc.tuple(length(0.2, 6), fc.nat(400)), { maxLength: 5 }),
  lip: length(0, 5),
  width: fc.constantFrom(360, 520, 720),
});

function length(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

describe("the client's drawing", () => {
  it("has heights, lengths and widths to one scale, which its bar tells", () => {
    const svg = clientDrawing(FACTS, { width: 520 });
    const bars = [...svg.matchAll(/<rect [^>]*class="scale"/g)].map(([rect]) => attributes(rect));
    const perFoot = Number(bars[0]?.width) / (Number(/>(\d+) ft</.exec(svg)?.[1]) / 2);
    const plan = attributes(only(svg, /<rect [^>]*class="basin"[^>]*>/g));
    expect(Number(plan.width) / perFoot).toBeCloseTo(FACTS.basinLength, 1);
    expect(Number(plan.height) / perFoot).toBeCloseTo(FACTS.basinWidth, 1);
    const section = points(attributes(only(svg, /<path [^>]*class="basin"[^>]*>/g)).d);
    expect(extent(section, 0) / perFoot).toBeCloseTo(FACTS.basinLength, 1);
    expect(extent(section, 1) / perFoot).toBeCloseTo(FACTS.basinDepth, 1);
    // A person of 1.75 m is 5.74 ft: head at the top, feet on the ground, no wider than their lines are thick.
    const person = /<g class="person">(.*?)<\/g>/.exec(svg)?.[1] ?? "";
    const head = attributes(only(person, /<ellipse [^>]*>/g));
    const feet = Math.max(
      ...points([...person.matchAll(/ d="([^"]*)"/g)].map(([, d]) => d).join("")).map(([, y]) => y),
    );
    expect((feet - Number(head.cy) + Number(head.ry)) / perFoot).toBeCloseTo(1.75 / 0.3048, 0);
    // Falls: each lip stone lies as far under the one before as its drop is high.
    const tops = [...svg.matchAll(/<path [^>]*class="lip"[^>]*>/g)].map(([path]) =>
      Math.min(...points(attributes(path).d).map(([, y]) => y)),
    );
    expect(tops).toHaveLength(3);
    expect(((tops[1] ?? 0) - (tops[0] ?? 0)) / perFoot).toBeCloseTo(0.6, 1);
    expect(((tops[2] ?? 0) - (tops[1] ?? 0)) / perFoot).toBeCloseTo(0.9, 1);
  });

  it("builds the banks of the boulders that were counted, in their sizes and no more of them", () => {
    const svg = clientDrawing(FACTS, { width: 520 });
    const perFoot = Number(attributes(only(svg, /<rect [^>]*class="basin"[^>]*>/g)).width) / FACTS.basinLength;
    const drawn = ["banks", "faces", "around"].flatMap((group) => stonesOf(svg, group, "last"));
    expect(drawn.length).toBeGreaterThan(20);
    // As laid a boulder is longer than its mean size and about as wide: each must be one of the two.
    const bySize = [0.75, 1.25].map(
      (size) =>
        drawn.filter(({ width, height }) => {
          const [long, wide] = [Math.max(width, height) / perFoot / size, Math.min(width, height) / perFoot / size];
          return long > 1.05 && long < 1.38 && wide > 0.89 && wide < 1.11;
        }).length,
    );
    expect(bySize[0]! + bySize[1]!).toBe(drawn.length);
    expect(bySize[0]).toBeLessThanOrEqual(40);
    expect(bySize[1]).toBeLessThanOrEqual(12);
    // In section the far bank's stones are lower than they are long.
    for (const { width, height } of stonesOf(svg, "bank", "first")) expect(height).toBeLessThan(width);
  });

  it("writes every measure of the job in the client's units", () => {
    const svg = clientDrawing(FACTS, { width: 720 });
    // By hand: 0.6 + 0.9 + 0.75 = 2.25 ft of fall, 3 + 2 + 4 = 9 ft of run.
    for (const measure of [`2'-3"`, `9'-0"`, `8'-0"`, `6'-0"`, `2'-0"`, `3'-0"`]) expect(texts(svg)).toContain(measure);
    expect(texts(svg).join(" ")).toContain("9, 15\u00a0in");
    // 0.25 + 0.3 = 0.55 m; the stone of 300 mm keeps its millimeters.
    const metric = clientDrawing(
      { ...FACTS, system: "SI", drops: [0.25, 0.3], treads: [1.2, 1.5], boulders: [{ size: 0.3, count: 30 }] },
      { width: 720 },
    );
    for (const measure of ["0.55 m", "2.70 m"]) expect(texts(metric)).toContain(measure);
    expect(texts(metric).join(" ")).toContain("300\u00a0mm");
  });

  it("is the same to the byte for the same job, and another for another", () => {
    expect(clientDrawing(structuredClone(FACTS), { width: 520 })).toBe(clientDrawing(FACTS, { width: 520 }));
    const other = clientDrawing({ ...FACTS, treads: [3, 2, 4.5] }, { width: 520 });
    expect(other).not.toBe(clientDrawing(FACTS, { width: 520 }));
  });

  it("is sound XML of numbers in which no words lie on others and nothing leaves the sheet, for any job", () => {
    fc.assert(
      fc.property(anyFacts, ({ steps, stones, lip, width, ...rest }) => {
        const svg = clientDrawing(
          {
            ...FACTS,
            ...rest,
            drops: steps.map(([drop]) => drop),
            treads: steps.map(([, tread]) => tread),
            boulders: stones.map(([size, count]) => ({ size, count })),
            lipStone: { length: 2 * lip, width: lip, height: 0.2 * lip },
          },
          { width },
        );
        expect(/.{0,60}(NaN|Infinity|undefined|null)/.exec(svg)?.[0]).toBeUndefined();
        // Half a character that a name may end in is no XML.
        if (!/\p{Surrogate}/u.test(rest.name)) wellFormed(svg);
        const [, sheetWidth = 0, sheetHeight = 0] = (/viewBox="0 0 (\d+) (\d+)"/.exec(svg) ?? []).map(Number);
        expect(sheetWidth).toBe(width);
        expect(sheetHeight).toBeLessThan(2 * width);
        const words = [...svg.matchAll(/<text [^>]*>[^<]*/g)].map(([text]) => roomOf(text));
        words.forEach((room, index) => {
          expect(room.left, room.text).toBeGreaterThanOrEqual(-1);
          expect(room.right, room.text).toBeLessThanOrEqual(sheetWidth + 1);
          expect(room.bottom, room.text).toBeLessThanOrEqual(sheetHeight);
          for (const other of words.slice(index + 1)) {
            const apart =
              room.right <= other.left + 0.1 ||
              other.right <= room.left + 0.1 ||
              room.bottom <= other.top + 0.1 ||
              other.bottom <= room.top + 0.1;
            expect(apart, `${room.text} on ${other.text}`).toBe(true);
          }
        });
      }),
      { seed: 21, numRuns: 60 },
    );
  });

  it("refuses in a sentence what cannot be drawn", () => {
    expect(() => clientDrawing({ ...FACTS, drops: [] })).toThrow("at least one of each");
    expect(() => clientDrawing({ ...FACTS, bedWidth: 0 })).toThrow("above 0");
    expect(() => clientDrawing({ ...FACTS, boulders: [{ size: Number.NaN, count: 2 }] })).toThrow("numbers from 0 up");
  });
});

function attributes(element: string): Record<string, string> {
  return Object.fromEntries([...element.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name, value]) => [name, value ?? ""]));
}

function only(text: string, what: RegExp): string {
  const found = [...text.matchAll(what)].map(([match]) => match);
  expect(found).toHaveLength(1);
  return found[0] ?? "";
}

/** The points that absolute path data names, corners of curves among them. */
function points(d = ""): [number, number][] {
  return [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

function extent(of: readonly (readonly [number, number])[], axis: 0 | 1): number {
  const values = of.map((point) => point[axis]);
  return Math.max(...values) - Math.min(...values);
}

/** Widths and heights of the stones in a group; a worn corner passes midway between its ends and its control point. */
function stonesOf(svg: string, group: string, which: "first" | "last"): { width: number; height: number }[] {
  const groups = [...svg.matchAll(new RegExp(`<g class="${group}">(.*?)</g>`, "g"))].map(
    ([, content]) => content ?? "",
  );
  const content = (which === "first" ? groups[0] : groups.at(-1)) ?? "";
  return [...content.matchAll(/<path d="([^"]*)" fill="var\(--drawing-rock/g)].map(([, d = ""]) => {
    const corners = [...d.matchAll(/([-\d.]+) ([-\d.]+)Q([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+)/g)].map((corner) =>
      corner.slice(1).map(Number),
    );
    const seen = corners.flatMap(([x1 = 0, y1 = 0, cx = 0, cy = 0, x2 = 0, y2 = 0]): [number, number][] => [
      [x1, y1],
      [x2, y2],
      [(x1 + 2 * cx + x2) / 4, (y1 + 2 * cy + y2) / 4],
    ]);
    return { width: extent(seen, 0), height: extent(seen, 1) };
  });
}

function texts(svg: string): string[] {
  return [...svg.matchAll(/<text [^>]*>([^<]*)/g)].map(([, text = ""]) =>
    text.replace(/&quot;/g, '"').replace(/&apos;/g, "'"),
  );
}

/** The room that words take: letters of Arial are 0.5 of their size wide in the mean (its width table). */
function roomOf(element: string): { text: string; left: number; right: number; top: number; bottom: number } {
  const { x, y, "font-size": size, "text-anchor": anchor } = attributes(element);
  const text = element.slice(element.indexOf(">") + 1).replace(/&\w+;/g, "_");
  const width = 0.5 * Number(size) * text.length;
  const left = Number(x) - (anchor === "middle" ? width / 2 : anchor === "end" ? width : 0);
  return {
    text,
    left,
    right: left + width,
    top: Number(y) - 0.72 * Number(size),
    bottom: Number(y) + 0.2 * Number(size),
  };
}

function wellFormed(xml: string): void {
  new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  }).parseFromString(xml, "image/svg+xml");
}
