import { readXlsx } from "hucre/xlsx";
import { laterWanted, loadLater } from "../../functions/catalogue";
import { Engine, type Change } from "../../workbook/engine/engine";
import { Rules } from "../../workbook/engine/rules";
import { placeKey } from "../../workbook/engine/sheetCells";
import { sourceOf } from "../../workbook/engine/source";
import { isFormula, type Content } from "../work/content";
import type { Answer, Asked, Typed } from "./messages";

/** Answers what the page asks, one question after the other: reading a file takes time, and the next waits for its end. */
export function answers(tell: (answer: Answer) => void): (asked: Asked) => void {
  const book = new CalculatedBook();
  let before = Promise.resolve();
  return (asked) => {
    before = before.then(async () => tell(await book.answer(asked)));
  };
}

class CalculatedBook {
  private engine: Engine | undefined;
  private rules: Rules | undefined;
  private unworkable = 0;

  async answer(asked: Asked): Promise<Answer> {
    try {
      const changes = await this.changes(asked);
      if (!laterWanted()) return this.told(changes);
      // Functions answer at once here. One was called whose code is still to come: it is called again with it.
      await loadLater();
      return this.told([...changes, ...(this.engine?.runAll() ?? [])]);
    } catch (error) {
      return { ...this.told([]), problem: error instanceof Error ? error.message : String(error) };
    }
  }

  private async changes(asked: Asked): Promise<Answer["changes"]> {
    if ("open" in asked) {
      this.engine = this.rules = undefined;
      const source = sourceOf(await readXlsx(asked.open, { readStyles: true }), true);
      this.unworkable = source.unworkable;
      const engine = (this.engine = new Engine(source));
      this.rules = new Rules(engine);
      for (const typed of asked.typed) put(engine, typed);
      return engine.runAll();
    }
    const { engine, rules } = this;
    if (!engine || !rules) return [];
    if ("all" in asked) return engine.runAll();
    if ("typed" in asked) {
      for (const typed of asked.typed) put(engine, typed);
      return untold(engine.run(), asked.typed);
    } else {
      for (const id of asked.unwatch) rules.unwatch(id);
      for (const rule of asked.watch) rules.watch(rule);
      for (const id of asked.ask) rules.ask(id);
    }
    return engine.run();
  }

  private told(changes: Answer["changes"]): Answer {
    const { engine, rules, unworkable } = this;
    return { changes, rules: rules?.takeResults() ?? [], circles: engine?.circles ?? [], unworkable };
  }
}

/** What came to another value than the page has typed itself: it knows what it typed, and a price list is long. */
function untold(changes: readonly Change[], typed: readonly Typed[]): Change[] {
  const known = new Map<string, Map<number, Content>>();
  for (const { sheet, row, column, content } of typed) {
    if (isFormula(content)) continue;
    const cells = known.get(sheet) ?? new Map<number, Content>();
    known.set(sheet, cells);
    cells.set(placeKey(row + 1, column + 1), content);
  }
  return changes.filter(({ sheet, row, column, value }) => known.get(sheet)?.get(placeKey(row, column)) !== value);
}

function put(engine: Engine, { sheet, row, column, content }: Typed): void {
  const held = isFormula(content) ? { formula: content.slice(1) } : content === "" ? undefined : content;
  engine.set(sheet, row + 1, column + 1, held);
}
