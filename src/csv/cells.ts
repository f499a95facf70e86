/** How a file writes numbers and days. */
export interface Customs {
  /** The mark before the decimals. */
  readonly decimal: "." | ",";
  /** Which comes first in 3/4/2031. */
  readonly slashDate: "day" | "month";
}

const CURRENCY = /[\s\u00a0\u202f'$€£¥]|(?:US|C|A)\$|CHF|EUR|USD|GBP|kr\.?/gi;

/**
 * Finds out how a file writes numbers and days from all its cells: one cell that can be read in only one way decides.
 * Where none does, a file that separates cells by semicolons writes decimal commas, as its spreadsheet does.
 */
export function customsOf(numbers: Iterable<string>, days: Iterable<string>, delimiter: string): Customs {
  let commas = 0;
  let points = 0;
  for (const cell of numbers) {
    const mark = decisiveMark(cell.replace(CURRENCY, ""));
    if (mark === ",") commas++;
    if (mark === ".") points++;
  }
  const decimal = commas === points ? (delimiter === ";" ? "," : ".") : commas > points ? "," : ".";
  let slashDate: Customs["slashDate"] = decimal === "," ? "day" : "month";
  for (const day of days) {
    const [, first, second] = /^\s*(\d{1,2})\/(\d{1,2})\/\d{4}\s*$/.exec(day) ?? [];
    if (Number(first) > 12) slashDate = "day";
    if (Number(second) > 12) slashDate = "month";
  }
  return { decimal, slashDate };
}

/** The decimal mark of a number that can be read in one way only; 1,250 could be either. */
function decisiveMark(text: string): "." | "," | undefined {
  const marks = text.replace(/[^.,]/g, "");
  const last = marks.at(-1) as "." | "," | undefined;
  if (last === undefined) return undefined;
  if (marks.length === 1) return /[.,]\d{3}$/.test(text) && !/^-?0?[.,]/.test(text) ? undefined : last;
  // 1.250,5: the last of two kinds. 1.250.000: grouping, so the other one is decimal.
  return marks.includes(last === "," ? "." : ",") ? last : last === "," ? "." : ",";
}

/** A number as the file writes it, currency signs and grouping aside; undefined when it is none. */
export function readNumber(text: string, { decimal }: Customs): number | undefined {
  const bare = text.replace(CURRENCY, "").replace(/[−–]/g, "-");
  const group = decimal === "," ? "." : ",";
  const grouped = new RegExp(`^[-+]?\\d{1,3}(?:\\${group}\\d{3})+(?:\\${decimal}\\d+)?$`);
  const plain = new RegExp(`^[-+]?(?:\\d+(?:\\${decimal}\\d*)?|\\${decimal}\\d+)$`);
  if (!plain.test(bare) && !grouped.test(bare)) return undefined;
  const value = Number(bare.split(group).join("").replace(decimal, "."));
  return Number.isFinite(value) ? value : undefined;
}

/** A share: 7.5 % or 0.075; undefined when it is none. */
export function readShare(text: string, customs: Customs): number | undefined {
  const percent = /^(.*?)\s*%\s*$/s.exec(text);
  const value = readNumber(percent?.[1] ?? text, customs);
  return value === undefined ? undefined : percent ? value / 100 : value;
}

const YES = new Set("yes y true 1 x ja j oui si wahr".split(" "));
const NO = new Set("no n false 0 nein non falsch".split(" "));

/** Yes or no; undefined when it is neither. */
export function readFlag(text: string): boolean | undefined {
  const word = text.trim().toLowerCase();
  return YES.has(word) ? true : NO.has(word) || word === "" ? false : undefined;
}

/** A day as yyyy-mm-dd from 2031-05-28, 28.5.2031 or 5/28/2031; undefined when it is none. */
export function readDay(text: string, { slashDate }: Customs): string | undefined {
  const iso = /^\s*(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ].*)?$/.exec(text);
  if (iso) return isoDay(iso[1], iso[2], iso[3]);
  const dotted = /^\s*(\d{1,2})\.(\d{1,2})\.(\d{4})\s*$/.exec(text);
  if (dotted) return isoDay(dotted[3], dotted[2], dotted[1]);
  const slashed = /^\s*(\d{1,2})\/(\d{1,2})\/(\d{4})\s*$/.exec(text);
  if (!slashed) return undefined;
  return slashDate === "day" ? isoDay(slashed[3], slashed[2], slashed[1]) : isoDay(slashed[3], slashed[1], slashed[2]);
}

function isoDay(year = "", month = "", day = ""): string | undefined {
  const written = `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
  const time = Date.parse(written);
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(written) ? written : undefined;
}
