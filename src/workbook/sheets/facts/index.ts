import { FACTS, type FactKey } from "../../../job/facts";
import { defineSheet } from "../../layout";
import { Ref } from "../../layout/address";
import { COLUMN, FACTS_SHEET, FIRST_FACT, LAST_FACT } from "../../layout/factCells";
import { faults, missing, ofDraft, placesOf, reasons, said, states, stillDrafted } from "./formulas";
import { draftSpill } from "./draft";
import { headings } from "./headings";
import { heldFacts } from "./held";
import { showFacts } from "./shown";
import { single } from "./single";
import { standing } from "./standing";
import { BY_DEFINITION, columnsOfTables, faultsOfTables, wrongIn } from "./tableColumns";
import { tableRow } from "./tables";
import { fillDown } from "../money/cells";

/** Columns that a person reads; the others are for formulas. */
const READ = COLUMN.confirmed;

/** Every fact of the job in one row: what was typed, what is used in its place, and how far to trust it. */
export const facts = defineSheet({
  name: FACTS_SHEET,
  order: 90,
  turn: 3,
  build(s, job) {
    s.widths([
      32, 22, 10, 22, 22, 12, 10, 8, 8, 8, 50, 15, 14, 100, 9, 9, 220, 150, 90, 10, 10, 10, 8, 60, 80, 16, 24, 60, 60,
      60, 20, 22, 10, 22, 20, 12, 12, 12, 10, 90, 90, 14, 10,
    ]);
    s.within(READ, () => {
      s.title("Facts", "Every fact of the job: yours where you typed it, else your company's, else assumed.");
      standing(s);
      s.section("All facts");
      s.note(
        "Type into the company's column what holds for all your jobs, or the day you confirmed a value that came with the workbook.",
      );
    });
    headings(s);
    if (s.row !== FIRST_FACT) throw new Error(`the first fact stands in row ${s.row}, not ${FIRST_FACT}`);
    const column = (name: string, at: number): void => void s.define(name, FIRST_FACT, at, LAST_FACT, at);
    const ofAll = (at: number): Ref => new Ref(s.name, FIRST_FACT, at, LAST_FACT, at);
    column("FactNames", COLUMN.label);
    column("FactKeys", COLUMN.key);
    column("FactsSaid", COLUMN.said);
    column("FactsHeld", COLUMN.held);
    column("FactsDrafted", COLUMN.drafted);
    column("FactsStillDrafted", COLUMN.standing);
    column("FactsUsed", COLUMN.used);
    column("FactsLikely", COLUMN.likely);
    column("FactUnits", COLUMN.unit);
    column("FactStates", COLUMN.state);
    column("FactPlaces", COLUMN.place);
    column("FactReasons", COLUMN.reason);
    column("FactSheets", COLUMN.sheet);
    column("FactNeeded", COLUMN.needed);
    column("FactMissing", COLUMN.missing);
    column("FactsAssumedValues", COLUMN.assumed);
    column("FactsCompanyValues", COLUMN.company);
    column("FactsConfirmedDays", COLUMN.confirmed);
    const bodies = columnsOfTables(s, job, LAST_FACT + 4);
    for (const key of Object.keys(FACTS) as FactKey[]) {
      const fact = FACTS[key];
      if (fact.type === "table") tableRow(s, job, key, bodies);
      else single(s, job, key, fact);
      for (const at of [COLUMN.missing, COLUMN.wrongly, COLUMN.standing, COLUMN.said, COLUMN.drafts, COLUMN.fault])
        s.put(s.row, at, {});
      s.row++;
    }
    const drafted = draftSpill(s);
    for (const [at, formula] of [
      [COLUMN.standing, stillDrafted()],
      [COLUMN.said, said()],
      [COLUMN.low, ofDraft(drafted.column(3), drafted.column(1))],
      [COLUMN.likely, ofDraft(drafted.column(2), drafted.column(1))],
      [COLUMN.high, ofDraft(drafted.column(4), drafted.column(1))],
      [COLUMN.drafts, ofDraft(drafted.column(6), drafted.column(1))],
      [COLUMN.state, states()],
      [COLUMN.reason, reasons()],
      [COLUMN.missing, missing()],
      [COLUMN.place, placesOf(wrongIn(bodies))],
      [COLUMN.wrongly, faults()],
    ] as const)
      fillDown(s, ofAll(at), formula);
    fillDown(s, ofAll(COLUMN.fault), faultsOfTables(bodies), BY_DEFINITION);
    heldFacts(s);
    showFacts(s, job);
    s.notPrinted();
    s.print({ landscape: true, lastColumn: READ, titleRows: [FIRST_FACT - 1, FIRST_FACT - 1] });
    s.row = bodies.next;
  },
});
