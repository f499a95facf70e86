import { describe, expect, it } from "vitest";
import type { CellValue, Change, Host } from "../../../src/host/port";
import { INPUTS } from "../../../src/taskpane/options/inputs";
import { OPTION_PLACES } from "../../../src/taskpane/options/keepOption";
import { Trial } from "../../../src/taskpane/options/trial";
import { areaName, cellArea } from "../../../src/xlsx/address";

/** A workbook of a bed width and the lips, whose material costs 10 for each of width; one name a column, cells downwards. */
class Small {
  readonly cells = new Map<string, CellValue>();
  readonly formulas = new Map<string, string>();
  readonly written: Change[] = [];
  private at = "Site!A1";
  private readonly places = ["Units", "CostsA", "BedWidthYours", "LipTable", ...OPTION_PLACES];

  cell(name: string, down = 0, right = 0): string {
    return areaName(cellArea("Site", down, 10 * this.places.indexOf(name) + right));
  }

  grid = (name: string): CellValue[][] | undefined => {
    if (name === "CostsA") return [[10 * Number(this.cells.get(this.cell("BedWidthYours")))], [5], [0], [0], [0], [0]];
    if (!this.places.includes(name)) return undefined;
    return Array.from({ length: 8 }, (_, down) =>
      Array.from(
        { length: name === "LipTable" ? 4 : 1 },
        (_, right) => this.cells.get(this.cell(name, down, right)) ?? "",
      ),
    );
  };

  readonly host = {
    read: (names: string[]) => Promise.resolve(names.map(this.grid)),
    show: (names: string[]) => Promise.resolve(names.map((name) => this.grid(name)?.map((row) => row.map(String)))),
    names: () =>
      Promise.resolve(
        this.places.map((name) => ({
          name,
          address: `${this.cell(name)}:${this.cell(name, 7).split("!")[1] ?? ""}`,
          broken: false,
        })),
      ),
    select: (place: string) => Promise.resolve(void (this.at = place)),
    selected: () => Promise.resolve({ address: this.at, formula: this.formulas.get(this.at) ?? "" }),
    write: (changes: Change[]) => {
      this.written.push(...changes);
      for (const { place, values } of changes) this.cells.set(place, values[0]?.[0] ?? "");
      return Promise.resolve();
    },
  } as unknown as Host;
}

async function begun(): Promise<{ small: Small; trial: Trial; width: string }> {
  const small = new Small();
  const width = small.cell("BedWidthYours");
  small.cells.set(width, 36);
  return { small, trial: await Trial.begin(small.host), width };
}

describe("an option that is tried", () => {
  it("says what was changed, as it is changed", async () => {
    const { small, trial, width } = await begun();
    expect((await trial.compare()).inWords).toBe("");
    small.cells.set(width, 48);
    expect((await trial.compare()).inWords).toBe("Bed width 36 → 48");
    small.cells.set(width, "");
    expect((await trial.compare()).inWords).toBe("Bed width 36 → blank");
  });

  it("is kept with its difference in cost and in words, and its cells go back", async () => {
    const { small, trial, width } = await begun();
    small.cells.set(width, 48);
    expect(await trial.keep("")).toMatch(
      /option B on Price, at what it costs today, and the changed cells put back \(1 of 1\)/,
    );
    expect(small.cells.get(width)).toBe(36);
    expect(small.cells.get(small.cell("OptionNames", 1))).toBe("Bed width 36 → 48");
    expect(small.cells.get(small.cell("OptionKinds"))).toBe("material");
    // Twelve more at 10.
    expect(small.cells.get(small.cell("OptionChangesB"))).toBe(120);
    // In one write, that undoes in one step.
    expect((await trial.compare()).changes).toEqual([]);
  });

  it("writes over no formula of a person's own", async () => {
    const { small, trial, width } = await begun();
    small.cells.set(width, 48);
    small.formulas.set(width, "=B4*2");
    expect(await trial.keep("Wider")).toMatch(/put back \(0 of 1\)/);
    expect(small.written.map(({ place }) => place)).not.toContain(width);
  });

  it("keeps nothing where nothing changed, and begins on no job without a cost", async () => {
    const { small, trial } = await begun();
    await expect(trial.keep("Same")).rejects.toThrow(/Change something/);
    expect(small.written).toEqual([]);
    const empty = { ...small.host, read: () => Promise.resolve([[["", ""]]]) } as unknown as Host;
    await expect(Trial.begin(empty)).rejects.toThrow(/no cost yet/);
  });

  it("looks at every input of the design, and at no price or markup", () => {
    const places = INPUTS.map(({ place }) => place);
    expect(places).toContain("ChosenPumpYours");
    expect(places).toContain("BedWidthYours");
    expect(places).not.toContain("Markups");
    expect(places).not.toContain("OptionNames");
  });
});
