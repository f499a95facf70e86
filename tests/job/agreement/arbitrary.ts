import fc from "fast-check";
import type { SomeFacts } from "../../../src/workbook/jobCells/typeJob";

/** Shrinks toward the least; two decimals more than a tape shows, so that nothing is round by chance. */
export const between = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 10_000 }).map((part) => least + ((most - least) * part) / 10_000);

export const whole = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });

/** Mostly the value, now and then nothing: what a person has not filled in. */
export const mostly = <T>(value: fc.Arbitrary<T>, blankOnceIn = 25): fc.Arbitrary<T | undefined> =>
  fc.option(value, { nil: undefined, freq: blankOnceIn });

/** Mostly nothing, now and then a value: what few people fill in. */
export const seldom = <T>(value: fc.Arbitrary<T>, onceIn = 5): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: onceIn - 1, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: value });

/** What a rule fills: mostly left to it, seldom typed over, now and then emptied by hand. */
export const overRule = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null | undefined> =>
  fc.oneof(
    { weight: 16, arbitrary: fc.constant(undefined) },
    { weight: 3, arbitrary: value },
    { weight: 1, arbitrary: fc.constant(null) },
  );

export const oneOf = <T>(...values: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...values);

export const rows = <T>(row: fc.Arbitrary<T>, least: number, most: number): fc.Arbitrary<T[]> =>
  fc.array(row, { minLength: least, maxLength: most });

/** Facts of a job; those that are undefined are emptied where they are typed. */
export const some = (shape: { [K in keyof SomeFacts]: fc.Arbitrary<SomeFacts[K]> }): fc.Arbitrary<SomeFacts> =>
  fc.record(shape as Record<string, fc.Arbitrary<unknown>>) as fc.Arbitrary<SomeFacts>;

/** A row whose undefined values are left out. */
export function record<T extends object>(shape: { [K in keyof T]: fc.Arbitrary<T[K]> }): fc.Arbitrary<T> {
  return fc
    .record(shape)
    .map((all) => Object.fromEntries(Object.entries(all as object).filter(([, value]) => value !== undefined)) as T);
}
