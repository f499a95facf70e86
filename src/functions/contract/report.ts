import { Problem } from "../../calc/problem";
import type { Declaration } from "./declaration";
import type { Value } from "./result";

/**
 * Evaluates a declaration for the host. The only place that turns a `Problem` into the host's own error,
 * and only into the two kinds whose text reaches the cell.
 */
export function callFromSheet(declaration: Declaration, raw: readonly unknown[]): Value {
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
