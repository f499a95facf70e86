import { invalid, ofPart, plain, requireRange } from "../problem";

/**
 * Goes along the line from station to station; each is told the one before it.
 *
 * @param stations at least two, in order, each once
 * @param range the least and the greatest station, m
 * @param visit what to do at a station; a problem in it names the station
 * @throws Problem for a single station, stations twice or backwards, and outside the range
 * @example alongLine([{ station: 0 }, { station: 4 }], { min: 0, max: 9 }, (at, before) => at.station - (before?.station
 *   ?? 0)) => [0, 4]; from the first to the second
 */
export function alongLine<At extends { readonly station: number }, Made>(
  stations: readonly At[],
  range: { readonly min: number; readonly max: number },
  visit: (at: At, before: At | undefined) => Made,
): Made[] {
  if (stations.length < 2) throw invalid(`stations must be at least two; got ${stations.length}`);
  return stations.map((at, index) => {
    requireRange("station", at.station, range.min, range.max, "m");
    const before = stations[index - 1];
    return ofPart(`station ${plain(at.station)} m`, () => {
      if (before && at.station <= before.station)
        throw invalid(`stations go along the line, each once; this one follows ${plain(before.station)} m`);
      return visit(at, before);
    });
  });
}
