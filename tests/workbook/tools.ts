import { execFileSync } from "node:child_process";

/**
 * Whether a program of the machine answers. Where it is missing its tests are skipped, loudly; in CI they run and fail.
 */
export function available(what: string, command: string, args: readonly string[]): boolean {
  try {
    execFileSync(command, args, { stdio: "ignore" });
    return true;
  } catch {
    console.warn(
      `\n*** ${what} IS MISSING: the tests that need it are ${process.env.CI ? "failing" : "SKIPPED"} ***\n`,
    );
    return Boolean(process.env.CI);
  }
}

/** The system's own Python, which is where a distribution installs openpyxl. */
export const PYTHON = "/usr/bin/python3";
export const SOFFICE =
  process.platform === "darwin" ? "/Applications/LibreOffice.app/Contents/MacOS/soffice" : "soffice";

export const hasOpenpyxl = (): boolean => available("openpyxl (Python)", PYTHON, ["-c", "import openpyxl"]);
export const hasLibreOffice = (): boolean => available("LibreOffice", SOFFICE, ["--version"]);
