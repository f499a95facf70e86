import { describe, expect, it } from "vitest";
import { chargeKind } from "../../../../src/calc/money/reconcile/charges";

describe("charges", () => {
  it.each([
    ["Freight", "freight"],
    ["Freight to site", "freight"],
    ["Gravel freight", "freight"],
    ["Carriage", "freight"],
    ["Hauling", "freight"],
    ["Haulage", "freight"],
    ["Carriage and packing", "freight"],
    ["Fuel surcharge (week 22)", "freight"],
    ["Fuel surcharge week 22", "freight"],
    ["Delivery charge 2 loads", "freight"],
    ["SALES TAX 8.25%", "tax"],
    ["Sales tax, King County", "tax"],
    ["VAT", "tax"],
    ["VAT 20 %", "tax"],
    ["Pallet deposit", "deposit"],
  ])("%s is %s", (item, kind) => {
    expect(chargeKind(item)).toBe(kind);
  });

  // Carriage bolts are the trade's name for a bolt with a round head and a square neck (ASME B18.5).
  it.each([
    "Carriage bolts",
    "Carriage bolt 3/8 x 4",
    "CARRIAGE-BOLT-38",
    "Saw carriage",
    "Freight elevator",
    "Shipping container",
    "Deposit box",
    "Vat 50 gal",
    "Taxus hedge",
    "delivery hose",
    "GR-57",
    "",
  ])("%s is goods", (item) => {
    expect(chargeKind(item)).toBeUndefined();
  });
});
