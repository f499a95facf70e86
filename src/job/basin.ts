import { basinCheck, type BasinVerdict } from "../calc/basin/check";
import { basinDepth } from "../calc/basin/hold";
import { basinMix, findBasinPart, type BasinShare } from "../calc/basin/mix";
import { invalid } from "../calc/problem";
import { evaporationPerDay } from "../calc/water/evaporation";
import type { Drain } from "./drain";
import type { Job } from "./facts";
import { isKnown, known, derive, type Derived } from "./derived";
import { filledRows, needed, total } from "./rows";

/** The buried basin. SI: m, m², m³. */
export interface Basin {
  readonly contents: Derived<readonly BasinShare[]>;
  readonly hold: Derived<number>;
  readonly voidFraction: Derived<number>;
  readonly topLayerWater: Derived<number>;
  /** Space that modules and wells take. */
  readonly moduleVolume: Derived<number>;
  /** Space around them, which stone fills. */
  readonly stoneVolume: Derived<number>;
  readonly moduleCount: Derived<number>;
  readonly wells: number;
  readonly tubs: number;
  readonly fullLevel: Derived<number>;
  readonly floorLevel: Derived<number>;
  /** Height of the tallest module. */
  readonly lowerLayer: Derived<number>;
  /** How far the level sinks when the pump fills the stream. */
  readonly levelDrop: Derived<number>;
  readonly runningLevel: Derived<number>;
  /** Water that is of no use because the pump would suck air. */
  readonly lowWater: Derived<number>;
  readonly evaporationPerDay: Derived<number>;
  readonly lossPerDay: Derived<number>;
  readonly need: Derived<number>;
  /** Area at the full level. */
  readonly footprint: Derived<number>;
  readonly dropVoids: Derived<number>;
  readonly verdict: Derived<BasinVerdict>;
  readonly needDepth: Derived<number>;
}

export function deriveBasin(job: Job, drain: Drain): Basin {
  const { basinLength, basinWidth, basinWaterDepth, basinSideSlope: slope = 0 } = job;
  const contents = contentsOf(job);
  const whole = (name: string): Derived<BasinShare> =>
    derive([contents], (shares) => shares.find((share) => share.name === name)) ?? undefined;
  const [all, gravel, top] = [whole("Basin"), whole("Gravel"), whole("Above the modules")];
  const hold = derive([all], ({ water }) => water);
  const topLayerWater = derive([top], ({ water }) => water);
  const lowerLayer = derive([basinWaterDepth], (depth) => Math.min(depth, tallestModule(job)));
  const layers = derive([basinWaterDepth, lowerLayer, topLayerWater, hold], layersOf);
  const levels = levelsOf(job, drain, layers, hold);
  const lowWater = derive([layers, job.lowWaterDepth], waterBelow);
  const loss = losses(job, drain);
  const footprint = derive(
    [basinLength, basinWidth, basinWaterDepth],
    (length, width, depth) => (length + 2 * slope * depth) * (width + 2 * slope * depth),
  );
  const need = derive(
    [drain.drainBack, lowWater, loss.lossPerDay, job.reserveDays],
    (back, low, daily, days) => back + low + daily * days,
  );
  const voidFraction = derive([all], (share) => share.voidFraction ?? 0);
  const dropVoids = derive(
    [drain.drainBack, hold, footprint, levels.levelDrop, voidFraction],
    (back, held, area, drop, mean) =>
      drop > 0 ? Math.max(0.05, Math.min(1, Math.min(back, held) / (area * drop))) : mean,
  );
  return {
    contents,
    hold,
    voidFraction,
    topLayerWater,
    moduleVolume: derive([all, gravel], (basin, stone) => basin.volume - stone.volume),
    stoneVolume: derive([gravel], ({ volume }) => volume),
    moduleCount: moduleCount(job, contents),
    wells: job.basinParts.filter(({ kind }) => kind?.endsWith("well")).length,
    tubs: job.basinParts.filter(({ kind }) => kind === "tub").length,
    lowerLayer,
    ...levels,
    lowWater,
    ...loss,
    need,
    footprint,
    dropVoids,
    verdict: derive(
      [hold, drain.drainBack, lowWater, loss.lossPerDay, job.reserveDays, footprint, dropVoids],
      (held, back, low, daily, days, area, voids) =>
        basinCheck({
          hold: held,
          drainBack: back,
          lowWater: low,
          lossPerDay: daily,
          days,
          footprint: area,
          voidFraction: voids,
        }),
    ),
    needDepth: derive([need, voidFraction], (wanted, voids) =>
      basinDepth(wanted, {
        length: needed(basinLength, "basin", 1, "length"),
        width: needed(basinWidth, "basin", 1, "width"),
        voidFraction: voids,
        sideSlope: slope,
      }),
    ),
  };
}

/** Tubs as large as the pit: such a tub is the basin, and no liner lies below it. */
export function tubsAsPit({ basinParts, basinLength = Infinity, basinWidth = Infinity }: Job): number {
  const fills = (side: number | undefined, of: number): boolean => side !== undefined && side >= of * (1 - NOISE);
  return basinParts.filter(
    ({ kind, length, width }) => kind === "tub" && fills(length, basinLength) && fills(width, basinWidth),
  ).length;
}

/** What a conversion of units leaves behind. */
const NOISE = 1e-9;

function contentsOf(job: Job): Derived<readonly BasinShare[]> {
  const { basinLength, basinWidth, basinWaterDepth, gravelVoids, basinSideSlope = 0 } = job;
  return derive([basinLength, basinWidth, basinWaterDepth, gravelVoids], (length, width, depth, voids) =>
    basinMix([
      ...filledRows(job.basinParts).map((part) => ({
        kind: findBasinPart(needed(part.kind, "basin parts", part.row, "kind")),
        length: needed(part.length, "basin parts", part.row, "length"),
        width: part.width,
        depth: needed(part.depth, "basin parts", part.row, "depth"),
        voidFraction: part.voids,
        sideSlope: 0,
        label: `basin parts row ${part.row}`,
      })),
      {
        kind: findBasinPart("pit"),
        length,
        width,
        depth,
        voidFraction: voids,
        sideSlope: basinSideSlope,
        label: "the pit",
      },
    ]),
  );
}

/** Height of the tallest module; 0 where there is none. */
function tallestModule({ basinParts }: Job): number {
  return Math.max(0, ...basinParts.flatMap(({ kind, depth = 0 }) => (kind === "modules" ? [depth] : [])));
}

function moduleCount(job: Job, contents: Basin["contents"]): Derived<number> {
  const { moduleLength, moduleWidth, moduleHeight } = job;
  if (!job.basinParts.some(({ kind }) => kind === "modules")) return derive([contents], () => 0);
  return derive([contents, moduleLength, moduleWidth, moduleHeight], (shares, length, width, height) => {
    const blocks = shares.filter(({ name }) => name.startsWith("Modules")).map(({ volume }) => volume);
    // A thousandth of a module is noise of the measures.
    return Math.ceil(Math.round((total(blocks) / (length * width * height)) * 1000) / 1000);
  });
}

/** The basin as two layers of even water: up to the tallest module, and above it. */
interface Layers {
  readonly depth: number;
  readonly lower: number;
  readonly upper: number;
  readonly lowerWater: number;
  readonly upperWater: number;
}

function layersOf(depth: number, lower: number, upperWater: number, hold: number): Layers {
  return { depth, lower, upper: depth - lower, lowerWater: hold - upperWater, upperWater };
}

/** How far the level sinks when water is taken out: first the upper layer, then the lower. */
function sinking(layers: Layers, taken: number): number {
  const { lower, upper, lowerWater, upperWater } = layers;
  if (lower === 0 || taken <= upperWater) return upperWater > 0 ? (upper * taken) / upperWater : 0;
  return upper + (lower * (taken - upperWater)) / lowerWater;
}

/** The water that stands below a height above the floor. */
function waterBelow({ depth, lower, upper, lowerWater, upperWater }: Layers, height: number): number {
  const level = Math.min(height, depth);
  if (level <= lower) return lower > 0 ? (lowerWater * level) / lower : 0;
  return lowerWater + upperWater - (upper > 0 ? (upperWater * (depth - level)) / upper : 0);
}

function levelsOf(
  job: Job,
  { drainBack }: Drain,
  layers: Derived<Layers>,
  hold: Derived<number>,
): Pick<Basin, "fullLevel" | "floorLevel" | "levelDrop" | "runningLevel"> {
  const fullLevel = derive([job.gradeLevel, job.rimBelowGrade], (grade, rim) => grade - rim);
  const levelDrop = derive([drainBack, hold, layers], (back, held, basin) => sinking(basin, Math.min(back, held)));
  return {
    fullLevel,
    floorLevel: derive([fullLevel, job.basinWaterDepth], (full, depth) => full - depth),
    levelDrop,
    runningLevel: derive([fullLevel, levelDrop], (full, drop) => full - drop),
  };
}

/** What the workbook leaves to the function: wind reported at 10 m in the open, near sea level, under a mostly clear sky. */
const OPEN_WEATHER = { windHeight: 10, shelter: 1, elevation: 0, sunshine: 0.8 } as const;

function losses(job: Job, { openWater }: Drain): Pick<Basin, "evaporationPerDay" | "lossPerDay"> {
  const evaporation = derive(
    [openWater, job.airTemperature, job.humidity, job.wind, job.latitude],
    (area, airTemperature, humidity, wind, latitude) => {
      if (!(area > 0)) throw invalid("open water must be more than 0");
      return evaporationPerDay(area, {
        ...OPEN_WEATHER,
        airTemperature,
        humidity,
        wind,
        latitude,
        month: latitude < 0 ? 1 : 7,
      });
    },
  );
  return {
    evaporationPerDay: evaporation,
    lossPerDay: derive([evaporation, job.splashShare], (loss, splash) => loss * (1 + splash)),
  };
}

/** Whether modules and wells were found to fit into the pit. */
export function partsFit({ contents }: Basin): boolean {
  return isKnown(contents) && (known(contents)?.length ?? 0) > 0;
}
