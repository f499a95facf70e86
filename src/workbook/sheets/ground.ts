import { DIGGING_CAUTION } from "../../functions/ground/arguments";
import { defineSheet } from "../layout";
import { balance, slopes } from "./groundParts/balance";
import { berm } from "./groundParts/berm";
import { checks, contribute } from "./groundParts/checks";
import { backfill, machine, pit, shelves, trench } from "./groundParts/digging";

/** What is dug, what the berm takes, and what leaves or comes by truck; bank, loose and compacted kept apart. */
export const ground = defineSheet({
  name: "Ground",
  order: 8,
  build(s, job) {
    s.title("Ground", "Add room to work and the pipe trench; spoil, berm and truckloads follow.");
    s.caution(DIGGING_CAUTION);
    machine(s);
    pit(s);
    trench(s, job);
    shelves(s, job);
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
