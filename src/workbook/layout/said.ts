// Numbers in the words of a page. TEXT with a pattern reads its signs by the region of the machine: where decimals have a comma,
// "0.0" gives "03", and where years are called otherwise, "yyyy" stays as it stands. A day gets a cell of its own with a format.

/** A number with so many decimals, its thousands apart, with the signs of the reader's region. */
export function said(value: string, decimals: number): string {
  return `FIXED(${value},${decimals})`;
}

/** A share as whole percent. */
export function saidPercent(share: string): string {
  return `ROUND(100*${share},0)&"%"`;
}
