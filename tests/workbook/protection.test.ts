import { beforeAll, expect, it } from "vitest";
import { parseArea } from "../../src/xlsx/address";
import { Package } from "../../src/xlsx/package";
import { attributeOf, within, type XmlElement } from "../../src/xlsx/xml";
import { builtTemplates, type BuiltTemplate } from "./templates";

let built: readonly BuiltTemplate[];
beforeAll(async () => {
  built = await builtTemplates();
});

function sheetsOf({ bytes }: BuiltTemplate): Map<string, XmlElement> {
  const file = new Package(bytes);
  return new Map([...file.sheets()].map(([name, part]) => [name, file.xml(part)!]));
}

// What an attribute of sheetProtection says is locked; left out, all but objects and scenarios is (ECMA-376 part 1, 18.3.1.85).
it("keeps formulas from being typed over and leaves sorting and filtering, and pictures where they help", () => {
  for (const one of built) {
    for (const [name, sheet] of sheetsOf(one)) {
      const [guard] = [...within(sheet, "sheetProtection")];
      expect(attributeOf(guard, "sheet"), name).toBe("1");
      expect([attributeOf(guard, "sort"), attributeOf(guard, "autoFilter")], name).toEqual(["0", "0"]);
      // A row put in amid formulas would be without its own.
      expect([attributeOf(guard, "insertRows"), attributeOf(guard, "deleteRows")], name).toEqual([
        undefined,
        undefined,
      ]);
      const takes = ["Site", "Levels", "Quote", "Receipts", "Crew"].includes(name);
      expect(attributeOf(guard, "objects") === "1", name).toBe(!takes);
    }
  }
});

it("lets long lists be filtered by the headings they have", () => {
  for (const one of built) {
    const sheets = sheetsOf(one);
    for (const [name, heading] of [
      ["Start", "Check"],
      ["Rates", "Description"],
      ["Takeoff", "What"],
      ["Orders", "What"],
    ] as const) {
      const [filter] = [...within(sheets.get(name)!, "autoFilter")];
      const area = parseArea(attributeOf(filter, "ref") ?? "", name);
      const cell = one.model.sheets
        .find((sheet) => sheet.name === name)
        ?.rows.get((area?.top ?? -2) + 1)
        ?.get(1);
      expect(cell?.value, `${one.file} ${name}`).toBe(heading);
    }
  }
});

it("keeps the headings of lists that begin far down in sight, said once more under the sheet's own", () => {
  for (const { model, file } of built) {
    for (const [name, list] of [
      ["Rates", "Price list"],
      ["Orders", "Order book"],
    ] as const) {
      const sheet = model.sheets.find((one) => one.name === name);
      const head = sheet?.filter?.top ?? 0;
      const said = (row: number): unknown[] => [...(sheet?.rows.get(row) ?? [])].map(([, { value }]) => value);
      const [first, ...rest] = said(head);
      expect(said(sheet?.freeze.rows ?? 0), `${file} ${name}`).toEqual([`${list}: ${String(first)}`, ...rest]);
      expect(rest.length, name).toBeGreaterThan(6);
    }
  }
});

it("keeps the headings of Takeoff and Receipts in sight", () => {
  for (const { model, file } of built) {
    for (const [name, heading] of [
      ["Takeoff", "What"],
      ["Receipts", "Order no."],
    ] as const) {
      const sheet = model.sheets.find((one) => one.name === name);
      expect(sheet?.rows.get(sheet.freeze.rows)?.get(1)?.value, `${file} ${name}`).toBe(heading);
    }
  }
});
