import { writeXlsx } from "hucre/xlsx";
import type { Cell } from "hucre";

const input = (value: string | number | Date, numFmt?: string): Cell => ({
  value,
  type: value instanceof Date ? "date" : typeof value === "number" ? "number" : "string",
  style: {
    numFmt,
    protection: { locked: false },
    fill: { type: "pattern", pattern: "solid", fgColor: { rgb: "FFF3D9" } },
  },
});
const text = (value: string): Cell => ({ value, type: "string", style: {} });
const formula = (written: string, formulaResult: string | number): Cell => ({
  value: formulaResult,
  type: "formula",
  formula: written,
  formulaResult,
  style: {},
});
const dynamic = (written: string, formulaResult: string | number, formulaRef: string): Cell => ({
  ...formula(written, formulaResult),
  formulaType: "array",
  formulaRef,
  formulaDynamic: true,
});

/** A small workbook in the shape of the real ones: inputs, results, a spill, names, validation, protection, a list and a date. */
export async function smallTemplate(): Promise<Uint8Array> {
  return writeXlsx({
    namedRanges: [
      { name: "Units", range: "Site!$B$3" },
      { name: "Fall", range: "Site!$B$4" },
      { name: "StaticLift", range: "Pump!$B$2" },
      { name: "TaxRate", range: "0.0825" },
    ],
    sheets: [
      {
        name: "Site",
        rows: [],
        cells: new Map<string, Cell>([
          ["0,0", { ...text("Small job"), style: { font: { bold: true, size: 16 } } }],
          ["2,0", text("Units")],
          ["2,1", input("US")],
          ["3,0", text("Fall")],
          ["3,1", input(2.75, "0.00")],
          ["4,1", input(new Date(Date.UTC(2026, 3, 14)), "d mmm yyyy")],
          ["5,1", input(0.1, "0%")],
          ["7,0", text("Merged heading")],
        ]),
        columns: [{ width: 28 }, { width: 14 }],
        merges: [{ startRow: 7, startCol: 0, endRow: 7, endCol: 2 }],
        freezePane: { rows: 2 },
        protection: { sheet: true },
        rowDefs: new Map([[5, { height: 45 }]]),
        dataValidations: [{ range: "B3", type: "list", values: ["US", "SI"], showErrorMessage: true }],
      },
      {
        name: "Pump",
        rows: [],
        cells: new Map<string, Cell>([
          ["1,1", formula("Fall+2", 4.75)],
          ["2,1", dynamic("_xldudf_RILL_FTIN(StaticLift,16,Units)", "4'-9\"", "B3")],
          ["3,1", formula("ROUND(StaticLift*100*(1+TaxRate),2)", 514.19)],
          ["5,0", dynamic("_xlfn.SEQUENCE(ROUND(Fall,0),2)", 1, "A6:B8")],
          ["5,1", { value: 2, type: "number", style: {} }],
          ["6,0", { value: 3, type: "number", style: {} }],
          ["6,1", { value: 4, type: "number", style: {} }],
          ["7,0", { value: 5, type: "number", style: {} }],
          ["7,1", { value: 6, type: "number", style: {} }],
        ]),
        protection: { sheet: true },
      },
      {
        name: "Notes",
        rows: [
          ["Your own sheet & more", 1],
          [null, true],
        ],
      },
    ],
  });
}
