import { PARALLEL_PUMPS } from "../../calc/pump/duty";
import { invalid } from "../../calc/problem";
import { BORE_RANGE, findPipe, PIPE_TYPE_NAMES, type Pipe, type PipeSize } from "../../calc/pipe/bore";
import { OWN_SMOOTHNESS_RANGE, readWrittenPipeType, type WrittenPipeType } from "../../calc/pipe/pipeType";
import { USUAL_WATER_TEMPERATURE, WATER_TEMPERATURE_RANGE } from "../../calc/pipe/waterProperties";
import { findFitting, K_RANGE, sumOfK, type FittingCount } from "../../calc/pipe/fittings";
import { FLOW_RANGE, FRICTION_METHODS, ROUTE_RANGE, type FrictionMethod, type RoutePipe } from "../../calc/pipe/route";
import { DRAIN_RANGE, PLASTIC_ROUGHNESS } from "../../calc/pipe/partFull";
import { FITTINGS } from "../../calc/tables/fittings";
import { USUAL_PIPE } from "../../calc/tables/pipes";
import type { Argument } from "../contract/argument";
import { optional } from "../contract/optional";
import { aboveZero, type Range } from "../contract/range";
import { isBlank } from "../contract/raw";
import { choice, number, quantity, text } from "../contract/scalars";
import { table } from "../contract/tables";

/** Flow in pipes and pumps. */
export const FLOW: Range = aboveZero(FLOW_RANGE);
/** Lift from the running water level up to the outlet. */
export const LIFT: Range = ROUTE_RANGE.lift;
/** Length of one pipe. */
export const PIPE_LENGTH: Range = ROUTE_RANGE.length;

const sizeNumber = quantity("size", "Nominal size", aboveZero(BORE_RANGE));

/** A pipe size as sold (2, "1 1/2 in", "63 mm"), or an inside diameter as text ("bore 48 mm"). */
export const pipeSize: Argument<PipeSize> = {
  ...sizeNumber,
  about: 'Nominal pipe size, or "bore 48 mm"',
  read(raw, label, system) {
    const written = typeof raw === "string" ? /^\s*bore\b[:\s]*(.*)$/is.exec(raw) : null;
    const size = sizeNumber.read(written ? written[1] : raw, label, system);
    return { size, isBore: written !== null };
  },
};

/** A pipe type, with a smoothness of the user's own behind it where one was written. */
export type PipeKind = WrittenPipeType & { readonly type: string };

const typeText = text('Pipe type; own smoothness as in "Bore, C 130" or "PE100 PN10, roughness 0.02 mm"', {
  longest: 60,
});
const { hazenWilliams: ownC, roughness: ownRoughness } = OWN_SMOOTHNESS_RANGE;

const neededPipeType: Argument<PipeKind> = {
  ...typeText,
  choices: PIPE_TYPE_NAMES,
  rule: () =>
    `one of: ${PIPE_TYPE_NAMES.join(", ")}; with C ${ownC.min} to ${ownC.max} or roughness up to ` +
    `${ownRoughness.max * 1000} mm behind it`,
  // Some hosts pass a blank cell of a range as 0.
  blank: (raw) => isBlank(raw) || raw === 0,
  read(raw, label, system) {
    const written = readWrittenPipeType(typeText.read(raw, label, system), label);
    return { ...written, type: written.type ?? USUAL_PIPE[system] };
  },
};

/** The pipe type: the trade's usual one of the unit system when left out. */
export const pipeType: Argument<PipeKind> = optional(
  neededPipeType,
  `${USUAL_PIPE.US} (US) or ${USUAL_PIPE.SI} (SI)`,
  USUAL_PIPE,
);

/** A round pipe that drains by its slope. */
export const drainArguments = {
  size: pipeSize,
  slope_percent: number("Fall in percent of the length", {
    min: DRAIN_RANGE.slope.min * 100,
    max: DRAIN_RANGE.slope.max * 100,
  }),
  roughness: optional(
    number("Manning's n of the pipe", DRAIN_RANGE.roughness),
    `${PLASTIC_ROUGHNESS}, plastic`,
    PLASTIC_ROUGHNESS,
  ),
  pipe_type: pipeType,
};

/** How far to trust a drain. */
export const DRAIN_LIMITS =
  "A long straight pipe that takes air, without backwater: an inlet that starves, leaves and an outlet under water carry " +
  "less. Plan for half full at the flow expected (common practice, no source). n 0.009 to 0.011 for plastic (from memory).";

/** The pipe of a size and type, with the user's own smoothness where one was written. */
export function pipeOf(size: PipeSize, kind: PipeKind, name = "size"): Pipe {
  return findPipe(size, kind.type, name, kind);
}

/** Water temperature, which only Darcy-Weisbach sees. */
export const waterTemp: Argument<number> = optional(
  quantity("temperature", "Water temperature, used by Darcy-Weisbach", WATER_TEMPERATURE_RANGE),
  "59 °F | 15 °C",
  { US: `${USUAL_WATER_TEMPERATURE} degC`, SI: USUAL_WATER_TEMPERATURE },
);

/** The friction method. */
export const method: Argument<FrictionMethod> = optional(
  choice("Friction method", FRICTION_METHODS),
  "Hazen-Williams",
  "Hazen-Williams",
);

const fittingName = text("Fitting name or K", { longest: 60 });

/** A fitting by its name, or its K as a number. */
const fitting: Argument<string | number> = {
  ...fittingName,
  rule: () => `one of: ${FITTINGS.map(({ name }) => name).join("; ")}; or a K from ${K_RANGE.min} to ${K_RANGE.max}`,
  read(raw, label, system) {
    const written = fittingName.read(raw, label, system);
    const k = Number(written);
    if (Number.isNaN(k)) return findFitting(written, label).name;
    if (k >= K_RANGE.min && k <= K_RANGE.max) return k;
    throw invalid(`${label} as a K must be ${K_RANGE.min} to ${K_RANGE.max}; got ${written}`);
  },
};

const countNumber = number("How many; a blank counts as none", { min: 0, max: 1000 });

/** How many of a fitting; blank is none, so that a list of names can be filled in where it applies. */
const count: Argument<number> = {
  ...countNumber,
  read: (raw, label, system) => (isBlank(raw) ? 0 : countNumber.read(raw, label, system)),
};

/** Fittings of one pipe: rows of name or K, and count. */
export const fittings: Argument<FittingCount[]> = table("Fittings: name or K, count", { fitting, count });

/** Pipes in series, row by row. */
function pipesInSeries(about: string): Argument<RoutePipe[]> {
  const rows = table(`${about}: size, length, pipe type, sum of K`, {
    size: pipeSize,
    length: quantity("length", "Pipe length", PIPE_LENGTH),
    pipe_type: pipeType,
    sum_of_k: optional(number("Sum of K of its fittings, outlet not included", ROUTE_RANGE.k), "0", 0),
  });
  return {
    ...rows,
    read: (raw, label, system) =>
      rows.read(raw, label, system).map(({ size, length, pipe_type, sum_of_k, row }) => ({
        pipe: pipeOf(size, pipe_type, `${label} row ${row}: size`),
        length,
        k: sum_of_k,
      })),
  };
}

/** A route of pipes in series; one row is the simple case. */
export const route = pipesInSeries("Pipes in series");

const optionalRiser = optional(pipesInSeries("Each pump's own pipes before they join"), "none");

/** The pipes each of several pumps has for itself, up to where their flows join. */
export const riser: Argument<RoutePipe[]> = {
  ...optionalRiser,
  read: (raw, label, system) => optionalRiser.read(raw, label, system) ?? [],
};

// "above 0" beside the real least value: a blank cell that the host passes as 0 still counts as blank.
export const pumps: Argument<number> = optional(
  number("Identical pumps in parallel", { above: 0, ...PARALLEL_PUMPS }, { whole: true }),
  "1",
  1,
);

/** One pipe with its fittings, as the simple functions take it apart. */
export function onePipe(
  size: PipeSize,
  kind: PipeKind,
  length: number,
  rows: readonly FittingCount[] | undefined,
): RoutePipe {
  const pipe = pipeOf(size, kind);
  return { pipe, length, k: sumOfK(rows ?? [], pipe.bore) };
}
