import { cutPlan } from "../calc/liner/cutplan/plan";
import { readRequest } from "../functions/liner/cutPlanRequest";
import { searchOn, type Found } from "./searchOn";

/** What the pane sends: the values of a call of CUTPLAN. */
export interface Order {
  readonly values: readonly unknown[];
}

/** What the worker sends back: how far it is and the best plan so far, or why it cannot search. */
export type Answer = Found | { readonly problem: string };

const worker = globalThis as unknown as {
  onmessage: (event: MessageEvent<Order>) => void;
  postMessage(answer: Answer): void;
};

worker.onmessage = ({ data }) => {
  try {
    const request = readRequest(data.values);
    for (const found of searchOn(request, cutPlan)) worker.postMessage(found);
  } catch (error) {
    worker.postMessage({ problem: error instanceof Error ? error.message : String(error) });
  }
};
