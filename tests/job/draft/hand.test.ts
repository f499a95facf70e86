import { describe, expect, it } from "vitest";
import { draftOf } from "../../../src/job/draft/draft";
import { known } from "../../../src/job/derived";
import { wishOf } from "./sites";

const INCH = 0.0254;
const FOOT = 0.3048;
const GALLON = 231 * INCH ** 3;

/** Within so many parts of the value. */
function near(value: number | undefined, wanted: number, within: number): void {
  expect(value, `${String(value)} beside ${wanted} by hand`).toBeGreaterThan(wanted * (1 - within));
  expect(value).toBeLessThan(wanted * (1 + within));
}

/*
 * Both drafts are worked out here by hand from the rules as their reasons state them; the weir formula and coefficient are
 * those of the EPA SWMM reference manual II (C = 2.63 ft^½/s for a broad lip).
 */

describe("a draft in US units, by hand", () => {
  const wish = wishOf(
    {
      fall: 33 * INCH,
      run: 12 * FOOT,
      lip: 24 * INCH,
      soil: "loam",
      accessWidth: 8 * FOOT,
      groundwaterDepth: undefined,
      character: "clear sheet",
    },
    "US",
  );
  const { job, state } = draftOf(wish);

  it("has 5 drops of 6.6 in: 33 in / 5, the number nearest to 7 in each that keeps to 6 to 8 in", () => {
    expect(job.dropCount).toBe(5);
    near(state.water.drops[0], 6.6 * INCH, 1e-9);
    near(state.water.treads[0], 2.4 * FOOT, 1e-9);
  });

  it("wants 3,408 gph: 2.63 x 2 ft x (1/12 ft)^1.5 = 0.12654 ft³/s", () => {
    near(known(state.water.designFlow), 0.12654 * FOOT ** 3, 1e-3);
    near(known(state.water.designFlow), (3408 * GALLON) / 3600, 1e-3);
  });

  it("has a bed of 36 in, and pools of 4.48 and 10.8 ft²", () => {
    near(job.bedWidth, 36 * INCH, 1e-9);
    // Behind the lip (24 in + 0.3 m = 35.81 in) x 18 in; below the drops 0.3 x 12 ft x 3 ft.
    near(job.pools[0]?.area, (35.81 * 18) / 144 / (1 / FOOT ** 2), 1e-3);
    near(job.pools[1]?.area, 10.8 * FOOT ** 2, 1e-9);
  });

  it("runs the pipe 17 ft of trench and 2.75 ft up, and then out of the basin", () => {
    near(job.trenchLength, 17 * FOOT, 1e-9);
    const basin = (job.basinWaterDepth ?? 0) + 3 * INCH + 0.3;
    const length = job.route.reduce((sum, { length: along = 0 }) => sum + along, 0);
    const risers = (job.pumpCount ?? 1) > 1 ? 0 : basin;
    near(length, 19.75 * FOOT + risers, 1e-6);
  });

  it("keeps the water in the pipe under 5 ft/s", () => {
    // 0.12654 ft³/s is under 5 ft/s in any bore over 2.154 in: 4 x 0.12654 / (pi x 5) = 0.03222 ft², 0.1795 ft.
    const bore = (known(state.pump.route)?.[0]?.pipe.bore ?? 0) / INCH;
    expect(bore).toBeGreaterThan(2.154);
    const flow = (known(state.pump.deliveredFlow) ?? 0) / FOOT ** 3;
    expect((4 * flow) / (Math.PI * (bore / 12) ** 2)).toBeLessThan(5);
  });

  it("says in whole yen what the pump costs to own: what each year comes to is rounded, then times the years", () => {
    const inYen = draftOf({ ...wish, typed: { ...wish.typed, currency: "¥", tariff: 31.13 } });
    const { price = NaN, watts = NaN } = known(inYen.state.pump.chosen) ?? {};
    const count = inYen.job.pumpCount ?? NaN;
    // 16 h on 210 days are 3,360 h a year, for 8 years.
    const yearly = Math.round((count * watts * 3360 * 31.13) / 1000);
    const said = `¥${(Math.round(count * price) + 8 * yearly).toLocaleString("en-US")} with electricity over 8 years.`;
    expect(inYen.facts.get("chosenPump")?.reason).toContain(said);
  });

  it("has a basin that holds what runs back, a week of loss and an inch of rain over its low water", () => {
    // Rain 1/12 ft x 12 ft x 3 ft = 3 ft³ = 22.44 gal.
    const rain = 22.44 * GALLON;
    const back = known(state.drain.drainBack) ?? 0;
    const loss = 7 * (known(state.basin.lossPerDay) ?? 0);
    const ratio = Math.max(1, (known(state.pump.deliveredFlow) ?? 0) / (known(state.water.designFlow) ?? 1));
    const wanted = back * ratio ** (2 / 3) + loss + rain;
    const room = (known(state.basin.hold) ?? 0) - (known(state.basin.lowWater) ?? 0);
    expect(room).toBeGreaterThanOrEqual(wanted * 0.999);
    expect(room).toBeLessThan(wanted * 1.15);
  });

  it("sets stones that the water at the foot of a drop leaves lying: 6.3 in by Isbash", () => {
    // V² = 2 g (6.6 + 1) in = 2 x 32.174 x 0.6333 = 40.75; D = V² / (2 g C² (S - 1)), C 0.86, granite S 2.65 or so:
    // 0.6333 ft / (0.7396 x 1.65) = 0.519 ft = 6.23 in.
    const smallest = Math.min(...job.boulderSizes.map(({ size = 0 }) => size)) / INCH;
    expect(smallest).toBeGreaterThan(6.2);
    expect(smallest).toBeLessThan(10.1);
  });
});

describe("a draft in SI units, by hand", () => {
  const wish = wishOf(
    {
      fall: 0.95,
      run: 3.8,
      lip: 0.66,
      soil: "sand",
      accessWidth: 2.2,
      groundwaterDepth: 1.2,
      character: "trickle",
    },
    "SI",
  );
  const { job, state } = draftOf(wish);

  it("has 5 drops of 190 mm: 0.95 m / 5", () => {
    expect(job.dropCount).toBe(5);
    near(state.water.drops[0], 0.19, 1e-9);
    near(state.water.treads[0], 0.76, 1e-9);
  });

  it("wants 4,940 L/h: 1.452 x 0.66 m x (0.0127 m)^1.5, C = 2.63 ft^½/s = 1.452 m^½/s", () => {
    near(known(state.water.designFlow), 1.452 * 0.66 * 0.0127 ** 1.5, 1e-3);
    near(known(state.water.designFlow), 4.938 / 3600, 1e-3);
  });

  it("has a bed of 0.96 m and banks of 220 mm", () => {
    near(job.bedWidth, 0.96, 1e-9);
    near(job.bankHeight, 0.22, 1e-9);
  });

  it("stays 150 mm over groundwater at 1.2 m: 1.2 - 0.15 - 0.075 rim - 0.05 bedding = 0.925 m of water at most", () => {
    expect(job.basinWaterDepth).toBeLessThanOrEqual(0.925 + 1e-9);
  });

  it("takes the usual machine through 2.2 m, which lifts 640 kg", () => {
    near(job.machineLift, 640, 0.5);
    expect(job.machineWidth).toBeLessThan(2.2);
  });

  it("digs 5.3 m of trench and a berm of half the fall less the box", () => {
    near(job.trenchLength, 5.3, 1e-9);
    // The lip stands 0.95 m over grade, the ground 0.475 m, the box takes 0.35 m: 0.125 m of berm.
    near(known(state.earth.bermHeight), 0.125, 1e-6);
  });
});

describe("a draft whose basin is a tub, by hand", () => {
  // 33 in of fall over 6 ft, where the book has no modules and basin stone costs a hundred times as much.
  const site = { fall: 33 * INCH, run: 6 * FOOT, lip: 18 * INCH, soil: "loam", accessWidth: 8 * FOOT };
  const wish = wishOf({ ...site, character: "trickle" }, "US");
  const price = (kind: Parameters<typeof wish.offers.price>[0]): number =>
    (kind === "basin stone" ? 100 : 1) * wish.offers.price(kind);
  const draft = draftOf({ ...wish, offers: { ...wish.offers, modules: [], price } });
  const { job, state } = draft;
  const [tub] = job.basinParts;

  it("digs the pit as large as the tub of the book, and lays nothing below or beside it", () => {
    expect(tub?.kind).toBe("tub");
    const sold = wish.offers.tubs.map(({ length, width, height }) => [length, width, height]);
    expect(sold).toContainEqual([job.basinLength, job.basinWidth, job.basinWaterDepth]);
    expect([tub?.length, tub?.width]).toEqual([job.basinLength, job.basinWidth]);
    expect(known(state.basin.stoneVolume)).toBe(0);
    expect(known(state.liner.pieceCount)).toBe(1);
    expect(known(state.liner.basinFabric)).toBeUndefined();
  });
});
