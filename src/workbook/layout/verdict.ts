import { areaAddress, cellAddress } from "./address";
import { anyBlank, bare } from "./conditions";
import { formatOf } from "./formats";
import type { CheckSpec, Job, Sign } from "./job";

/** Words of the verdicts; Start counts them, the pane reads them. */
export const VERDICT = { ok: "OK", fix: "FIX", look: "LOOK", blank: "to fill", error: "ERROR" } as const;

/** Where a check stands in its row, on its own sheet. */
export const CHECK_COLUMN = { value: 2, limit: 4, verdict: 5, cure: 6 } as const;

/** Columns right of the checks, on the screen alone, that their verdicts read; with their widths. */
export const BEHIND = [
  ["Sign", 6],
  ["Least", 8],
  ["Else", 7],
] as const;

/** A limit that nobody knows yet; no value keeps to it, and none is called wrong for it. */
const UNKNOWN_LIMIT = "not known";

/** Which ways a value may stand to its limit. */
const SIGNS: Readonly<Record<Sign, string>> = { "at most": "<=", "at least": ">=", "less than": "<", "more than": ">" };

/** The same as a limit's cell says it: a number does not wrap, and columns are narrow. */
const IN_SHORT: Readonly<Record<Sign, string>> = {
  "at most": "max",
  "at least": "min",
  "less than": "under",
  "more than": "over",
};

/** A formula that stays blank while what the check needs is, and says so in one word where it fails. */
export function guarded({ needs }: CheckSpec, otherwise: string): string {
  return needs && needs.length > 0
    ? `=IFERROR(IF(${anyBlank(needs)},"",${otherwise}),"error")`
    : `=IFERROR(${otherwise},"error")`;
}

/** What the verdict of a check reads beside value and limit: the sign, the least, and the verdict where the value does not keep to them. */
export function behind({ sign = "at most", least, weight, stopIf, stopOnceKnown }: CheckSpec): (string | number)[] {
  const bad =
    weight !== "look" || stopOnceKnown
      ? VERDICT.fix
      : stopIf === undefined
        ? VERDICT.look
        : `=IFERROR(IF(${bare(stopIf)},"${VERDICT.fix}","${VERDICT.look}"),"${VERDICT.fix}")`;
  return [SIGNS[sign], least ?? "", bad];
}

/** The verdicts of all checks between two rows, as one formula; `first` is the column of the first thing they read behind. */
export function verdicts(top: number, bottom: number, first: number): string {
  const down = (column: number): string => areaAddress({ top, left: column, bottom, right: column });
  const [value, limit] = [down(CHECK_COLUMN.value), down(CHECK_COLUMN.limit)];
  const [signs, least, bad] = [down(first), down(first + 1), down(first + 2)];
  const keeps = `ISNUMBER(FIND(MID("<=>",2+(${value}>${limit})-(${value}<${limit}),1),${signs}))*((${least}="")+(${value}>=${least})>0)`;
  const unknown = `IF(${limit}="${UNKNOWN_LIMIT}","${VERDICT.look}","${VERDICT.error}")`;
  return `=IF(${value}="","${VERDICT.blank}",IF(ISNUMBER(${value}),IF(ISNUMBER(${limit}),IF(${keeps},"${VERDICT.ok}",${bad}),${unknown}),"${VERDICT.error}"))`;
}

/** How the limit shows: with its sign in front, or as the words that stand for it. */
export function limitFormat({ kind = "number", limit, sign = "at most", words }: CheckSpec, { system }: Job): string {
  const format = formatOf(kind, system);
  const said = words ?? saidOf(kind, sign, limit);
  if (said !== undefined) return `"${said}"`;
  // Amounts keep the form by which the currency finds them.
  return kind === "money" ? format : `"${IN_SHORT[sign]} "${format}`;
}

function saidOf(kind: string, sign: Sign, limit: string | number): string | undefined {
  if (kind === "answer") return "yes";
  if (limit !== 0) return undefined;
  return { "at most": "max 0", "at least": "0 or more", "more than": "more than 0", "less than": "less than 0" }[sign];
}

/** The words of what to do, where they follow how things stand: those of the check itself while nothing has to be done. */
export function cure(check: CheckSpec, row: number): string | undefined {
  const { cureIf, cureNow, cureStop } = check;
  const at = cellAddress(row, CHECK_COLUMN.verdict);
  if (cureStop !== undefined) return `=IF(${at}="${VERDICT.fix}","${cureStop}","${check.cure}")`;
  const fails = `OR(${at}="${VERDICT.fix}",${at}="${VERDICT.look}")`;
  const here = (text: string): string => bare(text).replaceAll("[value]", cellAddress(row, CHECK_COLUMN.value));
  if (cureIf !== undefined) return `=IF(AND(${fails},${here(cureIf.when)}),"${cureIf.cure}","${check.cure}")`;
  return cureNow === undefined ? undefined : `=IF(${fails},${here(cureNow)},"${check.cure}")`;
}
