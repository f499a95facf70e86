import vm from "node:vm";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/functions/catalogue";
import { exampleCall } from "../../src/functions/contract/exampleCall";
import { builtFile } from "../built";

type Call = (...args: unknown[]) => unknown;

/** Excel's error type, as far as the functions use it. */
class FakeError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

/** The functions that the built script, with no page, no other file and nothing but the language around it, associates. */
function associated(): Map<string, Call> {
  const found = new Map<string, Call>();
  const CustomFunctions = {
    associate(id: string, call: Call) {
      if (found.has(id)) throw new Error(`${id} is associated twice`);
      found.set(id, call);
    },
    Error: FakeError,
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
  };
  const context = vm.createContext({ CustomFunctions });
  vm.runInContext("globalThis.self = globalThis", context);
  vm.runInContext(builtFile("functions.js").toString(), context, { filename: "functions.js", timeout: 20_000 });
  return found;
}

/** Values of the other realm, as ours. */
const plainData = (value: unknown): unknown => JSON.parse(JSON.stringify(value)) as unknown;

const calls = associated();
const INVOCATION = { address: "Sheet1!A1", functionName: "X" };

describe("the built functions.js", () => {
  it("associates every function of the catalogue and no other", () => {
    expect([...calls.keys()].sort()).toEqual(catalogue.map((d) => d.name).sort());
  });

  it.each(catalogue.flatMap((d) => d.examples.map((e) => [exampleCall(d.name, e.args), d, e] as const)))(
    "answers =RILL.%s as the declaration does",
    (_, declaration, example) => {
      const args = Object.keys(declaration.args).map((__, index) => example.args[index] ?? null);
      // Excel fills left-out arguments with null and appends its invocation object.
      const answer = calls.get(declaration.name)?.(...args, INVOCATION);
      expect(plainData(answer)).toEqual(plainData(declaration.evaluate(example.args)));
    },
  );

  it.each([...calls])("%s turns a problem into Excel's own error, with its sentence", (name, call) => {
    let thrown: unknown;
    try {
      call(...Object.keys(catalogue.find((d) => d.name === name)?.args ?? {}).map(() => null), INVOCATION);
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(FakeError);
    const { code, message } = thrown as FakeError;
    expect(["#VALUE!", "#N/A"]).toContain(code);
    expect(message.length).toBeGreaterThan(10);
  });

  it("makes no code from text", () => {
    expect(/\beval\(|new Function\b/.test(builtFile("functions.js").toString())).toBe(false);
  });
});
