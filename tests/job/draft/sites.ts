import fc from "fast-check";
import { shippedBook } from "../../../src/book/shipped";
import type { UnitSystem } from "../../../src/calc/quantity/unitSystem";
import { companyOf } from "../../../src/job/draft/company";
import type { DraftWish } from "../../../src/job/draft/draft";
import { CHARACTERS } from "../../../src/job/facts/start";
import { offersOfBook } from "../../../src/job/draft/offersOfBook";
import { blankJob, type Job } from "../../../src/job/facts";
import { usedJob } from "../../../src/job/facts/standing";

const between = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true, noDefaultInfinity: true });
const known = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined, freq: 4 });

/** What a draft stands on beside the site: the shipped book. */
export function bookOf(system: UnitSystem): Pick<DraftWish, "offers" | "usual"> {
  const book = shippedBook(system);
  const usual = usedJob(blankJob(system), companyOf(book));
  return { offers: offersOfBook(book), usual };
}

/** A site as it is visited. */
export interface Site {
  readonly fall: number | undefined;
  readonly run: number | undefined;
  readonly lip: number | undefined;
  readonly soil: string | undefined;
  readonly accessWidth: number | undefined;
  readonly groundwaterDepth: number | undefined;
  readonly character: (typeof CHARACTERS)[number] | undefined;
}

/** A foot to 7 ft of fall at 1 in 1.5 to 1 in 7.5; each answer known four times in five. */
export const sites: fc.Arbitrary<Site> = fc
  .record({
    fall: between(0.35, 2.2),
    flatness: between(1.5, 7.5),
    knows: fc.constantFrom("both", "both", "both", "fall", "run", "neither"),
    lip: known(between(0.3, 1.1)),
    soil: known(fc.constantFrom("loam", "sand", "clay", "silt", "sandy gravel", "blasted rock")),
    accessWidth: known(between(0.6, 3)),
    groundwaterDepth: known(between(0.9, 3.5)),
    character: known(fc.constantFrom(...CHARACTERS)),
  })
  .map(({ fall, flatness, knows, ...rest }) => ({
    ...rest,
    fall: knows === "both" || knows === "fall" ? fall : undefined,
    run: knows === "both" || knows === "run" ? fall * flatness : undefined,
  }));

const books = { US: bookOf("US"), SI: bookOf("SI") } as const;

/** The job that is typed after such a visit. */
export function wishOf({ fall, run, lip, character, ...rest }: Partial<Site>, system: UnitSystem): DraftWish {
  const lips = lip === undefined ? [] : [{ width: lip }];
  const typed: Job = { ...blankJob(system), ...rest, fallTyped: fall, run, lips, waterCharacter: character };
  return { ...books[system], typed };
}

export const SYSTEMS = ["US", "SI"] as const;
