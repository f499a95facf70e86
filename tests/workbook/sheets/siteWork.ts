import { assemble } from "../../../src/workbook/assemble";
import { defineSheet, type Ref } from "../../../src/workbook/layout";
import type { CellValue, WorkbookModel } from "../../../src/workbook/model";
import type { Recalculated } from "../../../src/workbook/recalculate";
import { crew } from "../../../src/workbook/sheets/crew";
import { earth } from "../../../src/workbook/sheets/earth";
import { ground } from "../../../src/workbook/sheets/ground";
import { labor } from "../../../src/workbook/sheets/labor";
import { levels } from "../../../src/workbook/sheets/levels";
import { site } from "../../../src/workbook/sheets/site";
import { stone } from "../../../src/workbook/sheets/stone";
import { calculate } from "../calculated";
import { typeInto } from "../jobs";
import { verdictIn } from "./tried";

/** What Water, Basin, Pump, Liner, Rates and Price would hand over. */
const given = defineSheet({
  name: "Given",
  order: 3,
  build(s, job) {
    s.title("Given", "Stands in for other sheets.");
    const number = (name: string, demo: { US: number; SI: number }): void => {
      s.input({ name, label: name, kind: "number", demo, min: -1e6, max: 1e6, message: "A number." });
    };
    number("Fall", { US: 2.75, SI: 0.95 });
    number("DesignFlow", { US: 3100, SI: 11700 });
    number("TopLipLevel", { US: 102.15, SI: 50.77 });
    number("BasinLength", { US: 9, SI: 2.9 });
    number("BasinWidth", { US: 6.5, SI: 2.1 });
    number("BasinWaterDepth", { US: 2.25, SI: 0.75 });
    number("BasinSideSlope", { US: 0, SI: 0 });
    number("BasinFootprint", { US: 58.5, SI: 6.09 });
    number("FabricUnder", { US: 1, SI: 1 });
    number("FabricOver", { US: 1, SI: 1 });
    number("RimBelowGrade", { US: 3, SI: 75 });
    s.result({ name: "FunctionsRun", label: "The functions run", kind: "text", formula: '="yes"' });
    number("LinerOverlap", { US: 1, SI: 0.3 });
    number("SlackPerDrop", { US: 0.25, SI: 0.08 });
    number("CutRounding", { US: 0.5, SI: 0.1 });
    number("LinerThickness", { US: 45, SI: 1.15 });
    number("FabricMass", { US: 8, SI: 270 });
    number("ModuleCount", { US: 18, SI: 12 });
    number("FloorLevel", { US: 96.9, SI: 48.995 });
    number("FullLevel", { US: 99.15, SI: 49.745 });
    number("RunningLevel", { US: 98.95, SI: 49.69 });
    number("PipeTotalLength", { US: 35, SI: 11 });
    number("PumpCount", { US: 1, SI: 1 });
    number("SpillBoxes", { US: 1, SI: 1 });
    number("CableLength", { US: 20, SI: 6 });
    s.table({
      name: "BasinParts",
      rows: 4,
      columns: ["kind", "length", "width", "depth", "voids"].map((key) => {
        const name = key === "kind" ? "PartKinds" : undefined;
        const kind = key === "kind" ? ("text" as const) : ("number" as const);
        return { key, title: key, kind, ...(name ? { name } : {}), input: { min: 0, max: 100, message: "A part." } };
      }),
      demo: {
        US: [
          ["modules", 6, 3, 2.25, ""],
          ["round well", 2, "", 2.25, ""],
        ],
        SI: [
          ["modules", 1.8, 1.2, 0.75, ""],
          ["round well", 0.6, "", 0.75, ""],
        ],
      },
    });
    number("DeliveredFlow", { US: 3469, SI: 11763 });
    number("DutyHead", { US: 4.8, SI: 1.7 });
    number("BasinHold", { US: 592, SI: 2548 });
    s.input({ name: "PumpName", label: "Pump", kind: "text", demo: "Trial pump", message: "A name." });
    number("MoneyDigits", { US: 2, SI: 2 });
    number("LinerBuyArea", { US: 400, SI: 40 });
    number("CrewHourRate", { US: 40, SI: 42 });
    number("MachineHourRate", { US: 50, SI: 48 });
    s.input({ name: "StoneMachine", label: "Machine", kind: "text", demo: "by hand", message: "A name." });
    const share = (total: string): string =>
      `=IF(COUNT(${total},DropCount)=2,IF([#]<=DropCount,${total}/DropCount,""),"")`;
    const length = { min: 0, max: 100, message: "A length." };
    s.table({
      rows: 2,
      columns: ["MachineRanks", "MachineHourRates", "MachineLifts"].map((name) => {
        return { key: name, title: name, kind: "number", name, input: length } as const;
      }),
    });
    s.table({
      rows: 12,
      columns: [
        {
          key: "no",
          title: "No.",
          kind: "count",
          name: "DropNumbers",
          fixed: Array.from({ length: 12 }, (_, i) => i + 1),
        },
        { key: "drop", title: "Drop", kind: "length", name: "Drops", formula: share("Fall"), input: length },
        { key: "tread", title: "Tread", kind: "length", name: "Treads", formula: share("Run"), input: length },
      ],
    });
    const route = s.table({
      name: "RouteTable",
      rows: 5,
      columns: [
        { key: "size", title: "Size", kind: "size", name: "PipeSizes", input: length },
        { key: "length", title: "Length", kind: "length", name: "PipeLengths", input: length },
        { key: "type", title: "Type", kind: "text", name: "PipeTypes", input: { message: "A type." } },
      ],
      demo: [
        [2, 4, "Sch 40 PVC"],
        [3, 31, ""],
      ],
    });
    const alsoNamed = (name: string, { top, left, bottom }: Ref): void => void s.define(name, top, left, bottom, left);
    alsoNamed("RouteSizes", route.column("size"));
    alsoNamed("RouteLengths", route.column("length"));
    for (const name of ["StreamFabric", "BasinFabric"]) {
      s.table({
        name,
        rows: 1,
        columns: [
          { key: "run", title: "Run", kind: "text", input: { message: "A word." } },
          { key: "strips", title: "Strips", kind: "count", input: length },
          { key: "length", title: "Length", kind: "length", input: length },
        ],
        demo: [["across", 6, 7.5]],
      });
    }
    s.table({
      name: "BasinContents",
      rows: 2,
      columns: [
        { key: "part", title: "Part", kind: "text", input: { message: "A name." } },
        { key: "volume", title: "Volume", kind: "earth", input: length },
      ],
      demo: [
        ["Modules", 2],
        ["Gravel", 2.875],
      ],
    });
    s.table({
      name: "LinerPieces",
      rows: 8,
      columns: [
        { key: "piece", title: "Piece", kind: "text", input: { message: "A name." } },
        { key: "length", title: "Length", kind: "length", input: length },
        { key: "width", title: "Width", kind: "length", input: length },
        { key: "count", title: "Count", kind: "count", input: { ...length, message: "A count." } },
      ],
      demo: [["Basin", 15, 12.5, 1]],
    });
    s.table({
      rows: 2,
      columns: [
        {
          key: "people",
          title: "People",
          kind: "count",
          name: "CrewPeople",
          fixed: job.filled === "demo" ? [1, 2] : [],
        },
      ],
    });
  },
});

/** Values to type into named ranges, from their first cell on; "" empties a cell. */
export type Changes = Readonly<Record<string, CellValue | readonly (readonly CellValue[])[]>>;

/** No shots, no topsoil, one drop at the top: the ground is flat and what is built on it can be worked out by hand. */
export const FLAT: Changes = {
  Shots: Array.from({ length: 11 }, () => ["", "", "", "", "", ""]),
  TopsoilDepth: 0,
  DropCount: 1,
  BermWidth: 5.25,
};

/** The sheets of this file's neighbours, laid out and calculated, with what they hold by name. */
export class SiteWork {
  private constructor(
    readonly model: WorkbookModel,
    private readonly calculated: Recalculated,
  ) {}

  static async make(system: "US" | "SI", filled: "demo" | "blank", changes: Changes = {}): Promise<SiteWork> {
    const model = assemble([site, ground, given, stone, earth, levels, labor, crew], system, filled);
    for (const [name, value] of Object.entries(changes))
      typeInto(model, name, Array.isArray(value) ? value : [[value]]);
    return new SiteWork(model, await calculate(model));
  }

  rows(name: string): CellValue[][] {
    const found = this.calculated.named(name);
    if (!found) throw new Error(`no name ${name}`);
    return found;
  }

  value(name: string): CellValue | undefined {
    return this.rows(name)[0]?.[0];
  }

  number(name: string): number {
    return Number(this.value(name));
  }

  /** Everything a sheet shows. */
  shown(name: string): unknown[] {
    const sheet = this.model.sheets.find((one) => one.name === name);
    if (!sheet) throw new Error(`no sheet ${name}`);
    return [...sheet.rows.values()]
      .flatMap((cells) => [...cells.values()].map(({ formula, value, result }) => (formula ? result : value)))
      .flat(2);
  }

  /** The verdict of the check whose label begins so. */
  verdict(label: string): unknown {
    return verdictIn(this.model.sheets, label);
  }
}

export const isError = (value: unknown): boolean => typeof value === "string" && /^#[A-Z]|^ERROR$|^error$/.test(value);
