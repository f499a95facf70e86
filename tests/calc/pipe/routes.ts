import fc from "fast-check";
import { findPipe } from "../../../src/calc/pipe/bore";
import { FRICTION_METHODS, type RoutePipe } from "../../../src/calc/pipe/route";

export const bore = (millimetres: number): RoutePipe["pipe"] =>
  findPipe({ size: millimetres / 1000, isBore: true }, "Bore");
export const flows = fc.double({ min: 1e-5, max: 0.02, noNaN: true });
export const routes = fc.array(
  fc.record({
    pipe: fc.integer({ min: 20, max: 150 }).map(bore),
    length: fc.double({ min: 0, max: 200, noNaN: true }),
    k: fc.double({ min: 0, max: 30, noNaN: true }),
  }),
  { minLength: 1, maxLength: 4 },
);
export const methods = fc.constantFrom(...FRICTION_METHODS);
