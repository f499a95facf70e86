// Written by "npm run generate" from the declarations of the topic "sheet"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { LINERCUT as declaredLINERCUT } from "../sheet/linercut";
import { FALLCUT as declaredFALLCUT } from "../sheet/fallcut";
import { FABRICCUT as declaredFABRICCUT } from "../sheet/fabriccut";
import { LINERRUN as declaredLINERRUN } from "../sheet/linerrun";
import { CUTPLAN as declaredCUTPLAN } from "../sheet/cutplan";

/**
 * Sizes the liner of a basin: bottom, developed sides and overlaps, rounded up, with area and weight.
 * @customfunction LINERCUT
 * @helpurl https://localhost:3000/help/linercut.html
 * @param length Length of the bottom (ft, 0.0329 to 1640 | m, 0.01 to 500)
 * @param width Width of the bottom (ft, 0.0329 to 1640 | m, 0.01 to 500)
 * @param depth Depth from rim to bottom (ft, 0 to 65.6 | m, 0 to 20)
 * @param [overlap] Sheet beyond each edge (ft, 0 to 32.8 | m, 0 to 10; blank: 1 ft | 0.3 m)
 * @param [side_slope] Side slope, horizontal to 1 vertical (0 to 10; blank: 0, upright sides)
 * @param [round_to] Round cuts up to a multiple of (ft, more than 0.000329, at most 32.8 | m, more than 0.0001, at most 10; blank: 0.5 ft | 0.1 m)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The size of the liner.
 * @remarks Formula: length + 2 × depth × √(1 + side slope²) + 2 × overlap, and the same with the width; each rounded up. Limits: Length and width are those of the bottom; the corners are folded, not cut. Loose ground and folds take up sheet, which is what the overlap is for. Other liners weigh differently.
 * @remarks Caution: A rolled sheet is a limp, awkward load. Count about 50 lb (23 kg) to a person, lift together, and let nobody stand in the pit below it.
 * @remarks Source: Geometry. Overlap of 1 ft (0.3 m): common practice, no source. Weight: 0.29 lb/ft² of 45 mil EPDM, from memory
 * @example =RILL.LINERCUT(10, 8, 2.5, 1)
 * @example =RILL.LINERCUT(6, 4, 2.5, 1, 0.5, "1 in")
 */
export function LINERCUT(length: any, width: any, depth: any, overlap?: any, side_slope?: any, round_to?: any, units?: any): any[][] {
  return callFromSheet(declaredLINERCUT, [length, width, depth, overlap, side_slope, round_to, units]) as any[][];
}

/**
 * Sizes the liner of a stepped bed along its drops and treads, with slack at each drop, banks and overlaps.
 * @customfunction FALLCUT
 * @helpurl https://localhost:3000/help/fallcut.html
 * @param drops Height of each drop (list; each ft, more than 0, at most 328 | list; each m, more than 0, at most 100)
 * @param treads Length of each tread (list; each ft, more than 0, at most 328 | list; each m, more than 0, at most 100)
 * @param bed_width Width of the bed (ft, 0.0329 to 1640 | m, 0.01 to 500)
 * @param bank_height Height the sheet climbs each bank (ft, 0 to 32.8 | m, 0 to 10)
 * @param [overlap] Sheet beyond each edge (ft, 0 to 32.8 | m, 0 to 10; blank: 1 ft | 0.3 m)
 * @param [slack_per_drop] Loose sheet at each drop (ft, 0 to 6.56 | m, 0 to 2; blank: 0.25 ft | 0.08 m)
 * @param [round_to] Round cuts up to a multiple of (ft, more than 0.000329, at most 32.8 | m, more than 0.0001, at most 10; blank: 0.5 ft | 0.1 m)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The size of the liner along the fall.
 * @remarks Formula: along = Σ drops + Σ treads + slack × number of drops + 2 × overlap; across = bed width + 2 × bank height + 2 × overlap; each rounded up. Limits: The bed is taken as straight in plan; give a curved bed its length along the outer bank. A piece wider than a roll needs a seam or a wider roll.
 * @remarks Caution: A rolled sheet is a limp, awkward load. Count about 50 lb (23 kg) to a person, lift together, and let nobody stand in the pit below it.
 * @remarks Source: Geometry. Overlap and slack: common practice, no source. Weight: 0.29 lb/ft² of 45 mil EPDM, from memory
 * @example =RILL.FALLCUT({0.6666666666666666;0.6666666666666666;0.6666666666666666;0.6666666666666666;0.6666666666666666}, {1.5;1.5;1.5;1.5;1.5}, 3, 0.75, 1, 0.25)
 */
export function FALLCUT(drops: any[][], treads: any[][], bed_width: any, bank_height: any, overlap?: any, slack_per_drop?: any, round_to?: any, units?: any): any[][] {
  return callFromSheet(declaredFALLCUT, [drops, treads, bed_width, bank_height, overlap, slack_per_drop, round_to, units]) as any[][];
}

/**
 * Covers an area with lapped strips of fabric, along or across, whichever takes less off the roll.
 * @customfunction FABRICCUT
 * @helpurl https://localhost:3000/help/fabriccut.html
 * @param length Length to cover (ft, 0.0329 to 1640 | m, 0.01 to 500)
 * @param width Width to cover (ft, 0.0329 to 1640 | m, 0.01 to 500)
 * @param roll_width Width of the roll (ft, 0.329 to 164 | m, 0.1 to 50)
 * @param [lap] Lap between strips (ft, 0 to 16.4 | m, 0 to 5; blank: 1 ft | 0.3 m)
 * @param [layers] Layers (whole, more than 0, at most 10; blank: 1)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The fabric strips.
 * @remarks Formula: strips = ⌈(side − lap) / (roll width − lap)⌉ × layers; length to buy = strips × the other side. Limits: Every strip is a full roll width; what the last strip leaves over is not used again.
 * @remarks Source: Geometry. Lap of 1 ft (0.3 m): common practice, no source
 * @example =RILL.FABRICCUT(17, 15, 6, 1, 2)
 */
export function FABRICCUT(length: any, width: any, roll_width: any, lap?: any, layers?: any, units?: any): any[][] {
  return callFromSheet(declaredFABRICCUT, [length, width, roll_width, lap, layers, units]) as any[][];
}

/**
 * Develops a stream's liner station by station: along bed and drops, across bed, banks and edges.
 * @customfunction LINERRUN
 * @helpurl https://localhost:3000/help/linerrun.html
 * @param stations Stations along the line (rows of station, bed, drop, width, bank, bank slope)
 * @param [edge] Turned over each bank (ft, 0 to 16.4 | m, 0 to 5; blank: 1 ft | 0.3 m)
 * @param [slack] Slack in folds and for settling (share, 0 to 0.5; blank: 5%)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The developed liner.
 * @remarks Formula: across = (bed + 2 bank √(1 + z²) + 2 edge)(1 + slack); along = sum of (√(Δx² + Δz²) + drop)(1 + slack). Limits: The bed is straight from station to station: add a station where it bends or changes width. Levels are those of the dug bed. Laps and seams are not in it (see CUTPLAN).
 * @remarks Source: Perimeter of a trapezoid: V. T. Chow, Open-Channel Hydraulics (1959), Table 2-1. Edges and slack: common practice, no source
 * @example =RILL.LINERRUN({0,103,0,3,1,0;4,102,1,3,1,0;8,99,0,4,0.75,1.3333333333333333}, 1, 0)
 */
export function LINERRUN(stations: any[][], edge?: any, slack?: any, units?: any): any[][] {
  return callFromSheet(declaredLINERRUN, [stations, edge, slack, units]) as any[][];
}

/**
 * Cuts pieces from rolls for the least cost with edge-to-edge cuts: where each cut lies and what to buy.
 * @customfunction CUTPLAN
 * @helpurl https://localhost:3000/help/cutplan.html
 * @param cuts Pieces: name, length, width, count (rows of name, length, width, count)
 * @param rolls Rolls: width, price, price per length, area or roll, longest length (rows of width, price, per, longest)
 * @param [turn] Whether pieces may be turned across the roll (TRUE or FALSE; blank: TRUE)
 * @param [seam] Lap of a seam; blank: no seams (in, 0.0394 to 39.3 | mm, 1 to 1000; blank: no piece is seamed)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The cut plan: every cut, then what to buy, waste, cost and how sure the plan is.
 * @remarks Formula: least Σ cost of the lengths bought, then least length; every cut runs from edge to edge of what it parts. Up to 11 different pieces by a dynamic program over all such plans; beyond that by annealing over slicing trees. Limits: The row "Plan" says whether the cost is proven least or the best found; no plan costs less than the "Lower bound". Positions are measured on the lengths bought of a roll laid end to end, and from one edge across. Nothing is added for crooked cuts. A piece is seamed only when it fits no roll. Without any price the least area is sought.
 * @remarks Caution: A rolled sheet is a limp, awkward load. Count about 50 lb (23 kg) to a person, lift together, and let nobody stand in the pit below it.
 * @remarks Source: P. C. Gilmore and R. E. Gomory, Operations Research 13 (1965) 94-120; L. Stockmeyer, Information and Control 57 (1983) 91-101
 * @example =RILL.CUTPLAN({"Basin",18,15,1;"Fall",14,6,1;"Skirt",7,4,2}, {15,13.5,"length",100;20,20,"length",100})
 */
export function CUTPLAN(cuts: any[][], rolls: any[][], turn?: any, seam?: any, units?: any): any[][] {
  return callFromSheet(declaredCUTPLAN, [cuts, rolls, turn, seam, units]) as any[][];
}
