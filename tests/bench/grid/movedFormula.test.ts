import { createRequire } from "node:module";
import { describe, expect, it, vi } from "vitest";
import { copiedFormula, cutFormula, keepTextsOfMoved } from "../../../src/bench/grid/movedFormula";

vi.mock("@univerjs/engine-formula", () => createRequire(import.meta.url)("@univerjs/engine-formula") as object);

keepTextsOfMoved();

describe("a formula that is copied", () => {
  it.each([
    // Two rows down and one column across: a reference without $ goes along in both, one with a $ in the other only.
    ["=A1+$B$1+$C2+D$3", "=B3+$B$1+$C4+E$3"],
    ["=SUM(A1:B2,$A$1:A1)", "=SUM(B3:C4,$A$1:B3)"],
    ["=SUM(A:A)+SUM(1:2)", "=SUM(B:B)+SUM(3:4)"],
    ["='Own & more'!B2*Fall", "='Own & more'!C4*Fall"],
    ['=IF(A1>0,"A1 ""net""",LOG10(B1))', '=IF(B3>0,"A1 ""net""",LOG10(C3))'],
    ["=RILL.FTIN(A1,,Units)", "=RILL.FTIN(B3,,Units)"],
    ["=LET(x,A1,x+B$2)", "=LET(x,B3,x+C$2)"],
  ])("turns %s into %s", (formula, moved) => expect(copiedFormula(formula, 2, 1)).toBe(moved));

  it("loses a reference that would leave the sheet", () => {
    expect(copiedFormula("=A2+B1", -1, 0)).toBe("=A1+#REF!");
    expect(copiedFormula("=SUM(A1:B2)*C1", 0, -1)).toBe("=SUM(#REF!)*B1");
  });
});

describe("a formula that is cut", () => {
  it("goes on reading the sheet it came from", () => {
    expect(cutFormula('=A1+SUM(B:B)+Two!C3&"A1"', "One")).toBe("='One'!A1+SUM('One'!B:B)+Two!C3&\"A1\"");
    expect(cutFormula("=Fall*$A$1", "Crew's own")).toBe("=Fall*'Crew''s own'!$A$1");
  });
});
