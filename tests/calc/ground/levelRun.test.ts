import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closure, CLOSURE_LIMITS, levelRun, shareOut, type RodRow } from "../../../src/calc/ground/levelRun";

type Book = readonly (readonly [point: string, bs: number | null, is: number | null, fs: number | null])[];

function rows(book: Book): RodRow[] {
  return book.map(([point, bs, is, fs]) => ({
    point,
    ...(bs === null ? {} : { backsight: bs }),
    ...(is === null ? {} : { intermediate: is }),
    ...(fs === null ? {} : { foresight: fs }),
  }));
}

function levels(start: number, book: Book): number[] {
  return levelRun(start, rows(book)).points.map(({ level }) => Number(level.toFixed(6)));
}

/** Course page on rise and fall, numerical example 1: the book and every reduced level are printed. */
const RISE_AND_FALL: Book = [
  ["1", 0.485, null, null],
  ["2", null, 1.21, null],
  ["3", null, 1.635, null],
  ["4", null, 3.395, null],
  ["5", 0.65, null, 3.775],
  ["6", null, 1.4, null],
  ["7", null, 1.795, null],
  ["8", null, 2.575, null],
  ["9", null, 3.375, null],
  ["10", 1.735, null, 3.895],
  ["11", null, 0.635, null],
  ["12", null, null, 1.605],
];

/** Problem 5.12 of an elementary surveying textbook: a loop of 1.5 km and five set-ups, its sights longer than a rod here. */
const LOOP = [852.045, 851.895, 850.002, 848.704, 847.189, 852.055].map((level, setUps) => ({
  point: `${setUps}`,
  level,
  setUps,
}));

describe("levels of a run", () => {
  it("are those printed for a book of twelve points", () => {
    expect(levels(100, RISE_AND_FALL)).toEqual([
      100, 99.275, 98.85, 97.09, 96.71, 95.96, 95.565, 94.785, 93.985, 93.465, 94.565, 93.595,
    ]);
    const { backsights, foresights } = levelRun(100, rows(RISE_AND_FALL));
    expect([backsights.toFixed(3), foresights.toFixed(3)]).toEqual(["2.870", "9.275"]);
  });

  it("show what a published table got wrong: after the turning point it fell where it should rise", () => {
    // The page prints 100.415 for C and then notes that 1.305 is not 0.415; the readings give 101.305.
    const book: Book = [
      ["BM", 1.855, null, null],
      ["A", null, 2.41, null],
      ["B", null, 1.28, null],
      ["CP1", 2.165, null, 0.995],
      ["C", null, null, 1.72],
    ];
    expect(levels(100, book)).toEqual([100, 99.445, 100.575, 100.86, 101.305]);
    const { backsights, foresights } = levelRun(100, rows(book));
    expect(backsights - foresights).toBeCloseTo(1.305, 9);
  });

  it("go on from a point already levelled when the laser was moved", () => {
    // By hand: HI 101.2, rim 100.7; moved, HI 100 + 1.5 = 101.5, lip 101.5 - 0.4 = 101.1.
    const book: Book = [
      ["Bench mark", 1.2, null, null],
      ["Rim", null, 0.5, null],
      ["bench  MARK", 1.5, null, null],
      ["Lip", null, 0.4, null],
    ];
    expect(levels(100, book)).toEqual([100, 100.7, 100, 101.1]);
  });

  it("add up: backsights less foresights is the rise from first to last", () => {
    const readings = fc.array(
      fc.tuple(fc.double({ min: 0.1, max: 5, noNaN: true }), fc.double({ min: 0.1, max: 5, noNaN: true })),
      {
        minLength: 1,
        maxLength: 40,
      },
    );
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), readings, (start, pairs) => {
        const book = pairs.map(([back], index) => ({
          point: `p${index}`,
          backsight: back,
          ...(index === 0 ? {} : { foresight: pairs[index - 1]?.[1] ?? 0 }),
        }));
        const run = levelRun(start, [...book, { point: "end", foresight: pairs.at(-1)?.[1] ?? 0 }]);
        expect(run.backsights - run.foresights).toBeCloseTo((run.points.at(-1)?.level ?? NaN) - start, 9);
        expect(run.setUps).toBe(pairs.length);
      }),
    );
  });

  it.each<[string, Book, string]>([
    ["no backsight first", [["A", null, 1, null]], "the first row needs a backsight"],
    ["a foresight with it", [["A", 1, null, 1]], "the first row takes a backsight alone"],
    [
      "a sight and a turning point in one",
      [
        ["A", 1, null, null],
        ["B", 1, 1, null],
      ],
      "an intermediate sight stands alone",
    ],
    [
      "a backsight on a point unknown",
      [
        ["A", 1, null, null],
        ["B", 2, null, null],
      ],
      "needs a point leveled before",
    ],
    [
      "a reading longer than the rod",
      [
        ["A", 1, null, null],
        ["B", null, 8, null],
      ],
      "intermediate must be 0 to 7.7 m; got 8 m",
    ],
    [
      "a reading below its foot",
      [
        ["A", 1, null, null],
        ["B", null, null, -0.2],
      ],
      "foresight must be 0 to 7.7 m; got -0.2 m",
    ],
  ])("refuse %s in a sentence that names the row", (_, book, sentence) => {
    expect(() => levelRun(100, rows(book))).toThrow(sentence);
    expect(() => levelRun(100, rows(book))).toThrow(/row \d \(/);
  });
});

describe("closure", () => {
  it("tells a loop of 1.5 km that closes 10 mm high from its limits", () => {
    // 12 mm √1.5 = 14.697 mm (third order), 8 mm √1.5 = 9.798 mm (second order, class II).
    const end = LOOP.at(-1)?.level ?? NaN;
    const third = closure(end, 852.045, 1500, CLOSURE_LIMITS["third order"]);
    expect(third.misclosure).toBeCloseTo(0.01, 9);
    expect(third.limit).toBeCloseTo(0.014697, 6);
    expect(third.within).toBe(true);
    expect(closure(end, 852.045, 1500, 0.008)).toMatchObject({ within: false });
    // The construction limit of 0.1 ft for one mile: 0.1 × 0.3048 m over √1.609344 km.
    expect(CLOSURE_LIMITS.construction).toBeCloseTo((0.1 * 0.3048) / Math.sqrt(1.609344), 4);
  });

  it("is shared out by set-ups, 2 mm each, and ends on the known level", () => {
    const shared = shareOut(LOOP, 0.01);
    expect(shared.map((level) => Number(level.toFixed(6)))).toEqual([
      852.045, 851.893, 849.998, 848.698, 847.181, 852.045,
    ]);
  });
});
