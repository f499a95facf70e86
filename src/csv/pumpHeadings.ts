import { convert } from "../calc/quantity/units";

/** What a column of a list of pumps holds. */
export type PumpColumn =
  | { readonly is: "name"; readonly unit?: string }
  | { readonly is: "supplier"; readonly unit?: string }
  | { readonly is: "theirs"; readonly unit?: string }
  | { readonly is: "price"; readonly unit?: string }
  | { readonly is: "watts"; readonly unit?: string }
  | { readonly is: "shutOff"; readonly unit?: string }
  /** A point of the curve, by its number. */
  | { readonly is: "flow"; readonly point: number; readonly unit?: string }
  | { readonly is: "head"; readonly point: number; readonly unit?: string }
  /** The flow at a head that the heading names, m. */
  | { readonly is: "flowAt"; readonly head: number; readonly unit?: string };

/** Units of flow as m³/s and of head as m, by the words makers use. Heads in pressure: 1 mH2O = 9.80665 kPa (NIST SP 811). */
const FLOW_UNITS: Readonly<Record<string, () => number>> = {
  gph: () => convert(1, "gph", "m^3/s"),
  gpm: () => convert(60, "gph", "m^3/s"),
  "l/h": () => convert(1, "L/h", "m^3/s"),
  lph: () => convert(1, "L/h", "m^3/s"),
  "l/min": () => convert(60, "L/h", "m^3/s"),
  lpm: () => convert(60, "L/h", "m^3/s"),
  "l/s": () => 0.001,
  "m3/h": () => 1 / 3600,
  "m³/h": () => 1 / 3600,
};
const KPA = 1 / 9.80665;
const HEAD_UNITS: Readonly<Record<string, () => number>> = {
  ft: () => 0.3048,
  feet: () => 0.3048,
  "'": () => 0.3048,
  m: () => 1,
  psi: () => convert(1, "psi", "Pa") * 1e-3 * KPA,
  kpa: () => KPA,
  bar: () => 100 * KPA,
};

/** The units to choose from, each by one of its words. */
export const FLOW_WORDS = ["gph", "gpm", "L/h", "L/min", "L/s", "m³/h"] as const;
export const HEAD_WORDS = ["ft", "m", "psi", "kPa", "bar"] as const;

/** How much one of a unit is: m³/s of flow, m of head; undefined where the word is no such unit. */
export function flowUnit(word: string): number | undefined {
  return FLOW_UNITS[word.toLowerCase().replace(/\s/g, "")]?.();
}

export function headUnit(word: string): number | undefined {
  return HEAD_UNITS[word.toLowerCase().replace(/\s/g, "")]?.();
}

const NAMES: readonly (readonly [PumpColumn["is"], RegExp])[] = [
  ["theirs", /^(supplier'?s? code|part no\.?|part number|sku|article( no\.?)?|item( no\.?)?)$/],
  ["supplier", /^(supplier|vendor|merchant)$/],
  ["name", /^(pump|name|pump name|model|product|description)$/],
  ["price", /^(price|cost|unit price|unit cost|net price)$/],
  ["watts", /^(watts?|power|input power|power draw|p1)$/],
  ["shutOff", /^(shut-?off( head)?|max(imum)?\.? head|head max\.?|head at no flow)$/],
];

/** What a heading says its column holds: "Flow 2 (gpm)", "Head 2 (psi)", "gpm @ 5 ft", "Shut-off head (ft)". */
export function pumpColumnOf(heading: string): PumpColumn | undefined {
  const text = heading
    .trim()
    .toLowerCase()
    .replace(/[_\s]+/g, " ");
  const at =
    /^(?:flow\s*)?\(?\s*([a-z³3/]+)?\s*\)?\s*(?:@|at)\s*([\d.,]+)\s*(ft|feet|'|m|psi|kpa|bar)\s*(?:head)?$/.exec(text);
  if (at) {
    const scale = headUnit(at[3] ?? "");
    const head = Number((at[2] ?? "").replace(",", "."));
    if (scale === undefined || !Number.isFinite(head)) return undefined;
    return { is: "flowAt", head: head * scale, ...unitOf(at[1]) };
  }
  const [, bare = "", unit] = /^(.*?)(?:\s*[([]\s*([^)\]]+?)\s*[)\]])?$/.exec(text) ?? [];
  const point = /^(flow|q|capacity|head|h|lift)\s*(?:at point |point )?#?\s*(\d{1,2})?$/.exec(bare);
  if (point) {
    const is = /^(flow|q|capacity)$/.test(point[1] ?? "") ? "flow" : "head";
    return { is, point: Number(point[2] ?? 0), ...unitOf(unit) };
  }
  const named = NAMES.find(([, pattern]) => pattern.test(bare))?.[0];
  return named === undefined ? undefined : ({ is: named, ...unitOf(unit) } as PumpColumn);
}

function unitOf(word: string | undefined): { unit?: string } {
  return word === undefined || word === "" ? {} : { unit: word };
}
