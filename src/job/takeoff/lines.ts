import { fromInside, type Measure } from "../../calc/quantity/measures";
import type { Basin } from "../basin";
import type { Job, JobRow } from "../facts";
import type { Earth } from "../earth";
import type { Liner } from "../liner";
import type { Pump } from "../pump";
import { isKnown, known, reckon, type Reckoned } from "../reckoned";
import { total } from "../rows";
import type { Stone } from "../stone";
import type { Water } from "../water";

/** What a line of the takeoff needs, under the code of the price list, in the unit it is bought in. */
export interface Need {
  readonly code: string;
  readonly quantity: Reckoned<number>;
  /** What one unit costs, where the design knows it better than the price list. */
  readonly price?: number | undefined;
}

interface Design {
  readonly water: Water;
  readonly pump: Pump;
  readonly basin: Basin;
  readonly liner: Liner;
  readonly stone: Stone;
  readonly earth: Earth;
}

/** Fittings that are bought, with the columns of the route they are counted in; intakes are part of the pump. */
const FITTINGS = [
  ["FIT-EL90", ["elbows"]],
  ["FIT-SW90", ["sweeps"]],
  ["FIT-EL45", ["halfElbows"]],
  ["FIT-TEE", ["teesThrough", "teesBranch"]],
  ["FIT-BALL", ["ballValves"]],
  ["FIT-CHECK", ["checkValves"]],
  ["FIT-UNION", ["unions"]],
] as const;

const ROUTE_ROWS = [0, 1, 2, 3] as const;

function fittings(pipes: Job["route"] | Job["riser"], columns: (typeof FITTINGS)[number][1]): number {
  return total(pipes.flatMap((pipe) => columns.map((column) => pipe[column] ?? 0)));
}

/** Everything the design asks for, in the order of the price list. */
export function needsOf(job: Job, { water, pump, basin, liner, stone, earth }: Design): Need[] {
  const shown = (measure: Measure, inside: Reckoned<number>): Reckoned<number> =>
    reckon([inside], (value) => Math.max(0, fromInside(measure, value, job.system)));
  const need = (code: string, quantity: Reckoned<number>): Need => ({ code, quantity });
  const hasRoute = job.route.some(({ length }) => length !== undefined);
  // Every pump has a riser, and what is on it. A pipe has both a size and a length.
  const pipe = ({ size, length }: JobRow<"route">, times: number | undefined): Reckoned<number> =>
    (size === undefined) === (length === undefined)
      ? reckon([times], (each) => each * fromInside("length", length ?? 0, job.system))
      : undefined;
  return [
    need(
      "SPILLBOX",
      reckon([job.spillBoxes, water.designFlow], (boxes) => boxes),
    ),
    {
      code: "PUMP",
      quantity: reckon([pump.chosen, job.pumpCount], (_, count) => count),
      price: known(pump.price),
    },
    ...ROUTE_ROWS.map((row) => need(`PIPE-${row + 1}`, hasRoute ? pipe(job.route[row] ?? {}, 1) : undefined)),
    need("RISER", hasRoute ? pipe(job.riser[0] ?? {}, job.pumpCount) : undefined),
    ...FITTINGS.map(([code, columns]) =>
      need(
        code,
        hasRoute
          ? reckon([job.pumpCount], (pumps) => fittings(job.route, columns) + pumps * fittings(job.riser, columns))
          : undefined,
      ),
    ),
    need("MODULE", basin.moduleCount),
    need(
      "PUMPWELL",
      reckon([basin.hold], () => basin.wells),
    ),
    { code: "LINER", quantity: shown("area", liner.buyArea), price: linerPrice(job, liner) },
    need("FABRIC", shown("area", liner.fabricArea)),
    need("SEAMTAPE", shown("length", liner.seamTape)),
    need("GRAVEL", shown("load", stone.gravel)),
    need("BASINSTONE", shown("load", stone.basinStone)),
    need("BOULDER", shown("load", stone.boulders)),
    need("LIPSTONE", stone.lipStoneCount),
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
