/** A piece of a page that is already markup. */
export class Html {
  constructor(readonly text: string) {}
}

type Piece = Html | string | number | boolean | undefined | readonly Piece[];

/** Markup with everything between the braces escaped, unless it is markup itself. */
export function html(parts: TemplateStringsArray, ...pieces: readonly Piece[]): Html {
  return new Html(parts.map((part, index) => part + (index < pieces.length ? render(pieces[index]) : "")).join(""));
}

function render(piece: Piece): string {
  if (typeof piece === "boolean" || piece === undefined) return "";
  if (piece instanceof Html) return piece.text;
  if (typeof piece === "string" || typeof piece === "number") return escapeHtml(String(piece));
  return piece.map(render).join("");
}

/** A text that no browser takes for markup. */
export function escapeHtml(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
}
