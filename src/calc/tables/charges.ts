/** Words by which an invoice line that is not goods is known; whole words, any case. Common practice, no source. */
export const CHARGE_WORDS = [
  {
    kind: "freight",
    words: [
      "freight",
      "haulage",
      "delivery charge",
      "delivery fee",
      "shipping",
      "carriage",
      "cartage",
      "fuel surcharge",
    ],
  },
  { kind: "tax", words: ["tax", "sales tax", "use tax", "vat", "gst", "hst", "pst", "mwst"] },
  { kind: "deposit", words: ["deposit", "pallet deposit", "pallet fee"] },
] as const;

export type ChargeKind = (typeof CHARGE_WORDS)[number]["kind"];
