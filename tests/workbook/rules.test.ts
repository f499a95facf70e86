import { beforeAll, describe, expect, it } from "vitest";
import { overlap, parseArea } from "../../src/xlsx/address";
import { assemble } from "../../src/workbook/assemble";
import { GLANCE } from "../../src/workbook/glance";
import { cellAddress } from "../../src/workbook/layout/address";
import { COLOR } from "../../src/workbook/layout/style";
import type { Area, CellModel, SheetModel } from "../../src/workbook/model";
import { sheets } from "../../src/workbook/sheets";
import { FormulaGraph } from "./formulaGraph";
import { builtTemplates, type BuiltTemplate } from "./templates";

let built: readonly BuiltTemplate[];
beforeAll(async () => {
  built = await builtTemplates();
});

function* cellsOf(sheet: SheetModel): Generator<[string, number, number, CellModel]> {
  for (const [row, cells] of sheet.rows) {
    for (const [column, cell] of cells) yield [`${sheet.name}!${cellAddress(row, column)}`, row, column, cell];
  }
}

function covers(area: Area, row: number, column: number): boolean {
  return row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
}

/** The sheets in the order a job runs. */
const SHEETS =
  "Start Site Ground Water Pump Basin Liner Stone Earth Levels Rates Takeoff Hours Price Quote Orders Receipts Reconcile Crew Facts".split(
    " ",
  );

describe("the workbook's own rules", () => {
  it("keeps chains of our functions to 4 cells, their number to about 60, and readers asleep until there is a text", () => {
    for (const { file, model } of built) {
      const graph = new FormulaGraph(model);
      const chain = graph.longestChain();
      console.log(`${file}: ${graph.ours.length} cells with our functions, longest chain ${chain.join(" > ")}`);
      // A reader's function is called for a text alone; numbers never wait for it.
      const cellOf = (key: string): string => {
        const [name = "", address = ""] = key.split("!");
        const { top = 0, left = 0 } = parseArea(address, name) ?? {};
        return (
          model.sheets
            .find((sheet) => sheet.name === name)
            ?.rows.get(top + 1)
            ?.get(left + 1)?.formula ?? ""
        );
      };
      const readers = graph.ours.filter((key) =>
        /^=IF\((\w+)="",(?:(?!RILL).)*,IF\(ISTEXT\(\1\),IF\(RILL\.QTY\(/.test(cellOf(key)),
      );
      expect(chain.filter((key) => !readers.includes(key)).length, chain.join(" > ")).toBeLessThanOrEqual(4);
      expect(readers.every((key) => /!D\d+$/.test(key))).toBe(true);
      expect(graph.ours.length - readers.length).toBeLessThanOrEqual(62);
    }
  });

  it("lets no rule put its fill under letters whose color another rule chose for a fill of its own", () => {
    for (const { file, model } of built) {
      for (const { name, conditionals } of model.sheets) {
        const meet = (a: Area, b: Area): boolean => overlap({ ...a, sheet: name }, { ...b, sheet: name });
        conditionals.forEach(({ area, style, formula }, index) => {
          if (!style.color || !style.fill) return;
          // Of rules that hold at once, the first that gives a ground wins it, and the first that gives a colour that.
          const before = conditionals.slice(0, index).filter((one) => meet(one.area, area));
          const taken = before.filter((one) => one.style.fill && !one.style.color);
          expect(taken, `${file}, ${name}: ${formula}`).toEqual([]);
        });
      }
    }
  });

  it("uses no name that is not defined", () => {
    for (const { file, model } of built) expect(new FormulaGraph(model).unknownNames, file).toEqual([]);
  });

  it("shows no error", () => {
    for (const { file, calculated } of built) {
      const errors = [...calculated.results].flatMap(([cell, result]) =>
        [result].flat(2).some((one) => typeof one === "string" && /^#[A-Z/0]+[!?]?$/.test(one))
          ? [`${cell} ${JSON.stringify(result)} ${calculated.reasons.get(cell) ?? ""}`]
          : [],
      );
      expect(errors, file).toEqual([]);
    }
  });

  it("gives every input a rule and a message, and protects every other cell", () => {
    for (const { file, model } of built) {
      for (const sheet of model.sheets) {
        for (const [where, row, column, cell] of cellsOf(sheet)) {
          const unlocked = cell.style.unlocked === true;
          const covered = sheet.merges.find((area) => covers(area, row, column));
          const isMaster = !covered || (covered.top === row && covered.left === column);
          if (unlocked && isMaster) {
            const rule = sheet.validations.find(({ area }) => covers(area, row, column));
            expect(rule, `${file} ${where} has no rule`).toBeDefined();
            expect(rule?.message.length, `${where} has no message`).toBeGreaterThan(4);
            if (rule && (rule.kind === "decimal" || rule.kind === "whole")) {
              expect(Number.isFinite(rule.min) && Number.isFinite(rule.max), `${where} has no range`).toBe(true);
              if (typeof cell.value === "number") {
                expect(cell.value, where).toBeGreaterThanOrEqual(rule.min ?? 0);
                expect(cell.value, where).toBeLessThanOrEqual(rule.max ?? 0);
              }
            }
            if (rule?.kind === "list" && Array.isArray(rule.choices) && cell.value !== undefined) {
              expect(rule.choices, where).toContain(cell.value);
            }
          }
        }
      }
    }
  });

  it("marks inputs by an edge as well as by colour", () => {
    for (const { model } of built) {
      for (const sheet of model.sheets) {
        for (const [where, , , { style }] of cellsOf(sheet)) {
          if (style.unlocked) expect([style.lines?.left, style.fill], where).toEqual(["medium", COLOR.input]);
        }
      }
    }
  });

  it("names what the summary, the pane and other sheets read", () => {
    const wanted = GLANCE.map(({ name }) => name);
    for (const { file, model } of built) {
      const names = model.names.map(({ name }) => name);
      expect(names, file).toEqual(expect.arrayContaining([...wanted, "Units", "Currency", "JobName", "Checks"]));
      expect(model.sheets.map(({ name }) => name)).toEqual(expect.arrayContaining(SHEETS));
    }
  });

  it("lets the demo pass every check that says FIX", () => {
    for (const { file, calculated } of built.filter(({ model }) => model.filled === "demo")) {
      const open = (calculated.named("Checks") ?? []).filter(([, , , , verdict]) => verdict === "FIX");
      expect(
        open.map(([label]) => label),
        file,
      ).toEqual([]);
    }
  });

  it("lists every check on Start with a place to fix it that exists", () => {
    for (const { model, calculated } of built) {
      const names = new Set(model.names.map(({ name }) => name));
      const checks = calculated.named("Checks") ?? [];
      const places = (calculated.named("CheckPlaces") ?? []).flat();
      expect(checks.length).toBeGreaterThanOrEqual(20);
      checks.forEach(([label, , , , verdict, where, cure], index) => {
        expect(["OK", "FIX", "LOOK", "to fill"], `${String(label)}: ${String(verdict)}`).toContain(verdict);
        expect(String(cure).length).toBeGreaterThan(10);
        // In words for people, and the cell itself for the pane.
        expect(String(where), String(label)).toMatch(/^[A-Z][a-z]+: \S/);
        const target = String(places[index]).replace(/^[A-Za-z]+!/, "");
        expect(
          names.has(target) || /^[A-Z]+\d+$/.test(target),
          `${String(label)} leads to ${String(places[index])}`,
        ).toBe(true);
      });
    }
  });

  it("merges no cells twice, and hides nothing under a merge: Excel would repair the file", () => {
    for (const { file, model } of built) {
      for (const { name, merges, rows } of model.sheets) {
        const holders = new Map<string, string>();
        for (const { top, left, bottom, right } of merges) {
          const first = cellAddress(top, left);
          for (let row = top; row <= bottom; row++) {
            for (let column = left; column <= right; column++) {
              const address = cellAddress(row, column);
              expect(holders.get(address), `${file}, ${name}!${address}, merged with ${first}`).toBeUndefined();
              holders.set(address, first);
              const { value, formula } = address === first ? {} : (rows.get(row)?.get(column) ?? {});
              expect([value, formula], `${file}, ${name}!${address}, under ${first}`).toEqual([undefined, undefined]);
            }
          }
        }
      }
    }
  });

  it("lays out demo and blank alike: same sheets, names, formulas but for values typed in", () => {
    for (const system of ["US", "SI"] as const) {
      const demo = assemble(sheets, system, "demo");
      const blank = assemble(sheets, system, "blank");
      expect(demo.names).toEqual(blank.names);
      expect(demo.sheets.map(({ name }) => name)).toEqual(blank.sheets.map(({ name }) => name));
      demo.sheets.forEach((sheet, index) => {
        expect(sheet.validations, sheet.name).toEqual(blank.sheets[index]?.validations);
        for (const [where, row, column, cell] of cellsOf(sheet)) {
          const other = blank.sheets[index]?.rows.get(row)?.get(column);
          if (!cell.style.unlocked) expect([other?.formula, other?.value], where).toEqual([cell.formula, cell.value]);
        }
      });
    }
  });
});
