// Written by "npm run generate" from the declarations of the topic "pump"; change those, not this file.
/* eslint-disable @typescript-eslint/no-explicit-any -- the host decides what arrives; the declaration checks it */
import { callFromSheet } from "../contract/report";
import { PUMPHEAD as declaredPUMPHEAD } from "../pump/pumphead";
import { DUTY as declaredDUTY } from "../pump/duty";
import { CURVETABLE as declaredCURVETABLE } from "../pump/curvetable";
import { PUMPRANK as declaredPUMPRANK } from "../pump/pumprank";
import { PIPERANK as declaredPIPERANK } from "../pump/piperank";
import { PUMPWATTS as declaredPUMPWATTS } from "../pump/pumpwatts";
import { RUNCOST as declaredRUNCOST } from "../pump/runcost";
import { CABLEDROP as declaredCABLEDROP } from "../pump/cabledrop";

/**
 * Reads the head of a pump off its curve at a flow and speed; never beyond the curve's last point.
 * @customfunction PUMPHEAD
 * @helpurl https://localhost:3000/help/pumphead.html
 * @param curve Pump curve: flow, head; from shut-off head at flow 0 (rows of flow, head)
 * @param flow Flow through the pump (gph, 0 to 951000 | L/h, 0 to 3600000)
 * @param [speed] Speed as a share of the curve's (0.1 to 2; blank: 1)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The head of the pump.
 * @remarks Formula: H(Q) = n² H₁(Q / n), straight lines between the points of the curve H₁, n the share of its speed. Limits: Straight lines lie a little below a curve that bends downwards, so the head is read 1 to 2 % low with few points. The affinity laws hold best between 70 and 110 % speed.
 * @remarks Source: Affinity laws: DOE-HDBK-1012/3, pump laws; Crane TP-410, example 7.33
 * @example =RILL.PUMPHEAD({0,26;2400,22;4800,10}, 3000)
 * @example =RILL.PUMPHEAD({0,24;6000,20}, 4800, 0.8)
 */
export function PUMPHEAD(curve: any[][], flow: any, speed?: any, units?: any): any {
  return callFromSheet(declaredPUMPHEAD, [curve, flow, speed, units]);
}

/**
 * Gives the flow a pump really delivers through a route: where pump curve and system curve meet.
 * @customfunction DUTY
 * @helpurl https://localhost:3000/help/duty.html
 * @param curve Pump curve: flow, head; from shut-off head at flow 0 (rows of flow, head)
 * @param lift Lift from the running water level to the outlet (ft, 0 to 328 | m, 0 to 100)
 * @param route Pipes in series: size, length, pipe type, sum of K (rows of size, length, pipe type, sum of k)
 * @param [pumps] Identical pumps in parallel (whole, 1 to 12; blank: 1)
 * @param [speed] Speed as a share of the curve's (0.1 to 2; blank: 1)
 * @param [target] Flow wanted (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000; blank: no verdict on the flow)
 * @param [method] Friction method (one of: Hazen-Williams, Darcy-Weisbach; blank: Hazen-Williams)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The duty point.
 * @remarks Formula: n² H₁(Q / (m n)) = lift + Σ hf(Q) + Σ K V²/2g + outlet V²/2g, solved for Q; m pumps in parallel, n the share of speed. Limits: Straight lines between the curve's points, nothing beyond its last one: there the flow shown is the last known. Makers' curves hold within 5 to 10 %. Pumps in parallel share the whole route.
 * @remarks Caution: Mains electricity near water kills. Every circuit that feeds the pump needs ground-fault protection (GFCI, RCD) and belongs to a licensed electrician.
 * @remarks Source: Any text on pumps; DOE-HDBK-1012/3 for pumps in parallel and pump laws; losses as in TDHTABLE
 * @example =RILL.DUTY({0,26;1200,25;2400,22.5;3600,18;4800,11;5700,3}, 8, {2,100,"Sch 40 PVC",6}, , , 3500)
 */
export function DUTY(curve: any[][], lift: any, route: any[][], pumps?: any, speed?: any, target?: any, method?: any, units?: any): any[][] {
  return callFromSheet(declaredDUTY, [curve, lift, route, pumps, speed, target, method, units]) as any[][];
}

/**
 * Lists points of the pump curve and the system curve for a chart; they cross at the duty point.
 * @customfunction CURVETABLE
 * @helpurl https://localhost:3000/help/curvetable.html
 * @param curve Pump curve: flow, head; from shut-off head at flow 0 (rows of flow, head)
 * @param lift Lift from the running water level to the outlet (ft, 0 to 328 | m, 0 to 100)
 * @param route Pipes in series: size, length, pipe type, sum of K (rows of size, length, pipe type, sum of k)
 * @param [pumps] Identical pumps in parallel (whole, 1 to 12; blank: 1)
 * @param [speed] Speed as a share of the curve's (0.1 to 2; blank: 1)
 * @param [points] How many points (whole, 2 to 200; blank: 21)
 * @param [method] Friction method (one of: Hazen-Williams, Darcy-Weisbach; blank: Hazen-Williams)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns Points of the two curves.
 * @remarks Formula: even steps of flow from 0 to the end of the pump curve; heads as in DUTY. Limits: As good as the points of the curve: makers hold them within 5 to 10 %. The pump curve is drawn as far as its points go; where it ends, so does the table.
 * @remarks Source: Any text on pumps; losses as in TDHTABLE
 * @example =RILL.CURVETABLE({0,26;4800,10}, 8, {2,100,"Sch 40 PVC",0}, , , 3)
 */
export function CURVETABLE(curve: any[][], lift: any, route: any[][], pumps?: any, speed?: any, points?: any, method?: any, units?: any): any[][] {
  return callFromSheet(declaredCURVETABLE, [curve, lift, route, pumps, speed, points, method, units]) as any[][];
}

/**
 * Ranks pumps on a route: those that meet the flow, cheapest to own first, and why each other one fails.
 * @customfunction PUMPRANK
 * @helpurl https://localhost:3000/help/pumprank.html
 * @param pumps Pumps: name, price, watts, shut-off head, then flow and head repeated (rows of name, price, watts, shut off head, flow, head, …)
 * @param flow Flow wanted (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param lift Lift from the running water level to the outlet (ft, 0 to 328 | m, 0 to 100)
 * @param route Pipes in series: size, length, pipe type, sum of K (rows of size, length, pipe type, sum of k)
 * @param [hours_per_day] Hours a day it runs (0 to 24; blank: 24)
 * @param [days_per_year] Days a year it runs (0 to 366; blank: 365)
 * @param [tariff] Price of a kWh (0 to 1000; blank: 0.17 (US) or 0.30 (SI))
 * @param [years] Years to reckon over (0 to 50; blank: 10)
 * @param [method] Friction method (one of: Hazen-Williams, Darcy-Weisbach; blank: Hazen-Williams)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The ranked pumps.
 * @remarks Formula: duty point of each pump as in DUTY; cost to own = price + years × watts / 1000 × hours × days × tariff. Limits: Every row is judged alone, as one pump at full speed; for pumps in parallel or slowed down use DUTY. The watts are taken as the same at every flow. A pump that runs off the end of its curve is not counted as meeting the flow. Interest, repairs and the pump's life are left out. The tariff taken for a blank is a round guess: type your own.
 * @remarks Caution: Mains electricity near water kills. Every circuit that feeds the pump needs ground-fault protection (GFCI, RCD) and belongs to a licensed electrician.
 * @remarks Source: Duty point as DUTY; money by arithmetic, each yearly cost rounded to the cent
 * @example =RILL.PUMPRANK({"Too weak",150,200,7,1800,2,,,,,,,,;"Serves",400,500,26,1200,25,2400,22.5,3600,18,4800,11,5700,3}, 3500, 8, {2,100,"Sch 40 PVC",6}, 20, 300, 0.15, 10)
 */
export function PUMPRANK(pumps: any[][], flow: any, lift: any, route: any[][], hours_per_day?: any, days_per_year?: any, tariff?: any, years?: any, method?: any, units?: any): any[][] {
  return callFromSheet(declaredPUMPRANK, [pumps, flow, lift, route, hours_per_day, days_per_year, tariff, years, method, units]) as any[][];
}

/**
 * Ranks pipe sizes for a flow: speed, head, and cost of pipe and electricity over the years.
 * @customfunction PIPERANK
 * @helpurl https://localhost:3000/help/piperank.html
 * @param flow Flow wanted (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param lift Lift from the running water level to the outlet (ft, 0 to 328 | m, 0 to 100)
 * @param length Pipe length (ft, 0 to 16400 | m, 0 to 5000)
 * @param pipes Pipes: size, pipe type, price per ft or m (rows of size, pipe type, price)
 * @param [fittings] Fittings: name or K, count (rows of fitting, count; blank: none)
 * @param [efficiency] Efficiency, wire to water: pump × motor × drive (share, more than 0.001, at most 1; blank: 0.35)
 * @param [hours_per_day] Hours a day it runs (0 to 24; blank: 24)
 * @param [days_per_year] Days a year it runs (0 to 366; blank: 365)
 * @param [tariff] Price of a kWh (0 to 1000; blank: 0.17 (US) or 0.30 (SI))
 * @param [years] Years to reckon over (0 to 50; blank: 10)
 * @param [speed_limit] Fastest allowed (ft/s, more than 0, at most 29.5 | m/s, more than 0, at most 9; blank: 5 ft/s | 1.52 m/s)
 * @param [method] Friction method (one of: Hazen-Williams, Darcy-Weisbach; blank: Hazen-Williams)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The ranked pipes.
 * @remarks Formula: cost = price × length + years × P / 1000 × hours × days × tariff; P = ρ g Q TDH / efficiency. Limits: Assumes a pump that gives just the head each pipe needs; real pumps come in steps, so check the choice with DUTY. The speed limit of 5 ft/s (1.5 m/s), the efficiency and the tariff taken for a blank are common practice, no source: type your own.
 * @remarks Source: TDH as in TDH; power as in PUMPWATTS; money by arithmetic, each amount rounded to the cent
 * @example =RILL.PIPERANK(2400, 6, 100, {2,"Sch 40 PVC",2.5}, , 0.4, 20, 300, 0.15, 10)
 */
export function PIPERANK(flow: any, lift: any, length: any, pipes: any[][], fittings?: any[][], efficiency?: any, hours_per_day?: any, days_per_year?: any, tariff?: any, years?: any, speed_limit?: any, method?: any, units?: any): any[][] {
  return callFromSheet(declaredPIPERANK, [flow, lift, length, pipes, fittings, efficiency, hours_per_day, days_per_year, tariff, years, speed_limit, method, units]) as any[][];
}

/**
 * Gives the electric power a pump draws for a flow and head.
 * @customfunction PUMPWATTS
 * @helpurl https://localhost:3000/help/pumpwatts.html
 * @param flow Flow (gph, more than 0, at most 951000 | L/h, more than 0, at most 3600000)
 * @param head Total dynamic head (ft, 0 to 656 | m, 0 to 200)
 * @param efficiency Efficiency, wire to water: pump × motor × drive (share, more than 0.001, at most 1)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The power drawn.
 * @remarks Formula: P = ρ g Q H / efficiency, water at 20 °C (68 °F). Limits: The efficiency is wire to water, pump times motor times drive; small pond pumps reach 0.2 to 0.5.
 * @remarks Caution: Mains electricity near water kills. Every circuit that feeds the pump needs ground-fault protection (GFCI, RCD) and belongs to a licensed electrician.
 * @remarks Source: Hydraulic power, any text; in American units Q H / 3960 is horsepower (gpm, ft)
 * @example =RILL.PUMPWATTS(3600, 20, 0.55)
 */
export function PUMPWATTS(flow: any, head: any, efficiency: any, units?: any): any {
  return callFromSheet(declaredPUMPWATTS, [flow, head, efficiency, units]);
}

/**
 * Gives what the electricity of a pump costs in a year.
 * @customfunction RUNCOST
 * @helpurl https://localhost:3000/help/runcost.html
 * @param watts Power drawn (W, 0 to 100000)
 * @param hours_per_day Hours a day it runs (0 to 24)
 * @param days_per_year Days a year it runs (0 to 366)
 * @param tariff Price of a kWh (0 to 1000)
 * @returns The cost of a year's electricity.
 * @remarks Formula: cost = watts / 1000 × hours a day × days a year × tariff, rounded to the cent. Limits: As good as the watts: a plate shows the most a pump draws, a plug-in meter what it does. Standing charges and seasonal tariffs are left out.
 * @remarks Source: Arithmetic: a kilowatt-hour is 1000 W for an hour
 * @example =RILL.RUNCOST(662.4, 12, 210, 0.16)
 */
export function RUNCOST(watts: any, hours_per_day: any, days_per_year: any, tariff: any): any {
  return callFromSheet(declaredRUNCOST, [watts, hours_per_day, days_per_year, tariff]);
}

/**
 * Estimates the voltage lost in the cable to a pump, for planning only.
 * @customfunction CABLEDROP
 * @helpurl https://localhost:3000/help/cabledrop.html
 * @param amps Current of the pump (A, 0 to 400)
 * @param length Length of the cable, one way (ft, 0 to 6560 | m, 0 to 2000)
 * @param gauge Cable size, such as "12 AWG" or "2.5 mm2" (AWG | mm²)
 * @param volts Supply voltage (V, more than 1, at most 1000)
 * @param [units] Default units of inputs and result ("US" or "SI"; blank: "US")
 * @returns The voltage drop.
 * @remarks Formula: VD = 2 L R I, L one way, R of one warm copper conductor; single phase, power factor 1. Limits: Planning only: cable sizes follow the electrical code, ampacity and installation, which this does not look at. 3 % is the code's advice for a branch circuit (NEC 210.19, informational note), not a rule. Starting currents are higher.
 * @remarks Caution: For planning only; never size a cable by it. Mains electricity near water kills: ground-fault protection (GFCI, RCD) and a licensed electrician decide.
 * @remarks Source: Ohm's law; R: NEC chapter 9, Table 8 (stranded, 75 °C) or IEC 60228, class 2 (from memory), brought to 75 °C
 * @example =RILL.CABLEDROP(8, 150, "12 AWG", 115)
 */
export function CABLEDROP(amps: any, length: any, gauge: any, volts: any, units?: any): any[][] {
  return callFromSheet(declaredCABLEDROP, [amps, length, gauge, volts, units]) as any[][];
}
