import type { SizeHours } from "../book/types";
import { FACTS } from "../job/facts";
import { inSystem } from "../job/facts/units";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import { typedIn } from "./typedIn";
import type { ColumnSpec } from "./layout/tableColumns";
import type { CellValue } from "./model";

/** The columns of hours by size, alike in the company's book and in a job. */
export function sizeHoursColumns(system: UnitSystem): ColumnSpec[] {
  const { pipe, pipeTimes, stone, stoneTimes, tub, tubTimes, tubMachineTimes, boulder, boulderTimes } =
    FACTS.sizeHours.columns;
  const input = (fact: typeof pipe, message: string): ColumnSpec["input"] => {
    const [min, max] = inSystem(fact.range, system);
    return { min, max, message };
  };
  const times = (key: string, title: string, name: string, fact: typeof pipe): ColumnSpec => ({
    key,
    title,
    name,
    kind: "factor",
    format: "0.00",
    input: input(fact, "How many times the hours of its rate the work takes."),
  });
  return [
    {
      key: "pipe",
      title: "Pipe up to",
      kind: "size",
      name: "SizePipes",
      input: input(pipe, "Nominal size up to which the hours beside it hold."),
    },
    times("pipeTimes", "Times the hours", "SizePipeTimes", pipeTimes),
    {
      key: "stone",
      title: "Lip stone up to",
      kind: "weight",
      name: "SizeStones",
      input: input(stone, "Weight of one lip stone up to which the hours beside it hold."),
    },
    times("stoneTimes", "Times the hours", "SizeStoneTimes", stoneTimes),
    {
      key: "tub",
      title: "Tub up to",
      kind: "water",
      name: "SizeTubs",
      input: input(tub, "What a tub holds, up to which the hours beside it hold."),
    },
    times("tubTimes", "Times the hours", "SizeTubTimes", tubTimes),
    {
      ...times("tubMachineTimes", "Times the machine hours", "SizeTubMachineTimes", tubMachineTimes),
      input: input(tubMachineTimes, "How many times the machine hours of its rate a tub takes; 0 if it is carried."),
    },
    {
      key: "boulder",
      title: "Boulder up to",
      kind: "weight",
      name: "SizeBoulders",
      input: input(boulder, "Weight of one boulder up to which the hours beside it hold."),
    },
    times("boulderTimes", "Times the hours", "SizeBoulderTimes", boulderTimes),
  ];
}

export function sizeHoursCells(size: SizeHours, system: UnitSystem): CellValue[] {
  const { pipe, pipeTimes, stone, stoneTimes, tub, tubTimes, tubMachineTimes, boulder, boulderTimes } = size;
  return [
    ...[typedIn("size", pipe, system), pipeTimes ?? ""],
    ...[typedIn("weight", stone, system), stoneTimes ?? ""],
    ...[typedIn("water", tub, system), tubTimes ?? "", tubMachineTimes ?? ""],
    ...[typedIn("weight", boulder, system), boulderTimes ?? ""],
  ];
}
