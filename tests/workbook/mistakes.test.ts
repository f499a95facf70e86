import { beforeAll, describe, expect, it } from "vitest";
import { assemble } from "../../src/workbook/assemble";
import type { CellValue, WorkbookModel } from "../../src/workbook/model";
import { sheets } from "../../src/workbook/sheets";
import { calculate } from "./calculated";
import { typeInto } from "./jobs";

type System = "US" | "SI";
type Row = readonly (CellValue | undefined)[];
type Typed = Readonly<Record<string, CellValue | readonly Row[]>>;

interface Check {
  readonly value: unknown;
  readonly verdict: unknown;
}

/** A mistake in the demo job, the check that must find it, and what else must be put right because of it. */
interface Mistake {
  readonly what: string;
  readonly typed: Readonly<Partial<Record<System, Typed>>>;
  readonly finds: string;
  readonly says: "FIX" | "LOOK";
  /** Checks that fail for the same reason: water that does not rise is also too little water. */
  readonly also?: readonly string[];
}

const keep = undefined;
/** The same in either system, so that one will do. */
const either = (typed: Typed): Mistake["typed"] => ({ US: typed });
const SMALL = "Demo B, small (invented)";

/** Each mistake is typed into the demo, which has none that says FIX. */
const MISTAKES: readonly Mistake[] = [
  {
    what: "a pipe so narrow that the water races",
    typed: { US: { RouteSizes: [[1.5], [1.5]] }, SI: { RouteSizes: [[50], [50]] } },
    finds: "Water speed in the pipe",
    says: "LOOK",
    also: ["Flow delivered"],
  },
  {
    // The curve ends at 2400 gph and 8.4 ft, far above the head of the pipe there.
    what: "a pump that would run off its curve",
    typed: {
      US: { PumpTable: [[keep, keep, keep, 11.4, 1200, 10.5, 2400, 8.4, "", "", "", "", "", ""]] },
      SI: { PumpTable: [[keep, keep, keep, 3.3, 4000, 3.05, 8000, 2.5, "", "", "", "", "", ""]] },
    },
    finds: "Works on its curve",
    says: "FIX",
    also: ["Flow delivered"],
  },
  {
    what: "a pump that cannot lift the water to the top",
    typed: {
      US: { ChosenPump: SMALL, FallTyped: 9, DropCount: 12 },
      SI: { ChosenPump: SMALL, FallTyped: 2.6, DropCount: 12 },
    },
    finds: "Shut-off head above the lift",
    says: "FIX",
    also: ["Flow delivered"],
  },
  {
    what: "a basin too small for the days without topping up",
    typed: either({ ReserveDays: 60 }),
    finds: "Spare water beyond the need",
    says: "FIX",
  },
  {
    // The pools give back more than the whole basin holds: it also runs dry, and the pump lifts from its floor.
    what: "a basin that overflows when the pump stops",
    typed: { US: { PoolTable: [[1500, keep]] }, SI: { PoolTable: [[150, keep]] } },
    finds: "Water that spills when the pump stops",
    says: "FIX",
    also: ["Flow delivered", "Spare water beyond the need", "Water over the floor while running"],
  },
  {
    what: "a rim that is not below the grade",
    typed: either({ RimBelowGrade: 0 }),
    finds: "Rim below finished grade",
    says: "FIX",
  },
  {
    what: "a rim too deep",
    typed: { US: { RimBelowGrade: 7 }, SI: { RimBelowGrade: 180 } },
    finds: "Rim below finished grade",
    says: "LOOK",
  },
  {
    what: "a piece wider than any roll",
    typed: {
      US: { LinerPieces: [[keep], [keep], ["Skirt", 26, 24, 1]] },
      SI: { LinerPieces: [[keep], [keep], ["Skirt", 8, 7, 1]] },
    },
    finds: "Pieces wider than every roll",
    says: "FIX",
    // There is no plan, and what follows from one is in error.
    also: ["Waste of the liner", "Working days"],
  },
  {
    what: "a berm that takes more soil than is dug",
    // Shot 4 ft and 1.2 m deeper behind the wall than in the demo: the ninth and tenth row.
    typed: {
      US: { ShotMid: [...Array.from({ length: 8 }, () => [keep]), [9.61], [9.46]] },
      SI: { ShotMid: [...Array.from({ length: 8 }, () => [keep]), [2.95], [2.9]] },
    },
    finds: "Spoil is enough for berm and backfill",
    says: "LOOK",
  },
  {
    what: "drops that do not add up to the fall",
    typed: { US: { Drops: [[1.2]] }, SI: { Drops: [[0.4]] } },
    finds: "Drops against the fall",
    says: "FIX",
    also: ["The last drop lands at the basin's grade"],
  },
  {
    what: "treads that do not add up to the run",
    typed: { US: { Treads: [[4]] }, SI: { Treads: [[1.2]] } },
    finds: "Treads against the run",
    says: "FIX",
  },
  {
    what: "banks lower than the water",
    typed: { US: { BankHeight: 0.1 }, SI: { BankHeight: 0.03 } },
    finds: "Deepest bed over rough stones",
    says: "FIX",
  },
  {
    what: "a boulder no machine at hand lifts",
    typed: { US: { StoneMix: [[keep], [keep], [keep], [34]] }, SI: { StoneMix: [[keep], [keep], [keep], [850]] } },
    finds: "Heaviest stone for the machine",
    says: "FIX",
  },
  {
    // 5 ft by 4 ft by 1 ft of granite are 3,300 lb, 1.6 × 1.2 × 0.3 m of basalt 1,700 kg.
    what: "a lip stone no machine at hand lifts",
    typed: {
      US: { LipStoneLength: 60, LipStoneWidth: 48, LipStoneHeight: 12 },
      SI: { LipStoneLength: 1600, LipStoneWidth: 1200, LipStoneHeight: 300 },
    },
    finds: "Heaviest stone for the machine",
    says: "FIX",
  },
  {
    what: "boulders higher than any drop or bank",
    typed: { US: { StoneMix: [[keep], [keep], [keep], [20]] }, SI: { StoneMix: [[keep], [keep], [keep], [500]] } },
    finds: "Biggest stone in drops and banks",
    says: "LOOK",
  },
  {
    what: "gravel heaped over the rim",
    typed: { US: { CoverDepth: 6 }, SI: { CoverDepth: 150 } },
    finds: "Gravel over the basin",
    says: "LOOK",
  },
  {
    what: "a price under the wanted margin",
    typed: either({ WantedMargin: 0.45 }),
    finds: "Gross margin of the quoted option",
    says: "FIX",
  },
  {
    what: "an order short of the takeoff",
    typed: either({ OrderLines: [[keep], [keep, keep, 5]] }),
    finds: "Lines ordered short of the takeoff",
    says: "LOOK",
  },
  {
    what: "a machine wider than the gate",
    typed: { US: { AccessWidth: 3.5 }, SI: { AccessWidth: 1.1 } },
    finds: "Way in for the widest machine",
    says: "FIX",
  },
  {
    // The pits are 2.67 ft and 0.875 m deep.
    what: "a pit that reaches into the groundwater",
    typed: { US: { GroundWaterDepth: 2.5 }, SI: { GroundWaterDepth: 0.8 } },
    finds: "Pit stays above the groundwater",
    says: "FIX",
  },
  {
    // 4.5 ft and 1.3 m of water, rim and bedding below grade; the basin then holds far more than it needs.
    what: "a pit that wants a ladder and a look",
    typed: {
      US: { BasinWaterDepth: 4.1, GroundWaterDepth: 9 },
      SI: { BasinWaterDepth: 1.2, GroundWaterDepth: 3 },
    },
    finds: "Depth of pit and trench",
    says: "LOOK",
  },
  {
    what: "a trench that wants a ladder",
    typed: { US: { TrenchDepth: 4 }, SI: { TrenchDepth: 1.3 } },
    finds: "Depth of pit and trench",
    says: "LOOK",
  },
  {
    what: "a check valve that no pipe has",
    typed: either({ CheckValve: "yes", Fittings7: [[""]] }),
    finds: "Check valve on the route",
    says: "FIX",
  },
  {
    what: "a text where a number belongs",
    typed: either({ BankHeight: "about ten" }),
    finds: "Inputs still blank on Site",
    says: "FIX",
    // What is calculated from it is in error, and says so.
    also: ["Deepest bed over rough stones", "Biggest stone in drops and banks"],
  },
  {
    what: "an input left blank",
    typed: either({ FallTyped: "" }),
    finds: "Inputs still blank on Site",
    says: "FIX",
  },
  {
    // 4500 gph are 75 gpm; 15800 L/h are 263 L/min.
    what: "a pump curve typed by the minute",
    typed: {
      US: { PumpTable: [[keep, keep, keep, keep, 20, keep, 40, keep, 55, keep, 67, keep, 75, keep]] },
      SI: { PumpTable: [[keep, keep, keep, keep, 67, keep, 133, keep, 192, keep, 233, keep, 263, keep]] },
    },
    finds: "Curve in ",
    says: "FIX",
    also: ["Flow delivered"],
  },
  {
    // Benchmark and shots lie near 100 ft: so much is cut that the margin falls as well.
    what: "a finished grade that is typed from another benchmark",
    typed: { US: { GradeLevel: 3 } },
    finds: "Levels apart, beyond the fall",
    says: "FIX",
    also: ["Gross margin of the quoted option"],
  },
];

/** What keeps a price back whatever the mistake; breakEachCell.test.ts tries them one by one. */
const OF_PRICE = new Set(["Cells in error", "Parts of the price not known"]);

/** A mistake is typed into a demo that was calculated once: where its spills are known, one more calculation takes half the time. */
async function checksOf(demo: WorkbookModel, typed: Typed = {}): Promise<Map<string, Check>> {
  const model = structuredClone(demo);
  for (const [name, value] of Object.entries(typed)) typeInto(model, name, Array.isArray(value) ? value : [[value]]);
  const rows = (await calculate(model)).named("Checks") ?? [];
  return new Map(rows.map(([label, value, , , verdict]) => [String(label), { value, verdict }]));
}

function find(checks: ReadonlyMap<string, Check>, label: string): Check {
  const found = [...checks].find(([one]) => one.startsWith(label));
  if (!found) throw new Error(`there is no check "${label}"`);
  return found[1];
}

describe.each(["US", "SI"] as const)("in the demo job, %s", (system) => {
  const demo = assemble(sheets, system, "demo");
  let without: Map<string, Check>;
  beforeAll(async () => {
    await calculate(demo);
    without = await checksOf(demo);
  });

  it.each(MISTAKES.filter(({ typed }) => typed[system]))(
    "$what is found, and nothing else is called wrong",
    async ({ typed, finds, says, also = [] }) => {
      expect(find(without, finds).verdict).toBe("OK");
      const checks = await checksOf(demo, typed[system]);
      expect(find(checks, finds).verdict).toBe(says);
      const wrong = [...checks].filter(
        ([label, { verdict }]) => (verdict === "FIX" || verdict === "ERROR") && !OF_PRICE.has(label),
      );
      const expected = says === "FIX" ? [finds, ...also] : also;
      const unexpected = wrong.filter(([label]) => !expected.some((one) => label.startsWith(one)));
      expect(unexpected).toEqual([]);
      expect(wrong).toHaveLength(expected.length);
    },
  );

  it("a cleared length or height of a bank's stones keeps the price back and says which part is missing", async () => {
    for (const row of [
      [keep, ""],
      [keep, keep, ""],
    ]) {
      const { value, verdict } = find(await checksOf(demo, { BankStone: [row] }), "Parts of the price not known");
      // Stone, its hauling, and the labor to set it.
      expect([value, verdict]).toEqual([3, "FIX"]);
    }
  });

  it("an invoice over the order is found", async () => {
    const before = Number(find(without, "Billed over ordered").value);
    // The first invoice line bills 90 where one was ordered.
    const { value, verdict } = find(await checksOf(demo, { InvoiceLines: [[keep, keep, 90]] }), "Billed over ordered");
    expect(verdict).toBe("LOOK");
    expect(Number(value)).toBeGreaterThan(before + 1000);
  });
});
