import { getDocumentProxy } from "unpdf";

/** A word or more on a page, with its size in points and its box from the page's lower left corner. */
export interface Print {
  readonly text: string;
  readonly size: number;
  readonly left: number;
  readonly right: number;
  readonly base: number;
}

export interface PrintedPage {
  readonly width: number;
  readonly height: number;
  readonly prints: readonly Print[];
  /** All of it in one line. */
  readonly text: string;
}

/** What stands on each page of a PDF, by another library than the one that wrote it. */
export async function readPdf(bytes: Uint8Array): Promise<PrintedPage[]> {
  const document = await getDocumentProxy(new Uint8Array(bytes));
  return Promise.all(
    Array.from({ length: document.numPages }, async (_, index) => {
      const page = await document.getPage(index + 1);
      const [, , width = 0, height = 0] = page.view;
      const { items } = await page.getTextContent();
      const prints = items.flatMap((item): Print[] => {
        if (!("str" in item) || item.str.trim() === "") return [];
        const [a, b, , , left, base] = item.transform as number[];
        return [
          {
            text: item.str,
            size: Math.hypot(a ?? 0, b ?? 0),
            left: left ?? 0,
            right: (left ?? 0) + item.width,
            base: base ?? 0,
          },
        ];
      });
      return {
        width,
        height,
        prints,
        text: prints
          .map(({ text }) => text)
          .join(" ")
          .replace(/\s+/g, " "),
      };
    }),
  );
}
