import { aboutKind } from "../../book/kinds";
import { fromInside, type Measure } from "../../calc/quantity/measures";
import type { Basin } from "../basin";
import type { Job, JobRow } from "../facts";
import type { Earth } from "../earth";
import type { Liner } from "../liner";
import type { Pump } from "../pump";
import { isKnown, known, derive, type Derived } from "../derived";
import { total } from "../rows";
import { boulderAsks, cableAsk, fittingAsks, oneAsk, pipeAsk, tubAsks, type Ask } from "./asks";
import { FITTINGS, type FittingColumns } from "./fittings";
import type { Stone } from "../stone";
import type { Water } from "../water";

/** What a line of the takeoff needs, under the code of the price list, in the unit it is bought in. */
export interface Need {
  readonly code: string;
  readonly quantity: Derived<number>;
  /** What one unit costs, where the design knows it better than the price list. */
  readonly price?: number | undefined;
  /** The products it stands for, by size and type; they price it where its own line of the price list does not. */
  readonly asks?: readonly Ask[];
}

interface Design {
  readonly water: Water;
  readonly pump: Pump;
  readonly basin: Basin;
  readonly liner: Liner;
  readonly stone: Stone;
  readonly earth: Earth;
}

const ROUTE_ROWS = [0, 1, 2, 3] as const;

function fittings(pipes: Job["route"] | Job["riser"], columns: FittingColumns): number {
  return total(pipes.flatMap((pipe) => columns.map((column) => pipe[column] ?? 0)));
}

/** Whether the fittings of every pipe are counted: none, until somebody types how many; emptied by hand, nobody knows. */
function counted(pipes: Job["route"] | Job["riser"], columns: FittingColumns): boolean {
  return pipes.every((pipe) => pipe.size === undefined || columns.every((column) => pipe[column] !== null));
}

/** Everything the design asks for, in the order of the price list. */
export function needsOf(job: Job, { water, pump, basin, liner, stone, earth }: Design): Need[] {
  const shown = (measure: Measure, inside: Derived<number>): Derived<number> =>
    derive([inside], (value) => Math.max(0, fromInside(measure, value, job.system)));
  const need = (code: string, quantity: Derived<number>, asks?: readonly Ask[]): Need => ({
    code,
    quantity,
    ...(asks ? { asks } : {}),
  });
  const { boxWidth, moduleLength, moduleWidth, moduleHeight, lipStoneLength, lipStoneWidth, lipStoneHeight } = job;
  const one = (wanted: Parameters<typeof oneAsk>[1]): Ask[] => oneAsk(job, wanted);
  const hasRoute = job.route.some(({ length }) => length !== undefined);
  // Every pump has a riser, and what is on it. A pipe has both a size and a length.
  const pipe = ({ size, length }: JobRow<"route">, times: number | undefined): Derived<number> =>
    (size === undefined) === (length === undefined)
      ? derive([times], (each) => each * fromInside("length", length ?? 0, job.system))
      : undefined;
  return [
    need(
      "SPILLBOX",
      derive([job.spillBoxes, water.designFlow], (boxes) => boxes),
      one({ kind: "spillway box", size: boxWidth }),
    ),
    {
      code: "PUMP",
      quantity: derive([pump.chosen, job.pumpCount], (_, count) => count),
      price: known(pump.price),
    },
    ...ROUTE_ROWS.map((row) =>
      need(`PIPE-${row + 1}`, hasRoute ? pipe(job.route[row] ?? {}, 1) : undefined, pipeAsk(job, job.route[row] ?? {})),
    ),
    need(
      "RISER",
      hasRoute ? pipe(job.riser[0] ?? {}, job.pumpCount) : undefined,
      pipeAsk(job, job.riser[0] ?? {}, job.pumpCount ?? 0),
    ),
    ...FITTINGS.map(([kind, columns]) =>
      need(
        aboutKind(kind).word,
        hasRoute && counted(job.route, columns) && counted(job.riser, columns)
          ? derive([job.pumpCount], (pumps) => fittings(job.route, columns) + pumps * fittings(job.riser, columns))
          : undefined,
        fittingAsks(job, kind, (on) => fittings([on], columns)),
      ),
    ),
    need("CABLE", shown("length", job.cableLength ?? 0), cableAsk(job)),
    need(
      "MODULE",
      basin.moduleCount,
      one({ kind: "void module", length: moduleLength, width: moduleWidth, height: moduleHeight }),
    ),
    need(
      "PUMPWELL",
      derive([basin.hold], () => basin.wells),
    ),
    need(
      "TUB",
      derive([basin.hold], () => basin.tubs),
      tubAsks(job),
    ),
    {
      code: "LINER",
      quantity: liner.gaps > 0 ? undefined : shown("area", liner.buyArea),
      price: linerPrice(job, liner),
    },
    need("FABRIC", shown("area", liner.fabricArea), one({ kind: "fabric", size: job.fabricRollWidth })),
    need("SEAMTAPE", shown("length", liner.seamTape)),
    need("GRAVEL", shown("load", stone.gravel), one({ kind: "gravel", type: job.gravel })),
    need("BASINSTONE", shown("load", stone.basinStone), one({ kind: "basin stone", type: job.basinStone })),
    need("BOULDER", shown("load", stone.boulders), boulderAsks(job)),
    need(
      "LIPSTONE",
      stone.lipStoneCount,
      one({
        kind: "lip stone",
        length: lipStoneLength,
        width: lipStoneWidth,
        height: lipStoneHeight,
        type: job.rock,
      }),
    ),
    need("STONEHAUL", stone.truckloads),
    need("SPOIL", earth.spoilLoads),
    need("FILL", shown("earth", earth.fillNeed)),
    need("BEDDING", shown("earth", earth.bedding)),
  ];
}

/** What the plan's rolls cost, spread over the area bought. */
function linerPrice({ system }: Job, { cost, buyArea }: Liner): number | undefined {
  return isKnown(cost) && isKnown(buyArea) ? cost / fromInside("area", buyArea, system) : undefined;
}
