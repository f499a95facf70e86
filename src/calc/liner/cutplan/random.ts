/**
 * Numbers from 0 to below 1 that look random and are the same for the same start.
 *
 * @example repeatableRandom(7)() === repeatableRandom(7)() => true; the same start, the same numbers
 *
 * Source: "mulberry32" by Tommy Ettinger, public domain.
 */
export function repeatableRandom(start: number): () => number {
  let state = start | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
