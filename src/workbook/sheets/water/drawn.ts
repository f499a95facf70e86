import type { Job, Ref, SheetLayout } from "../../layout";
import { factCell } from "../../layout/factCells";
import { DROPS } from "./drops";

/** What the section is drawn from, in the order of its rows. */
const FACTS_DRAWN = ["Run", "FallTyped", "GradeLevel", "BasinLength", "BasinWaterDepth"] as const;

/** Cells of the values the section is drawn from, and its steps as columns. */
export interface Drawn {
  readonly run: Ref;
  readonly grade: Ref;
  readonly basinLength: Ref;
  readonly basinDepth: Ref;
  readonly topLip: Ref;
  readonly drops: Ref;
  readonly treads: Ref;
  /** Formula text: how far the rim lies below grade. */
  readonly rim: string;
}

/**
 * The values the section is drawn from: as the sheets use them, and what is still open as the draft has it.
 *
 * @param numbers the column of the drops' numbers, as formula text
 */
export function drawnFrom(s: SheetLayout, job: Job, numbers: string): Drawn {
  s.section("What the section is drawn from");
  s.note("As the sheets use it. What is still open is taken from the draft: its basin, and equal drops and treads.");
  const top = s.row;
  const of = (column: string): string => `INDEX(${column},MATCH([fact],FactKeys,0))`;
  const facts = s.table({
    rows: FACTS_DRAWN.length,
    columns: [
      { key: "fact", title: "Fact", kind: "text", fixed: FACTS_DRAWN },
      {
        key: "value",
        title: "Drawn as",
        kind: "length",
        ...(job.hasFacts
          ? {
              whole: true,
              formula: `=IFERROR(IF(${of("FactsUsed")}="",${of("FactsLikely")},${of("FactsUsed")}),${of("FactsLikely")})`,
            }
          : { formula: FACTS_DRAWN.map((name) => `=IF(${name}="","",${name})`) }),
      },
    ],
  });
  const fact = (name: (typeof FACTS_DRAWN)[number]): Ref => facts.cell("value", FACTS_DRAWN.indexOf(name) + 1);
  const [run, fall, grade] = [fact("Run"), fact("FallTyped"), fact("GradeLevel")];
  const rim = `IFERROR(N(RimBelowGrade),0)/${job.per("size", "length")}`;
  s.put(s.row, 1, { value: "Top lip", style: "label" });
  const topLip = s.put(s.row, 2, {
    formula: `=IF(COUNT(${grade},${fall})<2,"",IFERROR(${grade}+${fall}-IF(FallFrom="rim of the basin",${rim},0),""))`,
    style: "result",
    kind: "length",
    name: "SectionTop",
    origin: { label: "Top lip of the section" },
  });
  s.row++;
  s.put(s.row, 1, { value: "Number of drops", style: "label" });
  const count = s.put(s.row, 2, {
    formula: `=IF(COUNT(DropCount)=1,DropCount,${job.hasFacts ? `N(${factCell("DropCount", "likely")})` : "0"})`,
    style: "result",
    kind: "count",
    origin: { label: "Drops of the section" },
  });
  s.row = top;
  const equal = (typed: string, total: Ref): string =>
    `=IF(ISNUMBER(${typed}),${typed},IF(${numbers}<=${count},N(${total})/MAX(1,${count}),0))`;
  const source = "by definition: equal shares where none is typed";
  const steps = s.table({
    at: 5,
    rows: DROPS,
    columns: [
      { key: "drop", title: "Drop", source, kind: "length", whole: true, formula: equal("Drops", fall) },
      { key: "tread", title: "Tread", source, kind: "length", whole: true, formula: equal("Treads", run) },
    ],
  });
  return {
    run,
    grade,
    basinLength: fact("BasinLength"),
    basinDepth: fact("BasinWaterDepth"),
    topLip,
    drops: steps.column("drop"),
    treads: steps.column("tread"),
    rim,
  };
}
