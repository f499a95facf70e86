import { unitLabel } from "../../../calc/quantity/measures";
import type { Job, SheetLayout } from "../../layout";
import { said } from "../../layout/said";
import { heading } from "./heading";

/** A number in a sentence, or a line to write it on while it is not known yet; `sure` where the sentence stands only if it is. */
function told(name: string, decimals: number, unit = "", sure = false): string {
  const number = `${said(name, decimals)}${unit ? `&" ${unit}"` : ""}`;
  return sure ? `"&${number}&"` : `"&IF(COUNT(${name}),${number},"____")&"`;
}

/** Words that stand in a sentence only where they hold. */
function when(test: string, text: string): string {
  return `"&IF(${test},"${text}","")&"`;
}

/** What is done, in order, each step with its numbers and a box to tick. */
export function sequence(s: SheetLayout, job: Job): void {
  heading(s, s.row, 1, s.lastColumn, "Sequence");
  s.row++;
  const shown = steps(
    job,
    () => "00.00",
    (_, text) => text,
  );
  for (const [index, text] of steps(job, told, when).entries()) {
    const across = s.lastColumn - 1;
    s.fitHeight(s.row, `${index + 1}.  ${shown[index] ?? ""}`, s.charactersAcross(1, across));
    s.put(s.row, 1, { formula: `="${index + 1}.  ${text}"`.replace(/&""$/, ""), style: "resultText", across });
    s.put(s.row, s.lastColumn, { value: "☐", style: "resultText", look: { align: "center", size: 12 } });
    s.roomFor(s.row, 1.05);
    s.row++;
  }
}

/** The steps, with the numbers in them told by `say`, and what holds for some jobs alone told by `only`. */
function steps(job: Job, say: typeof told, only: typeof when): string[] {
  const length = unitLabel("length", job.system);
  const load = job.pick({ US: "tons", SI: unitLabel("load", "SI") });
  const size = unitLabel("size", job.system);
  const sizeDecimals = job.pick({ US: 1, SI: 0 });
  const deep = job.pick({
    US: {
      test: "N(PitDepth)>=4",
      words: "Set a ladder; slope or shore it, unless it is under 5 ft and a competent person sees no danger.",
    },
    SI: { test: "N(PitDepth)>1.25", words: "Set a ladder; slope or shore it before anyone goes in." },
  });
  return [
    `No digging until buried lines are marked. Overhead wires: stay ${job.pick({ US: "10 ft away up to 50 kV", SI: "5 m away" })}, else call the utility.`,
    `Set up the instrument, read the benchmark (${say("BenchmarkLevel", 2, length)}) and stake every point below.`,
    `Dig the pit ${say("PitDepth", 2, length)} below finished grade, ${say("PitLength", 2)} × ${say("PitWidth", 2, length)} at its bottom${only("N(BasinSideSlope)>0", `, walls ${say("BasinSideSlope", 2, "", true)} out per 1 up`)}.`,
    `Keep spoil ${job.pick({ US: "2 ft", SI: "0.6 m" })} off its edge.${only(deep.test, ` ${deep.words}`)}`,
    `Build the berm ${say("BermHeight", 2, length)} high under the box from spoil, in thin compacted layers; loads out: ${say("SpoilLoads", 0)}, in: ${say("FillLoads", 0)}.`,
    `Bedding ${say("BeddingDepth", sizeDecimals, size)}, then fabric, then liner; fold corners, pull nothing tight, trim last.`,
    `Pump well${only("N(ModuleCount)>0", ` and ${say("ModuleCount", 0, "", true)} void modules`)}, ${say("BasinStoneTons", 1, load)} of stone around it${only("N(PitMargin)>0", "; backfill around the basin as it fills")}.`,
    `Lay ${say("PipeTotalLength", job.pick({ US: 0, SI: 1 }), length)} of pipe, glue, and test it under pressure before the trench is closed.`,
    `Cut the shelves from the lowest up; set ${say("LipStoneCount", 0)} lip stones, each level across its width and on its rod reading.`,
    `Set ${say("BoulderTons", 1, load)} of boulders, biggest first, by machine where over the hand-lift limit; seal behind the lips.`,
    `Spread ${say("GravelTons", 1, load)} of rinsed gravel over bed and basin, up to finished grade.`,
    "Fill, start the pump, check every edge for wet ground, then stop it: the basin must hold all the water that comes back.",
  ];
}
