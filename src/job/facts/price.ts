import { COST_KIND_WORDS, TAX_BASES } from "../../calc/money/costKinds";
import { choices, factsOf, numbers, table, texts } from "./fact";

const { number, text, choice } = factsOf("Price");
const own = { sheet: "Price", knower: "office" } as const;
const CHANGE = [-1_000_000, 1_000_000] as const;

/** From cost to price: markups, overhead, contingency, tax, options and payments. */
export const price = {
  wantedMargin: number("WantedMargin", "book", "share", [0, 0.9], "What gross margin do you want?"),
  overheadBy: choice("OverheadBy", "book", ["share of cost", "crew hours"], "How is overhead charged to a job?"),
  overheadShare: number("OverheadShare", "book", "share", [0, 2], "What share of the direct cost is overhead?"),
  overheadPerHour: number("OverheadPerHour", "book", "money", [0, 1000], "What overhead does a crew hour carry?"),
  contingencyShare: number("ContingencyShare", "office", "share", [0, 1], "What share is kept for what goes wrong?"),
  taxName: text("TaxName", "book", "What is the tax called on the quote?", { optional: true }),
  taxBase: choice("TaxBase", "book", TAX_BASES, "What is sales tax owed on?"),
  taxRate: number("TaxRate", "book", "share", [0, 0.5], "What is the tax rate?"),
  roundTo: number("RoundTo", "book", "money", [0, 10_000], "To what multiple is the price raised?"),
  chosenOption: choice("ChosenOption", "office", ["A", "B", "C"], "Which option is quoted?"),
  options: table({
    ...own,
    name: "OptionNames",
    question: "Which ways to build does the client choose from?",
    rows: 3,
    columns: { name: texts("OptionNames", "What does the client read?") },
  }),
  optionChanges: table({
    ...own,
    name: "OptionChanges",
    question: "What do the options change?",
    rows: 8,
    columns: {
      what: texts(1, "What is different?"),
      kind: choices("OptionKinds", COST_KIND_WORDS, "Which cost does it change?"),
      B: numbers("OptionChangesB", "money", CHANGE, "By how much in option B?"),
      C: numbers("OptionChangesC", "money", CHANGE, "By how much in option C?"),
    },
  }),
  optionFacts: table({
    ...own,
    name: "OptionFacts",
    question: "Which facts do the options change?",
    rows: 3,
    columns: {
      factB: texts("OptionFactsB", "Which fact does option B change?"),
      valueB: texts("OptionValuesB", "What is it in option B?"),
      factC: texts("OptionFactsC", "Which fact does option C change?"),
      valueC: texts("OptionValuesC", "What is it in option C?"),
    },
  }),
  markups: table({
    ...own,
    knower: "book",
    name: "Markups",
    question: "What is added to each cost?",
    rows: 8,
    columns: { markup: numbers("Markups", "share", [0, 10], "What share of the cost is added to it?") },
  }),
  ownPrice: number("OwnPrice", "office", "money", [0, 10_000_000], "What price before tax do you want, if any?", {
    optional: true,
  }),
  ownMargin: number("OwnMargin", "office", "share", [0, 0.9], "What margin is the price to reach, if any?", {
    optional: true,
  }),
  confidence: number("Confidence", "book", "share", [0.5, 0.99], "How sure do you want to be that the cost is kept?"),
  costCorrelation: number("CostCorrelation", "book", "share", [0, 1], "How much do costs rise and fall together?"),
  odds: table({
    ...own,
    knower: "book",
    name: "OddsShares",
    question: "How far may each cost turn out other than likely?",
    rows: 6,
    columns: {
      below: numbers(1, "share", [0, 3], "By what share may it fall?"),
      above: numbers(2, "share", [0, 3], "By what share may it rise?"),
    },
  }),
  quoteNumber: text("QuoteNumber", "office", "What number has the quote?", { optional: true }),
  quoteDate: number("QuoteDate", "office", "day", [36526, 73050], "Of which day is the quote?"),
  validDays: number("ValidDays", "book", "count", [1, 365], "For how many days does the price hold?", { whole: true }),
  startDay: number("StartDay", "office", "day", [36526, 73050], "On which day does the work begin?", {
    optional: true,
  }),
  cancelNotice: text("CancelNotice", "book", "Which notice of cancellation must stand on the quote?", {
    optional: true,
  }),
  depositShareLimit: number(
    "DepositShareLimit",
    "book",
    "share",
    [0, 1],
    "What share of the price does your law allow as a deposit?",
    { optional: true },
  ),
  depositAmountLimit: number(
    "DepositAmountLimit",
    "book",
    "money",
    [0, 1_000_000],
    "What amount does your law allow as a deposit?",
    { optional: true },
  ),
  scope: table({
    ...own,
    knower: "book",
    name: "ScopeLines",
    question: "What else is part of the work?",
    rows: 4,
    columns: { sentence: texts(1, "What else is part of the work?") },
  }),
  exclusions: table({
    ...own,
    knower: "book",
    name: "ExclusionLines",
    question: "What is not part of the price?",
    rows: 6,
    columns: { sentence: texts(1, "What is not part of the price?") },
  }),
  terms: table({
    ...own,
    knower: "book",
    name: "TermLines",
    question: "On which terms is the work done?",
    rows: 4,
    columns: { sentence: texts(1, "On which terms is the work done?") },
  }),
  stages: table({
    ...own,
    knower: "book",
    name: "StageTable",
    question: "When is what share of the price due?",
    rows: 6,
    columns: {
      name: texts(1, "When is it due?"),
      share: numbers(2, "share", [0, 1], "What share of the price with tax?"),
    },
  }),
} as const;
