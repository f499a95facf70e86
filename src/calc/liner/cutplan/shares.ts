import { type Candidate, choose } from "./knapsack";
import type { Work } from "./work";

/** Pieces that are alike, and the ways they may lie; steps. */
export interface Lot {
  readonly count: number;
  readonly ways: readonly (readonly [along: number, across: number])[];
}

/** Room across a roll, the longest that may lie along it (steps), and what a step along it costs. */
export interface Lane {
  readonly room: number;
  readonly longest: number;
  readonly rate: number;
}

/** A way to fill a lane: steps along it that one of each lot would take a share of, and what a step costs. */
interface Column {
  readonly entries: ReadonlyMap<number, number>;
  readonly rate: number;
}

/** Steps along a roll are counted in this many, to keep the numbers near 1. */
const SCALE = 1e9;

/**
 * The largest sum of shares of the cost, one for each piece, such that what lies abreast anywhere on a roll counts for
 * no more than that place costs: a linear program, solved from the other side by the simplex method with one column
 * for each way to fill a lane, made when it pays. What is returned holds even where the work ends before the program
 * does, because the shares are scaled down until the best way to fill each lane is paid for.
 */
export function shareOut(lots: readonly Lot[], lanes: readonly Lane[], work: Work): number {
  const count = lots.length;
  const counts = lots.map((lot) => lot.count);
  // One way for each lot alone to begin with; the inverse of the basis is then a diagonal.
  const basis: Column[] = lots.map((lot, index) => cheapestAlone(lot, index, lanes));
  const inverse = basis.map((column, index) => {
    const row = new Float64Array(count);
    row[index] = 1 / (column.entries.get(index) as number);
    return row;
  });
  const amounts = basis.map((column, index) => (counts[index] as number) / (column.entries.get(index) as number));
  let bound = 0;
  while (!work.isSpent) {
    const shares = new Float64Array(count);
    basis.forEach(({ rate }, row) => {
      const of = inverse[row] as Float64Array;
      for (let i = 0; i < count; i++) shares[i] = (shares[i] as number) + rate * (of[i] as number);
    });
    let sum = 0;
    for (let i = 0; i < count; i++) {
      if ((shares[i] as number) < 0) shares[i] = 0;
      sum += (counts[i] as number) * (shares[i] as number);
    }
    let entering: Column | undefined;
    let overpaid = 1;
    let dearest = 1 + 1e-9;
    for (const { room, longest, rate } of lanes) {
      const { chosen, value, atMost } = choose(candidatesOf(lots, shares, longest), counts, room, work);
      overpaid = Math.max(overpaid, atMost / (rate * SCALE));
      if (value / (rate * SCALE) <= dearest) continue;
      dearest = value / (rate * SCALE);
      entering = { entries: sumUp(chosen), rate: rate * SCALE };
    }
    bound = Math.max(bound, sum / overpaid);
    if (!entering || !pivot(basis, inverse, amounts, entering)) break;
    work.done += 4 * count * count;
  }
  return bound * (1 - 1e-12);
}

function candidatesOf(lots: readonly Lot[], shares: Float64Array, longest: number): Candidate[] {
  return lots.flatMap(({ ways }, thing) =>
    ways
      .filter(([along]) => along <= longest)
      .map(([along, size]): Candidate => ({ size, thing, value: ((shares[thing] as number) * SCALE) / along, along })),
  );
}

function sumUp(chosen: readonly Candidate[]): Map<number, number> {
  const entries = new Map<number, number>();
  for (const { thing, along } of chosen) entries.set(thing, (entries.get(thing) ?? 0) + SCALE / along);
  return entries;
}

/** The cheapest way to lay as many of a lot abreast as a lane holds, and nothing else. */
function cheapestAlone({ count, ways }: Lot, index: number, lanes: readonly Lane[]): Column {
  let best: Column = { entries: new Map([[index, 1]]), rate: Infinity };
  let least = Infinity;
  for (const { room, longest, rate } of lanes) {
    for (const [along, across] of ways) {
      const abreast = Math.min(count, Math.floor(room / across));
      if (along > longest || abreast === 0) continue;
      const entry = (abreast * SCALE) / along;
      if ((rate * SCALE) / entry >= least) continue;
      least = (rate * SCALE) / entry;
      best = { entries: new Map([[index, entry]]), rate: rate * SCALE };
    }
  }
  return best;
}

/** Takes a column into the basis for the one that runs out first; false when none does. */
function pivot(basis: Column[], inverse: Float64Array[], amounts: number[], entering: Column): boolean {
  const count = basis.length;
  const weights = inverse.map((row) => {
    let weight = 0;
    for (const [lot, entry] of entering.entries) weight += (row[lot] as number) * entry;
    return weight;
  });
  let leaving = -1;
  let least = Infinity;
  weights.forEach((weight, row) => {
    if (weight <= 1e-9) return;
    const ratio = (amounts[row] as number) / weight;
    if (ratio >= least) return;
    least = ratio;
    leaving = row;
  });
  if (leaving < 0) return false;
  const pivotRow = inverse[leaving] as Float64Array;
  const weight = weights[leaving] as number;
  for (let i = 0; i < count; i++) pivotRow[i] = (pivotRow[i] as number) / weight;
  amounts[leaving] = least;
  weights.forEach((factor, row) => {
    if (row === leaving || factor === 0) return;
    const other = inverse[row] as Float64Array;
    for (let i = 0; i < count; i++) other[i] = (other[i] as number) - factor * (pivotRow[i] as number);
    amounts[row] = Math.max(0, (amounts[row] as number) - factor * least);
  });
  basis[leaving] = entering;
  return true;
}
