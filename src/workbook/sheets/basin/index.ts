import { defineSheet } from "../../layout";
import { basinChecks } from "./checks";
import { contents } from "./contents";
import { drainBack } from "./drainBack";
import { levels } from "./levels";
import { losses } from "./losses";
import { pit } from "./pit";
import { verdict } from "./verdict";

/** The buried basin: what it holds, what comes back into it, how its level moves, and whether it is large enough. */
export const basin = defineSheet({
  name: "Basin",
  order: 5,
  build(s, job) {
    s.widths([31, 12, 11, 12, 12, 12, 32]);
    s.title(
      "Basin",
      "Lay out the pit and what stands in it; see whether it holds what the stream gives back, and for how many days.",
    );
    pit(s);
    contents(s, job);
    drainBack(s);
    levels(s, job);
    losses(s);
    verdict(s);
    basinChecks(s, job);
  },
});
