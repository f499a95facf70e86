import { COST_KINDS } from "../../../calc/money/costKinds";
import type { Job, SheetLayout } from "../../layout";
import { handed } from "../facts/formulas";

/** Rows of OPTION, as the function gives them. */
export const EFFECT = {
  flow: 3,
  boulders: 4,
  days: 5,
  hours: 8,
  costs: 9,
  taxable: 9 + COST_KINDS.length,
} as const;
const DIFFERENCE = 4;

/** What the facts that an option changes add to a row of OPTION, as a term of a formula; 0 where it changes none. */
export function effectOn(job: Job, letter: string, row: number): string {
  // An error stands in the first cell alone, and has to travel.
  return job.hasFacts ? `N(INDEX(OptionEffects${letter},${row},${DIFFERENCE}))+N(OptionTried${letter})` : "0";
}

/** As `effectOn`, of each kind of cost, for a formula over all of them. */
export function costsOn(job: Job, letter: string): string {
  const added = `OptionAdded${letter}`;
  return job.hasFacts ? `+IF(ISNUMBER(${added}),${added},0)+N(OptionTried${letter})` : "";
}

/** As `effectOn`, of the crew's hours: an error reaches the price by the costs. */
export function hoursOn(job: Job, letter: string): string {
  return job.hasFacts ? `N(OptionHours${letter})` : "0";
}

/** What the facts that an option changes make of the job: both jobs calculated whole, live. */
export function optionEffects(s: SheetLayout): void {
  s.section("What the changed facts make of the job");
  for (const letter of ["B", "C"] as const) {
    s.put(s.row++, 1, { value: `Option ${letter}`, style: "headText" });
    const plain = { kind: "number", wrap: false } as const;
    const { anchor, cell } = s.spill({
      name: `OptionEffects${letter}`,
      header: "function",
      headerLines: 1,
      rows: EFFECT.taxable,
      formula:
        `=IF(COUNTA(OptionValues${letter})=0,"",RILL.OPTION(FactKeys,` +
        `${handed(`Option${letter}`)},FactsHeld,RateTable,PumpTable,Units))`,
      columns: [{ kind: "text", wrap: false }, plain, plain, plain],
    });
    const hours = cell(EFFECT.hours, DIFFERENCE);
    s.define(`OptionHours${letter}`, hours.top, hours.left, hours.top, hours.left);
    const costs = cell(EFFECT.costs, DIFFERENCE);
    s.define(`OptionAdded${letter}`, costs.top, costs.left, costs.top + COST_KINDS.length - 1, costs.left);
    s.define(`OptionTried${letter}`, anchor.top, anchor.left, anchor.top, anchor.left);
  }
}
