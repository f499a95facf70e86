import { USUAL_PIPE } from "../../../calc/tables/pipes";
import type { AskSpec, Job, SheetLayout } from "../../layout";
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
  return `SUMPRODUCT((PipeSizes<>"")*(${columns.map((name) => `(${name}="")`).join("+")}))`;
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
  const codes = Array.from({ length: ROUTE_ROWS + RISER_ROWS }, (_, index) =>
    index < ROUTE_ROWS ? `PIPE-${index + 1}` : "RISER",
  );
  // One formula each tells of the pipe of all these lines.
  const pipes: AskSpec = {
    lines: codes,
    count: "IF(ISTEXT(PipeLengths),0,PipeLengths)",
    codes: [`IF(PipeSizes="","","PIPE "&${inCode("PipeSizes")}&" "&IF(PipeTypes="","${usualType}",PipeTypes))`],
  };
  codes.forEach((code, index) => {
    const line = {
      code,
      description: index < ROUTE_ROWS ? `Pipe ${index + 1} of the route` : "Riser of each pump",
      unit: lengthUnit,
      category: "Pipe",
    } as const;
    const first = index === 0;
    s.takeoff({
      ...line,
      // A pipe has both a size and a length; the route has a pipe; every pump has its riser.
      quantity: first ? "=IF(ISTEXT(PipeLengths),0,PipeLengths)" : "",
      unknownIf: '=(COUNT(RouteLengths)=0)+((PipeSizes="")<>(PipeLengthsEach=""))+(PipesAlike=0)>0',
      which: first
        ? `=IF(ISNUMBER(PipeSizes),PipeSizes&" ${sizeUnit} "&IF(PipeTypes="","${usualType}",PipeTypes),"")`
        : "",
      ...(first ? { down: codes.length } : {}),
      asks: first ? [pipes] : [],
    });
    s.rate({
      ...line,
      supplier: "Pipe yard (demo)",
      waste: 0.05,
      pack: { US: 10, SI: 5 },
    });
  });

  const ofPipe = (column: string): string => `INDEX(${column},[row])`;
  for (const [title, code, description] of BOUGHT_FITTINGS) {
    const line = { code, description, unit: "each", category: "Pipe" } as const;
    // One tee serves either way through it.
    const titles: readonly string[] = title === "Tee, straight" ? [title, "Tee, branch"] : [title];
    const columns = titles.map((one) => `PipeFittings${FITTING_COLUMNS.findIndex(([name]) => name === one) + 1}`);
    const each = columns.map((name) => `IF(ISTEXT(${name}),0,${name})`).join("+");
    s.takeoff({
      ...line,
      // Every pump has a riser, and what is on it.
      quantity: `=${columns.map((name) => `SUMPRODUCT(${name},PipesAlike)`).join("+")}`,
      unknownIf: `=OR(COUNT(RouteLengths)=0,PumpCount="",${uncounted(columns)}>0)`,
      which: `=TEXTJOIN(", ",TRUE,IF([counts]>0,[counts]&" of "&PipeSizes&" ${sizeUnit}",""))`,
      // Pipes of a route differ in size, and so do their fittings.
      asks: [
        {
          rows: ROUTE_ROWS + RISER_ROWS,
          count: `(${each})*PipesAlike`,
          source: "by definition: each pump has its riser",
          codes: [`&" "&IF(${ofPipe("PipeTypes")}="","${usualType}",${ofPipe("PipeTypes")})`, ""].map(
            (type) => `IF(${ofPipe("PipeSizes")}="","",[line]&" "&${inCode(ofPipe("PipeSizes"))}${type})`,
          ),
        },
      ],
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
