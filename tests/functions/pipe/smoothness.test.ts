import { describe, expect, it } from "vitest";
import { findDeclaration } from "../../../src/functions/catalogue";

const call = (name: string, ...args: unknown[]): unknown => findDeclaration(name)?.evaluate(args);
const cell = (table: unknown, row: number, column: number): number => (table as number[][])[row]?.[column] ?? NaN;

describe("a stated bore", () => {
  it("is as smooth as its pipe type: flexible PVC's C 140 takes (150 / 140)^1.852 = 1.1363 of rigid pipe's friction", () => {
    const loss = (type: string): number => call("PIPELOSS", 2400, "bore 2.067 in", 100, type) as number;
    expect(loss("Flexible PVC") / loss("Sch 40 PVC")).toBeCloseTo(1.1363, 4);
    // The bore of 2 in flexible PVC is taken as Schedule 40's, 2.067 in: named or stated, it is one pipe.
    expect(loss("Flexible PVC")).toBeCloseTo(call("PIPELOSS", 2400, 2, 100, "Flexible PVC") as number, 4);
  });

  it("or any pipe takes a C or a roughness of the user's own", () => {
    const loss = (type: string, method?: string): number =>
      call("PIPELOSS", 10_800, "bore 57 mm", 20, type, method, null, "SI") as number;
    // By hand: 10.67 × 20 × 0.003^1.852 / (150^1.852 × 0.057^4.8704) = 0.485388 m; × (150 / 120)^1.852 = 1.51173
    expect(loss("Bore, C 120")).toBeCloseTo(0.485388 * 1.51173, 4);
    expect(loss("C 120")).toBeCloseTo(0.485388 * 1.51173, 4);
    // Re = 1.17566 × 0.057 / 1.1386e-6 = 58,856; Colebrook: f = 0.02552 puts -2 log(0.1 / 57 / 3.7 + 2.51 / (58,856 √f))
    // = -2 log(0.00047416 + 0.00026696) = 6.2601 = 1 / √f; f × 20 / 0.057 × 0.070471 m
    expect(loss("Bore, roughness 0.1 mm", "Darcy-Weisbach")).toBeCloseTo((0.02552 * 20 * 0.070471) / 0.057, 3);
    expect(() => loss("Bore, C 20")).toThrow("pipe type: C of Hazen-Williams must be 60 to 160");
    expect(() => loss("Bore, roughness 4 mm")).toThrow(
      "size: roughness must be at most 0.05 of the bore, 2.85 mm; got 4 mm",
    );
  });

  it("keeps its type's smoothness in every row of a route", () => {
    const total = (type: string): number =>
      (call("TDHTABLE", 2400, 0, [["bore 2.067 in", 100, type, 0]]) as unknown[][])[2]?.[1] as number;
    expect(total("Flexible PVC") / total("Sch 40 PVC")).toBeCloseTo(1.1363, 4);
  });
});

describe("water temperature", () => {
  const route = [[2, 100, "Sch 40 PVC", 0]];
  const curve = [
    [0, 26],
    [2400, 22],
    [4800, 10],
  ];
  const pumps = [["Pump", 400, 500, 26, 2400, 22, 4800, 10]];
  const dw = "Darcy-Weisbach";
  const heads: Record<string, (celsius: string | null, method: string) => number> = {
    TDH: (t, m) => call("TDH", 2400, 6, 2, 100, null, null, m, t) as number,
    TDHTABLE: (t, m) => (call("TDHTABLE", 2400, 6, route, m, t) as unknown[][]).at(-1)?.[1] as number,
    DUTY: (t, m) => -cell(call("DUTY", curve, 8, route, null, null, null, m, t), 1, 1),
    CURVETABLE: (t, m) => cell(call("CURVETABLE", curve, 8, route, null, null, 3, m, t), 3, 2),
    PUMPRANK: (t, m) => -cell(call("PUMPRANK", pumps, 2400, 8, route, 20, 300, 0.15, 10, m, t), 1, 3),
    PIPERANK: (t, m) =>
      cell(call("PIPERANK", 2400, 6, 100, [[2, "Sch 40 PVC", 2.5]], null, 0.4, 20, 300, 0.15, 10, null, m, t), 1, 3),
  };

  it.each(Object.entries(heads))("counts in %s by Darcy-Weisbach, and not by Hazen-Williams", (_, head) => {
    expect(head("5 degC", dw)).toBeGreaterThan(head("15 degC", dw));
    expect(head(null, dw)).toBe(head("15 degC", dw));
    expect(head("5 degC", "Hazen-Williams")).toBe(head(null, "Hazen-Williams"));
  });

  it("is the same in TDH as in PIPELOSS: lift, friction and the outlet's 3.8244² / 64.348 = 0.2273 ft", () => {
    const friction = call("PIPELOSS", 2400, 2, 100, null, dw, "5 degC") as number;
    expect(heads["TDH"]?.("5 degC", dw)).toBeCloseTo(6 + friction + 0.2273, 3);
  });
});

describe("two pumps with a riser each", () => {
  // 63 mm PVC-U PN10 (57 mm bore, C 150) risers of 6 m with K 4.5, then 8 m of 90 mm (81.4 mm bore) with K 2; 2 m of lift.
  const riser = [[63, 6, "PVC-U PN10", 4.5]];
  const shared = [[90, 8, "PVC-U PN10", 2]];
  const total = (...rest: unknown[]): number =>
    (call("TDHTABLE", 21_600, 2, ...rest) as unknown[][]).at(-1)?.[1] as number;

  it("send half the flow through each: by hand 2.79 m, not 4.12 m", () => {
    // 6 L/s in all. Each riser 3 L/s: 0.485388 × 6 / 20 = 0.145616 m (see above), 4.5 × 0.070471 = 0.317120 m.
    // Shared: 0.485388 × 8 / 20 × 2^1.852 × (57 / 81.4)^4.8704 = 0.123439 m; V = 0.006 / 0.00520402 = 1.152955 m/s, V²/2g =
    // 0.067776 m, times 3 with the outlet 0.203328 m. 2 + 0.462736 + 0.326767 = 2.789503 m
    const right = 2 + 0.145616 + 0.31712 + 0.123439 + 0.203328;
    expect(total(shared, null, null, riser, 2, "SI")).toBeCloseTo(right, 3);
    // The whole 6 L/s through one riser: 0.145616 × 2^1.852 + 4 × 0.317120
    const wrong = 2 + 0.145616 * 2 ** 1.852 + 4 * 0.31712 + 0.123439 + 0.203328;
    expect(total([...riser, ...shared], null, null, null, null, "SI")).toBeCloseTo(wrong, 3);
  });

  it("deliver what one pump does against half the shared loss: DUTY, CURVETABLE and PUMPRANK agree", () => {
    const curve = [
      [0, 6],
      [8000, 5],
      [16_000, 2],
    ];
    const duty = call("DUTY", curve, 2, shared, 2, null, null, null, null, riser, "SI") as unknown[][];
    const flow = duty[1]?.[1] as number;
    const head = duty[2]?.[1] as number;
    expect((call("TDHTABLE", flow, 2, shared, null, null, riser, 2, "SI") as unknown[][]).at(-1)?.[1]).toBeCloseTo(
      head,
      6,
    );
    const ranked = call(
      "PUMPRANK",
      [["Pump", 300, 200, 6, 8000, 5, 16_000, 2]],
      flow * 0.999,
      2,
      shared,
      ...[20, 300, 0.2, 10, null, null],
      riser,
      ...[null, null],
      "SI",
    ) as unknown[][];
    expect(ranked[1]?.slice(0, 3)).toEqual([1, "Pump", 2]);
    expect(ranked[1]?.[3]).toBeCloseTo(flow, 6);
    // 2 × (300 + 10 × 0.2 kW × 6000 h × 0.2)
    expect(ranked[1]?.[6]).toBe(2 * (300 + 2400));
    const chart = call("CURVETABLE", curve, 2, shared, 2, null, 3, null, null, riser, "SI") as number[][];
    expect(chart[2]?.[0]).toBeCloseTo(16_000, 6);
    expect(chart[2]?.[2]).toBeCloseTo(total2(16_000), 6);
  });

  const total2 = (flow: number): number =>
    (call("TDHTABLE", flow, 2, shared, null, null, riser, 2, "SI") as unknown[][]).at(-1)?.[1] as number;
});
