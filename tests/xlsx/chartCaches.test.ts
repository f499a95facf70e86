import { strToU8, zipSync } from "fflate";
import { expect, it } from "vitest";
import { storeChartValues } from "../../src/xlsx/chartCaches";
import { Package } from "../../src/xlsx/package";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
const CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";

function book(chart: string): Package {
  const parts: Record<string, string> = {
    "_rels/.rels": `<Relationships xmlns="${RELATIONS}"><Relationship Id="r" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets><sheet name="My pump" sheetId="1" r:id="s"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${RELATIONS}"><Relationship Id="s" Type="${OFFICE}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    "xl/worksheets/sheet1.xml":
      `<worksheet xmlns="${MAIN}"><sheetData><row r="1"><c r="A1"><v>1.5</v></c><c r="B1" t="str"><v>Bed</v></c></row>` +
      `<row r="2"><c r="A2" t="str"><f>A1</f><v></v></c></row><row r="3"><c r="A3" t="e"><v>#N/A</v></c></row>` +
      `<row r="4"><c r="A4"><f>A1*2</f><v>3</v></c></row></sheetData></worksheet>`,
    "xl/charts/chart1.xml": `<c:chartSpace xmlns:c="${CHART}">${chart}</c:chartSpace>`,
  };
  return new Package(zipSync(Object.fromEntries(Object.entries(parts).map(([name, xml]) => [name, strToU8(xml)]))));
}

const stored = (chart: string): string => {
  const file = book(chart);
  storeChartValues(file);
  return file.text("xl/charts/chart1.xml").replace(/^<c:chartSpace[^>]*>|<\/c:chartSpace>$/g, "");
};

// The elements of the caches and their order: ECMA-376 part 1, 21.2.2.121 and 21.2.2.201.
it("stores the numbers that a chart draws, and leaves out blanks, texts and errors", () => {
  expect(stored("<c:xVal><c:numRef><c:f>'My pump'!$A$1:$A$4</c:f></c:numRef></c:xVal>")).toBe(
    "<c:xVal><c:numRef><c:f>'My pump'!$A$1:$A$4</c:f><c:numCache><c:formatCode>General</c:formatCode>" +
      '<c:ptCount val="4"/><c:pt idx="0"><c:v>1.5</c:v></c:pt><c:pt idx="3"><c:v>3</c:v></c:pt></c:numCache></c:numRef></c:xVal>',
  );
});

it("puts new values in the place of old ones, and texts where a chart takes texts", () => {
  expect(
    stored(
      "<c:tx><c:strRef><c:f>'My pump'!$B$1</c:f><c:strCache><c:ptCount val=\"1\"/></c:strCache></c:strRef></c:tx>",
    ),
  ).toBe(
    "<c:tx><c:strRef><c:f>'My pump'!$B$1</c:f>" +
      '<c:strCache><c:ptCount val="1"/><c:pt idx="0"><c:v>Bed</c:v></c:pt></c:strCache></c:strRef></c:tx>',
  );
});

it("leaves alone what points at no cells of the file", () => {
  const chart = "<c:numRef><c:f>[1]Other!$A$1</c:f></c:numRef><c:numRef><c:f>Gone!$A$1</c:f></c:numRef>";
  expect(stored(chart)).toBe(chart);
});
