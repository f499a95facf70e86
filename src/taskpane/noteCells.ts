import { FACTS, type FactKey } from "../job/facts";
import type { ColumnFact, Fact, SingleFact } from "../job/facts/fact";
import { ANSWERED } from "../job/facts/answered";
import { fromSi } from "../job/facts/units";
import { readNotes, type NotesRead, type Understood } from "../job/notes/readNotes";
import type { CellValue, Change, Grid, Place } from "../host/port";
import { yoursName } from "../workbook/yoursName";
import type { UnitSystem } from "../calc/quantity/unitSystem";

/** A fact that was understood, and the cell it goes to. */
export interface Noted {
  readonly understood: Understood;
  readonly change: Change;
  /** What the cell holds now, where that is something else. */
  readonly before: CellValue;
}

export interface NotesForCells {
  readonly noted: readonly Noted[];
  readonly open: NotesRead["open"];
}

/** The cells a fact may go to, the one first that wins while it is filled; of all others the last is taken. */
function cellsFor(key: FactKey): readonly Place[] {
  const asked = key === "lips" ? "lipAsked" : ANSWERED[key];
  if (key === "lips" && asked) return [yoursName(FACTS[asked].name)];
  return [yoursName(FACTS[key].name), ...(asked ? [yoursName(FACTS[asked].name)] : [])];
}

/** Reads notes of a visit for a workbook: what goes to which cell, before any of it is written. */
export async function notesForCells(
  notes: string,
  system: UnitSystem,
  read: (places: readonly Place[]) => Promise<readonly (Grid | undefined)[]>,
): Promise<NotesForCells> {
  const { understood, open } = readNotes(notes, system);
  const places = understood.map(({ fact }) => cellsFor(fact));
  const held = await read(places.flat());
  const values = new Map(places.flat().map((place, index) => [place, held[index]?.[0]?.[0]]));
  const noted = understood.map((one, index): Noted => {
    const known = (places[index] ?? []).filter((place) => values.get(place) !== undefined);
    const place = known.find((cell) => values.get(cell) !== "") ?? known.at(-1) ?? "";
    const value = typedValue(one, system);
    const now = values.get(place) ?? "";
    return { understood: one, change: { place, values: [[value]] }, before: now === value ? "" : now };
  });
  return {
    noted: noted.filter(({ change }) => change.place !== ""),
    open: [
      ...open,
      ...noted
        .filter(({ change }) => change.place === "")
        .map(({ understood: { said } }) => ({ said, why: "this workbook has no cell for it" })),
    ],
  };
}

/** What a person would type into the cell. */
function typedValue({ fact: key, value }: Understood, system: UnitSystem): CellValue {
  const fact: Fact | ColumnFact = key === "lips" ? FACTS.lips.columns.width : FACTS[key];
  return typeof value === "number" && fact.type === "number"
    ? Number(fromSi((fact as SingleFact & { type: "number" }).kind, value, system).toPrecision(9))
    : value;
}
