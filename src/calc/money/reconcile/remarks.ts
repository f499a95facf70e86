import { plain } from "../../problem";
import { CENT_DIGITS, fromCents } from "../cents";
import type { State } from "./lines";

/** More papers than this are counted, not listed. */
const MOST_LISTED = 3;

/** How grave a remark is, gravest first, and the state it makes. */
const STATES: readonly State[] = ["Query", "Open", "Agrees"];

/** Collects the sentences of a verdict and how grave the gravest is. */
export class Remarks {
  /** @param digits behind the point of amounts in the sentences */
  constructor(readonly digits = CENT_DIGITS) {}

  private readonly remarks: { readonly rank: number; readonly sentence: string }[] = [];

  /** Cents as money in a sentence. */
  money(cents: number): string {
    return money(cents, this.digits);
  }

  /** Something to ask the supplier about before paying. */
  query(sentence: string): void {
    this.remarks.push({ rank: 0, sentence });
  }

  /** Something that will settle itself when goods or papers come. */
  wait(sentence: string): void {
    this.remarks.push({ rank: 1, sentence });
  }

  /** Something to know. */
  note(sentence: string): void {
    this.remarks.push({ rank: 2, sentence });
  }

  get state(): State {
    return STATES[Math.min(2, ...this.remarks.map(({ rank }) => rank))] ?? "Agrees";
  }

  /** Every sentence, gravest first. */
  get verdict(): string {
    const agrees = this.state === "Agrees" ? ["Agrees"] : [];
    const sorted = [...this.remarks].sort((a, b) => a.rank - b.rank).map(({ sentence }) => sentence);
    return [...agrees, ...sorted].map(asSentence).join(" ");
  }
}

/** With a capital, and a full stop unless it asks. */
function asSentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${text.endsWith("?") ? "" : "."}`;
}

/** "ticket 4711", "tickets 1, 2 and 3", "12 tickets". */
export function listed(noun: string, names: readonly string[]): string {
  if (names.length > MOST_LISTED) return `${names.length} ${noun}s`;
  if (names.length < 2) return `${noun} ${names.join("")}`;
  return `${noun}s ${names.slice(0, -1).join(", ")} and ${names[names.length - 1] ?? ""}`;
}

/** Cents as money in a sentence: "1250.00". */
export function money(cents: number, digits = CENT_DIGITS): string {
  return fromCents(cents, digits).toFixed(digits);
}

/** "12.5 ton". */
export function amountOf(quantity: number, unit: string): string {
  return `${plain(quantity)} ${unit}`;
}
