import { Problem } from "../calc/problem";
import type { Book } from "../book/types";
import { pumpListShape, readPumpList } from "../csv/readPumpList";
import { pumpListNews } from "../workbook/company/pumpNews";
import { readBook, type BookRead } from "../workbook/company/readBook";
import type { AboutBook, Answer, Ask, Asks, Order } from "../taskpane/ownBook/messages";
import { comparedNews, comparedPrices, fileWith, madeJob, withLogo } from "./files";

const page = globalThis as unknown as {
  onmessage: (event: MessageEvent<Order>) => void;
  postMessage(answer: Answer): void;
};

page.onmessage = ({ data }) => {
  answer(data).then(
    (got) => page.postMessage({ got }),
    (error: unknown) => page.postMessage({ refused: sentence(error) }),
  );
};

/** Problems of a list read as the end of a sentence. */
function sentence(error: unknown): string {
  const message = error instanceof Error ? error.message : String(error);
  return error instanceof Problem ? `${message.slice(0, 1).toUpperCase()}${message.slice(1)}.` : message;
}

async function answer(order: Order): Promise<Asks[Ask]["get"]> {
  const { book } = order;
  switch (order.ask) {
    case "about":
      return aboutBook(await readBook(book.name, book.bytes));
    case "job":
      return madeJob((await readBook(book.name, book.bytes)).book, order.blank);
    case "prices":
      return compared(await comparedPrices(book, order.job));
    case "news":
      return compared(await comparedNews(book, order.job));
    case "pumps":
      return pumps(await readBook(book.name, book.bytes), order);
    case "logo":
      return changed(book.name, withLogo(book, order.logo, order.png));
    case "take":
      return changed(book.name, await fileWith(book, order.taken));
  }
}

async function changed(name: string, bytes: Uint8Array): Promise<Asks["take"]["get"]> {
  return { bytes, about: aboutBook(await readBook(name, bytes)) };
}

function compared({ differences, left }: Awaited<ReturnType<typeof comparedPrices>>): Asks["prices"]["get"] {
  return { differences, left };
}

/** A list that cannot be read as it is mapped is shown all the same, for the mapping to be changed. */
function pumps({ book, workbook }: BookRead, { list, as }: Order<"pumps">): Asks["pumps"]["get"] {
  const shape = pumpListShape(list, as);
  try {
    const file = readPumpList(list, as);
    return { shape, file, ...pumpListNews(book, workbook, file.pumps) };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { shape, problem: sentence(error), differences: [], left: [] };
  }
}

function aboutBook({ book, problems }: BookRead): AboutBook {
  const { system, company, products, pumps: held } = book;
  const rows: Book["products"] = products;
  return {
    system,
    company: company.name,
    products: rows.length,
    priced: rows.filter(({ price }) => price !== undefined).length,
    invented: rows.filter(({ invented }) => invented).length,
    pumps: held.length,
    logo: company.logo !== undefined,
    problems: problems.map((problem) => problem.sentence),
  };
}
