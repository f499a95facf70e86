import { toInside } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Labor, Machine } from "../types";

/** Share of the wage; the first of the US lines is the law's, the rest is our own invention. */
const BURDEN: Readonly<Record<UnitSystem, readonly (readonly [string, number])[]>> = {
  US: [
    ["Social security, Medicare (employer)", 0.0765],
    ["Unemployment insurance", 0.024],
    ["Workers' compensation insurance", 0.088],
    ["Liability insurance", 0.031],
    ["Paid leave and holidays", 0.064],
    ["Health and pension", 0.057],
    ["Small tools and clothing", 0.018],
  ],
  SI: [
    ["Social insurance, employer's part", 0.212],
    ["Accident insurance", 0.037],
    ["Liability insurance", 0.019],
    ["Paid leave and holidays", 0.146],
    ["Sick pay", 0.034],
    ["Pension", 0.028],
    ["Small tools and clothing", 0.017],
  ],
};

/** Role, wage an hour, people on the usual crew; wages of our own invention. */
const WAGES: Readonly<Record<UnitSystem, readonly (readonly [string, number, number])[]>> = {
  US: [
    ["Foreman", 37.5, 1],
    ["Stone setter", 31.25, 1],
    ["Laborer", 23.4, 1],
    ["Machine operator", 33.8, 0],
  ],
  SI: [
    ["Foreman", 29.4, 1],
    ["Stone setter", 24.6, 1],
    ["Labourer", 18.7, 1],
    ["Machine operator", 26.1, 0],
  ],
};

/** Task, unit, hours of one person and machine hours for one unit; rates of our own invention. */
const RATES: Readonly<Record<UnitSystem, readonly (readonly [string, string, number, number])[]>> = {
  US: [
    ["Set out and protect the site", "job", 3.5, 0],
    ["Dig pit, trench and bed", "yd³", 0.35, 0.28],
    ["Build the berm in layers", "yd³", 0.55, 0.22],
    ["Load spoil", "yd³", 0.15, 0.12],
    ["Fabric and liner", "ft²", 0.014, 0],
    ["Void modules and pump wells", "each", 0.3, 0],
    ["Tubs, set level on their bed", "each", 3.2, 0.6],
    ["Pipe", "ft", 0.11, 0],
    ["Cable along the trench", "ft", 0.03, 0],
    ["Spillway boxes, set level", "each", 1.6, 0],
    ["Boulders of drops and banks", "ton", 1.9, 0.75],
    ["Lip stones, leveled and foamed", "each", 1.4, 0.4],
    ["Gravel and stone around modules", "ton", 0.8, 0.2],
    ["Pumps, plumbing and start-up", "each", 5, 0],
    ["Clean up and hand over", "job", 4.5, 0.5],
  ],
  SI: [
    ["Set out and protect the site", "job", 3.5, 0],
    ["Dig pit, trench and bed", "m³", 0.45, 0.36],
    ["Build the berm in layers", "m³", 0.7, 0.3],
    ["Load spoil", "m³", 0.2, 0.15],
    ["Fabric and liner", "m²", 0.15, 0],
    ["Void modules and pump wells", "each", 0.3, 0],
    ["Tubs, set level on their bed", "each", 3.2, 0.6],
    ["Pipe", "m", 0.36, 0],
    ["Cable along the trench", "m", 0.1, 0],
    ["Spillway boxes, set level", "each", 1.6, 0],
    ["Boulders of drops and banks", "t", 2.1, 0.8],
    ["Lip stones, set level and foamed", "each", 1.4, 0.4],
    ["Gravel and stone around modules", "t", 0.9, 0.2],
    ["Pumps, plumbing and start-up", "each", 5, 0],
    ["Clean up and hand over", "job", 4.5, 0.5],
  ],
};

/**
 * Pipe up to a size, in or mm, lip stones up to a weight, lb or kg, and tubs up to a volume, gal or L, each with times the
 * usual hours, tubs with times the usual machine hours as well: the small ones are carried. Then boulders up to the weight
 * of one, with times the usual hours of a load. All of our own invention.
 */
type SizeRow = readonly [number, number, number, number, number, number, number, number, number];
const SIZES: Readonly<Record<UnitSystem, readonly SizeRow[]>> = {
  US: [
    [2, 0.85, 150, 0.65, 100, 0.6, 0, 10, 1.5],
    [3, 1, 350, 1, 180, 0.8, 0, 300, 1],
    [4, 1.25, 800, 1.5, 300, 1, 1, 800, 1.1],
    [6, 1.8, 1600, 2.3, 500, 1.35, 1.4, 2000, 1.3],
    [8, 2.5, 4000, 3.6, 1000, 2.1, 2.5, 5000, 1.6],
  ],
  SI: [
    [63, 0.85, 75, 0.65, 380, 0.6, 0, 4, 1.5],
    [90, 1, 160, 1, 680, 0.8, 0, 140, 1],
    [110, 1.25, 360, 1.5, 1150, 1, 1, 360, 1.1],
    [160, 1.8, 730, 2.3, 1900, 1.35, 1.4, 900, 1.3],
    [225, 2.5, 1800, 3.6, 3800, 2.1, 2.5, 2300, 1.6],
  ],
};

/** Name, then for an hour hire, fuel and upkeep, share of hours; narrowest way, lift, reach: ft and lb, m and kg. */
type MachineRow = readonly [string, number, number, number, number, number, number, number];

/** Machines of our own invention: no maker's load chart. */
const MACHINES: Readonly<Record<UnitSystem, readonly MachineRow[]>> = {
  US: [
    ["Mini excavator, 1.8 ton (invented)", 29, 5.9, 4.1, 0, 3.5, 520, 8],
    ["Mini excavator, 4 ton (invented)", 41, 9.8, 6.2, 0.7, 6, 1450, 10],
    ["Excavator, 8 ton (invented)", 68, 17.5, 11, 0, 8, 3600, 13],
    ["Skid steer loader (invented)", 33, 8.4, 4.9, 0.3, 6, 1900, 4],
    ["Stone cart and tripod hoist (invented)", 6.5, 0, 0.8, 0, 3, 300, 3],
    ["Plate compactor (invented)", 9.5, 1.6, 1.1, 0, 2.5, 0, 0],
    ["Dump trailer (invented)", 12.5, 0, 2.4, 0, 7.5, 0, 0],
  ],
  SI: [
    ["Mini excavator, 1.6 t (invented)", 26, 5.2, 3.7, 0, 1.1, 230, 2.4],
    ["Mini excavator, 3.5 t (invented)", 36, 8.7, 5.6, 0.7, 1.8, 640, 3],
    ["Excavator, 8 t (invented)", 61, 15.8, 10, 0, 2.4, 1600, 4],
    ["Wheel loader, 1 t (invented)", 31, 7.9, 4.7, 0.3, 1.9, 850, 1.2],
    ["Stone cart and tripod hoist (invented)", 5.8, 0, 0.7, 0, 0.9, 135, 0.9],
    ["Plate compactor (invented)", 8.5, 1.5, 1.2, 0, 0.8, 0, 0],
    ["Tipping trailer (invented)", 11, 0, 2.1, 0, 2.3, 0, 0],
  ],
};

const invented = { invented: true } as const;

export function shippedLabor(system: UnitSystem) {
  return {
    burden: BURDEN[system].map(([line, share]) => ({ line, share, ...invented })),
    wages: WAGES[system].map(([role, wage, people]) => ({ role, wage, people, ...invented })),
    rates: RATES[system].map(([task, unit, hours, machineHours]) => ({ task, unit, hours, machineHours, ...invented })),
    sizes: SIZES[system].map(([pipe, pipeTimes, stone, stoneTimes, tub, ...others]) => ({
      pipe: toInside("size", pipe, system),
      pipeTimes,
      stone: toInside("weight", stone, system),
      stoneTimes,
      tub: toInside("water", tub, system),
      tubTimes: others[0],
      tubMachineTimes: others[1],
      boulder: toInside("weight", others[2], system),
      boulderTimes: others[3],
      ...invented,
    })),
    dayHours: 8,
    handLimit: toInside("weight", system === "US" ? 50 : 23, system),
  } satisfies Labor;
}

export function shippedMachines(system: UnitSystem): Machine[] {
  return MACHINES[system].map(([name, own, fuel, upkeep, share, width, lift, reach]) => ({
    name,
    own,
    fuel,
    upkeep,
    share,
    width: toInside("length", width, system),
    ...(lift > 0
      ? { lift: toInside("weight", lift, system), reach: toInside("length", reach, system) }
      : { lift: undefined, reach: undefined }),
    ...invented,
  }));
}
