import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { assemble } from "../../src/workbook/assemble";
import { calculate } from "../../src/workbook/build";
import { cellAddress } from "../../src/workbook/layout/address";
import { yoursName } from "../../src/workbook/yoursName";
import type { CellValue } from "../../src/workbook/model";
import { recalculate, type Recalculated } from "../../src/workbook/recalculate";
import { sheets } from "../../src/workbook/sheets";
import { writeWorkbook } from "../../src/workbook/write";
import { biggestJob, OWN_LINES, smallestJob, typeInto } from "./jobs";

function numbers(cells: readonly (readonly CellValue[])[] | undefined): number[] {
  return (cells ?? []).flat().filter((value): value is number => typeof value === "number");
}

function total(cells: readonly (readonly CellValue[])[] | undefined): number {
  return numbers(cells).reduce((sum, value) => sum + value, 0);
}

function errors(calculated: Recalculated): string[] {
  return [...calculated.results].flatMap(([cell, result]) =>
    [result].flat(2).some((one) => typeof one === "string" && /^#[A-Z/0]+[!?]?$/.test(one))
      ? [`${cell}: ${calculated.reasons.get(cell) ?? String(result)}`]
      : [],
  );
}

describe.each(["US", "SI"] as const)("a job in %s", (system) => {
  it("can be as big as the workbook has room for", async () => {
    const model = biggestJob(system);
    const calculated = await calculate(model);
    expect(errors(calculated)).toEqual([]);

    expect(numbers(calculated.named("Drops"))).toHaveLength(12);
    expect(total(calculated.named("Drops"))).toBeCloseTo(total(calculated.named("Fall")), 9);
    expect(total(calculated.named("Treads"))).toBeCloseTo(total(calculated.named("Run")), 9);
    expect(calculated.named("LipSplit")?.filter(([lip]) => lip !== "")).toHaveLength(3);
    // Six pools and four beds, each in the breakdown of the drain-back by its number.
    const parts = (calculated.named("DrainParts") ?? []).map(([part]) => String(part));
    expect(parts.filter((part) => /^Pool \d/.test(part))).toHaveLength(6);
    expect(parts.filter((part) => /^Bed \d/.test(part))).toHaveLength(4);
    expect(calculated.named("PumpRanking")?.filter(([, name]) => name !== "")).toHaveLength(6);
    expect(calculated.named("PumpName")?.[0]?.[0]).toBe("Trial pump 6 (invented)");
    expect(numbers(calculated.named("PieceLengths"))).toHaveLength(8);

    // 40 lines of 2 at 10 are 800.
    const own = calculated.named("OwnLinesUsed") ?? [];
    expect(own).toHaveLength(OWN_LINES);
    expect(own.reduce((sum, line) => sum + Number(line[9]), 0)).toBeCloseTo(800, 9);

    // 60 items of 10 at 4 ordered, delivered and invoiced in 5 parts of 2: 2400, and nothing at stake.
    const single = (name: string): unknown => calculated.named(name)?.[0]?.[0];
    expect(single("ReconciledOrdered")).toBeCloseTo(2400, 6);
    expect(single("ReconciledBilled")).toBeCloseTo(2400, 6);
    expect(single("ReconciledToCome")).toBeCloseTo(0, 6);
    expect(single("ReconciledAtStake")).toBeCloseTo(0, 6);

    // And the file it is saved to says the same.
    const again = await recalculate(await writeWorkbook(model));
    expect(again.named("PriceTotal")).toEqual(calculated.named("PriceTotal"));
  });

  it("can be one drop and one pool", async () => {
    const calculated = await calculate(smallestJob(system));
    expect(errors(calculated)).toEqual([]);
    expect(numbers(calculated.named("Drops"))).toEqual(numbers(calculated.named("Fall")));
    expect(numbers(calculated.named("Treads"))).toEqual(numbers(calculated.named("Run")));
    expect(total(calculated.named("DesignFlow"))).toBeGreaterThan(0);
    expect(total(calculated.named("PriceTotal"))).toBeGreaterThan(0);
  });
});

it("a finished file that is edited comes to what a workbook built with the edit comes to, spills of another size included", async () => {
  const built = assemble(sheets, "US", "demo");
  await calculate(built);
  const parts = unzipSync(await writeWorkbook(built));
  const where = built.names.find(({ name }) => name === yoursName("DropCount"));
  const site = `xl/worksheets/sheet${built.sheets.findIndex(({ name }) => name === where?.sheet) + 1}.xml`;
  const before = strFromU8(parts[site] ?? new Uint8Array());
  const cell = `r="${cellAddress(where?.area.top ?? 0, where?.area.left ?? 0)}"`;
  const after = before.replace(
    new RegExp(`(<c ${cell}[^>]*><v>)4(</v>)`),
    (_, open: string, close: string) => `${open}7${close}`,
  );
  expect(after).not.toBe(before);
  const edited = await recalculate(zipSync({ ...parts, [site]: strToU8(after) }));

  const typed = assemble(sheets, "US", "demo");
  typeInto(typed, "DropCount", [[7]]);
  const fresh = await calculate(typed);
  expect([...edited.results]).toEqual([...fresh.results]);
});
