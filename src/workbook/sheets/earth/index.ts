import { DIGGING_CAUTION } from "../../../functions/earth/arguments";
import { defineSheet } from "../../layout";
import { balance, slopes } from "./balance";
import { berm } from "./berm";
import { checks, contribute } from "./checks";
import { backfill, machine, pit, shelves, trench } from "./digging";

/** What is dug, what the berm takes, and what leaves or comes by truck; bank, loose and compacted kept apart. */
export const earth = defineSheet({
  name: "Earth",
  order: 8,
  build(s, job) {
    s.title("Earth", "Add room to work and the pipe trench; spoil, berm and truckloads follow.");
    s.caution(DIGGING_CAUTION);
    machine(s);
    pit(s);
    trench(s, job);
    shelves(s);
    s.result({
      name: "DugVolume",
      label: "All that is dug (bank)",
      formula: "=PitVolume+TrenchVolume+ShelfVolume",
      kind: "earth",
      needs: ["PitVolume", "TrenchVolume", "ShelfVolume"],
      strong: true,
      note: "As it lies in the ground.",
    });
    backfill(s, job);
    berm(s);
    balance(s);
    slopes(s, job);
    checks(s, job);
    contribute(s, job);
  },
});
