/** Why cells are in error: the sentences behind the error codes, by sheet and cell. */
export class Reasons {
  private readonly sentences = new Map<string, string>();

  set(sheetId: string, row: number, column: number, sentence: string): void {
    this.sentences.set(`${sheetId}!${row},${column}`, sentence);
  }

  clear(sheetId: string, row: number, column: number): void {
    this.sentences.delete(`${sheetId}!${row},${column}`);
  }

  /** Another workbook is shown. */
  forget(): void {
    this.sentences.clear();
  }

  of(sheetId: string, row: number, column: number): string | undefined {
    return this.sentences.get(`${sheetId}!${row},${column}`);
  }
}
