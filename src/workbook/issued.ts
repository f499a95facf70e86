import { FACTS_PART, FIGURES_PART, QUOTE_PART, type Held, type QuoteState } from "../job/story/issue";

/** Cells of the quote's sheet. */
export const QUOTE_CELLS = "Quote!A1:F99";

/** What the client's paper is made of besides the rows of Quote: its head, and what the drawing is drawn from. */
export const PAPER_NAMES = (
  "Units Currency CompanyName CompanyAddress CompanyPhone CompanyEmail CompanyLicense Estimator ClientName SiteAddress JobName " +
  "QuoteNumber QuoteDate ValidDays StartDay WorkingDays CancelNotice QuoteDraft PriceTotal " +
  "FeatureName Drops Treads BedWidth BankHeight BasinLength BasinWidth BasinWaterDepth BasinSideSlope RimBelowGrade " +
  "LipStoneLength LipStoneWidth LipStoneHeight LipStonesPerDrop StoneSizes PoolTable"
).split(" ");

const FACT_NAMES = ["FactNames", "FactsUsed", "FactUnits"] as const;
const FIGURE_NAMES = ["FigureNames", "FiguresNow", "FigureUnits"] as const;

/** The places that `quoteState` needs, in its order. */
export const STATE_PLACES = [QUOTE_CELLS, ...FIGURE_NAMES, ...FACT_NAMES, ...PAPER_NAMES];

type Rows = readonly (readonly Held[])[];

/** What the client would hold if the quote were issued now, from the cells of `STATE_PLACES`. */
export function quoteState(cells: readonly (Rows | undefined)[]): QuoteState {
  const [quote = [], figures = [], now = [], figureUnits = [], facts = [], used = [], units = [], ...named] = cells;
  const beside = (names: Rows, values: Rows, theirs: Rows): Held[][] =>
    names.flatMap(([name = ""], row) => (name === "" ? [] : [[name, values[row]?.[0] ?? "", theirs[row]?.[0] ?? ""]]));
  const last = quote.reduce((end, row, index) => (row.some((cell) => cell !== "") ? index + 1 : end), 0);
  return new Map<string, Rows>([
    [FIGURES_PART, beside(figures, now, figureUnits)],
    // A blank row is kept too: the paper's parts are told apart by them.
    [QUOTE_PART, quote.slice(0, last)],
    ...PAPER_NAMES.map((name, index): [string, Rows] => [name, named[index] ?? []]),
    [FACTS_PART, beside(facts, used, units)],
  ]);
}
