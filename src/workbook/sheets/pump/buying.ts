import { USUAL_PIPE } from "../../../calc/tables/pipes";
import type { Job, SheetLayout } from "../../layout";
import { inCode } from "../takeoff/asks";
import { FITTING_COLUMNS, RISER_ROWS, ROUTE_ROWS } from "./route";

/** What is bought of each column of the fittings: code, description. Intakes are part of the pump. */
const BOUGHT_FITTINGS: readonly (readonly [title: string, code: string, description: string])[] = [
  ["90 elbow", "FIT-EL90", "Pipe fitting: 90 elbow"],
  ["90 sweep", "FIT-SW90", "Pipe fitting: 90 sweep"],
  ["45 elbow", "FIT-EL45", "Pipe fitting: 45 elbow"],
  ["Tee, straight", "FIT-TEE", "Pipe fitting: tee"],
  ["Ball valve", "FIT-BALL", "Ball valve"],
  ["Check valve", "FIT-CHECK", "Swing check valve"],
  ["Union", "FIT-UNION", "Union or coupling"],
];

/** Formula of the pipes whose fittings of these columns were emptied. */
function uncounted(columns: readonly string[]): string {
  return columns
    .flatMap((name) => [`SUMPRODUCT((RouteSizes<>"")*(${name}=""))`, `AND(RiserSizes<>"",Riser${name}="")`])
    .join("+");
}

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
    const size = `INDEX(PipeSizes,${row})`;
    const named = `IF(${type}="","${usualType}",${type})`;
    s.takeoff({
      ...line,
      quantity: `=N(INDEX(PipeLengths,${row}))`,
      unknownIf: unknownPipe(row, part, table),
      which: `=IF(COUNT(${size})=0,"",${size}&" ${sizeUnit} "&${named})`,
      asks: [
        { count: `N(INDEX(PipeLengths,${row}))`, codes: [`IF(${size}="","","PIPE "&${inCode(size)}&" "&${named})`] },
      ],
    });
    s.rate({
      ...line,
      supplier: "Pipe yard (demo)",
      waste: 0.05,
      pack: { US: 10, SI: 5 },
    });
  }

  for (const [title, code, description] of BOUGHT_FITTINGS) {
    const line = { code, description, unit: "each", category: "Pipe" } as const;
    // One tee serves either way through it.
    const titles: readonly string[] = title === "Tee, straight" ? [title, "Tee, branch"] : [title];
    const columns = titles.map((one) => `Fittings${FITTING_COLUMNS.findIndex(([name]) => name === one) + 1}`);
    // Every pump has a riser, and what is on it.
    const risers = columns.map((name) => `IF(Riser${name}="",0,Riser${name})`).join("+");
    // Pipes of a route differ in size, and so do their fittings.
    const onPipes = Array.from({ length: ROUTE_ROWS + RISER_ROWS }, (_, index) => {
      const [part, prefix, times] =
        index < ROUTE_ROWS ? [index + 1, "", ""] : [index - ROUTE_ROWS + 1, "Riser", "*PumpCount"];
      const count = columns.map((name) => `N(INDEX(${prefix}${name},${part}))`).join("+");
      return { count, times, size: `INDEX(PipeSizes,${index + 1})` };
    });
    const sizes = onPipes.map(
      ({ count, times, size }) => `IF(${count}>0,", "&(${count})${times}&" of "&${size}&" ${sizeUnit}","")`,
    );
    s.takeoff({
      ...line,
      quantity: `=${columns.map((name) => `SUM(${name})`).join("+")}+PumpCount*(${risers})`,
      unknownIf: `=OR(COUNT(RouteLengths)=0,PumpCount="",${uncounted(columns)}>0)`,
      which: `=MID(${sizes.join("&")},3,200)`,
      asks: onPipes.map(({ count, times, size }) => ({
        count: times === "" ? count : `(${count})*N(PumpCount)`,
        codes: [`IF(${size}="","","${code} "&${inCode(size)})`],
      })),
    });
    s.rate({ ...line, supplier: "Pipe yard (demo)" });
  }
  const cable = { code: "CABLE", description: "Cable to the pump", unit: lengthUnit, category: "Pump" } as const;
  s.takeoff({
    ...cable,
    quantity: "=N(CableLength)",
    which: '=CableGauge&""',
    asks: [{ count: "N(CableLength)", codes: ['IF(CableGauge="","","CABLE "&CableGauge)'] }],
  });
  s.rate({ ...cable, supplier: "" });
}
