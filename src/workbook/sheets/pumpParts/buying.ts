import { USUAL_PIPE } from "../../../calc/tables/pipes";
import type { Both, Job, SheetLayout } from "../../layout";
import { FITTING_COLUMNS, RISER_ROWS, ROUTE_ROWS } from "./route";

/** Demo prices of the pipes, per ft or m, in the order of the route's rows. */
const PIPE_PRICES: readonly Both<number>[] = [
  { US: 3.35, SI: 5.6 },
  { US: 4.15, SI: 7.9 },
  { US: 4.15, SI: 7.9 },
  { US: 4.15, SI: 7.9 },
  { US: 3.35, SI: 5.6 },
];

/** What is bought of each column of the fittings: code, description, demo price. Intakes are part of the pump. */
const FITTING_PRICES: readonly (readonly [title: string, code: string, description: string, price: Both<number>])[] = [
  ["90 elbow", "FIT-EL90", "Pipe fitting: 90 elbow", { US: 5.2, SI: 4.6 }],
  ["90 sweep", "FIT-SW90", "Pipe fitting: 90 sweep", { US: 9.4, SI: 8.7 }],
  ["45 elbow", "FIT-EL45", "Pipe fitting: 45 elbow", { US: 6.1, SI: 5.3 }],
  ["Tee, straight", "FIT-TEE", "Pipe fitting: tee", { US: 8.3, SI: 7.4 }],
  ["Ball valve", "FIT-BALL", "Ball valve", { US: 38, SI: 34 }],
  ["Check valve", "FIT-CHECK", "Swing check valve", { US: 46, SI: 43 }],
  ["Union", "FIT-UNION", "Union or coupling", { US: 7.6, SI: 6.9 }],
];

/** A pipe has both a size and a length; the route has a pipe; every pump has its riser. */
function unknownPipe(row: number, part: number, table: string): string {
  const half = `(INDEX(PipeSizes,${row})="")<>(INDEX(${table}Lengths,${part})="")`;
  return `=OR(COUNT(RouteLengths)=0,${half}${row > ROUTE_ROWS ? ',PumpCount=""' : ""})`;
}

/** Lines of takeoff and price list for pump, pipe and fittings. */
export function buying(s: SheetLayout, job: Job): void {
  s.takeoff({
    code: "PUMP",
    description: "Pump, as chosen on Pump",
    unit: "each",
    quantity: "=PumpCount",
    unknownIf: '=OR(PumpRow="",PumpCount="")',
    category: "Pump",
    which: '=PumpName&""',
  });
  s.rate({
    code: "PUMP",
    description: "Pump, as chosen on Pump",
    unit: "each",
    category: "Pump",
    supplier: "Pump counter (demo)",
    price: { US: 418, SI: 389 },
    priceFormula: "=PumpPrice",
  });

  const lengthUnit = job.pick({ US: "ft", SI: "m" });
  const sizeUnit = job.pick({ US: "in", SI: "mm" });
  const usualType = job.pick(USUAL_PIPE);
  for (let row = 1; row <= ROUTE_ROWS + RISER_ROWS; row++) {
    const [part, table] = row <= ROUTE_ROWS ? [row, "Route"] : [row - ROUTE_ROWS, "Riser"];
    const line = {
      code: row <= ROUTE_ROWS ? `PIPE-${row}` : "RISER",
      description: row <= ROUTE_ROWS ? `Pipe ${row} of the route` : "Riser of each pump",
      unit: lengthUnit,
      category: "Pipe",
    } as const;
    const type = `INDEX(${table}Table,${part},3)`;
    s.takeoff({
      ...line,
      quantity: `=N(INDEX(PipeLengths,${row}))`,
      unknownIf: unknownPipe(row, part, table),
      which: `=IF(COUNT(INDEX(PipeSizes,${row}))=0,"",INDEX(PipeSizes,${row})&" ${sizeUnit} "&IF(${type}="","${usualType}",${type}))`,
    });
    s.rate({
      ...line,
      supplier: "Pipe yard (demo)",
      price: PIPE_PRICES[row - 1] ?? 0,
      waste: 0.05,
      pack: { US: 10, SI: 5 },
    });
  }

  for (const [title, code, description, price] of FITTING_PRICES) {
    const line = { code, description, unit: "each", category: "Pipe" } as const;
    // One tee serves either way through it.
    const titles: readonly string[] = title === "Tee, straight" ? [title, "Tee, branch"] : [title];
    const columns = titles.map((one) => `Fittings${FITTING_COLUMNS.findIndex(([name]) => name === one) + 1}`);
    // Every pump has a riser, and what is on it.
    const risers = columns.map((name) => `SUM(Riser${name})`).join("+");
    // Pipes of a route differ in size, and so do their fittings.
    const sizes = Array.from({ length: ROUTE_ROWS + RISER_ROWS }, (_, index) => {
      const [part, prefix, times] =
        index < ROUTE_ROWS ? [index + 1, "", ""] : [index - ROUTE_ROWS + 1, "Riser", "*PumpCount"];
      const count = columns.map((name) => `N(INDEX(${prefix}${name},${part}))`).join("+");
      return `IF(${count}>0,", "&(${count})${times}&" of "&INDEX(PipeSizes,${index + 1})&" ${sizeUnit}","")`;
    });
    s.takeoff({
      ...line,
      quantity: `=${columns.map((name) => `SUM(${name})`).join("+")}+PumpCount*(${risers})`,
      unknownIf: '=OR(COUNT(RouteLengths)=0,PumpCount="")',
      which: `=MID(${sizes.join("&")},3,200)`,
    });
    s.rate({ ...line, supplier: "Pipe yard (demo)", price });
  }
}
