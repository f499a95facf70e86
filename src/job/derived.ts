import { invalid, Problem } from "../calc/problem";

/** What a calculation gives: its value, nothing while something it needs is unknown, or why it cannot be worked out. */
export type Derived<T> = T | Problem | undefined;

export function isKnown<T>(value: Derived<T>): value is T {
  return value !== undefined && !(value instanceof Problem);
}

/** The value where it is known. */
export function known<T>(value: Derived<T>): T | undefined {
  return isKnown(value) ? value : undefined;
}

/**
 * Works a value out once everything it needs is known. A problem of something it needs is handed on, so that nothing that
 * follows from it passes for known; while something is unknown there is nothing.
 */
export function derive<const N extends readonly unknown[], T>(
  needs: readonly [...N],
  work: (...needs: Known<N>) => T,
): Derived<T> {
  const given: readonly unknown[] = needs;
  let isOpen = false;
  // A job asks this some hundred times, and a range does so for hundreds of jobs.
  for (let index = 0; index < given.length; index++) {
    const need = given[index];
    if (need instanceof Problem) return need;
    if (need === undefined) isOpen = true;
  }
  return isOpen ? undefined : attempt(work, needs as unknown as Known<N>);
}

/** What is needed, once it is known. */
type Known<N extends readonly unknown[]> = { [K in keyof N]: Exclude<N[K], Problem | undefined> };

/** What follows from a value and is wrong wherever the value is: its problem is handed on. */
export function from<V, T>(value: Derived<V>, work: (value: V) => T): Derived<T> {
  if (!isKnown(value)) return value as Problem | undefined;
  return attempt(() => work(value));
}

/** What `work` gives, or its problem; a number without a finite value is a problem too. */
export function attempt<const N extends readonly unknown[], T>(
  work: (...needs: N) => T,
  needs: N = [] as unknown as N,
): Derived<T> {
  try {
    const value = work(...needs);
    return typeof value === "number" && !Number.isFinite(value) ? invalid("the result has no finite value") : value;
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}

/** Work that is done when it is first asked for, and then kept. */
export function lazily<T>(work: () => T): () => T {
  let done: { readonly value: T } | undefined;
  return () => (done ??= { value: work() }).value;
}
