import "../taskpane/theme.css";
import "../taskpane/pane.css";
import "./bench.css";
import { createBenchHost } from "../host/bench/benchHost";
import { followTheme } from "../taskpane/followTheme";
import { download } from "../taskpane/download";
import { mountPane } from "../taskpane/pane";
import { EmbeddedGrid } from "./grid/grid";
import { Job } from "./page/job";
import { ask, notice, refusal } from "./page/notices";
import { dropZone } from "./page/dropZone";
import { resizablePane } from "./page/divider";
import { welcome } from "./page/welcome";
import { workOffline } from "./page/offline";
import { FileRefusal, refuseSize } from "../workbook/file/refusal";

const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const FIRST_TEMPLATE = "rillwright-us-demo.xlsx";

function element<T extends HTMLElement>(id: string): T {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page has no #${id}`);
  return found as T;
}

function start(): void {
  const grid = new EmbeddedGrid(element("sheet"), {
    open: ({ file, bytes }) => openCarefully(file, bytes),
    refused: refusal,
  });
  followTheme({ theme: () => ({ dark: grid.dark() }) });
  const job = new Job(grid, (problem) => {
    const at = new Date().toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
    element("kept").textContent = problem ?? (job.unsaved ? `Kept in this browser at ${at}` : "");
    element("file-name").textContent = job.fileName + (job.unsaved ? " (changed)" : "");
  });

  async function openBytes(fileName: string, bytes: Uint8Array): Promise<void> {
    try {
      await job.open(fileName, bytes);
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      refusal(error instanceof FileRefusal ? why : `${fileName} cannot be shown here: ${why}`);
    }
  }

  /** Opens after asking what becomes of changes that are in no file yet. */
  async function openCarefully(fileName: string, bytes: Uint8Array): Promise<void> {
    if (job.unsaved) {
      const answers = ["Save it, then open", "Open without saving", "Cancel"];
      const answer = await ask(`${job.fileName} has changes that are in no file of yours yet.`, answers);
      if (answer < 0 || answer === 2) return;
      if (answer === 0) await save();
    }
    await openBytes(fileName, bytes);
  }

  const openFile = async (file: File): Promise<void> => {
    let bytes: Uint8Array;
    try {
      refuseSize(file.name, file.size);
      bytes = new Uint8Array(await file.arrayBuffer());
    } catch (error) {
      // The browser gives no reason: a folder was dropped, or the file is gone or locked by another program.
      const gone = `${file.name} cannot be read; if it is a folder, open the workbook in it.`;
      return refusal(error instanceof FileRefusal ? error.message : gone);
    }
    return openCarefully(file.name, bytes);
  };

  async function save(): Promise<void> {
    download(job.fileName, (await job.file()) as BlobPart, WORKBOOK);
    job.markSaved();
    const lost = grid.resized ? " Widths and heights that you changed here are not part of it." : "";
    notice(`${job.fileName} was saved to your downloads.${lost}`, [], 6);
  }

  const picker = element<HTMLInputElement>("file");
  element("open").addEventListener("click", () => picker.click());
  picker.addEventListener("change", () => {
    const file = picker.files?.[0];
    picker.value = "";
    if (file) void openFile(file);
  });
  element("save").addEventListener("click", () => void save());
  element("undo").addEventListener("click", () => grid.undo());
  element("redo").addEventListener("click", () => grid.redo());
  document.addEventListener("keydown", (event) => {
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s") {
      event.preventDefault();
      void save();
    }
  });
  dropZone(element("drop"), (file) => void openFile(file));
  togglePane();
  resizablePane(element("divider"), element("pane"));
  const showSelection = (): void => {
    const { address, reason } = grid.selected();
    element("selected-cell").textContent = address;
    element("why").textContent = reason ?? "";
    element("hint").textContent = reason ? "" : (grid.hint() ?? "");
  };
  grid.onSelect(showSelection);
  grid.onChange(showSelection);
  // The last edits may still be on their way to the storage when the page is closed.
  window.addEventListener("pagehide", () => void job.keep());

  void begin(job, openBytes).then(() => {
    mountPane(element("pane"), createBenchHost(grid));
    welcome();
    document.body.dataset.ready = "true";
    workOffline();
  });
}

/** Opens what was kept last, or the demo job. */
async function begin(job: Job, openBytes: (name: string, bytes: Uint8Array) => Promise<void>): Promise<void> {
  const openDemo = async (): Promise<void> => {
    const answer = await fetch(`templates/${FIRST_TEMPLATE}`);
    await openBytes(FIRST_TEMPLATE, new Uint8Array(await answer.arrayBuffer()));
  };
  const draft = await job.restore();
  if (!draft) return openDemo();
  if (draft.edits.length === 0 && draft.pictures.length === 0) return;
  const when = new Date(draft.at).toLocaleString([], { dateStyle: "medium", timeStyle: "short" });
  notice(`Your changes to ${draft.fileName} of ${when} are back.`, [
    { label: "Drop them", act: () => void openBytes(draft.fileName, draft.bytes) },
  ]);
}

function togglePane(): void {
  const button = element("toggle-pane");
  button.addEventListener("click", () => {
    const open = document.body.classList.toggle("pane-hidden");
    button.setAttribute("aria-expanded", String(!open));
  });
}

start();
