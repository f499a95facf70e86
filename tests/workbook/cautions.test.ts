import { describe, expect, it } from "vitest";
import { assemble } from "../../src/workbook/assemble";
import { COLOR } from "../../src/workbook/layout/style";
import type { CellModel, SheetModel } from "../../src/workbook/model";
import { sheets } from "../../src/workbook/sheets";

const texts = (sheet: SheetModel): { row: number; text: string; cell: CellModel }[] =>
  [...sheet.rows].flatMap(([row, cells]) =>
    [...cells.values()].map((cell) => ({ row, text: typeof cell.value === "string" ? cell.value : "", cell })),
  );

describe.each(["US", "SI"] as const)("cautions on the sheets, %s", (system) => {
  const model = assemble(sheets, system, "demo");
  const all = model.sheets.flatMap((sheet) => texts(sheet).map((one) => ({ ...one, sheet: sheet.name })));

  it("come in two ranks, and only what kills or maims is red", () => {
    const ranked = (word: string) => all.filter(({ text }) => text.startsWith(`${word}: `));
    expect(ranked("WARNING").length).toBeGreaterThan(10);
    expect(ranked("NOTICE").length).toBeGreaterThan(2);
    for (const { cell, text } of ranked("WARNING")) expect(cell.style.color, text).toBe(COLOR.warn);
    for (const { cell, text } of ranked("NOTICE")) {
      expect([cell.style.color, cell.style.lineColor], text).not.toContain(COLOR.warn);
    }
    // What only costs money or a lip out of level.
    for (const words of ["runs dry", "benchmark again", "thin compacted layers", "Weir, friction and stone figures"]) {
      expect(all.find(({ text }) => text.includes(words) && /^(WARNING|NOTICE)/.test(text))?.text, words).toMatch(
        /^NOTICE/,
      );
    }
  });

  // Each beside the number that leads into it: below its row, within the same part of the sheet.
  it.each([
    ["Basin", "BasinHold", "Treatment is dosed by this volume"],
    ["Basin", "DrainBack", "stands still: warm for days it breeds mosquitoes"],
    ["Basin", "ReserveDays", "Leave an air gap"],
    ["Stone", "HeaviestStone", "Heavy stone crushes"],
    ["Stone", "LipStoneHeavy", "Heavy stone crushes"],
    ["Water", "PoolTable", "drowns small children"],
  ] as const)("on %s stand beside %s", (name, number, words) => {
    const at = model.names.find((one) => one.name === number)?.area.bottom ?? 0;
    const near = all.filter(({ sheet, text }) => sheet === name && text.startsWith("WARNING") && text.includes(words));
    const gaps = near.map(({ row }) => row - at);
    expect(
      gaps.some((gap) => gap >= 1 && gap <= 3),
      `${number} in row ${at}, its warning ${gaps.join(", ")} below`,
    ).toBe(true);
  });

  it("say how far from overhead wires, and to which voltage", () => {
    // 29 CFR 1926.1408 Table A: up to and including 50 kV, 10 ft; DIN VDE 0105-100 (from memory): 5 m while it is not known.
    const site = all.find(({ sheet, text }) => sheet === "Site" && text.includes("overhead wires"))?.text ?? "";
    expect(site).toContain(
      system === "US" ? "10 ft from overhead wires; that holds to 50 kV only" : "5 m from overhead",
    );
    expect(site).toContain("ask the utility");
  });
});
