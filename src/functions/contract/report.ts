import { Problem } from "../../calc/problem";
import type { Declaration } from "./declaration";
import type { Value } from "./result";

/**
 * Evaluates a declaration for the host. The only place that turns a `Problem` into the host's own error,
 * and only into the two kinds whose text reaches the cell. Excel shows that it is busy while code is loaded, and while
 * what takes long is worked out by turns with everything else.
 */
export function callFromSheet(declaration: Declaration, raw: readonly unknown[]): Value | Promise<Value> {
  const { later } = declaration;
  if (!later || later.ready) return callByTurns(declaration, raw);
  // What did not load is told by the function itself.
  const call = (): Value | Promise<Value> => callByTurns(declaration, raw);
  return later.load().then(call, call);
}

/** How long other cells, the pane and the person at the keys wait at most for one turn, ms; one bit more may begin in it. */
const TURN = 30;

function callByTurns(declaration: Declaration, raw: readonly unknown[]): Value | Promise<Value> {
  const call = (): Value => callNow(declaration, raw);
  let bits: Iterator<undefined, void> | undefined;
  /** Whether all is done. What goes wrong is told by the function itself. */
  const turn = (): boolean => {
    const until = Date.now() + TURN;
    try {
      bits ??= declaration.bits?.(raw);
      do if (!bits || bits.next().done === true) return true;
      while (Date.now() < until);
      return false;
    } catch {
      return true;
    }
  };
  if (!declaration.bits || turn()) return call();
  return new Promise<void>((resolve) => {
    const next = (): void => {
      setTimeout(() => {
        if (turn()) resolve();
        else next();
      });
    };
    next();
  }).then(call);
}

function callNow(declaration: Declaration, raw: readonly unknown[]): Value {
  try {
    return declaration.evaluate(raw);
  } catch (error) {
    const host = (globalThis as { CustomFunctions?: typeof CustomFunctions }).CustomFunctions;
    // Outside Excel (tests, both embedded engines) the host has no error type of its own.
    if (!(error instanceof Problem) || host?.Error === undefined) throw error;
    const code = error.kind === "missing" ? host.ErrorCode.notAvailable : host.ErrorCode.invalidValue;
    throw new host.Error(code, error.message);
  }
}
