import { MEAN_DISTANCE, quantile, type Look } from "./draws";
import { fitPlane } from "./surface";

/** Columns that step from below to above at places of a measure. */
export interface Steps {
  readonly columns: number;
  /** Writes them for the places of the facts into a row, from a column on. */
  write(place: (fact: number) => number, row: Float64Array, from: number): void;
}

/** Steps a measure may take: one between each of as many equal slices of the looks. */
const STEPS = 40;
/** How little a measure leans on a place: it is nearly straight in all. */
const PENALTY = 0.05;
/** A measure that differs by less than this, as a logarithm, makes no pump another one. */
const LEAST = 0.001;

/**
 * A price takes a step where another pump, or one more of them, is chosen: by the flow and the power that it takes. Their
 * logarithms run nearly straight over the places of the facts, so that a plane through the looks tells them of any draw;
 * the price itself is told by small steps all along them, held back as a random walk is (G. Wahba, Journal of the Royal
 * Statistical Society B 40, 1978, pp. 364 to 372; from memory).
 */
export function stepsOf(looks: readonly Look[]): Steps {
  const seen = looks.filter(({ measures }) => measures !== undefined);
  const facts = seen[0]?.places.length ?? 0;
  const rows = seen.map(({ places }) => rowOf((fact) => places[fact] ?? 0, facts));
  const weights = [1e-6, ...Array<number>(2 * facts).fill(PENALTY)];
  const measures = (seen[0]?.measures ?? []).flatMap((_, measure) => {
    const plane = fitPlane(
      rows,
      seen.map(({ measures: all }) => all?.[measure] ?? 0),
      weights,
    );
    const told = Float64Array.from(rows, (row) => plane.at(row)).sort();
    const moves = quantile(told, 1) - quantile(told, 0) > LEAST;
    return moves
      ? [{ plane, knots: Array.from({ length: STEPS }, (_, step) => quantile(told, (step + 0.5) / STEPS)) }]
      : [];
  });
  return {
    columns: STEPS * measures.length,
    write: (place, row, from) => {
      const at = rowOf(place, facts);
      let column = from;
      for (const { plane, knots } of measures) {
        const value = plane.at(at);
        for (const knot of knots) row[column++] = value > knot ? 0.5 : -0.5;
      }
    },
  };
}

function rowOf(place: (fact: number) => number, facts: number): Float64Array {
  const row = new Float64Array(1 + 2 * facts);
  row[0] = 1;
  for (let fact = 0; fact < facts; fact++) {
    const at = place(fact);
    row[1 + 2 * fact] = at;
    row[2 + 2 * fact] = Math.abs(at) - MEAN_DISTANCE;
  }
  return row;
}
