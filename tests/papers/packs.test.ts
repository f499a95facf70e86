import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import type { Logo } from "../../src/book/types";
import { findDeclaration } from "../../src/functions/catalogue";
import { companyLines, PaperCells } from "../../src/papers/cells";
import { SQUARED } from "../../src/papers/office";
import { packOf, type Pack } from "../../src/papers";
import { pdfOf } from "../../src/papers/pdf";
import { openWorkbook, type OpenedWorkbook } from "../../src/workbook/recalculate";
import { readPdf, type PrintedPage } from "./readPdf";

/** 18 May 2026: 46160 days after 30 December 1899. */
const TODAY = 46160;

/** The demo's prices are made up, and a quote with such prices is a draft: here somebody has confirmed them. */
function confirmed(workbook: OpenedWorkbook): OpenedWorkbook {
  const days = ["PricesConfirmed", "FactsConfirmed"].flatMap((name): [string, number][] => {
    const place = workbook.names.get(name);
    return place === undefined ? [] : [[place.replace(/\$/g, ""), TODAY]];
  });
  return {
    names: workbook.names,
    recalculate: (typed = new Map()) => workbook.recalculate(new Map([...days, ...typed])),
  };
}

describe.each(["us", "si"] as const)("the papers of the %s demo job", (units) => {
  let workbook: OpenedWorkbook;
  const pages = new Map<Pack, PrintedPage[]>();
  let suppliers: string[];

  beforeAll(async () => {
    workbook = confirmed(await openWorkbook(readFileSync(`templates/rillwright-${units}-demo.xlsx`)));
    suppliers = (workbook.recalculate().named("SupplierTable") ?? []).map(([name]) => String(name)).filter(Boolean);
    for (const pack of ["client", "crew", "office"] as const) pages.set(pack, await printed(pack));
    pages.set("supplier", await printed("supplier", suppliers[3]));
  }, 60_000);

  const printed = async (pack: Pack, supplier?: string): Promise<PrintedPage[]> =>
    readPdf(await pdfOf(packOf(pack, workbook, supplier ? { supplier, today: TODAY } : { today: TODAY })));
  const value = (name: string): string | number | boolean => workbook.recalculate().named(name)?.[0]?.[0] ?? "";
  const words = (pack: Pack): string => (pages.get(pack) ?? []).map(({ text }) => text).join(" ");

  it.each([
    ["client", 10],
    ["supplier", 10],
    ["office", 10],
    ["crew", 11],
  ] as const)("has no text of the %s pack under %i points, and none beyond the paper's margins", (pack, least) => {
    const all = pages.get(pack) ?? [];
    expect(all.length).toBeGreaterThan(0);
    for (const { prints, width, height } of all) {
      const [long, short] = units === "us" ? [792, 612] : [841.89, 595.28];
      expect(Math.max(width, height)).toBeCloseTo(long, 0);
      expect(Math.min(width, height)).toBeCloseTo(short, 0);
      for (const { text, size, left, right, base } of prints) {
        // The foot's page numbers are no part of what is read in the rain.
        const foot = base < 40;
        expect(size, text).toBeGreaterThanOrEqual((foot ? 10 : least) - 0.01);
        expect(left, text).toBeGreaterThanOrEqual(30);
        expect(right, text).toBeLessThanOrEqual(width - 30);
        expect(base, text).toBeGreaterThan(12);
      }
    }
  });

  it("has two pages for the crew, and no page of any pack that is mostly empty but its last", () => {
    expect(pages.get("crew")).toHaveLength(2);
    for (const all of pages.values()) {
      for (const { prints, height } of all.slice(0, -1)) {
        const lowest = Math.min(...prints.filter(({ base }) => base > 45).map(({ base }) => base));
        expect(lowest).toBeLessThan(height / 3);
      }
    }
  });

  it("ends a wrapped line of the letterhead with the point between two parts, and begins none with it", () => {
    const lines = companyLines(new PaperCells(workbook.recalculate()));
    expect(lines.join(" ")).toContain("·");
    expect(lines.filter((line) => line.includes(" ·"))).toEqual([]);
  });

  it("has the client's quote on two pages, with what is agreed and signed under its price", () => {
    const [first, second, ...more] = pages.get("client") ?? [];
    expect(more).toEqual([]);
    expect(first?.text).toContain("What you get");
    expect(second?.text).toContain("Client: signature and date");
  });

  it("reads each figure of the reconciliation from the column that RECONCILE heads so", () => {
    const { columns = [] } = findDeclaration("RECONCILE")?.result as {
      columns?: readonly { readonly title: string }[];
    };
    const titleOf = (key: keyof typeof SQUARED): string | undefined => columns[SQUARED[key]]?.title;
    const read = (Object.keys(SQUARED) as (keyof typeof SQUARED)[]).map(titleOf);
    expect(read).toEqual([
      "Order",
      "Supplier",
      "Item",
      "State",
      "Verdict",
      "Ordered amount",
      "Billed amount",
      "At stake",
    ]);
  });

  it("carries the company's logo at the top left of the client's first page: drawn lines as lines, pixels as a picture", async () => {
    const mark = new TextEncoder().encode(
      '<svg xmlns="http://www.w3.org/2000/svg" width="100" height="40"><text x="0" y="30" font-size="28">Mark</text></svg>',
    );
    const svg: Logo = { type: "svg", bytes: mark, width: 100, height: 40 };
    const [drawn, other] = await readPdf(await pdfOf(packOf("client", workbook, { today: TODAY, logo: svg })));
    const text = drawn?.prints.find((print) => print.text === "Mark");
    // 40 pt of margin; the logo is at most 46 pt high, under the page's upper margin.
    expect(text?.left).toBeCloseTo(40, 0);
    expect(text?.base).toBeGreaterThan((drawn?.height ?? 0) - 40 - 46);
    expect(other?.text).not.toContain("Mark");
    const dot = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAAC0lEQVR42mNgAAIAAAUAAen63NgAAAAASUVORK5CYII=";
    const png: Logo = { type: "png", bytes: new Uint8Array(Buffer.from(dot, "base64")), width: 1, height: 1 };
    const held = (bytes: Uint8Array): boolean => Buffer.from(bytes).includes("/Subtype /Image");
    expect(held(await pdfOf(packOf("client", workbook, { today: TODAY, logo: png })))).toBe(true);
    expect(held(await pdfOf(packOf("client", workbook, { today: TODAY })))).toBe(false);
  });

  it("tells the client the price to the cent, the payments and the drawing, and nothing of costs", () => {
    const price = Number(value("PriceTotal")).toLocaleString("en-US", { minimumFractionDigits: 2 });
    expect(words("client")).toContain(`${value("Currency")}${price}`);
    expect(words("client")).toContain(String(value("QuoteNumber")));
    expect(words("client")).toMatch(/Section: \d drops of/);
    expect(words("client")).toContain(units === "us" ? "May 18, 2026" : "24 May 2026");
    const amounts = workbook.recalculate().named("StageAmounts") ?? [];
    for (const [amount] of amounts.filter(([amount]) => Number(amount) > 0)) {
      expect(words("client")).toContain(Number(amount).toLocaleString("en-US", { minimumFractionDigits: 2 }));
    }
    for (const secret of ["TotalCost", "MaterialCost", "LaborCost", "OverheadPerHour"]) {
      const cost = value(secret);
      if (typeof cost !== "number" || cost === 0) continue;
      expect(words("client")).not.toContain(cost.toLocaleString("en-US", { minimumFractionDigits: 2 }));
    }
    expect(words("client")).not.toMatch(/markup|margin|overhead/i);
  });

  it("gives the crew every level, every cut with its roll, every stone at its heaviest, and the cautions", () => {
    const crew = words("crew");
    for (const [name, level] of (workbook.recalculate().named("SetoutShort") ?? []).filter(([name]) => name)) {
      expect(crew).toContain(String(name));
      // Half a hundredth is rounded up or down, as its binary number falls.
      expect([4.9e-3, -4.9e-3].some((more) => crew.includes((Number(level) + more).toFixed(2)))).toBe(true);
    }
    const beds = (workbook.recalculate().named("StakeTable") ?? []).filter(([name]) => String(name).startsWith("Bed"));
    expect(beds.length).toBeGreaterThan(3);
    for (const bed of beds) expect(crew).toContain(String(bed[3]));
    for (const [name, count] of (workbook.recalculate().named("LinerPieces") ?? []).filter(([, length]) => length)) {
      expect(crew, String(count)).toContain(String(name));
    }
    for (const row of (workbook.recalculate().named("StoneSizes") ?? []).filter(([size]) => typeof size === "number")) {
      expect(crew).toContain(String(Math.ceil(Number(row[5]) - 1e-9)));
    }
    expect(crew.match(/WARNING/g)).toHaveLength(4);
    expect(crew).toContain("Start-up test");
  });

  it("draws the crew the ground along the line, from the first station of its table to the last", () => {
    const stations = (workbook.recalculate().named("CutFill") ?? [])
      .map(([station]) => station)
      .filter(Number.isFinite);
    expect(stations.length).toBeGreaterThan(3);
    const figure = (station: unknown): string => String(Number(Number(station).toFixed(2)));
    expect(words("crew")).toContain(`stations ${figure(stations[0])} to ${figure(stations.at(-1))} `);
    expect(words("crew")).toContain("finished bed");
  });

  it("orders from one supplier at his prices, and prints nothing of another", () => {
    const order = words("supplier");
    const mine = suppliers[3] ?? "";
    expect(order).toContain(mine);
    for (const other of suppliers.filter((name) => name !== mine)) expect(order).not.toContain(other);
    expect(order).toContain(units === "us" ? "May 18, 2026" : "18 May 2026");
    expect(order).toContain("Total without tax");
    expect(order).not.toMatch(/markup|margin|TAKEOFF/i);
    const theirs = (workbook.recalculate().named("TakeoffLines") ?? []).filter((row) => row[11] !== mine && row[11]);
    const mineToo = new Set(
      (workbook.recalculate().named("TakeoffLines") ?? []).filter((row) => row[11] === mine).map((row) => row[1]),
    );
    for (const row of theirs.filter((line) => !mineToo.has(line[1]))) expect(order).not.toContain(` ${row[1]} `);
  });

  it("asks which supplier, and says which there are", () => {
    expect(() => packOf("supplier", workbook, { today: TODAY })).toThrow("--supplier");
    expect(() => packOf("supplier", workbook, { today: TODAY, supplier: "Nobody" })).toThrow(suppliers[0]);
  });

  it("builds the price up for the office, with every line of the takeoff that is ordered", () => {
    const office = words("office");
    expect(office).toContain("not for the client");
    for (const name of ["TotalCost", "PriceTotal"]) {
      expect(office).toContain(Number(value(name)).toLocaleString("en-US", { minimumFractionDigits: 2 }));
    }
    for (const row of (workbook.recalculate().named("TakeoffLines") ?? []).filter((line) => Number(line[7]) > 0)) {
      expect(office).toContain(String(row[1]));
    }
    // Markups are shares, those in use as well as those typed; nothing is wanted in the demo.
    expect(office).toMatch(/Materials 32% 32% [$€]/);
    // What an option builds is no amount of money.
    expect(office).toMatch(/Flow, (gph|L\/h) \d/);
    expect(office).toMatch(/Boulders, (ton|t) \d/);
    expect(office).toContain("Grand total");
  });
});

describe("a quote with made-up prices", () => {
  it("is marked as a draft and names no price to sign, only from where to where it may be", async () => {
    const workbook = await openWorkbook(readFileSync("templates/rillwright-us-demo.xlsx"));
    const said = workbook.recalculate().named("QuoteDraft")?.[0]?.[0];
    // Workbooks from before the mark have none.
    if (said === "" || workbook.names.get("PriceStanding") === undefined) return;
    const pages = await readPdf(await pdfOf(packOf("client", workbook, { today: TODAY })));
    const text = pages.map((page) => page.text).join(" ");
    expect(text).toContain(String(said));
    expect(text).toContain("DRAFT");
    expect(text).not.toContain("signature and date");
    const price = Number(workbook.recalculate().named("PriceTotal")?.[0]?.[0]);
    expect(text).not.toContain(price.toLocaleString("en-US", { minimumFractionDigits: 2 }));
    expect(text).toMatch(/\$[\d,]+ to \$[\d,]+(?![\d.,])/);
  }, 60_000);
});

describe.each(["us", "si"] as const)("the papers of a blank %s job", (units) => {
  it("are drafts with lines to fill in, and never a figure made up", async () => {
    const workbook = await openWorkbook(readFileSync(`templates/rillwright-${units}-blank.xlsx`));
    const [first, ...more] = await readPdf(await pdfOf(packOf("client", workbook, { today: TODAY })));
    expect(more).toEqual([]);
    expect(first?.text).toContain("Draft, not to be signed");
    expect(first?.text).toContain("No drawing yet: fill in how deep the water in the basin is first.");
    const crew = await readPdf(await pdfOf(packOf("crew", workbook, { today: TODAY })));
    expect(crew.map(({ text }) => text).join(" ")).not.toMatch(/NaN|undefined|Infinity|#VALUE|#N\/A/);
    expect(() => packOf("supplier", workbook, { today: TODAY })).toThrow("no supplier yet");
  }, 60_000);
});
