import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Book } from "../../book/types";
import { defineSheet, type SheetDefinition, type SheetLayout } from "../layout";
import type { CellValue } from "../model";
import {
  COMPANY_FIELDS,
  LABOR_FIELDS,
  LONGEST_SENTENCE,
  MARKUP_ROWS,
  PRICING_FIELDS,
  SENTENCES,
  STAGE_ROWS,
  type BookField,
} from "./fields";
import { TABLES, type BookTable } from "./tables";

const INVENTED =
  "Rows marked invented came with the tool: a changed price is your own, and so is a row whose mark you clear.";

/** The sheets of a company book: as a book says, or blank. */
export function companySheets(system: UnitSystem, book?: Book): readonly SheetDefinition[] {
  const rows = <R>(table: BookTable<R>): CellValue[][] =>
    book ? table.of(book).map((row) => table.cells(row, system)) : [];
  const lay = <R>(s: SheetLayout, table: BookTable<R>, open = false): void => {
    const held = rows(table);
    s.table({
      name: table.name,
      rows: open ? held.length + 1 : table.rows,
      ...(open ? { open: { rows: table.rows, from: held.length + 1 } } : {}),
      columns: table.columns(system),
      usual: held,
    });
  };
  const inputs = (s: SheetLayout, fields: readonly BookField[]): void => {
    for (const { of, ...field } of fields) {
      const value = book ? of(book) : undefined;
      s.input({ ...field, ...(value === undefined || value === "" ? {} : { usual: value }) });
    }
  };

  const company = defineSheet({
    name: "Company",
    order: 0,
    build(s) {
      s.widths([34, 16, 9, 13, 13, 13, 13]);
      s.title("Company", "Type in once what every job takes from here: who you are, and the words of your quotes.");
      s.note(
        "A new job is made from this book: it keeps its own copy of your prices, with their dates. A picture on this sheet (PNG, " +
          "JPEG or SVG) is your logo, and stands over the quote.",
      );
      s.takesPictures();
      s.section("Your company");
      inputs(s, COMPANY_FIELDS);
      s.result({ name: "BookUnits", label: "Units of this book", kind: "text", formula: `="${system}"` });
      s.result({ name: "Currency", label: "Shown beside every amount", kind: "text", formula: '=BookCurrency&""' });
      for (const { key, name, rows: most, title } of SENTENCES) {
        s.section(title);
        s.table({
          name,
          rows: most,
          columns: [
            {
              key: "text",
              title: "One sentence in a row",
              kind: "text",
              across: s.lastColumn,
              input: { max: LONGEST_SENTENCE, message: "One sentence, as the client reads it." },
            },
          ],
          usual: (book?.company[key] ?? []).map((sentence) => [sentence]),
        });
      }
    },
  });

  const products = defineSheet({
    name: "Products",
    order: 1,
    build(s) {
      s.widths([15, 15, 8, 8, 8, 8, 8, 9, 30, 24, 8, 10, 8, 9, 8, 9, 9, 26, 14, 11, 12, 9, 10]);
      s.title("Products", "One row for each product and size, as the takeoff asks for it: by kind, type and size.");
      s.note(INVENTED);
      s.note(
        "What is asked for by size and stands here in another size has no price. Leave size or type blank only where the price " +
          "holds for all of them.",
      );
      s.print({ landscape: true, titleRows: [s.row, s.row] });
      lay(s, TABLES.products, true);
    },
  });

  const pumps = defineSheet({
    name: "Pumps",
    order: 2,
    build(s) {
      s.widths([30, 10, 9, 9, 9, ...Array.from({ length: 22 }, () => 8), 26, 14, 11, 10]);
      s.title("Pumps", "Read each curve off the maker's sheet once: the head at no flow, then up to eleven points.");
      s.note(`${INVENTED} Nothing is guessed beyond the last point of a curve.`);
      s.print({ landscape: true, titleRows: [s.row, s.row] });
      lay(s, TABLES.pumps, true);
    },
  });

  const labor = defineSheet({
    name: "Hours",
    order: 3,
    build(s) {
      s.widths([40, 13, 13, 13, 10, 10, 13, 10, 10, 10]);
      s.title("Hours", "What an hour of the crew costs, and how long one unit of each task takes.");
      s.note(INVENTED);
      s.section("The working day");
      inputs(s, LABOR_FIELDS(system));
      s.section("Burden");
      lay(s, TABLES.burden);
      s.section("Wages");
      lay(s, TABLES.wages);
      s.section("Production rates");
      lay(s, TABLES.rates);
      s.section("Hours by size");
      s.note(
        "A pipe, a lip stone, a tub and a boulder take the row of the next size up; what is larger than the last has no hours yet.",
      );
      lay(s, TABLES.sizes);
    },
  });

  const machines = defineSheet({
    name: "Machines",
    order: 4,
    build(s) {
      s.widths([34, 12, 11, 11, 11, 12, 11, 10, 10]);
      s.title("Machines", "What an hour costs without the operator, how wide a way each needs, and what it lifts.");
      s.note(INVENTED);
      s.caution(
        "Take lifts from the machine's own load chart, at the reach of the work and on the ground it stands on, less slings and " +
          "bucket. The chart on the machine has the last word; nobody stands under or beside a hanging stone.",
      );
      s.print({ landscape: true });
      lay(s, TABLES.machines, true);
    },
  });

  const pricing = defineSheet({
    name: "Pricing",
    order: 5,
    build(s) {
      s.widths([38, 13, 9, 13, 13, 13]);
      s.title("Pricing", "How a price is built up on cost: markups, overhead, contingency and tax.");
      s.note(INVENTED);
      s.section("Settings");
      inputs(s, PRICING_FIELDS);
      s.section("Markups");
      s.table({
        name: "BookMarkups",
        rows: MARKUP_ROWS.length,
        columns: [
          { key: "kind", title: "Cost", kind: "text", fixed: [...MARKUP_ROWS] },
          {
            key: "markup",
            title: "Markup",
            kind: "share",
            input: { min: 0, max: 10, message: "Share of the cost that is added to it." },
          },
        ],
        usual: (book?.pricing.markups ?? []).map((markup) => [markup ?? ""]),
      });
      s.section("Payment stages");
      s.table({
        name: "BookStages",
        rows: STAGE_ROWS,
        columns: [
          { key: "name", title: "When it is due", kind: "text", input: { max: 80, message: "When a payment is due." } },
          {
            key: "share",
            title: "Share",
            kind: "share",
            input: { min: 0, max: 1, message: "Share of the price with tax; all shares make 100%." },
          },
        ],
        usual: (book?.pricing.stages ?? []).map(({ name, share }) => [name, share ?? ""]),
      });
    },
  });

  const pastJobs = defineSheet({
    name: "PastJobs",
    order: 6,
    build(s) {
      s.widths([34, 12, 9, 9, 12, 12, 12, 11, 11, 10]);
      s.title("Past jobs", "What finished jobs cost, beside what was estimated.");
      s.note(INVENTED);
      s.print({ landscape: true, titleRows: [s.row, s.row] });
      lay(s, TABLES.pastJobs, true);
    },
  });

  return [company, products, pumps, labor, machines, pricing, pastJobs];
}
