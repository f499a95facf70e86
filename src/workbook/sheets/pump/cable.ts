import { FACTS } from "../../../job/facts";
import { inSystem } from "../../../job/facts/units";
import type { Job, SheetLayout } from "../../layout";

/** Cable that is bought with the pump, by its gauge. */
export function cable(s: SheetLayout, { system }: Job): void {
  const [min, max] = inSystem(FACTS.cableLength.range, system);
  s.section("Cable to the pump");
  s.input({
    name: "CableLength",
    label: "Cable that you buy",
    kind: "length",
    min,
    max,
    message: "From the outlet to the pump, with what goes down the well; blank where the electrician brings it.",
    optional: true,
  });
  s.input({
    name: "CableGauge",
    label: "Size of its conductors",
    kind: "text",
    choices: inSystem(FACTS.cableGauge.choices, system),
    message: "As the electrician says; CABLEDROP tells what is lost on the way.",
    note: "Named by the electrician: local code, its protection and the volts lost on the way decide.",
    optional: true,
  });
}
