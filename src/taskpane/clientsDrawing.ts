import { clientDrawing, type Sheet } from "../drawing/client";
import type { JobDrawing, Reading } from "./reading";

/** Columns of the boulders' table: their size, and how many. */
const [SIZE, COUNT] = [0, 6];

/** The feature as the client sees it, built of the stones that the workbook counts. */
export const clientsDrawing: JobDrawing & { draw(read: Reading, sheet?: Sheet): string } = {
  title: "Client's drawing",
  places: [
    "Units",
    "FeatureName",
    "Drops",
    "Treads",
    "BedWidth",
    "BankHeight",
    "BasinLength",
    "BasinWidth",
    "BasinWaterDepth",
    "BasinSideSlope",
    "RimBelowGrade",
    "LipStoneLength",
    "LipStoneWidth",
    "LipStoneHeight",
    "LipStonesPerDrop",
    "StoneSizes",
    "PoolTable",
  ],
  draw(read: Reading, sheet?: Sheet) {
    const size = (place: string): number => read.length(read.optional(place));
    const depth = read.number("BasinWaterDepth");
    const lean = read.optional("BasinSideSlope") * depth;
    return clientDrawing(
      {
        system: read.system,
        name: read.text("FeatureName"),
        drops: read.column("Drops"),
        treads: read.column("Treads"),
        bedWidth: read.number("BedWidth"),
        bankHeight: read.number("BankHeight"),
        basinLength: read.number("BasinLength") + 2 * lean,
        basinWidth: read.number("BasinWidth") + 2 * lean,
        basinDepth: depth,
        basinLean: lean,
        rimBelowGrade: size("RimBelowGrade"),
        lipStone: { length: size("LipStoneLength"), width: size("LipStoneWidth"), height: size("LipStoneHeight") },
        lipStonesPerDrop: read.optional("LipStonesPerDrop"),
        boulders: read.grid("StoneSizes").flatMap((row) => {
          const [mean, count] = [row[SIZE], row[COUNT]];
          return typeof mean === "number" && typeof count === "number" ? [{ size: read.length(mean), count }] : [];
        }),
        pools: read.pools,
      },
      sheet,
    );
  },
};
