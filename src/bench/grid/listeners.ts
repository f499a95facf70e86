/** Whoever wants to be told of something, until they say stop. */
export class Listeners {
  private readonly all = new Set<() => void>();

  add(listener: () => void): () => void {
    this.all.add(listener);
    return () => this.all.delete(listener);
  }

  tell(): void {
    this.all.forEach((listener) => listener());
  }
}
