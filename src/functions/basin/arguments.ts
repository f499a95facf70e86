import { BASIN_RANGE, DEEPEST_BASIN } from "../../calc/basin/hold";
import type { PipeSize } from "../../calc/pipe/bore";
import { invalid } from "../../calc/problem";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { drainBack, FEATURE_RANGE, type DrainPart, type PipeRun } from "../../calc/basin/drainBack";
import { GRAVEL_VOIDS } from "../../calc/tables/basinParts";
import type { Argument, Values } from "../contract/argument";
import { optional } from "../contract/optional";
import type { Range } from "../contract/range";
import { isBlank } from "../contract/raw";
import { flag, number, quantity, share } from "../contract/scalars";
import { list, table } from "../contract/tables";
import { FLOW, PIPE_LENGTH, pipeOf, pipeSize, pipeType, type PipeKind } from "../pipe/arguments";
import { BED_WIDTH, lipShape, lipWidth, neededLipShape, roughness, SLOPE_PERCENT } from "../water/arguments";

/** A side of the basin's bottom. */
export const BASIN_SIDE: Range = BASIN_RANGE.side;
/** Depth of water in the basin. */
export const BASIN_DEPTH: Range = { above: 0, max: DEEPEST_BASIN };

export const basinLength = quantity("length", "Length of the bottom", BASIN_SIDE);
export const basinWidth = quantity("length", "Width of the bottom", BASIN_SIDE);
/** Porosity; a void ratio of 0.67 is a void fraction of 0.40. */
export const voidFraction = share("Room for water per volume, such as 0.4", { min: 0.05, max: 1 });
/** How far a wall goes out for each 1 it goes up. */
export const basinSlope = optional(number("Walls: out per 1 up", { min: 0, max: 10 }), "0, upright", 0);

/** How to read a void fraction; stands in the limits of every function that takes one. */
export const VOID_LIMITS =
  `The void fraction is porosity: clean washed gravel 0.35 to 0.45 (usually ${GRAVEL_VOIDS}), plastic modules 0.90 to 0.97. ` +
  "Many manuals print a void ratio e instead; the fraction is e / (1 + e), so 0.67 means 0.40.";

/** A cell of a column whose place counts: blank stays blank. */
function inPlace<T>(item: Argument<T>): Argument<T | undefined> {
  return {
    ...item,
    blank: () => false,
    read: (raw, label, system) => (isBlank(raw) || raw === 0 ? undefined : item.read(raw, label, system)),
  };
}

/** One value, or a column of them; nothing but blanks is left out. */
function column<T>(about: string, item: Argument<T>): Argument<(T | undefined)[]> {
  const values = list(about, inPlace(item), { most: 50 });
  const none = (raw: unknown): boolean => values.blank(raw) || raw === 0;
  return { ...values, blank: none };
}

/** What DRAINBACK and DRAINTABLE are asked. */
export const drainArguments = {
  flow: quantity("flow", "Flow while the pump runs", FLOW),
  pools: optional(
    table("Pools: area, lip width, lip shape", {
      area: quantity("area", "Area of the pool's surface", FEATURE_RANGE.area),
      lip_width: lipWidth,
      lip_shape: optional(neededLipShape, "lip_shape below"),
    }),
    "none",
  ),
  runs: optional(
    table("Beds: length, width, slope %, roughness", {
      length: quantity("length", "Length along the bed", PIPE_LENGTH),
      width: quantity("length", "Width of the bottom", BED_WIDTH),
      slope: number("Fall in percent of the length", SLOPE_PERCENT),
      roughness,
    }),
    "none",
  ),
  pipe_size: optional(column("Nominal size of the pipe, or of each pipe", pipeSize), "no pipe"),
  pipe_length: optional(column("Length of the pipe, or of each", quantity("length", "Pipe length", PIPE_LENGTH)), "0"),
  pipe_type: optional(column("Type of the pipe, or of each", pipeType), "as in PIPEBORE"),
  check_valve: optional(flag("Whether a check valve keeps the pipe full"), "FALSE", false),
  lip_shape: lipShape,
};

/** The drain-back, part by part, and the row each pool and bed was read from. */
export function drainParts(
  values: Values<typeof drainArguments>,
  system: UnitSystem,
): { readonly parts: readonly DrainPart[]; readonly labels: readonly string[] } {
  const { flow, pools = [], runs = [], check_valve, lip_shape } = values;
  const pipes = pipesOf(values, system);
  const parts = drainBack(flow, {
    pools: pools.map((pool) => ({ area: pool.area, lipWidth: pool.lip_width, lip: pool.lip_shape ?? lip_shape })),
    reaches: runs.map(({ length, width, slope, roughness: n }) => ({
      length,
      width,
      slope: slope / 100,
      roughness: n,
    })),
    pipes,
    checkValve: check_valve,
  });
  const label = ({ kind, index }: DrainPart): string => {
    if (kind === "pool") return `Pool ${pools[index]?.row ?? index + 1}`;
    if (kind === "bed") return `Bed ${runs[index]?.row ?? index + 1}`;
    return `Pipe ${pipes[index]?.pipe.label ?? ""}`;
  };
  return { parts, labels: parts.map(label) };
}

/** The pipes of the columns of sizes, lengths and types; one type, or none, stands for all. */
function pipesOf(values: Values<typeof drainArguments>, system: UnitSystem): PipeRun[] {
  const { pipe_size: sizes = [], pipe_length: lengths = [], pipe_type: types = [] } = values;
  const only = types.length === 1 ? types[0] : undefined;
  const usual = (): PipeKind => pipeType.read(undefined, "pipe type", system);
  const rows = Math.max(sizes.length, lengths.length);
  return Array.from({ length: rows }, (_, index) => index).flatMap((index): PipeRun[] => {
    const [size, length] = [sizes[index], lengths[index]];
    if (size === undefined && length === undefined) return [];
    if (size === undefined) throw neededWith("pipe size", "length", index, rows);
    if (length === undefined) throw neededWith("pipe length", "size", index, rows);
    return [{ pipe: pipeAt(size, types[index] ?? only ?? usual(), index, rows), length }];
  });
}

function pipeAt(size: PipeSize, type: PipeKind, index: number, rows: number): PipeRun["pipe"] {
  return pipeOf(size, type, rows > 1 ? `pipe size ${index + 1}` : "pipe size");
}

function neededWith(missingName: string, givenName: string, index: number, rows: number): Error {
  const place = rows > 1 ? ` ${index + 1}` : "";
  return invalid(`${missingName}${place} is needed where a pipe ${givenName} is given`);
}

/** Limits that DRAINBACK and DRAINTABLE share. */
export const DRAIN_LIMITS =
  "Give the flow the pump really delivers (see DUTY): a pump that gives more than was designed sends more back. " +
  "Pools are level with their lips at rest; thin sheets stand within 10 to 20% of the weir equation (common practice, no " +
  "source); beds run evenly " +
  "and drain dry. Over stones a bed holds 1.1 to 1.9 times as much, and splash wets more: leave a margin. Water in a spillway " +
  "box counts as a pool. A check valve that leaks holds nothing.";
