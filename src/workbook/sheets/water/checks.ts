import type { Job, SheetLayout } from "../../layout";
import { perLength } from "./beds";

/** What can be wrong with lips, drops and beds. */
export function checks(s: SheetLayout, job: Job): void {
  const tape = job.pick({ US: { value: 0.011, words: "within ⅛ in" }, SI: { value: 0.003, words: "within 3 mm" } });
  const addsUp = (label: string, total: string, whole: string, fix: string, cure: string): void =>
    s.check({
      label,
      value: `=${total}-${whole}`,
      limit: tape.value,
      least: -tape.value,
      words: tape.words,
      source: "by definition, as near as a tape is read: common practice, no source",
      cure,
      fix,
      kind: "length",
      needs: [total, whole],
    });
  addsUp("Drops against the fall", "DropTotal", "Fall", "Drops", "Change the drops until they add up to the fall.");
  addsUp("Treads against the run", "TreadTotal", "Run", "Treads", "Change the treads until they add up to the run.");
  const sheet = job.pick({
    US: { least: 0.25, most: 2, words: "¼ to 2 in" },
    SI: { least: 6, most: 50, words: "6 to 50 mm" },
  });
  s.check({
    label: "Wanted sheet",
    source: "common practice, no source",
    value: "=SheetWanted",
    limit: sheet.most,
    least: sheet.least,
    words: sheet.words,
    cure: "Thinner sheets break up into threads, deeper ones take a lot of flow (rule of thumb).",
    fix: "SheetWanted",
    kind: "size",
    weight: "look",
    needs: ["SheetWanted"],
  });
  s.check({
    label: "Least flow over a lip",
    value: "=MIN(INDEX(LipSplit,0,2))",
    sign: "more than",
    limit: 0,
    cure: "A lip stays dry: lower it, or ask for more flow.",
    fix: "LipTable",
    kind: "flow",
    weight: "look",
    needs: ["LipSplit"],
  });
  s.check({
    label: "Deepest bed over rough stones (1.9 times)",
    source:
      "Manning (1891): in a wide bed depth goes with n to the power 3/5; n is 0.15 in a cascade where tables say 0.05",
    value: `=BankHeight-1.9*BedDepthMost/${perLength(job)}`,
    sign: "at least",
    limit: 0,
    over: "spare",
    cure: "Water would leave the banks: raise them, widen the bed or take less flow.",
    fix: "BankHeight",
    kind: "length",
    needs: ["BedDepthMost", "BankHeight"],
  });
  s.check({
    label: "Beds together against the run",
    source: "common practice, no source",
    value: "=SUM(BedLengths)/Run",
    limit: 1.1,
    cure: "The beds are longer than the run has room for: check the lengths, or the run on Site.",
    fix: "BedTable",
    kind: "share",
    over: "of run",
    weight: "look",
    needs: ["BedLengths", "Run"],
  });
  s.check({
    label: "Highest Froude number",
    value: "=MAX(BedFroudes)",
    limit: 1,
    cure: "The water shoots: flatten or roughen the bed, or keep splash inside the liner.",
    fix: "BedTable",
    kind: "factor",
    weight: "look",
    needs: ["BedFroudes"],
  });
}
