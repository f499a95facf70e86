const ONLY_FILES = "Only a workbook file can be dropped here; save it as .xlsx and drop the file.";

/** Opens a file dropped anywhere on the page; says so when what was dropped is no file, or several. */
export function dropZone(overlay: HTMLElement, open: (file: File) => void, refused: (sentence: string) => void): void {
  const carriesFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes("Files") ?? false;
  // Text may be dropped where text is typed; anywhere else the browser would leave the page for a dropped link.
  const intoText = (event: DragEvent): boolean =>
    event.target instanceof Element && event.target.closest("input, textarea, [contenteditable=true]") !== null;
  document.addEventListener("dragover", (event) => {
    if (!carriesFile(event) && intoText(event)) return;
    event.preventDefault();
    overlay.hidden = !carriesFile(event);
  });
  document.addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) overlay.hidden = true;
  });
  document.addEventListener("drop", (event) => {
    if (!carriesFile(event) && intoText(event)) return;
    event.preventDefault();
    overlay.hidden = true;
    const files = event.dataTransfer?.files ?? [];
    const [file] = files;
    if (!file) refused(ONLY_FILES);
    else if (files.length > 1) refused(`${files.length} files were dropped; drop one workbook at a time.`);
    else open(file);
  });
}
