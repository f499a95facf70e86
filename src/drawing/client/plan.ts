import { element, INK } from "../svg";
import { poolShapes } from "../planPools";
import { FACE_BACK, overhang, type Feature } from "./feature";
import type { Frame } from "./frame";
import type { Laid } from "./laying";
import { at, ring } from "./outline";
import { pumpWell } from "./basin";
import { GRAVEL, gravel, PAPER, slab, stone, water, WATER, waterLine } from "./paint";
import { fromAbove, planted } from "./planting";

/** The feature from above, at the scale of the section and under it. */
export function clientPlan(feature: Feature, frame: Frame): string {
  return [
    planting(feature, frame),
    basin(feature, frame),
    stream(feature, frame),
    faces(feature, frame),
    banks(feature, frame),
    lips(feature, frame),
  ].join("");
}

function planting({ facts, foot, run, box, random }: Feature, { x, across, scale, left }: Frame): string {
  const edge = facts.bedWidth / 2 + 1.1 * foot;
  const side = (sign: number): string =>
    planted(left + 0.6 * foot, run + 0.5 * foot, foot, random)
      .map((plant) => {
        const inner = plant.at < -box - 0.5 * foot ? 0.3 * foot : edge;
        const out = Math.max(inner + 0.35 * plant.width, inner + plant.depth * 1.4 * foot);
        return fromAbove(plant, x(plant.at), across(sign * Math.min(out, edge + 1.2 * foot)), scale, random);
      })
      .join("");
  return side(-1) + side(1);
}

function stream({ facts, lips, run, box, random, foot }: Feature, { x, across, scale }: Frame): string {
  const half = facts.bedWidth / 2;
  const area = { x: x(-box), y: across(-half), width: (run + box) * scale, height: 2 * half * scale };
  const pools = poolShapes(facts.pools, lips).map(({ start, length, width }) =>
    element("ellipse", {
      cx: x(start + length / 2),
      cy: across(0),
      rx: (length / 2) * scale,
      ry: (Math.min(width, facts.bedWidth) / 2) * scale,
      fill: WATER,
      "fill-opacity": 0.3,
    }),
  );
  const ripples = Array.from(
    { length: Math.min(160, Math.round((((run / foot) * facts.bedWidth) / foot) * 0.8)) },
    () => {
      const [px, py] = [x(random() * run), across((random() - 0.5) * 1.5 * half)];
      const long = Math.min(9, 0.5 * foot * scale) * (0.5 + random());
      return `M${at([px, py])}q${at([long / 2, -1.1])} ${at([long, 0])}`;
    },
  );
  const [right, below] = [area.x + area.width, area.y + area.height];
  const body = ring([
    [area.x, area.y],
    [right, area.y],
    [right, below],
    [area.x, below],
  ]);
  return (
    element("path", { d: body, fill: PAPER }) +
    water(body, 0.36) +
    pools.join("") +
    element("path", { d: ripples.join(""), fill: "none", stroke: WATER, "stroke-width": 0.7 })
  );
}

function banks({ far, near, facts }: Feature, { x, across, scale }: Frame): string {
  const half = facts.bedWidth / 2;
  const side = (stones: readonly Laid[], sign: number): string =>
    [...stones]
      .sort((a, b) => a.course - b.course)
      .map(({ boulder, from, length, course }) => {
        // Upper stones stand back from the water.
        const inner = half - 0.12 * boulder.across + Math.min(0.34, 0.26 * (course - 1)) * boulder.across;
        const top = sign < 0 ? across(-inner - boulder.across) : across(inner);
        return stone({ x: x(from), y: top, width: length * scale, height: boulder.across * scale }, boulder.seed);
      })
      .join("");
  return element("g", { class: "banks" }, side(far, -1) + side(near, 1));
}

function faces({ faces: walls, lips }: Feature, { x, across, scale }: Frame): string {
  const stones = walls.flatMap((wall, index) =>
    wall.map(({ boulder, from, length }) =>
      stone(
        {
          x: x(lips[index] ?? 0) - FACE_BACK * boulder.across * scale,
          y: across(from),
          width: boulder.across * scale,
          height: length * scale,
        },
        boulder.seed,
      ),
    ),
  );
  return element("g", { class: "faces" }, stones.join(""));
}

function lips({ facts, lips: stations, foot }: Feature, { x, across, scale }: Frame): string {
  const { length, width } = facts.lipStone;
  const out = overhang(facts, foot);
  const count = facts.lipStonesPerDrop;
  return stations
    .map((station, index) => {
      const slabs = Array.from({ length: width > 0 ? count : 0 }, (_, place) =>
        slab(
          {
            x: x(station + out - width),
            y: across((place - count / 2) * length),
            width: width * scale,
            height: length * scale,
          },
          7 + index + 31 * place,
        ),
      );
      const half =
        (facts.pools[index]?.lip || Math.min(facts.bedWidth, Math.max(1, count) * length || facts.bedWidth)) / 2;
      const edge = x(station + out) + 0.6;
      const back = x(station + out - 0.85 * width);
      const over = ring([
        [back, across(-0.9 * half)],
        [edge, across(-half)],
        [edge, across(half)],
        [back, across(0.9 * half)],
      ]);
      return (
        slabs.join("") +
        (width > 0 ? water(over, 0.15) : "") +
        waterLine(`M${at([edge, across(-half)])}L${at([edge, across(half)])}`, Math.max(1.4, 0.12 * foot * scale))
      );
    })
    .join("");
}

/** The basin's outline under its gravel, with boulders at its edge and the lid of the pump's well. */
function basin(feature: Feature, { x, across, scale }: Frame): string {
  const { facts, run, around, foot, random } = feature;
  const [long, wide] = [facts.basinLength, facts.basinWidth];
  const well = pumpWell(feature);
  const held = (px: number, py: number, r: number): boolean =>
    px + r < area.x + area.width && py + r < area.y + area.height;
  const area = { x: x(run), y: across(-wide / 2), width: long * scale, height: wide * scale };
  const stones = around.map((boulder, index) => {
    const share = (index + 0.5) / around.length;
    // Far side, end and near side, in turn around.
    const [sx, sy] =
      share < 0.4
        ? [run + (share / 0.4) * 0.94 * long, -wide / 2]
        : share < 0.6
          ? [run + long, (-wide / 2 + ((share - 0.4) / 0.2) * wide) * 0.9]
          : [run + ((1 - share) / 0.4) * 0.94 * long, wide / 2];
    const size = { width: boulder.along * scale, height: boulder.across * scale };
    return stone({ x: x(sx) - size.width / 2, y: across(sy) - size.height / 2, ...size }, boulder.seed);
  });
  return (
    element("rect", { ...area, fill: GRAVEL }) +
    gravel(area, 0.08 * foot * scale, random, held) +
    element("rect", {
      ...area,
      fill: "none",
      stroke: INK,
      "stroke-width": 1.1,
      "stroke-dasharray": "6 3",
      class: "basin",
    }) +
    element("g", { class: "around" }, stones.join("")) +
    element("circle", {
      cx: x(well.from + well.wide / 2),
      cy: across(0),
      r: 0.6 * well.wide * scale,
      fill: "none",
      stroke: INK,
      "stroke-width": 0.9,
      "stroke-dasharray": "3 2",
    })
  );
}
