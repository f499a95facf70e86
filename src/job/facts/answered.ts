import type { FactKey } from "./index";
import type { start } from "./start";

/** The facts of other sheets that an answer on Start stands for until they are typed there. */
export const ANSWERED: { readonly [K in FactKey]?: keyof typeof start } = {
  fallTyped: "fallAsked",
  run: "runAsked",
  soil: "soilAsked",
  accessWidth: "wayInAsked",
};
