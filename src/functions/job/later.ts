import { Later } from "../contract/later";

/** Drafting a job takes most of what the add-in knows: it comes with the first cell that asks for it. */
export const drafting = new Later(() => import(/* webpackChunkName: "drafting" */ "./drafting"));
