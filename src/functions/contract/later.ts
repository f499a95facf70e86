import { missing } from "../../calc/problem";

/** Code that few functions need and that is loaded when the first of them is called: Excel waits for the rest without it. */
export class Later<T> {
  private held: T | undefined;
  private coming: Promise<void> | undefined;
  private asked = false;

  constructor(private readonly fetch: () => Promise<T>) {}

  get ready(): boolean {
    return this.held !== undefined;
  }

  /** Whether a call failed for want of the code. */
  get wanted(): boolean {
    return this.asked && !this.ready;
  }

  /** Comes back when the code is there; another call tries again where a network failed. */
  load(): Promise<void> {
    return (this.coming ??= this.fetch().then(
      (loaded) => void (this.held = loaded),
      (error: unknown) => {
        this.coming = undefined;
        throw error;
      },
    ));
  }

  /** The code itself. Whoever calls functions in one go loads it before. */
  get now(): T {
    this.asked = true;
    if (this.held === undefined)
      throw missing("part of the add-in that reads these facts did not load; check the connection, then recalculate");
    return this.held;
  }
}
