import type { Job, SheetLayout } from "../../layout";

/** What can be wrong with fall, run and drops. */
export function checks(s: SheetLayout, job: Job): void {
  s.check({
    label: "Slope of the feature",
    source: "by definition: fall over run",
    value: "=Fall/Run",
    limit: 1,
    cure: "Over 1 in 1 is a wall: check fall and run, or design a waterfall.",
    fix: "FallTyped",
    kind: "share",
    weight: "look",
    needs: ["Fall", "Run"],
  });
  s.check({
    label: "Fall of one drop",
    source: "by definition: fall over drops; the limit is common practice, no source",
    value: "=Fall/DropCount",
    limit: job.pick({ US: 2, SI: 0.6 }),
    cure: "Add drops: tall ones splash water out (rule of thumb).",
    fix: "DropCount",
    kind: "length",
    weight: "look",
    needs: ["Fall", "DropCount"],
  });
}
