import { readUnitSystem, type UnitSystem } from "../calc/quantity/unitSystem";
import { Problem } from "../calc/problem";
import { curvesDrawing } from "../drawing/curves";
import { cutPlanDrawing } from "../drawing/cutPlan";
import { planDrawing } from "../drawing/plan";
import { readCutPlan } from "../drawing/readCutPlan";
import { sectionDrawing } from "../drawing/section";
import { findDeclaration } from "../functions/catalogue";
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
    if (typeof value !== "number") throw new Problem("value", `${place} has no number yet`);
    return value;
  }

  /** The numbers of a column, blanks left out. */
  column(place: Place): number[] {
    return this.grid(place).flatMap(([value]) => (typeof value === "number" ? [value] : []));
  }

  get system(): UnitSystem {
    return readUnitSystem(this.text("Units"));
  }

  /** A size of the workbook (inches or millimetres) as a length of the drawing (feet or metres). */
  length(size: number): number {
    return size / SIZES_PER_LENGTH[this.system];
  }
}

const SIZES_PER_LENGTH: Readonly<Record<UnitSystem, number>> = { US: 12, SI: 1000 };

/** The drawing that a longer search may change. */
export const CUT_PLAN = "Cut plan";

const CURVE_POINTS = 25;

export const DRAWINGS: readonly JobDrawing[] = [
  {
    title: "Section",
    places: ["Units", "FeatureName", "Drops", "Treads", "BasinLength", "BasinWaterDepth", "RimBelowGrade", "LevelDrop"],
    draw: (read) =>
      sectionDrawing({
        system: read.system,
        name: read.text("FeatureName"),
        drops: read.column("Drops"),
        treads: read.column("Treads"),
        basinLength: read.number("BasinLength"),
        basinDepth: read.number("BasinWaterDepth"),
        rimBelowGrade: read.length(read.number("RimBelowGrade")),
        levelDrop: read.number("LevelDrop"),
      }),
  },
  {
    title: "Plan",
    places: ["Units", "FeatureName", "Treads", "BedWidth", "BasinLength", "BasinWidth", "PoolTable"],
    draw: (read) =>
      planDrawing({
        system: read.system,
        name: read.text("FeatureName"),
        treads: read.column("Treads"),
        bedWidth: read.number("BedWidth"),
        basinLength: read.number("BasinLength"),
        basinWidth: read.number("BasinWidth"),
        pools: read
          .grid("PoolTable")
          .map(([area, lip]) => ({ area: Number(area), lip: read.length(Number(lip)) }))
          .filter(({ area }) => area > 0),
      }),
  },
  {
    title: CUT_PLAN,
    places: ["Units", "FeatureName", "CutPlan"],
    draw: (read) =>
      cutPlanDrawing({
        system: read.system,
        name: read.text("FeatureName"),
        ...readCutPlan(read.grid("CutPlan")),
      }),
  },
  {
    title: "Pump and system curves",
    places: [
      "Units",
      "PumpName",
      "ChosenCurve",
      "StaticLift",
      "RouteTable",
      "RiserTable",
      "PumpCount",
      "PumpSpeed",
      "FrictionMethod",
      "DeliveredFlow",
      "DutyHead",
    ],
    draw(read) {
      const given = ["ChosenCurve", "StaticLift", "RouteTable", "PumpCount", "PumpSpeed"].map((place) =>
        read.grid(place),
      );
      const table = findDeclaration("CURVETABLE")?.evaluate([
        ...given,
        CURVE_POINTS,
        read.text("FrictionMethod"),
        null,
        read.grid("RiserTable"),
        read.system,
      ]);
      const [, ...rows] = Array.isArray(table) ? table : [];
      return curvesDrawing({
        system: read.system,
        pump: read.text("PumpName"),
        points: rows.map(([flow, pumpHead, systemHead]) => ({
          flow: Number(flow),
          pumpHead: Number(pumpHead),
          systemHead: Number(systemHead),
        })),
        duty: { flow: read.number("DeliveredFlow"), head: read.number("DutyHead") },
      });
    },
  },
];
