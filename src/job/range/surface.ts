/** Rows of what is known of a place, and by how much the price there is off; both as numbers without a unit. */
export interface Fitted {
  /** What the fit says at each row it was made from, had that row been left out. */
  readonly leftOut: Float64Array;
  /** What it says anywhere. */
  at(row: ArrayLike<number>): number;
}

/**
 * The plane through points that leans on each column as little as its weight asks for: least squares with a penalty
 * (ridge regression: A. E. Hoerl, R. W. Kennard, Technometrics 12, 1970, pp. 55 to 67; from memory). What a point would
 * be told by all others follows from its own share in the fit, without fitting anew.
 *
 * @param rows of each point what it is told by
 * @param misses what is to be told
 * @param weights penalty of each column, over 0
 */
export function fitPlane(
  rows: readonly ArrayLike<number>[],
  misses: ArrayLike<number>,
  weights: readonly number[],
): Fitted {
  const size = weights.length;
  const square = Array.from({ length: size }, (_, i) => {
    const line = new Float64Array(size);
    line[i] = weights[i] ?? 1;
    return line;
  });
  const right = new Float64Array(size);
  rows.forEach((row, point) => {
    for (let i = 0; i < size; i++) {
      const line = square[i] as Float64Array;
      const value = row[i] ?? 0;
      right[i] = (right[i] ?? 0) + value * (misses[point] ?? 0);
      for (let j = 0; j <= i; j++) line[j] = (line[j] ?? 0) + value * (row[j] ?? 0);
    }
  });
  factorize(square);
  const slopes = upward(square, forward(square, right));
  const at = (row: ArrayLike<number>): number => {
    let sum = 0;
    for (let i = 0; i < size; i++) sum += (slopes[i] ?? 0) * (row[i] ?? 0);
    return sum;
  };
  const leftOut = Float64Array.from(rows, (row, point) => {
    const own = forward(square, row).reduce((sum, value) => sum + value * value, 0);
    const miss = misses[point] ?? 0;
    return miss - (miss - at(row)) / (1 - Math.min(MOST_OWN, own));
  });
  return { leftOut, at };
}

/** A point that carries more of its own fit than this is told by nothing else. */
const MOST_OWN = 0.9;

/** Cholesky's triangle of a symmetric matrix, in place of its lower half. */
function factorize(square: readonly Float64Array[]): void {
  square.forEach((line, i) => {
    for (let j = 0; j <= i; j++) {
      const other = square[j] ?? line;
      let sum = line[j] ?? 0;
      for (let k = 0; k < j; k++) sum -= (line[k] ?? 0) * (other[k] ?? 0);
      line[j] = i === j ? Math.sqrt(sum) : sum / (other[j] ?? 1);
    }
  });
}

function forward(triangle: readonly Float64Array[], right: ArrayLike<number>): Float64Array {
  const solved = new Float64Array(triangle.length);
  triangle.forEach((line, i) => {
    let sum = right[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (line[k] ?? 0) * (solved[k] ?? 0);
    solved[i] = sum / (line[i] ?? 1);
  });
  return solved;
}

function upward(triangle: readonly Float64Array[], right: Float64Array): Float64Array {
  const solved = new Float64Array(triangle.length);
  for (let i = triangle.length - 1; i >= 0; i--) {
    let sum = right[i] ?? 0;
    for (let k = i + 1; k < triangle.length; k++) sum -= (triangle[k]?.[i] ?? 0) * (solved[k] ?? 0);
    solved[i] = sum / (triangle[i]?.[i] ?? 1);
  }
  return solved;
}
