/** A text that a spreadsheet may run as a formula when it opens a CSV file; full-width signs count in some locales. */
const RUNS = /^'*[=+\-@\t\r\n＝＋－＠]/;
const PLAIN_NUMBER = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;

/** Puts an apostrophe before a text that a spreadsheet might run; a text that is a plain number stays as it is. */
export function guardText(text: string): string {
  return RUNS.test(text) && !PLAIN_NUMBER.test(text) ? `'${text}` : text;
}

/** Takes off the apostrophe that `guardText` put there. */
export function unguardText(text: string): string {
  return text.startsWith("'") && RUNS.test(text) ? text.slice(1) : text;
}
