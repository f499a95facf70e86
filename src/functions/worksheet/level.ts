// Written by "npm run generate" from the declarations of the topic "level"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { STEPS as declaredSTEPS } from "../level/steps";
import { SETOUT as declaredSETOUT } from "../level/setout";
import { LEVELRUN as declaredLEVELRUN } from "../level/levelrun";

/**
 * Lays a fall out in natural-looking drops and treads that add up exactly; the same seed repeats it.
 * @customfunction STEPS
 * @helpurl https://localhost:3000/help/steps.html
 * @param fall Whole fall (ft, more than 0, at most 98.4 | m, more than 0, at most 30)
 * @param run Whole run (ft, more than 0, at most 984 | m, more than 0, at most 300)
 * @param drops How many drops (whole, more than 0, at most 100)
 * @param [unevenness] 0 all alike, 1 very uneven (share, 0 to 1; blank: 0.35)
 * @param [seed] Any number; another gives another layout (whole, more than 0, at most 1000000; blank: 1)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The drops and treads.
 * @remarks Formula: share = (1 + 0.7 × unevenness × x) / Σ, x = 2 frac(φ i + seed) - 1; levels to the nearest 1/8 in or 5 mm, the last step takes what is left. Limits: A suggestion: type over any drop or tread that the stones ask for. Each drop is at least 1 in (25 mm) and each tread at least 2 in (50 mm).
 * @remarks Source: Additive recurrence: Weyl (1916). Long pools behind high steps: Abrahams, Li and Atkinson, Water Resources Research 31 (1995). Shares: common practice, no source
 * @example =RILL.STEPS(3, 8, 4, 0)
 * @example =RILL.STEPS(0.9, 3.2, 5, 0.5, 7, "SI")
 */
export function STEPS(fall: any, run: any, drops: any, unevenness?: any, seed?: any, units?: any): any[][] {
  return callFromSheet(declaredSTEPS, [fall, run, drops, unevenness, seed, units]) as any[][];
}

/**
 * Turns levels into rod readings and string measures, and readings taken into cut or fill.
 * @customfunction SETOUT
 * @helpurl https://localhost:3000/help/setout.html
 * @param benchmark Level of the bench mark (ft, -1640 to 29500 | m, -500 to 9000)
 * @param backsight Rod reading on the bench mark (ft, more than 0, at most 25.2 | m, more than 0, at most 7.7)
 * @param targets Points to set out (rows of name, level)
 * @param [readings] Rod readings taken, row by row beside the points (rows of reading; blank: none taken)
 * @param [tolerance] As near as this is on grade (in, more than 0, at most 11.8 | mm, more than 0, at most 300; blank: 1/4 in | 6 mm)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The rod readings.
 * @remarks Formula: HI = benchmark + backsight; rod = HI - level; string = level - benchmark; too high by = HI - reading - level. Limits: Feet and inches to the nearest eighth, or whole millimetres: the text can be off by half of that. Check the bench mark again before leaving; sights of equal length cancel the instrument's own error.
 * @remarks Caution: Check that the instrument is level and read the bench mark again at the end; a moved tripod spoils every level.
 * @remarks Source: Differential levelling, any surveying text
 * @example =RILL.SETOUT(100, 4.35, {"Basin bottom",96.5;"Lip 1",101}, {7.9;""})
 * @example =RILL.SETOUT(50, 1.2, {"Rim",49.975}, {1.215}, 6, "SI")
 */
export function SETOUT(benchmark: any, backsight: any, targets: any[][], readings?: any[][], tolerance?: any, units?: any): any[][] {
  return callFromSheet(declaredSETOUT, [benchmark, backsight, targets, readings, tolerance, units]) as any[][];
}

/**
 * Turns rod readings over turning points into levels, checks the page, and shares the misclosure out.
 * @customfunction LEVELRUN
 * @helpurl https://localhost:3000/help/levelrun.html
 * @param readings Rod readings in the order taken (rows of point, backsight, intermediate, foresight)
 * @param start Level of the first point (ft, -1640 to 29500 | m, -500 to 9000)
 * @param [known] Known level of the last point (ft, -1640 to 29500 | m, -500 to 9000; blank: that of the first, where the run ends on it)
 * @param [distance] Distance levelled, out and back together (ft | m; blank: no limit is worked out)
 * @param [limit] Limit of closure (one of: construction, third order; blank: construction)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The levels.
 * @remarks Formula: HI = known level + backsight; level = HI - reading; check: sum of backsights - sum of foresights = last - first; limit = k √(distance); corrected = level - misclosure × set-ups so far / all set-ups. Limits: The page check proves the arithmetic, never a reading: close the run on the bench mark. A misclosure over the limit is not shared out. A backsight alone is read on a point already in the book, as after moving a laser. Readings upside down are not taken.
 * @remarks Caution: Check that the instrument is level and read the bench mark again at the end; a moved tripod spoils every level.
 * @remarks Source: US Army FM 5-233 (1985), chapter 4 (from memory). Third order 12 mm √km: Federal Geodetic Control Committee (1984); construction 0.1 ft √mile: common practice, no source
 * @example =RILL.LEVELRUN({"BM1",1.216,"","";"a","",0.025,"";"b","",1.555,"";"CP b",1.386,"",2.508;"bd1","",3.625,"";"CP c",1.235,"",1.196;"CP bd2",3.655,"",3.566;"CP d",2.126,"",0.506;"e","",2.605,"";"f","",1.094,"";"CP g",1.125,"",3.628;"h","",1.394,"";"BM2","","",0.484}, 106.366, 105.263, "", "", "SI")
 * @example =RILL.LEVELRUN({"Bench mark",4.35,"","";"Rim","",5.1,"";"Turning point",6.2,"",1.15;"Top lip","",2.05,"";"Bench mark","","",9.41}, 100, "", 200)
 */
export function LEVELRUN(readings: any[][], start: any, known?: any, distance?: any, limit?: any, units?: any): any[][] {
  return callFromSheet(declaredLEVELRUN, [readings, start, known, distance, limit, units]) as any[][];
}
