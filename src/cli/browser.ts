import { accessSync, constants } from "node:fs";
import path from "node:path";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge", "msedge"];
const PLACES = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** The Chromium, Chrome or Edge of this machine, or undefined; RILLWRIGHT_BROWSER names another. */
export function installedBrowser(): string | undefined {
  const own = process.env.RILLWRIGHT_BROWSER;
  if (own) return own;
  const folders = (process.env.PATH ?? "").split(path.delimiter);
  const candidates = [...folders.flatMap((folder) => NAMES.map((name) => path.join(folder, name))), ...PLACES];
  return candidates.find((file) => {
    try {
      accessSync(file, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}
