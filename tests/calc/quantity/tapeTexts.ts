/** A text that a person types into a cell for a length, and what it means there. */
export interface TapeText {
  readonly text: string;
  /** The length in a cell of feet, in feet; absent where the text is refused. */
  readonly feet?: number;
  /** The length in a cell of meters, in meters; absent where the text is refused. */
  readonly meters?: number;
  /** Where it is refused: what the sentence must hold, which are all the ways to read it where there are several. */
  readonly refused?: readonly string[];
  /**
   * What Excel (English, United States) makes of it before anyone sees it, unless the cell is formatted as text:
   * 3/4 is the fourth of March, 9 3/4 is 9.75, and what begins with a minus and is no number is a broken formula.
   * From memory; no Excel was at hand.
   */
  readonly excel?: "a date" | "a number" | "a formula";
}

/** A text with a unit of its own, which means the same length in both cells: inches, by hand. */
const inches = (text: string, value: number, excel?: TapeText["excel"]): TapeText => ({
  text,
  feet: value / 12,
  meters: value * 0.0254,
  ...(excel && { excel }),
});
/** A metric text: millimeters, by hand. */
const millimeters = (text: string, value: number): TapeText => ({ text, feet: value / 304.8, meters: value / 1000 });
/** A number without a unit, which is taken in the cell's. */
const bare = (text: string, value: number, excel?: TapeText["excel"]): TapeText => ({
  text,
  feet: value,
  meters: value,
  ...(excel && { excel }),
});
const refused = (text: string, ...sentence: string[]): TapeText => ({ text, refused: sentence });

/** The one table of what tapes say. 1 ft = 12 in = 0.3048 m exactly (NIST SP 811, appendix B.8). */
export const TAPE_TEXTS: readonly TapeText[] = [
  // Feet and inches: 9 × 12 + 4 = 112 in.
  inches("9'4", 112),
  inches(`9'4"`, 112),
  inches("9' 4", 112),
  inches(`9' 4"`, 112),
  inches("9'-4", 112),
  inches(`9'-4"`, 112),
  inches(`9' - 4"`, 112),
  inches("9 ft 4", 112),
  inches("9 ft 4 in", 112),
  inches("9ft4in", 112),
  inches("9 ft-4", 112),
  inches("9 ft, 4 in", 112),
  inches("9 feet 4 inches", 112),
  inches("9’ 4”", 112),
  inches("9′ 4″", 112),
  inches("9' 4''", 112),
  inches("112 in", 112),
  inches(`112"`, 112),
  inches("9.5 ft", 114),
  inches("12'", 144),
  inches("0'4", 4),
  inches("3'2", 38),
  inches("2'6", 30),
  inches("3.17 ft", 38.04),
  // Fractions of an inch: 9 × 12 + 4.5 = 112.5 in.
  inches(`9'-4 1/2"`, 112.5),
  inches("9'4 1/2", 112.5),
  inches("9'4½", 112.5),
  inches("9'4.5", 112.5),
  inches(`3-1/2"`, 3.5),
  inches(`3 1/2"`, 3.5),
  inches(`3/4"`, 0.75),
  inches("2-1/2 in", 2.5),
  inches("10 ft 3/4", 120.75),
  inches(`9'-0 3/4"`, 108.75),
  // Sums: 112 + 38 = 150 in; a minus has spaces around it.
  inches("9'4 + 3'2", 150),
  inches("9 ft 4 + 3 ft 2", 150),
  inches("9'4 and 3'2", 150),
  inches("12 ft - 6 in", 138),
  inches(`12'6 - 8"`, 142),
  inches("2 ft + 10 cm", 24 + 10 / 2.54),
  inches("1 yd 2 ft 3 in", 63),
  inches(`-2' 6"`, -30, "a formula"),
  // Metric.
  millimeters("2.8 m", 2800),
  millimeters("2,8 m", 2800),
  millimeters("2 m 80 cm", 2800),
  millimeters("280 cm", 2800),
  millimeters("2800mm", 2800),
  millimeters("0,750 m", 750),
  millimeters("1.250,5 mm", 1250.5),
  // Numbers alone, in the unit of the cell.
  bare("12", 12, "a number"),
  bare("3/4", 0.75, "a date"),
  bare("9 3/4", 9.75, "a number"),
  bare("2,5", 2.5),
  bare("0,750", 0.75, "a number"),
  bare("9 - 4", 5, "a date"),
  bare("12 + 8/12", 12 + 8 / 12),
  { text: "1,250", feet: 1250, refused: ["1250 (1250 m)", "1.250 (1.25 m)"], excel: "a number" },
  { text: "1,250 ft", feet: 1250, meters: 381 },
  // What can be read in two ways, and what is no length.
  { ...refused("9-4", `9'-4"`, "9 - 4"), excel: "a date" },
  refused(`9-4"`, `9'-4"`, `9" - 4"`),
  refused("9 4", `9'-4"`, "9 + 4"),
  refused("9'14", `9' + 14"`, "9.14 ft"),
  refused("9'4'", `9'-4"`, "9' + 4'"),
  refused("2'-6'", `2'-6"`, "2' - 6'"),
  refused("9 ft - 4", `9'-4"`, "9 ft - 4 in"),
  refused("9' + 4", `9' + 4"`, "9' + 4'"),
  refused("2m80", "2.80 m", "2 m + 80 m"),
  refused("1,250 m", "1250 m", "1.250 m"),
  refused(`6-12"`, "looks like a range", `6" - 12"`),
  refused("12 + 8 ft", "with and without units"),
  refused("2x4", `unit "x" is not known`),
  refused("about 9", "is not understood"),
  refused("40 gpm", "must be a length"),
];
