import { shotFaults } from "../../calc/ground/shotFaults";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { table } from "../contract/tables";
import { inStep, rodColumns } from "../levels/arguments";

/** Any length at all: what is out of range is told in its row, and not refused with the whole table. */
const ANY = { min: -1e6, max: 1e6 };

export const SHOTCHECK = declare({
  name: "SHOTCHECK",
  topic: "ground",
  summary: "Looks through shots row by row and says what is wrong: readings, their order, stations.",
  formula:
    "Rod 0 to 25 ft; a backsight before any other sight; an intermediate sight alone; each station on the line once",
  source: "Booking rules of differential levelling, any surveying text",
  limits: "It finds slips of booking, never a wrong reading: close the run for that (see LEVELRUN).",
  args: {
    shots: table("Shots in the order taken", {
      ...rodColumns(ANY),
      station: optional(quantity("length", "Distance along the line", ANY), "not on the ground line"),
      offset: optional(
        quantity("length", "Distance to the right of the line, negative to the left", ANY),
        "0, on the line",
      ),
    }),
  },
  result: tableResult("what is wrong with each row", [{ title: "What is wrong" }]),
  examples: [
    {
      args: [
        [
          ["Rim", 4.2, "", "", 60, ""],
          ["Slope", "", 1.1, "", 30, ""],
          ["Top", "", 26.3, "", 0, ""],
          ["Again", "", 1.4, "", 30, ""],
        ],
      ],
      gives: [
        { at: [1, 0], is: "" },
        { at: [3, 0], is: "Off the rod: a rod shows 0 to 7.7 m (25.26 ft), not 8.016 m (26.3 ft)." },
        { at: [4, 0], is: "Station twice: it was shot on the line above; clear one, or give it its offset." },
      ],
      within: 0,
      from: "by hand: 26.3 ft is longer than a 25 ft rod; station 30 stands in two rows",
    },
  ],
  compute({ shots }) {
    const faults = shotFaults(shots.map((shot) => ({ ...shot, point: shot.point ?? "" })));
    return inStep(
      shots,
      faults.map((fault) => [fault?.sentence ?? ""]),
    );
  },
});
