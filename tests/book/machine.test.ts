import { describe, expect, it } from "vitest";
import { chooseMachine } from "../../src/book/machine";
import type { Machine } from "../../src/book/types";
import { FOOT, POUND } from "./products";

const machine = (name: string, feet: number, pounds: number, own: number): Machine => ({
  name,
  own,
  fuel: 5,
  upkeep: 2,
  share: 0,
  width: feet * FOOT,
  lift: pounds * POUND,
  reach: 8 * FOOT,
  invented: true,
});
const machines = [machine("Large", 7, 3000, 60), machine("Small", 3.5, 700, 25), machine("Middle", 5.5, 1600, 40)];
const choose = (wayIn: number | undefined, pounds: number | undefined, reach?: number) =>
  chooseMachine(
    machines,
    {
      wayIn: wayIn === undefined ? undefined : wayIn * FOOT,
      heaviest: pounds === undefined ? undefined : pounds * POUND,
      reach: reach === undefined ? undefined : reach * FOOT,
      handLimit: 50 * POUND,
    },
    "US",
  );

describe("chooseMachine", () => {
  it("takes the cheapest hour of those that come in and lift the stone", () => {
    expect(choose(8, 600)).toMatchObject({ by: "machine", machine: { name: "Small" } });
    expect(choose(8, 1380)).toMatchObject({ by: "machine", machine: { name: "Middle" }, others: [{ name: "Large" }] });
    expect(choose(8, 1600)).toMatchObject({ machine: { name: "Middle" } });
    expect(choose(8, 1601)).toMatchObject({ machine: { name: "Large" } });
  });

  it("takes what works the usual hours before what is fetched, and an engine before a hoist", () => {
    const hoist = { ...machine("Hoist", 3, 700, 5), fuel: 0 };
    const usual = { ...machine("Usual", 6, 1500, 50), share: 0.7 };
    const lift = { wayIn: 8 * FOOT, heaviest: 600 * POUND };
    const names = (of: Machine[]): unknown => chooseMachine(of, lift, "US");
    expect(names([hoist, machine("Fetched", 4, 700, 20), usual])).toMatchObject({ machine: { name: "Usual" } });
    expect(names([hoist, machine("Fetched", 4, 700, 20)])).toMatchObject({ machine: { name: "Fetched" } });
    expect(names([hoist])).toMatchObject({ machine: { name: "Hoist" } });
  });

  it("says that none fits, and why", () => {
    expect(choose(4, 1380)).toEqual({
      by: "none",
      reason: "no machine that lifts 1380 lb comes through 4 ft: Middle needs 5.5 ft",
    });
    expect(choose(20, 4000)).toEqual({
      by: "none",
      reason: "no machine of the book lifts 4000 lb: Large lifts 3000 lb at 8 ft",
    });
  });

  it("knows no lift beyond the reach of the load chart", () => {
    expect(choose(8, 600, 8)).toMatchObject({ by: "machine" });
    expect(choose(8, 600, 9)).toMatchObject({ by: "none" });
  });

  it("needs none for what one person lifts, and does not guess", () => {
    expect(choose(undefined, 50)).toEqual({ by: "hand" });
    expect(choose(8, undefined)).toMatchObject({ by: "unknown" });
    expect(choose(undefined, 600)).toEqual({ by: "unknown", reason: "the width of the way in is not known" });
  });
});
