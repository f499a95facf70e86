import { SETTING_WORDS } from "../setting";
import type { Topics } from "../topics";
import type { Job } from "../facts";
import { toSi } from "../facts/units";
import { seamedPieces } from "../liner";
import { isKnown, known } from "../derived";
import { total } from "../rows";
import { atLeast, atMost, checksOn, there, type Check } from "./check";

export function linerChecks(job: Job, { liner }: Topics): Check[] {
  const check = checksOn("Liner");
  const { system, fabricUnder, linerThickness } = job;
  const unseamed = (): number => (job.seamLap === undefined ? seamedPieces(liner) : 0);
  const thinnest = toSi("thickness", { US: 45, SI: 1.1 }[system], system);
  return [
    check({
      label: "Pieces wider than every roll, no seam allowed",
      needs: [liner.pieces.find(({ length }) => isKnown(length)), job.rolls.find(({ width }) => width !== undefined)],
      value: unseamed,
      limit: () => 0,
      ok: () => unseamed() === 0,
      cure: "Buy a wider roll, or allow a seam by giving its lap.",
      place: "LinerRolls",
      kind: "count",
    }),
    check({
      label: "Waste of the liner",
      needs: [liner.wasteShare],
      value: () => there(liner.wasteShare),
      limit: () => 0.25,
      ok: () => atMost(there(liner.wasteShare), 0.25),
      cure: "Look for another roll width, or join small skirts out of the rest (rule of thumb).",
      place: "LinerRolls",
      kind: "share",
      weight: "look",
    }),
    check({
      label: "Fabric under the liner",
      needs: [fabricUnder],
      value: () => fabricUnder,
      limit: "at least 1",
      ok: () => there(fabricUnder) >= 1,
      cure: "Lay at least one layer of fabric under the liner (rule of thumb).",
      place: "FabricUnder",
      kind: "count",
      weight: "look",
    }),
    check({
      label: "Thickness of the liner",
      needs: [linerThickness],
      value: () => linerThickness,
      limit: { US: "at least 45 mil", SI: "at least 1.1 mm" }[system],
      ok: () => atLeast(there(linerThickness), thinnest),
      cure: {
        US: "45 mil EPDM is the usual liner under stone (rule of thumb).",
        SI: "1.15 mm EPDM is the usual liner under stone (rule of thumb).",
      }[system],
      place: "LinerThickness",
      kind: "thickness",
      weight: "look",
    }),
    check({
      label: "People to carry a piece",
      needs: [liner.carriers],
      value: () => there(liner.carriers),
      limit: "at most 4",
      ok: () => there(liner.carriers) <= 4,
      cure: "Plan for a machine or more people, or unroll the piece where it is used.",
      place: "LinerPieces",
      kind: "count",
      weight: "look",
    }),
  ];
}

/** Laid flat, a stone is about two thirds as high as its mean size. Common practice, no source. */
const SIZE_PER_HEIGHT = 1.5;

/** What helps where no machine sets the heaviest stone. */
export const STONE_MACHINE_CURES = {
  noLift: "Type on Rates what your machines lift.",
  noWay: "Measure the way in.",
  none: "Use smaller stones, a wider way in, or rent a machine.",
} as const;

export function stoneChecks(job: Job, { water, stone, labor }: Topics): Check[] {
  const check = checksOn("Stone");
  const { system, handLimit, machineLift, bankHeight, coverDepth, rimBelowGrade, boulderSizes } = job;
  const anyLift = machineLift !== undefined || job.machines.some(({ lift }) => lift !== undefined);
  const anySize = boulderSizes.find(({ size, share }) => size !== undefined || share !== undefined);
  const shares = total(boulderSizes.map(({ share = 0 }) => share));
  const biggest = Math.max(0, ...boulderSizes.map(({ size = 0 }) => size));
  const drops = water.drops.filter(isKnown);
  const tallest = (): number => SIZE_PER_HEIGHT * Math.max(...drops, there(bankHeight));
  const near = toSi("size", { US: 0.5, SI: 13 }[system], system);
  return [
    check({
      label: "Shares of the sizes add up",
      needs: [anySize],
      value: () => shares,
      limit: "99.5–100.5%",
      ok: () => atMost(Math.abs(shares - 1), 0.005),
      cure: "Change the shares until they make 100%.",
      place: "StoneMix",
      kind: "share",
    }),
    check({
      label: "Heaviest stone for the machine",
      needs: [stone.heaviest, handLimit],
      value: () => there(stone.heaviest),
      limit: () =>
        known(labor.setting.machine)?.lift ??
        (anyLift || there(stone.heaviest) <= there(handLimit)
          ? Math.max(there(handLimit), machineLift ?? 0)
          : "not known"),
      ok: () =>
        isKnown(labor.setting.machine) || atMost(there(stone.heaviest), Math.max(there(handLimit), machineLift ?? 0)),
      cure: anyLift
        ? labor.setting.by === SETTING_WORDS.unknown
          ? STONE_MACHINE_CURES.noWay
          : STONE_MACHINE_CURES.none
        : STONE_MACHINE_CURES.noLift,
      place: "MachineLifts",
      kind: "weight",
      weight: "look",
      stopIf: () => anyLift,
    }),
    check({
      label: "Biggest stone in drops and banks",
      needs: [anySize, drops[0], bankHeight],
      value: () => biggest,
      limit: tallest,
      ok: () => atMost(biggest, tallest()),
      cure: "Higher than drop and bank even laid flat: take smaller ones (rule of thumb).",
      place: "StoneMix",
      kind: "size",
      weight: "look",
    }),
    check({
      label: "Gravel over the basin, to grade",
      needs: [coverDepth, rimBelowGrade],
      value: () => there(coverDepth) - there(rimBelowGrade),
      limit: { US: "within ½ in", SI: "within 13 mm" }[system],
      ok: () => atMost(Math.abs(there(coverDepth) - there(rimBelowGrade)), near),
      cure: "It fills from the rim up to finished grade: more heaps up, less leaves the rim bare.",
      place: "CoverDepth",
      kind: "size",
      weight: "look",
    }),
  ];
}

export function earthChecks(job: Job, { earth }: Topics): Check[] {
  const check = checksOn("Earth");
  const { system, accessWidth, machineWidth, groundwaterDepth, bermSlope } = job;
  const { pitDepth, fillNeed } = earth;
  const clear = toSi("length", { US: 0.5, SI: 0.15 }[system], system);
  const deepest = (): number => Math.max(there(pitDepth), there(job.trenchDepth));
  const isDeep = {
    US: () => atLeast(deepest(), toSi("length", 4, "US")),
    SI: () => !atMost(deepest(), 1.25),
  };
  const isFlooded = (): boolean =>
    groundwaterDepth !== undefined && !atLeast(groundwaterDepth, known(pitDepth) ?? -Infinity);
  return [
    check({
      label: "Way in for the widest machine",
      needs: [accessWidth, machineWidth],
      value: () => there(accessWidth) - there(machineWidth),
      limit: "more than 0",
      ok: () => !atMost(there(accessWidth), there(machineWidth)),
      cure: "Take a smaller machine, have a fence opened, or plan hand work.",
      place: "MachineWidth",
      kind: "length",
    }),
    check({
      label: "Depth of pit and trench",
      needs: [pitDepth, job.trenchDepth],
      value: deepest,
      limit: { US: "less than 4 ft", SI: "at most 1.25 m" }[system],
      ok: () => !isDeep[system](),
      cure: {
        US: "Slope, shore or shield the sides before anyone goes in, and set a ladder (29 CFR 1926.652(a)(1), .651(c)(2)).",
        SI: "Slope or shore the sides before anyone goes in, and set a ladder (DIN 4124, from memory: from 1.25 m).",
      }[system],
      place: "BasinWaterDepth",
      kind: "length",
      weight: "look",
    }),
    check({
      label: "Pit stays above the groundwater",
      needs: [groundwaterDepth, pitDepth],
      value: () => there(groundwaterDepth) - there(pitDepth),
      limit: () => clear,
      ok: () => atLeast(there(groundwaterDepth), there(pitDepth) + clear),
      cure: isFlooded()
        ? "Water stands in the pit: raise the basin, or drain the ground and type the depth the drain keeps."
        : "Near the pit's bottom it softens the walls: go wider and shallower, or drain the ground (rule of thumb).",
      place: "GroundWaterDepth",
      kind: "length",
      weight: "look",
      stopIf: isFlooded,
    }),
    check({
      label: "Slope of the berm",
      needs: [bermSlope],
      value: () => bermSlope,
      limit: "at least 1.5",
      ok: () => atLeast(there(bermSlope), 1.5),
      cure: "Flatten the sides, or hold them with stone: loose earth does not stand steeper (rule of thumb).",
      place: "BermSlope",
      kind: "factor",
      weight: "look",
    }),
    check({
      label: "Spoil is enough for berm and backfill",
      needs: [fillNeed],
      value: () => there(fillNeed),
      limit: () => 0,
      ok: () => there(fillNeed) === 0,
      cure: "Fill has to be brought, and Takeoff prices it; or lower the berm, or take the basin deeper.",
      place: "BermGround",
      kind: "earth",
      weight: "look",
    }),
  ];
}
