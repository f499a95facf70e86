import type { PriceItem } from "../../csv/priceItem";
import { USUAL_STYLE, type CsvStyle } from "../../csv/csvStyle";
import { HostRefusal, type Grid, type Place } from "../../host/port";
import { RATE_TABLE } from "../../workbook/rateColumns";
import { download } from "../download";
import { dayOf } from "../../host/dates";
import { resolvePlace } from "../../host/places";
import { BOOKING_PLACES, bookingWords, bookOrders } from "../booking";
import { counted } from "../counted";
import { ORDER_PLACES, purchaseLines } from "../orders";
import { readPriceRows } from "../prices";
import { button, make } from "../ui/elements";
import type { Desk, View } from "../ui/desk";
import { priceImport } from "./priceImport";

const CSV = "text/csv";
const COMMAS_SETTING = "decimal-commas";

/** Orders out, and the price list out and in, as CSV files. */
export function listsView(desk: Desk): View {
  const commas = make("input", { type: "checkbox", id: "decimal-commas" });
  desk.attempt(async () => {
    commas.checked = (await desk.host.setting(COMMAS_SETTING)) === "yes";
    return undefined;
  });
  const keepCommas = (): Promise<undefined> =>
    desk.host.keepSetting(COMMAS_SETTING, commas.checked ? "yes" : "no").then(() => undefined);
  commas.addEventListener("change", () => desk.attempt(keepCommas));
  const style = (): CsvStyle => (commas.checked ? { ...USUAL_STYLE, decimal: "," } : USUAL_STYLE);

  const read = async (...places: Place[]): Promise<Grid[]> => {
    const grids = await desk.host.read(places);
    return grids.map((grid, index) => {
      if (!grid) throw new HostRefusal(`This workbook has no ${places[index] ?? ""}; start a job to get one.`);
      return grid;
    });
  };
  const orders = async (): Promise<string> => {
    const lines = purchaseLines(await read(...ORDER_PLACES));
    if (lines.length === 0) return "Takeoff has nothing to order yet, so no file was made.";
    const { purchaseOrdersCsv } = await import("../../csv/purchaseOrdersCsv");
    download("orders.csv", purchaseOrdersCsv(lines, style()), CSV);
    const count = new Set(lines.map(({ order }) => order)).size;
    return `orders.csv with ${counted(lines.length, "line")} on ${counted(count, "order")} is in your downloads.`;
  };
  const enter = async (): Promise<string> => {
    const grids = await read(...BOOKING_PLACES);
    const area = resolvePlace("OrderLines", await desk.host.names());
    if (!area) throw new HostRefusal("This workbook has no order book; start a job to get one.");
    const booking = bookOrders(grids, area, dayOf(new Date()));
    if (booking.change) await desk.host.write([booking.change]);
    return bookingWords(booking);
  };
  const prices = async (): Promise<string> => {
    const [list = []] = await read(RATE_TABLE);
    const items = readPriceRows(list).filter((item): item is PriceItem => item !== undefined);
    const { priceListCsv } = await import("../../csv/priceListCsv");
    download("prices.csv", priceListCsv(items, style()), CSV);
    return `prices.csv with ${counted(items.length, "item")} is in your downloads.`;
  };

  return {
    title: "Lists",
    body: make(
      "div",
      {},
      make("h2", {}, "Orders out"),
      make("p", {}, "Every line that Takeoff orders, supplier by supplier, for your supplier or your books."),
      make(
        "div",
        { class: "actions" },
        button("Save orders as CSV", () => desk.attempt(orders)),
      ),
      make("h2", {}, "Orders into the book"),
      make("p", {}, "What Takeoff still asks of each supplier with an order number, entered as ordered today."),
      make(
        "div",
        { class: "actions" },
        button("Enter open lines as ordered", () => desk.attempt(enter)),
      ),
      make("h2", {}, "Prices out and in"),
      make(
        "div",
        { class: "actions" },
        button("Save price list as CSV", () => desk.attempt(prices)),
      ),
      priceImport(desk),
      make("h2", {}, "How CSV files are written"),
      make(
        "div",
        { class: "choice" },
        commas,
        make("label", { for: "decimal-commas" }, "With decimal commas and semicolons"),
      ),
    ),
  };
}
