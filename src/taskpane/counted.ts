/** "1 line", "20,000 lines". */
export function counted(count: number, one: string, more = `${one}s`): string {
  return `${count.toLocaleString("en")} ${count === 1 ? one : more}`;
}
