import type { SheetLayout } from "../../layout";
import { COLUMN } from "../../layout/factCells";

/** The draft brings its own. */
const TITLES: Readonly<Record<Exclude<keyof typeof COLUMN, "draft">, string>> = {
  label: "Fact",
  yours: "Yours",
  company: "Company",
  assumed: "Assumed",
  used: "Used",
  unit: "Unit",
  state: "State",
  low: "Low",
  likely: "Likely",
  high: "High",
  reason: "Reason",
  place: "Place",
  confirmed: "Confirmed on",
  drafts: "Why the draft takes it so",
  least: "Least",
  most: "Most",
  takes: "What it takes",
  note: "Note",
  because: "Why assumed",
  shipped: "Came as",
  read: "As read",
  sheet: "Sheet",
  needed: "Needed",
  missing: "To fill or fix",
  says: "Type",
  days: "May be a day",
  own: "Typing makes it yours",
  fault: "Wrong in the table",
  called: "Called",
  wrongly: "What is wrong",
  key: "Name",
  drafted: "As drafted",
  standing: "Still so",
  said: "Said",
  held: "Held",
  letters: "Its column",
  top: "Its first row",
};

const LEFT = new Set<string>([
  "label",
  "unit",
  "state",
  "reason",
  "place",
  "takes",
  "note",
  "because",
  "missing",
  "says",
  "called",
  "fault",
  "wrongly",
  "key",
  "drafts",
  "letters",
]);

/** The heads of the columns. */
export function headings(s: SheetLayout): void {
  for (const [key, title] of Object.entries(TITLES)) {
    s.put(s.row, COLUMN[key as keyof typeof COLUMN], { value: title, style: LEFT.has(key) ? "headText" : "head" });
  }
  s.row++;
}
