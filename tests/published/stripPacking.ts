import type { PlanRequest } from "../../src/calc/liner/cutplan/request";
import all from "./strip-packing.json";

/** A published set of pieces that fill a strip without waste, so that its shortest length is known. */
export interface StripInstance {
  readonly id: string;
  readonly stripWidth: number;
  readonly optimalLength: number;
  readonly pieces: readonly (readonly number[])[];
}

export const stripInstances: readonly StripInstance[] = all.instances;

/** One unit of an instance as a length the calculations take, m. */
export const UNIT = 0.1;

/** The instance as a request: one roll as wide as the strip, one unit of money per unit of length, turning allowed. */
export function stripRequest({ stripWidth, pieces }: StripInstance): PlanRequest {
  return {
    pieces: pieces.map(([length = 0, width = 0], index) => ({
      name: `${index + 1}`,
      length: length * UNIT,
      width: width * UNIT,
    })),
    rolls: [{ width: stripWidth * UNIT, price: 1 / UNIT, per: "length", longest: Infinity }],
    turn: true,
  };
}
