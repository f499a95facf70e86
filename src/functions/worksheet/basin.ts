// Written by "npm run generate" from the declarations of the topic "basin"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { DRAINBACK as declaredDRAINBACK } from "../basin/drainback";
import { DRAINTABLE as declaredDRAINTABLE } from "../basin/draintable";
import { BASINHOLD as declaredBASINHOLD } from "../basin/basinhold";
import { BASINDEPTH as declaredBASINDEPTH } from "../basin/basindepth";
import { BASINMIX as declaredBASINMIX } from "../basin/basinmix";
import { BASINCHECK as declaredBASINCHECK } from "../basin/basincheck";

/**
 * Gives the water that runs back into the basin when the pump stops.
 * @customfunction DRAINBACK
 * @helpurl https://localhost:3000/help/drainback.html
 * @param flow Flow while the pump runs (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param [pools] Pools: area, lip width (rows of area, lip width; blank: none)
 * @param [runs] Beds: length, width, slope %, roughness (rows of length, width, slope, roughness; blank: none)
 * @param [pipe_size] Nominal size of the pipe, or of each pipe (list; each in | list; each mm; blank: no pipe)
 * @param [pipe_length] Length of the pipe, or of each (list; each ft, 0 to 16400 | list; each m, 0 to 5000; blank: 0)
 * @param [pipe_type] Type of the pipe, or of each (blank: as in PIPEBORE)
 * @param [check_valve] Whether a check valve keeps the pipe full (TRUE or FALSE; blank: FALSE)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The drain-back.
 * @remarks Formula: Σ pool area × lip depth (LIPDEPTH) + Σ bed length × width × depth (BEDDEPTH) + π/4 bore² × pipe length unless a check valve holds it. Limits: Give the flow the pump really delivers (see DUTY): a pump that gives more than was designed sends more back. Pools are level with their lips at rest and taken as flat stone lips (within 10 to 20 % for thin sheets); beds run evenly and drain dry. Over stones a bed holds 1.1 to 1.9 times as much, and splash wets more: leave a margin. Water in a spillway box counts as a pool. A check valve that leaks holds nothing.
 * @remarks Source: Geometry, with the weir equation of LIPDEPTH and Manning's of BEDDEPTH
 * @example =RILL.DRAINBACK(3000, {40,12}, , 2, 60)
 */
export function DRAINBACK(flow: any, pools?: any[][], runs?: any[][], pipe_size?: any[][], pipe_length?: any[][], pipe_type?: any[][], check_valve?: any, units?: any): any {
  return callFromSheet(declaredDRAINBACK, [flow, pools, runs, pipe_size, pipe_length, pipe_type, check_valve, units]);
}

/**
 * Takes the drain-back apart: water, depth and speed of every pool, bed and pipe, and the total.
 * @customfunction DRAINTABLE
 * @helpurl https://localhost:3000/help/draintable.html
 * @param flow Flow while the pump runs (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param [pools] Pools: area, lip width (rows of area, lip width; blank: none)
 * @param [runs] Beds: length, width, slope %, roughness (rows of length, width, slope, roughness; blank: none)
 * @param [pipe_size] Nominal size of the pipe, or of each pipe (list; each in | list; each mm; blank: no pipe)
 * @param [pipe_length] Length of the pipe, or of each (list; each ft, 0 to 16400 | list; each m, 0 to 5000; blank: 0)
 * @param [pipe_type] Type of the pipe, or of each (blank: as in PIPEBORE)
 * @param [check_valve] Whether a check valve keeps the pipe full (TRUE or FALSE; blank: FALSE)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The parts of the drain-back.
 * @remarks Formula: as DRAINBACK; share = part / total. Limits: Give the flow the pump really delivers (see DUTY): a pump that gives more than was designed sends more back. Pools are level with their lips at rest and taken as flat stone lips (within 10 to 20 % for thin sheets); beds run evenly and drain dry. Over stones a bed holds 1.1 to 1.9 times as much, and splash wets more: leave a margin. Water in a spillway box counts as a pool. A check valve that leaks holds nothing.
 * @remarks Source: Geometry, with the weir equation of LIPDEPTH and Manning's of BEDDEPTH
 * @example =RILL.DRAINTABLE(3600, , {20,1.5,5,0.05}, 2, 60, , TRUE)
 */
export function DRAINTABLE(flow: any, pools?: any[][], runs?: any[][], pipe_size?: any[][], pipe_length?: any[][], pipe_type?: any[][], check_valve?: any, units?: any): any[][] {
  return callFromSheet(declaredDRAINTABLE, [flow, pools, runs, pipe_size, pipe_length, pipe_type, check_valve, units]) as any[][];
}

/**
 * Gives the water a basin holds between its low level and the overflow.
 * @customfunction BASINHOLD
 * @helpurl https://localhost:3000/help/basinhold.html
 * @param length Length of the bottom (ft, 0.0329 to 1640 | m, 0.01 to 500)
 * @param width Width of the bottom (ft, 0.0329 to 1640 | m, 0.01 to 500)
 * @param water_depth Depth from low level to overflow (ft, more than 0, at most 20 | m, more than 0, at most 6.1)
 * @param void_fraction Room for water per volume, such as 0.4 (share, 0.05 to 1)
 * @param [side_slope] Walls: out per 1 up (0 to 10; blank: 0, upright)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The water the basin holds.
 * @remarks Formula: V = n (L W d + z d² (L + W) + 4/3 z² d³), L and W of the bottom, n void fraction, z walls out per 1 up. Limits: Give the depth between low level and overflow, not down to the floor. The void fraction is porosity: clean washed gravel 0.35 to 0.45 (usually 0.4), plastic modules 0.90 to 0.97. Many manuals print a void ratio e instead; the fraction is e / (1 + e), so 0.67 means 0.40. Silt takes room over the years.
 * @remarks Source: Geometry (prismoidal formula, exact for a level bottom); 1 gal = 231 in³
 * @example =RILL.BASINHOLD(10, 8, 2.5, 0.4)
 * @example =RILL.BASINHOLD(10, 8, 2.5, 0.4, 0.5)
 */
export function BASINHOLD(length: any, width: any, water_depth: any, void_fraction: any, side_slope?: any, units?: any): any {
  return callFromSheet(declaredBASINHOLD, [length, width, water_depth, void_fraction, side_slope, units]);
}

/**
 * Gives the depth of water a volume takes up in a basin; the inverse of BASINHOLD.
 * @customfunction BASINDEPTH
 * @helpurl https://localhost:3000/help/basindepth.html
 * @param volume Water to hold (gal, more than 0, at most 26400000 | L, more than 0, at most 100000000)
 * @param length Length of the bottom (ft, 0.0329 to 1640 | m, 0.01 to 500)
 * @param width Width of the bottom (ft, 0.0329 to 1640 | m, 0.01 to 500)
 * @param void_fraction Room for water per volume, such as 0.4 (share, 0.05 to 1)
 * @param [side_slope] Walls: out per 1 up (0 to 10; blank: 0, upright)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The depth of the water.
 * @remarks Formula: the d where n (L W d + z d² (L + W) + 4/3 z² d³) = V, L and W of the bottom, z walls out per 1 up. Limits: At most 20 ft (6.1 m) deep. The void fraction is porosity: clean washed gravel 0.35 to 0.45 (usually 0.4), plastic modules 0.90 to 0.97. Many manuals print a void ratio e instead; the fraction is e / (1 + e), so 0.67 means 0.40.
 * @remarks Source: Geometry (prismoidal formula, exact for a level bottom); 1 gal = 231 in³
 * @example =RILL.BASINDEPTH(598.442, 10, 8, 0.4)
 */
export function BASINDEPTH(volume: any, length: any, width: any, void_fraction: any, side_slope?: any, units?: any): any {
  return callFromSheet(declaredBASINDEPTH, [volume, length, width, void_fraction, side_slope, units]);
}

/**
 * Gives the water, gravel and mean void fraction of a basin made of modules and wells in a gravel pit.
 * @customfunction BASINMIX
 * @helpurl https://localhost:3000/help/basinmix.html
 * @param parts Parts: kind, length, width, depth, void fraction, side slope (rows of kind, length, width, depth, void fraction, side slope)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The parts of the basin.
 * @remarks Formula: gravel = pit - modules - wells; water = Σ volume × void fraction; pit with sloped walls as in BASINHOLD; above the modules: what lies higher than the tallest module. Limits: Depths count below the full water level only. Give the pit as one row; its void fraction is that of the gravel. The void fraction is porosity: clean washed gravel 0.35 to 0.45 (usually 0.4), plastic modules 0.90 to 0.97. Many manuals print a void ratio e instead; the fraction is e / (1 + e), so 0.67 means 0.40. Ask the supplier for the modules' own figure.
 * @remarks Source: Geometry (prismoidal formula, cylinder); void fractions: gravel 0.40, modules 0.95 of stormwater manuals (from memory)
 * @example =RILL.BASINMIX({"pit",10,8,3,0.4;"modules",6,6,2.5,0.95})
 */
export function BASINMIX(parts: any[][], units?: any): any[][] {
  return callFromSheet(declaredBASINMIX, [parts, units]) as any[][];
}

/**
 * Holds a basin against its need: margin, level drop on starting, days until the pump sucks air, overflow.
 * @customfunction BASINCHECK
 * @helpurl https://localhost:3000/help/basincheck.html
 * @param hold Water from the floor to the overflow (gal, 0 to 26400000 | L, 0 to 100000000)
 * @param drainback Water that runs back when the pump stops (gal, 0 to 26400000 | L, 0 to 100000000)
 * @param low_water Water that must stay over the pump's inlet (gal, 0 to 26400000 | L, 0 to 100000000)
 * @param loss_per_day Evaporation and splash per day (gal, 0 to 2640000 | L, 0 to 10000000)
 * @param days Days without topping up (0 to 366)
 * @param [footprint] Area of the basin near its full level (ft², 0.108 to 2690000 | m², 0.01 to 250000; blank: no level drop)
 * @param [void_fraction] Room for water per volume, such as 0.4 (share, 0.05 to 1; blank: 0.4, gravel)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The basin against its need.
 * @remarks Formula: need = drain-back + low water + loss × days; margin = hold - need; drop = drain-back / (footprint × void fraction); days to air = (hold - drain-back - low water) / loss. Limits: Hold counts from the floor, or from wherever low water counts from, up to the overflow. The drop takes upright walls and one void fraction over it. Rain and leaks are not in it. The void fraction is porosity: clean washed gravel 0.35 to 0.45 (usually 0.4), plastic modules 0.90 to 0.97. Many manuals print a void ratio e instead; the fraction is e / (1 + e), so 0.67 means 0.40.
 * @remarks Caution: A pump that runs dry overheats and fails; a basin that overflows soaks what stands beside it. Lead the overflow away from buildings.
 * @remarks Source: Balance of water; what a basin must hold: common practice, no source
 * @example =RILL.BASINCHECK(598.442, 200, 120, 15, 14, 80, 0.4)
 * @example =RILL.BASINCHECK(300, 250, 120, 15, 14)
 */
export function BASINCHECK(hold: any, drainback: any, low_water: any, loss_per_day: any, days: any, footprint?: any, void_fraction?: any, units?: any): any[][] {
  return callFromSheet(declaredBASINCHECK, [hold, drainback, low_water, loss_per_day, days, footprint, void_fraction, units]) as any[][];
}
