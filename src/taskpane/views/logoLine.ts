import { askWorker } from "../ownBook/askWorker";
import type { CompanyBook } from "../ownBook/companyBook";
import { pngOf } from "../picture";
import { make } from "../ui/elements";
import type { Desk } from "../ui/desk";

/** Takes a picture into the book as its logo; an SVG with a PNG of it, for programs that show none. */
export function logoLine(desk: Desk, company: CompanyBook): HTMLElement {
  const id = "book-logo";
  const said = make("p", { class: "quiet" });
  const input = make("input", { type: "file", id, accept: ".png,.jpg,.jpeg,.svg" });
  const take = async (file: File): Promise<string> => {
    const book = company.need();
    const bytes = new Uint8Array(await file.arrayBuffer());
    const drawn = file.type === "image/svg+xml" ? await pngOf(new TextDecoder().decode(bytes)) : undefined;
    const logo = { name: file.name, bytes };
    const made = await desk.long(`Taking ${file.name}`, (task) =>
      askWorker({ ask: "logo", book, logo, ...(drawn ? { png: drawn } : {}) }, task),
    );
    await company.replace(made.bytes, made.about);
    return `${file.name} stands over the quotes of new jobs; save the book to have it as a file.`;
  };
  input.addEventListener("change", () => {
    const file = input.files?.[0];
    input.value = "";
    if (file) desk.attempt(() => take(file));
  });
  const show = (): void => {
    said.textContent = company.kept?.about.logo ? "The book has a logo." : "The book has no logo yet.";
  };
  company.onChange(show);
  show();
  return make("div", {}, said, make("label", { for: id }, "Choose a picture (PNG, JPEG or SVG)"), input);
}
