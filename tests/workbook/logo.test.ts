import { readFileSync } from "node:fs";
import { strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, expect, it } from "vitest";
import { withLogo } from "../../src/company/files";
import { buildCompanyBook } from "../../src/workbook/company/build";
import { readBook } from "../../src/workbook/company/readBook";
import { bookLogo, bookWithLogo, readLogo } from "../../src/workbook/logo";
import { validate } from "../bench/validate";

/** An icon of our own: 64 by 64 pixels. */
const PNG = new Uint8Array(readFileSync("manifest/icons/icon-64.png"));
const SVG = strToU8(
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120 40"><rect width="120" height="40"/></svg>',
);
/** The head of a JPEG of 300 by 200: SOI, APP0, and the frame with height and width (ITU-T T.81, B.2.2). */
const JPEG = Uint8Array.from(
  [
    [0xff, 0xd8],
    [0xff, 0xe0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1, 1, 0, 0, 1, 0, 1, 0, 0],
    [0xff, 0xc0, 0, 17, 8, 0, 200, 1, 44, 3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1],
    [0xff, 0xd9],
  ].flat(),
);

let blank: Uint8Array;
beforeAll(async () => {
  blank = await buildCompanyBook("US");
});

it.each([
  ["png", PNG, 64, 64],
  ["jpeg", JPEG, 300, 200],
  ["svg", SVG, 120, 40],
] as const)("keeps a logo as it is: %s", (type, bytes, width, height) => {
  const book = bookWithLogo(blank, readLogo(bytes));
  expect(bookLogo(book)).toMatchObject({ type, bytes, width, height });
  // A picture of both kinds is the one that no other test writes.
  if (type === "svg") expect(validate(book, "Microsoft365")).toEqual([]);
});

it("has one logo, the last that was taken", () => {
  const twice = bookWithLogo(bookWithLogo(blank, readLogo(PNG)), readLogo(SVG));
  expect(bookLogo(twice)?.type).toBe("svg");
  expect(bookLogo(blank)).toBeUndefined();
});

it("refuses what is no picture, or too large a one, in a sentence", async () => {
  const logo = (name: string, bytes: Uint8Array): (() => unknown) => {
    return () => withLogo({ name: "Book.xlsx", bytes: blank }, { name, bytes });
  };
  expect(logo("Moss.gif", strToU8("GIF89a\x01\x00\x01\x00"))).toThrow("Moss.gif is not a PNG, JPEG or SVG picture.");
  expect(logo("Moss.png", new Uint8Array(2_500_000))).toThrow("Moss.png is 2.5 MB: a logo has at most 2 MB.");
  // A book whose picture is of another kind is read, and says so.
  const parts = unzipSync(bookWithLogo(blank, readLogo(PNG)));
  const media = Object.keys(parts).find((name) => name.startsWith("xl/media/")) ?? "";
  const { book, problems } = await readBook("Book.xlsx", zipSync({ ...parts, [media]: strToU8("BM not a picture") }));
  expect(book.company.logo).toBeUndefined();
  expect(problems.map(({ sentence }) => sentence)).toEqual([
    "The picture on Company is not a PNG, JPEG or SVG picture; quotes come without a logo.",
  ]);
});
