import { DIGGING_CAUTION } from "../../../functions/earth/arguments";
import { LIFTING_CAUTION } from "../../../functions/stone/arguments";
import { defineSheet, type SheetLayout } from "../../layout";
import { LEVEL_ROWS, levels } from "./levels";
import { basin, cuts, plumbing, stones } from "./lists";
import { sequence } from "./sequence";

const WIDTHS = [24, 7.5, 7.5, 11, 16, 7, 1.5, 20.5, 8.5, 8.5, 9];
/** The first column of the right half, behind a narrow gap. */
const RIGHT = 8;

/** The one page the crew takes along: cautions, sequence, levels, cuts, stones, pump and basin. */
export const crew = defineSheet({
  name: "Crew",
  order: 18,
  build(s, job) {
    s.widths(WIDTHS);
    s.purpose = "Print this page for the crew; everything on it comes from the other sheets.";
    s.print({ pagesHigh: 1, plain: true });
    s.takesPictures();
    letterhead(s);
    cautions(s);
    gap(s);
    sequence(s, job);
    const right = { left: RIGHT, across: s.lastColumn - RIGHT + 1 };
    gap(s);
    const top = s.row;
    levels(s, top);
    stones(s, { ...right, top: cuts(s, { ...right, top }) + 1 }, job);
    s.row = top + LEVEL_ROWS + 2;
    gap(s);
    const band = s.row;
    plumbing(s, { left: 1, across: RIGHT - 2, top: band }, job);
    basin(s, { ...right, top: band }, job);
    s.row = band + 6;
    gap(s);
    signOff(s);
  },
});

/** A little room between two parts: the page is full. */
function gap(s: SheetLayout): void {
  s.sheet.heights.set(s.row++, 4);
}

function letterhead(s: SheetLayout): void {
  const last = s.lastColumn;
  const wrap = true;
  s.put(1, 1, { formula: `=JobName&""`, style: "title", look: { size: 14 }, across: last });
  s.sheet.heights.set(1, 24);
  s.put(2, 1, {
    formula: `=FeatureName&IF(SiteAddress="","",", "&SiteAddress)`,
    style: "plain",
    look: { wrap },
    across: RIGHT - 2,
  });
  s.put(2, RIGHT, {
    formula: `=CompanyName&IF(CompanyPhone="","",", "&CompanyPhone)`,
    style: "plain",
    look: { wrap, align: "right" },
    across: last - RIGHT + 1,
  });
  s.put(3, 1, {
    formula: `=IF(FunctionsRun="yes","","The add-in's functions are not running: numbers are missing here. ")&IF(AccessNote="","","Access: "&AccessNote&" ")&IF(Estimator="","","Questions to "&Estimator&".")`,
    style: "plain",
    look: { wrap, bold: true },
    across: last,
  });
  s.roomFor(2, 2);
  s.roomFor(3, 2);
  s.row = 4;
  gap(s);
}

/** What the crew must not be hurt by: buried lines and pits, weights, mains, open water. */
function cautions(s: SheetLayout): void {
  s.caution(DIGGING_CAUTION);
  s.caution(LIFTING_CAUTION);
  s.caution(
    "Line voltage near water kills: wiring is the electrician's work; switch off and unplug before reaching into the water.",
  );
  s.caution("Cover or fence the open pit and the water whenever nobody watches: children drown in shallow water.");
}

function signOff(s: SheetLayout): void {
  s.put(s.row, 1, {
    value:
      "Levels read again and closed on the benchmark:  name __________________  date ____________  foreman __________________",
    style: "plain",
    across: s.lastColumn,
  });
  s.sheet.heights.set(s.row, 20);
}
