import { beforeAll, describe, expect, it } from "vitest";
import { FLAT, isError, SiteWork, type Changes } from "./siteWork";

const SHEETS = ["Stone", "Earth", "Levels", "Hours", "Crew"];

describe.each(["US", "SI"] as const)("stone, earth, levels, labor and crew, %s", (system) => {
  it("show no error, filled or blank", async () => {
    for (const filled of ["demo", "blank"] as const) {
      const work = await SiteWork.make(system, filled);
      for (const sheet of SHEETS) expect(work.shown(sheet).filter(isError), `${sheet}, ${filled}`).toEqual([]);
    }
  });

  it("add up: parts make the whole", async () => {
    const work = await SiteWork.make(system, "demo");
    const sum = (name: string, column: number): number =>
      work.rows(name).reduce((all, row) => all + (typeof row[column] === "number" ? row[column] : 0), 0);
    expect(sum("DropStone", 4)).toBeCloseTo(work.number("DropTons"), 9);
    expect(sum("BankStone", 4)).toBeCloseTo(work.number("BankTons"), 9);
    expect(work.number("BoulderTons")).toBeCloseTo(work.number("DropTons") + work.number("BankTons"), 9);
    const total = work.rows("StoneSizes").find(([first]) => first === "Total");
    expect(total?.[2]).toBeCloseTo(work.number("BoulderTons"), 9);
    expect(sum("StepTable", 1)).toBeCloseTo(work.number("Fall"), 9);
    expect(sum("StepTable", 2)).toBeCloseTo(work.number("Run"), 9);
    expect(sum("LaborTable", 6)).toBeCloseTo(work.number("LaborHours"), 9);
    const soil = work.rows("SoilTable");
    expect(Number(soil[0]?.[1]) + Number(soil[3]?.[1])).toBeCloseTo(Number(soil[1]?.[1]) + Number(soil[2]?.[1]), 9);
  });
});

describe("the Stone sheet", () => {
  let work: SiteWork;
  beforeAll(async () => {
    work = await SiteWork.make("US", "demo");
  });

  it("weighs drops, banks and lip stones as by hand", () => {
    // Granite 2.65 g/cm³ is 165.43 lb/ft³. Drops: 2.75 × 3.25 ft × 14/12 ft × 0.65 × 165.43 × 1.08 = 1,210.9 lb = 0.6055 ton.
    expect(work.number("DropTons")).toBeCloseTo(0.6055, 4);
    // Banks: 2 × (9.5 + 2.75) × 0.9 ft × 10/12 ft × 0.65 × 165.43 × 1.08 = 2,134 lb = 1.067 ton.
    expect(work.number("BankTons")).toBeCloseTo(1.067, 3);
    // Lip stone, a box: 32 × 20 × 5 in = 1.8519 ft³ × 165.43 = 306.4 lb; one for each of 4 drops.
    expect(work.number("LipStoneWeight")).toBeCloseTo(306.4, 1);
    expect(work.number("LipStoneCount")).toBe(4);
    // At most of 2.7 g/cm³, 168.56 lb/ft³: × 1.8519 = 312.1 lb.
    expect(work.number("LipStoneHeavy")).toBeCloseTo(312.1, 1);
  });

  it("counts stones that agree with the tons, and prints what one weighs as a range", () => {
    // Angular granite: 0.7618 × 165.43 = 126.03 lb/ft³, so 16, 13, 10 and 7 in weigh 298.7, 160.2, 72.93 and 25.02 lb. Of 3,344.9 lb:
    // 15 % 501.7 is 2 (95.7 over), 30 % 1,003.5 is 6 (53.6 over in all), 35 % 1,170.7 is 16 (49.8), 20 % 669.0 is 26 (31.2).
    const rows = work.rows("StoneSizes");
    expect(rows.slice(0, 5).map((row) => row[6])).toEqual([26, 16, 6, 2, 50]);
    const counted = rows.slice(0, 4).reduce((sum, row) => sum + Number(row[3]) * Number(row[6]), 0);
    expect(counted / 2000 / work.number("BoulderTons")).toBeCloseTo(1 + 31.2 / 3344.9, 3);
    // The heaviest 16 in: its box of 2.37037 ft³ × 168.56 = 399.5 lb; the lightest: π/6 × 162.31 × 2.37037 = 201.5 lb.
    expect(rows[3]?.slice(4, 6)).toEqual([expect.closeTo(201.5, 1), expect.closeTo(399.5, 1)]);
    expect(work.number("HeaviestStone")).toBeCloseTo(399.5, 1);
  });

  it("agrees within half of the biggest stone in a job of a few hundred pounds too", async () => {
    // One drop of 0.8 × 2 ft and banks of 3.2 ft would ask for one stone of each size or more, rounded up.
    const small = await SiteWork.make("US", "demo", {
      Fall: 0.8,
      Run: 2.4,
      DropCount: 1,
      BedWidth: 2,
      BankHeight: 0.4,
    });
    const counted = small.rows("StoneSizes").slice(0, 4);
    const pounds = counted.reduce((sum, row) => sum + Number(row[3]) * Number(row[6]), 0);
    expect(Math.abs(pounds - 2000 * small.number("BoulderTons"))).toBeLessThan(298.8 / 2);
  });

  it("fills bed, basin top and the space around modules as by hand", () => {
    // Washed gravel 100 lb/ft³: bed 3.25 × 9.5 ft × 2.5/12 ft and top 9 × 6.5 ft × 3/12 ft, × 100 × 1.08 / 2000 = 0.3473 + 0.7898.
    expect(work.number("GravelTons")).toBeCloseTo(1.1371, 4);
    // River stone 99 lb/ft³ in what modules leave of the basin, 2.875 yd³: × 27 × 99 × 1.08 / 2000 = 4.150.
    expect(work.number("BasinStoneTons")).toBeCloseTo(4.15, 3);
    // Loads of 14 tons: gravel 1, stone around modules 1, boulders and lip stones 1.
    expect(work.number("StoneTruckloads")).toBe(3);
  });

  it("lists the gravel's loose volume as by hand, in either system", async () => {
    const typed = { Run: 9, BedWidth: 3, BedGravelDepth: 2, CoverDepth: 3, BasinFootprint: 60, StoneWaste: 0.1 };
    // (27 ft² × 2/12 ft + 60 × 3/12) × 1.1 = 21.45 ft³, / 27 = 0.7944 yd³; × 100 lb/ft³ / 2000 = 1.0725 ton.
    const us = await SiteWork.make("US", "demo", typed);
    expect(us.rows("StoneOrder")[0]?.[2]).toBeCloseTo(21.45 / 27, 9);
    expect(us.rows("StoneOrder")[0]?.[1]).toBeCloseTo(1.0725, 6);
    // (3 m² × 0.060 m + 6 × 0.075) × 1.1 = 0.693 m³; × 1.60185 t/m³ (100 lb/ft³) = 1.1101 t.
    const metric = { Run: 3, BedWidth: 1, BedGravelDepth: 60, CoverDepth: 75, BasinFootprint: 6, StoneWaste: 0.1 };
    const si = await SiteWork.make("SI", "demo", metric);
    expect(si.rows("StoneOrder")[0]?.[2]).toBeCloseTo(0.693, 9);
    expect(si.rows("StoneOrder")[0]?.[1]).toBeCloseTo(0.693 * 1.601846, 5);
  });

  it("covers a sloped basin as wide as it is at the top", async () => {
    const sloped = await SiteWork.make("US", "demo", { BasinFootprint: 100 });
    // 100 ft² × 3/12 ft × 100 lb/ft³ × 1.08 / 2000 = 1.35 ton
    expect(sloped.number("CoverTons")).toBeCloseTo(1.35, 9);
  });

  it("takes the quarry's own figure in any unit", async () => {
    const own = await SiteWork.make("US", "demo", { RockFigure: "2.8 t/m3", GravelFigure: "1.5 ton/yd3" });
    expect(own.number("DropTons") / work.number("DropTons")).toBeCloseTo(2.8 / 2.65, 9);
    // 1.5 ton/yd³ is 111.1 lb/ft³ in place of 100.
    expect(own.number("GravelTons") / work.number("GravelTons")).toBeCloseTo(1.1111, 4);
  });

  it("marks shares that do not add up, and stones too heavy to lift", async () => {
    expect(work.verdict("Shares of the sizes")).toBe("OK");
    expect(work.rows("StoneSizes").map((row) => row[7])).toContain("Machine and rigging");
    expect(work.rows("StoneSizes").map((row) => row[7])).toContain("By hand");
    const wrong = await SiteWork.make("US", "demo", { StoneMix: [[9, 0.9]] });
    expect(wrong.verdict("Shares of the sizes")).toBe("FIX");
  });

  it("compares the heaviest stone with the machine, at its heaviest", async () => {
    const verdict = async (typed: Changes): Promise<unknown> =>
      (await SiteWork.make("US", "demo", typed)).verdict("Heaviest stone for");
    // 399.5 lb; as a ball of 2.65 g/cm³ the same stone would pass 210 lb.
    expect(await verdict({ MachineLift: 400 })).toBe("OK");
    expect(await verdict({ MachineLift: 399 })).toBe("FIX");
    expect(await verdict({ MachineLift: 210 })).toBe("FIX");
    // Not knowing the machine is a question, not a mistake; it is none where hands lift all.
    expect(await verdict({ MachineLift: "" })).toBe("LOOK");
    const light = {
      StoneMix: [
        [7, 1],
        ["", ""],
        ["", ""],
        ["", ""],
      ],
      LipStonesPerDrop: 0,
      MachineLift: "",
    };
    expect(await verdict(light)).toBe("OK");
  });

  it("looks at a stone that its drop cannot hold, and at gravel that does not fill the rim", async () => {
    const verdict = async (label: string, typed: Changes): Promise<unknown> =>
      (await SiteWork.make("US", "demo", typed)).verdict(label);
    // Banks of 0.9 ft hold 1.5 × 10.8 = 16.2 in; drops and banks of 5 in hold 7.5.
    const low = { Fall: 1.6667, BankHeight: 0.4 };
    expect(await verdict("Biggest stone", {})).toBe("OK");
    expect(await verdict("Biggest stone", low)).toBe("LOOK");
    expect(
      await verdict("Biggest stone", {
        ...low,
        StoneMix: [
          [7, 1],
          ["", ""],
          ["", ""],
          ["", ""],
        ],
      }),
    ).toBe("OK");
    // The rim lies 3 in below grade.
    expect(await verdict("Gravel over the basin", {})).toBe("OK");
    expect(await verdict("Gravel over the basin", { CoverDepth: 4 })).toBe("LOOK");
    expect(await verdict("Gravel over the basin", { CoverDepth: 2 })).toBe("LOOK");
  });
});

describe("the Earth sheet", () => {
  it("digs and builds as by hand, and keeps the three volumes apart", async () => {
    const work = await SiteWork.make("US", "demo", FLAT);
    // Depth 2.25 + (3 + 2) / 12 = 2.6667 ft; the liner lies on the cut wall: 9 × 6.5 × 2.6667 / 27 = 5.7778 yd³.
    expect(work.number("PitVolume")).toBeCloseTo(5.7778, 4);
    // The berm carries the box: 102.15 - 14/12 - 99.4 = 1.5833 ft, as the levels say. Its section 5.25 × 1.5833 + 2 × 1.5833²
    // = 13.3264 ft² over 5.5 ft: 73.295; its sloped end 1.5833² × 5.25 + 4/3 × 1.5833³ = 18.453: 91.749 ft³ = 3.3981 yd³.
    expect(work.number("BermHeight")).toBeCloseTo(1.5833, 4);
    expect(work.number("BermNeed")).toBeCloseTo(3.3981, 4);
    // Below the drop the bed is dug 0.5 ft into flat ground, sides 1 to 1: (5.25 × 0.5 + 0.25) × 9.5 = 27.3125 ft³ = 1.0116 yd³.
    expect(work.number("ShelfVolume")).toBeCloseTo(1.0116, 4);
    // Nothing goes back round the basin; trench 17 × 0.75 × 1.5 = 19.125 ft³ = 0.7083 yd³ does.
    expect([work.number("TrenchVolume"), work.number("BackfillVolume")]).toEqual([
      expect.closeTo(0.7083, 4),
      expect.closeTo(0.7083, 4),
    ]);
    // Loam: dug 5.7778 + 0.7083 + 1.0116 = 7.4977 bank; berm and backfill take 4.1064 / 0.9 = 4.5627;
    // 2.9350 bank × 1.25 = 3.6687 loose, one load of 10.
    expect(work.number("DugVolume")).toBeCloseTo(7.4977, 4);
    expect(work.number("SpoilAway")).toBeCloseTo(3.6687, 3);
    expect(work.number("SpoilLoads")).toBe(1);
    expect(work.number("FillLoads")).toBe(0);
  });

  it("takes own figures of the soil, square ends, and asks for fill where spoil is short", async () => {
    const own = await SiteWork.make("US", "demo", { ...FLAT, OwnSwell: 0.4, OwnShrink: 0.1, BermEnds: "square" });
    expect(own.value("SoilUsed")).toBe("swell 0.4 shrink 0.1");
    // 73.295 ft³ = 2.7146 yd³ without the sloped end, 0.7083 goes back; 7.4977 - 3.4230 / 0.9 = 3.6944 bank; × 1.4 = 5.1722 loose.
    expect(own.number("BermNeed")).toBeCloseTo(2.7146, 4);
    expect(own.number("SpoilAway")).toBeCloseTo(5.1722, 3);
    // Ground 2.5 ft lower under the box: a berm of 4.08 ft.
    const high = await SiteWork.make("US", "demo", { ...FLAT, BermGround: 96.9 });
    expect(high.number("BermHeight")).toBeCloseTo(4.0833, 4);
    expect(high.number("FillNeed")).toBeGreaterThan(0);
    expect(high.verdict("Spoil is enough")).toBe("LOOK");
  });

  it("builds no berm where the box is dug in, and says the height of the levels on the crew's page", async () => {
    // The foot of the box is at 102.15 - 14/12 = 100.98 ft; ground that falls from 101.5 to 99.4 lies above the bed all the way.
    const dugIn = await SiteWork.make("US", "demo", { ...FLAT, BermGround: 101.5 });
    expect([dugIn.number("BermHeight"), dugIn.number("BermNeed")]).toEqual([0, 0]);
    const work = await SiteWork.make("US", "demo", FLAT);
    const top = work.rows("SetoutTable").find(([point]) => String(point).startsWith("Berm top"));
    expect(Number(top?.[1]) - 99.4).toBeCloseTo(1.5833, 4);
    expect(work.shown("Crew").some((text) => String(text).includes("Build the berm 1.58 ft high"))).toBe(true);
  });

  it("keeps room to work round a tub", async () => {
    const tub = await SiteWork.make("US", "demo", { PitMargin: 0.5 });
    // (9 + 1) × (6.5 + 1) × 2.6667 / 27 = 7.4074 yd³; round it 200 - 12.5 - 146.25 = 41.25 ft³ and the trench's 19.125 go back.
    expect(tub.number("PitVolume")).toBeCloseTo(7.4074, 4);
    expect(tub.number("BackfillVolume")).toBeCloseTo(2.2361, 4);
  });

  it("wants a ladder and a look from 4 ft, in pit and trench", async () => {
    const verdict = async (typed: Changes): Promise<unknown> =>
      (await SiteWork.make("US", "demo", typed)).verdict("Depth of pit and trench");
    // Rim 3 in and bedding 2 in below: 0.4167 ft on top of the water. 29 CFR 1926.651(c)(2): "4 feet (1.22 m) or more".
    expect(await verdict({ BasinWaterDepth: 3.58 })).toBe("OK");
    expect(await verdict({ BasinWaterDepth: 3.5834 })).toBe("LOOK");
    expect(await verdict({ BasinWaterDepth: 4.0833 })).toBe("LOOK");
    expect(await verdict({ TrenchDepth: 4 })).toBe("LOOK");
    const cure = async (depth: number): Promise<string> => {
      const work = await SiteWork.make("US", "demo", { BasinWaterDepth: depth });
      return String(work.shown("Earth").find((text) => String(text).includes(".651(c)(2)")));
    };
    // 1926.652(a)(1): less than 5 ft and no indication of a potential cave-in, by a competent person.
    expect(await cure(4)).toMatch(/^Set a ladder; slope or shore unless a competent person sees no danger/);
    expect(await cure(4.6)).toMatch(/^Slope, shore or shield the sides before anyone goes in/);
    // DIN 4124 (from memory): upright to 1.25 m.
    expect((await SiteWork.make("SI", "demo", { BasinWaterDepth: 1.12 })).verdict("Depth of pit")).toBe("OK");
    expect((await SiteWork.make("SI", "demo", { BasinWaterDepth: 1.13 })).verdict("Depth of pit")).toBe("LOOK");
  });

  it("says when the widest machine cannot come in, and nothing where all is done by hand", async () => {
    const verdict = async (typed: Changes): Promise<unknown> =>
      (await SiteWork.make("US", "demo", typed)).verdict("Way in");
    expect(await verdict({ AccessWidth: 5.6 })).toBe("FIX");
    expect(await verdict({ AccessWidth: 5.7 })).toBe("OK");
    expect(await verdict({ MachineWidth: "" })).toBe("to fill");
  });

  it("fills back what sloped walls leave, and looks at the ground water", async () => {
    const sloped = await SiteWork.make("US", "demo", { BasinSideSlope: 0.5, GroundWaterDepth: 3 });
    // Pit: 9 × 6.5 × 2.6667 + 0.5 × 2.6667² × 15.5 + 4/3 × 0.25 × 2.6667³ = 156 + 55.111 + 6.321 = 217.432;
    // bedding 9.75; basin 9 × 6.5 × 2.5 + 0.5 × 2.5² × 15.5 + 4/3 × 0.25 × 2.5³ = 146.25 + 48.438 + 5.208 = 199.896;
    // 7.786 + trench 19.125 = 26.911 ft³ = 0.9967 yd³.
    expect(sloped.number("BackfillVolume")).toBeCloseTo(0.9967, 4);
    // The pit is 2.67 ft deep and must stay half a foot above the water.
    expect(sloped.verdict("Pit stays above")).toBe("LOOK");
    const wet = await SiteWork.make("US", "demo", { GroundWaterDepth: 2.6 });
    expect(wet.verdict("Pit stays above")).toBe("FIX");
    const dry = await SiteWork.make("US", "demo", { GroundWaterDepth: 3.2 });
    expect(dry.verdict("Pit stays above")).toBe("OK");
    const unknown = await SiteWork.make("US", "demo", { GroundWaterDepth: "" });
    expect(unknown.verdict("Pit stays above")).toBe("to fill");
  });
});

describe("the Levels sheet", () => {
  it("sets out lips over unused drops in between", async () => {
    const work = await SiteWork.make("US", "demo", { Drops: [[0.75], [""], [1], [1]] });
    const rows = work.rows("SetoutTable");
    const lip = (name: string): unknown[] | undefined => rows.find(([point]) => point === name);
    // Top lip 102.15; lip 3 lies 0.75 below it, lip 4 another 1.
    expect(lip("Lip 1, spillway box")?.[1]).toBeCloseTo(102.15, 9);
    expect(lip("Lip 2")).toBeUndefined();
    expect(lip("Lip 3")?.[1]).toBeCloseTo(101.4, 9);
    expect(lip("Lip 4")?.[1]).toBeCloseTo(100.4, 9);
    // Line of sight 104.5: lip 3 reads 3.1 ft = 3 ft 1.2 in; the string at 100 lies 1.4 ft = 1 ft 4.8 in lower.
    expect(lip("Lip 3")?.slice(3, 5)).toEqual(["3'-1 1/4\"", "up 1'-4 3/4\""]);
    expect(work.verdict("The last drop lands")).toBe("OK");
  });

  it("says cut or fill beside the point that was read, and what stands too high to read", async () => {
    // Line of sight 51.4 m; the floor at 48.995 should read 2.405: 2.43 is 25 mm low. The running level should read 1.71.
    const work = await SiteWork.make("SI", "demo", { SetoutReadings: [[""], [2.43], [1.71]] });
    const todo = (name: string): unknown => work.rows("SetoutTable").find(([point]) => point === name)?.[7];
    expect(todo("Basin floor")).toBe("fill 25 mm");
    expect(todo("Running level, top-up mark")).toBe("on grade");
    expect(work.verdict("Points off grade")).toBe("LOOK");
    const low = await SiteWork.make("SI", "demo", { Backsight: 0.5 });
    expect(low.verdict("Points above the line of sight")).toBe("LOOK");
  });
});

describe("the Hours sheet", () => {
  it("multiplies quantities, rates and difficulty, and rounds each line", async () => {
    const work = await SiteWork.make("US", "demo", FLAT);
    const dig = work.rows("LaborTable").find(([task]) => task === "Dig pit, trench and bed");
    // 7.4977 yd³ × 0.35 h × 1.15 = 3.0178 h × $40 = $120.71; 7.4977 × 0.28 × 1.15 = 2.4143 machine h × $50 = $120.71.
    expect(dig?.slice(6, 10)).toEqual([expect.closeTo(3.0178, 3), expect.closeTo(2.4143, 3), 120.71, 120.71]);
    const column = (index: number): number =>
      work.rows("LaborTable").reduce((all, row) => all + Math.round(Number(row[index] || 0) * 100), 0) / 100;
    expect(work.number("LaborCost")).toBeCloseTo(column(8), 9);
    expect(work.number("MachineCost")).toBeCloseTo(column(9), 9);
    expect(work.number("WorkingDays")).toBeCloseTo(work.number("LaborHours") / (3 * 8.5), 9);
  });

  it("looks at a job of more than three weeks", async () => {
    expect((await SiteWork.make("US", "demo")).verdict("Working days")).toBe("OK");
    const long = await SiteWork.make("US", "demo", { DayHours: 0.5 });
    expect(long.number("WorkingDays")).toBeGreaterThan(15);
    expect(long.verdict("Working days")).toBe("LOOK");
  });

  it("takes a rate typed over that of Rates", async () => {
    const work = await SiteWork.make("US", "demo", { LaborRateTyped: 80 });
    expect(work.number("LaborRate")).toBe(80);
    const plain = await SiteWork.make("US", "demo");
    expect(work.number("LaborCost") / plain.number("LaborCost")).toBeCloseTo(2, 3);
  });
});

describe("the Crew page", () => {
  it("lists the points in use, the cuts and the stones on one page", async () => {
    const work = await SiteWork.make("US", "demo");
    const page = work.model.sheets.find(({ name }) => name === "Crew");
    expect(page?.print.pagesHigh).toBe(1);
    const shown = work.shown("Crew").map(String);
    for (const text of ["Lip 4", "Basin", "by hand", "machine", "7'-9 1/4\""]) expect(shown, text).toContain(text);
    expect(shown).not.toContain("Lip 5");
    expect(
      shown.some((text) => text.includes("Dig the pit 2.67 ft below finished grade, 9.00 × 6.50 ft at its bottom")),
    ).toBe(true);
    // Buried lines and pits, weights, mains, open water.
    expect(shown.filter((text) => text.startsWith("WARNING")).length).toBe(4);
    const lines = ["2 in Sch 40 PVC, 4.0 ft", "3 in, 31.0 ft", "3,469 gph at 4.8 ft", "6 strips of 7.50 ft, 2 layers"];
    for (const text of lines) expect(shown, text).toContain(text);
  });

  it("says that walls slope, and that nobody goes into a deep pit as it is", async () => {
    const step = (work: SiteWork): string =>
      work
        .shown("Crew")
        .filter((text) => /^[34]\. {2}/.test(String(text)))
        .join(" ");
    expect(step(await SiteWork.make("US", "demo"))).not.toMatch(/walls|shore/);
    // 4.75 ft + (3 + 2) / 12 = 5.17 ft
    const deep = step(await SiteWork.make("US", "demo", { BasinWaterDepth: 4.75, BasinSideSlope: 0.5 }));
    expect(deep).toContain("5.17 ft below finished grade, 9.00 × 6.50 ft at its bottom, walls 0.50 out per 1 up");
    expect(deep).toContain(
      "Set a ladder; slope or shore it, unless it is under 5 ft and a competent person sees no danger.",
    );
  });

  it("leaves lines to write on while numbers are missing", async () => {
    const work = await SiteWork.make("US", "blank");
    expect(work.shown("Crew").some((text) => String(text).includes("Dig the pit ____ below"))).toBe(true);
  });
});
