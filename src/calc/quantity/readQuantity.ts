import { invalid, plain } from "../problem";
import { joinTerms, type Refuse, type Term } from "./joinTerms";
import { kindOf } from "./kinds";
import { readTerms, typed } from "./readTerms";
import { convert, requireUnit, sameDimension } from "./units";

/**
 * Reads a quantity as people write it and returns it in `unit`.
 *
 * Understands the language of tapes (`9'4`, `9 ft 4`, `2'-6 1/2"`, `3-1/2"`), any unit of the unit library (`45 cm`,
 * `40 gpm`) and sums (`9'4 + 3'2`). Terms that follow each other add up: `2 ft 6 in` is a sum, never a product.
 * A comma before three digits groups thousands, unless a zero leads (`0,750`) or the unit is metric, where both
 * customs are at home; before any other number of digits it is a decimal comma.
 * A number without any unit is taken in `unit`. What can mean two things is refused, and the sentence shows both.
 *
 * @example readQuantity("2 ft 6 in", "in") => 30; 2 × 12 + 6
 */
export function readQuantity(text: string, unit: string, name = "text"): number {
  requireUnit(unit);
  const examples = (): string => kindOf(unit)?.examples ?? `12 ${unit}`;
  const shown = (reading: string): string => `${reading} (${plain(Number(read(reading).toPrecision(4)))} ${unit})`;
  const read = (written: string): number => {
    const terms = joinTerms(readTerms(written, name, examples), unit, refusal(name, text, shown, examples));
    return total(terms, unit, name, text);
  };
  return read(text);
}

/**
 * Reads a number without a unit as people write it: `1,250`, `2 1/2`, `3 + 4`.
 *
 * @example readNumber("1,250", "price") => 1250; as written
 */
export function readNumber(text: string, name: string): number {
  const examples = (): string => "12.5 or 2 1/2";
  const refuse = refusal(name, text, (reading) => reading, examples);
  const terms = joinTerms(readTerms(text, name, examples), undefined, refuse);
  return finite(name, text, sum(terms.map((term) => term.value)));
}

function refusal(name: string, text: string, shown: (reading: string) => string, examples: () => string): Refuse {
  const told = (piece: string): string => {
    const all = typed(text);
    return `${name} "${all}"${piece.replace(/\s/g, "") === all.replace(/\s/g, "") ? "" : `: ${piece}`}`;
  };
  return {
    unclear(piece, readings) {
      throw invalid(`${told(piece)} can mean ${readings.map(shown).join(" or ")}; write the one you mean`);
    },
    range(piece, difference) {
      throw invalid(`${told(piece)} looks like a range; write one value, or ${difference} to subtract`);
    },
    sideBySide() {
      throw invalid(
        `${name} "${typed(text)}" has two numbers side by side; write + between them to add, or one like ${examples()}`,
      );
    },
  };
}

/** The sum of terms in `unit`. */
function total(terms: readonly Term[], unit: string, name: string, text: string): number {
  if (terms.every((term) => term.unit === null)) {
    return finite(name, text, sum(terms.map((term) => term.value)));
  }
  if (terms.length > 1 && sameDimension(unit, "degC")) {
    throw invalid(`${name} must be one temperature such as 68 °F; got "${typed(text)}"`);
  }
  return finite(
    name,
    text,
    sum(
      terms.map((term) => {
        if (term.unit === null) {
          throw invalid(
            `${name} "${typed(text)}" mixes numbers with and without units; write a unit behind each, as in ${kindOf(unit)?.examples ?? unit}`,
          );
        }
        if (!sameDimension(term.unit, unit)) {
          const kind = kindOf(unit);
          const right = kind ? `${kind.name}, such as ${kind.examples}` : `in ${unit} or a unit like it`;
          throw invalid(`${name} must be ${right}; got "${typed(text)}"`);
        }
        return convert(term.value, term.unit, unit);
      }),
    ),
  );
}

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}

function finite(name: string, text: string, value: number): number {
  if (Number.isFinite(value)) return value;
  throw invalid(`${name} "${typed(text)}" is not a finite quantity`);
}
