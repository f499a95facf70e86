// Written by "npm run generate" from the declarations of the topic "water"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { LIPFLOW as declaredLIPFLOW } from "../water/lipflow";
import { LIPDEPTH as declaredLIPDEPTH } from "../water/lipdepth";
import { SPLITFLOW as declaredSPLITFLOW } from "../water/splitflow";
import { BEDDEPTH as declaredBEDDEPTH } from "../water/beddepth";
import { BEDSPEED as declaredBEDSPEED } from "../water/bedspeed";
import { STABLESTONE as declaredSTABLESTONE } from "../water/stablestone";
import { EVAPLOSS as declaredEVAPLOSS } from "../water/evaploss";

/**
 * Gives the flow that a sheet of water of the wanted depth needs over a lip.
 * @customfunction LIPFLOW
 * @helpurl https://localhost:3000/help/lipflow.html
 * @param lip_width Width of the lip along its edge (in, 0.394 to 1960 | mm, 10 to 50000)
 * @param sheet_depth Depth of still water above the lip (in, more than 0, at most 39.3 | mm, more than 0, at most 1000)
 * @param [lip_shape] Lip shape by name, or weir coefficient C (blank: "broad")
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The flow over the lip.
 * @remarks Formula: Q = C (L - 0.1 n H) H^1.5, L lip width, H still water above the lip, n ends where the sheet draws in. Limits: Weir standards begin at a sheet of 0.2 ft (60 mm) and end at a third of the lip's width. Cascade sheets of 0.5 to 2 in (12 to 50 mm) lie below that: expect ±10 to 20 %, more where the lip is rough or not level.
 * @remarks Source: J. B. Francis (1855), suppressed and contracted weir; Brater & King (1976), broad lip: both as in the EPA SWMM Reference Manual vol. II (2017), section 6.3 and Table 6-3
 * @example =RILL.LIPFLOW(36, 1, "sharp, narrowed")
 * @example =RILL.LIPFLOW(12, 2.4, "broad, deep")
 * @example =RILL.LIPFLOW(1000, 50, 1.84, "SI")
 */
export function LIPFLOW(lip_width: any, sheet_depth: any, lip_shape?: any, units?: any): any {
  return callFromSheet(declaredLIPFLOW, [lip_width, sheet_depth, lip_shape, units]);
}

/**
 * Gives the depth of the sheet that a flow makes on a lip; the inverse of LIPFLOW.
 * @customfunction LIPDEPTH
 * @helpurl https://localhost:3000/help/lipdepth.html
 * @param flow Flow over the lip (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param lip_width Width of the lip along its edge (in, 0.394 to 1960 | mm, 10 to 50000)
 * @param [lip_shape] Lip shape by name, or weir coefficient C (blank: "broad")
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The depth of the sheet.
 * @remarks Formula: the H where C (L - 0.1 n H) H^1.5 = Q, L lip width, n ends where the sheet draws in. Limits: Weir standards begin at a sheet of 0.2 ft (60 mm) and end at a third of the lip's width. Cascade sheets of 0.5 to 2 in (12 to 50 mm) lie below that: expect ±10 to 20 %, more where the lip is rough or not level.
 * @remarks Source: J. B. Francis (1855), suppressed and contracted weir; Brater & King (1976), broad lip: both as in the EPA SWMM Reference Manual vol. II (2017), section 6.3 and Table 6-3
 * @example =RILL.LIPDEPTH(3000, 12, "sharp")
 * @example =RILL.LIPDEPTH(3000, 12)
 */
export function LIPDEPTH(flow: any, lip_width: any, lip_shape?: any, units?: any): any {
  return callFromSheet(declaredLIPDEPTH, [flow, lip_width, lip_shape, units]);
}

/**
 * Splits a flow over lips that share one pool and lie at different levels.
 * @customfunction SPLITFLOW
 * @helpurl https://localhost:3000/help/splitflow.html
 * @param flow Flow that reaches the pool (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param lips Lips: width, level above the lowest (rows of lip width, level)
 * @param [lip_shape] Lip shape by name, or weir coefficient C (blank: "broad")
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The flow over each lip.
 * @remarks Formula: the water level z where the flows over all lips, Q = C (L - 0.1 n H) H^1.5 with H = z - level, add up. Limits: The pool is taken as level and still. A lip above the water stays dry. Weir standards begin at a sheet of 0.2 ft (60 mm) and end at a third of the lip's width. Cascade sheets of 0.5 to 2 in (12 to 50 mm) lie below that: expect ±10 to 20 %, more where the lip is rough or not level.
 * @remarks Source: Continuity with the weir equations of LIPFLOW
 * @example =RILL.SPLITFLOW(5760, {24,0;12,0})
 * @example =RILL.SPLITFLOW(3000, {12,0;12,3}, "sharp")
 */
export function SPLITFLOW(flow: any, lips: any[][], lip_shape?: any, units?: any): any[][] {
  return callFromSheet(declaredSPLITFLOW, [flow, lips, lip_shape, units]) as any[][];
}

/**
 * Gives the depth at which a stream bed carries a flow evenly (Manning's normal depth).
 * @customfunction BEDDEPTH
 * @helpurl https://localhost:3000/help/beddepth.html
 * @param flow Flow in the stream (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param bed_width Width of the bottom (ft, more than 0, at most 164 | m, more than 0, at most 50)
 * @param slope_percent Fall in percent of the length (0.001 to 100)
 * @param [roughness] Bed kind by name, or Manning's n (blank: "cobbles and boulders")
 * @param [side_slope] Side slope: out per 1 up (0 to 10; blank: 0, upright)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The depth of the stream.
 * @remarks Formula: the y where A R^(2/3) S^½ / n = Q, A = b y + z y², R = A / (b + 2 y √(1 + z²)). Limits: Even flow. Tables of n hold for water much deeper than its stones; in a cascade n is nearer 0.06 to 0.15, so expect 1.1 to 1.9 times the depth and that much less speed. Over a Froude number of 1 (steep, smooth beds) the water shoots and jumps, and no even flow settles.
 * @remarks Source: Manning (1891); n from V. T. Chow, Open-Channel Hydraulics (1959), Table 5-6
 * @example =RILL.BEDDEPTH(3600, 1.5, 5, 0.05, 1)
 */
export function BEDDEPTH(flow: any, bed_width: any, slope_percent: any, roughness?: any, side_slope?: any, units?: any): any {
  return callFromSheet(declaredBEDDEPTH, [flow, bed_width, slope_percent, roughness, side_slope, units]);
}

/**
 * Gives the mean speed of the water where a stream bed carries a flow evenly.
 * @customfunction BEDSPEED
 * @helpurl https://localhost:3000/help/bedspeed.html
 * @param flow Flow in the stream (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param bed_width Width of the bottom (ft, more than 0, at most 164 | m, more than 0, at most 50)
 * @param slope_percent Fall in percent of the length (0.001 to 100)
 * @param [roughness] Bed kind by name, or Manning's n (blank: "cobbles and boulders")
 * @param [side_slope] Side slope: out per 1 up (0 to 10; blank: 0, upright)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The speed of the water.
 * @remarks Formula: V = R^(2/3) S^½ / n at the depth of BEDDEPTH. Limits: Even flow. Tables of n hold for water much deeper than its stones; in a cascade n is nearer 0.06 to 0.15, so expect 1.1 to 1.9 times the depth and that much less speed. Over a Froude number of 1 (steep, smooth beds) the water shoots and jumps, and no even flow settles.
 * @remarks Source: Manning (1891); n from V. T. Chow, Open-Channel Hydraulics (1959), Table 5-6
 * @example =RILL.BEDSPEED(3600, 1.5, 5, 0.05, 1)
 */
export function BEDSPEED(flow: any, bed_width: any, slope_percent: any, roughness?: any, side_slope?: any, units?: any): any {
  return callFromSheet(declaredBEDSPEED, [flow, bed_width, slope_percent, roughness, side_slope, units]);
}

/**
 * Gives the smallest stone that stays where water runs over it at a speed.
 * @customfunction STABLESTONE
 * @helpurl https://localhost:3000/help/stablestone.html
 * @param speed Mean speed of the water (ft/s, 0 to 32.8 | m/s, 0 to 10)
 * @param [rock] Rock or its own figure, "165 lb/ft3" (name, or lb/ft³ | name, or t/m³; blank: fieldstone)
 * @param [turbulence] Turbulence (one of: high, low; blank: "high")
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The diameter of the smallest stone.
 * @remarks Formula: D = V² / (2 g C² (S - 1)), C 0.86 in high and 1.20 in low turbulence, S rock density / water density. Limits: Stones as round as a ball, on a nearly level bed; the speed is the mean of the cross-section. Where a drop lands or the bed is steeper than about 1 in 10 take a larger one, or bed it in mortar.
 * @remarks Source: S. V. Isbash, Construction of Dams by Depositing Rock in Running Water (1936), as in Blevins (2003) and NCHRP Report 568
 * @example =RILL.STABLESTONE(4, "2.65 t/m3", "low")
 * @example =RILL.STABLESTONE(4, "2.65 t/m3")
 */
export function STABLESTONE(speed: any, rock?: any, turbulence?: any, units?: any): any {
  return callFromSheet(declaredSTABLESTONE, [speed, rock, turbulence, units]);
}

/**
 * Gives the water that evaporates from an open surface in a day.
 * @customfunction EVAPLOSS
 * @helpurl https://localhost:3000/help/evaploss.html
 * @param area Open water surface (ft², more than 0, at most 1070000 | m², more than 0, at most 100000)
 * @param water_temp Water temperature (°F, 32 to 113 | °C, 0 to 45)
 * @param air_temp Air temperature (°F, -22 to 131 | °C, -30 to 55)
 * @param humidity Relative humidity of the air (share, 0 to 1)
 * @param wind Wind over the water (mph, 0 to 44.7 | km/h, 0 to 72)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The loss per day.
 * @remarks Formula: w = A (pw - pa)(0.089 + 0.0782 V) / Y, p = 0.6108 exp(17.27 T / (T + 237.3)) kPa (pa × humidity), V in m/s, Y = 2501 - 2.361 T kJ/kg. Limits: Still pools were measured at 74 % of it, pools in use at 40 to 70 % more. Splash, wind drift and wicking at the edges are not in it and are often larger: add a share of your own. 0 where the air is so moist that nothing evaporates.
 * @remarks Source: ASHRAE Handbook, HVAC Applications, natatoriums (SI constants); vapour pressure: FAO-56 (1998), Eq. 11; latent heat: FAO-56, annex 3, Eq. 3-1
 * @example =RILL.EVAPLOSS(10, 25, 30, 0.4, 3.6, "SI")
 */
export function EVAPLOSS(area: any, water_temp: any, air_temp: any, humidity: any, wind: any, units?: any): any {
  return callFromSheet(declaredEVAPLOSS, [area, water_temp, air_temp, humidity, wind, units]);
}
