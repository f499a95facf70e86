import type { Job, SheetLayout } from "../../layout";

/** 29 CFR 1926.651(c)(2): a ladder from 4 ft; .652(a)(1): protection from 5 ft, and below it unless a competent person sees no danger. */
const LADDER =
  "Set a ladder; slope or shore unless a competent person sees no danger of cave-in (29 CFR 1926.651(c)(2), .652(a)(1)).";
const SHORE =
  "Slope, shore or shield the sides before anyone goes in, and set a ladder (29 CFR 1926.652(a)(1), .651(c)(2)).";
const SHORE_SI = "Slope or shore it and set a ladder (DIN 4124, from memory).";

export function checks(s: SheetLayout, job: Job): void {
  const deepest = "MAX(N(PitDepth),N(TrenchDepth))";
  s.check({
    label: "Way in for the widest machine",
    value: "=AccessWidth-MachineWidth",
    sign: "more than",
    limit: 0,
    over: "spare",
    cure: "Take a smaller machine, have a fence opened, or plan hand work.",
    fix: "MachineWidth",
    kind: "length",
    needs: ["AccessWidth", "MachineWidth"],
  });
  s.check({
    label: "Depth of pit and trench",
    source: {
      US: "29 CFR 1926.651(c)(2): a way out from 4 ft of depth",
      SI: "DIN 4124: upright sides up to 1.25 m (from memory)",
    },
    value: `=${deepest}`,
    sign: job.pick({ US: "less than", SI: "at most" }),
    limit: job.pick({ US: 4, SI: 1.25 }),
    cure: job.pick({ US: SHORE, SI: SHORE_SI }),
    ...(job.system === "US" ? { cureIf: { when: "[value]<5", cure: LADDER } } : {}),
    fix: "BasinWaterDepth",
    kind: "length",
    weight: "look",
    needs: ["PitDepth", "TrenchDepth"],
  });
  s.check({
    label: "Pit stays above the groundwater",
    source: "common practice, no source",
    value: "=GroundWaterDepth-PitDepth",
    sign: "at least",
    limit: job.pick({ US: 0.5, SI: 0.15 }),
    cure: "It softens pit walls and floats an empty liner: go wider and shallower, or drain the ground (rule of thumb).",
    cureStop: "Water stands in the pit: raise the basin, or drain the ground and type the depth the drain keeps.",
    fix: "GroundWaterDepth",
    kind: "length",
    weight: "look",
    stopIf: "GroundWaterDepth<PitDepth",
    needs: ["GroundWaterDepth", "PitDepth"],
  });
  s.check({
    label: "Slope of the berm",
    source: "common practice, no source",
    value: "=BermSlope",
    sign: "at least",
    limit: 1.5,
    cure: "Flatten the sides, or hold them with stone: loose earth does not stand steeper (rule of thumb).",
    fix: "BermSlope",
    kind: "factor",
    over: "to 1",
    weight: "look",
    needs: ["BermSlope"],
  });
  s.check({
    label: "Spoil is enough for berm and backfill",
    value: "=FillNeed",
    limit: 0,
    cure: "Fill has to be brought, and Takeoff prices it; or lower the berm, or take the basin deeper.",
    fix: "BermGround",
    kind: "earth",
    weight: "look",
    needs: ["FillNeed"],
  });
}

/** Lines for Takeoff and Rates. */
export function contribute(s: SheetLayout, job: Job): void {
  const volume = job.pick({ US: "yd³", SI: "m³" });
  const supplier = job.pick({ US: "Larkspur Hauling (demo)", SI: "Fuhrbetrieb Eschweg (demo)" });
  const add = (
    code: string,
    description: string,
    unit: string,
    quantity: string,
    price: { US: number; SI: number },
    pack: number,
    cost: "material" | "hauling" = "material",
  ): void => {
    s.takeoff({ code, description, unit, quantity: `=${quantity}`, category: "Ground", needs: [quantity] });
    s.rate({ code, description, unit, category: "Ground", cost, supplier, price, pack, waste: 0 });
  };
  add("SPOIL", "Spoil taken away and dumped", "load", "SpoilLoads", { US: 210, SI: 145 }, 1, "hauling");
  add("FILL", "Fill brought for berm and backfill", volume, "FillNeed", { US: 27, SI: 24 }, 0.5);
  add("BEDDING", "Bedding sand under the basin", volume, "BeddingVolume", { US: 41, SI: 36 }, 0.5);
}
