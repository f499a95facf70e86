import all from "./cases.json";

interface Given {
  readonly value: unknown;
  readonly unit: string;
}

/** A published check value: where it was read or how it was obtained stands in `source`, `how` and `checkKind`. */
export interface PublishedCase {
  readonly id: string;
  readonly topic: string;
  readonly description: string;
  readonly inputs: Readonly<Record<string, Given>>;
  readonly expected: Readonly<Record<string, Given>>;
  readonly tolerance: string | Readonly<Record<string, { type: "rel" | "abs"; value: number }>>;
  readonly source: string;
  readonly how: string;
  readonly note?: string;
  readonly checkKind: string;
}

const cases = all as unknown as readonly PublishedCase[];

/** The cases of a topic ("4 EPANET operating points") whose id begins with `prefix`. */
export function publishedCases(topic: string, prefix = ""): readonly PublishedCase[] {
  const found = cases.filter((c) => c.topic === topic && c.id.startsWith(prefix));
  if (found.length === 0) throw new Error(`no published case "${prefix}" under "${topic}"`);
  return found;
}

export function publishedCase(id: string): PublishedCase {
  const found = cases.find((c) => c.id === id);
  if (!found) throw new Error(`no published case "${id}"`);
  return found;
}

/** The number given for an input or expected value of a case. */
export function given(values: Readonly<Record<string, Given>>, name: string): number {
  const value = values[name]?.value;
  if (typeof value !== "number") throw new Error(`"${name}" is not a number in this case`);
  return value;
}

/** Whether `actual` agrees with what the case expects of `name`, within the tolerance the case states. */
export function agrees(c: PublishedCase, name: string, actual: number): boolean {
  const expected = given(c.expected, name);
  const tolerance = typeof c.tolerance === "string" ? undefined : c.tolerance[name];
  if (!tolerance) return Math.abs(actual - expected) <= 1e-9 * Math.abs(expected);
  const allowed = tolerance.type === "rel" ? tolerance.value * Math.abs(expected) : tolerance.value;
  return Math.abs(actual - expected) <= allowed * (1 + 1e-9);
}
