/** For sheets that lie deeper: what the company typed of its own. */
export { typedIn } from "./company/cells";
