import { invalid } from "../calc/problem";

const MOST_BYTES = 20_000_000;
const SAVE_AS = "save the sheet with the prices as CSV first";

/**
 * Refuses a file that is no text, before its bytes are read as letters.
 *
 * @throws Problem that says what the file is instead
 */
export function refuseFile(bytes: Uint8Array): void {
  const start = String.fromCharCode(...bytes.subarray(0, 5));
  if (bytes.length === 0) throw invalid("the file is empty");
  if (bytes.length > MOST_BYTES) {
    const [megabytes, most] = [Math.round(bytes.length / 1_000_000), MOST_BYTES / 1_000_000];
    throw invalid(`the file is ${megabytes} MB; price lists of up to ${most} MB are read`);
  }
  // The first bytes of a zip archive (.xlsx, .ods), and of the container of .xls and of workbooks with a password.
  if (start.startsWith("PK\x03\x04") || start.startsWith("\xd0\xcf\x11\xe0")) {
    throw invalid(`the file is a workbook, not a CSV file; ${SAVE_AS}`);
  }
  if (start === "%PDF-") throw invalid("the file is a PDF, not a CSV file; ask the supplier for the list as CSV");
  const marked = start.startsWith("\xff\xfe") || start.startsWith("\xfe\xff");
  if (!marked && bytes.subarray(0, 4096).includes(0)) throw invalid(`the file is not a text file; ${SAVE_AS}`);
}
