import { createBenchHost } from "../host/bench/benchHost";
import { followTheme } from "../taskpane/followTheme";
import { mountPane } from "../taskpane/pane";
import { benchSide } from "./grid/benchSide";
import { EmbeddedGrid } from "./grid/grid";
import { openListByKey } from "./grid/openList";
import { takeNewer } from "./keeping/takeNewer";
import { beginJob } from "./page/begin";
import { resizablePane } from "./page/divider";
import { dropZone } from "./page/dropZone";
import { element } from "./page/element";
import { entryFirst } from "./page/entryFirst";
import { Files } from "./page/files";
import { Job } from "./page/job";
import { keepOnLeaving } from "./page/leaving";
import { ask, circleNotice, notice, refusal } from "./page/notices";
import { workOffline } from "./page/offline";
import { regions } from "./page/regions";
import { showSelection } from "./page/statusLine";
import { toolbar } from "./page/toolbar";
import { welcome } from "./page/welcome";

function start(): void {
  const grid: EmbeddedGrid = new EmbeddedGrid(element("sheet"), {
    open: ({ file, bytes }) => files.openCarefully(file, bytes),
    file: () => files.current(),
    refused: refusal,
    choose: ask,
    told: (sentence) => void notice(sentence),
    circles: circleNotice,
  });
  const host = createBenchHost(benchSide(grid));
  followTheme(host);
  const job: Job = new Job(grid, (problem) => {
    const at = new Date().toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
    element("kept").textContent = problem ?? (job.unsaved ? `changed, kept in this browser at ${at}` : "");
    element("kept").classList.toggle("bad", problem !== undefined);
    element("file-name").textContent = job.fileName;
  });
  const files: Files = new Files(grid, job);
  toolbar(grid, files);
  dropZone(element("drop"), (file) => void files.openFile(file), refusal);
  resizablePane(element("divider"), element("pane"));
  showSelection(grid);
  regions([
    { element: element("bar"), enter: () => element("open").focus() },
    { element: element("sheet"), enter: () => grid.focus() },
    {
      element: element("pane"),
      enter: () => element("pane").querySelector<HTMLElement>("[role=tab][aria-selected=true]")?.focus(),
    },
  ]);
  openListByKey(grid);
  entryFirst(element("pane"), grid, files);
  keepOnLeaving(job, grid);

  void takeNewer().then(async (newerWaits) => {
    await beginJob(job, files);
    if (newerWaits) notice("A newer version of this page is kept; it opens once all pages of this one are closed.");
    const pane = mountPane(element("pane"), host);
    files.opened.add(() => pane.beginAnew());
    files.newJobFrom = (book) => pane.newJobFrom(book);
    welcome();
    document.body.dataset.ready = "true";
    workOffline();
  });
}

start();
