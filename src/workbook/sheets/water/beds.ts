import { BED_KINDS } from "../../../calc/tables/beds";
import { USUAL_BED } from "../../../calc/water/bed";
import type { Job, SheetLayout } from "../../layout";
import { numbered, partOf } from "./parts";

export const BEDS = 4;
/** The bed kind of water no deeper than its stones. */
const CASCADE = "cascade over stones";

/** Reaches of stream between the drops, with their depth and speed. */
export function beds(s: SheetLayout, job: Job): void {
  s.section("Beds between the drops");
  const table = s.table({
    rows: BEDS,
    columns: [
      { key: "bed", title: "Bed, from the top", kind: "text", fixed: numbered("Bed", BEDS) },
      {
        key: "length",
        title: "Length",
        kind: "length",
        name: "BedLengths",
        input: { min: 0, max: { US: 2000, SI: 600 }, message: "Length of this reach along the bed." },
      },
      {
        key: "width",
        title: "Width",
        kind: "length",
        input: { min: { US: 0.2, SI: 0.06 }, max: { US: 100, SI: 30 }, message: "Width of the bottom of this reach." },
      },
      {
        key: "slope",
        title: "Fall of the bed",
        kind: "number",
        unit: "%",
        format: "0.0",
        input: { min: 0.1, max: 100, message: "Fall of the bed itself between drops, in percent of its length." },
      },
      {
        key: "kind",
        title: "What it is made of",
        kind: "text",
        across: 2,
        input: {
          choices: BED_KINDS.map(({ name }) => name),
          message: "How rough the bed is; blank is cobbles and boulders. Choose from the list.",
        },
      },
      { key: "depth", title: "Depth", kind: "size", whole: true, formula: partOf("[bed]", 4) },
      { key: "speed", title: "Speed", kind: "speed", format: "0.00", whole: true, formula: partOf("[bed]", 5) },
      {
        key: "froude",
        title: "Froude number",
        source: "by definition: speed over √(g × depth), standard gravity of 9.80665 m/s² (CGPM 1901)",
        kind: "number",
        format: "0.00",
        name: "BedFroudes",
        whole: true,
        formula: `=IF(ISNUMBER([depth])*ISNUMBER([speed]),[speed]/SQRT(${job.gravity()}*[depth]/${perLength(job)}),"")`,
      },
    ],
    demo: {
      US: [
        [2.2, 3.25, 3, CASCADE],
        [2.6, 3, 4, CASCADE],
        [3.1, 3.4, 2, USUAL_BED],
      ],
      SI: [
        [0.75, 1.1, 3, CASCADE],
        [0.9, 1, 4, CASCADE],
        [1.05, 1.15, 2, USUAL_BED],
      ],
    },
  });
  const [lengths, widths, kinds] = [table.column("length"), table.column("width"), table.column("kind")];
  const [depths, speeds] = [table.column("depth"), table.column("speed")];
  s.define("BedDepths", depths.top, depths.left, depths.bottom, depths.left);
  const slopes = table.column("slope");
  s.define("BedSlopes", slopes.top, slopes.left, slopes.bottom, slopes.left);
  s.define("BedTable", lengths.top, lengths.left, kinds.bottom, kinds.left);
  s.note(
    "Depth and speed are those of an even flow. Water no deeper than its stones stands 1.1 to 1.9 times as deep and runs that much " +
      "slower. Above a Froude number of 1 it shoots, and splashes where it slows.",
  );
  s.result({
    name: "BedDepthMost",
    label: "Deepest bed",
    kind: "size",
    formula: `=MAX(${depths})`,
    needs: [String(depths)],
  });
  s.result({
    name: "BedSpeedMost",
    label: "Fastest bed",
    kind: "speed",
    format: "0.00",
    formula: `=MAX(${speeds})`,
    needs: [String(speeds)],
  });
  s.result({
    name: "BedStone",
    label: "Smallest loose stone that stays on the beds",
    kind: "size",
    formula: "=RILL.BEDSTONE(INDEX(BedDepths,WorstBed),INDEX(BedSlopes,WorstBed),RockKind,,Units)",
    needs: ["WorstBed"],
    note: "By depth and slope of the bed that pulls hardest. Where a drop lands take larger stone, or bed it in mortar.",
  });
  s.result({
    name: "WaterArea",
    label: "Open water of pools and beds",
    source: "by definition: areas added up, length times width of each bed",
    kind: "area",
    format: "#,##0.0",
    formula: `=IF(COUNT(PoolAreas,BedLengths)=0,"",SUM(PoolAreas)+SUMPRODUCT(${lengths},${widths}))`,
    note: "Basin works out from it what evaporates.",
  });
}

/** How many of the unit of sizes make one of the unit of lengths. */
export function perLength(job: Job): number {
  return job.per("size", "length");
}
