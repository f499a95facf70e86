import type { Book, Product } from "../../book/types";
import { find, inUnitsOf, offers as offered } from "../../book/choose";
import { aboutKind } from "../../book/kinds";
import { aboutUnit } from "../../book/units";
import type { Job } from "../facts";
import { FITTINGS } from "../takeoff/fittings";
import type { OfferedPipe, OfferedTub, Offers } from "./offers";

/** What a company's book offers; machines without a share of the usual hours work only where those do not pass. */
export function offersOfBook(book: Book): Offers {
  const { products, pumps, machines } = book;
  const boxes = (kind: "void module" | "tub" | "lip stone"): OfferedTub[] =>
    offered(products, kind).flatMap(({ size, length, width, height, price = 0, freight, description }) =>
      length === undefined || width === undefined || height === undefined
        ? []
        : [
            {
              ...{ length, width, height, price: price + freight, name: description },
              volume: size ?? length * width * height,
            },
          ],
    );
  return {
    pumps: pumps.flatMap(({ name, price, watts, curve }) =>
      price === undefined || watts === undefined || curve.length < 2 ? [] : [{ name, price, watts, points: curve }],
    ),
    pipes: offered(products, "pipe").flatMap(({ size, type, unit, price = 0, pack, waste }) =>
      size === undefined || type === undefined || aboutUnit(unit).counts !== "length"
        ? []
        : [
            {
              ...{ size, type, waste },
              price: price / aboutUnit(unit).inside,
              pack: pack * aboutUnit(unit).inside,
              fittings: fittingsOf(products, size, type),
            },
          ],
    ),
    modules: boxes("void module"),
    tubs: boxes("tub"),
    lipStones: boxes("lip stone"),
    boxes: offered(products, "spillway box").flatMap(({ size }) => (size === undefined ? [] : [size])),
    boulders: offered(products, "boulder").flatMap(({ size }) => (size === undefined ? [] : [size])),
    rolls: offered(products, "liner").flatMap(asRoll),
    machines: machinesOnOffer(machines),
    products,
    price: priceList(products),
    linerArea: cheapestSheet(products),
  };
}

/** Machines whose width and lift are known. */
export function machinesOnOffer(machines: Job["machines"]): Offers["machines"] {
  return machines.flatMap(({ name = "", width, lift, share = 0, fuel = 0 }) =>
    width === undefined || !lift ? [] : [{ name, width, lift, usual: share > 0, digs: fuel > 0 }],
  );
}

function fittingsOf(products: readonly Product[], size: number, type: string): OfferedPipe["fittings"] {
  return Object.fromEntries(
    FITTINGS.flatMap(([kind, columns]) => {
      const price = find(products, { kind, size, type })?.price ?? 0;
      return columns.map((column) => [column, price]);
    }),
  );
}

function asRoll({ size, length = Infinity, unit, price = 0 }: Product): Offers["rolls"][number][] {
  if (size === undefined) return [];
  const { counts, inside } = aboutUnit(unit);
  if (counts === "area") return [{ width: size, price: price / inside, per: "area", longest: length }];
  if (counts === "length") return [{ width: size, price: price / inside, per: "length", longest: length }];
  return unit === "roll" ? [{ width: size, price, per: "roll", longest: length }] : [];
}

/** What each kind costs, worked out when it is first asked for: every draft of a range asks for the same. */
function priceList(products: readonly Product[]): Offers["price"] {
  const known = new Map<Product["kind"], number>();
  return (kind) => {
    const price = known.get(kind) ?? priceOf(products, kind);
    known.set(kind, price);
    return price;
  };
}

/** Money for one m², m³, kg or piece of the first product of a kind, whatever the unit it is sold in. */
function priceOf(products: readonly Product[], kind: Product["kind"]): number {
  const found = products.find((product) => product.kind === kind && product.price !== undefined);
  const each = found && inUnitsOf(found, { [aboutKind(kind).counted]: 1 });
  return found?.price === undefined || each === undefined ? 0 : found.price * each;
}

function cheapestSheet(products: readonly Product[]): number {
  const each = products
    .filter(({ kind, price }) => kind === "liner" && price !== undefined)
    .flatMap(asRoll)
    .map(({ width, price, per, longest }) =>
      per === "area" ? price : per === "length" ? price / width : price / (width * longest),
    );
  return each.length > 0 ? Math.min(...each) : 0;
}
