import { Problem } from "../../calc/problem";
import type { Kind } from "../facts/units";
import { attempt, isKnown, type Derived } from "../derived";

/** Words of the verdicts. */
export const VERDICTS = { ok: "OK", fix: "FIX", look: "LOOK", blank: "to fill", error: "ERROR" } as const;
export type Verdict = (typeof VERDICTS)[keyof typeof VERDICTS];

/** A mistake that is looked for, and what was found. */
export interface Check {
  /** The sheet it stands on. */
  readonly sheet: string;
  readonly label: string;
  /** What was looked at, in SI; undefined while it waits for inputs. */
  readonly value: Derived<number | string>;
  readonly kind: Kind;
  /** What it is held against: words, or a value of the same kind. */
  readonly limit: Derived<number | string>;
  readonly verdict: Verdict;
  /** A rule of thumb says "look", anything else stops the job. */
  readonly weight: "stop" | "look";
  /** What to do. */
  readonly cure: string;
  /** The name of the cell to change. */
  readonly place: string;
}

export interface CheckSpec extends Pick<Check, "label" | "cure" | "place"> {
  readonly kind?: Kind;
  /** Without these there is nothing to check. */
  readonly needs?: readonly Derived<unknown>[];
  readonly value: () => number | string | undefined;
  readonly limit: string | (() => number | string);
  readonly ok: () => boolean;
  readonly weight?: "look";
  /** When a rule of thumb is one no more. */
  readonly stopIf?: () => boolean;
}

/** What is asked with yes or no, as its own value. */
export function yes(ok: () => boolean): Pick<CheckSpec, "value" | "limit" | "ok"> {
  return { value: () => Number(ok()), limit: "yes", ok };
}

/** How the checks of a sheet are made. */
export function checksOn(sheet: string): (spec: CheckSpec) => Check {
  return ({ label, cure, place, kind = "number", needs = [], value, limit, ok, weight, stopIf }) => {
    const problem = needs.find((need) => need instanceof Problem);
    const ready = problem === undefined && needs.every(isKnown);
    const passed = ready ? attempt(ok) : undefined;
    const bad = weight === "look" && !stopIf?.() ? VERDICTS.look : VERDICTS.fix;
    return {
      sheet,
      label,
      value: ready ? attempt(value) : undefined,
      kind,
      limit: typeof limit === "string" ? limit : ready ? attempt(limit) : undefined,
      verdict:
        problem !== undefined
          ? VERDICTS.error
          : !ready
            ? VERDICTS.blank
            : !isKnown(passed)
              ? VERDICTS.error
              : passed
                ? VERDICTS.ok
                : bad,
      weight: weight ?? "stop",
      cure,
      place,
    };
  };
}

/** Noise of unit conversion, as a share. */
const NOISE = 1e-9;

/** Whether a value keeps to a limit; on it, but for noise, counts. */
export function atMost(value: number, limit: number): boolean {
  return value <= limit + NOISE * Math.max(Math.abs(limit), Math.abs(value));
}

export function atLeast(value: number, limit: number): boolean {
  return atMost(limit, value);
}

/** A value that must be there when the work comes to it. */
export function there<T>(value: Derived<T>): T {
  if (!isKnown(value)) throw new Error("a check reads what it does not need");
  return value;
}
