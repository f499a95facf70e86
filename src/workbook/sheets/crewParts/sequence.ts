import { unitLabel } from "../../../calc/quantity/measures";
import type { Job, SheetLayout } from "../../layout";
import { heading } from "./heading";

/** A number in a sentence, or a line to write it on while it is not known yet. */
function said(name: string, mask: string, unit = ""): string {
  return `"&IF(COUNT(${name})=1,TEXT(${name},"${mask}")&"${unit ? ` ${unit}` : ""}","____")&"`;
}

/** What is done, in order, each step with its numbers and a box to tick. */
export function sequence(s: SheetLayout, job: Job): void {
  heading(s, s.row, 1, s.lastColumn, "Sequence");
  s.row++;
  const shown = steps(job, () => "00.00");
  for (const [index, text] of steps(job, said).entries()) {
    const across = s.lastColumn - 1;
    s.fitHeight(s.row, `${index + 1}.  ${shown[index] ?? ""}`, s.charactersAcross(1, across));
    s.put(s.row, 1, { formula: `="${index + 1}.  ${text}"`.replace(/&""$/, ""), style: "resultText", across });
    s.put(s.row, s.lastColumn, { value: "☐", style: "resultText", look: { align: "center", size: 12 } });
    s.roomFor(s.row, 1.2);
    s.row++;
  }
}

/** The steps, with the numbers in them told by `say`. */
function steps(job: Job, say: typeof said): string[] {
  const length = unitLabel("length", job.system);
  const load = unitLabel("load", job.system);
  const size = unitLabel("size", job.system);
  const sizeMask = job.pick({ US: "0.0", SI: "0" });
  return [
    "See the marks of every buried line before the first bucket. No marks, no digging.",
    `Set the instrument up, read the bench mark (${say("BenchmarkLevel", "0.00", length)}) and stake every point below.`,
    `Dig the pit ${say("PitDepth", "0.00", length)} below finished grade, with ${say("PitMargin", "0.00", length)} of room all round; keep spoil back from the edge.`,
    `Build the berm ${say("BermHeight", "0.00", length)} high from the spoil, in thin compacted layers; loads of spoil: ${say("SpoilLoads", "0")}, of fill: ${say("FillLoads", "0")}.`,
    `Bedding ${say("BeddingDepth", sizeMask, size)}, then fabric, then liner; fold corners, pull nothing tight, trim last.`,
    `Pump well and ${say("ModuleCount", "0")} void modules, then ${say("BasinStoneTons", "0.0", load)} of stone around them.`,
    `Lay ${say("PipeTotalLength", job.pick({ US: "0", SI: "0.0" }), length)} of pipe, glue, and test it under pressure before the trench is closed.`,
    `Cut the shelves from the lowest up; set ${say("LipStoneCount", "0")} lip stones, each level across its width and on its rod reading.`,
    `Set ${say("BoulderTons", "0.0", load)} of boulders, biggest first and by machine; seal behind the lips.`,
    `Spread ${say("GravelTons", "0.0", load)} of rinsed gravel over bed and basin, up to finished grade.`,
    "Fill, start the pump, walk every edge for wet ground, then stop it: the basin must take the water back without spilling.",
  ];
}
