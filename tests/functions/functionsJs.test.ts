import { gzipSync } from "node:zlib";
import vm from "node:vm";
import { describe, expect, it } from "vitest";
import { catalogue, loadLater } from "../../src/functions/catalogue";
import { exampleCall } from "../../src/functions/contract/exampleCall";
import { DRAFTING_BUDGET } from "../../src/site/sizes";
import { builtFile } from "../built";

await loadLater();

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

/** The files that the script asked its page for, one after the other. */
const fetched: string[] = [];

/** The functions that the built script associates, with nothing but the language and a page that runs scripts around it. */
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
  interface Script {
    src: string;
    onload?(): void;
  }
  const run = (script: Script): void => {
    fetched.push(script.src);
    vm.runInContext(builtFile(script.src).toString(), context, { filename: script.src, timeout: 20_000 });
    script.onload?.();
  };
  const document = {
    createElement: () => ({ setAttribute: () => undefined, src: "" }),
    getElementsByTagName: () => [],
    head: { appendChild: run },
  };
  const context = vm.createContext({ CustomFunctions, document, setTimeout, clearTimeout });
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

  it("asks for more code, once, when the first function is called that needs it", async () => {
    calls.get("LIPFLOW")?.(26, 0.75, null, null, null, null, INVOCATION);
    expect(fetched).toEqual([]);
    const draft = (): unknown => calls.get("DRAFT")?.([["fall", 2.75]], null, null, null, null, INVOCATION);
    await Promise.all([draft(), draft()]);
    // What the pane's notes and its filled draft need too comes in files of its own beside it; none of them comes twice.
    expect(fetched.filter((name) => /^drafting\.\w+\.js$/.test(name))).toHaveLength(1);
    expect(fetched.length).toBeLessThanOrEqual(3);
    expect(new Set(fetched).size).toBe(fetched.length);
    const sent = fetched.map((name) => gzipSync(builtFile(name), { level: 9 }).length);
    expect(sent.reduce((sum, size) => sum + size, 0)).toBeLessThan(DRAFTING_BUDGET);
    // From then on it answers in the same turn.
    expect(draft()).not.toBeInstanceOf(Promise);
    expect(Array.isArray(draft())).toBe(true);
  });

  it.each(catalogue.flatMap((d) => d.examples.map((e) => [exampleCall(d.name, e.args), d, e] as const)))(
    "answers =RILL.%s as the declaration does",
    async (_, declaration, example) => {
      const args = Object.keys(declaration.args).map((__, index) => example.args[index] ?? null);
      // Excel fills left-out arguments with null and appends its invocation object.
      const answer = await calls.get(declaration.name)?.(...args, INVOCATION);
      expect(plainData(answer)).toEqual(plainData(declaration.evaluate(example.args)));
    },
  );

  it.each([...calls])("%s turns a problem into Excel's own error, with its sentence", async (name, call) => {
    let thrown: unknown;
    try {
      await call(...Object.keys(catalogue.find((d) => d.name === name)?.args ?? {}).map(() => null), INVOCATION);
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
