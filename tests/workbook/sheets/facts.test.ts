import { describe, expect, it } from "vitest";
import { FACTS } from "../../../src/job/facts";
import { assemble } from "../../../src/workbook/assemble";
import { sheets } from "../../../src/workbook/sheets";
import { yoursName } from "../../../src/workbook/yoursName";
import { calculate } from "../calculated";

describe("what is used", () => {
  it("of one input may be read by a person's own formula in another, the one beneath it too", async () => {
    const model = assemble(sheets, "US", "demo");
    const type = (name: string, formula: string): void => {
      const place = model.names.find((one) => one.name === yoursName(name));
      const cell = model.sheets
        .find((sheet) => sheet.name === place?.sheet)
        ?.rows.get(place?.area.top ?? 0)
        ?.get(place?.area.left ?? 0);
      if (cell?.style.unlocked !== true) throw new Error(`nobody types ${name}`);
      delete cell.value;
      cell.formula = formula;
    };
    type("FallTyped", "=1+2");
    type("Run", "=FallTyped*5");
    type("DropCount", "=Run/5");
    type("BedWidth", "=DropCount");
    type("BasinLength", "=BedWidth*4");
    type("BasinWidth", "=BasinLength/2");
    type("BasinWaterDepth", "=BasinWidth/3");
    type("LinerOverlap", "=BasinWaterDepth/2");
    type("JobName", '=ClientName&"\'s stream"');
    type("ClientName", '="A. Client"');
    const { named } = await calculate(model);
    const used = (name: string): unknown => named(name)?.[0]?.[0];
    // By hand, from a fall of 3.
    const wanted = {
      Run: 15,
      DropCount: 3,
      BedWidth: 3,
      BasinLength: 12,
      BasinWidth: 6,
      BasinWaterDepth: 2,
      LinerOverlap: 1,
      JobName: "A. Client's stream",
    };
    expect(Object.fromEntries(Object.keys(wanted).map((name) => [name, used(name)]))).toEqual(wanted);
    const row = Object.values(FACTS).findIndex(({ name }) => name === "BasinWidth");
    const shown = ["FactsUsed", "FactUnits", "FactStates"].map((name) => named(name)?.[row]?.[0]);
    expect([...shown, used("FactsWrong")]).toEqual([6, "ft", "yours", 0]);
  });
});
