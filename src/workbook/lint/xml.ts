const ENTITIES: Readonly<Record<string, string>> = { lt: "<", gt: ">", quot: '"', apos: "'", amp: "&" };

export function unescapeXml(text: string): string {
  return text.replace(/&(lt|gt|quot|apos|amp);/g, (_, name: string) => ENTITIES[name] ?? "");
}

/** The value of an attribute among others, unescaped; "" where it is absent. */
export function attribute(attributes: string, name: string): string {
  return unescapeXml(new RegExp(`(?:^|\\s)${name}="([^"]*)"`).exec(attributes)?.[1] ?? "");
}

/** Column and row of "B7", both counted from 1. */
export function position(address: string): { column: number; row: number } {
  const [, letters = "", digits = ""] = /^\$?([A-Z]+)\$?(\d+)$/.exec(address) ?? [];
  return { column: [...letters].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0), row: Number(digits) };
}

/** The corners of "B7:D9". */
export function corners(ref: string): { left: number; top: number; right: number; bottom: number } {
  const [from = "", to = from] = ref.split(":");
  const first = position(from);
  const last = position(to);
  return { left: first.column, top: first.row, right: last.column, bottom: last.row };
}
