import { describe, expect, it } from "vitest";
import { fromFile, isDynamic, toFile } from "../../src/workbook/formulaText";

// The file's spellings are those of ECMA-376 extensions: _xlfn., _xlfn._xlws. and _xlpm.; _xldudf_ is what Excel stores for
// functions of a web add-in.
const pairs: [typed: string, filed: string][] = [
  ["RILL.TDH(A1,B2)+1", "_xldudf_RILL_TDH(A1,B2)+1"],
  ["LET(q,SUM(A1:A3),q*2)", "_xlfn.LET(_xlpm.q,SUM(A1:A3),_xlpm.q*2)"],
  ["FILTER(A1:A9,B1:B9>2)", "_xlfn._xlws.FILTER(A1:A9,B1:B9>2)"],
  ['IF(A1="XLOOKUP(q)",1,XLOOKUP(2,A:A,B:B))', 'IF(A1="XLOOKUP(q)",1,_xlfn.XLOOKUP(2,A:A,B:B))'],
  ["MAP(A1:A3,LAMBDA(x,x+'LET(q)'!A1))", "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.x,_xlpm.x+'LET(q)'!A1))"],
  ["SUM(Fall,2)", "SUM(Fall,2)"],
];

describe("the text of a formula", () => {
  it.each(pairs)("%s is filed as %s", (typed, filed) => {
    expect(toFile(typed)).toBe(filed);
    expect(fromFile(filed)).toBe(typed);
  });

  it("is dynamic where a result can spill, not where the name stands in a text", () => {
    expect(isDynamic("RILL.STEPS(1,2,3)")).toBe(true);
    expect(isDynamic("SUM(UNIQUE(A1:A3))")).toBe(true);
    expect(isDynamic('IF(A1="UNIQUE(",1,2)')).toBe(false);
    expect(isDynamic("SUM(A1:A3)")).toBe(false);
  });
});
