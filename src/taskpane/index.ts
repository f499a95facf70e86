import "./theme.css";
import "./pane.css";
import { createExcelHost } from "../host/excel/excelHost";
import { followTheme } from "./followTheme";
import { mountPane } from "./pane";

const root = document.getElementById("pane");

/** Outside Excel the page says where the bench is; the pane has no workbook to stand beside. */
function explain(): void {
  document.documentElement.dataset.theme = matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light";
  const words = document.createElement("p");
  words.append("This pane works inside Excel. Without Excel, use ");
  const link = document.createElement("a");
  link.href = "bench.html";
  link.textContent = "the bench";
  words.append(link, ", which is the same workbook and the same pane in the browser.");
  root?.replaceChildren(words);
}

async function start(): Promise<void> {
  const office = (globalThis as { Office?: typeof Office }).Office;
  if (!root) return;
  if (!office) return explain();
  const { host } = await office.onReady();
  if (host !== office.HostType.Excel) return explain();
  const excel = createExcelHost();
  followTheme(excel);
  mountPane(root, excel);
}

void start();
