import type { Task } from "../../host/port";
import { askBeside } from "../beside";
import type { Ask, Asks, Order } from "./messages";

/** Has files of the company's book read and made beside the page. */
export function askWorker<A extends Ask>(order: Order<A>, task: Task): Promise<Asks[A]["get"]> {
  const failed = "The company book could not be opened here; reload the page and try again.";
  return askBeside<Asks[A]["get"]>("companyBook.js", order, task, failed);
}
