import path from "node:path";
import { defineConfig } from "vitest/config";

const top = path.join(import.meta.dirname, "..");

export default defineConfig({
  root: top,
  test: {
    include: ["tests/**/*.test.ts"],
    // Random calls and recalculated workbooks share the machine with a browser; a slow test is not a wrong one.
    testTimeout: 60_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: 15_000 } },
    reporters: ["default", path.join(top, "tests/plainSummary.ts")],
  },
});
