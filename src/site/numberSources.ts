import type { NumberSource } from "../help/numbersPage";
import { assemble } from "../workbook/assemble";
import { originsOf, type NumberOrigin } from "../workbook/origins";
import { sheets } from "../workbook/sheets";

/** Every number that the demo workbook calculates, in US units, and what it rests on there and in the metric workbook. */
export function numberSources(): NumberSource[] {
  const key = ({ sheet, label, name }: NumberOrigin): string => [sheet, label, name].join("|");
  const metric = new Map(originsOf(assemble(sheets, "SI", "demo")).map((one) => [key(one), one]));
  return originsOf(assemble(sheets, "US", "demo")).map((one) => ({
    ...one,
    ...bothSources(one.source ?? (one.turnsUnits ? UNITS : undefined), metric.get(key(one))?.source),
  }));
}

const UNITS = "by definition: a factor between two units";

function bothSources(us: string | undefined, si: string | undefined): Pick<NumberSource, "source"> {
  if (us === undefined) return {};
  return { source: si === undefined || si === us || us === UNITS ? us : `US: ${us}; metric: ${si}` };
}
