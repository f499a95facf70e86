import { clientsDrawing } from "./clientsDrawing";
import { curvesDrawing } from "../drawing/curves";
import { cutPlanDrawing } from "../drawing/cutPlan";
import { planDrawing } from "../drawing/plan";
import { readCutPlan } from "../drawing/readCutPlan";
import { sectionDrawing } from "../drawing/section";
import { findDeclaration } from "../functions/catalogue";
import { CUT_PLAN } from "./drawingTitles";
import { groundProfile } from "./groundProfile";
import type { JobDrawing } from "./reading";

export { Reading, type JobDrawing } from "./reading";

const CURVE_POINTS = 25;

export const DRAWINGS: readonly JobDrawing[] = [
  clientsDrawing,
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
  groundProfile,
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
        pools: read.pools,
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
