import { Problem } from "../calc/problem";
import { readUnitSystem, type UnitSystem } from "../calc/quantity/unitSystem";
import type { Pool } from "../drawing/planPools";
import type { Grid, Place } from "../host/port";

/** A drawing of the job, made from the workbook's named cells. */
export interface JobDrawing {
  readonly title: string;
  readonly places: readonly Place[];
  /** The SVG; throws a `Problem` that says what is still to be filled in. */
  draw(read: Reading): string;
}

/** The values of a drawing's places, by name. */
export class Reading {
  constructor(
    private readonly places: readonly Place[],
    private readonly grids: readonly (Grid | undefined)[],
  ) {}

  grid(place: Place): Grid {
    const grid = this.grids[this.places.indexOf(place)];
    if (!grid) throw new Problem("missing", `this workbook has no ${place}; start a job to get one`);
    return grid;
  }

  text(place: Place): string {
    return String(this.grid(place)[0]?.[0] ?? "");
  }

  number(place: Place): number {
    const value = this.grid(place)[0]?.[0];
    if (typeof value !== "number") throw new Problem("value", `fill in ${SAID[place] ?? place} first`);
    return value;
  }

  /** The numbers of a column, blanks left out. */
  column(place: Place): number[] {
    return this.grid(place).flatMap(([value]) => (typeof value === "number" ? [value] : []));
  }

  /** A number that may be left blank, as 0. */
  optional(place: Place): number {
    const value = this.grid(place)[0]?.[0];
    return typeof value === "number" ? value : 0;
  }

  get system(): UnitSystem {
    return readUnitSystem(this.text("Units"));
  }

  /** The pools of the feature, from the top. */
  get pools(): Pool[] {
    return this.grid("PoolTable")
      .map(([area, lip]) => ({ area: Number(area), lip: this.length(Number(lip)) }))
      .filter(({ area }) => area > 0);
  }

  /** A size of the workbook (inches or millimetres) as a length of the drawing (feet or metres). */
  length(size: number): number {
    return size / SIZES_PER_LENGTH[this.system];
  }
}

/** What people call the numbers that a drawing cannot do without. */
const SAID: Readonly<Record<string, string>> = {
  BasinLength: "how long the basin is",
  BasinWidth: "how wide the basin is",
  BasinWaterDepth: "how deep the water in the basin is",
  RimBelowGrade: "how far the basin's rim lies below finished grade",
  LevelDrop: "what the basin needs to tell how far its level drops",
  BedWidth: "how wide the bed is",
  BankHeight: "how high the banks are",
  DeliveredFlow: "pump and pipes",
  DutyHead: "pump and pipes",
};

const SIZES_PER_LENGTH: Readonly<Record<UnitSystem, number>> = { US: 12, SI: 1000 };
