/**
 * The share of a wanted rate that tests insist on: they catch a slide, not a slow machine or busy neighbours of it.
 * `npm run bench` measures the rates themselves.
 */
export const SHARE = 1 / 5;

/** Seconds of processor time of one call, in the best of five rounds: what other programs take of the machine is not counted. */
export function secondsPerCall(call: () => unknown, calls: number): number {
  let best = Infinity;
  for (let round = 0; round < 5; round++) {
    const start = process.cpuUsage();
    for (let i = 0; i < calls; i++) call();
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, (user + system) / 1e6 / calls);
  }
  return best;
}

/** The same for work that waits; its first round warms up and is not counted. */
export async function secondsOf(work: () => Promise<unknown>): Promise<number> {
  await work();
  let best = Infinity;
  for (let round = 0; round < 5; round++) {
    const start = process.cpuUsage();
    await work();
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, (user + system) / 1e6);
  }
  return best;
}
