import type { Job, SheetLayout } from "../../layout";
import { said } from "../../layout/said";
import { inCode } from "../takeoff/asks";
import { PARTS } from "./pit";

/** What the pit and all that stands in it hold, and what is bought for it. */
export function contents(s: SheetLayout, job: Job): void {
  s.spill({
    name: "BasinContents",
    header: "function",
    rows: PARTS + 3,
    needs: ["BasinLength", "BasinWidth", "BasinWaterDepth", "GravelVoids"],
    formula: "=RILL.BASINMIX(BasinParts,Units)",
    columns: [{ kind: "text" }, { kind: "earth" }, { kind: "share" }, { kind: "water" }],
  });
  const whole = (column: number, part = "Basin"): string =>
    `INDEX(BasinContents,MATCH("${part}",INDEX(BasinContents,0,1),0),${column})`;
  s.result({
    name: "BasinHold",
    label: "Water the basin holds",
    kind: "water",
    strong: true,
    formula: `=${whole(4)}`,
    needs: ["BasinContents"],
    note: "From the floor to the overflow.",
  });
  s.caution(
    "Treatment is dosed by this volume. Chlorine, copper and other algae killers kill fish, frogs and what drinks here: use only what its label allows " +
      "where wildlife comes, and never let treated water run into a stream or storm drain.",
  );
  s.result({
    name: "VoidFraction",
    label: "Room for water, on average",
    kind: "share",
    formula: `=${whole(3)}`,
    needs: ["BasinContents"],
  });
  s.result({
    name: "TopLayerWater",
    label: "Water above the modules",
    kind: "water",
    formula: `=${whole(4, "Above the modules")}`,
    needs: ["BasinContents"],
    note: "Gravel and wells only: there the level moves most.",
  });
  s.result({
    name: "ModuleVolume",
    label: "Space modules and wells take",
    kind: "earth",
    formula: `=${whole(2)}-${whole(2, "Gravel")}`,
    needs: ["BasinContents"],
    note: "Stone orders the gravel around them.",
  });
  const side = (name: string, label: string, demo: { US: number; SI: number }): void => {
    s.input({
      name,
      label,
      kind: "length",
      demo,
      min: { US: 0.3, SI: 0.1 },
      max: { US: 8, SI: 2.4 },
      message: `${label}, as its supplier gives it; blank where there are no modules.`,
      optional: true,
    });
  };
  side("ModuleLength", "Length of one module", { US: 2, SI: 0.6 });
  side("ModuleWidth", "Width of one module", { US: 1.5, SI: 0.6 });
  side("ModuleHeight", "Height of one module", { US: 0.75, SI: 0.25 });
  s.result({
    name: "ModuleCount",
    label: "Modules",
    source: "by definition: their space over that of one, rounded up",
    kind: "count",
    formula:
      `=IF(COUNTIF(PartKinds,"modules")=0,0,IF(OR(ModuleLength="",ModuleWidth="",ModuleHeight=""),"",ROUNDUP(ROUND(SUMIF(INDEX(BasinContents,0,1),"Modules*",INDEX(BasinContents,0,2))*${job.per("length", "earth", 3)}` +
      "/(ModuleLength*ModuleWidth*ModuleHeight),3),0)))",
    needs: ["BasinContents"],
    note: "By volume: make the block a whole number of modules each way.",
  });
  buying(s);
}

/** Codes of modules and tubs; sides in in or mm, a tub by what it holds. */
function moduleCode({ job }: SheetLayout): string {
  const sides = ["ModuleLength", "ModuleWidth", "ModuleHeight"];
  const codes = sides.map((side) => inCode(`${side}*${job.per("size", "length")}`));
  return `IF(COUNT(${sides.join(",")})<3,"","MODULE "&${codes.join('&"x"&')})`;
}

/** One module in words: "2 × 1.5 × 0.75 ft". */
export function oneModule({ job }: Pick<SheetLayout, "job">): string {
  const sides = ["ModuleLength", "ModuleWidth", "ModuleHeight"].map((side) => `ROUND(${side},2)`);
  return `${sides.join('&" × "&')}&" ${job.pick({ US: "ft", SI: "m" })}"`;
}

function buying(s: SheetLayout): void {
  s.takeoff({
    code: "MODULE",
    description: "Void modules",
    described: `="Void modules"&IF(N(ModuleCount)>0,", "&${oneModule(s)},IF(ModuleCount="",": type the size of one",""))`,
    unit: "each",
    quantity: "=ModuleCount",
    needs: ["ModuleCount"],
    category: "Basin",
    which: `=IF(COUNT(ModuleLength,ModuleWidth,ModuleHeight)<3,"",${said("ModuleLength", 2)}&" × "&${said("ModuleWidth", 2)}&" × "&${said("ModuleHeight", 2)}&" ${s.job.pick({ US: "ft", SI: "m" })}")`,
    asks: [{ count: 1, codes: [moduleCode(s)] }],
  });
  s.takeoff({
    code: "PUMPWELL",
    description: "Pump well with lid",
    unit: "each",
    quantity: '=COUNTIF(PartKinds,"*well")',
    needs: ["BasinHold"],
    category: "Basin",
  });
  s.takeoff({
    code: "TUB",
    description: "Tub",
    unit: "each",
    quantity: '=COUNTIF(PartKinds,"tub")',
    needs: ["BasinHold"],
    category: "Basin",
    asks: [
      {
        rows: PARTS,
        count: 'IF(PartKinds="tub",1,0)',
        codes: [`IF(ISNUMBER(TubVolumes),"TUB "&${inCode("TubVolumes", 0)},"")`],
      },
    ],
  });
  const supplier = "Pond yard (demo)";
  s.rate({
    code: "MODULE",
    description: "Void module",
    unit: "each",
    category: "Basin",
    supplier,
    pack: 1,
  });
  s.rate({
    code: "PUMPWELL",
    description: "Pump well with lid",
    unit: "each",
    category: "Basin",
    supplier,
    price: { US: 187, SI: 169 },
    pack: 1,
  });
  s.rate({
    code: "TUB",
    description: "Tub: a basin that comes in one piece",
    unit: "each",
    category: "Basin",
    supplier,
  });
}
