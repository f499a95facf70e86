/** Which of the texts have every word of the query, in any order and any case. */
export function findEntries(texts: readonly string[], query: string): number[] {
  const words = query.toLowerCase().split(/\s+/).filter(Boolean);
  return texts.flatMap((text, index) => {
    const lower = text.toLowerCase();
    return words.every((word) => lower.includes(word)) ? [index] : [];
  });
}
