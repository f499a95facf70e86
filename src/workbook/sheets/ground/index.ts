import { DIGGING_CAUTION } from "../../../functions/earth/arguments";
import { defineSheet } from "../../layout";
import { checks } from "./checks";
import { cutFill, profileChart, results } from "./results";
import { digging, setUp } from "./setUp";
import { shots } from "./shots";
import { surface } from "./surface";

const CHART_ROWS = 18;
const COLUMNS = [23, 20, 12, 17, 9, 9, 10, 9, 11, 9, 11, 9, 14];
/** Columns on paper: what is wrong with a shot stands right of them. */
const PRINTED = 11;
/** Columns that only formulas and the chart read. */
const BESIDE = Array.from({ length: 14 }, () => 12);

/** The ground as it lies, from rod readings; what is cut and filled to build on it; the liner by station. */
export const ground = defineSheet({
  name: "Ground",
  order: 2.5,
  build(s, job) {
    s.widths([...COLUMNS, ...BESIDE]);
    s.print({ landscape: true, lastColumn: PRINTED });
    s.within(PRINTED, () => {
      s.title("Ground", "Type what the rod showed and where; ground, cut and fill, and the liner's length follow.");
      s.caution(DIGGING_CAUTION);
      setUp(s);
      digging(s);
      results(s);
      s.section("Profile");
      const chartTop = s.row;
      s.skip(CHART_ROWS);
      const bed = surface(s, job);
      checks(s, job);
      s.checksHere();
      // The book and the volumes are as long as the job: they stay on the screen.
      s.notPrinted();
      shots(s, job);
      const volumes = cutFill(s);
      s.row = chartTop;
      profileChart(s, CHART_ROWS, { cutFill: volumes, bed });
    });
  },
});
