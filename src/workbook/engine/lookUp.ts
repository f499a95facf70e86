/** A value of the calculating library, or a table of them. */
interface Scalar {
  readonly kind: number;
  readonly value?: unknown;
}
type Given = Scalar | { readonly rows: readonly (readonly Scalar[])[] };

const TABLE = 5;
const ERROR = 4;

/** XLOOKUP for an exact match, looking a whole column of values up at once as Excel does; the library looks up the first alone. */
export function lookUp([value, keys, results, otherwise]: readonly Given[]): unknown {
  const columns = [rowsOf(keys), rowsOf(results)] as const;
  const places = new Map<string, number>();
  columns[0].flat().forEach((key, index) => {
    const text = keyOf(key);
    if (!places.has(text)) places.set(text, index);
  });
  const found = columns[1].flat();
  const missing = rowsOf(otherwise)[0]?.[0] ?? { kind: ERROR, code: "#N/A" };
  const one = (wanted: Scalar): Scalar => {
    if (wanted.kind === ERROR) return wanted;
    const at = places.get(keyOf(wanted));
    return (at === undefined ? undefined : found[at]) ?? missing;
  };
  const wanted = rowsOf(value);
  if (value === undefined || !("rows" in value)) return one(wanted[0]?.[0] ?? missing);
  const rows = wanted.map((row) => row.map(one));
  return { kind: TABLE, rows, height: rows.length, width: rows[0]?.length ?? 0 };
}

function rowsOf(given: Given | undefined): readonly (readonly Scalar[])[] {
  if (given === undefined) return [];
  return "rows" in given ? given.rows : [[given]];
}

/** Equal values have equal keys; texts are equal without regard to case. */
function keyOf({ kind, value }: Scalar): string {
  return `${kind}:${typeof value === "string" ? value.toLowerCase() : String(value)}`;
}
