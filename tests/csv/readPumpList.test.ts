import { describe, expect, it } from "vitest";
import { pumpListShape, readPumpList, type ListedPump } from "../../src/csv/readPumpList";

const only = (text: string, as?: Parameters<typeof readPumpList>[1]): ListedPump => {
  const { pumps, refused } = readPumpList(text, as);
  expect(refused).toEqual([]);
  expect(pumps).toHaveLength(1);
  return pumps[0] as ListedPump;
};
/** Flow in m³/s and head in m, to 6 digits. */
const points = ({ curve }: ListedPump): number[][] =>
  curve.map(({ flow, head }) => [Number(flow.toPrecision(6)), Number(head.toPrecision(6))]);

describe("readPumpList", () => {
  it("converts each column by its heading", () => {
    // 10 gpm = 10 × 6.309020e-5 m³/s, 1 psi = 6.894757 kPa (NIST SP 811, B.8), 1 mH2O = 9.80665 kPa: 10 psi = 7.03070 m.
    const us = only("Pump,Price,Power,Shut-off head (psi),Flow 1 (gpm),Head 1 (ft)\nA,410,250,10,10,20");
    expect(us).toMatchObject({ name: "A", price: 410, watts: 250 });
    expect(points(us)).toEqual([
      [0, 7.0307],
      [6.30902e-4, 6.096],
    ]);
    // 60 L/min = 1 L/s; 49.03325 kPa = 5 m; 3.6 m³/h = 1 L/s.
    const si = only("Model;Max. head (kPa);Flow (L/min);Head (m)\nB;49,03325;60;4,5");
    expect(points(si)).toEqual([
      [0, 5],
      [0.001, 4.5],
    ]);
    expect(points(only("Name,Shut-off (bar),Q1 (m³/h),H1 (kPa)\nC,0.980665,3.6,49.03325"))).toEqual([
      [0, 10],
      [0.001, 5],
    ]);
  });

  it("reads a table of flows at heads, where makers leave out what the pump does not reach", () => {
    // 1 gph = 1.051503e-6 m³/s.
    const pump = only("Model,Watts,gph @ 0',gph @ 5 ft,GPH @ 10 ft,gph @ 15 ft,gph @ 20 ft\nA,210,4000,3000,1000,0,0");
    expect(points(pump)).toEqual([
      [0, 4.572],
      [1.0515e-3, 3.048],
      [3.15451e-3, 1.524],
      [4.20601e-3, 0],
    ]);
  });

  it("reads a row for each point", () => {
    const list = readPumpList("Pump,Flow (gph),Head (ft)\nA,0,12\nA,1000,9\nB,0,8\nA,2000,3\nB,900,2");
    expect(list.pumps.map(({ name, curve }) => [name, curve.length])).toEqual([
      ["A", 3],
      ["B", 2],
    ]);
  });

  it("takes twelve points and says what is wrong with a pump, by its row", () => {
    const row = (name: string, count: number): string =>
      Array.from({ length: count }, (_, i) => `${name},${i * 100},${20 - i}`).join("\n");
    const more = "UP,0,5\nUP,100,6\nNONE,100,5\nDOT,0,5\nSIX,abc,2";
    const list = readPumpList(`Pump,Flow (gph),Head (ft)\n${row("OK", 12)}\n${row("MANY", 13)}\n${more}`);
    expect(list.pumps.map(({ name, curve }) => [name, curve.length])).toEqual([["OK", 12]]);
    expect(list.refused).toEqual([
      { row: 14, problem: "(MANY): has 13 points; at most 12 are taken" },
      { row: 27, problem: "(UP): head must fall as the flow grows" },
      { row: 29, problem: "(NONE): needs its shut-off head, a point with flow 0" },
      { row: 30, problem: "(DOT): needs at least one point with a flow" },
      { row: 31, problem: '(SIX): "abc" must be a number of 0 or more' },
    ]);
  });

  it("asks for a unit where no heading names one, and takes the user's", () => {
    const text = "Pump,Shut-off head,Flow 1,Head 1\nA,12,1000,9";
    expect(() => readPumpList(text)).toThrow(
      'the heading "Shut-off head" names no unit; write ft, m, psi, kPa or bar in brackets behind it',
    );
    expect(points(only(text, { flow: "gph", head: "ft" }))).toEqual([
      [0, 3.6576],
      [1.0515e-3, 2.7432],
    ]);
    expect(() => readPumpList("Pump,Flow 1 (hogsheads),Head 1 (ft)\nA,1,2")).toThrow('names "hogsheads"');
  });

  it("says what a list of pumps needs", () => {
    expect(() => readPumpList("Code,Cost\nA,1")).toThrow("the file must have a row of headings with Pump");
  });
});

describe("a list of pumps whose headings nobody knows", () => {
  const file = "Modell,H0,Q1,Stufe 1\nFern,6,100,4";

  it("is read by the columns and units that the user names", () => {
    expect(() => readPumpList(file)).toThrow("must have a row of headings with Pump");
    expect(pumpListShape(file)).toMatchObject({
      headings: ["Modell", "H0", "Q1", "Stufe 1"],
      example: ["Fern", "6", "100", "4"],
    });
    const list = readPumpList(file, {
      columns: [
        { is: "name" },
        { is: "shutOff", unit: "m" },
        { is: "flow", point: 1, unit: "L/min" },
        { is: "head", point: 1, unit: "m" },
      ],
    });
    // 100 L/min are 0.1 m³ in 60 s.
    expect(list.pumps[0]?.curve).toEqual([
      { flow: 0, head: 6 },
      { flow: expect.closeTo(0.1 / 60, 9) as number, head: 4 },
    ]);
  });
});
