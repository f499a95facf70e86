import { invalid } from "../problem";
import { kindOf } from "./kinds";
import { readTerms } from "./readTerms";
import { convert, requireUnit, sameDimension } from "./units";

/**
 * Reads a quantity as people write it and returns it in `unit`.
 *
 * Understands feet, inches and fractions (`2' 6 1/2"`, `2'-6"`), any unit of the unit library (`45 cm`, `40 gpm`)
 * and sums (`12 ft + 8 ft 6 in`). Terms that follow each other add up: `2 ft 6 in` is a sum, never a product.
 * A comma before three digits groups thousands; before any other number of digits it is a decimal comma.
 * A number without any unit is taken in `unit`.
 */
export function readQuantity(text: string, unit: string, name = "text"): number {
  requireUnit(unit);
  const terms = readTerms(text, name, () => kindOf(unit)?.examples ?? `12 ${unit}`);
  if (terms.every((term) => term.unit === null)) {
    return finite(name, text, sum(terms.map((term) => term.value)));
  }
  if (terms.length > 1 && sameDimension(unit, "degC")) {
    throw invalid(`${name} must be one temperature such as 68 °F; got "${text.trim()}"`);
  }
  return finite(
    name,
    text,
    sum(
      terms.map((term) => {
        if (term.unit === null) {
          throw invalid(`${name} "${text.trim()}" mixes numbers with and without units; write a unit behind each`);
        }
        if (!sameDimension(term.unit, unit)) {
          const kind = kindOf(unit);
          const right = kind ? `${kind.name}, such as ${kind.examples}` : `in ${unit} or a unit like it`;
          throw invalid(`${name} must be ${right}; got "${text.trim()}"`);
        }
        return convert(term.value, term.unit, unit);
      }),
    ),
  );
}

/** Reads a number without a unit as people write it: `1,250`, `2 1/2`, `3 + 4`. */
export function readNumber(text: string, name: string): number {
  const terms = readTerms(text, name, () => "12.5 or 2 1/2");
  return finite(name, text, sum(terms.map((term) => term.value)));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function finite(name: string, text: string, value: number): number {
  if (Number.isFinite(value)) return value;
  throw invalid(`${name} "${text.trim().slice(0, 60)}" is not a finite quantity`);
}
