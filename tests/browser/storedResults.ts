import { dateToSerial } from "hucre";
import { readXlsx } from "hucre/xlsx";
import { cellName } from "../../src/xlsx/address";
import type { Recalculated } from "../../src/workbook/recalculate";

/** Two engines may differ in the last digits. */
const WITHIN = 1e-9;

/** Cells whose stored result in the file is not what a recalculation of that file gives. */
export async function storedAgree(bytes: Uint8Array, { results }: Recalculated): Promise<string[]> {
  const { sheets } = await readXlsx(bytes, { readStyles: true });
  const stored = new Map<string, unknown>();
  for (const { name, rows, cells } of sheets) {
    rows.forEach((row, r) =>
      row.forEach((value, c) =>
        stored.set(`${name}!${cellName(r, c)}`, cells?.get(`${r},${c}`)?.formulaResult ?? value),
      ),
    );
  }
  const different: string[] = [];
  for (const [key, result] of results) {
    const first = Array.isArray(result) ? (result as unknown[][])[0]?.[0] : result;
    const kept = stored.get(key) ?? "";
    const held = kept instanceof Date ? dateToSerial(kept) : kept;
    const same =
      typeof first === "number" && typeof held === "number"
        ? Math.abs(first - held) <= WITHIN * Math.max(1, Math.abs(first))
        : (first ?? "") === held;
    if (!same) different.push(`${key}: file ${JSON.stringify(held)}, Node ${JSON.stringify(first)}`);
  }
  return different;
}
