import type { Job, SheetLayout } from "../../layout";

/** What can be wrong with fall, run and drops. */
export function checks(s: SheetLayout, job: Job): void {
  // Three capital letters are a code; whatever else stands beside amounts is a sign of one's own.
  const letters = "SUM(--(ABS(CODE(MID(Currency,{1,2,3},1))-77.5)<13))";
  const wrong = `IF(LEN(Currency)<>3,0,IF(${letters}<3,0,IF(ISNUMBER(FIND(Currency,CurrencyCodes)),0,1)))`;
  s.check({
    label: "Currency codes that do not exist",
    source: "ISO 4217, list one",
    value: `=${wrong}`,
    limit: 0,
    ok: `${wrong}=0`,
    cure: "Correct the currency: three capital letters are read as a code of ISO 4217, such as USD, and there is none like this.",
    fix: "Currency",
    kind: "count",
    weight: "look",
    needs: ["Currency"],
  });
  s.check({
    label: "Slope of the feature",
    source: "by definition: fall over run",
    value: "=Fall/Run",
    limit: "at most 100%",
    ok: "Fall<=Run",
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
    limit: job.system === "US" ? "at most 2 ft" : "at most 0.6 m",
    ok: `Fall/DropCount<=${job.pick({ US: 2, SI: 0.6 })}`,
    cure: "Add drops: tall ones splash water out (rule of thumb).",
    fix: "DropCount",
    kind: "length",
    weight: "look",
    needs: ["Fall", "DropCount"],
  });
}
