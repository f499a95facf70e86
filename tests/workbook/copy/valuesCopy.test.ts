import { readXlsx } from "hucre/xlsx";
import { beforeAll, describe, expect, it } from "vitest";
import { copyFileName, copyMadeAt, valuesCopy } from "../../../src/workbook/copy/valuesCopy";
import { Package } from "../../../src/xlsx/package";
import { attributeOf, within } from "../../../src/xlsx/xml";
import { OFFICES, validate } from "../../bench/validate";
import { oddlyPlaced } from "../../xlsx/oddlyPlaced";
import { builtTemplates, changeSheets, type BuiltTemplate } from "../templates";

const made = new Date(2026, 10, 28, 9, 5);
let built: readonly BuiltTemplate[];
beforeAll(async () => {
  built = await builtTemplates();
});

/** What every cell shows, by sheet and address. */
async function shown(bytes: Uint8Array): Promise<Map<string, unknown>> {
  const { sheets } = await readXlsx(bytes);
  return new Map(
    sheets.flatMap(({ name, rows }) =>
      rows.flatMap((row, down) =>
        row.flatMap((held, across) =>
          held === null || held === undefined || held === ""
            ? []
            : [[`${name} ${down},${across}`, held instanceof Date ? held.getTime() : held] as const],
        ),
      ),
    ),
  );
}

describe("a copy of values", () => {
  it("shows in every cell what the workbook stores, and holds no formula", async () => {
    for (const { file, bytes } of built) {
      const copy = valuesCopy(bytes, { made });
      const [before, after] = [await shown(bytes), await shown(copy)];
      // The sentence under a heading and the sheet of the copy itself.
      const others = [...before].filter(([key, value]) => after.get(key) !== value).map(([key]) => key);
      expect(
        others.filter((key) => !/ 1,0$/.test(key)),
        file,
      ).toEqual([]);
      for (const key of others) expect(after.get(key), key).toMatch(/^Copy of values, 2026-11-28 09:05: nothing here/);
      const added = [...after.keys()].filter((key) => !before.has(key));
      expect(
        added.filter((key) => !key.startsWith("Copy ")),
        file,
      ).toEqual([]);
      const package_ = new Package(copy);
      for (const [sheet, part] of package_.sheets()) expect(package_.text(part), sheet).not.toMatch(/<f[ >/]| cm=/);
    }
  });

  it.each(OFFICES)("opens clean in the Open XML validator for %s", (office) => {
    for (const { file, bytes } of built) expect(validate(valuesCopy(bytes, { made }), office), file).toEqual([]);
  });

  it("says what it is first, at the head of every page, and takes nothing that is typed", () => {
    const [{ bytes } = { bytes: new Uint8Array() }] = built;
    const file = new Package(valuesCopy(bytes, { made, from: "Job.xlsx" }));
    const [[first = "", part = ""] = []] = [...file.sheets()];
    expect(first).toBe("Copy");
    const words = [...within(file.xml(part)!, "t")].map(({ text }) => text);
    expect(words).toEqual(expect.arrayContaining(["Copy of values", "2026-11-28 09:05", "Job.xlsx"]));
    for (const [sheet, at] of file.sheets()) {
      const root = file.xml(at)!;
      expect([...within(root, "dataValidations")], sheet).toEqual([]);
      expect([...within(root, "sheetProtection")], sheet).toHaveLength(1);
      if (sheet === first) continue;
      const [head] = [...within(root, "oddHeader")].map(({ text }) => text);
      expect(head, sheet).toContain("Copy of values, 2026-11-28 09:05");
    }
    const locks = [...within(file.xml("xl/styles.xml")!, "protection")].map((one) => attributeOf(one, "locked"));
    expect(locks).not.toContain("0");
  });

  it("keeps the names that pages are printed by, at their own sheets, and none that would make it a job", () => {
    const [{ bytes } = { bytes: new Uint8Array() }] = built;
    const areas = (file: Package): string[] => {
      const names = [...file.sheets().keys()];
      return [...within(file.xml(file.workbook)!, "definedName")]
        .filter((one) => attributeOf(one, "name") === "_xlnm.Print_Area")
        .map((one) => `${names[Number(attributeOf(one, "localSheetId"))] ?? "?"}: ${one.text}`);
    };
    const copy = new Package(valuesCopy(bytes, { made }));
    expect(areas(copy)).toEqual(areas(new Package(bytes)));
    const names = [...within(copy.xml(copy.workbook)!, "definedName")].map((one) => attributeOf(one, "name"));
    expect(names).not.toContain("Units");
    expect(names).not.toContain("Checks");
  });

  it("is made of what other programs wrote, too", async () => {
    const [{ bytes } = { bytes: new Uint8Array() }] = built;
    const copy = valuesCopy(oddlyPlaced(bytes), { made });
    const file = new Package(copy);
    for (const [sheet, part] of file.sheets()) expect([...within(file.xml(part)!, "f")], sheet).toEqual([]);
    expect(copyMadeAt(copy)).toBe("2026-11-28 09:05");
    expect((await shown(copy)).size).toBeGreaterThan(1000);
  });

  it("is known as one, and no copy is made of it", () => {
    const [{ bytes } = { bytes: new Uint8Array() }] = built;
    const copy = valuesCopy(bytes, { made });
    expect(copyMadeAt(copy)).toBe("2026-11-28 09:05");
    expect(copyMadeAt(bytes)).toBeUndefined();
    expect(() => valuesCopy(copy, { made })).toThrow("a copy of values already");
    expect(copyFileName("Hollow Bank.xlsx", made)).toBe("Hollow Bank values 2026-11-28 09.05.xlsx");
  });

  it("is refused where a function had no result, since the copy would keep that for good", () => {
    const [{ bytes } = { bytes: new Uint8Array() }] = built;
    let broken = false;
    const without = changeSheets(bytes, (xml) =>
      xml.replace(/(<f t="array"[^>]*>[^<]*_xldudf_[^<]*<\/f>)<v>[^<]*<\/v>/, (all, formula: string) => {
        if (broken) return all;
        broken = true;
        return `${formula}<v>#NAME?</v>`;
      }),
    );
    expect(broken).toBe(true);
    expect(() => valuesCopy(without, { made })).toThrow(/![A-Z]+\d+ has no result yet.*with the add-in/);
  });
});
