/** "Pool 1", "Pool 2", …: the labels that DRAINTABLE gives the rows too. */
export function numbered(word: string, count: number): string[] {
  return Array.from({ length: count }, (_, index) => `${word} ${index + 1}`);
}

/** A column of the drain-back on Basin, looked up by the part's name: "Pool 2", "Bed 1". */
export function partOf(label: string, column: number): string {
  return `=IFERROR(INDEX(DrainParts,MATCH(${label},INDEX(DrainParts,0,1),0),${column}),"")`;
}
