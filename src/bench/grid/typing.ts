import type { ICellData, Nullable, Univer } from "@univerjs/core";
import { BaseDataValidator } from "@univerjs/data-validation";
import { AFTER_CELL_EDIT, INumfmtService, SheetInterceptorService } from "@univerjs/preset-sheets-core";
import type { Workbook } from "hucre";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { CellValue } from "../../host/port";
import type { NumberFact } from "../../job/facts/fact";
import { inSystem } from "../../job/facts/units";
import { parseArea } from "../../xlsx/address";
import { measuredCells, systemOf, type Measured } from "../typing/measured";
import { outOfRange, readEntry, type Entry } from "../typing/readEntry";
import { UNIT, type GridModel } from "./model";
import { asTyped } from "./pasted";

/** Before the grid's own reading of numbers and days. */
const FIRST = 500;
const TEXT = 1;
const NUMBER = 2;

/** What comes into a cell, or a sentence that refuses it. */
export type Taken = { readonly value: CellValue } | { readonly refused: string };

interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Reads what is typed or pasted before the grid does, and says why an entry is refused. */
export class Typing {
  private measured: Measured = () => undefined;
  private units: string | undefined;
  /** What was typed last, and what was wrong with it. */
  private last: (Place & { readonly typed: string; readonly refused?: string }) | undefined;

  constructor(
    private readonly univer: Univer,
    private readonly model: GridModel,
  ) {}

  /** Takes up a workbook that is to be shown. */
  begin({ namedRanges = [] }: Workbook): void {
    // A name may stand for a number or a formula, too.
    const areas = namedRanges.filter(({ range }) => parseArea(range));
    const names = new Map(areas.map(({ name, range }) => [name, range]));
    this.units = names.get("Units");
    this.measured = measuredCells(names);
    this.last = undefined;
  }

  /** Begins to read; possible only once there has been a workbook. */
  listen(): void {
    const injector = this.univer.__getInjector();
    injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
      priority: FIRST,
      handler: (cell, { subUnitId, row, col }, next) => {
        const typed = textOf(cell);
        if (!cell || typed === undefined) return next(cell);
        const place = { sheet: this.model.sheetName(subUnitId), row, column: col };
        const entry = this.read(place, typed);
        this.last = { ...place, typed, ...(entry && "refused" in entry ? { refused: entry.refused } : {}) };
        if (!entry) return next(cell);
        // A text that is refused is put in as it is, and the cell's rule takes it out again with our sentence.
        const value = "value" in entry ? entry.value : typed;
        return { ...cell, p: undefined, v: value, t: typeof value === "number" ? NUMBER : TEXT };
      },
    });
    const { last, why } = { last: (): Typing["last"] => this.last, why: (place: Place) => this.why(place) };
    const model = this.model;
    const ownError = Reflect.get(
      BaseDataValidator.prototype,
      "getRuleFinalError",
    ) as BaseDataValidator["getRuleFinalError"];
    BaseDataValidator.prototype.getRuleFinalError = function (rule, position) {
      const said = ownError.call(this, rule, position);
      const place = { sheet: model.sheetName(position.subUnitId), row: position.row, column: position.col };
      const typed = last();
      if (!typed || typed.sheet !== place.sheet || typed.row !== place.row || typed.column !== place.column)
        return said;
      return why(place) ?? `"${typed.typed}" is not taken here. ${said}`;
    };
  }

  /** What a text means in a cell; undefined where the grid's own reading is right. */
  read(place: Place, typed: string): Entry | undefined {
    const form = this.univer
      .__getInjector()
      .get(INumfmtService)
      .getValue(UNIT, this.model.sheetId(place.sheet), place.row, place.column)?.pattern;
    const fact = this.factAt(place);
    const entry = readEntry(typed, { fact, system: this.system, form });
    // A fact with a row to itself takes what is typed, and says there what is wrong with it.
    return entry && "refused" in entry && isSingle(fact) ? { value: typed } : entry;
  }

  /** What a text comes to in a cell that it is put into, not typed. */
  taken(place: Place, text: string): Taken {
    return this.read(place, text) ?? { value: asTyped(text) };
  }

  /** The same where the grid's own check of the cell does not come: held to its range as well. */
  checked(place: Place, text: string): Taken {
    const taken = this.taken(place, text);
    const fact = this.factAt(place);
    const { system } = this;
    if ("refused" in taken || !fact || !system || isSingle(fact) || text.startsWith("=") || text.trim() === "")
      return taken;
    const { value } = taken;
    const [least, most] = inSystem(fact.range, system);
    const fits =
      typeof value === "number" && value >= least && value <= most && (!fact.whole || Number.isInteger(value));
    return fits ? taken : { refused: outOfRange(text.trim(), fact, system) };
  }

  /** Why the last entry is refused, in the cell's own kind. */
  private why(place: Place): string | undefined {
    const fact = this.factAt(place);
    const { last, system } = this;
    return last?.refused ?? (fact && system && last ? outOfRange(last.typed.trim(), fact, system) : undefined);
  }

  private factAt({ sheet, row, column }: Place): NumberFact | undefined {
    return this.measured(sheet, row, column);
  }

  private get system(): UnitSystem | undefined {
    const area = this.units === undefined ? undefined : parseArea(this.units);
    return area && systemOf(this.model.values(area)[0]?.[0]);
  }
}

/** Whether a fact has a row to itself, with what is used beside it. */
function isSingle(fact: NumberFact | undefined): boolean {
  return fact !== undefined && "sheet" in fact;
}

/** What stands in an edited cell as it was typed; undefined for a formula, or nothing. */
function textOf(cell: Nullable<ICellData>): string | undefined {
  if (!cell || cell.f || cell.si) return undefined;
  const written = cell.p?.body?.dataStream.replace(/\r\n$/, "") ?? cell.v;
  return typeof written === "string" && written !== "" && !written.includes("\r") ? written : undefined;
}
