// Written by "npm run generate" from the declarations of the topic "stone"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { GRAVELTONS as declaredGRAVELTONS } from "../stone/graveltons";
import { STONETONS as declaredSTONETONS } from "../stone/stonetons";
import { BOULDERTONS as declaredBOULDERTONS } from "../stone/bouldertons";
import { BOULDERWEIGHT as declaredBOULDERWEIGHT } from "../stone/boulderweight";
import { BOULDERMIX as declaredBOULDERMIX } from "../stone/bouldermix";

/**
 * Gives the weight of a layer of gravel from its area and depth.
 * @customfunction GRAVELTONS
 * @helpurl https://localhost:3000/help/graveltons.html
 * @param area Area to cover (ft², 0 to 1070000 | m², 0 to 100000)
 * @param depth Depth of the layer (in, 0 to 196 | mm, 0 to 5000)
 * @param [stone] Loose stone or its own figure, "1.35 ton/yd3" (name, or lb/ft³ | name, or t/m³; blank: washed gravel)
 * @param [waste] Added for waste (share, 0 to 1; blank: 0)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The weight of the gravel.
 * @remarks Formula: W = A × d × density × (1 + waste); US: short tons of 2,000 lb, SI: tonnes of 1,000 kg. Limits: Densities are of dry, loose stone; damp stone weighs 10 to 20 % more and quarries differ by 10 %. Your quarry's own figure is better than any table: give it with its unit.
 * @remarks Source: Definition of bulk density (ASTM C29). Densities: US EPA volume-to-weight factors (crushed stone 2,700 lb/yd³) and the sources named in the density table
 * @example =RILL.GRAVELTONS(120, 3, "1.35 ton/yd3")
 * @example =RILL.GRAVELTONS(12, 80, 1.5, "10%", "SI")
 */
export function GRAVELTONS(area: any, depth: any, stone?: any, waste?: any, units?: any): any {
  return callFromSheet(declaredGRAVELTONS, [area, depth, stone, waste, units]);
}

/**
 * Gives the weight of loose stone that fills a volume, such as the space around void modules.
 * @customfunction STONETONS
 * @helpurl https://localhost:3000/help/stonetons.html
 * @param volume Space to fill (yd³, 0 to 653000 | m³, 0 to 500000)
 * @param [stone] Loose stone or its own figure, "1.35 ton/yd3" (name, or lb/ft³ | name, or t/m³; blank: washed gravel)
 * @param [waste] Added for waste (share, 0 to 1; blank: 0)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The weight of the stone.
 * @remarks Formula: W = V × density × (1 + waste); US: short tons of 2,000 lb, SI: tonnes of 1,000 kg. Limits: The volume is the space to fill, gaps between the stones included; take modules and pump well off first. Densities are of dry, loose stone; your quarry's own figure is better than any table.
 * @remarks Source: Definition of bulk density (ASTM C29). Densities: US EPA volume-to-weight factors (crushed stone 2,700 lb/yd³) and the sources named in the density table
 * @example =RILL.STONETONS(10, "crushed stone")
 * @example =RILL.STONETONS(2.4, "1.45 t/m3", 0.05, "SI")
 */
export function STONETONS(volume: any, stone?: any, waste?: any, units?: any): any {
  return callFromSheet(declaredSTONETONS, [volume, stone, waste, units]);
}

/**
 * Gives the weight of the boulders of a face, such as a drop or a bank.
 * @customfunction BOULDERTONS
 * @helpurl https://localhost:3000/help/bouldertons.html
 * @param face_length Length of the face (ft, 0 to 3280 | m, 0 to 1000)
 * @param face_height Height of the face (ft, 0 to 98.4 | m, 0 to 30)
 * @param thickness How far the stones reach back (in, 0 to 196 | mm, 0 to 5000)
 * @param [rock] Rock or its own figure, "165 lb/ft3" (name, or lb/ft³ | name, or t/m³; blank: fieldstone)
 * @param [solid_share] What is left without the gaps between stones (share, 0.3 to 1; blank: 0.65)
 * @param [waste] Added for waste (share, 0 to 1; blank: 0)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The weight of the boulders.
 * @remarks Formula: W = length × height × thickness × solid share × rock density × (1 + waste). Limits: Blank solid share is 0.65; loosely laid stone keeps 0.6, tightly fitted 0.8. One boulder can be off by a third either way: order lip stones by the piece.
 * @remarks Caution: Heavy stone crushes. Over the hand-lift limit use a machine and rigging rated for the most the stone can weigh, and keep people from under and below the load. The weight is an estimate, good to a third either way.
 * @remarks Source: Geometry. Voids of dumped or placed rock 35 to 40 % (FHWA and USACE practice, from memory). Rock densities: the sources named in the density table
 * @example =RILL.BOULDERTONS(10, 1.5, 18, "165 lb/ft3", 0.65)
 * @example =RILL.BOULDERTONS(4, 0.5, 400, 2.7, 0.7, 0.1, "SI")
 */
export function BOULDERTONS(face_length: any, face_height: any, thickness: any, rock?: any, solid_share?: any, waste?: any, units?: any): any {
  return callFromSheet(declaredBOULDERTONS, [face_length, face_height, thickness, rock, solid_share, waste, units]);
}

/**
 * Gives the weight of one stone from its length, width and height, or the most it can weigh.
 * @customfunction BOULDERWEIGHT
 * @helpurl https://localhost:3000/help/boulderweight.html
 * @param length Length of the stone (in, more than 0, at most 196 | mm, more than 0, at most 5000)
 * @param width Width of the stone (in, more than 0, at most 196 | mm, more than 0, at most 5000)
 * @param height Height of the stone (in, more than 0, at most 196 | mm, more than 0, at most 5000)
 * @param [rock] Rock or its own figure, "165 lb/ft3" (name, or lb/ft³ | name, or t/m³; blank: fieldstone)
 * @param [shape] Shape (one of: rounded, angular, box; blank: angular)
 * @param [side] The estimate by shape, or the least or most it can weigh (one of: estimate, light, heavy; blank: estimate)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The weight of the stone.
 * @remarks Formula: W = k × length × width × height × rock density; k: rounded π/6, angular 0.76, box 1; light: π/6 at the rock's lowest density; heavy: 1 at its highest. Limits: Measure the box the stone just fits in. An estimate by shape is good to a third either way, beside what the rock's density differs by. Where a lift depends on it, ask for "heavy": no stone of that rock is heavier than its box.
 * @remarks Caution: Heavy stone crushes. Over the hand-lift limit use a machine and rigging rated for the most the stone can weigh, and keep people from under and below the load. The weight is an estimate, good to a third either way.
 * @remarks Source: W = π/6 γ D³: USACE, Streambank Manual, appendix A, Eq. A.1; box: geometry; angular, half way between: common practice, no source
 * @example =RILL.BOULDERWEIGHT(30, 24, 18, "165 lb/ft3", "rounded")
 * @example =RILL.BOULDERWEIGHT(10, 10, 10, "fieldstone", "", "heavy")
 * @example =RILL.BOULDERWEIGHT(600, 400, 250, 2.5, "box", "", "SI")
 */
export function BOULDERWEIGHT(length: any, width: any, height: any, rock?: any, shape?: any, side?: any, units?: any): any {
  return callFromSheet(declaredBOULDERWEIGHT, [length, width, height, rock, shape, side, units]);
}

/**
 * Splits tons of boulders into sizes: how many of each, what one weighs, and which need a machine.
 * @customfunction BOULDERMIX
 * @helpurl https://localhost:3000/help/bouldermix.html
 * @param tons Weight of all boulders (ton, 0 to 11000 | t, 0 to 10000)
 * @param mix Sizes (rows of size, share)
 * @param [rock] Rock or its own figure, "165 lb/ft3" (name, or lb/ft³ | name, or t/m³; blank: fieldstone)
 * @param [hand_limit] Most one person lifts (lb, more than 0, at most 220 | kg, more than 0, at most 100; blank: 50 lb | 23 kg)
 * @param [shape] Shape (one of: rounded, angular, box; blank: angular)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The stones by size.
 * @remarks Formula: weight = share × total; each = k × rock density × size³, k: rounded π/6, angular 0.76, box 1; lightest: π/6, lowest density; heaviest: the whole box, highest density; count = weight / each, rounded up or down. Limits: Size is the mean of a stone's length, width and height; its weight is good to a third either way. By hand is only what at its heaviest keeps within the hand limit. Shares are of weight and must add up to 100 %. Counts are less than one stone from their share and, all together, at most half of the biggest stone from the total; a size with too few tons for one gets none.
 * @remarks Caution: Heavy stone crushes. Over the hand-lift limit use a machine and rigging rated for the most the stone can weigh, and keep people from under and below the load. The weight is an estimate, good to a third either way.
 * @remarks Source: W = π/6 γ D³: USACE, Streambank Manual, appendix A, Eq. A.1. Hand limit: NIOSH lifting equation (1994), 51 lb (23 kg) under ideal conditions
 * @example =RILL.BOULDERMIX(2, {12,0.25;24,0.75}, "165 lb/ft3")
 */
export function BOULDERMIX(tons: any, mix: any[][], rock?: any, hand_limit?: any, shape?: any, units?: any): any[][] {
  return callFromSheet(declaredBOULDERMIX, [tons, mix, rock, hand_limit, shape, units]) as any[][];
}
