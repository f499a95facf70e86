import { unitLabel } from "../../../calc/quantity/measures";
import type { Job, SheetLayout } from "../../layout";
import { said } from "../../layout/said";
import { inCode } from "../takeoff/asks";

/** Lines for Takeoff and Rates; waste is in the areas already. */
export function buying(s: SheetLayout, job: Job): void {
  const supplier = "Pond yard (demo)";
  const area = unitLabel("area", job.system);
  const length = unitLabel("length", job.system);
  const liner = {
    code: "LINER",
    description: "Liner, cut off the rolls on Liner",
    unit: area,
    category: "Liner",
  } as const;
  const thick = job.pick({ US: "mil", SI: "mm" });
  const off = `${said("RollBuyLengths", 2)}&" × "&${said("RollWidths", 2)}&" ${length}"`;
  s.takeoff({
    ...liner,
    quantity: "=LinerBuyArea",
    needs: ["LinerBuyArea"],
    unknownIf: "=LinerGaps>0",
    which: `=LinerThickness&" ${thick}; off the roll "&TEXTJOIN(", ",TRUE,IF(ISNUMBER(RollBuyLengths),IF(RollBuyLengths>0,${off},""),""))`,
  });
  s.rate({
    ...liner,
    supplier,
    price: { US: 0.98, SI: 9.9 },
    priceFormula: '=IF(OR(LinerCost="",LinerBuyArea=""),"",LinerCost/LinerBuyArea)',
    waste: 0,
    // Cut off the roll as the plan says: rounding up to whole areas would price more than the plan costs.
    pack: 0.01,
  });
  const fabric = {
    code: "FABRIC",
    description: "Fabric under and over the liner",
    unit: area,
    category: "Liner",
  } as const;
  const mass = job.pick({ US: "oz/yd²", SI: "g/m²" });
  s.takeoff({
    ...fabric,
    quantity: "=FabricBuyArea",
    needs: ["FabricBuyArea"],
    which: `=FabricMass&" ${mass}, roll "&${said("FabricRollWidth", 2)}&" ${length} wide"`,
    asks: [
      {
        count: 1,
        codes: [`IF(FabricRollWidth="","","FABRIC "&${inCode(`FabricRollWidth*${job.per("size", "length")}`)})`],
      },
    ],
  });
  s.rate({ ...fabric, supplier, waste: 0 });
  const tape = { code: "SEAMTAPE", description: "Seam tape", unit: length, category: "Liner" } as const;
  s.takeoff({ ...tape, quantity: "=SeamTapeLength", needs: ["SeamTapeLength"] });
  s.rate({ ...tape, supplier, price: { US: 1.9, SI: 5.8 }, waste: 0, pack: { US: 25, SI: 7.5 } });
}
