import "../taskpane/theme.css";
import "../taskpane/pane.css";
import "./bench.css";
import { pageWorker } from "./calculation/link";
import { beginLook } from "./firstLook/begin";
import { element } from "./page/element";
import { nextFrame } from "./firstLook/frames";

/** The rest of the page, most of which is the grid; the browser fetches it meanwhile, and it runs once values can be read. */
const REST = "./page.js";

pageWorker();
void beginLook(element("sheet"))
  .then(nextFrame)
  .then(() => {
    performance.mark("stored values shown");
    return import(REST);
  });
