/** What a part of the basin is, and how much of it is room for water. */
export interface BasinPartKind {
  readonly name: string;
  /** Other things people call it. */
  readonly also: readonly string[];
  /** Room for water per volume (porosity), 0 to 1, unless the user gives his own. */
  readonly voidFraction: number;
  /** The pit holds all the others, and what they leave of it is gravel; wells reach up through the layers. */
  readonly role: "pit" | "modules" | "well";
  /** Upright cylinder: length is the diameter. */
  readonly round: boolean;
  readonly source: string;
}

export const BASIN_PARTS: readonly BasinPartKind[] = [
  {
    name: "pit",
    also: ["basin", "gravel", "pit with gravel"],
    voidFraction: 0.4,
    role: "pit",
    round: false,
    source:
      "US state stormwater manuals, clean washed open-graded stone 0.40 (from memory); tested 0.35 to 0.45. " +
      "The TRCA/STEP stormwater planning and design guide takes 0.35 for all aggregates",
  },
  {
    name: "modules",
    also: ["module", "void module", "void modules", "crates"],
    voidFraction: 0.95,
    role: "modules",
    round: false,
    source: "Stormwater manuals, plastic storage modules 0.90 to 0.97 (from memory); ask the supplier",
  },
  {
    name: "pump well",
    also: ["well", "open water"],
    voidFraction: 1,
    role: "well",
    round: false,
    source: "Open water",
  },
  {
    name: "tub",
    also: ["preformed basin", "basin tub"],
    voidFraction: 1,
    role: "well",
    round: false,
    source: "Open water; where its sides lean, what it holds over its box",
  },
  {
    name: "round well",
    also: ["round pump well", "pipe well"],
    voidFraction: 1,
    role: "well",
    round: true,
    source: "Open water; cylinder",
  },
];

/** What clean washed stone holds, for functions that take one void fraction. */
export const GRAVEL_VOIDS = 0.4;
