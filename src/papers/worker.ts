import medium from "pdfmake/fonts/Roboto/Roboto-Medium.ttf";
import regular from "pdfmake/fonts/Roboto/Roboto-Regular.ttf";
import type { Besides } from "../taskpane/beside";
import type { PrintOrder } from "../taskpane/printing";
import { logoOf } from "../workbook/logo";
import { openWorkbook } from "../workbook/recalculate";
import { packOf } from ".";
import { pdfInPage } from "./pdfInPage";

const page = globalThis as unknown as {
  onmessage: (event: MessageEvent<PrintOrder>) => void;
  postMessage(answer: Besides<Uint8Array>): void;
};

page.onmessage = ({ data }) => {
  print(data).then(
    (got) => page.postMessage({ got }),
    (error: unknown) => page.postMessage({ refused: error instanceof Error ? error.message : String(error) }),
  );
};

async function print({ pack, job, supplier, today }: PrintOrder): Promise<Uint8Array> {
  const logo = logoOf(job);
  const wishes = { today, ...(supplier === undefined ? {} : { supplier }), ...(logo ? { logo } : {}) };
  return pdfInPage(packOf(pack, await openWorkbook(job), wishes), { regular, medium });
}
