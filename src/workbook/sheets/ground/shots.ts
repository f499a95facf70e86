import { MOST_SHOTS } from "../../../job/facts/ground";
import type { Job, SheetLayout } from "../../layout";
import { areaAddress } from "../../layout/address";
import { fillDown } from "../money/cells";

const LEVEL = "#,##0.000";
/** Columns of the level run, right of the shots, and of what is wrong with them. */
const RUN_AT = 8;
const WRONG_AT = 13;

/** The level book: what the rod showed and where, the levels it gives, and what is wrong with a row. */
export function shots(s: SheetLayout, job: Job): void {
  s.section("Shots");
  s.note(
    "One row for each point, in the order taken. A turning point has a foresight from the old set-up and a backsight from the new one. " +
      "A laser that was moved needs one row more: a backsight on a point named above. Station: down the line from the top lip, negative above it. " +
      "Offset: right of the line looking down it, negative to the left. Shots and volumes by station are for the screen; the pages before are what prints.",
  );
  const most = job.pick({ US: 25, SI: 7.6 });
  const sight = (key: string, title: string, name: string, message: string) =>
    ({
      key,
      title,
      kind: "length",
      format: LEVEL,
      name,
      input: { min: 0, max: most, message },
    }) as const;
  const top = s.row;
  // The level run spills beside the rows, its first row over the shots' heads.
  const table = s.table({
    rows: MOST_SHOTS,
    columns: [
      {
        key: "point",
        title: "Point",
        kind: "text",
        input: { message: "Name of the point; the same name again is the same point." },
      },
      sight("back", "Backsight", "ShotBack", "What the rod shows on a point of known level, from a new set-up."),
      sight("mid", "Intermediate", "ShotMid", "What it shows on a point that the run does not go on from."),
      sight("fore", "Foresight", "ShotFore", "What it shows last from a set-up, on a turning point or at the end."),
      {
        key: "station",
        title: "Station",
        kind: "length",
        name: "ShotStations",
        input: {
          min: { US: -3000, SI: -900 },
          max: { US: 3000, SI: 900 },
          message:
            "Distance down the line from the top lip; blank for a point that is not on the ground to be built on.",
        },
      },
      {
        key: "offset",
        title: "Offset",
        kind: "length",
        name: "ShotOffsets",
        input: {
          min: { US: -300, SI: -90 },
          max: { US: 300, SI: 90 },
          message: "Distance to the right of the line, negative to the left; blank on the line.",
        },
      },
      {
        key: "level",
        title: "Level",
        kind: "length",
        format: LEVEL,
        name: "ShotLevels",
      },
    ],
    demo: { US: demoRows(1), SI: demoRows(2) },
  });
  const { top: first, bottom: last } = table.body;
  const [found, corrected] = [2, 3].map((at) =>
    areaAddress({ top: first, left: RUN_AT + at, bottom: last, right: RUN_AT + at }),
  );
  const levels = `IF(ISNUMBER(${corrected}),${corrected},IF(ISNUMBER(${found}),${found},""))`;
  fillDown(s, table.column("level"), levels);
  s.define("Shots", first, 1, last, 6);
  s.define("ShotReadings", first, 1, last, 4);
  s.define("ShotBook", first, 2, last, 4);
  s.define("ShotPlaces", first, 5, last, 7);
  const below = s.row;
  s.row = top;
  const run = s.spill({
    name: "LevelRun",
    header: "function",
    at: RUN_AT,
    rows: MOST_SHOTS,
    headerLines: 3,
    needs: ["ShotBook", "ShotStartLevel"],
    formula: "=RILL.LEVELRUN(ShotReadings,ShotStartLevel,ShotEndLevel,ShotDistance,ShotLimit,Units)",
    columns: [
      { kind: "text", wrap: false },
      { kind: "length", format: LEVEL },
      { kind: "length", format: LEVEL },
      { kind: "length", format: LEVEL },
      { kind: "text", wrap: false },
    ],
  });
  s.define("LevelRunHead", run.anchor.top, RUN_AT, run.anchor.top, RUN_AT);
  s.row = top;
  s.spill({
    name: "ShotFaults",
    header: "function",
    at: WRONG_AT,
    rows: MOST_SHOTS,
    formula: `=IF(COUNTA(Shots)=0,"What is wrong",RILL.SHOTCHECK(Shots,Units))`,
    columns: [{ kind: "text", wrap: false }],
  });
  s.row = below;
}

/** What the rod shows on a point from one set-up or two, with its station and offset where it has them. */
interface DemoShot {
  readonly back?: number;
  readonly mid?: number;
  readonly fore?: number;
  readonly at?: readonly [station: number, offset: number];
}

/** Rows that are invented: ground that rises toward the top, shot from two set-ups and closed on the benchmark. */
const INVENTED: readonly (readonly [point: string, US: DemoShot, SI: DemoShot])[] = [
  ["Benchmark", { back: 4.36 }, { back: 1.35 }],
  ["Grade at the basin", { mid: 4.96, at: [9.5, 0] }, { mid: 1.53, at: [3.4, 0] }],
  ["Left of it", { mid: 4.84, at: [9.5, -3] }, { mid: 1.49, at: [3.4, -1] }],
  ["Right of it", { mid: 5.1, at: [9.5, 3] }, { mid: 1.58, at: [3.4, 1] }],
  ["Half way up", { mid: 4.51, at: [5, 0] }, { mid: 1.4, at: [1.8, 0] }],
  ["Left of it", { mid: 4.37, at: [5, -3] }, { mid: 1.35, at: [1.8, -1] }],
  ["Right of it", { mid: 4.71, at: [5, 3] }, { mid: 1.46, at: [1.8, 1] }],
  ["Wall", { back: 4.9, fore: 3.35 }, { back: 1.52, fore: 1.05 }],
  ["Top lip", { mid: 5.61, at: [0, 0] }, { mid: 1.75, at: [0, 0] }],
  ["Behind the box", { mid: 5.46, at: [-5.5, 0] }, { mid: 1.7, at: [-1.5, 0] }],
  ["Benchmark", { fore: 5.9 }, { fore: 1.824 }],
];

function demoRows(system: 1 | 2): (string | number)[][] {
  return INVENTED.map((row) => {
    const { back = "", mid = "", fore = "", at = ["", ""] } = row[system];
    return [row[0], back, mid, fore, ...at];
  });
}
