/** What lengths come to, end to end. */
export function sum(lengths: readonly number[]): number {
  return lengths.reduce((total, length) => total + length, 0);
}

/** The station of each lip, from the top one: a lip stands where the tread before it ends. */
export function lipStations(treads: readonly number[]): number[] {
  return treads.map((_, index) => sum(treads.slice(0, index)));
}
