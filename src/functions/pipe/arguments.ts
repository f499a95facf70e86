import { PIPE_TYPE_NAMES, readPipeType, type PipeSize } from "../../calc/pipe/bore";
import { FRICTION_METHODS, type FrictionMethod } from "../../calc/pipe/route";
import type { Argument } from "../contract/argument";
import { optional } from "../contract/optional";
import type { Range } from "../contract/range";
import { isBlank } from "../contract/raw";
import { choice, quantity, text } from "../contract/scalars";

/** Flow in pipes and pumps. */
export const FLOW: Range = { above: 0, max: { US: 900_000, SI: 3_600_000 } };
/** Lift from the running water level to the outlet. */
export const LIFT: Range = { min: 0, max: { US: 328, SI: 100 } };
/** Length of a pipe. */
export const PIPE_LENGTH: Range = { min: 0, max: { US: 16_400, SI: 5000 } };

const sizeNumber = quantity("size", "Nominal size", { above: 0, max: { US: 39, SI: 1000 } });

/** A pipe size as sold (2, "1 1/2 in", "63 mm"), or an inside diameter as text ("bore 48 mm"). */
export const pipeSize: Argument<PipeSize> = {
  ...sizeNumber,
  about: 'Nominal pipe size, or "bore 48 mm"',
  read(raw, label, system) {
    const written = typeof raw === "string" ? /^\s*(?:bore|id)\b[:\s]*(.*)$/is.exec(raw) : null;
    const size = sizeNumber.read(written ? written[1] : raw, label, system);
    return { size, isBore: written !== null };
  },
};

const typeText = text("Pipe type", { longest: 60 });

const neededPipeType: Argument<string> = {
  ...typeText,
  choices: PIPE_TYPE_NAMES,
  rule: () => `one of: ${PIPE_TYPE_NAMES.join(", ")}`,
  // Some hosts pass a blank cell of a range as 0.
  blank: (raw) => isBlank(raw) || raw === 0,
  read: (raw, label, system) => readPipeType(typeText.read(raw, label, system), label),
};

/** The pipe type: the trade's usual one of the unit system when left out. */
export const pipeType: Argument<string> = optional(neededPipeType, "Sch 40 PVC (US) or PVC-U PN10 (SI)", {
  US: "Sch 40 PVC",
  SI: "PVC-U PN10",
});

/** The friction method. */
export const method: Argument<FrictionMethod> = optional(
  choice("Friction method", FRICTION_METHODS),
  "Hazen-Williams",
  "Hazen-Williams",
);

