import { describe, expect, it } from "vitest";
import { FACTS } from "../../../src/job/facts";
import type { CellFact } from "../../../src/job/facts/fact";
import { inSystem } from "../../../src/job/facts/units";
import { assemble } from "../../../src/workbook/assemble";
import { areaAddress, cellAddress } from "../../../src/workbook/layout/address";
import type { Validation } from "../../../src/workbook/model";
import { placeOf, tablePlaces, type Place } from "../../../src/workbook/jobCells/places";
import { sheets } from "../../../src/workbook/sheets";

/** Inputs that no quantity and no price depends on: papers after the order, and words that are only printed. */
const NO_FACTS = new Set([
  "Issued",
  "Receipts",
  "Reconcile",
  "Crew",
  "Facts",
  "SupplierTable",
  "PrintedSupplier",
  "ScopeLines",
  "OrderBook",
  "PricesConfirmed",
]);

describe.each(["US", "SI"] as const)("facts and the cells of a workbook in %s", (system) => {
  const model = assemble(sheets, system, "blank");
  const names = new Map(model.names.map(({ name, sheet, area }) => [name, `${sheet}!${areaAddress(area, true)}`]));
  const facts = Object.values(FACTS);
  // Tables that grow have no cells below the laid-out ones.
  const laidOut = 140;
  const places: Place[] = facts.flatMap((fact) =>
    fact.type === "table"
      ? tablePlaces(fact, names)
          .filter((column) => !column.fact.told)
          .flatMap((column) =>
            Array.from({ length: Math.min(fact.rows, laidOut) }, (_, row) => ({
              cell: column.cell(row),
              fact: column.fact as CellFact,
            })),
          )
      : [placeOf(fact, names)],
  );
  const ruleAt = (cell: string): Validation | undefined => {
    const [sheetName, address] = cell.split("!");
    const sheet = model.sheets.find(({ name }) => name === sheetName);
    return sheet?.validations.find(({ area }) => covers(area, address ?? ""));
  };

  it("has a sheet, a name and an open cell for each", () => {
    for (const fact of facts) {
      const first = fact.type === "table" ? tablePlaces(fact, names)[0]?.cell(0) : placeOf(fact, names).cell;
      expect(`${first}`.split("!")[0], fact.name).toBe(fact.sheet);
    }
  });

  it("allows the same numbers and words in both", () => {
    const differing = places.flatMap(({ cell, fact }) => {
      const rule = ruleAt(cell);
      if (!rule) return [`${cell} (${fact.question}) has no rule`];
      const { kind, min, max, choices } = rule;
      if (fact.type === "text") return kind === "text" || typeof choices === "string" ? [] : [`${cell} is no text`];
      if (fact.type === "choice") {
        const words = inSystem(fact.choices, system);
        return choices === undefined || typeof choices === "string" || words.join() === choices.join()
          ? []
          : [`${cell}: ${choices.join()} is not ${words.join()}`];
      }
      const [least, most] = inSystem(fact.range, system);
      if (kind === "date") return fact.kind === "day" ? [] : [`${cell} is a day`];
      const whole = kind === "whole";
      if (min === least && max === most && whole === (fact.whole ?? fact.kind === "count")) return [];
      return [`${cell}: ${min} to ${max}, whole ${whole}; the fact (${fact.question}) has ${least} to ${most}`];
    });
    expect(differing).toEqual([]);
  });

  it("leaves out no cell that a person may type into, and has none twice", () => {
    const taken = places.map(({ cell }) => cell);
    expect(taken.filter((cell, index) => taken.indexOf(cell) !== index)).toEqual([]);
    const apart = model.names.filter(({ name }) => NO_FACTS.has(name));
    const known = new Set(taken);
    const left = model.sheets
      .filter(({ name }) => !NO_FACTS.has(name))
      .flatMap((sheet) =>
        [...sheet.rows].flatMap(([row, cells]) =>
          [...cells].flatMap(([column, { style }]) => {
            const address = cellAddress(row, column);
            const isApart = apart.some(({ sheet: on, area }) => on === sheet.name && covers(area, address));
            const continued = sheet.merges.some((area) => covers(area, address) && area.left < column);
            return style.unlocked && !isApart && !continued && !known.has(`${sheet.name}!${address}`)
              ? [`${sheet.name}!${address}`]
              : [];
          }),
        ),
      );
    expect(left).toEqual([]);
  });
});

function covers({ top, left, bottom, right }: Validation["area"], address: string): boolean {
  const [, letters = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  const column = [...letters].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0);
  return Number(row) >= top && Number(row) <= bottom && column >= left && column <= right;
}
