import { unitLabel } from "../calc/quantity/measures";
import type { UnitSystem } from "../calc/quantity/unitSystem";
import { invalid } from "../calc/problem";
import { dimension, drawing, element, FAINT, figure, INK, label, path, STONE, WATER, type Attributes } from "./svg";

/** Level over station; in the default unit of the system (ft or m). */
export type ProfilePoint = readonly [station: number, level: number];

/** What the profile shows, all in the default unit of the system. */
export interface ProfileFacts {
  readonly system: UnitSystem;
  readonly name: string;
  /** The ground as it lies, and the surface dug or filled to, station by station; a step has two rows. */
  readonly stations: readonly { readonly station: number; readonly ground: number; readonly surface: number }[];
  /** The finished bed, down its drops. */
  readonly bed: readonly ProfilePoint[];
}

/** The room of a drawing: its width and most of its height, in its own units. */
export interface ProfileRoom {
  readonly width: number;
  readonly height: number;
}

const ROOM: ProfileRoom = { width: 360, height: 218 };
const LEFT = 40;
const RIGHT = 16;
const TOP = 22;
/** What stands under the line: its length, the legend, and what heights are drawn by. */
const UNDER = 66;
/** A legend of one row is so wide; in a narrower drawing it has two. */
const LEGEND = 270;
const LEGEND_ROW = 16;
/** Heights are drawn at most so many times as large as lengths. */
const MOST_STRETCHED = 5;

/** The line cut along its length: existing ground, the surface dug or filled to, cut and fill hatched, and the finished bed. */
export function profileDrawing({ system, name, stations, bed }: ProfileFacts, room = ROOM): string {
  const [first, last] = [stations[0], stations.at(-1)];
  if (!first || !last || !(last.station > first.station))
    throw invalid("the profile needs the ground and the surface at two stations at least");
  const unit = unitLabel("length", system);
  const levels = [...stations.flatMap(({ ground, surface }) => [ground, surface]), ...bed.map(([, level]) => level)];
  const [low, high] = [Math.min(...levels), Math.max(...levels)];
  const rows = room.width < LEGEND ? 2 : 1;
  const under = UNDER + (rows - 1) * LEGEND_ROW;
  const across = (room.width - LEFT - RIGHT) / (last.station - first.station);
  const down = Math.min(MOST_STRETCHED * across, (room.height - TOP - under) / Math.max(high - low, 1e-9));
  const x = (station: number): number => LEFT + (station - first.station) * across;
  const y = (level: number): number => TOP + (high - level) * down;
  const bottom = y(low);
  const at = ([station, level]: ProfilePoint): [number, number] => [x(station), y(level)];
  const ground = stations.map((one): ProfilePoint => [one.station, one.ground]);
  const surface = stations.map((one): ProfilePoint => [one.station, one.surface]);
  const parts = [
    element("defs", {}, hatch("profile-cut", STONE, 45) + hatch("profile-fill", WATER, -45)),
    ...stations.slice(1).flatMap((to, index) => {
      const from = stations[index];
      return from ? between(from, to).map(({ cut, points }) => area(points.map(at), cut)) : [];
    }),
    path(ground.map(at), { stroke: FAINT, "stroke-width": 1.6, "stroke-dasharray": "5 3" }),
    path(surface.map(at), { stroke: INK, "stroke-width": 1.2 }),
    path(bed.map(at), { stroke: INK, "stroke-width": 2.2, "stroke-linejoin": "round" }),
    dimension(16, y(high), 16, bottom, `${figure(high - low)} ${unit}`),
    dimension(
      LEFT,
      bottom + 22,
      room.width - RIGHT,
      bottom + 22,
      `stations ${figure(first.station)} to ${figure(last.station)} ${unit}`,
    ),
    ...legend(bottom + 40, rows),
    label(8, bottom + under - 10, `Heights drawn ${figure(down / across, 1)} times as large as lengths.`, {
      fill: FAINT,
      "font-size": 10,
    }),
  ];
  return drawing(
    room.width,
    bottom + under,
    `Profile of ${name}`,
    `From station ${figure(first.station)} to ${figure(last.station)} ${unit} the ground lies between ` +
      `${figure(Math.min(...ground.map(([, level]) => level)))} and ${figure(Math.max(...ground.map(([, level]) => level)))} ${unit}; ` +
      `the surface that is dug or filled to between ${figure(Math.min(...surface.map(([, level]) => level)))} and ` +
      `${figure(Math.max(...surface.map(([, level]) => level)))} ${unit}.`,
    parts.join(""),
  );
}

function hatch(id: string, stroke: string, turn: number): string {
  return element(
    "pattern",
    { id, width: 5, height: 5, patternUnits: "userSpaceOnUse", patternTransform: `rotate(${turn})` },
    element("line", { x1: 0, y1: 0, x2: 0, y2: 5, stroke, "stroke-width": 1.2 }),
  );
}

type Row = ProfileFacts["stations"][number];

/** What lies between ground and surface from one station to the next; two parts where the one passes through the other. */
function between(from: Row, to: Row): { cut: boolean; points: ProfilePoint[] }[] {
  const [a, b] = [from.ground - from.surface, to.ground - to.surface];
  const corners = (p: Row, q: Row): ProfilePoint[] => [
    [p.station, p.ground],
    [q.station, q.ground],
    [q.station, q.surface],
    [p.station, p.surface],
  ];
  if (a * b >= 0) return a === 0 && b === 0 ? [] : [{ cut: a + b > 0, points: corners(from, to) }];
  const share = a / (a - b);
  const level = from.ground + (to.ground - from.ground) * share;
  const crossing = { station: from.station + (to.station - from.station) * share, ground: level, surface: level };
  return [
    { cut: a > 0, points: corners(from, crossing) },
    { cut: b > 0, points: corners(crossing, to) },
  ];
}

function area(points: readonly (readonly [number, number])[], cut: boolean): string {
  return path(points, { fill: cut ? "url(#profile-cut)" : "url(#profile-fill)", stroke: "none" });
}

function legend(y: number, rows: number): string[] {
  const swatch = (x: number, fill: string, text: string): string =>
    element("rect", { x, y: y - 8, width: 14, height: 9, fill, stroke: FAINT, "stroke-width": 0.6 }) +
    label(x + 18, y, text, { "font-size": 10 });
  const [x, below] = rows === 1 ? [104, y] : [8, y + LEGEND_ROW];
  const stroke = (from: number, text: string, attributes: Attributes): string =>
    path(
      [
        [from, below - 4],
        [from + 18, below - 4],
      ],
      attributes,
    ) + label(from + 22, below, text, { "font-size": 10 });
  return [
    swatch(8, "url(#profile-cut)", "cut"),
    swatch(58, "url(#profile-fill)", "fill"),
    stroke(x, "ground", { stroke: FAINT, "stroke-width": 1.6, "stroke-dasharray": "5 3" }),
    stroke(x + 72, "finished bed", { stroke: INK, "stroke-width": 2.2 }),
  ];
}
