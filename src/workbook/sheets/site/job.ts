import { shippedCompany } from "../../../book/shipped/office";
import type { SheetLayout } from "../../layout";
import { COLOR } from "../../layout/style";
import { text } from "./text";

/** Column of the remarks beside what is typed. */
const REMARK = 5;

/** Whose job it is, in which units and currency. */
export function job(s: SheetLayout): void {
  s.section("Job");
  s.result({
    name: "Units",
    label: "Unit system of this workbook",
    formula: `="${s.job.system}"`,
    kind: "text",
    note: "US and metric jobs are separate workbooks.",
  });
  s.input({
    name: "Currency",
    label: "Currency",
    kind: "text",
    max: 5,
    message: "Sign or ISO 4217 code that stands beside every amount: $, CA$, €, £, CHF.",
    remark: unlessWrongCode,
  });
  markWrongCode(s, s.row - 1);
  text(
    s,
    "CompanyName",
    "Your company",
    { US: "Brindle & Moss Streamworks (invented demo)", SI: "Schachtelhalm Wasserbau (invented demo)" },
    "Your company, as it appears on the quote.",
    45,
  );
  const { US, SI } = { US: shippedCompany("US"), SI: shippedCompany("SI") };
  text(
    s,
    "CompanyAddress",
    "Your address",
    { US: US.address, SI: SI.address },
    "Address for the head of the quote and of orders.",
    90,
    true,
  );
  text(
    s,
    "CompanyPhone",
    "Your telephone",
    { US: "555-0142 (demo)", SI: "+00 000 0142 (demo)" },
    "Telephone for the quote and the crew's page.",
    25,
    true,
  );
  text(s, "CompanyEmail", "Your e-mail", { US: US.email, SI: SI.email }, "Address for answers to the quote.", 60, true);
  text(
    s,
    "CompanyLicense",
    "Your license number",
    { US: US.license, SI: SI.license },
    "Contractor's license or registration, where your law asks for it on a quote.",
    40,
    true,
  );
  text(
    s,
    "Estimator",
    "Estimator",
    { US: "M. Fennimore (invented)", SI: "J. Torfgren (invented)" },
    "Who made this estimate.",
    30,
    true,
  );
  text(
    s,
    "JobName",
    "Job",
    { US: "Hollow Bank stream, backyard", SI: "Hofbach, Innenhof" },
    "Name of the job, as it appears on every page.",
    70,
  );
  text(
    s,
    "ClientName",
    "Client",
    { US: "A. Quillfeather (invented)", SI: "K. Lindqvist-Amsel (invented)" },
    "Client's name, for the quote.",
    80,
  );
  text(
    s,
    "SiteAddress",
    "Site address",
    { US: "14 Sample Lane, Demo Township", SI: "Musterweg 14, 00000 Demostadt" },
    "Where the work is done.",
    80,
    true,
  );
  s.input({
    name: "VisitDate",
    label: "Date of the visit",
    kind: "date",
    demo: { US: 46154, SI: 46160 },
    message: "Day the site was measured.",
    optional: true,
  });
}

/** Beside the currency: what is wrong with it. Three capital letters are read as a code; anything else is a sign. */
function unlessWrongCode(reason: string): string {
  const letters = "SUM(--(ABS(CODE(MID(Currency,{1,2,3},1))-77.5)<13))";
  const isWrong = `IF(LEN(Currency)<>3,FALSE,IF(${letters}<3,FALSE,ISERROR(FIND(Currency,CurrencyCodes))))`;
  return `IF(IFERROR(${isWrong},FALSE),Currency&" is not an ISO 4217 code: type one, such as USD, or a sign.",${reason})`;
}

function markWrongCode(s: SheetLayout, row: number): void {
  s.sheet.conditionals.push({
    area: { top: row, left: REMARK, bottom: row, right: REMARK },
    formula: `=ISNUMBER(SEARCH(" is not an ISO",$E$${row}))`,
    style: { bold: true, color: COLOR.warn },
  });
}
