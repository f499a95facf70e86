import {
  functionArray,
  functionCompatibility,
  functionCube,
  functionDatabase,
  functionDate,
  functionEngineering,
  functionFinancial,
  functionInformation,
  functionLogical,
  functionLookup,
  functionMath,
  functionMeta,
  functionStatistical,
  functionText,
  functionUniver,
  functionWeb,
} from "@univerjs/engine-formula";
import { catalogue } from "../../functions/catalogue";

/** The functions of the engine and ours, in capitals. The engine's own register is empty until the first workbook. */
export function knownFunctions(): ReadonlySet<string> {
  const engine: readonly (readonly unknown[])[] = [
    ...functionArray,
    ...functionCompatibility,
    ...functionCube,
    ...functionDatabase,
    ...functionDate,
    ...functionEngineering,
    ...functionFinancial,
    ...functionInformation,
    ...functionLogical,
    ...functionLookup,
    ...functionMath,
    ...functionMeta,
    ...functionStatistical,
    ...functionText,
    ...functionUniver,
    ...functionWeb,
  ];
  return new Set([...engine.map(([, name]) => String(name)), ...catalogue.map(({ name }) => `RILL.${name}`)]);
}
