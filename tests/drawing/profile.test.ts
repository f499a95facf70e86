import { describe, expect, it } from "vitest";
import { profileDrawing } from "../../src/drawing/profile";

const row = (station: number, ground: number, surface: number) => ({ station, ground, surface });

describe("the profile", () => {
  const draw = (stations: Parameters<typeof profileDrawing>[0]["stations"]): string =>
    profileDrawing({ system: "SI", name: "<Bach>", stations, bed: [[0, 12]] });

  it("hatches cut and fill apart, and parts them where the surface passes through the ground", () => {
    // 1 m of cut to 1 m of fill: one area of each.
    const svg = draw([row(0, 11, 10), row(10, 9, 10)]);
    expect(svg.match(/<path[^>]*fill="url\(#profile-cut\)"/g)).toHaveLength(1);
    expect(svg.match(/<path[^>]*fill="url\(#profile-fill\)"/g)).toHaveLength(1);
    expect(svg).toContain("Profile of &lt;Bach&gt;");
  });

  it("draws no area where nothing is moved, and a step as an upright line", () => {
    const svg = draw([row(0, 10, 10), row(5, 10, 10), row(5, 10, 9), row(10, 10, 9)]);
    expect(svg.match(/<path[^>]*fill="url\(#profile-fill\)"/g)).toBeNull();
    expect(svg).not.toMatch(/NaN|Infinity/);
  });

  it("keeps to the room it is given, in height and for its legend", () => {
    const stations = [row(0, 11, 10), row(4, 9, 10)];
    const size = { width: 220, height: 170 };
    const svg = profileDrawing({ system: "SI", name: "Bach", stations, bed: [[0, 12]] }, size);
    const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg) ?? [];
    expect([Number(width), Number(height)]).toEqual([220, 170]);
    // Letters 10 high are about 5.5 wide on average: the last word, "finished bed", ends within the width.
    const [, x] = /x="(\d+)"[^>]*>finished bed/.exec(svg) ?? [];
    expect(Number(x) + 12 * 5.5).toBeLessThan(220);
  });

  it("needs two stations", () => {
    expect(() => draw([row(0, 10, 10)])).toThrow("at two stations at least");
    expect(() => draw([])).toThrow("at two stations at least");
  });
});
