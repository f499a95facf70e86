/** The type of a workbook's file. */
export const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Hands the user a file through the browser's downloads. */
export function download(name: string, content: BlobPart, type: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
