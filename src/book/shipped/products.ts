import type { CostKind } from "../../calc/money/costKinds";
import { toInside } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { PIPE_TYPES } from "../../calc/tables/pipes";
import { askingCode, sizeWords, type Wanted } from "../ask";
import { aboutKind, type ProductKind } from "../kinds";
import type { Product } from "../types";
import { aboutUnit, type SaleUnit } from "../units";
import { FITTING_SIZES, PLAIN, SHEETS, SIZED, PIPES, type SizedRow } from "./prices";

/** Day of the invented prices. */
export const INVENTED_DAY = "2026-04-01";

/** Density of PVC pipe, kg/m³; from memory, as its standards take it (1.35 to 1.46). */
const PVC = 1400;

/** The products the company book ships with: sizes as the trade sells them, every price of our own invention. */
export function shippedProducts(system: UnitSystem): Product[] {
  const sized = (measure: "size" | "length" | "water", typed: number): number => toInside(measure, typed, system);
  const pipes = PIPES[system].prices.map(([size, price]): Product => {
    const { type, unit, pack } = PIPES[system];
    const wanted = { kind: "pipe", size: sized("size", size), type } as const;
    const weight = pipeWeight(type, wanted.size) * aboutUnit(unit).inside;
    return row(system, wanted, { unit, price, pack, waste: 0.05, weight, supplier: "Pipe yard (demo)" });
  });
  const fittings = Object.entries(FITTING_SIZES[system].prices).flatMap(([kind, prices]) =>
    prices.map((price, index): Product => {
      const wanted = { kind: kind as ProductKind, size: sized("size", FITTING_SIZES[system].sizes[index] ?? 0) };
      return row(system, wanted, { unit: "each", price, supplier: "Pipe yard (demo)" });
    }),
  );
  const others = SIZED[system].map(({ kind, size, sides, type, ...rest }: SizedRow): Product => {
    const [length, width, height] = (sides ?? []).map((side) => sized("size", side));
    const measure = aboutKind(kind).size?.measure === "volume" ? "water" : "size";
    const known = size === undefined ? {} : { size: sized(measure, size) };
    const wanted: Wanted = { kind, ...known, ...defined({ length, width, height, type }) };
    return row(system, wanted, rest);
  });
  const sheets = SHEETS[system].map(({ kind, width, longest, type, ...rest }): Product => {
    const wanted = {
      kind,
      size: sized("length", width),
      ...defined({ length: longest === undefined ? undefined : sized("length", longest), type }),
    };
    return row(system, wanted, { ...rest, supplier: "Pond yard (demo)" });
  });
  const plain = PLAIN[system].map(({ kind, ...rest }): Product => row(system, { kind }, rest));
  return [...pipes, ...fittings, ...others, ...sheets, ...plain];
}

/** What a row says beside which product it is. */
interface Terms {
  readonly unit: SaleUnit;
  readonly price: number;
  readonly supplier: string;
  readonly pack?: number;
  readonly minimum?: number;
  readonly waste?: number;
  readonly freight?: number;
  readonly weight?: number;
  readonly costKind?: CostKind;
  readonly words?: string;
}

function row(system: UnitSystem, wanted: Wanted, { words, ...terms }: Terms): Product {
  const sizes = sizeWords(wanted, system);
  const what = words ?? [capital(wanted.kind), wanted.type, sizes].filter(Boolean).join(", ");
  return {
    pack: 1,
    minimum: 0,
    waste: 0,
    freight: 0,
    costKind: "material",
    taxable: true,
    ...wanted,
    ...terms,
    code: askingCode(wanted, system),
    description: what,
    day: INVENTED_DAY,
    theirs: "",
    invented: true,
  };
}

/** kg of a metre of pipe: π/4 (outside² - bore²) × density, of the least wall. */
function pipeWeight(type: string, nominal: number): number {
  const { outside = NaN, bore = NaN } =
    PIPE_TYPES.find(({ name }) => name === type)?.sizes.find((one) => Math.abs(one.nominal - nominal) < 1e-6) ?? {};
  return Number(((Math.PI / 4) * (outside ** 2 - bore ** 2) * PVC).toPrecision(3));
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** Without what is not known. */
function defined<T extends object>(values: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}
