import { asTable, isTable, KIND, type Invoke, type Scalar } from "./values";

/** Letters that stand for others in a text that is looked for, or keep them from it. */
const WILD = /[*?~]/;

/**
 * MATCH of many values in one list: a list of thousands is gone through once for all texts and numbers that are looked for
 * as they stand, not once for each. Other ways to look are left to the native function.
 */
export function matching(native: Invoke): Invoke {
  return (given) => {
    const [wanted, list, way] = given;
    if (!wanted || !list || !way || !isTable(wanted) || !isTable(list) || isTable(way) || way.value !== 0) {
      return native(given);
    }
    const places = new Map<string, Scalar>();
    list.rows.flat().forEach((one, index) => {
      const key = keyOf(one);
      if (key !== undefined && !places.has(key)) places.set(key, { kind: KIND.number, value: index + 1 });
    });
    let ofBlank: Scalar | undefined;
    const asNative = (one: Scalar): Scalar => {
      const found = native([one, list, way]);
      return isTable(found) ? NOT_THERE : found;
    };
    return asTable(
      wanted.rows.map((row) =>
        row.map((one) => {
          const key = keyOf(one);
          if (key !== undefined && !WILD.test(key)) return places.get(key) ?? NOT_THERE;
          return one.kind === KIND.blank ? (ofBlank ??= asNative(one)) : asNative(one);
        }),
      ),
    );
  };
}

const NOT_THERE: Scalar = { kind: KIND.error, code: "#N/A" };

/** What a text or number is found by; letter case does not count. */
function keyOf({ kind, value }: Scalar): string | undefined {
  if (kind === KIND.number) return `=${String(value)}`;
  return kind === KIND.text ? `"${String(value).toLowerCase()}` : undefined;
}
