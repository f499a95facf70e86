import { defineSheet } from "../../layout";
import { checks } from "./checks";
import { ground } from "./ground";
import { job as jobAndClient } from "./job";
import { levels, measured } from "./measured";
import { weather } from "./weather";

/** Whose job it is, what was measured on site, and the units the workbook works in. */
export const site = defineSheet({
  name: "Site",
  order: 2,
  build(s, job) {
    s.takesPictures();
    s.title(
      "Site",
      "Fill in the marked cells from your notes of the visit. Everything else in the workbook follows from them.",
    );
    // The second column holds the longest choice beside its arrow.
    s.widths([34, 18, 9, 16, 12, 12, 11, 10]);
    s.print({ pagesHigh: 1 });
    jobAndClient(s);
    measured(s);
    levels(s);
    ground(s);
    weather(s);
    checks(s, job);
  },
});
