/** The grid's id of the sheet at `index`. */
export function sheetId(index: number): string {
  return `sheet${index + 1}`;
}
