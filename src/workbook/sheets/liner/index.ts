import { defineSheet } from "../../layout";
import { buying } from "./buying";
import { carrying } from "./carrying";
import { checks } from "./checks";
import { cutPlan } from "./cutPlan";
import { fabric } from "./fabric";
import { allowances, cuts, pieces } from "./pieces";
import { plan, rolls } from "./rolls";

/** Liner and fabric: the pieces of the feature, the rolls they come off, what to buy and what it weighs. */
export const liner = defineSheet({
  name: "Liner",
  order: 6,
  build(s, job) {
    s.widths([29, 16, 10, 11, 11, 12, 11, 12]);
    s.title(
      "Liner",
      "Pieces follow from drops and basin; add skirts, type in the rolls you can buy, and read what to cut.",
      { amounts: true },
    );
    allowances(s);
    cuts(s, job);
    pieces(s);
    rolls(s, job);
    plan(s);
    fabric(s, job);
    carrying(s);
    buying(s, job);
    checks(s, job);
    s.checksHere();
    // Last, since its length differs most from job to job.
    s.pageBreak();
    cutPlan(s);
  },
});
