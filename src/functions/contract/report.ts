import { Problem } from "../../calc/problem";
import type { Declaration } from "./declaration";
import type { Value } from "./result";

/**
 * Evaluates a declaration for the host. The only place that turns a `Problem` into the host's own error,
 * and only into the two kinds whose text reaches the cell. Excel shows that it is busy while code is loaded.
 */
export function callFromSheet(declaration: Declaration, raw: readonly unknown[]): Value | Promise<Value> {
  const { later } = declaration;
  if (!later || later.ready) return callNow(declaration, raw);
  // What did not load is told by the function itself.
  const call = (): Value => callNow(declaration, raw);
  return later.load().then(call, call);
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
