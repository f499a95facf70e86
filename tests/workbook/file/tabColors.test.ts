import { expect, it } from "vitest";
import { assemble } from "../../../src/workbook/assemble";
import { tabColor } from "../../../src/workbook/file/tabColors";
import { sheets } from "../../../src/workbook/sheets";

it("gives every sheet in sight a color, and the tabs of one color stand side by side", () => {
  const colors = assemble(sheets, "US", "blank")
    .sheets.filter(({ hidden }) => !hidden)
    .map(({ name }) => tabColor(name));
  expect(colors).not.toContain(undefined);
  const runs = colors.filter((color, index) => color !== colors[index - 1]);
  expect(runs).toHaveLength(new Set(colors).size);
});
