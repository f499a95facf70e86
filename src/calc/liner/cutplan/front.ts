/**
 * The smallest boxes that a set of pieces can be cut from with edge-to-edge cuts: `across` grows, `along` shrinks,
 * no box holds another. Lengths are whole nanometres (see steps.ts), so sums of them are exact.
 */
export interface Front {
  across: Float64Array;
  along: Float64Array;
  count: number;
}

/** Boxes no plan can use. */
export interface BoxLimit {
  readonly across: number;
  readonly along: number;
  readonly area: number;
}

/** A front without boxes, with room for as many as are named. */
export function emptyFront(room = 4): Front {
  return { across: new Float64Array(room), along: new Float64Array(room), count: 0 };
}

/** The boxes of one piece: as it is, and turned. */
export function pieceFront(length: number, width: number, turn: boolean): Front {
  const front = emptyFront(2);
  const [narrow, wide] = !turn || width <= length ? [width, length] : [length, width];
  add(front, narrow, wide);
  if (turn && narrow !== wide) add(front, wide, narrow);
  return front;
}

function add(front: Front, across: number, along: number): void {
  front.across[front.count] = across;
  front.along[front.count] = along;
  front.count++;
}

/** The shortest box no wider than `across`; -1 when there is none. */
export function shortestWithin(front: Front, across: number): number {
  let index = front.count - 1;
  while (index >= 0 && (front.across[index] as number) > across) index--;
  return index;
}

/** The narrowest box no longer than `along`; -1 when there is none. */
export function narrowestWithin(front: Front, along: number): number {
  for (let index = 0; index < front.count; index++) if ((front.along[index] as number) <= along) return index;
  return -1;
}

// Scratch space of `join`, grown as needed; nothing in it outlives a call.
let stacked = emptyFront(64);
let beside = emptyFront(64);
let merged = emptyFront(128);

/**
 * Adds to `target` every box that holds a box of `a` and a box of `b` with one cut between them: stacked along the
 * roll or beside each other across it. Keeps only boxes within the limit that no other box fits into; when there are
 * more than `most`, every so many are left out (the widest stays).
 */
export function join(target: Front, a: Front, b: Front, limit: BoxLimit, most = Infinity): void {
  if (a.count === 0 || b.count === 0) return;
  const room = a.count + b.count;
  if (stacked.across.length < room) {
    stacked = emptyFront(2 * room);
    beside = emptyFront(2 * room);
  }
  stack(a, b, limit);
  place(a, b, limit);
  merge(target);
  copy(target, most);
}

/** For every width at which a shorter box of either becomes possible: the sum of the shortest lengths. */
function stack(a: Front, b: Front, limit: BoxLimit): void {
  stacked.count = 0;
  let i = 0;
  let j = 0;
  let width = Math.max(a.across[0] as number, b.across[0] as number);
  while (width <= limit.across) {
    while (i + 1 < a.count && (a.across[i + 1] as number) <= width) i++;
    while (j + 1 < b.count && (b.across[j + 1] as number) <= width) j++;
    const length = (a.along[i] as number) + (b.along[j] as number);
    if (length <= limit.along && width * length <= limit.area) add(stacked, width, length);
    const nextA = i + 1 < a.count ? (a.across[i + 1] as number) : Infinity;
    const nextB = j + 1 < b.count ? (b.across[j + 1] as number) : Infinity;
    if (nextA === Infinity && nextB === Infinity) return;
    width = nextA < nextB ? nextA : nextB;
  }
}

/** For every length at which a narrower box of either becomes possible: the sum of the narrowest widths. */
function place(a: Front, b: Front, limit: BoxLimit): void {
  beside.count = 0;
  let i = a.count - 1;
  let j = b.count - 1;
  let length = Math.max(a.along[i] as number, b.along[j] as number);
  while (length <= limit.along) {
    while (i > 0 && (a.along[i - 1] as number) <= length) i--;
    while (j > 0 && (b.along[j - 1] as number) <= length) j--;
    const width = (a.across[i] as number) + (b.across[j] as number);
    if (width <= limit.across && width * length <= limit.area) add(beside, width, length);
    const nextA = i > 0 ? (a.along[i - 1] as number) : Infinity;
    const nextB = j > 0 ? (b.along[j - 1] as number) : Infinity;
    if (nextA === Infinity && nextB === Infinity) return;
    length = nextA < nextB ? nextA : nextB;
  }
}

/** Merges both scratch lists and the target's own boxes into `merged`, widths growing, and drops boxes that hold others. */
function merge(target: Front): void {
  const room = stacked.count + beside.count + target.count;
  if (merged.across.length < room) merged = emptyFront(2 * room);
  merged.count = 0;
  let s = 0;
  let t = 0;
  // The list of boxes beside each other was made from wide to narrow.
  let p = beside.count - 1;
  let shortest = Infinity;
  while (s < stacked.count || t < target.count || p >= 0) {
    const ws = s < stacked.count ? (stacked.across[s] as number) : Infinity;
    const wt = t < target.count ? (target.across[t] as number) : Infinity;
    const wp = p >= 0 ? (beside.across[p] as number) : Infinity;
    let width: number;
    let length: number;
    if (ws <= wt && ws <= wp) {
      width = ws;
      length = stacked.along[s++] as number;
    } else if (wt <= wp) {
      width = wt;
      length = target.along[t++] as number;
    } else {
      width = wp;
      length = beside.along[p--] as number;
    }
    if (length >= shortest) continue;
    // Of equally wide boxes the shortest counts.
    if (merged.count > 0 && merged.across[merged.count - 1] === width) merged.count--;
    add(merged, width, length);
    shortest = length;
  }
}

function copy(target: Front, most: number): void {
  const count = Math.min(merged.count, most);
  if (target.across.length < count) {
    target.across = new Float64Array(2 * count);
    target.along = new Float64Array(2 * count);
  }
  target.count = count;
  const step = count === merged.count ? 1 : merged.count / count;
  for (let index = 0; index < count; index++) {
    const from = step === 1 ? index : Math.ceil((index + 1) * step) - 1;
    target.across[index] = merged.across[from] as number;
    target.along[index] = merged.along[from] as number;
  }
}
