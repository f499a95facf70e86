import { describe, expect, it } from "vitest";
import { Problem } from "../../../src/calc/problem";
import { defaultUnit, toInside, type Measure } from "../../../src/calc/quantity/measures";
import { catalogue, findDeclaration } from "../../../src/functions/catalogue";
import type { Argument } from "../../../src/functions/contract/argument";
import { limitIn, rangeInWords, type Range } from "../../../src/functions/contract/range";

/** Every dimensioned argument with a range, columns of tables included. */
function dimensioned(
  args: Readonly<Record<string, Argument<unknown>>>,
  path: string,
): { path: string; argument: Argument<unknown>; measure: Measure; range: Range }[] {
  return Object.entries(args).flatMap(([name, argument]) => {
    const { columns, repeated, measure, range } = argument;
    const here = `${path} ${name}`;
    const inner = [...dimensioned(columns ?? {}, here), ...dimensioned(repeated ?? {}, here)];
    return measure && range ? [{ path: here, argument, measure, range }, ...inner] : inner;
  });
}

const all = catalogue.flatMap((declaration) => dimensioned(declaration.args, declaration.name));

/** Values at and just beside the limits, in SI. */
function edges({ min, above, max }: Range): number[] {
  const beside = (limit: number): number[] => {
    const step = Math.max(Math.abs(limit), 1e-6) * 1e-6;
    return [limit - step, limit + step];
  };
  return [min, above, max].flatMap((limit) => (limit === undefined ? [] : [limit, ...beside(limit)]));
}

function taken(argument: Argument<unknown>, raw: unknown, system: "US" | "SI"): boolean {
  try {
    argument.read(argument.hostType === "any[][]" ? [[raw]] : raw, "value", system);
    return true;
  } catch (error) {
    if (error instanceof Problem) return false;
    throw error;
  }
}

describe("the range of a dimensioned argument", () => {
  it("is met in every topic", () => {
    // 49 functions took 90 and more dimensioned values when this was written.
    expect(all.length).toBeGreaterThan(80);
  });

  it.each(all.map((one) => [one.path, one] as const))(
    "%s is the same in whatever unit a value is typed",
    (_, { argument, measure, range }) => {
      for (const value of edges(range)) {
        const [us, si] = (["US", "SI"] as const).map((system) => limitIn(value, system, measure));
        const typed: [string, boolean][] = [
          [`${us} US`, taken(argument, us, "US")],
          [`${si} SI`, taken(argument, si, "SI")],
        ];
        for (const system of ["US", "SI"] as const) {
          typed.push([
            `"${us} ${defaultUnit(measure, "US")}" ${system}`,
            taken(argument, `${us} ${defaultUnit(measure, "US")}`, system),
          ]);
          typed.push([
            `"${si} ${defaultUnit(measure, "SI")}" ${system}`,
            taken(argument, `${si} ${defaultUnit(measure, "SI")}`, system),
          ]);
        }
        // A zero may stand for a blank; nothing else may.
        if (value === 0 && measure !== "temperature") continue;
        const answers = new Set(typed.map(([, answer]) => answer));
        expect([...answers], typed.map(([what, answer]) => `${what}: ${answer}`).join("\n")).toHaveLength(1);
      }
    },
  );

  it.each(all.map((one) => [one.path, one] as const))("%s takes what its words allow", (_, one) => {
    for (const system of ["US", "SI"] as const) {
      const words = rangeInWords(one.range, system, one.measure, "");
      const limits = words.match(/-?\d[\d.]*(?:e[-+]?\d+)?/g)?.map(Number) ?? [];
      const most = one.range.max === undefined ? undefined : limits[limits.length - 1];
      if (most !== undefined) expect(taken(one.argument, most, system), `${words}: ${most}`).toBe(true);
      const least = one.range.min === undefined ? undefined : limits[0];
      if (least !== undefined && least !== 0)
        expect(taken(one.argument, least, system), `${words}: ${least}`).toBe(true);
    }
  });

  it("takes a lift of 100 m in feet: TDH(2400, 100 m, 2, 100) is 328.08 + 2.84 ft", () => {
    // 100 m = 328.0840 ft; 100 ft of 2 in Schedule 40 at 40 gpm take 2.62 ft (Illinois Administrative Code 77,
    // part 906, exhibit I) and the outlet 0.227 ft.
    const head = findDeclaration("TDH")?.evaluate([2400, "100 m", 2, 100]);
    expect(head).toBeCloseTo(328.084 + 2.62 + 0.227, 1);
  });
});

describe("a range in words", () => {
  it("rounds a limit inwards, to three digits where it is not a short number", () => {
    // 100 m = 328.084 ft; 1 m³/s = 951,019 gph; 10 mm = 0.393701 in
    expect(rangeInWords({ min: 0, max: 100 }, "US", "head")).toBe("0 to 328 ft");
    expect(rangeInWords({ above: 0, max: 1 }, "US", "flow")).toBe("more than 0, at most 951000 gph");
    expect(rangeInWords({ above: 0, max: 1 }, "SI", "flow")).toBe("more than 0, at most 3600000 L/h");
    expect(rangeInWords({ min: 0.01, max: 50 }, "US", "size")).toBe("0.394 to 1960 in");
    expect(rangeInWords({ min: -500, max: 9000 }, "US", "length")).toBe("-1640 to 29500 ft");
    expect(rangeInWords({ min: 0, max: 40 }, "US", "temperature")).toBe("32 to 104 °F");
    expect(toInside("head", 328, "US")).toBeLessThan(100);
  });
});
