import { HostRefusal, type Change, type Host } from "../host/port";
import { readUnitSystem } from "../calc/quantity/unitSystem";
import { TAPE_PLACES, tapeTexts, type TapeText } from "../workbook/jobCells/tapeTexts";

/** What was turned into numbers: a sentence, and what puts the texts back. */
export interface Turned {
  readonly said: string;
  readonly back: readonly Change[];
}

/** Texts that are told one by one; the rest is counted. */
const MOST_TOLD = 4;

/**
 * Writes numbers in place of what a tape says in columns of tables. Cells with a formula keep it, and are named.
 *
 * @throws HostRefusal where there is no text to write over
 */
export async function turnTexts(host: Host): Promise<Turned> {
  const [[units, ...held], cells] = await Promise.all([host.read(["Units", ...TAPE_PLACES]), host.names()]);
  const names = new Map(cells.map(({ name, address }) => [name, address]));
  const system = readUnitSystem(String(units?.[0]?.[0] ?? ""));
  const found = tapeTexts((name) => held[TAPE_PLACES.indexOf(name)], { system, names });
  const formulas = await host.formulas(found.map(({ cell }) => cell));
  const isFormula = (at: number): boolean => (formulas[at]?.[0]?.[0] ?? "") !== "";
  const own = found.filter((_, at) => isFormula(at));
  const texts = found.filter((_, at) => !isFormula(at));
  const left = own.length > 0 ? leftAlone(own) : "";
  if (texts.length === 0)
    throw new HostRefusal(
      left || "No table holds a text that could be read as a length; see what Facts says is wrong.",
    );
  await host.write(texts.map(({ cell, value }) => ({ place: cell, values: [[value]] })));
  const said = [told(texts), left].filter(Boolean).join(" ");
  return { said, back: texts.map(({ cell, text }) => ({ place: cell, values: [[asText(host, text)]] })) };
}

function told(texts: readonly TapeText[]): string {
  const more = texts.length - MOST_TOLD;
  const each = texts.slice(0, MOST_TOLD).map(({ said }) => said);
  return `${each.join("; ")}${more > 0 ? `; and ${more} more` : ""}.`;
}

/** A formula is its writer's to change: put around what it gives, QTY makes a number of it. */
function leftAlone(own: readonly TapeText[]): string {
  const cells = own.map(({ cell }) => cell).join(", ");
  const one = own.length === 1;
  return `Your own formula${one ? "" : "s"} in ${cells} ${one ? "gives" : "give"} text: put RILL.QTY(…) around ${one ? "it" : "each"}.`;
}

/** Excel would make a date of 3/4 once more. */
function asText(host: Host, text: string): string {
  return host.kind === "excel" ? `'${text}` : text;
}
