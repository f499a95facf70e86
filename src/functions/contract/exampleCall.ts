/** A call as the user types it: `TDH(2000,6.5,{2,80})`. */
export function exampleCall(name: string, args: readonly unknown[]): string {
  return `${name}(${args.map(literal).join(", ")})`;
}

function literal(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (Array.isArray(value)) {
    const rows = (value as unknown[]).map((row) => (Array.isArray(row) ? row.map(literal).join(",") : literal(row)));
    return `{${rows.join(";")}}`;
  }
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "string" ? `"${value.replace(/"/g, '""')}"` : String(value);
}
