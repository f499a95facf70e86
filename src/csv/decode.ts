/** How the bytes of a text file were read. */
export type Encoding = "UTF-8" | "UTF-16" | "Windows-1252";

/**
 * Turns the bytes of a text file into text: by its byte order mark, else as UTF-8, and where the bytes are not UTF-8
 * as Windows-1252, which every sequence of bytes is.
 */
export function decodeText(bytes: Uint8Array): { text: string; encoding: Encoding } {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return { text: decode(bytes, "utf-16le"), encoding: "UTF-16" };
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return { text: decode(bytes, "utf-16be"), encoding: "UTF-16" };
  try {
    // The decoder takes the mark off by itself.
    return { text: decode(bytes, "utf-8", true), encoding: "UTF-8" };
  } catch {
    const text = decode(bytes, "windows-1252").replace(
      /[\u0080-\u009f]/g,
      (letter) => C1[letter.charCodeAt(0) - 0x80] ?? letter,
    );
    return { text, encoding: "Windows-1252" };
  }
}

/** The letters 80 to 9F of Windows-1252 (WHATWG Encoding Standard, index windows-1252): Node 20 leaves them as Latin-1. */
const C1 = [..."€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ"];

function decode(bytes: Uint8Array, label: string, fatal = false): string {
  return new TextDecoder(label, { fatal }).decode(bytes);
}
