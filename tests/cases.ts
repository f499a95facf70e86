import { expect } from "vitest";

interface Given {
  readonly value: unknown;
  readonly unit: string;
}

/** A check value from outside the project: where it was read or how it was worked out stands in `source` and `how`. */
export interface Case {
  readonly id: string;
  readonly topic: string;
  readonly description: string;
  readonly inputs: Readonly<Record<string, Given>>;
  readonly expected: Readonly<Record<string, Given>>;
  readonly tolerance: string | Readonly<Record<string, { type: "rel" | "abs"; value: number }>>;
  readonly source: string;
  /** Read in the source or a quotation of it, from memory, solved by another program, or computed by the formula. */
  readonly how: "read" | "memory" | "solved" | "computed";
  readonly note?: string;
}

/** Finds the cases of one collection; `what` is what a test that asks for none of them is told. */
export function caseBook(
  all: unknown,
  what: string,
): { one(id: string): Case; some(topic: string, prefix?: string): readonly Case[] } {
  const cases = all as readonly Case[];
  return {
    one(id) {
      const found = cases.find((c) => c.id === id);
      if (!found) throw new Error(`no ${what} case "${id}"`);
      return found;
    },
    some(topic, prefix = "") {
      const found = cases.filter((c) => c.topic === topic && c.id.startsWith(prefix));
      if (found.length === 0) throw new Error(`no ${what} case "${prefix}" under "${topic}"`);
      return found;
    },
  };
}

/** The number given for an input or expected value of a case. */
export function given(values: Readonly<Record<string, Given>>, name: string): number {
  const value = values[name]?.value;
  if (typeof value !== "number") throw new Error(`"${name}" is not a number in this case`);
  return value;
}

/** What the case expects of `name`, and how far from it a value may lie: by what the case states, else to rounding. */
function expectation(c: Case, name: string): { value: number; allowed: number } {
  const value = given(c.expected, name);
  const tolerance = typeof c.tolerance === "string" ? undefined : c.tolerance[name];
  if (!tolerance) return { value, allowed: 1e-9 * Math.abs(value) };
  const allowed = tolerance.type === "rel" ? tolerance.value * Math.abs(value) : tolerance.value;
  return { value, allowed: allowed * (1 + 1e-9) };
}

/** Holds `actual` against what the case expects of `name`; a failure says both, the tolerance and the source. */
export function expectCase(c: Case, name: string, actual: number): void {
  const { value, allowed } = expectation(c, name);
  const unit = c.expected[name]?.unit ?? "";
  const said = `${c.id}, ${name}: ${actual} here, ${value} ${unit} expected, give or take ${allowed} (${c.source})`;
  expect(Math.abs(actual - value), said).toBeLessThanOrEqual(allowed);
}

/** Holds that `actual` is not what the case gives as `name`, a value that a wrong way leads to. */
export function expectUnlike(c: Case, name: string, actual: number): void {
  const { value, allowed } = expectation(c, name);
  expect(Math.abs(actual - value), `${c.id}: ${actual} must not be ${name}, ${value}`).toBeGreaterThan(allowed);
}

/** Holds `actual` within a share of a published value; a failure says both numbers. */
export function expectNear(actual: number, published: number, share: number, what = ""): void {
  const said = `${what} ${actual} here, ${published} published, ${share * 100} % allowed`.trim();
  expect(Math.abs(actual / published - 1), said).toBeLessThan(share);
}
