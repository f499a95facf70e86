import type { Job } from "../../layout";

/** Formula of what the tub in a row of the basin's parts holds, in gallons or liters, and of whether its sides are known. */
export function tubHeld(job: Job, row: number): { readonly volume: string; readonly open: string } {
  const part = (column: number): string => `INDEX(BasinParts,${row},${column})`;
  const unit = job.pick({ US: "1728/231", SI: "1000" });
  return {
    volume: `${part(2)}*${part(3)}*${part(4)}*IF(${part(5)}="",1,${part(5)})*${unit}`,
    open: `COUNT(${part(2)},${part(3)},${part(4)})<3`,
  };
}
