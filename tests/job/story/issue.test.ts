import { describe, expect, it } from "vitest";
import {
  differences,
  differenceWords,
  issueRows,
  issuesIn,
  nextIssue,
  type Held,
  type QuoteState,
} from "../../../src/job/story/issue";

const state = (fall: number, price: number): QuoteState =>
  new Map<string, Held[][]>([
    ["Fact", [["Fall", fall, "ft"]]],
    ["Figure", [["Price with tax", price, "$"]]],
    ["Quote", [["What you get"], ["", "", 30]]],
  ]);
const blank = (rows: number): Held[][] => Array.from({ length: rows }, () => Array.from({ length: 11 }, () => ""));
const appended = (list: Held[][], rows: Held[][]): Held[][] => {
  const used = list.filter((row) => row.some((cell) => cell !== "")).length;
  return list.map((row, index) => rows[index - used] ?? row);
};

describe("issuing a quote", () => {
  it("gives back what was kept, revision by revision, figures first", () => {
    const rows = issueRows({ revision: 1, day: 46160, state: state(2.75, 12000) });
    expect(rows.map((row) => row[2])).toEqual(["Figure", "Fact", "Quote", "Quote"]);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([11]));
    const list = appended(appended(blank(20), rows), issueRows({ revision: 2, day: 46170, state: state(3, 12500) }));
    const [first, second] = issuesIn(list);
    expect(issuesIn(list)).toHaveLength(2);
    expect(first?.state.get("Fact")?.[0]?.slice(0, 3)).toEqual(["Fall", 2.75, "ft"]);
    expect(second?.day).toBe(46170);
    expect(second?.state.get("Quote")?.[1]?.[2]).toBe(30);
  });

  it("says what changed and by how much, and nothing of the noise of another machine", () => {
    const before = state(2.75, 12000);
    expect(differences(before, state(2.75 + 1e-12, 12000))).toEqual([]);
    expect(differences(before, state(3, 12500)).map(differenceWords)).toEqual([
      "Price with tax 12000 to 12500 $",
      "Fall 2.75 to 3 ft",
    ]);
    const without = new Map([...before].filter(([part]) => part !== "Fact"));
    // Two facts of one name, each held to its own.
    const twice: QuoteState = new Map([
      [
        "Fact",
        [
          ["Width", 0.25, "m"],
          ["Width", 480, "mm"],
        ],
      ],
    ]);
    expect(differences(twice, twice)).toEqual([]);
    expect(differences(without, before).map(differenceWords)).toEqual(["Fall nothing to 2.75 ft"]);
  });

  it("counts revisions on, and refuses drafts, earlier days and a full list with a sentence", () => {
    const list = appended(blank(8), issueRows({ revision: 1, day: 46160, state: state(2.75, 12000) }));
    expect(nextIssue(list, state(3, 1), { day: 46160, draft: "", room: 8 })).toMatchObject({ revision: 2 });
    expect(
      nextIssue(list, state(3, 1), { day: 46160, draft: "Draft, not to be signed: no price.", room: 8 }),
    ).toContain("no price");
    expect(nextIssue(list, state(3, 1), { day: 46159, draft: "", room: 8 })).toContain("later day");
    expect(nextIssue(list.slice(0, 5), state(3, 1), { day: 46160, draft: "", room: 7 })).toContain("full");
  });

  it("keeps a text from becoming a formula", () => {
    const rows = issueRows({ revision: 1, day: 46160, state: new Map([["Fact", [["Job", "=1+1"]]]]) });
    expect(String(rows[0]?.[4]).startsWith("=")).toBe(false);
  });
});
