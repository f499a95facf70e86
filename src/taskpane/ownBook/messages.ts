import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { PumpListFile, PumpListShape, ReadPumpsAs } from "../../csv/readPumpList";
import type { Compared, Difference } from "../../workbook/company/difference";

/** A file by its name. */
export interface NamedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What a book holds, in numbers, and what is to be looked at in it. */
export interface AboutBook {
  readonly system: UnitSystem;
  readonly company: string;
  readonly products: number;
  readonly priced: number;
  readonly invented: number;
  readonly pumps: number;
  readonly logo: boolean;
  readonly problems: readonly string[];
}

/** What a list of pumps was read as; `problem` in place of its pumps where it could not be read as it is mapped. */
export interface PumpsFound extends Compared {
  readonly shape: PumpListShape;
  readonly file?: PumpListFile;
  readonly problem?: string;
}

/** What each request of the pane gives. */
export interface Asks {
  about: { readonly give: { readonly book: NamedFile }; readonly get: AboutBook };
  job: {
    readonly give: { readonly book: NamedFile; readonly blank: Uint8Array };
    readonly get: { readonly bytes: Uint8Array; readonly notes: readonly string[] };
  };
  prices: { readonly give: { readonly book: NamedFile; readonly job: NamedFile }; readonly get: Compared };
  news: { readonly give: { readonly book: NamedFile; readonly job: NamedFile }; readonly get: Compared };
  pumps: {
    readonly give: { readonly book: NamedFile; readonly list: Uint8Array; readonly as: ReadPumpsAs };
    readonly get: PumpsFound;
  };
  logo: {
    readonly give: { readonly book: NamedFile; readonly logo: NamedFile; readonly png?: Uint8Array };
    readonly get: { readonly bytes: Uint8Array; readonly about: AboutBook };
  };
  take: {
    readonly give: { readonly book: NamedFile; readonly taken: readonly Difference[] };
    readonly get: { readonly bytes: Uint8Array; readonly about: AboutBook };
  };
}

export type Ask = keyof Asks;

/** A request, and its answer: what was asked for, or why not, in a sentence. */
export type Order<A extends Ask = Ask> = { readonly [K in A]: { readonly ask: K } & Asks[K]["give"] }[A];
export type Answer<A extends Ask = Ask> = { readonly got: Asks[A]["get"] } | { readonly refused: string };
