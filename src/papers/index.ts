import type { TDocumentDefinitions } from "pdfmake/interfaces";
import type { OpenedWorkbook } from "../workbook/recalculate";
import { PaperCells } from "./cells";
import { clientPack } from "./client";
import { crewPack } from "./crew";
import type { Logo } from "../book/types";
import type { Pack } from "../taskpane/printing";
import type { Issue } from "../job/story/issue";
import { issuedCells, issuesOf } from "./issued";
import { officePack } from "./office";
import { supplierPack, suppliersOf } from "./supplier";
import { answerCell } from "../workbook/yoursName";

export { PACKS, type Pack } from "../taskpane/printing";

/** What a pack is made of besides the workbook. */
export interface PackWishes {
  /** Which quote the client's pack is, of those that were issued; today's without it. */
  readonly revision?: number;
  /** Whose order the supplier's pack is. */
  readonly supplier?: string;
  /** The day of an order, in the workbook's days. */
  readonly today: number;
  /** The company's, over the client's pack. */
  readonly logo?: Logo;
}

/** The pages of a pack; throws a sentence where the workbook cannot give them. */
export function packOf(pack: Pack, workbook: OpenedWorkbook, wishes: PackWishes): TDocumentDefinitions {
  const cells = new PaperCells(workbook.recalculate());
  switch (pack) {
    case "client":
      return clientPack(
        wishes.revision === undefined ? cells : issuedCells(chosenIssue(cells, wishes.revision)),
        wishes.logo,
      );
    case "crew":
      return crewPack(cells);
    case "office":
      return officePack(cells);
    case "supplier":
      return orderTo(chosenSupplier(suppliersOf(cells), wishes.supplier), workbook, wishes.today);
  }
}

function chosenIssue(cells: PaperCells, revision: number): Issue {
  const issues = issuesOf(cells.workbook);
  const found = issues.find((issue) => issue.revision === revision);
  if (found) return found;
  const list = issues.map((issue) => issue.revision).join(", ");
  throw new Error(`revision ${revision} was not issued; ${list === "" ? "none was" : `there is ${list}`}`);
}

function chosenSupplier(suppliers: readonly string[], wanted: string | undefined): string {
  const [first, ...more] = suppliers;
  if (first === undefined) throw new Error("this job orders from no supplier yet");
  const list = suppliers.map((name) => `"${name}"`).join(", ");
  if (wanted === undefined) {
    if (more.length === 0) return first;
    throw new Error(`an order goes to one supplier; say which with --supplier: ${list}`);
  }
  const alike = suppliers.filter((name) => name.toLowerCase().startsWith(wanted.toLowerCase()));
  const [found, second] = alike;
  if (found === undefined || second !== undefined) throw new Error(`"${wanted}" is not one of the suppliers: ${list}`);
  return found;
}

/** The workbook shows one supplier's order at a time; it is asked for this one's. */
function orderTo(supplier: string, workbook: OpenedWorkbook, today: number): TDocumentDefinitions {
  const place = answerCell("PrintedSupplier", workbook.names);
  if (place === undefined) throw new Error("this workbook has no sheet of orders");
  const cells = new PaperCells(workbook.recalculate(new Map([[place, supplier]])));
  if (cells.text("PrintedName") !== supplier) throw new Error(`the workbook does not show the order to "${supplier}"`);
  return supplierPack(cells, today);
}
