import type { Basin } from "./basin";
import type { Drain } from "./drain";
import type { Earth } from "./earth";
import type { Ground } from "./ground";
import type { Labor } from "./labor";
import type { Levels } from "./levels";
import type { Liner } from "./liner";
import type { Price } from "./price";
import type { Pump } from "./pump";
import type { Stone } from "./stone";
import type { Takeoff } from "./takeoff";
import type { Water } from "./water";

/** What the topics of a job come to. */
export interface Topics {
  readonly water: Water;
  readonly ground: Ground;
  readonly drain: Drain;
  readonly basin: Basin;
  readonly pump: Pump;
  readonly liner: Liner;
  readonly stone: Stone;
  readonly earth: Earth;
  readonly levels: Levels;
  readonly labor: Labor;
  readonly takeoff: Takeoff;
  readonly price: Price;
}
