/**
 * Functions a workbook may use, by the version of Excel that brought them: 2021 is the oldest that has what the add-in needs,
 * arrays that spill. Versions as the page of each function at support.microsoft.com says under "Applies To", or, for the
 * oldest, as it names no version marker; read in November 2026.
 */
const BY_VERSION: Readonly<Record<string, string>> = {
  "2007 or older":
    "ABS ADDRESS AND AVERAGE AVERAGEIF AVERAGEIFS CEILING CHOOSE CODE COLUMN COLUMNS CONCATENATE COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS DATE " +
    "DAY EDATE EOMONTH EXACT EXP FALSE FIND FIXED FLOOR HLOOKUP HYPERLINK IF IFERROR INDEX INT ISBLANK ISERR ISERROR ISNA ISNUMBER ISTEXT " +
    "LARGE LEFT LEN LN LOG LOG10 LOWER MATCH MAX MEDIAN MID MIN MMULT MOD MONTH MROUND N NA NOT OR PI POWER PRODUCT REPT RIGHT ROUND " +
    "ROUNDDOWN ROUNDUP ROW ROWS SEARCH SIGN SIN SMALL SQRT SUBSTITUTE SUBTOTAL SUM SUMIF SUMIFS SUMPRODUCT T TRANSPOSE TRIM TRUE " +
    "TRUNC UPPER VALUE VLOOKUP YEAR",
  "2010": "AGGREGATE",
  "2013": "CEILING.MATH FLOOR.MATH IFNA ISFORMULA XOR",
  "2019": "CONCAT IFS MAXIFS MINIFS SWITCH TEXTJOIN",
  "2021": "FILTER LET SEQUENCE SORT SORTBY UNIQUE XLOOKUP XMATCH",
};

const KNOWN = new Set(Object.values(BY_VERSION).flatMap((names) => names.split(" ")));

/** What an Excel of 2021 cannot calculate in a formula as a person types it, and what it would show otherwise in other regions. */
export function versionFaults(bare: string): string[] {
  const called = new Set(
    [...bare.matchAll(/(?<![\w.])([A-Za-z_][\w.]*)\s*\(/g)].map(([, name = ""]) => name.toUpperCase()),
  );
  return [...called].flatMap((name) => {
    if (name.startsWith("RILL.") || KNOWN.has(name)) return [];
    // Its pattern is read by the region: where decimals have a comma, "0.0" shows 3 as "03".
    if (name === "TEXT")
      return ["uses TEXT, which shows numbers wrongly in other regions; use FIXED, or a cell with a format"];
    return [`uses ${name}, which is not known to be in Excel 2021`];
  });
}
