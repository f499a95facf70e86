import type { JobRow } from "../facts";
import { TENTH } from "./guess";
import type { OfferedMachine } from "./offers";
import type { Sketch } from "./sketch";
import { about, tape } from "./words";

/** Machines as they are commonly hired, where the book names none with width and lift. Common practice, no source. */
const COMMON_MACHINES: readonly OfferedMachine[] = [
  { name: "a mini excavator of about 4 tons", width: 1.7, lift: 400, usual: true, digs: true },
  { name: "a micro excavator of about 1 ton", width: 1, lift: 120, usual: false, digs: true },
];
/** Way in that is taken while nobody has measured it, m. */
const UNKNOWN_WAY = 1.8;
/** Hours of a person with spade and barrow for one machine hour. Common practice, no source. */
const HAND_PER_MACHINE = 5;
/** How much longer digging takes than in loam. Common practice, no source. */
const DIGGING: Readonly<Record<string, number>> = {
  sand: 0.9,
  loam: 1,
  silt: 1,
  "sandy gravel": 1.15,
  clay: 1.3,
  "blasted rock": 3,
};
/** The row of the usual tasks that is digging. */
const DIG = 1;
/** How far hours may turn out other than calculated: a tenth of jobs each takes less or more. */
const HOURS = { low: 0.88, high: 1.25 } as const;

/** What gets in: the strongest machine the way in lets pass, or hand work, and the hours that follow. */
export function accessRule(sketch: Sketch): { readonly byHand: boolean; readonly lift: number } {
  const { system, typed, job, offers } = sketch;
  const way = typed.accessWidth;
  const machines = offers.machines.length > 0 ? offers.machines : COMMON_MACHINES;
  const passing = machines.filter(({ width, lift }) => lift > 0 && width < (way ?? UNKNOWN_WAY));
  // The usual machine where it passes; else one that digs before a hoist, and of those the strongest.
  const rank = ({ usual, digs, lift }: OfferedMachine): number => (usual ? 2e9 : 0) + (digs ? 1e9 : 0) + lift;
  const best = [...passing].sort((a, b) => rank(b) - rank(a))[0];
  const mine = typed.machineWidth !== undefined || typed.machineLift !== undefined;
  const byHand = !mine && !best?.digs;
  if (best) {
    const why =
      way === undefined ? "The way in is not measured yet" : `Through a way in of ${tape(way, system)} there passes`;
    const reason = `${why}${way === undefined ? ":" : ""} ${best.name}, which lifts ${about("weight", best.lift, system)} at reach.`;
    sketch.assume("machineWidth", () => ({ value: best.width, reason }));
    sketch.assume("machineLift", () => ({ value: best.lift, reason }));
    const mix = sketch.usual.machines ?? [];
    if (!best.usual && best.digs && mix.some(({ name }) => name === best.name)) {
      sketch.assume("machines", () => ({
        value: mix.map((row) => ({ ...row, share: row.name === best.name ? 1 : 0 })),
        reason: `All machine hours are ${best.name}'s: the usual ones do not pass.`,
      }));
    }
  }
  const narrow = way !== undefined && way < 1.5;
  sketch.assume("difficulty", () => {
    const plain = sketch.usual.difficulty ?? 1.15;
    if (byHand) {
      return { value: plain + 0.25, low: plain + 0.1, high: plain + 0.55, reason: "No machine gets in: by hand." };
    }
    if (narrow) {
      return { value: plain + 0.1, low: plain, high: plain + 0.35, reason: "A narrow way in slows everything down." };
    }
    return {
      value: plain,
      low: Math.max(1, plain - 0.1),
      high: plain + (way === undefined ? 0.35 : 0.2),
      reason:
        way === undefined ? "A usual site; the way in is still to be measured." : "A usual site with room to work.",
    };
  });
  const soil = sketch.assume("soil", () => ({
    value: "loam",
    low: "sand",
    high: "clay",
    reason: "Nobody has dug yet: common earth is taken, which may turn out sand or clay.",
  }));
  const tasks = sketch.usual.tasks;
  if (tasks) {
    sketch.assume("tasks", () => {
      const digging = DIGGING[soil] ?? 1;
      const rows = (factor: number): JobRow<"tasks">[] =>
        tasks.map((task, index) => {
          const { hours, machineHours } = task;
          // A rate that nobody has timed is no 0: its task keeps the price back where there is something to do.
          if (hours === undefined || machineHours === undefined)
            return { ...task, hours: undefined, machineHours: undefined };
          const slower = (index === DIG ? digging : 1) * factor;
          return byHand
            ? { ...task, hours: slower * (hours + HAND_PER_MACHINE * machineHours), machineHours: 0 }
            : { ...task, hours: slower * hours, machineHours: slower * machineHours };
        });
      const hand = byHand ? " Where no machine gets in, 5 hours of spade and barrow stand for each machine hour." : "";
      return {
        value: rows(1),
        get low() {
          return rows(HOURS.low);
        },
        get high() {
          return rows(HOURS.high);
        },
        at: (place) => rows((place < 0 ? HOURS.low : HOURS.high) ** (Math.abs(place) / TENTH)),
        reason: `Hours of the usual rates; ${soil} digs ${digging === 1 ? "at the usual rate" : `${digging} times as slowly as common earth`}.${hand}`,
      };
    });
  }
  return { byHand, lift: Math.max(job.handLimit ?? 0, job.machineLift ?? 0) };
}
