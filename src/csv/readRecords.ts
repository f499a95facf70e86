import Papa from "papaparse";

/** A record of a CSV file: its cells, its number as a spreadsheet would count it, and why it can't be trusted. */
export interface RawRecord {
  readonly cells: readonly string[];
  readonly row: number;
  readonly problem?: string;
}

/** Characters that may be searched in vain for the ends of broken cells; beyond it the file is no CSV file. */
const MOST_SEARCHED = 20_000_000;

/**
 * Splits a CSV text into records, `most` of them if given. A quotation mark that is never closed, or closed in the
 * middle of a later line, would swallow every record in between: the record it stands in is named, and reading goes on
 * at the next line. Line ends inside a cell become line feeds.
 */
export function readRecords(text: string, delimiter: string, most = Infinity): RawRecord[] {
  const input = text.replace(/\r\n?/g, "\n").replace(/\n$/, "");
  const records: RawRecord[] = [];
  let start = 0;
  let searched = 0;
  while (start < input.length && records.length < most) {
    const broken = readUntilBroken(input.slice(start), delimiter, most, records);
    const lineEnd = broken === undefined ? -1 : input.indexOf("\n", start + broken.at);
    if (broken === undefined || lineEnd < 0) break;
    start = lineEnd + 1;
    searched += broken.end - broken.at;
    if (searched > MOST_SEARCHED) {
      const problem = "and all behind it were not read: too many quotation marks are broken";
      records.push({ cells: [], row: records.length + 1, problem });
      break;
    }
  }
  return records;
}

/** Reads records up to the first broken quotation mark, and says where that stands and how far its end was looked for. */
function readUntilBroken(
  input: string,
  delimiter: string,
  most: number,
  records: RawRecord[],
): { at: number; end: number } | undefined {
  let found: { at: number; end: number } | undefined;
  Papa.parse<string[]>(input, {
    delimiter,
    newline: "\n",
    step({ data, errors, meta }, parser) {
      const broken = errors.find(({ type }) => type === "Quotes");
      const row = records.length + 1;
      if (broken) {
        found = { at: broken.index ?? input.length, end: Math.max(meta.cursor, broken.index ?? 0) };
        records.push({ cells: data.slice(0, 1), row, problem: "has a quotation mark that does not fit" });
      } else records.push({ cells: data, row });
      if (broken || records.length >= most) parser.abort();
    },
  });
  return found;
}
