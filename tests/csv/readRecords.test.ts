import { describe, expect, it } from "vitest";
import { readRecords } from "../../src/csv/readRecords";

const cells = (text: string, delimiter = ","): (readonly string[])[] =>
  readRecords(text, delimiter).map((r) => r.cells);

describe("readRecords", () => {
  // RFC 4180, section 2: quoted cells may hold the delimiter, line breaks and doubled quotation marks.
  it("reads quoted cells", () => {
    expect(cells('a,"b, c","say ""hi""","two\r\nlines"\r\nd,e,f,g')).toEqual([
      ["a", "b, c", 'say "hi"', "two\nlines"],
      ["d", "e", "f", "g"],
    ]);
  });

  it("reads any line ends, mixed ones too, and a last line with and without one", () => {
    const expected = [
      ["a", "1"],
      ["b", "2"],
      ["c", "3"],
    ];
    expect(cells("a;1\r\nb;2\nc;3\r", ";")).toEqual(expected);
    expect(cells("a;1\rb;2\r\nc;3", ";")).toEqual(expected);
  });

  it("loses only the row with a quotation mark that is never closed", () => {
    const records = readRecords('a,1\nb,"2\nc,3\nd,4', ",");
    expect(records.map(({ cells }) => cells[0])).toEqual(["a", "b", "c", "d"]);
    expect(records.map(({ problem }) => problem !== undefined)).toEqual([false, true, false, false]);
    expect(records.map(({ row }) => row)).toEqual([1, 2, 3, 4]);
  });

  it("loses only the last row when the mark stands there", () => {
    const records = readRecords('a,1\nb,"2', ",");
    expect(records.map(({ row, problem }) => [row, problem !== undefined])).toEqual([
      [1, false],
      [2, true],
    ]);
  });

  it("loses only the row whose quotation mark a later row would close", () => {
    const records = readRecords('a,1\nb,"2" pipe",9\nc,3\nd,"4, 5"\ne,6', ",");
    expect(records.map(({ cells }) => cells[0])).toEqual(["a", "b", "c", "d", "e"]);
    expect(records.filter(({ problem }) => problem).map(({ row }) => row)).toEqual([2]);
    expect(records[3]?.cells[1]).toBe("4, 5");
  });

  it("names each of 20,000 rows with inch marks in quotes, and reads the ones between", () => {
    const before = process.cpuUsage();
    const records = readRecords('x,"2" pipe",1\ny,2\n'.repeat(20_000), ",");
    expect(process.cpuUsage(before).user / 1000).toBeLessThan(5000);
    expect(records).toHaveLength(40_000);
    expect(records.filter(({ problem }) => problem)).toHaveLength(20_000);
  });

  it("gives up on a file of nothing but broken quotation marks, and says so", () => {
    const before = process.cpuUsage();
    const records = readRecords('x,"y\n'.repeat(50_000), ",");
    expect(process.cpuUsage(before).user / 1000).toBeLessThan(5000);
    expect(records.at(-1)?.problem).toContain("were not read");
  });

  it("takes a cell of a million characters, and of a hundred thousand lines", () => {
    const huge = "x".repeat(1_000_000);
    expect(cells(`a,"${huge}"\nb,2`)[0]?.[1]).toHaveLength(1_000_000);
    const tall = Array.from({ length: 100_000 }, () => "y").join("\n");
    expect(cells(`a,"${tall}"\nb,2`)).toHaveLength(2);
  });

  it("reads no more than asked", () => {
    expect(readRecords("a\nb\nc\nd", ",", 2)).toHaveLength(2);
  });
});
