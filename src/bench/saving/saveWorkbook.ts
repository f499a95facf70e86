import type { Grid } from "../../host/port";
import { cellName, parseArea } from "../../xlsx/address";
import { storeChartValues } from "../../xlsx/chartCaches";
import { Package } from "../../xlsx/package";
import { isDynamic, toFile } from "../../workbook/formulaText";
import { withForm } from "./forms";
import { dynamicMetadata } from "./metadata";
import type { Result, Work } from "../work/work";
import { addPictures } from "./pictures";
import { patchSheetXml, wideFormulas, type CellPatch, type WideFormula } from "./sheetXml";
import { explicitShared } from "./sharedFormulas";

/**
 * The opened file with the edits and the results written into it. Only cells that changed are rewritten;
 * styles, charts, validation, print set-up and everything else keep their bytes.
 */
export function saveWorkbook(original: Uint8Array, work: Work): Uint8Array {
  const file = new Package(original);
  const parts = file.sheets();
  const formulas = new Map(work.results.map((result) => [`${result.sheet}!${result.row},${result.column}`, result]));
  const texts = file.sharedTexts();
  let formulasChanged = false;

  for (const [sheet, part] of parts) {
    const xml = file.text(part);
    const patches = new Map<number, Map<number, CellPatch>>();
    const put = (row: number, column: number, patch: CellPatch): void => {
      const cells = patches.get(row) ?? new Map<number, CellPatch>();
      patches.set(row, cells.set(column, patch));
    };
    const edits = work.edits.filter((edit) => edit.sheet === sheet);
    const edited = new Set(edits.map(({ row, column }) => `${row},${column}`));
    const known = (row: number, column: number): boolean =>
      formulas.has(`${sheet}!${row},${column}`) || edited.has(`${row},${column}`);
    const wide = wideFormulas(xml);
    clearOldSpills(wide, known, put);
    const spilling = new Set(wide.filter(({ type }) => type === "array").map(({ row, column }) => `${row},${column}`));
    for (const result of work.results) if (result.sheet === sheet) putResult(result, spilling, put);
    for (const { row, column, formula } of explicitShared(wide, edits, formulas, sheet)) {
      put(row, column, {
        value: formulas.get(`${sheet}!${row},${column}`)?.values[0]?.[0] ?? "",
        formula: toFile(formula.slice(1)),
      });
    }
    for (const { row, column, content, form } of edits) {
      const isFormula = typeof content === "string" && content.startsWith("=");
      formulasChanged = true;
      const patch = isFormula
        ? editedFormula(file, content, formulas.get(`${sheet}!${row},${column}`))
        : { value: content, formula: null };
      put(row, column, form === undefined ? patch : { ...patch, look: (old) => withForm(file, old, form) });
    }
    if (patches.size > 0) file.setText(part, patchSheetXml(xml, patches, texts));
  }
  // The calculation order is optional and wrong once a formula came or went; the next program builds it again.
  if (formulasChanged) file.removeWithMentions(file.partOf("calcChain") ?? "", file.workbook);
  addPictures(file, parts, work.pictures);
  storeChartValues(file);
  return file.bytes();
}

type Put = (row: number, column: number, patch: CellPatch) => void;

/** Empties the stored cells of every spill that was worked out again; its result fills the ones it still covers. */
function clearOldSpills(wide: readonly WideFormula[], known: (row: number, column: number) => boolean, put: Put): void {
  for (const { type, ref = "" } of wide) {
    const area = type === "array" ? parseArea(ref, "") : undefined;
    if (!area || !known(area.top, area.left)) continue;
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (row !== area.top || column !== area.left) put(row, column, { value: "" });
      }
    }
  }
}

/** @param spilling anchors of the file's arrays: what was one value may fill more cells now, which a reader must know as its own */
function putResult({ row, column, values }: Result, spilling: ReadonlySet<string>, put: Put): void {
  values.forEach((cells, down) =>
    cells.forEach((value, across) => {
      if (down > 0 || across > 0) put(row + down, column + across, { value });
    }),
  );
  const spill = spilling.has(`${row},${column}`) ? { spill: { ref: spillOf(row, column, values) } } : {};
  put(row, column, { value: values[0]?.[0] ?? "", ...spill });
}

function editedFormula(file: Package, content: string, result: Result | undefined): CellPatch {
  const values = result?.values ?? [[""]];
  const patch: CellPatch = { value: values[0]?.[0] ?? "", formula: toFile(content.slice(1)) };
  const fillsMore = values.length > 1 || (values[0]?.length ?? 0) > 1;
  if (!result || !(isDynamic(content) || fillsMore)) return patch;
  const metadata = dynamicMetadata(file);
  return metadata === undefined
    ? patch
    : { ...patch, spill: { ref: spillOf(result.row, result.column, values), metadata } };
}

function spillOf(row: number, column: number, values: Grid): string {
  const bottom = row + values.length - 1;
  const right = column + (values[0]?.length ?? 1) - 1;
  const first = cellName(row, column);
  return bottom === row && right === column ? first : `${first}:${cellName(bottom, right)}`;
}
