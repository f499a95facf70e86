import { COST_KINDS } from "../../calc/money/costKinds";
import { scopeClashes } from "../../calc/money/scopeClash";
import type { Topics } from "../topics";
import type { Job } from "../facts";
import { roundingOf } from "../money";
import { known } from "../derived";
import { optionInUse } from "../standing";
import { total } from "../rows";
import { atLeast, atMost, checksOn, there, type Check } from "./check";

export function laborChecks(job: Job, { labor }: Topics): Check[] {
  const check = checksOn("Hours");
  return [
    check({
      label: "Working days",
      needs: [labor.workingDays],
      value: () => there(labor.workingDays),
      limit: "at most 15 days",
      ok: () => atMost(there(labor.workingDays), 15),
      cure: "Longer than three weeks: take more people, or plan the job in parts (rule of thumb).",
      place: "CrewPeople",
      kind: "hours",
      weight: "look",
    }),
    check({
      label: "Difficulty of the site",
      needs: [job.difficulty],
      value: () => job.difficulty,
      limit: "at least 1",
      ok: () => atLeast(there(job.difficulty), 1),
      cure: "Easier than a plain site is rare: check the factor (rule of thumb).",
      place: "Difficulty",
      kind: "factor",
      weight: "look",
    }),
  ];
}

/** Days after which a price is worth asking for again. Common practice, no source. */
const FRESH_DAYS = 365;

export function ratesChecks(job: Job): Check[] {
  const check = checksOn("Rates");
  const codes = job.prices.flatMap(({ code }) => (code === undefined ? [] : [code.toLowerCase()]));
  const repeats = codes.length - new Set(codes).size;
  const oldest = Math.min(...job.prices.flatMap(({ day }) => (day === undefined ? [] : [day])));
  const age = (): number => there(job.visitDate) - oldest;
  return [
    check({
      label: "Codes that stand twice",
      value: () => repeats,
      limit: () => 0,
      ok: () => repeats === 0,
      cure: "Give each item of the price list a code of its own; only the first of two is found.",
      place: "RateCodes",
      kind: "count",
    }),
    check({
      label: "Age of the oldest price at the visit",
      needs: [job.visitDate, Number.isFinite(oldest) ? oldest : undefined],
      value: () => Math.max(0, age()),
      limit: `at most ${FRESH_DAYS} days`,
      ok: () => age() <= FRESH_DAYS,
      cure: "Ask the supplier for today's price, then change cost and date (rule of thumb).",
      place: "RateDays",
      kind: "count",
      weight: "look",
    }),
  ];
}

export function takeoffChecks({ takeoff }: Topics): Check[] {
  const check = checksOn("Takeoff");
  const counted = (
    label: string,
    word: "no cost" | "no cost kind" | "ordered short",
    cure: string,
    place: string,
    weight?: "look",
  ): Check => {
    const found = takeoff.lines.filter(({ look }) => look === word).length;
    const rest = weight === undefined ? {} : { weight };
    return check({
      label,
      value: () => found,
      limit: () => 0,
      ok: () => found === 0,
      cure,
      place,
      kind: "count",
      ...rest,
    });
  };
  return [
    counted(
      "Lines to order without a cost",
      "no cost",
      "Give it a cost on Rates under the code of the line, or type its unit cost.",
      "TakeoffPrices",
    ),
    counted(
      "Lines under no cost kind",
      "no cost kind",
      "Pick a cost kind for the line, here or on Rates; Price leaves it out otherwise.",
      "TakeoffKinds",
    ),
    counted(
      "Lines ordered short of the takeoff",
      "ordered short",
      "Order what is missing, or note on Takeoff why less was ordered.",
      "OrderLines",
      "look",
    ),
  ];
}

/** Contingency stands behind the kinds of cost and the overhead. */
const CONTINGENCY = COST_KINDS.length + 1;

/** Margins that differ by less than this are the same. */
const MARGIN_NOISE = 1e-6;

export function priceChecks(job: Job, { price, takeoff }: Topics): Check[] {
  const check = checksOn("Price");
  const round = roundingOf(job);
  const deposit = (): number => known(price.stages)?.[0] ?? 0;
  const allowed = depositAllowed(job, known(price.quoted)?.withTax ?? 0);
  const clashes = scopeClashes(
    job.exclusions.flatMap(({ sentence }) => sentence ?? []),
    takeoff.ownLines.flatMap(({ what, order }) => ((known(order) ?? 0) > 0 ? (what ?? []) : [])),
  );
  const { quoted, odds, standing } = price;
  const margin = quoted?.grossMargin;
  const reserve = (): number => Math.max(0, there(odds).atConfidence - there(odds).likely);
  // Nothing wanted is met by any price.
  const offPrice = (): number => (price.asked === undefined ? 0 : round(there(quoted).beforeTax - price.asked));
  const paid = total([...(known(price.stages) ?? [])]);
  const { missing, wrong } = standing;
  return [
    check({
      label: "Cells in error",
      value: () => Number(wrong),
      limit: () => 0,
      ok: () => !wrong,
      cure: "Fix the cell: its own sentence says what would be right.",
      place: "FirstWrong",
      kind: "count",
    }),
    check({
      label: "Parts of the price not known",
      value: () => missing.length,
      limit: () => 0,
      ok: () => missing.length === 0,
      cure: "The list on Price says where each gets its quantity and price.",
      place: "NeedsMissing",
      kind: "count",
    }),
    check({
      label: "Gross margin of the quoted option",
      needs: [margin],
      value: () => there(margin),
      limit: () => job.wantedMargin ?? 0,
      ok: () => there(margin) >= (job.wantedMargin ?? 0) - MARGIN_NOISE / 2,
      cure: "Raise the markups to the smallest that keeps the margin, or accept the thinner margin by lowering the wanted one.",
      place: "Markups",
      kind: "share",
    }),
    check({
      label: "The price wanted is the price",
      needs: [quoted],
      value: offPrice,
      limit: "equal",
      ok: () => offPrice() === 0,
      cure: "Type a price above the cost, or clear it: until then the markups make the price.",
      place: "OwnPrice",
      kind: "money",
    }),
    check({
      label: "Contingency covers the odds",
      needs: [quoted, odds],
      value: () => (there(quoted).costs[CONTINGENCY] ?? 0) - round(reserve()),
      limit: "0 or more",
      ok: () => atMost(round(reserve()), there(quoted).costs[CONTINGENCY] ?? 0),
      cure: "Raise the contingency to the reserve that the odds ask for, or take more risk knowingly.",
      place: "ContingencyShare",
      kind: "money",
      weight: "look",
    }),
    check({
      label: "The quoted option is in use",
      value: () => Number(optionInUse(job)),
      limit: () => 1,
      ok: () => optionInUse(job),
      cure: "Pick an option that has a name, or name it.",
      place: "ChosenOption",
      kind: "count",
    }),
    check({
      label: "Payment stages add up to the price",
      needs: [quoted, job.stages.find(({ share }) => share !== undefined)],
      value: () => round(paid - there(quoted).withTax),
      limit: "equal",
      ok: () => round(paid - there(quoted).withTax) === 0,
      cure: "Make the shares of the payment stages add up to 100%.",
      place: "StageShares",
      kind: "money",
    }),
    check({
      label: "Deposit within the law's limit",
      needs: [price.quoted, job.stages.find(({ share }) => share !== undefined)],
      value: deposit,
      limit: () => allowed ?? "not known",
      ok: () => allowed !== undefined && deposit() <= allowed,
      cure: "Type the largest deposit your law allows, on Price; 100% where it sets no limit.",
      place: "DepositShareLimit",
      kind: "money",
      weight: "look",
      stopIf: () => allowed !== undefined,
    }),
    check({
      label: "Work both priced and excluded",
      value: () => Math.min(1, clashes.length),
      limit: () => 0,
      ok: () => clashes.length === 0,
      cure: "Strike the exclusion or the priced line, or word the exclusion as work beyond what is priced.",
      place: "ExclusionLines",
      kind: "count",
    }),
  ];
}

/** The smaller of what the law allows of the price as a share and as an amount; undefined where neither is known. */
function depositAllowed(job: Job, price: number): number | undefined {
  const { depositShareLimit: share, depositAmountLimit: amount } = job;
  if (share === undefined && amount === undefined) return undefined;
  return Math.min(share === undefined ? price : roundingOf(job)(share * price), amount ?? price);
}

/** Suppliers that Orders has a page for. */
const MOST_SUPPLIERS = 8;

export function ordersChecks(job: Job, { takeoff }: Topics): Check[] {
  const check = checksOn("Orders");
  const bought = takeoff.lines.filter(({ order }) => (known(order) ?? 0) > 0);
  const suppliers = new Set(bought.flatMap(({ supplier }) => (supplier === undefined ? [] : [supplier.toLowerCase()])));
  const codes = new Set(takeoff.lines.map(({ code }) => code?.toLowerCase()));
  const strange = job.orders.filter(({ item }) => item !== undefined && !codes.has(item.toLowerCase())).length;
  return [
    check({
      label: "Suppliers without a page",
      value: () => Math.max(0, suppliers.size - MOST_SUPPLIERS),
      limit: () => 0,
      ok: () => suppliers.size <= MOST_SUPPLIERS,
      cure: "Order from fewer suppliers, or take the lines from Takeoff.",
      place: "SupplierTable",
      kind: "count",
    }),
    check({
      label: "Items ordered that the takeoff does not know",
      needs: [job.orders.find(({ quantity }) => quantity !== undefined)],
      value: () => strange,
      limit: () => 0,
      ok: () => strange === 0,
      cure: "Fix the code in the order book, or add the item to your own lines of Takeoff.",
      place: "OrderItems",
      kind: "count",
      weight: "look",
    }),
  ];
}
