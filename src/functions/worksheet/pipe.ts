// Written by "npm run generate" from the declarations of the topic "pipe"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { PIPEBORE as declaredPIPEBORE } from "../pipe/pipebore";

/**
 * Gives the inside diameter of a pipe from its nominal size and type.
 * @customfunction PIPEBORE
 * @helpurl https://localhost:3000/help/pipebore.html
 * @param size Nominal pipe size, or "bore 48 mm" (in, more than 0, at most 39 | mm, more than 0, at most 1000)
 * @param [pipe_type] Pipe type
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The inside diameter.
 * @remarks Formula: bore = outside diameter - 2 × least wall of the standard. Limits: Real pipe is made a little thicker than the least wall, so the true bore is up to 2 % smaller. Flexible PVC fixes only the outside diameter: its bore is taken as Schedule 40's.
 * @remarks Source: ASTM D1785 (Sch 40, Sch 80), D2241 (SDR), D2239 (PE SIDR, from memory), ISO 1452-2 (PVC-U), ISO 4427-2 (PE100)
 * @example =RILL.PIPEBORE(2)
 * @example =RILL.PIPEBORE(63, "PVC-U PN10", "SI")
 */
export function PIPEBORE(size: any, pipe_type?: any, units?: any): any {
  return callFromSheet(declaredPIPEBORE, [size, pipe_type, units]);
}
