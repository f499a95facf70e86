/** The name of the cell that a person types a fact into; the fact's own name is that of the cell with what is used. */
export function yoursName(name: string): string {
  return `${name}Yours`;
}
