import type { Check } from "../checks";
import { VERDICTS } from "../checks";
import type { State } from "../evaluate";
import type { Job } from "../facts";

/** A check that the draft does not pass, and what would help. */
export interface Shortfall extends Pick<Check, "sheet" | "label" | "verdict" | "weight"> {
  readonly help: string;
  /** Whether the design decides it; if not, it waits for names, days and the like. */
  readonly ofDesign: boolean;
}

/** Sheets whose checks look at the design; of the others only those on stone, prices and hours that follow from it. */
const DESIGN = new Set(["Site", "Water", "Pump", "Basin", "Liner", "Stone", "Ground", "Earth", "Levels", "Hours"]);

/** Every check that fails on a drafted job. */
export function shortfallsOf(job: Job, state: State): Shortfall[] {
  return state.checks.flatMap((check) => {
    const { sheet, label, verdict, weight } = check;
    if (verdict === VERDICTS.ok || verdict === VERDICTS.blank) return [];
    const blank = label.startsWith("Inputs still blank");
    return [{ sheet, label, verdict, weight, help: helpFor(job, check), ofDesign: DESIGN.has(sheet) && !blank }];
  });
}

/** What would help, where the check's own cure leaves it open. */
function helpFor(job: Job, { label, cure }: Check): string {
  const tall = "A fall this high asks for a stronger pump in the book, a narrower lip or a thinner sheet; ";
  if (label === "Shut-off head above the lift") return `${tall}${lower(cure)}`;
  if (label === "Flow delivered") return `${tall}${lower(cure)}`;
  if (label.startsWith("Heaviest stone") && job.accessWidth !== undefined) {
    return `${cure} A wider way in would let a machine pass that sets them.`;
  }
  return cure;
}

function lower(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}
