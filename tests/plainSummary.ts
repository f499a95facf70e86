import type { Reporter, TestModule } from "vitest/node";

/** Ends a run with one plain line, "N passed, N failed", for readers that do not know vitest's own summary. */
export default class PlainSummary implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    let passed = 0;
    let failed = unhandled.length;
    for (const module of modules) {
      // A file that cannot be loaded has no tests to count, and must not pass for a success.
      failed += module.errors().length;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === "passed") passed++;
        else if (state === "failed") failed++;
      }
    }
    // Behind the default reporter's summary, which is written in the same turn.
    setImmediate(() => process.stdout.write(`\n${passed} passed, ${failed} failed\n`));
  }
}
