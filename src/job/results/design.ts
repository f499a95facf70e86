import { tubsAsPit } from "../basin";
import type { PointWanted } from "../levels";
import { isKnown, known, derive, type Derived } from "../derived";
import { sumOf } from "../rows";
import { column, one, type Result } from "./result";

/** A list that is known or not, as the cells of a column. */
function cellsOf<T, V>(list: Derived<readonly T[]>, value: (each: T) => Derived<V>): Derived<V>[] {
  return isKnown(list) ? list.map(value) : [];
}

/** Values by the row they stand in. */
function byRow(rows: readonly { readonly row: number; readonly value: Derived<number> }[]): Derived<number>[] {
  const most = Math.max(0, ...rows.map(({ row }) => row));
  return Array.from({ length: most }, (_, index) => rows.find(({ row }) => row === index + 1)?.value);
}

const water: readonly Result[] = [
  one("LipFlow", "flow", ({ water }) => water.lipFlow),
  one("DesignFlow", "flow", ({ water }) => water.designFlow),
  column("LipSplit", "flow", 2, ({ water }) => cellsOf(water.split, ({ flow }) => flow)),
  column("LipSplit", "size", 3, ({ water }) => cellsOf(water.split, ({ depth }) => depth)),
  one("Fall", "length", ({ water }) => water.fall),
  one("TopLipLevel", "length", ({ water }) => water.topLipLevel),
  column("Drops", "length", 1, ({ water }) => water.drops),
  column("Treads", "length", 1, ({ water }) => water.treads),
  one("DropTotal", "length", ({ water }) => water.dropTotal),
  one("TreadTotal", "length", ({ water }) => water.treadTotal),
  one("BedDepthMost", "size", ({ drain }) => drain.bedDepthMost),
  one("BedSpeedMost", "speed", ({ drain }) => drain.bedSpeedMost),
  one("BedStone", "size", ({ drain }) => drain.bedStone),
  column("BedFroudes", "number", 1, ({ drain }) =>
    byRow(
      (known(drain.parts) ?? [])
        .filter(({ kind }) => kind === "bed")
        .map(({ row }, index) => ({ row, value: drain.froudes[index] })),
    ),
  ),
  one("WaterArea", "area", ({ drain }) => drain.openWater),
];

const pump: readonly Result[] = [
  one("StaticLift", "head", ({ pump }) => pump.lift),
  one("PipeTotalLength", "length", ({ pump }) => pump.pipeLength),
  one("DesignHead", "head", ({ pump }) => pump.designHead),
  one("PipeSpeed", "speed", ({ pump }) => pump.pipeSpeed),
  one("PumpPrice", "money", ({ pump }) => pump.price),
  one("PumpWatts", "power", ({ pump }) => pump.watts),
  one("HeadAtWanted", "head", ({ pump }) => pump.headAtWanted),
  one("DeliveredFlow", "flow", ({ pump }) => pump.deliveredFlow),
  one("DutyHead", "head", ({ pump }) => pump.dutyHead),
  one("DutySpeed", "speed", ({ pump }) => pump.dutySpeed),
  one("YearlyEnergyCost", "money", ({ pump }) => pump.yearlyEnergyCost),
  one("PumpOwnCost", "money", ({ pump }) => pump.ownCost),
  column("PumpRanking", "flow", 4, ({ pump }) => cellsOf(pump.ranking(), ({ duty }) => duty?.flow)),
  column("PumpRanking", "money", 7, ({ pump }) => cellsOf(pump.ranking(), ({ ownCost }) => ownCost)),
];

const basin: readonly Result[] = [
  one("DrainBack", "water", ({ drain }) => drain.drainBack),
  column("DrainParts", "water", 2, ({ drain }) =>
    isKnown(drain.parts) ? [...drain.parts.map(({ volume }) => volume), drain.drainBack] : [],
  ),
  column("BasinContents", "earth", 2, ({ basin }) => cellsOf(basin.contents, ({ volume }) => volume)),
  one("BasinHold", "water", ({ basin }) => basin.hold),
  one("VoidFraction", "share", ({ basin }) => basin.voidFraction),
  one("TopLayerWater", "water", ({ basin }) => basin.topLayerWater),
  one("ModuleVolume", "earth", ({ basin }) => basin.moduleVolume),
  one("ModuleCount", "count", ({ basin }) => basin.moduleCount),
  one("TubIsBasin", "count", (_, job) => tubsAsPit(job)),
  one("FullLevel", "length", ({ basin }) => basin.fullLevel),
  one("FloorLevel", "length", ({ basin }) => basin.floorLevel),
  one("LowerLayer", "length", ({ basin }) => basin.lowerLayer),
  one("LevelDrop", "length", ({ basin }) => basin.levelDrop),
  one("RunningLevel", "length", ({ basin }) => basin.runningLevel),
  one("LowWater", "water", ({ basin }) => basin.lowWater),
  one("EvaporationPerDay", "water", ({ basin }) => basin.evaporationPerDay),
  one("LossPerDay", "water", ({ basin }) => basin.lossPerDay),
  one("BasinNeed", "water", ({ basin }) => basin.need),
  one("BasinFootprint", "area", ({ basin }) => basin.footprint),
  one("DropVoids", "share", ({ basin }) => basin.dropVoids),
  one("NeedDepth", "length", ({ basin }) => basin.needDepth),
];

const liner: readonly Result[] = [
  { name: "StreamCut", kind: ["length", "length", "area", "weight"], values: ({ liner }) => cutCells(liner.streamCut) },
  { name: "BasinCut", kind: ["length", "length", "area", "weight"], values: ({ liner }) => cutCells(liner.basinCut) },
  column("PieceLengths", "length", 1, ({ liner }) => liner.pieces.map(({ length }) => known(length))),
  column("PieceWidths", "length", 1, ({ liner }) => liner.pieces.map(({ width }) => known(width))),
  column("PieceWeights", "weight", 1, ({ liner }) => liner.pieces.map(({ weight }) => weight)),
  one("PieceCount", "count", ({ liner }) => liner.pieceCount),
  one("LinerGaps", "count", ({ liner }) => liner.gaps),
  one("LinerBuyLength", "length", ({ liner }) => liner.buyLength),
  one("LinerBuyArea", "area", ({ liner }) => liner.buyArea),
  one("LinerCost", "money", ({ liner }) => liner.cost),
  one("LinerWasteShare", "share", ({ liner }) => liner.wasteShare),
  one("SeamTapeLength", "length", ({ liner }) => liner.seamTape),
  one("SkirtFabric", "area", ({ liner }) => liner.skirtFabric),
  one("FabricBuyArea", "area", ({ liner }) => liner.fabricArea),
  one("FabricBuyLength", "length", ({ liner }) => liner.fabricLength),
  one("FabricWeight", "weight", ({ liner }) => liner.fabricWeight),
  one("LinerWeight", "areaWeight", ({ liner }) => liner.weight),
  one("HeaviestPiece", "weight", ({ liner }) => liner.heaviestPiece),
  one("LinerCarriers", "count", ({ liner }) => liner.carriers),
];

/** Length, width, area and weight of a cut; the weight is that of the usual liner, which only the help shows. */
function cutCells(cut: Derived<{ readonly length: number; readonly width: number }>): (number | undefined)[] {
  const size = known(cut);
  return size ? [size.length, size.width, size.length * size.width] : [];
}

const stone: readonly Result[] = [
  one("DropTons", "load", ({ stone }) => stone.dropStone),
  one("BankTons", "load", ({ stone }) => stone.bankStone),
  one("BoulderTons", "load", ({ stone }) => stone.boulders),
  column("DropStone", "area", 4, ({ stone }) => stone.dropFaces.map(({ area }) => area)),
  column("DropStone", "load", 5, ({ stone }) => stone.dropFaces.map(({ weight }) => known(weight))),
  column("BankStone", "load", 5, ({ stone }) => stone.bankFaces.map(({ weight }) => known(weight))),
  one("LipStoneWeight", "weight", ({ stone }) => stone.lipStoneWeight),
  one("LipStoneHeavy", "weight", ({ stone }) => stone.lipStoneHeavy),
  one("HeaviestStone", "weight", ({ stone }) => stone.heaviest),
  one("LipStoneCount", "count", ({ stone }) => stone.lipStoneCount),
  one("LipStoneTons", "load", ({ stone }) => stone.lipStones),
  column("StoneSizes", "load", 3, ({ stone }) =>
    isKnown(stone.sizes) ? [...stone.sizes.map(({ weight }) => weight), stone.boulders] : [],
  ),
  column("StoneSizes", "weight", 4, ({ stone }) => cellsOf(stone.sizes, ({ each }) => each)),
  column("StoneSizes", "weight", 6, ({ stone }) => cellsOf(stone.sizes, ({ heavy }) => heavy)),
  column("StoneSizes", "count", 7, ({ stone }) => {
    const counts = cellsOf(stone.sizes, ({ count }) => count);
    return counts.length === 0 ? [] : [...counts, sumOf(counts)];
  }),
  one("BedGravelArea", "area", ({ stone }) => stone.bedArea),
  one("BedGravelTons", "load", ({ stone }) => stone.bedGravel),
  one("CoverTons", "load", ({ stone }) => stone.coverGravel),
  one("GravelTons", "load", ({ stone }) => stone.gravel),
  one("BasinStoneVolume", "earth", ({ basin }) => basin.stoneVolume),
  one("BasinStoneTons", "load", ({ stone }) => stone.basinStone),
  column("StoneOrder", "earth", 3, ({ stone }) => stone.orders.map(({ volume }) => volume)),
  column("StoneOrder", "count", 4, ({ stone }) => stone.orders.map(({ bags }) => bags)),
  column("StoneOrder", "count", 5, ({ stone }) => stone.orders.map(({ pallets }) => pallets)),
  column("StoneOrder", "number", 6, ({ stone }) => stone.orders.map(({ loads }) => loads)),
  one("StoneTruckloads", "count", ({ stone }) => stone.truckloads),
];

const ground: readonly Result[] = [
  one("ShotStartLevel", "length", ({ ground }) => ground.startLevel),
  column("ShotLevels", "length", 1, ({ ground }) => ground.levels),
  one("GroundShots", "count", ({ ground }) => ground.shotsOnLine),
  column("SurfaceStations", "length", 1, ({ ground }) => ground.surface.stations.map((at) => at?.station)),
  column("SurfaceStations", "length", 2, ({ ground }) => ground.surface.stations.map((at) => at?.design)),
  column("CutFill", "length", 1, ({ ground }) => cellsOf(ground.cutFill, ({ station }) => station)),
  column("CutFill", "length", 2, ({ ground }) => cellsOf(ground.cutFill, (at) => at.ground)),
  column("CutFill", "earth", 7, ({ ground }) => cellsOf(ground.cutFill, ({ volume }) => volume.cut)),
  column("CutFill", "earth", 8, ({ ground }) => cellsOf(ground.cutFill, ({ volume }) => volume.fill)),
  one("GroundAtLip", "length", ({ ground }) => ground.atLip),
  one("LineCut", "earth", ({ ground }) => ground.cut),
  one("LineFill", "earth", ({ ground }) => ground.fill),
  one("TopsoilVolume", "earth", ({ ground }) => ground.topsoil),
  one("LinerRunLength", "length", ({ ground }) => ground.linerLength),
  one("LinerRunWidth", "length", ({ ground }) => ground.linerWidth),
];

const earth: readonly Result[] = [
  one("PitDepth", "length", ({ earth }) => earth.pitDepth),
  one("PitLength", "length", ({ earth }) => earth.pitLength),
  one("PitWidth", "length", ({ earth }) => earth.pitWidth),
  one("PitVolume", "earth", ({ earth }) => earth.pit),
  one("BeddingVolume", "earth", ({ earth }) => earth.bedding),
  one("TrenchVolume", "earth", ({ earth }) => earth.trench),
  one("ShelfVolume", "earth", ({ earth }) => earth.shelf),
  one("DugVolume", "earth", ({ earth }) => earth.dug),
  one("BackfillVolume", "earth", ({ earth }) => earth.backfill),
  one("BermHeight", "length", ({ earth }) => earth.bermHeight),
  one("BermNeed", "earth", ({ earth }) => earth.berm),
  one("SpoilAway", "earth", ({ earth }) => earth.spoilAway),
  one("SpoilLoads", "count", ({ earth }) => earth.spoilLoads),
  one("FillNeed", "earth", ({ earth }) => earth.fillNeed),
  one("FillLoads", "count", ({ earth }) => earth.fillLoads),
];

const levels: readonly Result[] = [
  one("InstrumentLevel", "length", ({ levels }) => levels.instrument),
  one("PointsTold", "count", ({ levels }) => levels.pointsTold),
  column("SetoutPoints", "length", 2, ({ levels }) => levels.points.map(({ level }) => level)),
];

const stakePoints = column("StakePoints", "length", 2, ({ levels }) => levels.stakes.map(({ level }) => level));
const stakeRods = column("StakeTable", "length", 3, ({ levels }) =>
  isKnown(levels.stakesOut)
    ? rodsByRow(
        levels.stakes,
        levels.stakesOut.map(({ rod }) => rod),
      )
    : [],
);

/** Rod readings: a point above the line of sight has none. */
const rods = column("SetoutTable", "length", 3, ({ levels }) =>
  isKnown(levels.setOut)
    ? rodsByRow(
        levels.points,
        levels.setOut.map(({ rod }) => rod),
      )
    : [],
);

function rodsByRow(points: readonly PointWanted[], readings: readonly number[]): Derived<number>[] {
  const named = points.filter(({ name, level }) => name !== undefined && level !== undefined);
  return byRow(
    named.map(({ row }, index) => ({ row, value: derive([readings[index]], (rod) => (rod >= 0 ? rod : undefined)) })),
  );
}

/** What follows from the design, before any money. */
export const designResults = {
  water,
  pump,
  basin,
  liner,
  stone,
  ground,
  earth,
  levels: [...levels, rods, stakePoints, stakeRods],
} as const;
