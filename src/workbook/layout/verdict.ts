import { cellAddress } from "./address";
import { anyBlank, bare } from "./conditions";
import type { CheckSpec } from "./job";

/** Words of the verdicts; Start counts them, the pane reads them. */
export const VERDICT = { ok: "OK", fix: "FIX", look: "LOOK", blank: "to fill", error: "ERROR" } as const;

/** Where a check stands in its row, on its own sheet. */
export const CHECK_COLUMN = { value: 2, limit: 4, verdict: 5, cure: 6 } as const;

/** A formula that stays blank while what the check needs is, and says so in one word where it fails. */
export function guarded({ needs }: CheckSpec, otherwise: string, instead: string, failed: string): string {
  return needs && needs.length > 0
    ? `=IFERROR(IF(${anyBlank(needs)},${instead},${otherwise}),"${failed}")`
    : `=IFERROR(${otherwise},"${failed}")`;
}

/**
 * The verdict of a check. Where all is well while the value keeps to the limit, as most checks have it, the two cells of the
 * row are compared: what they hold decides, and the same formula serves every such check.
 */
export function verdict(check: CheckSpec, row: number): string {
  const stop = `"${VERDICT.fix}"`;
  const look = `"${VERDICT.look}"`;
  const bad = check.weight !== "look" ? stop : check.stopIf ? `IF(${bare(check.stopIf)},${stop},${look})` : look;
  const compared = comparison(check, row);
  if (compared === undefined)
    return guarded(check, `IF(${bare(check.ok)},"${VERDICT.ok}",${bad})`, `"${VERDICT.blank}"`, VERDICT.error);
  const value = cellAddress(row, CHECK_COLUMN.value);
  return `=IF(${value}="","${VERDICT.blank}",IF(${compared.known},IF(${compared.keeps},"${VERDICT.ok}",${bad}),"${VERDICT.error}"))`;
}

/** Whether both numbers are there, and whether the value keeps to the limit; nothing where `ok` asks something else. */
function comparison({ value, limit, ok }: CheckSpec, row: number): { known: string; keeps: string } | undefined {
  const asked = bare(value);
  const [, sign, number = ""] = (ok.startsWith(asked) && /^(<=|>=|<|>|=)(.+)$/.exec(ok.slice(asked.length))) || [];
  if (sign === undefined) return undefined;
  const [at, to] = [cellAddress(row, CHECK_COLUMN.value), cellAddress(row, CHECK_COLUMN.limit)];
  if (number === bare(String(limit)) && (typeof limit === "number" || limit.startsWith("=")))
    return { known: `COUNT(${at},${to})=2`, keeps: `${at}${sign}${to}` };
  return Number.isFinite(Number(number)) ? { known: `ISNUMBER(${at})`, keeps: `${at}${sign}${number}` } : undefined;
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
