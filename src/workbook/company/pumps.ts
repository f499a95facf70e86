import type { CurvePoint } from "../../calc/pump/curve";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { BOOK_CURVE_POINTS, type BookPump } from "../../book/types";
import type { ColumnSpec } from "../layout/tableColumns";
import type { CellValue } from "../model";
import { dayCell, markCell, markColumn, orBlank, type RowReader } from "./cells";
import { typedIn } from "../typedIn";

/** Points besides the shut-off head. */
const POINTS = BOOK_CURVE_POINTS - 1;

/** The columns of Pumps: a curve is typed once, the head at no flow first. */
export function pumpColumns(system: UnitSystem): readonly ColumnSpec[] {
  const notThis = { US: "gph, not gpm", SI: "L/h, not L/min" }[system];
  const head = { min: 0, max: { US: 600, SI: 200 }[system] };
  const flow = { min: 0, max: { US: 200_000, SI: 800_000 }[system] };
  return [
    { key: "name", title: "Pump", kind: "text", input: { max: 60, message: "Name of the pump, each once." } },
    { key: "price", title: "Price", kind: "money", input: { min: 0, max: 100_000, message: "Price of one pump." } },
    {
      key: "watts",
      title: "Power",
      kind: "power",
      input: { min: 1, max: 100_000, message: "Power it draws, from the nameplate or the maker's sheet." },
    },
    { key: "outlet", title: "Outlet", kind: "size", input: { min: 0, max: 1000, message: "Size of its outlet." } },
    {
      key: "shutOff",
      title: "Shut-off head",
      kind: "head",
      input: { ...head, message: "Head at no flow: where the curve begins." },
    },
    ...Array.from({ length: POINTS }, (_, index): ColumnSpec[] => [
      {
        key: `flow${index + 1}`,
        title: `Flow ${index + 1}`,
        kind: "flow",
        input: { ...flow, message: `Flow at point ${index + 1} of the maker's curve (${notThis}).` },
      },
      {
        key: `head${index + 1}`,
        title: `Head ${index + 1}`,
        kind: "head",
        input: { ...head, message: `Head at point ${index + 1} of the maker's curve.` },
      },
    ]).flat(),
    { key: "supplier", title: "Supplier", kind: "text", input: { max: 100, message: "Who sells it." } },
    { key: "theirs", title: "Supplier's code", kind: "text", input: { max: 100, message: "What they call it." } },
    { key: "day", title: "Price of", kind: "date", input: { message: "Day the price was given." } },
    markColumn,
  ];
}

export function pumpRow(pump: BookPump, system: UnitSystem): CellValue[] {
  const [first, ...rest] = pump.curve;
  const points = Array.from({ length: POINTS }, (_, index) => [
    typedIn("flow", rest[index]?.flow, system),
    typedIn("head", rest[index]?.head, system),
  ]).flat();
  return [
    pump.name,
    orBlank(pump.price),
    orBlank(pump.watts),
    typedIn("size", pump.outlet, system),
    typedIn("head", first?.head, system),
    ...points,
    pump.supplier,
    pump.theirs,
    dayCell(pump.day),
    markCell(pump),
  ];
}

export function readPump(row: RowReader): BookPump | undefined {
  const name = row.text("name");
  if (name === "") {
    row.wrong("name", "must have a name");
    return undefined;
  }
  const outlet = row.measure("outlet", "size", { above: 0 });
  return {
    name,
    price: row.number("price", { min: 0 }),
    watts: row.number("watts", { above: 0 }),
    ...(outlet === undefined ? {} : { outlet }),
    curve: readCurve(row),
    supplier: row.text("supplier"),
    theirs: row.text("theirs"),
    day: row.day("day"),
    invented: row.invented,
    row: row.row,
  };
}

function readCurve(row: RowReader): CurvePoint[] {
  const points: CurvePoint[] = [];
  const shutOff = row.measure("shutOff", "head", { above: 0 });
  if (shutOff !== undefined) points.push({ flow: 0, head: shutOff });
  for (let place = 1; place <= POINTS; place++) {
    const flow = row.measure(`flow${place}`, "flow");
    const head = row.measure(`head${place}`, "head");
    if (flow === undefined && head === undefined) continue;
    if (flow === undefined || head === undefined) {
      const missing = flow === undefined ? `flow${place}` : `head${place}`;
      if (row.text(missing) === "")
        row.wrong(missing, `must be given with its ${flow === undefined ? "head" : "flow"}`);
      continue;
    }
    const before = points.at(-1);
    if (before && flow <= before.flow) row.wrong(`flow${place}`, "must rise from point to point");
    else if (before && head > before.head) row.wrong(`head${place}`, "must not rise with the flow");
    else points.push({ flow, head });
  }
  return points;
}
