import type { FactKey } from "./index";

/** What a fact is taken for while nobody has typed it, in SI. */
export interface Assumption<T = unknown> {
  readonly value: T;
  readonly low?: number;
  readonly likely?: number;
  readonly high?: number;
  /** One sentence, or the part of one that follows "assumed:". */
  readonly reason: string;
  readonly source?: string;
  /** It was made up for this tool, and nothing may be signed on it. */
  readonly invented?: true;
}

/** What the facts of a job are taken for. */
export type Assumed = { readonly [K in FactKey]?: Assumption };
