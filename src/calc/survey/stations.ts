import { invalid, plain } from "../problem";

/** Refuses a single station: between two there is something to work out. */
export function requireStations(stations: readonly unknown[]): void {
  if (stations.length < 2) throw invalid(`stations must be at least two; got ${stations.length}`);
}

/** Refuses a station that does not lie beyond the one before it. */
export function requireBeyond(station: number, before: number): void {
  if (station <= before) throw invalid(`stations go along the line, each once; this one follows ${plain(before)} m`);
}
