import { FLOW_WORDS, flowUnit, HEAD_WORDS, headUnit, type PumpColumn } from "../../csv/pumpHeadings";
import type { PumpListShape, ReadPumpsAs } from "../../csv/readPumpList";
import { make } from "../ui/elements";
import { decimalSelect, select } from "../ui/fields";

/** Points that a column can be said to be, besides the head at no flow. */
const POINTS = 11;
const SIMPLE = [
  ["name", "pump"],
  ["price", "price"],
  ["watts", "power, W"],
  ["shutOff", "head at no flow"],
  ["supplier", "supplier"],
  ["theirs", "supplier's code"],
] as const;

/** How a list of pumps was read, column by column; a change reads the file again. */
export function pumpReading(
  { headings, columns, example, customs }: PumpListShape,
  as: ReadPumpsAs,
  again: (as: ReadPumpsAs) => void,
  open: boolean,
): HTMLElement {
  const moved = (at: number, column: PumpColumn | undefined): void =>
    again({ ...as, columns: headings.map((_, index) => (index === at ? column : columns[index])) });
  const rows = headings.flatMap((heading, index) => {
    const column = columns[index];
    const first = (example[index] ?? "").trim().slice(0, 20);
    const name = heading.trim() || `column ${index + 1}`;
    const label = first === "" ? name : `${name} (${first}, …)`;
    const kind = select(label, `pump-column-${index}`, kindsFor(column), column ? keyOf(column) : "");
    kind.field.addEventListener("change", () => moved(index, columnOf(kind.field.value, column)));
    const units = column && unitsOf(column);
    if (!column || !units) return [kind.row];
    const words = units.words.map((word) => [word, word] as const);
    const unit = select(`Unit of ${name}`, `pump-unit-${index}`, [["", "choose"], ...words], units.chosen);
    unit.field.addEventListener("change", () => moved(index, withUnit(column, unit.field.value)));
    return [kind.row, unit.row];
  });
  return make(
    "details",
    { open: open || Boolean(as.columns ?? as.decimal) },
    make("summary", {}, "How the file was read: change it here"),
    decimalSelect("pump-decimal", customs.decimal, (decimal) => again({ ...as, decimal })),
    ...rows,
  );
}

function kindsFor(column: PumpColumn | undefined): (readonly [string, string])[] {
  const numbers = Array.from({ length: POINTS }, (_, index) => index + 1);
  return [
    ["", "left out"],
    ...SIMPLE,
    ["flow-0", "flow of the row's point"],
    ["head-0", "head of the row's point"],
    ...numbers.flatMap((point) => [
      [`flow-${point}`, `flow ${point}`] as const,
      [`head-${point}`, `head ${point}`] as const,
    ]),
    ...(column?.is === "flowAt" ? [["flowAt", "flow at the head it names"] as const] : []),
  ];
}

function keyOf(column: PumpColumn): string {
  return column.is === "flow" || column.is === "head" ? `${column.is}-${column.point}` : column.is;
}

function columnOf(key: string, before: PumpColumn | undefined): PumpColumn | undefined {
  if (key === "") return undefined;
  const [is, point] = key.split("-");
  const unit = before?.unit === undefined ? {} : { unit: before.unit };
  if (is === "flow" || is === "head") return { is, point: Number(point), ...unit };
  return { is, ...unit } as PumpColumn;
}

function withUnit(column: PumpColumn, unit: string): PumpColumn {
  const changed = { ...column, unit };
  if (unit === "") delete (changed as { unit?: string }).unit;
  return changed;
}

/** The units a column may be in, and the one it is in; undefined where it has none. */
function unitsOf(column: PumpColumn): { readonly words: readonly string[]; readonly chosen: string } | undefined {
  const isFlow = column.is === "flow" || column.is === "flowAt";
  if (!isFlow && column.is !== "head" && column.is !== "shutOff") return undefined;
  const [words, scale] = isFlow ? [FLOW_WORDS, flowUnit] : [HEAD_WORDS, headUnit];
  const one = column.unit === undefined ? undefined : scale(column.unit);
  return { words, chosen: words.find((word) => one !== undefined && scale(word) === one) ?? "" };
}
