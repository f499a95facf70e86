import { BETWEEN } from "../../../job/facts/rowsText";
import { areaAddress, type Ref } from "../../layout/address";
import { COLUMN, FIRST_FACT, LAST_FACT, type FactCells } from "../../layout/factCells";

/** The first day and the last of the numbers that may be days that a host made of 3/4 or 9-4: 2000 to 2099. */
export const DAYS = { first: 36526, last: 73050 } as const;

/** The measures whose entries a host may take for days: 3/4 and 9-4 are lengths on a tape. */
export const DATED: ReadonlySet<string> = new Set(["length", "size", "head"]);

/** The columns of all facts, which one formula reads from the first to the last. */
const ALL = Object.fromEntries(
  Object.entries(COLUMN).map(([key, column]) => [
    key,
    areaAddress({ top: FIRST_FACT, left: column, bottom: LAST_FACT, right: column }),
  ]),
) as FactCells;

/** How far to trust each fact, in a word. */
export function states(): string {
  const { yours, company, used, confirmed, shipped, own, standing } = ALL;
  return (
    `=IF(ISERROR(${used}),"wrong",IF(${used}="","unknown",IF((${yours}<>"")*(${own}="yes"),IF(${standing},"assumed","yours"),IF(${company}<>"","company",` +
    `IF((${confirmed}<>"")+(${shipped}="invented")*(FactsConfirmed<>""),"company",${shipped})))))`
  );
}

/**
 * What is wrong with each fact that is. A number that the cell cannot take, and that a host may have made of 3/4, is said to be
 * a day: no length of this trade comes near it.
 */
export function faults(): string {
  const { yours, company, state, says, days, fault } = ALL;
  const day = `(${days}="yes")*ISNUMBER(${yours})*(${yours}>=${DAYS.first})*(${yours}<=${DAYS.last})`;
  return (
    `=IF(${state}<>"wrong","",IF(${fault}<>"",${fault},IF(ISERROR(${yours}),"Formula in error: needs "&${says},` +
    `IF(${day},"Excel made a date of it: type "&${says},""""&IF(${yours}="",${company},${yours})&""" is wrong: type "&${says}))))`
  );
}

/** The words beside each value. */
export function reasons(): string {
  const { state, wrongly, note, because, standing } = ALL;
  return (
    `=IF(${state}="wrong",${wrongly},IF((${state}="yours")+(${state}="unknown"),${note}&"",` +
    `IF(${state}="company","your company's",${state}&": "&IF(${standing},"by the draft",${because}))))`
  );
}

/**
 * Whether a cell still holds what the draft wrote into it, as a number or as a tape says it, or a table's numbers come to the
 * same: a fact that was filled in so is assumed.
 */
export function stillDrafted(): string {
  const { drafted, yours, used, read } = ALL;
  const same = `(${drafted}=${yours})+(${yours}<>"")*(${drafted}=${used})+(${drafted}=${read})`;
  return `=IFERROR((${drafted}<>"")*(${same}>0),0)`;
}

/** What is used of each of some tables: how many rows or cells were typed. */
export function usedOfTables(top: number, bottom: number): string {
  const [yours, assumed, fault] = ([COLUMN.yours, COLUMN.assumed, COLUMN.fault] as const).map((at) =>
    areaAddress({ top, left: at, bottom, right: at }),
  );
  return `=IF(${fault}<>"",NA(),IF(${yours}="",${assumed}&"",${yours}))`;
}

/** Where each fact stands; of a table in which a cell is wrong, that cell. */
export function placesOf(wrong: { readonly tables: string; readonly places: string }): string {
  const found = `MATCH(${ALL.key},${wrong.tables},0)`;
  return `=IF(ISNUMBER(${found}),INDEX(${wrong.places},${found}),${ALL.letters}&${ALL.top})`;
}

/** What was said of each fact, for the job or by the company, without what a draft filled in and what is wrong. */
export function said(): string {
  const { yours, company, standing, state, held } = ALL;
  return `=IF(${standing}+(${state}="wrong")>0,"",IF(ISNUMBER(FIND("${BETWEEN}",${held})),${held},IF(${yours}<>"",${plainZero(yours)},${handed(company)})))`;
}

/** Cells as a function is handed them: a blank as a text, and a 0 too. */
export function handed(cells: string): string {
  return `IF(${cells}="","",${plainZero(cells)})`;
}

/** A 0 as a text: a host hands a blank cell over as the number. */
function plainZero(cells: string): string {
  return `IF(${cells}=0,"0",${cells})`;
}

/** One column of the draft's rows, each beside its fact. */
export function ofDraft(column: Ref, names: Ref): string {
  return `=IFERROR(INDEX(${column.address},MATCH(${ALL.key},${names.address},0)),"")`;
}

/** What has to be filled in or fixed: "Site: Run". */
export function missing(): string {
  const { state, needed, called } = ALL;
  return `=IF((${state}="wrong")+(${state}="unknown")*(${needed}="yes"),${called},"")`;
}
