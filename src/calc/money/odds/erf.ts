import { createErf } from "mathjs";

declare module "mathjs" {
  // The library exports its factories; its types leave this one out.
  export function createErf(parts: Readonly<Record<string, unknown>>): (x: number) => number;
}

type Signatures = Readonly<Record<string, (x: number) => number>>;

/** Stands in for the library's dispatch by type, which plain numbers do not need: takes the signature for numbers. */
const numbersOnly = Object.assign((_name: string, signatures: Signatures) => signatures.number, {
  referToSelf: (): undefined => undefined,
});

/**
 * The error function, the library's own over plain numbers, without the number types it would bring along.
 *
 * Source: W. J. Cody, "Rational Chebyshev approximations for the error function", Math. Comp. 23 (1969), in mathjs.
 */
export const erf = createErf({ typed: numbersOnly });
