import { imageSize } from "image-size";
import type { Logo } from "../book/types";
import { Package } from "../xlsx/package";
import { picturesOn, type LyingPicture } from "../xlsx/pictures";
import { drawingOf, placePicture } from "../xlsx/placePicture";
import { attributeOf, startTag, within } from "../xlsx/xml";

/** What the picture is called in a file. */
const LOGO = "Company logo";
/** Rows of the letterhead on Quote. */
const LETTERHEAD = 4;
/** How large it is shown at most, in pixels, 96 to an inch. */
const WIDEST = 240;
const HIGHEST = 56;
const MOST_BYTES = 2_000_000;
/** The column right of the sheet Company, from 0. */
const BESIDE_COMPANY = 7;
/** One clear pixel, for programs that show no SVG where nobody drew it for them. */
const NOTHING_SEEN = Uint8Array.from(
  atob("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAAC0lEQVR42mNgAAIAAAUAAen63NgAAAAASUVORK5CYII="),
  (letter) => letter.charCodeAt(0),
);
const TYPES = { png: "png", jpg: "jpeg", svg: "svg" } as const;

/** A picture that cannot be a logo, and why, as the end of a sentence. */
export class NoLogo extends Error {}

/** The picture in a file's bytes, as a logo; throws what is wrong with it. */
export function readLogo(bytes: Uint8Array): Logo {
  if (bytes.length > MOST_BYTES) {
    throw new NoLogo(
      `is ${Math.round(bytes.length / 100_000) / 10} MB: a logo has at most ${MOST_BYTES / 1_000_000} MB`,
    );
  }
  const { type, width, height } = sizeOf(bytes);
  const known = TYPES[type as keyof typeof TYPES];
  if (known === undefined || !(width > 0 && height > 0)) throw new NoLogo("is not a PNG, JPEG or SVG picture");
  return { type: known, bytes, width, height };
}

function sizeOf(bytes: Uint8Array): { type?: string; width: number; height: number } {
  try {
    return imageSize(bytes);
  } catch {
    return { width: 0, height: 0 };
  }
}

/** The logo over the quote of a job's file: the one a job was made with, or what a person put into its letterhead. */
export function logoOf(job: Uint8Array): Logo | undefined {
  const file = new Package(job);
  const pictures = picturesOf(file, "Quote");
  const picture = pictures.find(({ title }) => title === LOGO) ?? pictures.find(({ row }) => row < LETTERHEAD);
  try {
    return picture && logoIn(file, picture);
  } catch (error) {
    if (error instanceof NoLogo) return undefined;
    throw error;
  }
}

/** The logo in a company's book: the one taken into it, or the first picture on Company; throws what is wrong with it. */
export function bookLogo(book: Uint8Array): Logo | undefined {
  const file = new Package(book);
  const pictures = picturesOf(file, "Company");
  const picture = pictures.find(({ title }) => title === LOGO) ?? pictures[0];
  return picture && logoIn(file, picture);
}

function picturesOf(file: Package, name: string): LyingPicture[] {
  const sheet = file.sheets().get(name);
  return sheet === undefined ? [] : picturesOn(file, sheet);
}

function logoIn(file: Package, { part, svg }: LyingPicture): Logo {
  const bytes = file.part(part);
  const drawn = svg === undefined ? undefined : file.part(svg);
  if (!bytes) throw new NoLogo("is not in the file");
  return drawn ? { ...readLogo(drawn), png: bytes } : readLogo(bytes);
}

/** A job with the logo over its quote, whose first row makes room for it. */
export function jobWithLogo(job: Uint8Array, logo: Logo): Uint8Array {
  const file = new Package(job);
  const sheet = file.sheets().get("Quote");
  const root = sheet === undefined ? undefined : file.xml(sheet);
  if (sheet === undefined || !root) return job;
  const [first] = within(root, "row");
  if (first) {
    // A pixel is three quarters of a point.
    const height = Number(attributeOf(first, "ht") ?? 15) + Math.ceil(shown(logo).height * 0.75);
    file.change(sheet, [startTag(first, { ht: String(height), customHeight: "1" })]);
  }
  place(file, sheet, logo, 0);
  return file.bytes();
}

/** A book with this logo, right of what Company holds, in place of the one before. */
export function bookWithLogo(book: Uint8Array, logo: Logo): Uint8Array {
  const file = new Package(book);
  const sheet = file.sheets().get("Company");
  if (sheet === undefined) return book;
  const drawing = drawingOf(file, sheet);
  if (drawing !== undefined) {
    file.removeElements(drawing, (anchor) =>
      [...within(anchor, "cNvPr")].some((said) => attributeOf(said, "name") === LOGO),
    );
  }
  place(file, sheet, logo, BESIDE_COMPANY);
  return file.bytes();
}

function place(file: Package, sheet: string, logo: Logo, column: number): void {
  const { type, bytes, png } = logo;
  const held = type === "svg" ? { type: "png" as const, bytes: png ?? NOTHING_SEEN, svg: bytes } : { type, bytes };
  placePicture(file, sheet, { row: 0, column, ...shown(logo), title: LOGO, ...held });
}

/** Its size over the papers, in pixels. */
function shown({ width, height }: Logo): { width: number; height: number } {
  const times = Math.min(WIDEST / width, HIGHEST / height);
  return { width: width * times, height: height * times };
}
