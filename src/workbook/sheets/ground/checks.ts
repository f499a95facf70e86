import { SHOT_FAULTS, type ShotFault } from "../../../calc/ground/shotFaults";
import type { Job, SheetLayout } from "../../layout";

export function checks(s: SheetLayout, job: Job): void {
  const faults = (fault: ShotFault): string => `COUNTIF(ShotFaults,"${SHOT_FAULTS[fault]}*")`;
  const wrong = `(COUNTIF(ShotFaults,"?*")-${faults("back")})`;
  s.check({
    label: "Rows of shots that look wrong",
    value: '=COUNTIF(ShotFaults,"?*")',
    limit: 0,
    cure: "Correct the rows that say what is wrong with them.",
    // The first row's own sentence.
    cureNow: `"Row "&MATCH("?*",ShotFaults,0)&": "&INDEX(ShotFaults,MATCH("?*",ShotFaults,0))`,
    fix: "Shots",
    kind: "count",
    weight: "look",
    stopIf: `${wrong}>0`,
  });
  const remarks = (words: string): string => `COUNTIF(INDEX(LevelRun,0,5),"*${words}*")`;
  s.check({
    label: "The run closes on a known level",
    value: `=${remarks("over the limit")}+${remarks("Not closed")}`,
    limit: 0,
    cure: "Read the point it began on again at the end, under the same name: nothing else shows a moved tripod.",
    cureStop: "The last point misses its known level by more than k√L: level again; nothing is adjusted.",
    fix: "Shots",
    kind: "count",
    weight: "look",
    stopIf: `${remarks("over the limit")}>0`,
    needs: ["ShotBook"],
  });
  s.check({
    label: "Shots that show the ground",
    source: "by definition: a line has two ends",
    value: "=GroundShots",
    sign: "at least",
    limit: 2,
    cure: "Two shots at least: at the top and at the basin. Without them the ground is assumed to run straight from the level under the box to finished grade.",
    cureStop: "One shot alone shows no ground: shoot a second place, and give both their stations.",
    fix: "Shots",
    kind: "count",
    weight: "look",
    stopIf: "GroundShots=1",
  });
  s.check({
    label: "Line beyond the shots",
    source: "common practice, no source",
    value: "=IF(GroundShots<2,0,MAX(0,MIN(ShotStations),MAX(INDEX(SurfaceStations,0,1))-MAX(ShotStations)))",
    limit: job.pick({ US: 5, SI: 1.5 }),
    cure: "Beyond the first and the last shot the ground is taken as level: shoot the ends of the line too.",
    fix: "ShotStations",
    kind: "length",
    weight: "look",
    needs: ["ShotStations", "INDEX(SurfaceStations,0,1)"],
  });
  // A needled fabric is about 1 mm thick for each 108 g/m² (0.1 in for 8 oz/yd²): common practice, no source.
  const layers = job.pick({
    US: "(BedGravelDepth+LinerThickness/1000+(FabricUnder+FabricOver)*FabricMass/80)/12",
    SI: "(BedGravelDepth+LinerThickness+(FabricUnder+FabricOver)*FabricMass/108)/1000",
  });
  s.check({
    label: "Dug deep enough for stone, liner and fabric",
    source:
      "by definition, the layers added up; a needled fabric is 1 mm thick for each 108 g/m² (0.1 in for 8 oz/yd²): common practice, no source",
    value: `=ShelfDepth-${layers}`,
    sign: "at least",
    limit: 0,
    over: "spare",
    cure: "The finished bed would lie too high: dig deeper below it on Earth, or spread less stone.",
    fix: "ShelfDepth",
    kind: "length",
    weight: "look",
    needs: ["ShelfDepth", "BedGravelDepth", "LinerThickness", "FabricUnder", "FabricOver", "FabricMass"],
  });
}
