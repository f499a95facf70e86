import { rename, writeFile } from "node:fs/promises";
import { parseArgs } from "node:util";
import { typedFile } from "../company/typedFile";
import { dayOf, daySerial, isoDay } from "../host/dates";
import { differences, differenceWords, issueRows, issuesIn, nextIssue, rowsUsed } from "../job/story/issue";
import { quoteState, STATE_PLACES } from "../workbook/issued";
import type { CellValue } from "../workbook/model";
import type { Recalculated } from "../workbook/recalculate";
import { areaName, parseArea } from "../xlsx/address";
import { runCommand } from "./runCommand";
import { openWorkbookFile, readWorkbookFile } from "./workbookFile";

const USAGE = "Usage: npm run issue -- JOB.xlsx [--day 2026-05-18] [--list]";

/** Issues the quote of a job's workbook, which keeps what the client holds; with --list says what was issued. */
export async function issue(args: readonly string[], now = new Date()): Promise<string> {
  const { file, day, list } = asked(args, now);
  const opened = await openWorkbookFile(file);
  const workbook = opened.recalculate();
  const place = parseArea(workbook.names.get("IssuedList") ?? "");
  if (!place) throw new Error(`${file} has no sheet Issued; it was not made by this edition.`);
  const rows = workbook.named("IssuedList") ?? [];
  const state = stateOf(workbook);
  const last = issuesIn(rows).at(-1);
  const since = last ? differences(last.state, state).map((one) => `  ${differenceWords(one)}`) : [];
  if (list) {
    const all = issuesIn(rows).map((one) => `Revision ${one.revision}, ${isoDay(one.day)}`);
    if (!last) return `${file}: nothing was issued yet.`;
    return [...all, since.length === 0 ? "Nothing has changed since." : "Changed since:", ...since].join("\n");
  }
  const next = nextIssue(rows, state, {
    day,
    draft: String(workbook.named("QuoteDraft")?.[0]?.[0] ?? "there is no sheet Quote"),
    room: place.bottom - place.top + 1,
  });
  if (typeof next === "string") throw new Error(next);
  const top = place.top + rowsUsed(rows);
  const typed = new Map(
    issueRows(next).flatMap((cells, down) =>
      cells.flatMap((content, across): [string, CellValue][] => {
        const [row, column] = [top + down, place.left + across];
        return content === ""
          ? []
          : [[areaName({ sheet: place.sheet, top: row, left: column, bottom: row, right: column }), content]];
      }),
    ),
  );
  const saved = typedFile(await readWorkbookFile(file), opened, typed);
  // Written beside it first: a job is never left half written.
  await writeFile(`${file}.part`, saved);
  await rename(`${file}.part`, file);
  const said = since.length === 0 ? [] : [`Changed since revision ${last?.revision}:`, ...since];
  return [`Revision ${next.revision} is issued and kept in ${file}.`, ...said].join("\n");
}

/** What the client would hold of this workbook. */
export function stateOf(workbook: Pick<Recalculated, "named" | "cells">): ReturnType<typeof quoteState> {
  return quoteState(STATE_PLACES.map((place) => (place.includes("!") ? workbook.cells(place) : workbook.named(place))));
}

function asked(args: readonly string[], now: Date): { file: string; day: number; list: boolean } {
  const options = { day: { type: "string" }, list: { type: "boolean" } } as const;
  let parsed;
  try {
    parsed = parseArgs({ args: [...args], options, allowPositionals: true });
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.message : String(error)} ${USAGE}`, { cause: error });
  }
  const { values, positionals } = parsed;
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) throw new Error(USAGE);
  const day = values.day === undefined ? dayOf(now) : daySerial(values.day);
  if (day === "") throw new Error(`--day must be a day such as 2026-05-18; got "${values.day}". ${USAGE}`);
  return { file, day, list: values.list ?? false };
}

if (process.argv[1] && import.meta.filename === process.argv[1]) await runCommand(USAGE, issue);
