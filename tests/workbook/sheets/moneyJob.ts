import { defineSheet, type SheetDefinition } from "../../../src/workbook/layout";
import { issued } from "../../../src/workbook/sheets/issued";
import { orders } from "../../../src/workbook/sheets/orders";
import { price } from "../../../src/workbook/sheets/price";
import { quote } from "../../../src/workbook/sheets/quote";
import { rates } from "../../../src/workbook/sheets/rates";
import { receipts } from "../../../src/workbook/sheets/receipts";
import { reconcile } from "../../../src/workbook/sheets/reconcile";
import { TAKEOFF_KEYS } from "../../../src/workbook/sheets/takeoff/takeoffColumns";
import { takeoff } from "../../../src/workbook/sheets/takeoff";
import { Tried, type Typed } from "./tried";

/** Code, need, price, pack, waste, minimum: lines that round, meet packs exactly, have minimums, and need nothing. */
export const LINES = [
  { code: "ROUND", need: 7, price: 1.115, pack: 1, waste: 0, minimum: 0, supplier: "North" },
  { code: "PACKS", need: 23.2, price: 4, pack: 5, waste: 0, minimum: 0, supplier: "South" },
  { code: "WASTE", need: 100, price: 0.99, pack: 10, waste: 0.1, minimum: 0, supplier: "North" },
  { code: "LEAST", need: 3, price: 57.5, pack: 0.5, waste: 0, minimum: 8, supplier: "South" },
  { code: "NOTHING", need: 0, price: 12, pack: 1, waste: 0.2, minimum: 5, supplier: "East" },
  { code: "TENTHS", need: 0.3, price: 33.35, pack: 0.1, waste: 0, minimum: 0, supplier: "North" },
  { code: "TRUCK", need: 2, price: 115, pack: 1, waste: 0, minimum: 0, supplier: "Haulier" },
] as const;

const TEXTS = [
  "CompanyName",
  "CompanyAddress",
  "CompanyPhone",
  "CompanyEmail",
  "CompanyLicense",
  "Estimator",
  "ClientName",
  "SiteAddress",
  "JobName",
  "FeatureName",
  "RockKind",
  "GravelKind",
];
const NUMBERS = {
  VisitDate: 46154,
  Run: 9.5,
  Fall: 2.75,
  DropCount: 4,
  BedWidth: 3.25,
  BasinLength: 9,
  BasinWidth: 6.5,
  BasinHold: 612,
  BoulderTons: 1.9,
  LipStoneCount: 4,
  GravelTons: 1.4,
  BasinSideSlope: 0,
  BasinWaterDepth: 1.5,
  ModuleCount: 0,
  ModuleLength: 2,
  ModuleWidth: 1.5,
  ModuleHeight: 0.75,
  DesignFlow: 3120,
  LaborHours: 62,
  LaborCost: 2480.35,
  MachineCost: 641.2,
  WorkingDays: 2.4,
  HeaviestStone: 40,
  HandLimit: 50,
  AccessWidth: 6,
  SetReach: 8,
};

/** The job as the money sheets see it, without the sheets that work it out. */
const facts = defineSheet({
  name: "Site",
  order: 2,
  build(s, job) {
    s.result({ name: "Units", label: "Units", kind: "text", formula: `="${job.system}"` });
    s.input({ name: "Currency", label: "Currency", kind: "text", demo: "$", message: "Sign or code." });
    for (const name of TEXTS) s.result({ name, label: name, kind: "text", formula: `="The ${name}"` });
    for (const [name, value] of Object.entries(NUMBERS)) {
      s.result({ name, label: name, kind: "number", formula: `=${value}` });
    }
    for (const why of ["one reason", "another"]) s.result({ label: why, kind: "text", formula: '=""' });
    s.define("DraftReasons", s.row - 2, 2, s.row - 1, 2);
    LINES.forEach(({ code, need, price: cost, pack, waste, minimum, supplier }) => {
      const line = {
        code,
        description: `About ${code}`,
        unit: code === "TRUCK" ? "load" : "each",
        category: "Stone",
      } as const;
      s.takeoff({ ...line, quantity: `=${need}` });
      s.rate({ ...line, supplier, price: cost, pack, waste, minimum });
    });
  },
});

export const MONEY_SHEETS: readonly SheetDefinition[] = [
  facts,
  rates,
  takeoff,
  price,
  quote,
  issued,
  orders,
  receipts,
  reconcile,
];

/** Where a column of Takeoff's tables stands, counted from 1. */
export const takeoffColumn = (key: (typeof TAKEOFF_KEYS)[number]): number => TAKEOFF_KEYS.indexOf(key) + 1;

/** An empty order book, for tests that fill their own. */
export const NO_PAPERS = {
  OrderLines: Array.from({ length: 60 }, () => Array.from({ length: 7 }, () => "")),
  TicketLines: Array.from({ length: 300 }, () => Array.from({ length: 6 }, () => "")),
  InvoiceLines: Array.from({ length: 300 }, () => Array.from({ length: 7 }, () => "")),
};

/** The money sheets of this job, with what a test types. */
export const demo = (typed: Typed = {}): Promise<Tried> => Tried.of(MONEY_SHEETS, "US", "demo", typed);
