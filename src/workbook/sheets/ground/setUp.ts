import { CLOSURE_NAMES, SHOT_STARTS, SHOT_TOOLS } from "../../../job/facts/ground";
import { VOLUME_METHODS } from "../../../calc/ground/cutFill";
import type { SheetLayout } from "../../layout";

/** What the shots are taken with, on what they begin, and how near they must close. */
export function setUp(s: SheetLayout): void {
  s.section("Set-up");
  s.note(
    "Two shots are enough: a backsight on the rim or the grade, and a sight at the top. More shots, also beside the line, follow the ground better. " +
      "A string pulled level is a line of sight: read it down to the ground, and its height over the known point as the backsight.",
  );
  s.input({
    name: "ShotTool",
    label: "Shots are taken with a",
    kind: "text",
    choices: SHOT_TOOLS,
    usual: "laser",
    message: "Laser and rod with receiver, level and rod, or a string pulled level and a tape.",
  });
  s.input({
    name: "ShotStart",
    label: "The first backsight is on the",
    kind: "text",
    choices: SHOT_STARTS,
    usual: "benchmark",
    message:
      "The point of known level that the rod stood on for the first backsight: benchmark, finished grade or rim.",
    note: "Grade and rim differ by what Basin says: the rim lies lower.",
  });
  s.result({
    name: "ShotStartLevel",
    label: "Its level",
    kind: "length",
    format: "#,##0.000",
    formula: `=CHOOSE(MATCH(ShotStart,{${SHOT_STARTS.map((name) => `"${name}"`).join(",")}},0),BenchmarkLevel,GradeLevel,GradeLevel-RimBelowGrade/${s.job.per("size", "length")})`,
    needs: ["BenchmarkLevel", "GradeLevel", "RimBelowGrade"],
  });
  s.input({
    name: "ShotEndLevel",
    label: "Known level of the last point",
    kind: "length",
    format: "#,##0.000",
    min: -2000,
    max: 30000,
    optional: true,
    message: "Where the run ends on another point of known level; blank where it ends on the one it began on.",
    note: "Give the first and the last row the same name to close a loop.",
  });
  s.input({
    name: "ShotDistance",
    label: "Distance leveled, out and back",
    kind: "length",
    demo: { US: 120, SI: 36 },
    min: { US: 1, SI: 0.5 },
    max: { US: 20_000, SI: 6000 },
    optional: true,
    message: "All sights together, paced; the limit of closure follows from it. Blank: no limit.",
  });
  s.input({
    name: "ShotLimit",
    label: "Limit of closure",
    kind: "text",
    choices: CLOSURE_NAMES,
    usual: "construction",
    message: "Construction: 0.1 ft √mile (24 mm √km). Third order: 12 mm √km.",
    note: "24 mm √km is a rule of thumb; third order 12 mm √km: Federal Geodetic Control Committee (1984).",
  });
}

/** How the ground is dug and filled along the line. */
export function digging(s: SheetLayout): void {
  s.section("Digging and filling");
  s.input({
    name: "TopsoilDepth",
    label: "Topsoil stripped and kept apart",
    kind: "size",
    usual: { US: 4, SI: 100 },
    min: 0,
    max: { US: 24, SI: 600 },
    message:
      "Depth of topsoil taken off before anything is cut or filled; it is not used as fill, and goes back on at the end.",
  });
  s.input({
    name: "CutSlope",
    label: "Slope of sides in cut",
    kind: "factor",
    unit: "to 1",
    format: "0.00",
    usual: 1,
    min: 0,
    max: 6,
    message: "How far the sides of a cut lean back for each 1 of height; 0 is upright.",
    note: "Those of fill are as steep as the berm's, on Earth.",
  });
  s.input({
    name: "BankSlope",
    label: "Slope of the banks under the liner",
    kind: "factor",
    unit: "to 1",
    format: "0.00",
    usual: 0.5,
    min: 0,
    max: 6,
    message: "How far the banks that the liner goes up lean back for each 1 of height; 0 is upright.",
  });
  s.input({
    name: "VolumeMethod",
    label: "Volume between stations",
    kind: "text",
    choices: VOLUME_METHODS,
    usual: "prismoidal",
    message: "Average end area is quick and high where a section runs out; prismoidal is exact for straight edges.",
  });
}
