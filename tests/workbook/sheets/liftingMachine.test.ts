import { expect, it } from "vitest";
import { demoOf } from "../../job/agreement/workbooks";

/*
 * The demo's machines, US: excavators of 1.8 ton (3.5 ft wide, 520 lb at 8 ft, 39.00 an hour), 4 ton (6 ft, 1,450 lb at
 * 10 ft, 57.00, usual) and 8 ton (8 ft, 3,600 lb, 96.50), skid steer (6 ft, 1,900 lb at 4 ft, 46.30, usual), hoist
 * (3 ft, 300 lb, 7.30). A lip stone of granite fills its box: 32 x 20 x 5 in is 1.852 ft3.
 */
it("lets the way in and the heaviest stone choose the machine, and prices stones by its hour", async () => {
  const book = await demoOf("US");
  const at = (name: string): string => book.names.get(name)?.replace(/\$/g, "").replace(/:.*/, "") ?? name;
  const tried = (typed: Record<string, number | string>) => {
    const cells = Object.entries(typed).map(([name, value]) => [at(`${name}Yours`), value] as const);
    const done = book.recalculate(new Map(cells));
    const value = (name: string): unknown => done.named(name)?.[0]?.[0];
    const check = done.named("Checks")?.find(([label]) => label === "Heaviest stone for the machine") ?? [];
    return { by: value("StoneMachine"), rate: value("StoneMachineRate"), mix: value("MachineRate"), check, value };
  };
  expect(tried({ AccessWidth: 6.5 })).toMatchObject({ by: "Skid steer loader (invented)", rate: 46.3 });
  // The loader's chart ends at 4 ft.
  expect(tried({ AccessWidth: 6.5, SetReach: 9 })).toMatchObject({ by: "Mini excavator, 4 ton (invented)", rate: 57 });
  expect(tried({ AccessWidth: 4 })).toMatchObject({ by: "Mini excavator, 1.8 ton (invented)", rate: 39 });
  const heavy = { LipStoneLength: 60, LipStoneWidth: 48, LipStoneHeight: 12 };
  // 20 ft3 of granite at up to 172 lb/ft3 or so is over 3,300 lb: the 8 ton one alone, which needs 8 ft.
  expect(tried({ AccessWidth: 9, ...heavy })).toMatchObject({ by: "Excavator, 8 ton (invented)", rate: 96.5 });
  const shut = tried({ AccessWidth: 6.5, MachineLift: "", ...heavy });
  expect(shut.by).toBe("none fits");
  expect(shut.rate).toBe(shut.mix);
  expect(shut.check[4]).toBe("FIX");
  expect(shut.check.join(" ")).toContain("wider way in");
  expect(tried({ AccessWidth: "" }).by).toBe("not known");
});
