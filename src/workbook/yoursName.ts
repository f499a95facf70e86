/** The name of the cell that a person types a fact into; the fact's own name is that of the cell with what is used. */
export function yoursName(name: string): string {
  return `${name}Yours`;
}

/** The cells, as "Sheet!A1", that a person types a named value into. */
export function answerCell(name: string, names: ReadonlyMap<string, string>): string | undefined {
  return (names.get(yoursName(name)) ?? names.get(name))?.replace(/\$/g, "");
}
