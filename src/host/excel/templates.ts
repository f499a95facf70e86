import { base64 } from "../base64";
import { HostRefusal, type Task, type Template, type TemplateReport, type TemplateWay } from "../port";
import type { TemplateContents } from "../templateNames";
import { repairSheets } from "./repairs";
import { inExcel } from "./run";

/** Excel on the web refuses to insert sheets with charts. */
const takesCharts = (): boolean => Office.context.platform !== Office.PlatformType.OfficeOnline;

/** How this Excel can take a template; on a tablet it cannot insert the sheets of a file. */
export function waysToTakeTemplates(): TemplateWay[] {
  const { requirements, platform } = Office.context;
  const ways: TemplateWay[] = ["download"];
  if (requirements.isSetSupported("ExcelApi", "1.8")) ways.push("open");
  const { PC, Mac, OfficeOnline } = Office.PlatformType;
  if ([PC, Mac, OfficeOnline].includes(platform) && requirements.isSetSupported("ExcelApi", "1.13"))
    ways.push("insert");
  return ways;
}

export async function takeTemplateInExcel(template: Template, way: TemplateWay, task: Task): Promise<TemplateReport> {
  if (way === "insert") return insertTemplate(template, task);
  if (way === "download") throw new HostRefusal("Use the download link, then open the file in Excel.");
  try {
    await Excel.createWorkbook(base64(template.bytes));
  } catch {
    throw new HostRefusal("Excel could not open a new workbook; download the file and open it instead.");
  }
  return { said: "The job is open in a new Excel window.", repaired: [], broken: [] };
}

/**
 * Inserts the template's sheets behind the workbook's own, then checks every name and rebuilds the broken ones, and
 * checks every formula and enters again those that came without their function. The insertion cannot be stopped half
 * way; the checking of formulas can.
 */
async function insertTemplate({ bytes, file: name }: Template, task: Task): Promise<TemplateReport> {
  // What reads and writes packages is loaded when it is needed, not with the pane.
  const { templateContents } = await import("../templateNames");
  const contents = templateContents(bytes);
  const report = await inExcel(`insert ${name}`, async (context) => {
    await refuseClash(context, contents);
    const file = takesCharts() ? bytes : (await import("../withoutCharts")).withoutCharts(bytes);
    context.workbook.insertWorksheetsFromBase64(base64(file), { positionType: Excel.WorksheetPositionType.end });
    await context.sync();
    const repaired = await rebuildNames(context, contents);
    const broken = (await brokenNames(context, contents)).map(({ name }) => name);
    const said =
      `The job's ${contents.sheets.length} sheets are in this workbook.` +
      (takesCharts() ? "" : " Excel on the web takes no charts along; the pane draws them.") +
      (repaired.length > 0 ? ` Names rebuilt: ${repaired.join(", ")}.` : "") +
      (broken.length > 0 ? ` These names could not be rebuilt: ${broken.join(", ")}. Download the file instead.` : "");
    return { said, repaired, broken };
  });
  const { found, repaired, left, stopped } = await repairSheets(contents.sheets, task);
  const unbound = found === 0 ? "" : ` ${repaired} of ${found} formulas were entered again.`;
  const rest = left.length > 0 || stopped ? " Press Repair formulas under Help for the others." : "";
  return { ...report, said: report.said + unbound + rest };
}

async function refuseClash(context: Excel.RequestContext, contents: TemplateContents): Promise<void> {
  const { names, worksheets } = context.workbook;
  names.load({ name: true });
  worksheets.load({ name: true });
  await context.sync();
  // Excel takes "site" and "Site" for one name.
  const sheets = new Set(contents.sheets.map((name) => name.toLowerCase()));
  const sheet = worksheets.items.find((item) => sheets.has(item.name.toLowerCase()));
  if (sheet)
    throw new HostRefusal(`This workbook already has a sheet ${sheet.name}; open the job in a new workbook instead.`);
  const known = new Set([...contents.names.keys()].map((name) => name.toLowerCase()));
  const name = names.items.find((item) => known.has(item.name.toLowerCase()));
  if (name)
    throw new HostRefusal(`This workbook already has the name ${name.name}; open the job in a new workbook instead.`);
}

/** Names of the template that are missing from the workbook or lost their cells. */
async function brokenNames(
  context: Excel.RequestContext,
  contents: TemplateContents,
): Promise<{ name: string; item?: Excel.NamedItem }[]> {
  const { names } = context.workbook;
  names.load({ name: true, formula: true });
  await context.sync();
  const present = new Map(names.items.map((item) => [item.name, item]));
  const result: { name: string; item?: Excel.NamedItem }[] = [];
  for (const name of contents.names.keys()) {
    const item = present.get(name);
    if (!item || String(item.formula).includes("#REF!")) result.push({ name, item });
  }
  return result;
}

async function rebuildNames(context: Excel.RequestContext, contents: TemplateContents): Promise<string[]> {
  const broken = await brokenNames(context, contents);
  for (const { name, item } of broken) {
    item?.delete();
    context.workbook.names.add(name, `=${contents.names.get(name) ?? ""}`);
  }
  if (broken.length > 0) await context.sync();
  return broken.map(({ name }) => name);
}
