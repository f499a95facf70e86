import { minorDigits } from "../calc/money/currency";
import { HostRefusal, type Grid, type Host, type Place, type Task } from "../host/port";
import { yoursName } from "../workbook/yoursName";
import type { Answer, Order } from "./cutPlanWorker";
import type { Found } from "./searchOn";

/** Where the kept plan stands in the workbook. */
const KEPT: Place = yoursName("LinerKeptPlan");
/** The cells that CUTPLAN reads there, in the order of its arguments. */
const READ: readonly Place[] = [
  "LinerPieces",
  "LinerRolls",
  "LinerTurn",
  "SeamLap",
  "SeamPrice",
  KEPT,
  "Currency",
  "Units",
];

/** A worker as far as the search needs one. */
export interface Helper {
  onmessage: ((event: MessageEvent<Answer>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  postMessage(order: Order): void;
  terminate(): void;
}

/** Starts the worker's own file, which the policy of the page allows. */
export function startHelper(): Helper {
  return new Worker("cutPlanWorker.js");
}

/**
 * Searches longer for a cut plan than a cell may, beside the page, and hands a cheaper one to the cell.
 * Stopped early, the best plan so far is handed over.
 */
export async function searchLonger(host: Host, task: Task, start: () => Helper = startHelper): Promise<string> {
  const grids = await host.read(READ);
  const missing = READ.find((_, index) => !grids[index]);
  if (missing) throw new HostRefusal(`This workbook has no ${missing}; a longer search needs a job of this version.`);
  const values = READ.map((place, index) => valueOf(place, grids[index] as Grid));
  const found = await ask(start(), { values }, task);
  const stopped = task.signal.aborted;
  if (!found) return "Stopped before a plan was found; nothing was changed.";
  const saved = found.before - found.now;
  if (saved > 0) await host.write([{ place: KEPT, values: [[found.kept]] }]);
  const currency = values[READ.indexOf("Currency")];
  return said(found, saved, stopped, minorDigits(typeof currency === "string" ? currency : ""));
}

function valueOf(place: Place, grid: Grid): unknown {
  return place === "LinerPieces" || place === "LinerRolls" ? grid : grid[0]?.[0];
}

/** The last and best that a worker finds; undefined when it was stopped before it found any. */
function ask(helper: Helper, order: Order, { signal, progress }: Task): Promise<Found | undefined> {
  return new Promise<Found | undefined>((resolve, reject) => {
    let best: Found | undefined;
    signal.addEventListener("abort", () => resolve(best), { once: true });
    helper.onerror = () => reject(new HostRefusal("The search could not start; reload the page and try again."));
    helper.onmessage = ({ data }) => {
      if ("problem" in data) return reject(new HostRefusal(`${data.problem}.`));
      best = data;
      progress(data.step, data.steps);
      if (data.proven || data.step === data.steps) resolve(data);
    };
    helper.postMessage(order);
  }).finally(() => helper.terminate());
}

/** @param digits behind the point of the job's money */
function said({ before, now, proven }: Found, saved: number, stopped: boolean, digits: number): string {
  const searched = stopped ? "Stopped" : "Searched";
  const rest = proven ? " It is proven: no plan costs less." : "";
  if (saved <= 0) return `${searched}: no cheaper plan than the one on the Liner sheet was found.${rest}`;
  const [is, less, was] = [now, saved, before].map((amount) => amount.toFixed(digits));
  return `${searched}: the cut plan now costs ${is}, ${less} less than ${was}.${rest}`;
}
