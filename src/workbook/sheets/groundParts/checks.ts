import type { Job, SheetLayout } from "../../layout";

export function checks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Way in for the widest machine",
    value: "=AccessWidth",
    limit: "=MachineWidth",
    ok: "AccessWidth>MachineWidth",
    cure: "Take a smaller machine, have a fence opened, or plan hand work.",
    fix: "MachineWidth",
    kind: "length",
    needs: ["AccessWidth", "MachineWidth"],
  });
  s.check({
    label: "Depth of the pit",
    value: "=PitDepth",
    limit: job.system === "US" ? "less than 5 ft" : "at most 1.25 m",
    ok: job.pick({ US: "PitDepth<5", SI: "PitDepth<=1.25" }),
    cure: job.pick({
      US: "Slope or shore the sides as local rules ask before anyone goes in (29 CFR 1926.652: from 5 ft), and set a ladder.",
      SI: "Slope or shore the sides as local rules ask before anyone goes in (DIN 4124, from memory: from 1.25 m), and set a ladder.",
    }),
    fix: "BasinWaterDepth",
    kind: "length",
    weight: "look",
    needs: ["PitDepth"],
  });
  const clear = job.pick({ US: 0.5, SI: 0.15 });
  s.check({
    label: "Pit stays above the ground water",
    value: "=GroundWaterDepth",
    limit: `=PitDepth+${clear}`,
    ok: `GroundWaterDepth>=PitDepth+${clear}`,
    cure: "It softens pit walls and floats an empty liner: go wider and shallower, or drain the ground (common practice, no source).",
    cureNow: `IF(GroundWaterDepth<PitDepth,"Water stands in the pit: raise the basin, or drain the ground and type the depth the drain keeps.","Near the pit's bottom it softens the walls: go wider and shallower, or drain the ground (common practice, no source).")`,
    fix: "GroundWaterDepth",
    kind: "length",
    weight: "look",
    stopIf: "GroundWaterDepth<PitDepth",
    needs: ["GroundWaterDepth", "PitDepth"],
  });
  s.check({
    label: "Slope of the berm",
    value: "=BermSlope",
    limit: "at least 1.5",
    ok: "BermSlope>=1.5",
    cure: "Flatten the sides, or hold them with stone: loose earth does not stand steeper (common practice, no source).",
    fix: "BermSlope",
    kind: "factor",
    weight: "look",
    needs: ["BermSlope"],
  });
  s.check({
    label: "Spoil is enough for berm and backfill",
    value: "=FillNeed",
    limit: 0,
    ok: "FillNeed=0",
    cure: "Fill has to be brought, and Takeoff prices it; or lower the berm, or take the basin deeper.",
    fix: "BermHeight",
    kind: "earth",
    weight: "look",
    needs: ["FillNeed"],
  });
}

/** Lines for Takeoff and Rates. */
export function contribute(s: SheetLayout, job: Job): void {
  const volume = job.pick({ US: "yd³", SI: "m³" });
  const supplier = job.pick({ US: "Larkspur Haulage (demo)", SI: "Fuhrbetrieb Eschweg (demo)" });
  const add = (
    code: string,
    description: string,
    unit: string,
    quantity: string,
    price: { US: number; SI: number },
    pack: number,
    cost: "material" | "haulage" = "material",
  ): void => {
    s.takeoff({ code, description, unit, quantity: `=${quantity}`, category: "Ground", needs: [quantity] });
    s.rate({ code, description, unit, category: "Ground", cost, supplier, price, pack, waste: 0 });
  };
  add("SPOIL", "Spoil taken away and tipped", "load", "SpoilLoads", { US: 210, SI: 145 }, 1, "haulage");
  add("FILL", "Fill brought for berm and backfill", volume, "FillNeed", { US: 27, SI: 24 }, 0.5);
  add("BEDDING", "Bedding sand under the basin", volume, "BeddingVolume", { US: 41, SI: 36 }, 0.5);
}
