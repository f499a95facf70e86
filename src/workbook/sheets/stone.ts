import { defineSheet } from "../layout";
import { checks } from "./stoneParts/checks";
import { densities } from "./stoneParts/densities";
import { banks, drops } from "./stoneParts/faces";
import { gravel } from "./stoneParts/gravel";
import { kinds } from "./stoneParts/kinds";
import { contribute, order } from "./stoneParts/order";
import { lipStones, sizes } from "./stoneParts/pieces";

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
