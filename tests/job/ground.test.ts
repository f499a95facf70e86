import { describe, expect, it } from "vitest";
import { evaluate } from "../../src/job/evaluate";
import { blankJob, type Job } from "../../src/job/facts";
import { usedJob } from "../../src/job/facts/standing";

const FOOT = 0.3048;

/** A stream of 60 ft that falls 9 ft over twelve drops, on flat ground at the level of the finished grade. */
const flat: Job = {
  ...blankJob("US"),
  fallTyped: 9 * FOOT,
  run: 60 * FOOT,
  dropCount: 12,
  bedWidth: 4 * FOOT,
  shelfMargin: 0,
  gradeLevel: 100 * FOOT,
  bermGround: 100 * FOOT,
  bermLength: 4 * FOOT,
  bermWidth: 3 * FOOT,
  topsoilDepth: 0,
};
const fill = (job: Job): number => Number(evaluate(usedJob(job)).ground.fill);

describe("a stream on flat ground", () => {
  /**
   * By hand, sides 2 to 1, the bed dug 6 in below finished: below drop i fill is 9 - 0.75 i - 0.5 ft high, 4 ft wide, 5 ft long:
   * Σ 5 (4 h + 2 h²) = 3,258.75 ft³. The crest, 9 - 14/12 = 7.8333 ft high, 3 to 4 ft wide, 4 ft long: 600.556; its sloped end
   * h² × 3 + 4/3 h³ = 824.966. Together 4,684.272 ft³ = 132.644 m³; the crest and its ends alone are what was priced before.
   */
  const BY_HAND = 132.644;

  it("needs the fill that is worked out by hand, before anybody has shot the ground", () => {
    expect(fill(flat)).toBeCloseTo(BY_HAND, 3);
  });

  it("needs as much by two shots from the grade", () => {
    const shots = [
      { point: "Grade", backsight: 5 * FOOT, station: 60 * FOOT },
      { point: "Top", intermediate: 5 * FOOT, station: 0 },
    ];
    expect(fill({ ...flat, bermGround: undefined, shotStart: "finished grade", shots })).toBeCloseTo(BY_HAND, 3);
  });
});

it("takes 2 ft from a rim 3 in below grade for 1.75 ft over grade", () => {
  const low = { ...flat, fallTyped: 2 * FOOT, rimBelowGrade: 0.25 * FOOT };
  expect(Number(evaluate(usedJob({ ...low, fallFrom: "rim of the basin" })).water.topLipLevel) / FOOT).toBeCloseTo(
    101.75,
    9,
  );
  expect(Number(evaluate(usedJob({ ...low, fallFrom: "finished grade" })).water.topLipLevel) / FOOT).toBeCloseTo(
    102,
    9,
  );
});
