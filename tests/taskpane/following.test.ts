import { expect, it } from "vitest";
import { DRAWINGS } from "../../src/taskpane/drawings";
import { besideSheet } from "../../src/taskpane/following";
import { sheets } from "../../src/workbook/sheets";

const TABS = ["Start", "Job", "Functions", "Drawings", "Lists", "Help"];

it.each(sheets.map(({ name }) => name))("what stands beside %s is there", (name) => {
  const beside = besideSheet(name);
  if (!beside) return;
  expect(TABS).toContain(beside.tab);
  if (beside.choice !== undefined) expect(DRAWINGS.map(({ title }) => title)).toContain(beside.choice);
});

it("shows the section beside Water, the curves beside Pump, the cut plan beside Liner and the job beside Price", () => {
  expect(besideSheet("Water")?.choice).toBe("Section");
  expect(besideSheet("Pump")?.choice).toBe("Pump and system curves");
  expect(besideSheet("Liner")?.choice).toBe("Cut plan");
  expect(besideSheet("Price")?.tab).toBe("Job");
  expect(besideSheet("toString")).toBeUndefined();
});
