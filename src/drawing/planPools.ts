/** A pool of the feature: its water surface, and the width of the lip it runs over (0 where not known). */
export interface Pool {
  readonly area: number;
  readonly lip: number;
}

/** An ellipse on the middle line of the bed that holds a pool's surface. */
export interface PoolShape {
  readonly start: number;
  readonly length: number;
  readonly width: number;
}

/** How long the spillway box is at the width of the bed for its water; undefined where that is not known or passes the run. */
export function boxLength(pools: readonly Pool[], bedWidth: number, run: number): number | undefined {
  const length = (pools[0]?.area ?? 0) / bedWidth;
  return length > 0 && length < run ? length : undefined;
}

/**
 * Where the pools lie, as ellipses of their true surface that end at their lips: the pool numbered n stands behind the
 * lip of drop n. The first is the spillway box, which is drawn as a box; those without a lip are left out.
 * Round where the tread before the lip is long enough, broader than long where it is not.
 */
export function poolShapes(pools: readonly Pool[], lips: readonly number[]): PoolShape[] {
  return pools.slice(1, lips.length).map(({ area }, index) => {
    const lip = lips[index + 1] ?? 0;
    const tread = lip - (lips[index] ?? 0);
    const length = Math.min(tread, Math.sqrt((4 * area) / Math.PI));
    return { start: lip - length, length, width: (4 * area) / (Math.PI * length) };
  });
}
