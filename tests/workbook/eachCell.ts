import { assemble } from "../../src/workbook/assemble";
import { FACTS } from "../../src/job/facts";
import { yoursName } from "../../src/workbook/yoursName";
import { Engine, type Put } from "../../src/workbook/engine/engine";
import { sourceOf } from "../../src/workbook/engine/source";
import { cellAddress } from "../../src/workbook/layout/address";
import type { WorkbookModel } from "../../src/workbook/model";
import { sheets } from "../../src/workbook/sheets";
import { writeWorkbook } from "../../src/workbook/write";
import { readXlsx } from "hucre/xlsx";

/** What is done to a cell. */
export type Harm = "an error" | "garbage" | "nothing";
export const HARMS: readonly Harm[] = ["an error", "garbage", "nothing"];

/** A cell that a person may type into, or that one of our functions stands in. */
export interface Target {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** What the workbook says of its price after one cell was harmed. */
export interface Outcome {
  readonly cell: string;
  readonly harm: Harm;
  readonly price: number | string;
  /** What the build-up comes to inside. */
  readonly inside: number | string;
  /** Whether anything said that something is amiss: a check, or the price itself. */
  readonly flagged: boolean;
  /** The cell that is said to be wrong first, and the facts that are to be filled in or fixed: "Site: Run". */
  readonly wrong: string;
  readonly toFix: readonly string[];
  /** Whether a check names the cell, its sheet's inputs or what the price misses. */
  readonly named: boolean;
}

const PUT: Readonly<Record<Harm, Put>> = { "an error": { formula: "NA()" }, garbage: "garbage", nothing: undefined };

/** A workbook that is calculated once and harmed cell by cell: each edit runs only what follows from it. */
export class EachCell {
  private readonly before: string;
  /** Puts back what stood in the cell that was harmed last. It is calculated along with the next harm, for half the time. */
  private putBack = (): void => undefined;

  private constructor(
    private readonly engine: Engine,
    private readonly model: WorkbookModel,
    readonly price: number,
  ) {
    this.before = JSON.stringify(this.verdicts());
  }

  static async of(system: "US" | "SI"): Promise<EachCell> {
    const model = assemble(sheets, system, "demo");
    const engine = new Engine(
      sourceOf(await readXlsx(await writeWorkbook(model, { charts: false }), { readStyles: true })),
    );
    engine.runAll();
    const { sheet, row, column } = placeOf(model, "PriceTotal");
    return new EachCell(engine, model, Number(engine.value(sheet, row, column)));
  }

  /** Inputs that the sheets before the price ask for, those that a rule fills too; of lists that grow, the filled rows. */
  inputs(): Target[] {
    return this.cells(
      ({ style, value, formula }) =>
        style.unlocked === true && ((value !== undefined && value !== "") || formula !== undefined),
    );
  }

  /** Cells with one of our functions, on the sheets that the price follows from. */
  functions(): Target[] {
    return this.cells((cell) => cell.formula?.includes("RILL.") === true);
  }

  harm(target: Target, harm: Harm): Outcome {
    const { sheet, row, column } = target;
    this.putBack();
    const kept = this.engine.content(sheet, row, column);
    this.putBack = () => this.engine.set(sheet, row, column, kept);
    this.engine.set(sheet, row, column, PUT[harm]);
    this.engine.run();
    const cell = `${sheet}!${cellAddress(row, column)}`;
    const price = this.named("PriceTotal");
    const verdicts = this.verdicts();
    const amiss = verdicts.filter(({ verdict }) => verdict !== "OK");
    const words = amiss.map(({ cure }) => cure).join(" ");
    return {
      cell,
      harm,
      price,
      inside: this.named("OptionTotals"),
      wrong: String(this.named("FirstWrongPlace")),
      toFix: this.shown("FactMissing").filter((one) => one !== ""),
      flagged: typeof price !== "number" || JSON.stringify(verdicts) !== this.before,
      named: words.includes(cell) || amiss.some(({ where }) => where.startsWith(sheet)),
    };
  }

  /** The cells that single facts are typed into, and what each is called. */
  facts(): (Target & { readonly called: string })[] {
    return Object.values(FACTS).flatMap((fact) => {
      if (fact.type !== "number" || !PRICED.has(fact.sheet)) return [];
      const target = placeOf(this.model, yoursName(fact.name));
      const label = this.model.sheets
        .find(({ name }) => name === target.sheet)
        ?.rows.get(target.row)
        ?.get(1)?.value;
      return [{ ...target, called: `${target.sheet}: ${String(label)}` }];
    });
  }

  private shown(name: string): string[] {
    const found = this.model.names.find((one) => one.name === name);
    if (!found) throw new Error(`there is no name ${name}`);
    const { sheet, area } = found;
    return Array.from({ length: area.bottom - area.top + 1 }, (_, index) =>
      String(this.engine.value(sheet, area.top + index, area.left)),
    );
  }

  private cells(
    wanted: (cell: { value?: unknown; formula?: string; style: { unlocked?: boolean } }) => boolean,
  ): Target[] {
    return this.model.sheets
      .filter(({ name }) => PRICED.has(name))
      .flatMap(({ name, rows }) =>
        [...rows].flatMap(([row, cells]) =>
          [...cells].flatMap(([column, cell]) =>
            wanted(cell as Parameters<typeof wanted>[0]) ? [{ sheet: name, row, column }] : [],
          ),
        ),
      );
  }

  private named(name: string): number | string {
    const { sheet, row, column } = placeOf(this.model, name);
    return this.engine.value(sheet, row, column) as number | string;
  }

  private verdicts(): { verdict: string; where: string; cure: string }[] {
    const checks = this.model.names.find(({ name }) => name === "Checks");
    if (!checks) throw new Error("there are no checks");
    const { area, sheet } = checks;
    return Array.from({ length: area.bottom - area.top + 1 }, (_, index) => {
      const at = (column: number): string => String(this.engine.value(sheet, area.top + index, area.left + column));
      return { verdict: at(4), where: at(5), cure: at(6) };
    });
  }
}

/** Sheets that the price follows from. */
const PRICED = new Set([
  "Site",
  "Ground",
  "Water",
  "Pump",
  "Basin",
  "Liner",
  "Stone",
  "Earth",
  "Hours",
  "Rates",
  "Takeoff",
  "Price",
]);

function placeOf(model: WorkbookModel, name: string): Target {
  const found = model.names.find((one) => one.name === name);
  if (!found) throw new Error(`there is no name ${name}`);
  return { sheet: found.sheet, row: found.area.top, column: found.area.left };
}
