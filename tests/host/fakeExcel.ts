import { cellName, parseArea, type Area } from "../../src/xlsx/address";
import { excelError, usedArea, type FakeSheet, type FakeWorkbook } from "./fakeWorkbook";

/** Points that every picture of the fake is high. */
export const PICTURE_HEIGHT = 160;

type State = Record<string, unknown>;
type Listener = () => Promise<void>;

/**
 * One request to the fake: what is asked for waits in a queue until `sync`, and a property can be read only
 * after it was loaded and synced. Code that forgets either fails here as it would in Excel.
 */
class FakeContext {
  private readonly queue: (() => void)[] = [];

  constructor(private readonly book: FakeWorkbook) {}

  sync = async (): Promise<void> => {
    this.book.syncs += 1;
    const asked = this.queue.splice(0);
    // The answer takes its time: what does not wait for it reads nothing.
    await new Promise((resolve) => setTimeout(resolve));
    if (this.book.refuses !== undefined) throw excelError(this.book.refuses);
    for (const act of asked) act();
  };

  get workbook(): unknown {
    const { book } = this;
    const name = (key: string): State => ({
      name: key,
      formula: `=${book.names.get(key) ?? ""}`,
      visible: !book.hiddenNames.has(key),
      delete: () => this.later(() => book.names.delete(key)),
    });
    return {
      names: this.object(() => ({ items: this.listed([...book.names.keys()]).map(name) }), {
        getItemOrNullObject: (wanted: string) =>
          this.object(() => {
            // Excel takes "fall" and "Fall" for one name.
            const key = [...book.names.keys()].find((one) => one.toLowerCase() === wanted.toLowerCase());
            return key === undefined ? undefined : name(this.listed([key])[0] ?? key);
          }),
        add: (key: string, reference: string) =>
          this.later(() => {
            if (book.names.has(key)) throw excelError("ItemAlreadyExists");
            book.names.set(key, book.losesNames ? "#REF!" : reference.replace(/^=/, ""));
          }),
      }),
      worksheets: this.worksheets(),
      settings: {
        getItemOrNullObject: (key: string) =>
          this.object(() => (book.settings.has(key) ? { value: book.settings.get(key) } : undefined)),
        add: (key: string, value: string) => this.later(() => book.settings.set(key, value)),
      },
      application: this.object(() => ({ calculationMode: book.calculationMode }), {
        calculate: () => this.later(() => (book.calculations += 1)),
      }),
      getSelectedRange: () => this.range(() => book.selection),
      getActiveCell: () => {
        const first = ({ sheet, top, left }: Area): Area => ({ sheet, top, left, bottom: top, right: left });
        return this.range(() => first(book.selection));
      },
      insertWorksheetsFromBase64: (text: string) =>
        this.later(() => book.insert(Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0)))),
      onSelectionChanged: this.event(book.selectionListeners),
    };
  }

  /** Counts the names that are handed over. */
  private listed(names: string[]): string[] {
    this.book.namesLoaded += names.length;
    return names;
  }

  private later(act: () => void): void {
    this.queue.push(act);
  }

  private object(
    state: () => State | undefined,
    methods: State = {},
    set: (name: string, value: unknown) => void = () => undefined,
  ): unknown {
    const loaded = new Map<string, unknown>();
    const load = (what: Record<string, unknown>): void =>
      this.later(() => {
        const now = state();
        loaded.set("isNullObject", now === undefined);
        const wanted = Object.keys(what).filter((name) => what[name] === true);
        for (const name of wanted) if (now) loaded.set(name, now[name]);
        // What is loaded of a collection is loaded of each of its items.
        if (Array.isArray(now?.items))
          loaded.set(
            "items",
            now.items.map((item: State) => picked(item, wanted)),
          );
      });
    const all: State = { ...methods, load, context: this };
    return new Proxy(all, {
      get: (_, name) => {
        if (typeof name === "symbol" || name === "then") return undefined;
        if (name in all) return all[name];
        if (!loaded.has(name)) throw excelError(`PropertyNotLoaded: ${name}`);
        return loaded.get(name);
      },
      set: (_, name, value) => {
        this.later(() => set(String(name), value));
        return true;
      },
    });
  }

  private event(listeners: Set<Listener>): unknown {
    return {
      add: (listener: Listener) => {
        this.later(() => listeners.add(listener));
        return { context: this, remove: () => this.later(() => listeners.delete(listener)) };
      },
    };
  }

  private worksheets(): unknown {
    const { book } = this;
    return this.object(() => ({ items: book.sheets.map(({ name }) => ({ name })) }), {
      getItem: (name: string) => this.sheet(() => book.requireSheet(name)),
      getItemOrNullObject: (name: string) => this.sheet(() => book.sheet(name)),
      getActiveWorksheet: () => this.sheet(() => book.requireSheet(book.selection.sheet)),
      add: (name: string) => {
        this.later(() => book.addSheet(name));
        return this.sheet(() => book.requireSheet(name));
      },
      onChanged: this.event(book.changeListeners),
      onCalculated: this.event(book.calculationListeners),
    });
  }

  private sheet(find: () => FakeSheet | undefined): unknown {
    const { book } = this;
    const here = (): FakeSheet => {
      const sheet = find();
      if (!sheet) throw excelError("ItemNotFound");
      return sheet;
    };
    const unprotect = (): void => {
      if (here().password) throw excelError("AccessDenied");
      Object.assign(here(), { protected: false, allows: {} });
    };
    return this.object(() => find() && { name: here().name }, {
      activate: () => this.later(() => (book.selection = { ...book.selection, sheet: here().name })),
      getRange: (address: string) => this.range(() => requireArea(address, here().name)),
      getUsedRangeOrNullObject: () => this.range(() => usedArea(here())),
      protection: this.object(() => ({ protected: here().protected, options: here().allows }), {
        unprotect: () => this.later(unprotect),
        protect: (allows: FakeSheet["allows"]) =>
          this.later(() => Object.assign(here(), { protected: true, allows: allows ?? {} })),
      }),
      shapes: this.object(() => ({ items: here().pictures.map(({ top = 0 }) => ({ top, height: PICTURE_HEIGHT })) }), {
        addImage: () => this.picture(here),
      }),
    });
  }

  private picture(here: () => FakeSheet): unknown {
    const picture: FakeSheet["pictures"][number] = { title: "" };
    this.later(() => {
      if (here().protected && here().allows.allowEditObjects !== true) throw excelError("AccessDenied");
      here().pictures.push(picture);
    });
    return this.object(
      () => ({}),
      {},
      (name, value) => {
        if (name === "name") picture.title = String(value);
        if (name === "altTextDescription") picture.alt = String(value);
        if (name === "left" || name === "top") picture[name] = Number(value);
      },
    );
  }

  private range(find: () => Area | undefined): unknown {
    const { book } = this;
    const area = (): Area => find() ?? requireArea("A1", book.selection.sheet);
    const state = (): State | undefined => {
      const found = find();
      if (!found) return undefined;
      const { sheet, top, left } = found;
      return {
        address: `${sheet}!${cellName(top, left)}${found.bottom > top || found.right > left ? `:${cellName(found.bottom, found.right)}` : ""}`,
        values: book.rows(found, (cell) => cell?.value ?? ""),
        text: book.rows(found, (cell) => textOf(cell?.value ?? "")),
        formulas: book.rows(found, (cell) => cell?.formula ?? cell?.value ?? ""),
        rowIndex: top,
        columnIndex: left,
        left: left * 64,
        top: top * 20,
      };
    };
    const locked = (): boolean | null => {
      const locks = new Set(book.rows(area(), (cell) => cell?.locked ?? true).flat());
      return locks.size === 1 ? locks.has(true) : null;
    };
    const methods: State = {
      select: () => this.later(() => (book.selection = area())),
      getCell: (row: number, column: number) =>
        this.range(() => {
          const { sheet, top, left } = area();
          return { sheet, top: top + row, bottom: top + row, left: left + column, right: left + column };
        }),
      format: { protection: this.object(() => ({ locked: locked() })) },
    };
    return this.object(state, methods, (name, value) => {
      if (name === "formulas") book.write(area(), value as unknown[][]);
    });
  }
}

function requireArea(address: string, sheet: string): Area {
  const area = parseArea(address, sheet);
  if (!area) throw excelError("InvalidArgument");
  return area;
}

/** The asked-for properties of a collection's item, and its methods. */
function picked(item: State, names: readonly string[]): State {
  return Object.fromEntries(
    Object.entries(item).filter(([name, value]) => typeof value === "function" || names.includes(name)),
  );
}

/** What a cell shows: the fake knows one number format, two decimals at most. */
function textOf(value: string | number | boolean): string {
  return typeof value === "number" ? value.toLocaleString("en-US", { maximumFractionDigits: 2 }) : String(value);
}

class CustomFunctionsError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

type Answer = (result: unknown) => void;
const answered = (done: Answer, value: unknown): void => void setTimeout(() => done({ status: "succeeded", value }));

/** The workbook as a file, handed over in pieces; Excel keeps two such files open at most. */
function documentOf(book: FakeWorkbook): unknown {
  return {
    url: book.url,
    getFileAsync: (_type: string, { sliceSize }: { sliceSize: number }, done: Answer) => {
      if (book.refuses !== undefined || book.openFiles >= 2) {
        setTimeout(() => done({ status: "failed", error: { message: "An internal error has occurred." } }));
        return;
      }
      book.openFiles += 1;
      const { file } = book;
      const size = Math.min(sliceSize, book.pieceSize);
      answered(done, {
        size: file.length,
        sliceCount: Math.ceil(file.length / size),
        getSliceAsync: (index: number, given: Answer) =>
          answered(given, { data: [...file.slice(index * size, (index + 1) * size)], index }),
        closeAsync: (closed: Answer) => {
          book.openFiles -= 1;
          answered(closed, undefined);
        },
      });
    },
  };
}

/** Puts the fake in place of the host's globals, as office.js would; `ready` may fill the workbook first. */
export function installFakeExcel(book: FakeWorkbook, ready: () => Promise<void> = () => Promise.resolve()): void {
  const associated = new Map<string, unknown>();
  Object.assign(globalThis, {
    Excel: {
      run: async <T>(
        options: { readonly delayForCellEdit: boolean },
        batch: (context: FakeContext) => Promise<T>,
      ): Promise<T> => {
        if (book.editing && !options.delayForCellEdit) throw excelError("InvalidOperationInCellEditMode");
        await book.editing;
        const context = new FakeContext(book);
        const result = await batch(context);
        await context.sync();
        return result;
      },
      createWorkbook: (text: string) => {
        if (book.refuses !== undefined) return Promise.reject(excelError(book.refuses));
        book.opened.push(text);
        return Promise.resolve();
      },
      CalculationType: { full: "Full" },
      CalculationMode: { manual: "Manual", automatic: "Automatic" },
      WorksheetPositionType: { end: "End" },
    },
    Office: {
      HostType: { Excel: "Excel" },
      PlatformType: { PC: "PC", Mac: "Mac", OfficeOnline: "OfficeOnline" },
      onReady: () => ready().then(() => ({ host: "Excel", platform: "PC" })),
      FileType: { Compressed: "compressed" },
      AsyncResultStatus: { Succeeded: "succeeded", Failed: "failed" },
      context: {
        platform: "PC",
        requirements: { isSetSupported: () => true },
        officeTheme: undefined,
        document: documentOf(book),
      },
    },
    CustomFunctions: {
      associate: (id: string, worksheetFunction: unknown) => associated.set(id, worksheetFunction),
      Error: CustomFunctionsError,
      ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
      associated,
    },
  });
}
