import { shippedCompany } from "../../../book/shipped/office";
import type { SheetLayout } from "../../layout";
import { text } from "./text";

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
  });
  text(
    s,
    "CompanyName",
    "Your company",
    { US: "Brindle & Moss Streamworks (invented demo)", SI: "Schachtelhalm Wasserbau (invented demo)" },
    "Your company, as it stands on the quote.",
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
    "Name of the job, as it stands on every page.",
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
