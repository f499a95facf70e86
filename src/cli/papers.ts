import { writeFile } from "node:fs/promises";
import { parseArgs } from "node:util";
import { PACKS, packOf, type Pack } from "../papers";
import { pdfOf } from "../papers/pdf";
import { logoOf } from "../workbook/logo";
import { runCommand } from "./runCommand";
import { openWorkbookFile, readWorkbookFile } from "./workbookFile";

const USAGE = `Usage: npm run papers -- JOB.xlsx --pack ${PACKS.join("|")} --out FILE.pdf [--supplier NAME] [--revision N]`;

/** Writes one pack of papers as a PDF and gives the sentence to print. Throws a sentence for the user. */
export async function papers(args: readonly string[], now = new Date()): Promise<string> {
  const { file, pack, out, supplier, revision } = asked(args);
  const workbook = await openWorkbookFile(file);
  if (!workbook.names.has("Units") || !workbook.names.has("JobName")) {
    throw new Error(`${file} is not a Rillwright estimate: it has no cell named Units that says US or SI.`);
  }
  // A day of the workbook counts from 30 December 1899.
  const today = Math.floor(
    (Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) - Date.UTC(1899, 11, 30)) / 86_400_000,
  );
  const logo = logoOf(await readWorkbookFile(file));
  const wishes = {
    today,
    ...(logo ? { logo } : {}),
    ...(supplier === undefined ? {} : { supplier }),
    ...(revision === undefined ? {} : { revision }),
  };
  const bytes = await pdfOf(packOf(pack, workbook, wishes));
  await writeFile(out, bytes);
  return `${out}: the ${pack} pack, ${Math.round(bytes.length / 1024)} kB`;
}

function asked(args: readonly string[]): {
  file: string;
  pack: Pack;
  out: string;
  supplier: string | undefined;
  revision: number | undefined;
} {
  const options = {
    pack: { type: "string" },
    out: { type: "string" },
    supplier: { type: "string" },
    revision: { type: "string" },
  } as const;
  const { values, positionals } = parse(() => parseArgs({ args: [...args], options, allowPositionals: true }));
  const [file, ...more] = positionals;
  const pack = PACKS.find((name) => name === values.pack);
  if (file === undefined || more.length > 0 || values.out === undefined) throw new Error(USAGE);
  if (pack === undefined) throw new Error(`--pack must be ${PACKS.join(", ")}; got "${values.pack ?? ""}". ${USAGE}`);
  if (values.supplier !== undefined && pack !== "supplier")
    throw new Error(`--supplier is for the supplier pack. ${USAGE}`);
  const revision = values.revision === undefined ? undefined : Number(values.revision);
  if (revision !== undefined && (pack !== "client" || !Number.isInteger(revision)))
    throw new Error(`--revision is a number, for the client pack. ${USAGE}`);
  return { file, pack, out: values.out, supplier: values.supplier, revision };
}

function parse<T>(read: () => T): T {
  try {
    return read();
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.message : String(error)} ${USAGE}`, { cause: error });
  }
}

if (process.argv[1] && import.meta.filename === process.argv[1]) await runCommand(USAGE, papers);
