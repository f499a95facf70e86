import type { AskSpec, Job, RateLine, SheetLayout } from "../../layout";
import { listOf } from "../../layout/conditions";
import { saidPercent } from "../../layout/said";
import { inCode } from "../takeoff/asks";
import { MIX_ROWS } from "./pieces";

/** Weights as they can be ordered: volume, bags, pallets, truckloads. */
export function order(s: SheetLayout, job: Job): void {
  s.section("To order");
  s.input({
    name: "BagWeight",
    label: "One bag holds",
    kind: "weight",
    min: 1,
    max: { US: 5000, SI: 2500 },
    message: "Weight of stone in one bag.",
  });
  s.input({
    name: "PalletLoad",
    label: "One pallet carries",
    kind: "load",
    min: 0.1,
    max: 5,
    message: "Weight of stone on one pallet.",
  });
  s.input({
    name: "TruckPayload",
    label: "One truck carries",
    kind: "load",
    min: 0.25,
    max: 40,
    message: "Payload of the truck that delivers stone, by weight.",
  });
  const perLoad = job.per("weight", "load");
  const [small, cubes] = [job.per("size", "length"), job.per("length", "earth", 3)];
  const names = ["GravelTons", "BasinStoneTons", "BoulderTons", "LipStoneTons"];
  const volumes = [
    `(BedGravelArea*BedGravelDepth+BasinFootprint*CoverDepth)/${small}/${cubes}*(1+StoneWaste)`,
    "BasinStoneVolume*(1+StoneWaste)",
  ];
  s.result({
    name: "LipStoneTons",
    label: "Lip stones together",
    source: "by definition: number × weight",
    formula: `=LipStoneCount*LipStoneWeight/${perLoad}`,
    kind: "load",
    needs: ["LipStoneCount", "LipStoneWeight"],
  });
  /** As many as it takes, once it is known what one holds. */
  const whole = (load: string, each: string): string => `IF(COUNT(${each})=0,"",ROUNDUP(ROUND(${load}/${each},6),0))`;
  const known = (text: string): string => `=IF(ISNUMBER([tons]),${text},"")`;
  const tons = listOf(names);
  s.table({
    name: "StoneOrder",
    rows: names.length,
    columns: [
      {
        key: "what",
        title: "Stone",
        kind: "text",
        fixed: ["Gravel", "Stone around modules", "Boulders", "Lip stones"],
      },
      {
        key: "tons",
        title: "Weight",
        kind: "load",
        whole: true,
        formula: `=IF(ISNUMBER(${tons}),${tons},"")`,
      },
      {
        key: "volume",
        title: "Loose",
        source: "by definition: area × depth and its share for waste",
        kind: "earth",
        whole: volumes.length,
        formula: known(listOf(volumes)),
      },
      {
        key: "bags",
        title: "or bags",
        source: "by definition: weight over what one holds, rounded up",
        kind: "count",
        whole: volumes.length,
        formula: known(whole(`[tons]*${perLoad}`, "BagWeight")),
      },
      {
        key: "pallets",
        title: "or pallets",
        source: "by definition: weight over what one holds, rounded up",
        kind: "count",
        whole: true,
        formula: known(whole("[tons]", "PalletLoad")),
      },
      {
        key: "loads",
        title: "Truckloads",
        source: "by definition: weight over payload",
        kind: "number",
        format: "0.00",
        whole: true,
        formula: `=IF(ISNUMBER([tons])*COUNT(TruckPayload),[tons]/TruckPayload,"")`,
      },
    ],
  });
  s.result({
    name: "StoneTruckloads",
    label: "Truckloads, each stone by itself",
    source: "by definition: weight over payload, rounded up for each stone",
    formula: `=${names
      .slice(0, 2)
      .map((name) => `ROUNDUP(ROUND(${name}/TruckPayload,6),0)`)
      .join("+")}+ROUNDUP(ROUND((BoulderTons+LipStoneTons)/TruckPayload,6),0)`,
    kind: "count",
    unit: "loads",
    needs: [...names, "TruckPayload"],
    strong: true,
    note: "Boulders and lip stones share a truck.",
  });
}

/** Stone of a grade, or of any. */
function gradeAsk(code: string, kind: string): AskSpec[] {
  return [{ count: 1, codes: [`IF(${kind}="","","${code} "&${kind})`, `IF(${kind}="","","${code}")`] }];
}

const [MIX_SIZES, MIX_SHARES] = ["INDEX(StoneMix,0,1)", "INDEX(StoneMix,0,2)"];

/** Boulders of each size, of the rock or of any. */
function boulderAsk(): AskSpec {
  const code = `[line]&" "&${inCode(MIX_SIZES)}`;
  return {
    rows: MIX_ROWS,
    count: `IF(${MIX_SIZES}="",0,IF(ISTEXT(${MIX_SHARES}),0,${MIX_SHARES}+0))`,
    codes: [`IF(${MIX_SIZES}="","",TRIM(${code}&" "&RockKind))`, `IF(${MIX_SIZES}="","",${code})`],
  };
}

/** Lip stones by their sides, of the rock or of any. */
function lipStoneAsk(): AskSpec[] {
  const sides = ["LipStoneLength", "LipStoneWidth", "LipStoneHeight"];
  const code = `"LIPSTONE "&${sides.map((side) => inCode(side)).join('&"x"&')}`;
  const unknown = `OR(COUNT(${sides.join(",")})<3,RockKind="")`;
  return [{ count: 1, codes: [`IF(${unknown},"",${code}&" "&RockKind)`, `IF(${unknown},"",${code})`] }];
}

/** Lines for Takeoff and Rates. */
export function contribute(s: SheetLayout, job: Job): void {
  const ton = job.pick({ US: "ton", SI: "t" });
  const quarry = {
    supplier: job.pick({ US: "Kettle Ridge Quarry (demo)", SI: "Steinbruch Hagelkamm (demo)" }),
    pack: 0.5,
  };
  const carrier = {
    supplier: job.pick({ US: "Larkspur Hauling (demo)", SI: "Fuhrbetrieb Eschweg (demo)" }),
    pack: 1,
    cost: "hauling" as const,
  };
  const add = (
    code: string,
    description: string,
    unit: string,
    quantity: string,
    rate: Pick<RateLine, "price" | "supplier" | "pack" | "cost">,
    which?: string,
    asks?: readonly AskSpec[],
  ): void => {
    const told = { ...(which === undefined ? {} : { which }), ...(asks === undefined ? {} : { asks }) };
    s.takeoff({ code, description, unit, quantity: `=${quantity}`, category: "Stone", needs: [quantity], ...told });
    // Waste is in the tons already.
    s.rate({ code, description, unit, category: "Stone", waste: 0, ...rate });
  };
  const size = job.pick({ US: "in", SI: "mm" });
  const part = `", "&${saidPercent("[counts]")}&" "&${MIX_SIZES}&" ${size}"`;
  add(
    "GRAVEL",
    "Gravel for bed and basin top",
    ton,
    "GravelTons",
    quarry,
    '=GravelKind&""',
    gradeAsk("GRAVEL", "GravelKind"),
  );
  add(
    "BASINSTONE",
    "Stone around void modules",
    ton,
    "BasinStoneTons",
    quarry,
    '=BasinStoneKind&""',
    gradeAsk("BASINSTONE", "BasinStoneKind"),
  );
  add(
    "BOULDER",
    "Boulders, mixed sizes",
    ton,
    "BoulderTons",
    quarry,
    `=RockKind&TEXTJOIN("",TRUE,IF([counts]>0,${part},""))`,
    [boulderAsk()],
  );
  add(
    "LIPSTONE",
    "Lip stones",
    "each",
    "LipStoneCount",
    { ...quarry, pack: 1 },
    `=RockKind&", "&LipStoneLength&" × "&LipStoneWidth&" × "&LipStoneHeight&" ${size}"`,
    lipStoneAsk(),
  );
  add("STONEHAUL", "Delivery of stone", "load", "StoneTruckloads", { ...carrier, price: { US: 115, SI: 105 } });
}
