import { describe, expect, it } from "vitest";
import { cutPlan } from "../../src/calc/liner/cutplan/plan";
import type { Change, Grid, Host, Place, Task } from "../../src/host/port";
import type { Answer, Order } from "../../src/taskpane/cutPlanWorker";
import { searchLonger, type Helper } from "../../src/taskpane/longerSearch";
import { searchOn, STEPS, type Found } from "../../src/taskpane/searchOn";
import { slicedStrip } from "../calc/liner/cutplan/sliced";

const CELLS: Readonly<Record<Place, Grid>> = {
  LinerPieces: [
    ["Basin", 12, 9, 1],
    ["", "", "", ""],
  ],
  LinerRolls: [[10, 12.5, "length", 100]],
  LinerTurn: [["yes"]],
  SeamLap: [[""]],
  SeamPrice: [[""]],
  LinerKeptPlanYours: [[""]],
  Currency: [["$"]],
  Units: [["US"]],
};
const found = (step: number, now: number): Found => ({
  step,
  steps: 3,
  before: 200,
  now,
  kept: `plan of step ${step}`,
  proven: false,
});

/** A search with a worker that answers what it is told, and all that came of it. */
function run(answers: (stop: AbortController) => readonly (Answer | "stop" | "fault")[], cells = CELLS) {
  const written: Change[] = [];
  const progress: number[] = [];
  const stop = new AbortController();
  let ended = false;
  let order: Order | undefined;
  const host = {
    read: (places: readonly Place[]) => Promise.resolve(places.map((place) => cells[place])),
    write: (changes: readonly Change[]) => Promise.resolve(void written.push(...changes)),
  } as unknown as Host;
  const task: Task = {
    signal: stop.signal,
    progress: (done, total) => void progress.push(done / total),
    pause: () => Promise.resolve(),
  };
  const helper: Helper = {
    onmessage: null,
    onerror: null,
    postMessage(given) {
      order = given;
      for (const answer of answers(stop)) {
        if (answer === "stop") stop.abort();
        else if (answer === "fault") helper.onerror?.({} as ErrorEvent);
        else helper.onmessage?.({ data: answer } as MessageEvent<Answer>);
      }
    },
    terminate: () => void (ended = true),
  };
  const said = searchLonger(host, task, () => helper);
  return { said, written, progress, ended: () => ended, order: () => order };
}

describe("a longer search from the pane", () => {
  it("says amounts as the job's money has them: a yen has no parts, by ISO 4217", async () => {
    const yen = run(() => [found(3, 170)], { ...CELLS, Currency: [["JPY"]] });
    expect(await yen.said).toBe("Searched: the cut plan now costs 170, 30 less than 200.");
  });

  it("sends what the cell reads, shows how far it is, and hands the cheaper plan to the cell", async () => {
    const search = run(() => [found(1, 200), found(2, 180), found(3, 170)]);
    expect(await search.said).toBe("Searched: the cut plan now costs 170.00, 30.00 less than 200.00.");
    expect(search.order()?.values).toEqual([CELLS.LinerPieces, CELLS.LinerRolls, "yes", "", "", "", "$", "US"]);
    expect(search.progress).toEqual([1 / 3, 2 / 3, 1]);
    expect(search.written).toEqual([{ place: "LinerKeptPlanYours", values: [["plan of step 3"]] }]);
    expect(search.ended()).toBe(true);
  });

  it("keeps the best plan so far when it is stopped, and ends the worker", async () => {
    const search = run(() => [found(1, 200), found(2, 180), "stop"]);
    expect(await search.said).toBe("Stopped: the cut plan now costs 180.00, 20.00 less than 200.00.");
    expect(search.written).toEqual([{ place: "LinerKeptPlanYours", values: [["plan of step 2"]] }]);
    expect(search.ended()).toBe(true);
  });

  it("changes nothing when it finds nothing", async () => {
    const none = run(() => [found(1, 200), found(2, 200), found(3, 200)]);
    expect(await none.said).toContain("no cheaper plan");
    const early = run(() => ["stop"]);
    expect(await early.said).toContain("nothing was changed");
    expect([...none.written, ...early.written]).toEqual([]);
  });

  it("says what is wrong with the cells, the worker or the workbook", async () => {
    await expect(run(() => [{ problem: "cuts is needed" }]).said).rejects.toThrow("cuts is needed.");
    await expect(run(() => ["fault"]).said).rejects.toThrow("reload the page");
    await expect(run(() => [], { Units: [["US"]] }).said).rejects.toThrow("has no LinerPieces");
  });
});

describe("the steps of a longer search", () => {
  it("never lose a plan, and end at once when it is proven", () => {
    const pieces = slicedStrip(111, 24, 60, 24, true).map(([length = 0, width = 0], i) => ({
      name: `${i}`,
      length,
      width,
    }));
    const request = { pieces, rolls: [{ width: 24, price: 1, per: "length" as const, longest: Infinity }], turn: true };
    const costs: number[] = [];
    for (const { now, step, before, proven } of searchOn(request, cutPlan)) {
      costs.push(now);
      expect(now).toBeLessThanOrEqual(before);
      if (proven || step === 4) break;
    }
    expect(costs).toEqual([...costs].sort((a, b) => b - a));
    const few = { ...request, pieces: pieces.slice(0, 6) };
    expect([...searchOn(few, cutPlan)].map(({ step, proven }) => [step, proven])).toEqual([[1, true]]);
    expect(STEPS).toBeGreaterThan(10);
  });
});
