import type { Host } from "../port";
import { formulasOf, readNames, readPlaces, showPlaces, writablePlaces, writeChanges } from "./cells";
import { workbookFile } from "./file";
import { placePictureInExcel } from "./picture";
import { repairWorkbook } from "./repairs";
import { inExcel } from "./run";
import { insertAtSelection, readSelected, selectPlace } from "./selection";
import { takeTemplateInExcel, waysToTakeTemplates } from "./templates";

/** The port's Excel side. Call after `Office.onReady` said that the host is Excel. */
export function createExcelHost(): Host {
  return {
    kind: "excel",
    templateWays: waysToTakeTemplates(),
    undoesInOneStep: false,
    names: readNames,
    read: readPlaces,
    show: showPlaces,
    formulas: formulasOf,
    canWrite: writablePlaces,
    write: writeChanges,
    select: selectPlace,
    selected: readSelected,
    insertFormula: insertAtSelection,
    takeTemplate: takeTemplateInExcel,
    placePicture: placePictureInExcel,
    repairFormulas: repairWorkbook,
    recalculate: () =>
      inExcel("recalculate", async (context) => {
        context.workbook.application.calculate(Excel.CalculationType.full);
        await context.sync();
      }),
    file: workbookFile,
    calculatesByItself: () =>
      inExcel("see how Excel calculates", async (context) => {
        const { application } = context.workbook;
        application.load({ calculationMode: true });
        await context.sync();
        return application.calculationMode !== Excel.CalculationMode.manual;
      }),
    setting: (key) =>
      inExcel("read a setting", async (context) => {
        const item = context.workbook.settings.getItemOrNullObject(key);
        item.load({ value: true });
        await context.sync();
        return item.isNullObject ? undefined : String(item.value);
      }),
    keepSetting: (key, value) =>
      inExcel("keep a setting", async (context) => {
        context.workbook.settings.add(key, value);
        await context.sync();
      }),
    theme: () => ({
      dark: Office.context.officeTheme?.isDarkTheme ?? matchMedia("(prefers-color-scheme: dark)").matches,
    }),
    onChange: (listener) => {
      const once = afterBurst(listener);
      return listen((context) => {
        const { worksheets } = context.workbook;
        return [worksheets.onChanged.add(tell(once)), worksheets.onCalculated.add(tell(once))];
      });
    },
    onSelect: (listener) => listen((context) => [context.workbook.onSelectionChanged.add(tell(listener))]),
  };
}

/** Excel tells of every sheet it calculated, one after the other; one look at the workbook follows them all. */
const BURST_MS = 150;

function afterBurst(listener: () => void): () => void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(waiting);
    waiting = setTimeout(listener, BURST_MS);
  };
}

/** Excel's events wait for a promise; the listener's own work must not hold them up. */
function tell(listener: () => void): () => Promise<void> {
  return () => {
    listener();
    return Promise.resolve();
  };
}

type Registration = OfficeExtension.EventHandlerResult<unknown>;

/** Registers for events in the background; gives a function that ends the registration. */
function listen(register: (context: Excel.RequestContext) => Registration[]): () => void {
  const registered = inExcel("watch the workbook", async (context) => {
    const results = register(context);
    await context.sync();
    return results;
  });
  // A host without the event still works: each part of the pane is read afresh when its tab is opened.
  const running = registered.catch((): Registration[] => []);
  return () => {
    void running
      .then(async (results) => {
        results.forEach((result) => result.remove());
        await results[0]?.context.sync();
      })
      // A workbook that is closing tells nobody anything any more.
      .catch(() => undefined);
  };
}
