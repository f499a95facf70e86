// Written by "npm run generate" from the declarations of the topic "pipe"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { PIPEBORE as declaredPIPEBORE } from "../pipe/pipebore";
import { PIPESPEED as declaredPIPESPEED } from "../pipe/pipespeed";
import { PIPELOSS as declaredPIPELOSS } from "../pipe/pipeloss";
import { FITLOSS as declaredFITLOSS } from "../pipe/fitloss";
import { TDH as declaredTDH } from "../pipe/tdh";
import { TDHTABLE as declaredTDHTABLE } from "../pipe/tdhtable";

/**
 * Gives the inside diameter of a pipe from its nominal size and type.
 * @customfunction PIPEBORE
 * @helpurl https://localhost:3000/help/pipebore.html
 * @param size Nominal pipe size, or "bore 48 mm" (in, more than 0, at most 39.3 | mm, more than 0, at most 1000)
 * @param [pipe_type] Pipe type, such as "Sch 40 PVC", "Flexible PVC" or "PVC-U PN10" (blank: Sch 40 PVC (US) or PVC-U PN10 (SI))
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The inside diameter.
 * @remarks Formula: bore = outside diameter - 2 × least wall of the standard. Limits: Real pipe is made a little thicker than the least wall, so the true bore is up to 2 % smaller. Flexible PVC fixes only the outside diameter: its bore is taken as Schedule 40's.
 * @remarks Source: ASTM D1785 (Sch 40, Sch 80), D2241 (SDR), D2239 (PE SIDR, from memory), ISO 1452-2 (PVC-U), ISO 4427-2 (PE100)
 * @example =RILL.PIPEBORE(2)
 * @example =RILL.PIPEBORE(63, "PVC-U PN10", "SI")
 */
export function PIPEBORE(size: any, pipe_type?: any, units?: any): any {
  return callFromSheet(declaredPIPEBORE, [size, pipe_type, units]);
}

/**
 * Gives the speed of the water in a pipe.
 * @customfunction PIPESPEED
 * @helpurl https://localhost:3000/help/pipespeed.html
 * @param flow Flow in the pipe (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param size Nominal pipe size, or "bore 48 mm" (in, more than 0, at most 39.3 | mm, more than 0, at most 1000)
 * @param [pipe_type] Pipe type, such as "Sch 40 PVC", "Flexible PVC" or "PVC-U PN10" (blank: Sch 40 PVC (US) or PVC-U PN10 (SI))
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The speed in the pipe.
 * @remarks Formula: V = Q / (π d² / 4), d the bore. Limits: For a full pipe. Keep below 5 ft/s (1.5 m/s): common practice, no source.
 * @remarks Source: Continuity, any hydraulics text
 * @example =RILL.PIPESPEED(2400, 2)
 * @example =RILL.PIPESPEED(10800, "bore 57 mm", , "SI")
 */
export function PIPESPEED(flow: any, size: any, pipe_type?: any, units?: any): any {
  return callFromSheet(declaredPIPESPEED, [flow, size, pipe_type, units]);
}

/**
 * Gives the friction head of a length of straight pipe.
 * @customfunction PIPELOSS
 * @helpurl https://localhost:3000/help/pipeloss.html
 * @param flow Flow in the pipe (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param size Nominal pipe size, or "bore 48 mm" (in, more than 0, at most 39.3 | mm, more than 0, at most 1000)
 * @param length Pipe length (ft, 0 to 16400 | m, 0 to 5000)
 * @param [pipe_type] Pipe type, such as "Sch 40 PVC", "Flexible PVC" or "PVC-U PN10" (blank: Sch 40 PVC (US) or PVC-U PN10 (SI))
 * @param [method] Friction method (one of: Hazen-Williams, Darcy-Weisbach; blank: Hazen-Williams)
 * @param [water_temp] Water temperature, used by Darcy-Weisbach (°F, 32 to 104 | °C, 0 to 40; blank: 59 °F | 15 °C)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The friction head.
 * @remarks Formula: Hazen-Williams hf = 10.67 L Q^1.852 / (C^1.852 d^4.8704) in SI; or Darcy-Weisbach hf = f (L/d) V²/2g with Colebrook-White, 64/Re when laminar. Limits: Hazen-Williams holds for turbulent water near 60 °F (15 °C) up to 10 ft/s (3 m/s) and does not see temperature. A bore 2 % off, as pipe is made, moves friction by 10 %. Between Reynolds numbers 2000 and 4000 no method is sure to 10 %.
 * @remarks Source: Hazen-Williams: SI form as in Shammas & Wang, Eq. 5.37. Darcy-Weisbach: Colebrook (1939). C and roughness of plastic: EPANET 2.2 User Manual, Table 3.2
 * @example =RILL.PIPELOSS(2400, 2, 100)
 * @example =RILL.PIPELOSS(10800, "bore 57 mm", 20, , , , "SI")
 */
export function PIPELOSS(flow: any, size: any, length: any, pipe_type?: any, method?: any, water_temp?: any, units?: any): any {
  return callFromSheet(declaredPIPELOSS, [flow, size, length, pipe_type, method, water_temp, units]);
}

/**
 * Gives the head that elbows, tees, valves and other fittings of one pipe take.
 * @customfunction FITLOSS
 * @helpurl https://localhost:3000/help/fitloss.html
 * @param flow Flow in the pipe (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param size Nominal pipe size, or "bore 48 mm" (in, more than 0, at most 39.3 | mm, more than 0, at most 1000)
 * @param fittings Fittings: name or K, count (rows of fitting, count)
 * @param [pipe_type] Pipe type, such as "Sch 40 PVC", "Flexible PVC" or "PVC-U PN10" (blank: Sch 40 PVC (US) or PVC-U PN10 (SI))
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The head of the fittings.
 * @remarks Formula: hm = ΣK V²/2g, V the speed in the pipe; rows of Crane: K = (L/D) × fT. Limits: Books differ by a third and more for the same fitting. Valves count as fully open. TDH counts the outlet's velocity head by itself; list a pipe outlet here only where you add up by hand.
 * @remarks Source: K: EPANET 2.2 User Manual (EPA/600/R-20/133), Table 3.3; ball and butterfly valves: Crane TP-410; unions: Perry's Handbook (from memory)
 * @example =RILL.FITLOSS(2400, 2, {"90 elbow",3;"swing check valve",1})
 */
export function FITLOSS(flow: any, size: any, fittings: any[][], pipe_type?: any, units?: any): any {
  return callFromSheet(declaredFITLOSS, [flow, size, fittings, pipe_type, units]);
}

/**
 * Gives the total dynamic head of one pipe: lift, friction, fittings and the outlet's velocity head.
 * @customfunction TDH
 * @helpurl https://localhost:3000/help/tdh.html
 * @param flow Flow wanted (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param lift Lift from the running water level to the outlet (ft, 0 to 328 | m, 0 to 100)
 * @param size Nominal pipe size, or "bore 48 mm" (in, more than 0, at most 39.3 | mm, more than 0, at most 1000)
 * @param length Pipe length (ft, 0 to 16400 | m, 0 to 5000)
 * @param [fittings] Fittings: name or K, count (rows of fitting, count; blank: none)
 * @param [pipe_type] Pipe type, such as "Sch 40 PVC", "Flexible PVC" or "PVC-U PN10" (blank: Sch 40 PVC (US) or PVC-U PN10 (SI))
 * @param [method] Friction method (one of: Hazen-Williams, Darcy-Weisbach; blank: Hazen-Williams)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The total dynamic head.
 * @remarks Formula: TDH = lift + hf + ΣK V²/2g + V²/2g at the outlet, counted once. Limits: The lift is as good as your levels, friction to about 10 % (the bore), fittings to about a third. Measure the lift from the running water level, which lies below the full level by the drain-back. A pipe outlet among the fittings is not counted a second time. For pipes of several sizes use TDHTABLE.
 * @remarks Source: Energy equation, any hydraulics text; the parts as in PIPELOSS and FITLOSS
 * @example =RILL.TDH(2400, 6, 2, 100)
 */
export function TDH(flow: any, lift: any, size: any, length: any, fittings?: any[][], pipe_type?: any, method?: any, units?: any): any {
  return callFromSheet(declaredTDH, [flow, lift, size, length, fittings, pipe_type, method, units]);
}

/**
 * Takes the total dynamic head of a route apart: lift, friction and fittings of each pipe, outlet, total.
 * @customfunction TDHTABLE
 * @helpurl https://localhost:3000/help/tdhtable.html
 * @param flow Flow wanted (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param lift Lift from the running water level to the outlet (ft, 0 to 328 | m, 0 to 100)
 * @param route Pipes in series: size, length, pipe type, sum of K (rows of size, length, pipe type, sum of k)
 * @param [method] Friction method (one of: Hazen-Williams, Darcy-Weisbach; blank: Hazen-Williams)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The parts of the total dynamic head.
 * @remarks Formula: TDH = lift + Σ hf + Σ K V²/2g + V²/2g at the outlet, counted once; share = part / total. Limits: The lift is as good as your levels, friction to about 10 % (the bore), fittings to about a third. Losses where the pipe changes size are not added; put their K into the row if they matter. The remark says where a pipe runs too fast or the method does not fit.
 * @remarks Source: Energy equation, any hydraulics text; the parts as in PIPELOSS and FITLOSS
 * @example =RILL.TDHTABLE(2400, 6, {2,100,"Sch 40 PVC",5.2})
 */
export function TDHTABLE(flow: any, lift: any, route: any[][], method?: any, units?: any): any[][] {
  return callFromSheet(declaredTDHTABLE, [flow, lift, route, method, units]) as any[][];
}
