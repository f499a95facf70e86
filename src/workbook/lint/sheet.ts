import { overlap, parseArea, type Area } from "../../xlsx/address";
import { attributeOf, childOf, readXml, within, type XmlElement } from "../../xlsx/xml";
import { lintFormula } from "./formula";

interface SheetRules {
  readonly functions: ReadonlySet<string>;
  readonly names: ReadonlySet<string>;
  readonly strings: readonly string[];
}

interface SheetReport {
  readonly faults: string[];
  /** Values of cells by address, shared strings looked up. */
  readonly cells: ReadonlyMap<string, string>;
}

/** Faults of one worksheet part. */
export function lintSheet(part: string, xml: string, rules: SheetRules): SheetReport {
  const cells = new Map<string, string>();
  const sheet = readXml(xml);
  const faults = [
    ...lintCells(sheet, rules, cells),
    ...lintValidations(sheet, rules),
    ...lintConditionals(sheet, rules),
    ...lintMerges(sheet),
  ];
  return { faults: faults.map((fault) => `${part} ${fault}`), cells };
}

function lintCells(sheet: XmlElement, rules: SheetRules, cells: Map<string, string>): string[] {
  const faults: string[] = [];
  let lastRow = 0;
  for (const rowElement of within(sheet, "row")) {
    const row = Number(attributeOf(rowElement, "r"));
    if (row <= lastRow) faults.push(`row ${row} is out of order`);
    lastRow = row;
    let lastColumn = -1;
    for (const cell of rowElement.children) {
      const at = attributeOf(cell, "r") ?? "";
      const { left = -1, top = -1 } = parseArea(at, "") ?? {};
      if (left <= lastColumn || top + 1 !== row) faults.push(`${at} is out of order`);
      lastColumn = left;
      faults.push(...lintCell(at, cell, rules, cells));
    }
  }
  return faults;
}

function lintCell(at: string, cell: XmlElement, rules: SheetRules, cells: Map<string, string>): string[] {
  const faults: string[] = [];
  const stored = childOf(cell, "v")?.text;
  const shared = attributeOf(cell, "t") === "s" ? rules.strings[Number(stored)] : stored;
  if (shared === undefined && stored !== undefined) faults.push(`${at} refers to a string that is not there`);
  cells.set(at, shared ?? "");
  const formula = childOf(cell, "f")?.text;
  if (formula === undefined) return faults;
  if (stored === undefined) faults.push(`${at} has a formula without a stored value`);
  if (/_xldudf_/.test(formula) && attributeOf(cell, "cm") === undefined)
    faults.push(`${at} calls one of ours but is no dynamic array`);
  return [...faults, ...lintFormula(formula, rules).map((fault) => `${at} ${fault}`)];
}

function lintValidations(sheet: XmlElement, rules: SheetRules): string[] {
  const faults: string[] = [];
  for (const validation of within(sheet, "dataValidation")) {
    const said = (name: string): string => attributeOf(validation, name) ?? "";
    const where = `validation of ${said("sqref")}`;
    if (said("error").length > 225) faults.push(`${where}: its error text is longer than 225`);
    if (said("prompt").length > 255) faults.push(`${where}: its message is longer than 255`);
    for (const title of ["errorTitle", "promptTitle"]) {
      if (said(title).length > 32) faults.push(`${where}: its title is longer than 32`);
    }
    const list = childOf(validation, "formula1")?.text ?? "";
    if (list.startsWith('"') && list.length > 257) faults.push(`${where}: its list is longer than 255`);
    if (!list.startsWith('"')) faults.push(...lintFormula(list, rules).map((fault) => `${where} ${fault}`));
  }
  return faults;
}

function lintConditionals(sheet: XmlElement, rules: SheetRules): string[] {
  return [...within(sheet, "conditionalFormatting")].flatMap((block) =>
    [...within(block, "formula")].flatMap(({ text }) =>
      lintFormula(text, rules).map((fault) => `look of ${attributeOf(block, "sqref") ?? ""} ${fault}`),
    ),
  );
}

function lintMerges(sheet: XmlElement): string[] {
  const merges = [...within(sheet, "mergeCell")].flatMap((merge): (Area & { ref: string })[] => {
    const ref = attributeOf(merge, "ref") ?? "";
    const area = parseArea(ref, "");
    return area ? [{ ...area, ref }] : [];
  });
  return merges.flatMap((one, index) =>
    merges
      .slice(index + 1)
      .filter((two) => overlap(one, two))
      .map((two) => `merged cells ${one.ref} and ${two.ref} overlap`),
  );
}
