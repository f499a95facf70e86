import type fc from "fast-check";
import { SOIL_NAMES } from "../../../src/calc/earth/soil";
import { densityNames } from "../../../src/calc/stone/density";
import { BOULDER_SHAPE_NAMES } from "../../../src/calc/stone/boulder";
import { BED_KINDS } from "../../../src/calc/tables/beds";
import { LIP_SHAPES } from "../../../src/calc/tables/lips";
import type { SomeFacts } from "../../../src/workbook/jobCells/typeJob";
import { between, mostly, oneOf, overRule, record, rows, seldom, some, whole } from "./arbitrary";

/** Lengths in m, flows in m³/s, weights in kg: jobs as they are built, now and then one that cannot be. */
type Facts = fc.Arbitrary<SomeFacts>;
type System = "US" | "SI";

export const water: Facts = some({
  fallTyped: mostly(between(0.5, 4)),
  fallFrom: mostly(oneOf("finished grade", "rim of the basin")),
  run: mostly(between(1, 25)),
  dropCount: mostly(whole(1, 12)),
  bedWidth: mostly(between(0.3, 3)),
  bankHeight: mostly(between(0.05, 0.6)),
  gradeLevel: mostly(between(-3, 60)),
  sheetWanted: mostly(between(0.004, 0.06)),
  lipShape: mostly(oneOf(...LIP_SHAPES.map(({ name }) => name))),
  lips: rows(record({ width: mostly(between(0.15, 1.5), 12), level: seldom(between(0, 0.02), 2) }), 0, 3),
  flowTyped: seldom(between(5e-4, 8e-3)),
  spillBoxes: mostly(whole(0, 3)),
  boxWidth: mostly(between(0.3, 1.4)),
  drops: rows(record({ drop: overRule(between(0, 0.5)), tread: overRule(between(0, 3)) }), 0, 12),
  pools: rows(record({ area: mostly(between(0.05, 6), 12), lipWidth: mostly(between(0.15, 2), 12) }), 0, 6),
  beds: rows(
    record({
      length: mostly(between(0.3, 5), 12),
      width: mostly(between(0.2, 2), 12),
      slope: mostly(between(0.005, 0.3), 12),
      kind: seldom(oneOf(...BED_KINDS.map(({ name }) => name)), 2),
    }),
    0,
    4,
  ),
  latitude: mostly(between(-50, 60)),
  airTemperature: mostly(between(-4, 45)),
  humidity: mostly(between(0, 1)),
  wind: mostly(between(0, 12)),
});

/** Sizes as they are sold differ between the systems; the inside diameter does not. */
const SIZES = {
  US: { sizes: [1.5, 2, 2.5, 3, 4].map((inches) => inches * 0.0254), type: "Sch 40 PVC" },
  SI: { sizes: [50, 63, 75, 90, 110].map((mm) => mm / 1000), type: "PVC-U PN10" },
} as const;

const curvePoint = (place: number, end: number, top: number): { flow: number; head: number } => {
  const share = place / 5;
  return { flow: end * share, head: top * (1 - share * share * 0.96) };
};

const pumpOffer = (index: number) =>
  record<NonNullable<SomeFacts["pumps"]>[number]>({
    name: oneOf(`Trial ${index} (invented)`),
    price: mostly(between(90, 900)),
    watts: mostly(between(40, 900)),
    shutOffHead: between(1.5, 9),
  }).chain((offer) =>
    record<{ end: number; points: number }>({ end: between(1e-3, 9e-3), points: whole(1, 5) }).map(
      ({ end, points }) => {
        const curve = [1, 2, 3, 4, 5].slice(5 - points).map((place) => curvePoint(place, end, offer.shutOffHead ?? 1));
        const typed = curve.flatMap(({ flow, head }, at) => [
          [`flow${at + 1}`, flow],
          [`head${at + 1}`, head],
        ]);
        return { ...offer, ...(Object.fromEntries(typed) as object) };
      },
    ),
  );

export const pump = (system: System): Facts => {
  const { sizes, type } = SIZES[system];
  const count = seldom(whole(0, 4), 3);
  const pipe = record<NonNullable<SomeFacts["route"]>[number]>({
    size: mostly(oneOf(...sizes), 12),
    length: mostly(between(0, 40), 12),
    type: seldom(oneOf(type, "Bore"), 2) as fc.Arbitrary<undefined>,
    sumOfK: overRule(between(0, 20)),
    elbows: count,
    sweeps: count,
    halfElbows: count,
    teesThrough: count,
    teesBranch: count,
    ballValves: count,
    checkValves: count,
    unions: count,
    intakes: count,
    otherK: seldom(between(0, 5)),
  });
  return some({
    frictionMethod: mostly(oneOf("Hazen-Williams", "Darcy-Weisbach")),
    route: rows(pipe, 0, 4),
    riser: rows(pipe, 0, 1),
    pumps: whole(0, 4).chain((most) => pumpsOf(most)),
    runHours: mostly(between(0, 24)),
    runDays: mostly(whole(0, 366)),
    tariff: mostly(between(0.08, 0.6)),
    ownYears: mostly(whole(0, 20)),
    chosenPump: mostly(oneOf("Trial 1 (invented)", "trial 2 (INVENTED)", "Trial 3 (invented)", "none such"), 8),
    pumpCount: mostly(whole(1, 3)),
    cableLength: seldom(between(0, 40), 3),
    cableGauge: mostly(oneOf(system === "US" ? "12 AWG" : "2.5 mm2")),
    pumpSpeed: mostly(oneOf(1, 1, 1, 0.8, 1.1)),
  });
};

function pumpsOf(most: number): fc.Arbitrary<NonNullable<SomeFacts["pumps"]>> {
  const offers = Array.from({ length: most }, (_, index) => pumpOffer(index + 1));
  return record<Record<string, NonNullable<SomeFacts["pumps"]>[number]>>(
    Object.fromEntries(offers.map((offer, index) => [String(index), offer])),
  ).map((all) => Object.values(all));
}

export const basin: Facts = some({
  basinLength: mostly(between(0.8, 5)),
  basinWidth: mostly(between(0.8, 4)),
  basinWaterDepth: mostly(between(0.3, 1.5)),
  basinSideSlope: mostly(oneOf(0, 0, 0.25, 0.5, 1)),
  rimBelowGrade: mostly(between(0, 0.3)),
  gravelVoids: mostly(between(0.25, 0.5)),
  basinParts: rows(
    record({
      kind: mostly(oneOf("modules", "modules", "pump well", "round well", "tub"), 15),
      length: mostly(between(0.3, 1.6), 15),
      width: mostly(between(0.3, 1), 3),
      depth: mostly(between(0.2, 0.7), 15),
      voids: seldom(between(0.8, 1), 3),
    }),
    0,
    4,
  ),
  moduleLength: mostly(between(0.3, 0.8), 5),
  moduleWidth: mostly(between(0.3, 0.8)),
  moduleHeight: mostly(between(0.15, 0.6)),
  checkValve: mostly(oneOf("no", "no", "yes")),
  lowWaterDepth: mostly(between(0, 0.5)),
  splashShare: mostly(between(0, 2)),
  reserveDays: mostly(whole(0, 21)),
});

export const liner: Facts = some({
  linerOverlap: mostly(between(0, 0.6)),
  slackPerDrop: mostly(between(0, 0.2)),
  cutRounding: mostly(oneOf(0.05, 0.1, 0.15, 0.25)),
  linerThickness: mostly(between(0.5e-3, 1.5e-3)),
  pieces: rows(
    record<NonNullable<SomeFacts["pieces"]>[number]>({
      name: seldom(oneOf("A skirt", "Another one")),
      length: overRule(between(0.5, 8)),
      width: overRule(between(0.4, 4)),
      count: overRule(whole(1, 3)),
    }),
    0,
    5,
  ),
  rolls: rows(
    record({
      width: mostly(between(3, 9), 15),
      price: mostly(between(1, 60), 15),
      per: mostly(oneOf("length", "area", "roll"), 8),
      longest: mostly(between(15, 40), 8),
    }),
    0,
    4,
  ),
  seamPrice: seldom(between(0, 20)),
  linerTurn: mostly(oneOf("yes", "yes", "no")),
  seamLap: seldom(between(0.05, 0.2), 3),
  fabricUnder: mostly(whole(0, 2)),
  fabricOver: mostly(whole(0, 2)),
  fabricRollWidth: mostly(between(1.2, 5)),
  fabricLap: mostly(between(0, 0.4)),
  fabricMass: mostly(between(0.1, 0.8)),
});

const rocks = densityNames("rock");
const gravels = densityNames("stone");

export const stone: Facts = some({
  rock: mostly(oneOf(...rocks)),
  gravel: mostly(oneOf(...gravels)),
  rockFigure: seldom(oneOf("165 lb/ft3", "2.65 t/m3")),
  gravelFigure: seldom(oneOf("1.35 ton/yd3", "1.45 t/m3")),
  stoneWaste: mostly(between(0, 0.3)),
  dropReach: mostly(between(0.1, 0.7)),
  solidShare: mostly(between(0.5, 0.9)),
  dropFaces: rows(record({ width: overRule(between(0, 3)) }), 0, 12),
  bankReach: mostly(between(0.1, 0.6)),
  bankFaces: rows(record({ length: overRule(between(0, 20)), height: overRule(between(0, 1)) }), 0, 2),
  lipStonesPerDrop: mostly(whole(0, 4)),
  lipStoneLength: mostly(between(0.3, 1.2)),
  lipStoneWidth: mostly(between(0.2, 0.8)),
  lipStoneHeight: mostly(between(0.05, 0.25)),
  lipStoneShape: mostly(oneOf(...BOULDER_SHAPE_NAMES)),
  handLimit: mostly(between(10, 40)),
  boulderShape: mostly(oneOf(...BOULDER_SHAPE_NAMES)),
  boulderSizes: oneOf(
    [
      { size: 0.18, share: 0.2 },
      { size: 0.25, share: 0.4 },
      { size: 0.32, share: 0.3 },
      { size: 0.4, share: 0.1 },
    ],
    [{ size: 0.35, share: 1 }],
    [
      { size: 0.3, share: 0.333 },
      { size: 0.45, share: 0.333 },
      { size: 0.6, share: 0.333 },
    ],
    [{ size: 0.3, share: 0.7 }],
    [{ size: 0.3 }, { share: 1 }],
    [],
  ),
  bedGravelDepth: mostly(between(0, 0.15)),
  coverDepth: mostly(between(0, 0.2)),
  basinStone: mostly(oneOf(...gravels)),
  bagWeight: mostly(between(15, 40)),
  palletLoad: mostly(between(500, 1500)),
  truckPayload: mostly(between(3000, 15_000)),
});

type ShotRow = NonNullable<SomeFacts["shots"]>[number];

/** A run of shots from the rim or the grade, mostly as it should be booked: down the line, a turning point in between. */
const shotRun: fc.Arbitrary<ShotRow[]> = record<{ ground: number[]; turn: number; beside: number; spoiled: number }>({
  ground: rows(between(0.2, 3), 1, 8),
  turn: between(0.3, 2.5),
  beside: between(0.2, 2.5),
  spoiled: whole(0, 40),
}).map(({ ground: readings, turn, beside, spoiled }) => {
  const shots: ShotRow[] = [{ point: "Start", backsight: 1.2 }];
  readings.forEach((reading, index) => {
    shots.push({ intermediate: reading, station: index * 2.5, ...(index % 2 ? { offset: 0 } : {}) });
    if (index === 1) shots.push({ intermediate: beside, station: index * 2.5, offset: -1.5 });
    if (index === 2) shots.push({ point: "Turn", foresight: turn, backsight: 1.4 });
    if (index === 4) shots.push({}, { point: "Start", backsight: 1.6 });
  });
  shots.push({ point: "Start", foresight: readings.length > 2 && readings.length < 5 ? turn : 1.203 });
  // Now and then what should not be: a place shot twice, a sight with nothing before it. Off the rod its cell takes none.
  if (spoiled === 1) shots.splice(2, 0, { intermediate: 1, station: 0 });
  if (spoiled === 2) shots.shift();
  if (spoiled === 3) shots.push({ intermediate: 1, station: 3 });
  if (spoiled === 4) shots.splice(2, 0, { point: "Start", foresight: 1.2 }, { point: "Start", backsight: 1.3 });
  return shots;
});

export const ground: Facts = some({
  shotTool: oneOf("laser", "level", "string"),
  shotStart: oneOf("benchmark", "finished grade", "rim of the basin"),
  shotEndLevel: seldom(between(-3, 60), 12),
  shotDistance: mostly(between(20, 200), 3),
  shotLimit: mostly(oneOf("construction", "third order")),
  topsoilDepth: mostly(between(0, 0.3)),
  cutSlope: mostly(between(0.2, 2)),
  bankSlope: mostly(between(0, 2)),
  volumeMethod: mostly(oneOf("average end area", "prismoidal")),
  shots: mostly(shotRun, 4).map((shots) => shots ?? []),
  poolDepths: rows(record({ deeper: seldom(between(0, 0.6), 3) }), 0, 6),
});

export const earth: Facts = some({
  soil: mostly(oneOf(...SOIL_NAMES)),
  groundwaterDepth: mostly(between(0, 4), 3),
  accessWidth: mostly(between(0.6, 4), 3),
  machineWidth: mostly(between(0.6, 3), 3),
  machineLift: mostly(between(50, 800), 3),
  setReach: seldom(between(1, 4)),
  pitMargin: mostly(between(0, 0.6)),
  beddingDepth: mostly(between(0, 0.15)),
  trenchLength: mostly(between(0, 40)),
  trenchWidth: mostly(between(0.1, 0.6)),
  trenchDepth: mostly(between(0.2, 1.2)),
  shelfDepth: mostly(between(0, 0.5)),
  shelfMargin: mostly(between(0, 0.8)),
  bermLength: mostly(between(0, 6)),
  bermWidth: mostly(between(0, 2)),
  bermGround: mostly(between(-3, 60)),
  bermSlope: mostly(between(1, 3)),
  bermEnds: mostly(oneOf("sloped", "square")),
  ownSwell: seldom(between(0.1, 0.5)),
  ownShrink: seldom(between(-0.05, 0.2)),
  spoilTruck: mostly(between(2, 12)),
});

export const levels: Facts = some({
  benchmarkLevel: mostly(between(-3, 60)),
  backsight: mostly(between(0.5, 4)),
  backsightMoved: seldom(between(0.5, 4)),
  gradeTolerance: mostly(between(0.002, 0.02)),
  boxHeight: mostly(between(0, 0.6)),
  ownPoints: rows(record({ name: seldom(oneOf("Path", "Step"), 2), level: seldom(between(-3, 60), 2) }), 0, 3),
  readings: rows(record({ reading: seldom(between(0.2, 5), 3), after: seldom(between(0.2, 5), 9) }), 0, 8),
  stakeReadings: rows(record({ reading: seldom(between(0.2, 5), 3), after: seldom(between(0.2, 5), 9) }), 0, 3),
});
