import path from "node:path";
import { defineConfig } from "vitest/config";

const top = path.join(import.meta.dirname, "..");

/** Folders whose tests share what they load, for loading it takes longer than running most of them. */
const FOLDERS = "{arithmetic,calc,csv,drawing,functions,help,job,manifest,published,site,taskpane,workbook}";
/** The tests of both engines put another library in place, which they must not share. */
const SHARING = [`tests/${FOLDERS}/**/!(engines).test.ts`];
/** Tests in a real browser. */
const BROWSER = ["tests/browser/**/*.test.ts"];
/** What is timed in the browser has the machine to itself. */
const TIMED = ["tests/browser/benchSpeed.test.ts"];
const ALL = ["tests/**/*.test.ts"];

export default defineConfig({
  root: top,
  test: {
    // Random calls and recalculated workbooks share the machine with a browser; a slow test is not a wrong one.
    testTimeout: 60_000,
    hookTimeout: 120_000,
    setupFiles: [path.join(top, "tests/randomSeed.ts")],
    expect: { poll: { timeout: 15_000 } },
    reporters: ["default", path.join(top, "tests/plainSummary.ts")],
    maxWorkers: 2,
    // One group after the other, so that nothing is measured beside a browser.
    projects: [
      {
        extends: true,
        test: { name: "sharing", include: SHARING, isolate: false, sequence: { groupOrder: 0 } },
      },
      {
        extends: true,
        test: { name: "apart", include: ALL, exclude: [...SHARING, ...BROWSER], sequence: { groupOrder: 1 } },
      },
      { extends: true, test: { name: "browser", include: BROWSER, exclude: TIMED, sequence: { groupOrder: 2 } } },
      { extends: true, test: { name: "timed", include: TIMED, maxWorkers: 1, sequence: { groupOrder: 3 } } },
    ],
  },
});
