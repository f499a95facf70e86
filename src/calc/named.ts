import { missing } from "./problem";

interface Named {
  readonly name: string;
  readonly also: readonly string[];
}

/** A table's rows by everything people call them. */
export interface NamedRows<T extends Named> {
  readonly rows: readonly T[];
  readonly byKey: ReadonlyMap<string, T>;
}

/**
 * Prepares a table for looking up; letter case, hyphens and spacing of a name do not matter.
 *
 * @example namedRows([{ name: "granite", also: ["gneiss"] }]).rows.length => 1; one row is given
 */
export function namedRows<T extends Named>(rows: readonly T[]): NamedRows<T> {
  const byKey = new Map<string, T>();
  for (const row of rows) for (const name of [row.name, ...row.also]) byKey.set(keyOf(name), row);
  return { rows, byKey };
}

/**
 * The row a person names.
 *
 * @param label names the argument in sentences: "rock"
 * @param orElse what else would be right, behind the list of names: "or a figure such as 165 lb/ft3"
 * @throws Problem "missing" that lists the names
 * @example findNamed(namedRows([{ name: "granite", also: ["gneiss"] }]), "Gneiss", "rock", "").name => "granite"; its
 *   other word
 */
export function findNamed<T extends Named>(table: NamedRows<T>, written: string, label: string, orElse: string): T {
  const found = table.byKey.get(keyOf(written));
  if (found) return found;
  const all = table.rows.map((row) => row.name);
  // Names that hold a comma themselves would run into each other.
  const names = all.join(all.some((name) => name.includes(",")) ? "; " : ", ");
  throw missing(`${label} "${written.trim().slice(0, 40)}" is not known; use one of ${names}; ${orElse}`);
}

function keyOf(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim();
}
