// Written by "npm run generate" from the declarations of the topic "ground"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { PITVOLUME as declaredPITVOLUME } from "../ground/pitvolume";
import { BERMVOLUME as declaredBERMVOLUME } from "../ground/bermvolume";
import { SOILBALANCE as declaredSOILBALANCE } from "../ground/soilbalance";
import { CUTFILL as declaredCUTFILL } from "../ground/cutfill";

/**
 * Gives the bank volume of a pit with a rectangular bottom and sloped or upright sides, exactly.
 * @customfunction PITVOLUME
 * @helpurl https://localhost:3000/help/pitvolume.html
 * @param length Length of the bottom (ft, 0 to 1640 | m, 0 to 500)
 * @param width Width of the bottom (ft, 0 to 1640 | m, 0 to 500)
 * @param depth Depth (ft, 0 to 20 | m, 0 to 6.1)
 * @param [side_slope] Slope of the sides, run per 1 of depth (0 to 10; blank: 0, upright)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The bank volume of the pit.
 * @remarks Formula: V = L W d + z d² (L + W) + 4/3 z² d³; L, W of the bottom, z = run per 1 of depth. Limits: Bank volume, as it lies in the ground: trucks carry more (see SOILBALANCE). A pipe trench is a pit too. Upside down it is a free-standing heap with a flat top.
 * @remarks Caution: Have buried services located before any digging. Side slopes, shoring, spoil set-back and ladders follow local rules; nobody enters a pit whose sides can cave in.
 * @remarks Source: Prismoidal formula, exact for this solid; any surveying text
 * @example =RILL.PITVOLUME(8, 8, 2, 1.5)
 * @example =RILL.PITVOLUME(3, 2, 1, 0, "SI")
 */
export function PITVOLUME(length: any, width: any, depth: any, side_slope?: any, units?: any): any {
  return callFromSheet(declaredPITVOLUME, [length, width, depth, side_slope, units]);
}

/**
 * Gives the compacted volume of a berm from its crest, height and side slope, its ends square.
 * @customfunction BERMVOLUME
 * @helpurl https://localhost:3000/help/bermvolume.html
 * @param crest_length Length of the crest (ft, 0 to 1640 | m, 0 to 500)
 * @param crest_width Width of the crest (ft, 0 to 1640 | m, 0 to 500)
 * @param height Height (ft, 0 to 20 | m, 0 to 6.1)
 * @param [side_slope] Slope of the sides, run per 1 of height (more than 0, at most 10; blank: 2)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The compacted volume of the berm.
 * @remarks Formula: V = (crest width + z × height) × height × crest length; z = run per 1 of height. Limits: Compacted volume, as it stands; digging and hauling differ (see SOILBALANCE). The ends count as square; for a free-standing berm that slopes at its ends too, take PITVOLUME with the crest's length and width.
 * @remarks Caution: Build it in compacted layers; loose fill under a spillway box settles and tilts the lip.
 * @remarks Source: Area of a trapezoid times length, any surveying text. Usual slope 2 to 1: common practice, no source
 * @example =RILL.BERMVOLUME(15, 2, 2, 2)
 * @example =RILL.BERMVOLUME(4, 1, 0.5, 1.5, "SI")
 */
export function BERMVOLUME(crest_length: any, crest_width: any, height: any, side_slope?: any, units?: any): any {
  return callFromSheet(declaredBERMVOLUME, [crest_length, crest_width, height, side_slope, units]);
}

/**
 * Weighs what is dug against what the berm takes: spoil left or fill to bring, in truckloads.
 * @customfunction SOILBALANCE
 * @helpurl https://localhost:3000/help/soilbalance.html
 * @param dug Volume dug, as it lies in the ground (bank) (yd³, 0 to 130000 | m³, 0 to 100000)
 * @param berm Volume of the berm, compacted (yd³, 0 to 130000 | m³, 0 to 100000)
 * @param [soil] Soil, or own figures as "swell 30% shrink 10%" (name or figures; blank: loam)
 * @param [truck] What one truck takes, loose (yd³, 0.0131 to 130 | m³, 0.01 to 100; blank: 10 yd³ | 8 m³)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The soil balance.
 * @remarks Formula: loose = bank × (1 + swell); compacted = bank × (1 - shrink); left over = dug bank - berm compacted / (1 - shrink); loads = loose / truck, rounded up. Limits: Dug is bank volume, the berm compacted volume, the truck loose volume. Swell tables disagree (sand 5 or 11 %): state your own figures where you know the soil. Fill is taken as the same soil. Watch the truck's weight limit too.
 * @remarks Caution: Have buried services located before any digging. Side slopes, shoring, spoil set-back and ladders follow local rules; nobody enters a pit whose sides can cave in.
 * @remarks Source: US Army FM 5-434 (2000), chapter 1 and Table 1-1 (from memory); gravel and silt: Alaska DOT (1983) and UFC 3-220-20 (2025)
 * @example =RILL.SOILBALANCE(30, 18, "loam", 10)
 * @example =RILL.SOILBALANCE(10, 18, "swell 30% shrink 10%", 8, "SI")
 */
export function SOILBALANCE(dug: any, berm: any, soil?: any, truck?: any, units?: any): any[][] {
  return callFromSheet(declaredSOILBALANCE, [dug, berm, soil, truck, units]) as any[][];
}

/**
 * Gives cut and fill station by station between the ground as it is and the surface wanted.
 * @customfunction CUTFILL
 * @helpurl https://localhost:3000/help/cutfill.html
 * @param stations Stations along the line (rows of station, ground, design, width, rise left, rise right)
 * @param [cut_slope] Sides in cut, run per 1 of height (0 to 10; blank: 1)
 * @param [fill_slope] Sides in fill, run per 1 of height (0 to 10; blank: 2)
 * @param [method] How the volume is worked out (one of: average end area, prismoidal; blank: prismoidal)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The cut and fill.
 * @remarks Formula: Section: flat formation, sides up or down to the ground; V = L (A1 + A2)/2, or prismoidal L (A1 + 4 Am + A2)/6 with Am of averaged dimensions; the change from cut to fill is interpolated. Limits: Cut is bank volume, fill compacted volume (see SOILBALANCE). Average end area is high where a section tapers to nothing, by up to half; the prismoidal formula is exact for straight edges. The surface wanted is the one dug or filled to: take liner, fabric and stone off it first.
 * @remarks Caution: Have buried services located before any digging. Side slopes, shoring, spoil set-back and ladders follow local rules; nobody enters a pit whose sides can cave in.
 * @remarks Source: Average end area and prismoidal formula, any surveying text; exact examples in the tests
 * @example =RILL.CUTFILL({0,101,100,10,"","";200,101.6,100,10,"",""}, 2, 2, "prismoidal", "SI")
 * @example =RILL.CUTFILL({0,102,100,9,"","";27,98,100,9,"",""}, 0, 0)
 */
export function CUTFILL(stations: any[][], cut_slope?: any, fill_slope?: any, method?: any, units?: any): any[][] {
  return callFromSheet(declaredCUTFILL, [stations, cut_slope, fill_slope, method, units]) as any[][];
}
