import { cellOf, sizeOf } from "./lifted";
import { asTable, isTable, KIND, type Given, type Scalar, type Table } from "./values";

const VALUE: Scalar = { kind: KIND.error, code: "#VALUE!" };
const REF: Scalar = { kind: KIND.error, code: "#REF!" };

/** INDEX that takes lists of row and column numbers at once, as Excel does; the library takes the first of each alone. */
export function pick([from, rowNumbers, columnNumbers]: readonly Given[]): Given {
  if (from === undefined || rowNumbers === undefined) return VALUE;
  const { rows } = tableOf(from);
  const [down, across] = [tableOf(rowNumbers), columnNumbers === undefined ? undefined : tableOf(columnNumbers)];
  const [height, width] = sizeOf(across ? [down, across] : [down]);
  if (!isTable(rowNumbers) && height === 1 && width === 1) return pickOne(rows, rowNumbers, across?.rows[0]?.[0] ?? 0);
  return asTable(
    Array.from({ length: height }, (_, line) =>
      Array.from({ length: width }, (__, place) => {
        const found = pickOne(rows, cellOf(down, line, place), across ? cellOf(across, line, place) : 0);
        return isTable(found) ? (found.rows[0]?.[0] ?? REF) : found;
      }),
    ),
  );
}

function pickOne(rows: Table["rows"], rowGiven: Scalar, columnGiven: Scalar | 0): Given {
  const [row, column] = [rowGiven, columnGiven].map(numberOf);
  if (row === undefined || column === undefined) return rowGiven.kind === KIND.error ? rowGiven : VALUE;
  const width = rows[0]?.length ?? 0;
  // In a table of one row or one column a single number counts along it.
  if (columnGiven === 0 && rows.length === 1 && width > 1) return rows[0]?.[row - 1] ?? REF;
  if (row > rows.length || column > width || row < 0 || column < 0) return REF;
  const wanted = row === 0 ? rows : rows.slice(row - 1, row);
  const cut = column === 0 ? wanted : wanted.map((line) => line.slice(column - 1, column));
  return cut.length === 1 && cut[0]?.length === 1 ? (cut[0][0] ?? REF) : asTable(cut);
}

function numberOf(given: Scalar | 0): number | undefined {
  const number = given === 0 ? 0 : Math.trunc(Number(given.value ?? 0));
  return given !== 0 && (given.kind === KIND.error || given.value === "" || Number.isNaN(number)) ? undefined : number;
}

function tableOf(given: Given): Table {
  return isTable(given) ? given : asTable([[given]]);
}
