import { strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../src/bench/reading/openWorkbook";
import { smallTemplate } from "../host/smallTemplate";

describe("opening", () => {
  it("reads a workbook", async () => {
    const { workbook } = await openWorkbook("job.xlsx", await smallTemplate());
    expect(workbook.sheets.map(({ name }) => name)).toEqual(["Site", "Pump", "Notes"]);
  });

  const oldOrEncrypted = Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0]);
  const refusals: [string, () => Promise<Uint8Array> | Uint8Array, string][] = [
    ["an empty file", () => new Uint8Array(), "is empty"],
    ["a text file", () => strToU8("name,price\nliner,4"), "is not an .xlsx workbook; save it as .xlsx"],
    [
      "a file with a password, or of the old format",
      () => oldOrEncrypted,
      "is protected with a password or is an old .xls file",
    ],
    [
      "another kind of archive",
      () => zipSync({ "word/document.xml": strToU8("<w/>") }),
      "is an archive but not an .xlsx workbook",
    ],
    ["a file cut short", async () => (await smallTemplate()).slice(0, 3000), "is damaged"],
    [
      "a file with macros",
      async () => zipSync({ ...unzipSync(await smallTemplate()), "xl/vbaProject.bin": new Uint8Array([1]) }),
      "holds macros, which the bench never runs",
    ],
    [
      "a file with a broken sheet",
      async () => zipSync({ ...unzipSync(await smallTemplate()), "xl/workbook.xml": strToU8("<workbook><she") }),
      "is damaged",
    ],
    [
      "a file too large",
      () => new Uint8Array(41_000_000).fill(0x50),
      "is 41 MB; the bench opens workbooks up to 40 MB",
    ],
  ];

  it.each(refusals)("refuses %s in a sentence", async (_, bytes, sentence) => {
    await expect(openWorkbook("job.xlsx", await bytes())).rejects.toThrow(`job.xlsx ${sentence}`);
  });

  it("refuses an archive that says it unpacks to more than it can hold, without unpacking it", async () => {
    const file = zipSync({ ...unzipSync(await smallTemplate()), "xl/media/zeros.bin": new Uint8Array(100) });
    const view = new DataView(file.buffer, file.byteOffset);
    // The last entry of the zip directory; its unpacked size stands 24 bytes behind the signature (APPNOTE.TXT 4.3.12).
    let entry = file.length - 4;
    while (view.getUint32(entry, true) !== 0x02014b50) entry -= 1;
    view.setUint32(entry + 24, 450_000_000, true);
    await expect(openWorkbook("job.xlsx", file)).rejects.toThrow("unpacks to more than the bench can hold");
  });
});
