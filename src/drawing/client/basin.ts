import { element, FAINT, INK, line, PAPER, WATER } from "../svg";
import type { Feature } from "./feature";
import type { Frame } from "./frame";
import { at, ring } from "./outline";
import { GRAVEL, gravel, stone, water } from "./paint";
import { polyline } from "./shapes";

/** The buried basin in section: stone and water, the pump in its well, the gravel over it, boulders behind it. */
export function basinSection(feature: Feature, { x, y, scale }: Frame): string {
  const { facts, fall, rim, run, foot, around, random } = feature;
  const { basinLength: long, basinDepth: deep, basinLean: lean, rimBelowGrade: below } = facts;
  const floor = rim - deep;
  const corners = [
    [x(run), y(rim)],
    [x(run + lean), y(floor)],
    [x(run + long - lean), y(floor)],
    [x(run + long), y(rim)],
  ] as const;
  const body = `M${corners.map(at).join("L")}`;
  const pipe = pipeLine(feature);
  const outlet = pipe[0]?.[1] ?? rim;
  const well = pumpWell(feature);
  // Pebbles stay within the walls, which lean in, and above the floor.
  const within = (px: number, py: number, r: number): boolean => {
    const inward = Math.max(0, (lean * (py - y(rim))) / (deep * scale)) * scale + r;
    return px > x(run) + inward && px < x(run + long) - inward && py + r < y(floor);
  };
  const cover = ring([[x(run), y(-fall)], [x(run + long), y(-fall)], corners[3], corners[0]]);
  const behind = around.slice(0, Math.floor(around.length / 3)).map((boulder, index) => {
    const station = run + ((index + 0.6) / Math.max(1, Math.floor(around.length / 3))) * long * 0.92;
    const size = { width: boulder.along * scale, height: boulder.high * scale };
    return stone({ x: x(station) - size.width / 2, y: y(-fall + 0.86 * boulder.high), ...size }, boulder.seed);
  });
  return [
    element("g", { class: "around" }, behind.join("")),
    // Gravel from the rim to finished grade, and stone in the basin.
    element("path", { d: cover, fill: GRAVEL }),
    gravel({ x: x(run), y: y(-fall), width: long * scale, height: below * scale }, 0.06 * foot * scale, random, within),
    element("path", { d: `${body}Z`, fill: GRAVEL }),
    gravel({ x: x(run), y: y(rim), width: long * scale, height: deep * scale }, 0.15 * foot * scale, random, within),
    water(`${body}Z`, 0.34),
    line(x(run), y(rim), x(run + long), y(rim), { stroke: WATER, "stroke-width": 1.1 }),
    element("path", { d: body, fill: "none", stroke: INK, "stroke-width": 1.3, class: "basin" }),
    pump(well, floor, -fall, foot, { x, y, scale }),
    polyline(
      [[well.from + 0.5 * well.wide, floor + 0.3 * foot], [well.from + 0.5 * well.wide, outlet], ...pipe].map(
        ([station = 0, level = 0]) => [x(station), y(level)] as const,
      ),
      {
        stroke: INK,
        "stroke-width": Math.max(1.2, 0.16 * foot * scale),
        "stroke-opacity": 0.75,
        "stroke-dasharray": "5 2.5",
        class: "pipe",
      },
    ),
  ].join("");
}

/** Where the pump's well stands: near the far end, and no wider than a third of the basin. */
export function pumpWell({ facts, run, foot }: Feature): { readonly from: number; readonly wide: number } {
  const floor = facts.basinLength - 2 * facts.basinLean;
  const wide = Math.min(1.05 * foot, 0.3 * floor);
  const from = run + facts.basinLength - facts.basinLean - Math.min(2 * foot, 0.45 * floor);
  return { from, wide };
}

function pump(
  { from, wide }: { readonly from: number; readonly wide: number },
  floor: number,
  grade: number,
  foot: number,
  { x, y, scale }: Pick<Frame, "x" | "y" | "scale">,
): string {
  const well = { x: x(from), y: y(grade), width: wide * scale, height: (grade - floor) * scale };
  const body = { width: 0.55 * wide * scale, height: Math.min(0.6 * foot, 0.5 * (grade - floor)) * scale };
  return (
    element("rect", { ...well, fill: PAPER, stroke: FAINT, "stroke-width": 0.9 }) +
    element("rect", { ...well, fill: WATER, "fill-opacity": 0.16 }) +
    element("rect", {
      x: well.x + 0.5 * (well.width - body.width),
      y: y(floor) - body.height,
      ...body,
      rx: 0.2 * body.width,
      fill: INK,
      "fill-opacity": 0.8,
    })
  );
}

/** The buried pipe from the basin's wall to the box, as stations and levels: well under the bed, and out above the floor. */
export function pipeLine({ facts, run, rim, foot, box, lips, levels, depths }: Feature): (readonly [number, number])[] {
  const [from, to] = [-0.5 * box, run];
  const ends = [-1.6 * foot, Math.max(rim - 0.75 * facts.basinDepth, rim - 0.6 * foot)] as const;
  const line = (station: number): number => ends[0] + ((station - from) / (to - from)) * (ends[1] - ends[0]);
  const least = (index: number): number => (levels[index + 1] ?? 0) - (depths[index] ?? 0) - 0.8 * foot;
  const lower = Math.max(0, ...lips.map((lip, index) => line(lip) - least(index)));
  return [
    [to, Math.max(ends[1] - lower, rim - 0.8 * facts.basinDepth)],
    [from, ends[0] - lower],
    [from, -0.9 * foot],
  ];
}
