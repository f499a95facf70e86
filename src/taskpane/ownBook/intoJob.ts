import { HostRefusal, type CellValue, type Change, type Host, type Task } from "../../host/port";
import type { Difference } from "../../workbook/company/difference";
import { counted } from "../counted";

/** Writes differences into the open job, in one step, unless the job changed since they were shown. */
export async function takeIntoJob(host: Host, taken: readonly Difference[], task: Task): Promise<string> {
  const cells = taken.flatMap((one) => one.cells);
  const now = await host.read(cells.map(({ cell }) => cell));
  const moved = cells.find(({ from }, index) => (now[index]?.[0]?.[0] ?? "") !== from);
  if (moved) {
    throw new HostRefusal(
      `${moved.cell} changed since the prices were compared, so nothing was written. Compare them again.`,
    );
  }
  const allowed = await host.canWrite(cells.map(({ cell }) => cell));
  // The last moment to stop: the writing itself is one step.
  await task.pause();
  const changes = cells.flatMap(({ cell, to }, index): Change[] =>
    allowed[index] ? [{ place: cell, values: [[apart(to)]] }] : [],
  );
  if (changes.length > 0) await host.write(changes, task.progress);
  const locked = cells.length - changes.length;
  const said = `${counted(taken.length, "line")} of the job ${taken.length === 1 ? "is" : "are"} as in the book now.`;
  return locked > 0 ? `${said} Not written, because protected: ${counted(locked, "cell")}.` : said;
}

/** A text from elsewhere must not become a formula. */
function apart(value: CellValue): CellValue {
  return typeof value === "string" && value.startsWith("=") ? `'${value}` : value;
}
