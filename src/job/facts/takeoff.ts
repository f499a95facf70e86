import { COST_KIND_WORDS } from "../../calc/money/costKinds";
import { choices, numbers, table, texts } from "./fact";

const AMOUNT = [0, 1_000_000] as const;

/** Lines that the user adds to what the design needs, and what was really ordered. */
export const takeoff = {
  ownLines: table({
    sheet: "Takeoff",
    knower: "office",
    name: "OwnLines",
    question: "What does the job need besides what the design asks for?",
    rows: 40,
    // Its needs first: they tell how many lines there are.
    columns: {
      need: numbers(4, "number", AMOUNT, "How much is needed in place?"),
      description: texts(1, "What is it?"),
      code: texts(2, "Which code of the price list?"),
      unit: texts(3, "In which unit?"),
      waste: numbers(5, "share", [0, 2], "What share is added for waste?"),
      minimum: numbers(6, "number", AMOUNT, "What is the least that is sold?"),
      pack: numbers(7, "number", AMOUNT, "How much is sold in one piece?"),
      price: numbers(9, "money", AMOUNT, "What does one unit cost, without tax?"),
      kind: choices(11, COST_KIND_WORDS, "Which line of the price does it count under?"),
      supplier: texts(12, "Who sells it?"),
      taxable: choices(13, ["yes", "no"], "Is sales tax owed on it?"),
      remark: texts(14, "Where does the need come from?"),
    },
  }),
  orders: table({
    sheet: "Orders",
    knower: "office",
    name: "OrderLines",
    question: "What was really ordered?",
    rows: 300,
    columns: {
      order: texts(1, "Which order number?"),
      item: texts(2, "Which item?"),
      quantity: numbers(3, "number", [-1_000_000, 1_000_000], "How much of it?"),
      unit: texts(4, "In which unit?"),
      price: numbers(5, "money", AMOUNT, "At what price for one unit?"),
      supplier: texts(6, "From whom?"),
      density: texts(7, "For stone: which stone, or which density?"),
    },
  }),
} as const;
