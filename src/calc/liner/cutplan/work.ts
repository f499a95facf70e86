/**
 * Work done and still allowed, counted in boxes looked at (some ten nanoseconds each) rather than in time, so that
 * every machine ends at the same plan.
 */
export class Work {
  done = 0;

  constructor(readonly most: number) {}

  get isSpent(): boolean {
    return this.done >= this.most;
  }
}
