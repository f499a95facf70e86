import { element, line } from "../svg";
import { drops, FILM_FEET } from "./drops";
import type { Feature } from "./feature";
import type { Frame } from "./frame";
import { at, ring, type Point } from "./outline";
import { EARTH, EARTH_LINE, INK, LEAF_LINE, pebbles, stone, water, waterLine } from "./paint";
import { person, PERSON_FEET } from "./person";
import { fromSide, planted } from "./planting";
import { basinSection } from "./basin";
import { polygon, polyline } from "./shapes";

/** The feature cut along its middle: what lies behind the cut first, then the cut, then what stands before it. */
export function clientSection(feature: Feature, frame: Frame): string {
  return [
    behind(feature, frame),
    bank(feature, frame),
    pools(feature, frame),
    ground(feature, frame),
    basinSection(feature, frame),
    drops(feature, frame),
    element("g", {}, person(frame.x(frame.person), frame.y(-feature.fall), PERSON_FEET * feature.foot * frame.scale)),
  ].join("");
}

/** Planting behind the far bank and around. */
function behind(feature: Feature, { x, y, scale, left, right }: Frame): string {
  const { facts, foot, fall, run, lips, levels, random } = feature;
  const level = (station: number): number => {
    if (station > run) return -fall;
    if (station < -feature.box) return ground0(feature, left, station);
    return (levels[lips.filter((lip) => lip <= station).length] ?? 0) + 0.3 * facts.bankHeight;
  };
  return planted(left + 0.5 * foot, right - 6 * foot, foot, random)
    .sort((a, b) => b.depth - a.depth)
    .map((plant) => fromSide(plant, x(plant.at), y(level(plant.at)), scale, random))
    .join("");
}

/** The ground left of the spillway box, falling away. */
function ground0({ box, foot, fall }: Feature, left: number, station: number): number {
  const crest = -box - 0.4 * foot;
  if (station >= crest) return 0.12 * foot;
  const down = Math.min(0.45 * (crest - left), fall, 1.6 * foot);
  const share = (crest - station) / (crest - left);
  return 0.12 * foot - down * share * share * (3 - 2 * share);
}

function bank({ far }: Feature, { x, y, scale }: Frame): string {
  const stones = far.map(({ boulder, from, length, bottom }) => {
    const size = { width: length * scale, height: boulder.high * scale };
    return stone({ x: x(from), y: y(bottom + boulder.high), ...size }, boulder.seed);
  });
  return element("g", { class: "bank" }, stones.join(""));
}

function pools({ lips, levels, depths, run, foot, box }: Feature, { x, y, scale }: Frame): string {
  const film = FILM_FEET * foot;
  const treads = depths.map((depth, index) => {
    const [from, to] = [lips[index] ?? 0, lips[index + 1] ?? run];
    const level = (levels[index + 1] ?? 0) + film;
    return wet(x(from), x(to), y(level), (depth + film) * scale);
  });
  return wet(x(-box), x(0), y(film), 0.95 * foot * scale) + treads.join("");
}

function wet(from: number, to: number, surface: number, depth: number): string {
  const floor = surface + depth;
  const body: Point[] = [
    [from, surface],
    [to, surface],
    [to, floor],
    [from, floor],
  ];
  return water(ring(body)) + waterLine(`M${at([from, surface])}L${at([to, surface])}`);
}

/** The cut earth with liner and gravel on it. */
function ground(feature: Feature, { x, y, scale, left, right, bottom }: Frame): string {
  const { foot, fall, facts, run, lips, levels, depths, box, random } = feature;
  const surface: Point[] = Array.from({ length: 9 }, (_, index) => {
    const station = left + ((-box - left) * index) / 8;
    return [x(station), y(ground0(feature, left, station))];
  });
  const bed: Point[] = lips.flatMap((lip, index): Point[] => {
    const [to, depth, next] = [lips[index + 1] ?? run, depths[index] ?? 0, levels[index + 1] ?? 0];
    const long = to - lip;
    return [
      [x(lip), y(next - 0.8 * depth)],
      [x(lip + 0.3 * long), y(next - depth)],
      [x(lip + 0.8 * long), y(next - 0.8 * depth)],
      [x(to), y(next - (index === lips.length - 1 ? 0.4 * depth : 0.75 * depth))],
    ];
  });
  const boxDepth = 0.9 * foot;
  const cut: Point[] = [
    ...surface,
    [x(-box), y(-boxDepth)],
    [x(-0.02 * foot), y(-boxDepth)],
    ...bed,
    [x(run), y(-fall)],
  ];
  const rest: Point[] = [
    [x(run + facts.basinLength), y(-fall)],
    [x(right), y(-fall)],
    [x(right), y(bottom)],
    [x(left), y(bottom)],
  ];
  const grain = Array.from({ length: Math.round((right - left) / foot) * 5 }, () => {
    const station = left + random() * (right - left);
    const top =
      station < 0 ? -boxDepth : station < run ? (levels[lips.filter((l) => l <= station).length] ?? 0) : -fall;
    const level = bottom + random() * (top - 0.7 * foot - bottom);
    return `M${at([x(station), y(level)])}l${random() < 0.5 ? "1.6 0" : "0.9 0.5"}`;
  });
  const pebble = Math.max(0.8, 0.05 * foot * scale);
  const stones = lips.map((lip, index) => {
    const [to, depth, next] = [lips[index + 1] ?? run, depths[index] ?? 0, levels[index + 1] ?? 0];
    return pebbles(
      { x: x(lip), y: y(next - 0.78 * depth) - pebble, width: x(to) - x(lip), height: 3.6 * pebble },
      pebble,
      random,
    );
  });
  return (
    polygon([...cut, ...rest], { fill: EARTH, class: "earth" }) +
    element("path", { d: grain.join(""), fill: "none", stroke: EARTH_LINE, "stroke-width": 0.5 }) +
    stones.join("") +
    // The liner lies under the gravel.
    polyline(
      bed.map(([px, py]) => [px, py + 3.4 * pebble] as const),
      { stroke: INK, "stroke-width": 1 },
    ) +
    element("path", {
      d: `M${at([x(-box), y(0.08 * foot)])}L${at([x(-box), y(-boxDepth)])}L${at([x(-0.02 * foot), y(-boxDepth)])}`,
      fill: "none",
      stroke: INK,
      "stroke-width": 1,
    }) +
    polyline(surface, { stroke: LEAF_LINE, "stroke-width": 1.6 }) +
    line(x(run + facts.basinLength), y(-fall), x(right), y(-fall), { stroke: LEAF_LINE, "stroke-width": 1.6 })
  );
}
