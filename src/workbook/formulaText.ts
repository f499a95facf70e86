/** Functions newer than the file format; the file writes them with a prefix. */
const NEWER = new Set(
  (
    "XLOOKUP XMATCH IFS SWITCH MAXIFS MINIFS TEXTJOIN CONCAT LET LAMBDA UNIQUE SEQUENCE SORTBY RANDARRAY VSTACK HSTACK TAKE DROP " +
    "CHOOSECOLS CHOOSEROWS TOCOL TOROW WRAPROWS WRAPCOLS EXPAND MAP BYROW BYCOL REDUCE SCAN MAKEARRAY ISOMITTED TEXTBEFORE " +
    "TEXTAFTER TEXTSPLIT CEILING.MATH FLOOR.MATH FORECAST.LINEAR IFNA ARRAYTOTEXT VALUETOTEXT ISFORMULA STDEV.S STDEV.P NORM.S.INV NORM.S.DIST"
  ).split(" "),
);
const NEWEST = new Set(["FILTER", "SORT"]);
/** Functions whose result can spill, so that the file must mark the cell as dynamic. */
const SPILLING = new Set(
  "UNIQUE SEQUENCE SORTBY VSTACK HSTACK TAKE DROP CHOOSECOLS CHOOSEROWS TOCOL TOROW MAP BYROW BYCOL FILTER SORT".split(
    " ",
  ),
);

/** Splits a formula at its quoted parts; the odd pieces are texts and quoted sheet names, kept as they are. */
function pieces(formula: string): string[] {
  return formula.split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/);
}

/** A formula as the file writes it, as a person types it (without "="). */
export function fromFile(formula: string): string {
  return pieces(formula)
    .map((piece, index) =>
      index % 2 === 1
        ? piece
        : piece
            .replace(/_xlfn\.(?:_xlws\.)?|_xlws\.|_xlpm\./gi, "")
            .replace(/_xldudf_RILL_([A-Z]+)/gi, (_, name: string) => `RILL.${name.toUpperCase()}`),
    )
    .join("");
}

/** A formula as a person types it (without "="), as the file writes it. */
export function toFile(formula: string): string {
  const bound = boundNames(formula);
  return pieces(formula)
    .map((piece, index) =>
      index % 2 === 1
        ? piece
        : piece.replace(
            /(?<![\w.!$])([A-Za-z_][\w.]*)(\s*\()?/g,
            (whole, name: string, bracket: string | undefined) => {
              const upper = name.toUpperCase();
              if (bracket === undefined) return bound.has(name.toLowerCase()) ? `_xlpm.${name}` : whole;
              if (upper.startsWith("RILL.")) return `_xldudf_${upper.replace(/\./g, "_")}${bracket}`;
              if (NEWEST.has(upper)) return `_xlfn._xlws.${upper}${bracket}`;
              return NEWER.has(upper) ? `_xlfn.${upper}${bracket}` : whole;
            },
          ),
    )
    .join("");
}

/** Whether the file must mark a cell with this formula as a dynamic array. */
export function isDynamic(formula: string): boolean {
  const bare = pieces(formula)
    .filter((_, index) => index % 2 === 0)
    .join("");
  return [...bare.matchAll(/([A-Za-z_][\w.]*)\s*\(/g)].some(([, name]) => {
    const upper = name?.toUpperCase() ?? "";
    return upper.startsWith("RILL.") || SPILLING.has(upper);
  });
}

/** Names that LET and LAMBDA bind, in lower case. */
function boundNames(formula: string): Set<string> {
  const names = new Set<string>();
  const bare = pieces(formula)
    .map((piece, index) => (index % 2 === 1 ? '""' : piece))
    .join("");
  for (const match of bare.matchAll(/\b(LET|LAMBDA)\s*\(/gi)) {
    const args = topLevelArguments(bare.slice(match.index + match[0].length));
    const isLet = match[1]?.toUpperCase() === "LET";
    args.slice(0, -1).forEach((argument, index) => {
      const name = argument.trim();
      if (/^[A-Za-z_][\w.]*$/.test(name) && (!isLet || index % 2 === 0)) names.add(name.toLowerCase());
    });
  }
  return names;
}

function topLevelArguments(text: string): string[] {
  const args = [""];
  let depth = 0;
  for (const letter of text) {
    if (letter === ")" && depth === 0) break;
    if (letter === "(" || letter === "{") depth += 1;
    if (letter === ")" || letter === "}") depth -= 1;
    if (letter === "," && depth === 0) args.push("");
    else args[args.length - 1] += letter;
  }
  return args;
}
