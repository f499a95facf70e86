import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import type { Grid } from "../../src/host/port";
import { DRAWINGS, Reading } from "../../src/taskpane/drawings";
import { DRAWING_TITLES } from "../../src/taskpane/drawingTitles";
import { recalculate, type Recalculated } from "../../src/workbook/recalculate";

describe.each(["us", "si"] as const)("the drawings of the %s demo job", (units) => {
  let demo: Recalculated;
  beforeAll(async () => {
    demo = await recalculate(readFileSync(`templates/rillwright-${units}-demo.xlsx`));
  });
  const draw = (title: string): string => {
    const found = DRAWINGS.find((drawing) => drawing.title === title);
    if (!found) throw new Error(`no drawing ${title}`);
    return found.draw(
      new Reading(
        found.places,
        found.places.map((place) => demo.named(place) as Grid | undefined),
      ),
    );
  };

  it("are chosen by their titles, before their code is there", () => {
    expect(DRAWINGS.map(({ title }) => title)).toEqual([...DRAWING_TITLES]);
  });

  it.each(DRAWINGS.map(({ title }) => title))("%s stays a drawing a pane can show", (title) => {
    const [, width = 0, height = 0] = (/viewBox="0 0 (\d+) (\d+)"/.exec(draw(title)) ?? []).map(Number);
    expect(width).toBe(360);
    expect(height).toBeLessThan(2 * width);
  });

  it("have the rim as far below the grade as the workbook says", () => {
    const svg = draw("Section");
    // The basin's depth, the workbook's in ft or m, gives the scale of heights; the rim's is in in or mm.
    const [, rim = 0, height = 0] = (
      /<rect x="[\d.]+" y="([\d.]+)" width="[\d.]+" height="([\d.]+)" fill="url\(#section-stone\)"/.exec(svg) ?? []
    ).map(Number);
    const grade = Number(/y1="([\d.]+)"[^>]*stroke-dasharray="4 3"/.exec(svg)?.[1]);
    const [below = 0, depth = 0] = ["RimBelowGrade", "BasinWaterDepth"].map((name) =>
      Number(demo.named(name)?.[0]?.[0]),
    );
    const perLength = units === "us" ? 12 : 1000;
    expect((rim - grade) / height).toBeCloseTo(below / perLength / depth, 1);
    expect(rim).toBeGreaterThan(grade);
  });

  it("show in plan the pools that Water lists below the spillway box", () => {
    const listed = (demo.named("PoolTable") ?? []).filter(([area]) => Number(area) > 0).length;
    expect(listed).toBeGreaterThan(1);
    expect(draw("Plan").match(/<ellipse /g)).toHaveLength(listed - 1);
  });
});
