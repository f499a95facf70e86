import { strToU8, unzipSync, zipSync } from "fflate";
import { expect, it } from "vitest";
import { listed, unseenParts } from "../../src/bench/reading/unseen";
import { smallTemplate } from "../host/smallTemplate";

it("what a file holds beside its cells is counted in words", async () => {
  const empty = strToU8("<x/>");
  const bytes = zipSync({
    ...unzipSync(await smallTemplate()),
    "xl/charts/chart1.xml": empty,
    "xl/charts/chart2.xml": empty,
    "xl/charts/style1.xml": empty,
    "xl/comments1.xml": empty,
    "xl/media/image1.png": empty,
    "xl/media/image2.jpeg": empty,
    "xl/pivotTables/pivotTable1.xml": empty,
    "xl/pivotTables/_rels/pivotTable1.xml.rels": empty,
  });
  expect(unseenParts(bytes)).toEqual([
    "2 charts",
    "1 picture that is not a PNG",
    "1 sheet with notes",
    "1 pivot table",
  ]);
  expect(unseenParts(await smallTemplate())).toEqual([]);
});

it("things are listed as people list them", () => {
  expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])]).toEqual([
    "",
    "a",
    "a and b",
    "a, b and c",
  ]);
});
