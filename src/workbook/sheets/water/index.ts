import { defineSheet } from "../../layout";
import { beds } from "./beds";
import { checks } from "./checks";
import { drops } from "./drops";
import { lipsAndFlow } from "./lips";
import { pools } from "./pools";
import { layOutSection, roomForSection } from "./section";

/** Lips and their flow; drops, pools and beds; the section of the feature. */
export const water = defineSheet({
  name: "Water",
  order: 3,
  build(s, job) {
    s.widths([28, 12, 13, 15, 11, 11, 11, 11, 10]);
    s.title(
      "Water",
      "Choose the lips and the sheet of water you want and read the flow; then lay out drops, pools and beds.",
    );
    lipsAndFlow(s, job);
    const numbers = drops(s);
    pools(s);
    beds(s, job);
    const chartRow = roomForSection(s);
    checks(s, job);
    s.checksHere();
    layOutSection(s, job, numbers, chartRow);
  },
});
