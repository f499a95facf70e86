import { defineSheet } from "../../layout";
import { checks } from "./checks";
import { densities } from "./densities";
import { banks, drops } from "./faces";
import { gravel } from "./gravel";
import { kinds } from "./kinds";
import { contribute, order } from "./order";
import { lipStones, sizes } from "./pieces";

/** Boulders by drop and bank, lip stones, sizes, gravel, and how it all comes by truck. */
export const stone = defineSheet({
  name: "Stone",
  order: 7,
  build(s, job) {
    s.widths([33, 18, 10, 13, 9, 11, 10, 19]);
    s.title("Stone", "Say how thick faces and layers are; weights, counts and truckloads follow from drops and basin.");
    kinds(s);
    drops(s);
    banks(s);
    lipStones(s);
    sizes(s);
    gravel(s);
    order(s, job);
    checks(s, job);
    contribute(s, job);
    s.checksHere();
    s.notPrinted();
    densities(s, job);
  },
});
