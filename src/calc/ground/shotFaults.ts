import { sayBoth } from "../quantity/measures";
import { LEVEL_RANGE } from "../levels/setOut";
import { pointKey, type RodRow } from "./levelRun";

/** A row of shots as it was written down, right or wrong; m. */
export interface ShotRow extends RodRow {
  readonly station?: number | undefined;
  readonly offset?: number | undefined;
}

/** What a row of shots can have wrong; a sentence begins with these words. */
export const SHOT_FAULTS = {
  rod: "Off the rod",
  order: "Out of order",
  backsight: "No backsight",
  twice: "Station twice",
  back: "Goes back",
} as const;
export type ShotFault = keyof typeof SHOT_FAULTS;

export interface FaultyShot {
  readonly fault: ShotFault;
  readonly sentence: string;
}

/**
 * What is wrong with each row of shots, or looks like a slip; undefined where nothing does. A row with several faults is
 * told the first. Going back is a fault only inside of what was shot already: one may shoot the line from either end.
 *
 * @example shotFaults([{ point: "a", intermediate: 1 }])[0].fault => "backsight"; nothing was read on a known level before
 */
export function shotFaults(rows: readonly ShotRow[]): (FaultyShot | undefined)[] {
  const known = new Set<string>();
  const stations: number[] = [];
  let open: "before" | "open" | "ended" = "before";
  return rows.map((row) => {
    const fault = readingFault(row, open, known) ?? stationFault(row, stations);
    if (row.backsight !== undefined) open = "open";
    else if (row.foresight !== undefined) open = "ended";
    if (pointKey(row.point) !== "") known.add(pointKey(row.point));
    if (isOnLine(row)) stations.push(row.station);
    return fault;
  });
}

function fault(kind: ShotFault, rest: string): FaultyShot {
  return { fault: kind, sentence: `${SHOT_FAULTS[kind]}: ${rest}` };
}

function readingFault(
  row: ShotRow,
  open: "before" | "open" | "ended",
  known: ReadonlySet<string>,
): FaultyShot | undefined {
  const { backsight, intermediate, foresight } = row;
  const readings = [backsight, intermediate, foresight].filter((reading) => reading !== undefined);
  if (readings.length === 0) return undefined;
  const { min, max } = LEVEL_RANGE.reading;
  const off = readings.find((reading) => !(reading >= min && reading <= max));
  if (off !== undefined)
    return fault("rod", `a rod shows ${min} to ${sayBoth("length", max)}, not ${sayBoth("length", off)}.`);
  if (intermediate !== undefined && readings.length > 1)
    return fault("order", "an intermediate sight stands alone; a turning point has a foresight and a backsight.");
  const sight = intermediate ?? foresight;
  if (sight !== undefined && open === "before")
    return fault("backsight", "begin with one, alone in its row, on the point the run starts from.");
  if (sight !== undefined && open === "ended")
    return fault("order", "the foresight above ended the set-up; enter side shots as intermediate sights.");
  if (sight === undefined && open !== "before" && !known.has(pointKey(row.point)))
    return fault(
      "backsight",
      "a backsight alone is read on a point named above; else enter the foresight that reached it.",
    );
  return undefined;
}

function isOnLine(row: ShotRow): row is ShotRow & { readonly station: number } {
  return row.station !== undefined && (row.offset ?? 0) === 0;
}

function stationFault(row: ShotRow, before: readonly number[]): FaultyShot | undefined {
  if (!isOnLine(row) || before.length === 0) return undefined;
  if (before.includes(row.station))
    return fault("twice", "it was shot on the line above; clear one, or give it its offset.");
  if (row.station > Math.min(...before) && row.station < Math.max(...before))
    return fault("back", "right where it was shot late; else correct the station.");
  return undefined;
}
