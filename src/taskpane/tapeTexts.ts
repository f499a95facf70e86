import { HostRefusal, type Change, type Host } from "../host/port";
import { readUnitSystem } from "../calc/quantity/unitSystem";
import { TAPE_PLACES, tapeTexts, type TapeText } from "../workbook/reckoning/tapeTexts";

/** What was turned into numbers: a sentence, and what puts the texts back. */
export interface Turned {
  readonly said: string;
  readonly back: readonly Change[];
}

/** Texts that are told one by one; the rest is counted. */
const MOST_TOLD = 4;

/**
 * Writes numbers in place of what a tape says in columns of tables.
 *
 * @throws HostRefusal where there is no such text
 */
export async function turnTexts(host: Host): Promise<Turned> {
  const [[units, ...held], cells] = await Promise.all([host.read(["Units", ...TAPE_PLACES]), host.names()]);
  const names = new Map(cells.map(({ name, address }) => [name, address]));
  const system = readUnitSystem(String(units?.[0]?.[0] ?? ""));
  const texts = tapeTexts((name) => held[TAPE_PLACES.indexOf(name)], { system, names });
  if (texts.length === 0)
    throw new HostRefusal("No table holds a text that could be read as a length; see what Facts says is wrong.");
  await host.write(texts.map(({ cell, value }) => ({ place: cell, values: [[value]] })));
  return { said: told(texts), back: texts.map(({ cell, text }) => ({ place: cell, values: [[asText(host, text)]] })) };
}

function told(texts: readonly TapeText[]): string {
  const more = texts.length - MOST_TOLD;
  const each = texts.slice(0, MOST_TOLD).map(({ said }) => said);
  return `${each.join("; ")}${more > 0 ? `; and ${more} more` : ""}.`;
}

/** Excel would make a date of 3/4 once more. */
function asText(host: Host, text: string): string {
  return host.kind === "excel" ? `'${text}` : text;
}
