import type { Topics } from "../topics";
import type { Job } from "../facts";
import { toSi } from "../facts/units";
import { isKnown, known } from "../derived";
import { Problem } from "../../calc/problem";
import { atLeast, atMost, checksOn, there, type Check } from "./check";

/** Thickness of needled fabric: 1 mm for each 108 g/m² (0.1 in for 8 oz/yd²). Common practice, no source. */
const FABRIC_DENSITY = { US: toSi("sheetMass", 80, "US") / toSi("size", 1, "US"), SI: 108 } as const;

export function groundChecks(job: Job, { ground }: Topics): Check[] {
  const check = checksOn("Ground");
  const { system } = job;
  const found = ground.faults.flatMap((fault, row) => (fault ? [{ row: row + 1, ...fault }] : []));
  const [first] = found;
  const anyReading = job.shots.flatMap((shot) => [shot.backsight, shot.intermediate, shot.foresight]).find(isKnown);
  const closure = known(ground.run)?.closure;
  const isOver = closure?.within === false;
  const isOpen = known(ground.run) !== undefined && closure === undefined;
  const onLine = (): number => {
    if (ground.shotsOnLine instanceof Problem) throw ground.shotsOnLine;
    return there(ground.shotsOnLine);
  };
  const stations = job.shots.map(({ station }) => station).filter(isKnown);
  const surface = ground.surface.stations.flatMap((at) => at?.station ?? []);
  const beyond = (): number => Math.max(0, Math.min(...stations), Math.max(...surface) - Math.max(...stations));
  const reach = toSi("length", { US: 5, SI: 1.5 }[system], system);
  const { shelfDepth, bedGravelDepth, linerThickness, fabricUnder, fabricOver, fabricMass } = job;
  const layers = (): number =>
    there(bedGravelDepth) +
    there(linerThickness) +
    ((there(fabricUnder) + there(fabricOver)) * there(fabricMass)) / FABRIC_DENSITY[system];
  return [
    check({
      label: "Rows of shots that look wrong",
      value: () => found.length,
      limit: () => 0,
      ok: () => found.length === 0,
      cure: first ? `Row ${first.row}: ${first.sentence}` : "Correct the rows that say what is wrong with them.",
      place: "Shots",
      kind: "count",
      weight: "look",
      stopIf: () => found.some(({ fault }) => fault !== "back"),
    }),
    check({
      label: "The run closes on a known level",
      needs: [anyReading],
      value: () => (isOver || isOpen ? 1 : 0),
      limit: () => 0,
      ok: () => !isOver && !isOpen,
      cure: isOver
        ? "The last point misses its known level by more than k√L: level again; nothing is adjusted."
        : "Read the point it began on again at the end, under the same name: nothing else shows a moved tripod.",
      place: "Shots",
      kind: "count",
      weight: "look",
      stopIf: () => isOver,
    }),
    check({
      label: "Shots that show the ground",
      value: onLine,
      limit: "2 or more",
      ok: () => onLine() >= 2,
      cure:
        ground.shotsOnLine === 1
          ? "One shot alone shows no ground: shoot a second place, and give both their stations."
          : "The ground is assumed, straight from the level under the box to finished grade: shoot it at the top and at the basin.",
      place: "Shots",
      kind: "count",
      weight: "look",
      stopIf: () => ground.shotsOnLine === 1,
    }),
    check({
      label: "Line beyond the shots",
      needs: [stations[0], surface[0]],
      value: () => (onLine() < 2 ? 0 : beyond()),
      limit: () => reach,
      ok: () => onLine() < 2 || atMost(beyond(), reach),
      cure: "Beyond the first and the last shot the ground is taken as level: shoot the ends of the line too.",
      place: "ShotStations",
      kind: "length",
      weight: "look",
    }),
    check({
      label: "Dug deep enough for stone, liner and fabric",
      needs: [shelfDepth, bedGravelDepth, linerThickness, fabricUnder, fabricOver, fabricMass],
      value: () => there(shelfDepth) - layers(),
      limit: "0 or more",
      ok: () => atLeast(there(shelfDepth), layers()),
      cure: "The finished bed would lie too high: dig deeper below it on Earth, or spread less stone.",
      place: "ShelfDepth",
      kind: "length",
      weight: "look",
    }),
  ];
}
