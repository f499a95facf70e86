import { describe, expect, it } from "vitest";
import { optionWrites, OPTION_PLACES } from "../../../src/taskpane/options/keepOption";
import { demo } from "../../workbook/sheets/moneyJob";

const names = OPTION_PLACES.map((name, index) => ({
  name,
  address: `Price!${"BACEG"[index] ?? ""}${index === 0 ? 30 : 36}:${"BACEG"[index] ?? ""}43`,
  broken: false,
}));
const blank = (rows: number): string[][] => Array.from({ length: rows }, () => [""]);
const none = (): (string | number)[][][] => [[["As designed"], [""], [""]], blank(8), blank(8), blank(8), blank(8)];
const KINDS = 6;

describe("an option that is kept", () => {
  it("stands under the first free letter, as what it adds and saves: 1,000 to 1,150.10 and 500 to 420", () => {
    const costs = { before: [1000, 500, 0, 0, 0, 0], after: [1150.1, 420, 0, 0, 0, 0] };
    const { letter, changes } = optionWrites("Wider lip", costs, none(), names);
    expect(letter).toBe("B");
    expect(changes.map(({ place, values }) => [place, values[0]?.[0]])).toEqual([
      ["Price!B31", "Wider lip"],
      ["Price!A36", "Wider lip"],
      ["Price!C36", "material"],
      ["Price!E36", 150.1],
      ["Price!A37", "Wider lip"],
      ["Price!C37", "labor"],
      ["Price!E37", -80],
    ]);
  });

  it("leaves what is in use: C and the next free row", () => {
    const held = none();
    held[0] = [["As designed"], ["Lamps"], [""]];
    held[1] = [["Lamps"], ...blank(7)];
    held[2] = [["material"], ...blank(7)];
    held[3] = [[495], ...blank(7)];
    const { letter, changes } = optionWrites("=Wider", { before: [10], after: [20] }, held, names);
    expect(letter).toBe("C");
    expect(changes.map(({ place }) => place)).toEqual(["Price!B32", "Price!A37", "Price!C37", "Price!G37"]);
    // A name never becomes a formula.
    expect(changes[0]?.values).toEqual([["'=Wider"]]);
  });

  it("leaves a letter whose facts still stand, though its name was cleared: both would count", () => {
    const [, , , ...none8] = none();
    const left = [["BedWidth"], ...blank(7)];
    const factGrids = [[["As designed"], [""], [""]], none8[0], left, blank(8), none8[1], blank(8), blank(8)];
    expect(optionWrites("Wider", { before: [10], after: [20] }, none(), names).letter).toBe("B");
    expect(optionWrites("Wider", { before: [10], after: [20] }, none(), names, factGrids).letter).toBe("C");
  });

  it(
    "comes to the price of the changed job itself, to the cent, in all workbook formulas",
    { timeout: 60_000 },
    async () => {
      const alone = { OptionNames: [["As designed"], [""], [""]], OptionChangesB: Array(8).fill([""]) as string[][] };
      const [base, changed] = [await demo(alone), await demo({ ...alone, LaborCost: 2600.35, MachineCost: 600 })];
      const costs = (tried: typeof base): number[] =>
        Array.from({ length: KINDS }, (_, row) => tried.number("CostsA", row + 1));
      const { changes } = optionWrites("More hours", { before: costs(base), after: costs(changed) }, none(), names);
      const amounts = changes.filter(({ place }) => place.startsWith("Price!E")).map(({ values }) => values[0]?.[0]);
      // Labor 2,600.35 - 2,480.35; machines 600 - 641.20.
      expect(amounts).toEqual([120, -41.2]);
      const kept = await demo({
        OptionNames: [["As designed"], ["More hours"], [""]],
        OptionKinds: [["labor"], ["machine"], ...(Array(6).fill([""]) as string[][])],
        OptionChangesB: [...amounts.map((amount) => [amount ?? 0]), ...(Array(6).fill([""]) as string[][])],
      });
      expect(kept.number("OptionPrices", 1, 3)).toBe(changed.number("OptionPrices", 1, 1));
      expect(kept.number("OptionPrices", 1, 1)).toBe(base.number("OptionPrices", 1, 1));
      expect(changed.number("OptionPrices", 1, 1)).not.toBe(base.number("OptionPrices", 1, 1));
    },
  );

  it.each<[string, () => unknown, RegExp]>([
    ["no name", () => optionWrites(" ", { before: [1], after: [2] }, none(), names), /a name that the client can read/],
    ["no difference", () => optionWrites("x", { before: [1], after: [1] }, none(), names), /alter no cost/],
    [
      "no letter",
      () => optionWrites("x", { before: [1], after: [2] }, [[["A"], ["B"], ["C"]], ...none().slice(1)], names),
      /B and C are in use/,
    ],
    [
      "no room",
      () => optionWrites("x", { before: [1], after: [2] }, [none()[0], [["full"]], ...none().slice(2)], names),
      /takes 1 row.*0 are free/,
    ],
    [
      "another workbook",
      () => optionWrites("x", { before: [1], after: [2] }, [undefined], names),
      /no table of options/,
    ],
  ])("says what is wrong with %s", (_, work, sentence) => {
    expect(work).toThrow(sentence);
  });
});
