/** Words by which an invoice line that is not goods is known; whole words, any case. Common practice, no source. */
export const CHARGE_WORDS = [
  {
    kind: "freight",
    words: [
      "freight",
      "hauling",
      "haulage",
      "delivery charge",
      "delivery fee",
      "shipping",
      "carriage",
      "cartage",
      "fuel surcharge",
    ],
  },
  // No goods are called a tax, so a county may follow the word; a vat is also a tub.
  { kind: "tax", words: ["tax", "sales tax", "use tax", "gst", "hst", "pst", "mwst"], whateverFollows: true },
  { kind: "tax", words: ["vat"] },
  { kind: "deposit", words: ["deposit", "pallet deposit", "pallet fee"] },
] as const;

export type ChargeKind = (typeof CHARGE_WORDS)[number]["kind"];

/** Words that may stand behind a charge without making it the name of goods. Common practice, no source. */
export const FOLLOWING_WORDS = (
  "to from for of on at in by per and or no week load loads invoice ticket order rate " +
  "charge charges cost costs fee fees surcharge surcharges refund refundable included extra"
).split(" ");

/** Charges that are goods as soon as a word stands before them: a saw carriage. */
export const LEADING_WORDS = ["carriage"];
