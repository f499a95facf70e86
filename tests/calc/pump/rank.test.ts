import { describe, expect, it } from "vitest";
import { findPipe } from "../../../src/calc/pipe/bore";
import { makeSystem } from "../../../src/calc/pipe/route";
import { makeCurve } from "../../../src/calc/pump/curve";
import { dutyPoint } from "../../../src/calc/pump/duty";
import { pumpWatts, runCostCents } from "../../../src/calc/pump/power";
import { rankPumps, type PumpOffer } from "../../../src/calc/pump/rank";
import { rankPipes } from "../../../src/calc/pump/rankPipes";

const pipe = findPipe({ size: 0.063, isBore: false }, "PVC-U PN10");
const route = makeSystem(2, [{ pipe, length: 20, k: 4 }]);
const one = { years: 10, most: 1 };
const running = { hoursPerDay: 20, daysPerYear: 300, tariff: 0.25 };
const offer = (name: string, price: number, watts: number, shutOff: number, end: number): PumpOffer => ({
  name,
  price,
  watts,
  points: [
    { flow: 0, head: shutOff },
    { flow: end, head: 0 },
  ],
});

describe("rankPumps", () => {
  const ranked = rankPumps(
    [
      offer("dear to run", 300, 600, 9, 0.009),
      offer("too weak", 100, 100, 1.9, 0.009),
      offer("serves", 500, 350, 8, 0.008),
      offer("small", 200, 200, 6, 0.004),
      {
        ...offer("typed wrong", 50, 50, 6, 0.004),
        points: [
          { flow: 0, head: 3 },
          { flow: 0.001, head: 4 },
        ],
      },
    ],
    0.003,
    route,
    { running, ...one },
  );

  it("puts those that meet the flow first, the cheapest to own on top, then by what they deliver", () => {
    expect(ranked.map(({ offer: { name } }) => name)).toEqual([
      "serves",
      "dear to run",
      "small",
      "too weak",
      "typed wrong",
    ]);
    expect(ranked.map(({ meets }) => meets)).toEqual([true, true, false, false, false]);
  });

  it("calculates what a pump costs to own: 0.35 kW × 20 h × 300 d × 0.25 = 525 a year, 500 + 10 × 525 = 5750", () => {
    expect(ranked[0]).toMatchObject({ energyCents: 52_500, ownCents: 575_000 });
  });

  it("rounds half a cent of the years' electricity up: 0.05 × 2.5 years = 0.125", () => {
    // 0.001 kW × 1 h × 50 d × 1 = 0.05
    const cheap = { hoursPerDay: 1, daysPerYear: 50, tariff: 1 };
    expect(
      rankPumps([offer("sips", 1, 1, 8, 0.008)], 0.003, route, { running: cheap, years: 2.5, most: 1 })[0]?.ownCents,
    ).toBe(113);
  });

  it("keeps a curve that is not usable from hiding the others", () => {
    expect(ranked[4]).toMatchObject({ duty: undefined });
    expect(ranked[4]?.fault).toContain("curve rises between its points 1 and 2");
  });

  it("does not count a pump that runs off its curve", () => {
    const [only] = rankPumps(
      [
        {
          ...offer("flat", 1, 1, 9, 0.0035),
          points: [
            { flow: 0, head: 9 },
            { flow: 0.0035, head: 8 },
          ],
        },
      ],
      0.003,
      route,
      { running, ...one },
    );
    expect(only).toMatchObject({ meets: false, duty: { state: "off its curve" } });
  });

  it("counts a pump that delivers the wanted flow to the last digit", () => {
    const [first] = rankPumps([offer("exact", 1, 1, 8, 0.008)], 0.003, route, { running, ...one });
    const exact = first?.duty?.flow ?? 0;
    expect(rankPumps([offer("exact", 1, 1, 8, 0.008)], exact, route, { running, ...one })[0]?.meets).toBe(true);
    expect(rankPumps([offer("exact", 1, 1, 8, 0.008)], exact * 1.001, route, { running, ...one })[0]?.meets).toBe(
      false,
    );
  });

  it("sets as many of a pump side by side as the flow needs, and calculates price and power of all of them", () => {
    const terms = { running, years: 10, most: 3 };
    // Demo curves: "small" gives up to 4 L/s; one gives less than 3 L/s here, two give more.
    const small = offer("small", 200, 200, 6, 0.004);
    const alone = rankPumps([small], 0.003, route, { ...terms, most: 1 })[0];
    expect(alone).toMatchObject({ pumps: 1, meets: false });
    const pair = rankPumps([small], 0.003, route, terms)[0];
    // 0.2 kW × 20 h × 300 d × 0.25 = 300 a year each: 2 × (200 + 10 × 300) = 6400
    expect(pair).toMatchObject({ pumps: 2, meets: true, energyCents: 60_000, ownCents: 640_000 });
    expect(pair?.duty?.flow).toBeCloseTo(dutyPoint(makeCurve(small.points), route, 2).flow, 12);
    // The pair costs less than the one pump that serves alone (dear to run: 300 + 10 × 900 = 9300).
    const both = rankPumps([offer("dear to run", 300, 600, 9, 0.009), small], 0.003, route, terms);
    expect(both.map(({ offer: { name }, pumps }) => `${pumps} ${name}`)).toEqual(["2 small", "1 dear to run"]);
  });

  it("shows as many as deliver most where none meets the flow", () => {
    const terms = { running, years: 10, most: 3 };
    const [best] = rankPumps([offer("small", 200, 200, 6, 0.004)], 0.02, route, terms);
    expect(best).toMatchObject({ pumps: 3, meets: false });
    expect(rankPumps([offer("too weak", 1, 1, 1.9, 0.01)], 0.003, route, terms)[0]).toMatchObject({
      pumps: 1,
      duty: { state: "cannot lift" },
    });
  });

  it("names a running value outside its range", () => {
    expect(() =>
      rankPumps([offer("a", 1, 1, 8, 0.008)], 0.003, route, { running: { ...running, hoursPerDay: 25 }, ...one }),
    ).toThrow("hours per day must be 0 to 24; got 25");
  });
});

describe("rankPipes", () => {
  const offers = [40, 50, 63, 75].map((size, index) => ({
    pipe: findPipe({ size: size / 1000, isBore: false }, "PVC-U PN10"),
    length: 20,
    k: 4,
    pricePerMetre: 3 + index * 2,
  }));
  const ranked = rankPipes(offers, 0.003, 2, { efficiency: 0.4, running, years: 10, speedLimit: 1.5 });

  it("puts pipes within the speed limit first, cheapest over the years on top, the too fast ones last", () => {
    // 75 mm is dearer to buy (180 against 140) but cheaper over ten years (2806 against 3265, worked out below);
    // 3 L/s in the 45.2 mm bore of 50 mm run at 1.87 m/s, in the 36.2 mm of 40 mm at 2.91 m/s: both over 1.5 m/s.
    expect(ranked.map(({ offer: { pipe: p } }) => p.label)).toEqual([
      "75 mm PVC-U PN10",
      "63 mm PVC-U PN10",
      "50 mm PVC-U PN10",
      "40 mm PVC-U PN10",
    ]);
    expect(ranked.map(({ tooFast }) => tooFast)).toEqual([false, false, true, true]);
  });

  it("keeps the too fast ones last even where they cost least: over no years the price of the pipe alone", () => {
    const bought = rankPipes(offers, 0.003, 2, { efficiency: 0.4, running, years: 0, speedLimit: 1.5 });
    expect(bought.map(({ offer: { pipe: p } }) => p.label)).toEqual([
      "63 mm PVC-U PN10",
      "75 mm PVC-U PN10",
      "50 mm PVC-U PN10",
      "40 mm PVC-U PN10",
    ]);
  });

  it("says which size would take more power than there is", () => {
    expect(() => rankPipes(offers, 0.05, 2, { efficiency: 0.4, running, years: 1, speedLimit: 1.5 })).toThrow(
      /^flow through 40 mm PVC-U PN10 would take \d+ W; leave that size out of pipes$/,
    );
  });

  it.each([
    // 63 mm, bore 57: TDH = 2 + 0.485388 + 5 × 0.070471 = 2.837743 m (see route.test.ts);
    // P = 998.2 × 9.80665 × 0.003 × 2.837743 / 0.4 = 208.35 W; 0.20835 × 6000 × 0.25 = 312.52; pipe 20 × 7 = 140
    ["63 mm PVC-U PN10", 2.837743, 208.35, 140, 312.52],
    // 75 mm, bore 67.8: friction × (57 / 67.8)^4.8704 = 0.429534, fittings × (57 / 67.8)^4 = 0.499558;
    // TDH = 2 + 0.208491 + 0.176022 = 2.384513 m; P = 175.07 W; electricity 262.61; pipe 20 × 9 = 180
    ["75 mm PVC-U PN10", 2.384513, 175.07, 180, 262.61],
  ])("adds up pipe and electricity by hand: %s", (label, head, watts, pipeCost, energy) => {
    const found = ranked.find(({ offer: { pipe: p } }) => p.label === label);
    expect(found?.head).toBeCloseTo(head, 4);
    expect(found?.watts).toBeCloseTo(watts, 1);
    expect(found?.pipeCents).toBe(pipeCost * 100);
    expect((found?.energyCents ?? 0) / 100).toBeCloseTo(energy, 1);
    expect(found?.ownCents).toBe(pipeCost * 100 + 10 * (found?.energyCents ?? 0));
  });
});

describe("amounts in a currency without cents, or with thousandths", () => {
  it("are those of hand arithmetic for a pump in yen, whose yearly cost is rounded before the years", () => {
    // 0.5 kW × 1 h × 1 d × 31.1 = 15.55, 16 yen; 48,000.4 is 48,000 yen; and ten years of 16
    const terms = { running: { hoursPerDay: 1, daysPerYear: 1, tariff: 31.1 }, ...one, digits: 0 };
    const [ranked] = rankPumps([offer("serves", 48_000.4, 500, 8, 0.008)], 0.003, route, terms);
    expect(ranked).toMatchObject({ energyCents: 16, ownCents: 48_160 });
  });

  it.each([
    // 63 mm takes 208.35 W (above). Pipe 20 × 700.03 = 14,000.6; 0.20835 kW × 12 h × 31.2 = 78.006; 14,001 + 2.5 × 78
    ["yen", 0, 700.03, 31.2, 14_001, 78, 14_196],
    // Pipe 20 × 7.00003 = 140.0006; 0.20835 kW × 12 h × 0.01 = 0.0250; 2.5 × 0.025 = 0.0625; 140.001 + 0.063
    ["dinars", 3, 7.00003, 0.01, 140_001, 25, 140_064],
  ])("are those of hand arithmetic for a pipe in %s", (_, digits, pricePerMetre, tariff, pipeUnits, energy, own) => {
    const offers = [{ pipe, length: 20, k: 4, pricePerMetre }];
    const terms = {
      efficiency: 0.4,
      running: { hoursPerDay: 12, daysPerYear: 1, tariff },
      years: 2.5,
      speedLimit: 1.5,
    };
    expect(rankPipes(offers, 0.003, 2, { ...terms, digits })[0]).toMatchObject({
      pipeCents: pipeUnits,
      energyCents: energy,
      ownCents: own,
    });
  });
});

describe("power and cost", () => {
  it("refuses efficiencies that cannot be and values outside their ranges", () => {
    expect(() => pumpWatts(0.001, 2, 0)).toThrow("efficiency must be more than 0, at most 1; got 0");
    expect(() => pumpWatts(0.001, 2, 1.01)).toThrow("efficiency must be more than 0, at most 1; got 1.01");
    // 998.2 kg/m³ × 9.80665 × 0.001 × 2 = 19.578 W, all of it lift
    expect(pumpWatts(0.001, 2, 1)).toBeCloseTo(19.578, 2);
    expect(() => pumpWatts(0.001, 2, 35)).toThrow("efficiency must be more than 0, at most 1; got 35");
    expect(() => pumpWatts(-1, 2, 0.5)).toThrow("flow and head must be 0 or more");
    expect(() => runCostCents(-1, running)).toThrow("watts must be 0 to 100000 W");
  });

  it("rounds half a cent up: 1 W for 1.005 units is 0.01", () => {
    // 0.001 kW × 5 h × 1 d × 1 = 0.005, half a cent
    expect(runCostCents(1, { hoursPerDay: 5, daysPerYear: 1, tariff: 1 })).toBe(1);
  });
});
