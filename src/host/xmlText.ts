const ENTITIES: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** Text as an element of XML holds it. Control characters cannot stand in XML at all and are dropped. */
export function escapeText(text: string): string {
  return (
    text
      .replace(/&/g, "&amp;")
      .replace(/</g, "&lt;")
      .replace(/>/g, "&gt;")
      // eslint-disable-next-line no-control-regex
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g, "")
  );
}

/** Text as an attribute of XML holds it, between double quotes. */
export function escapeAttribute(text: string): string {
  return escapeText(text).replace(/"/g, "&quot;");
}

/** What an element or an attribute says. */
export function unescapeXml(text: string): string {
  return text.replace(
    /&(?:(amp|lt|gt|quot|apos)|#(\d+)|#x([0-9a-fA-F]+));/g,
    (_, name?: string, decimal?: string, hex?: string) =>
      name ? (ENTITIES[name] ?? "") : String.fromCodePoint(decimal ? Number(decimal) : Number.parseInt(hex ?? "0", 16)),
  );
}
