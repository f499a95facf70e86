import { correctedBy } from "./corrected";
import { covariance, drawsOf, endsOf, type Effect, type Look } from "./draws";

/** How the price spreads around the likely one. */
export interface Spread {
  /** Changes of the price that one draw in ten lies below and above. */
  readonly low: number;
  readonly high: number;
  /** Share of the spread that each fact carries; together 1. */
  readonly shares: ReadonlyMap<string, number>;
}

/**
 * The range that four draws in five keep to, from what each fact does alone, and how far that is off where the whole was
 * looked at.
 */
export function spreadOf(effects: readonly Effect[], looks: readonly Look[] = []): Spread {
  if (effects.length === 0) return { low: 0, high: 0, shares: new Map() };
  const draws = drawsOf(effects);
  const { parts, sums } = draws;
  const variance = covariance(sums, sums);
  const shares = new Map(
    effects.map(({ name }, index) => {
      const part = parts[index] ?? sums;
      return [name, variance > 0 ? covariance(part, sums) / variance : 0] as const;
    }),
  );
  return { ...endsOf(correctedBy(effects, looks, draws)?.drawn ?? sums), shares };
}
