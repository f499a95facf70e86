import { defineSheet } from "../../layout";
import { chosenPump, duty } from "./chosen";
import { checks } from "./checks";
import { cable } from "./cable";
import { cost } from "./cost";
import { buying } from "./buying";
import { pumps, ranking } from "./pumps";
import { route } from "./route";
import { behind, CHART_COLUMN } from "./behind";

/** The pipe route, the head it takes, the pumps on offer, and what the chosen one really delivers and costs. */
export const pump = defineSheet({
  name: "Pump",
  order: 4,
  build(s, job) {
    s.widths([27, 16.5, 8.8, 17, 9, ...Array.from({ length: 10 }, () => 8.8)]);
    s.print({ landscape: true });
    s.title("Pump", "Lay out the pipe, type in the pumps you could buy from their makers' curves, then choose one.", {
      amounts: true,
    });
    s.caution(
      `Line voltage near water kills. Every circuit that feeds the pump needs ${job.pick({ US: "ground-fault protection (GFCI)", SI: "residual-current protection (RCD)" })} ` +
        "and is the work of a licensed electrician. Switch off and unplug before anyone reaches into the water.",
    );

    route(s, job);
    pumps(s, job);
    cost(s);
    cable(s, job);
    ranking(s);
    const chartTop = s.row + 1;
    s.within(CHART_COLUMN - 1, () => {
      chosenPump(s);
      duty(s);
    });
    const chartRows = s.row - chartTop;
    buying(s, job);
    checks(s, job);
    s.checksHere();
    behind(s, chartTop, chartRows);
  },
});
