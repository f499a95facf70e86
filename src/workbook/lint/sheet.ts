import { lintFormula } from "./formula";
import { attribute, corners, position, unescapeXml } from "./xml";

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
  const faults = [...lintCells(xml, rules, cells), ...lintValidations(xml, rules), ...lintMerges(xml)];
  return { faults: faults.map((fault) => `${part} ${fault}`), cells };
}

function lintCells(xml: string, rules: SheetRules, cells: Map<string, string>): string[] {
  const faults: string[] = [];
  let lastRow = 0;
  for (const [, rowAttributes = "", inner = ""] of xml.matchAll(/<row ([^>]*?)(?:\/>|>([\s\S]*?)<\/row>)/g)) {
    const row = Number(attribute(rowAttributes, "r"));
    if (row <= lastRow) faults.push(`row ${row} is out of order`);
    lastRow = row;
    let lastColumn = 0;
    for (const [, attributes = "", content = ""] of inner.matchAll(/<c ([^>]*?)(?:\/>|>([\s\S]*?)<\/c>)/g)) {
      const at = attribute(attributes, "r");
      const { column, row: ownRow } = position(at);
      if (column <= lastColumn || ownRow !== row) faults.push(`${at} is out of order`);
      lastColumn = column;
      const stored = /<v>([^<]*)/.exec(content)?.[1];
      const shared = attribute(attributes, "t") === "s" ? rules.strings[Number(stored)] : stored;
      if (shared === undefined && stored !== undefined) faults.push(`${at} refers to a string that is not there`);
      cells.set(at, unescapeXml(shared ?? ""));
      const formula = /<f[^>]*>([^<]*)/.exec(content)?.[1];
      if (formula === undefined) continue;
      if (stored === undefined) faults.push(`${at} has a formula without a stored value`);
      const dynamic = /\bcm="/.test(attributes);
      if (/_xldudf_/.test(formula) && !dynamic) faults.push(`${at} calls one of ours but is no dynamic array`);
      faults.push(...lintFormula(unescapeXml(formula), rules).map((fault) => `${at} ${fault}`));
    }
  }
  return faults;
}

function lintValidations(xml: string, rules: SheetRules): string[] {
  const faults: string[] = [];
  for (const [, attributes = "", inner = ""] of xml.matchAll(
    /<dataValidation ([^>]*?)(?:\/>|>([\s\S]*?)<\/dataValidation>)/g,
  )) {
    const where = `validation of ${attribute(attributes, "sqref")}`;
    if (attribute(attributes, "error").length > 225) faults.push(`${where}: its error text is longer than 225`);
    if (attribute(attributes, "prompt").length > 255) faults.push(`${where}: its message is longer than 255`);
    for (const title of ["errorTitle", "promptTitle"]) {
      if (attribute(attributes, title).length > 32) faults.push(`${where}: its title is longer than 32`);
    }
    const list = unescapeXml(/<formula1>([^<]*)/.exec(inner)?.[1] ?? "");
    if (list.startsWith('"') && list.length > 257) faults.push(`${where}: its list is longer than 255`);
    if (!list.startsWith('"')) faults.push(...lintFormula(list, rules).map((fault) => `${where} ${fault}`));
  }
  return faults;
}

function lintMerges(xml: string): string[] {
  const merges = [...xml.matchAll(/<mergeCell ref="([^"]+)"/g)].map(([, ref = ""]) => ({ ref, ...corners(ref) }));
  return merges.flatMap((one, index) =>
    merges
      .slice(index + 1)
      .filter((two) => one.left <= two.right && two.left <= one.right && one.top <= two.bottom && two.top <= one.bottom)
      .map((two) => `merged cells ${one.ref} and ${two.ref} overlap`),
  );
}
