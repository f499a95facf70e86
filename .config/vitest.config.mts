import path from "node:path";
import { configDefaults, defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

const top = path.join(import.meta.dirname, "..");

/** Folders whose tests share what they load, for loading it takes longer than running most of them. */
const FOLDERS =
  "{arithmetic,book,calc,cli,csv,drawing,functions,help,host,house,job,manifest,papers,published,site,taskpane,wording,workbook,xlsx}";
/** Of the bench, those that put no other build of the grid in place, which the rest must not share. */
const SHARING = [`tests/${FOLDERS}/**/*.test.ts`, "tests/bench/*.test.ts", "tests/bench/!(grid)/**/*.test.ts"];
/** Tests in a real browser. */
const BROWSER = ["tests/browser/**/*.test.ts"];
/**
 * What a contributor does not wait for: long stories in a browser and of commands that draft job after job, and what other
 * programs make of the files. CI tries them behind the short run, as `npm run test:long` does.
 */
const LONG = [
  "tests/browser/bench{Book,Entries,Files,FirstLook,Hostile,Keeping,Keys,Lists,Looks,Losses,Offline,Papers,Paste,Prices,Typing}.test.ts",
  "tests/browser/{firstJob,help,paneFocus,paneLooks,paneSteps}.test.ts",
  "tests/cli/{copy,estimateDraft}.test.ts",
  "tests/workbook/{file,libreoffice,copy/valuesCopy}.test.ts",
];
/** What is timed has the machine to itself, and is left to the run of everything. */
const TIMED = ["tests/browser/benchSpeed.test.ts", "tests/bench/{speed,cutPlan}.test.ts"];
const ALL = ["tests/**/*.test.ts"];
/** Takes long although it is short: vitest begins with long files, and one processor would wait for this one at the end. */
const FIRST = "tests/workbook/eachCell.test.ts";

/** Vitest's own order, but for what is to come first in its project. */
class InOrder extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const early = sorted.find(({ moduleId }) => moduleId.endsWith(FIRST));
    if (!early) return sorted;
    const rest = sorted.filter((file) => file !== early);
    const place = rest.findIndex(({ project }) => project.name === early.project.name);
    return place < 0 ? sorted : [...rest.slice(0, place), early, ...rest.slice(place)];
  }
}

/**
 * Without a mode, what a contributor waits for (`tests/effort.ts`); `--mode long` tries the long stories that this leaves
 * out, `--mode all` everything.
 */
export default defineConfig(({ mode }) => {
  const everything = mode === "all";
  const exclude = [...configDefaults.exclude, ...TIMED];
  // A project reads this file again without the mode of the run, so that each is told of it.
  const env = { TESTS: everything ? "all" : "short" };
  const shortened = everything ? exclude : [...exclude, ...LONG];
  const alone = (name: string, include: string[], but: string[]) => ({
    extends: true as const,
    test: { name, env, include, exclude: but },
  });
  return {
    root: top,
    test: {
      // Random calls and recalculated workbooks share the machine with a browser; a slow test is not a wrong one.
      testTimeout: 60_000,
      hookTimeout: 120_000,
      setupFiles: [path.join(top, "tests/randomSeed.ts")],
      expect: { poll: { timeout: 15_000 } },
      reporters: ["default", path.join(top, "tests/plainSummary.ts")],
      maxWorkers: 2,
      sequence: { sequencer: InOrder },
      projects:
        mode === "long"
          ? [alone("long", LONG, exclude)]
          : [
              { extends: true, test: { name: "sharing", env, include: SHARING, exclude: shortened, isolate: false } },
              alone("apart", ALL, [...exclude, ...SHARING, ...BROWSER]),
              alone("browser", BROWSER, shortened),
              ...(everything
                ? [
                    {
                      extends: true as const,
                      test: { name: "timed", env, include: TIMED, maxWorkers: 1, sequence: { groupOrder: 1 } },
                    },
                  ]
                : []),
            ],
    },
  };
});
