/** The columns of a table, in pixels. */
export function columnWidths(widths: readonly number[]): HTMLElement {
  const group = document.createElement("colgroup");
  for (const width of widths) {
    const column = document.createElement("col");
    column.style.width = `${width}px`;
    group.append(column);
  }
  return group;
}
