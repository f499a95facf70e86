/** Opens a file dropped anywhere on the page. */
export function dropZone(overlay: HTMLElement, open: (file: File) => void): void {
  const carriesFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes("Files") ?? false;
  document.addEventListener("dragover", (event) => {
    if (!carriesFile(event)) return;
    event.preventDefault();
    overlay.hidden = false;
  });
  document.addEventListener("dragleave", (event) => {
    if (event.relatedTarget === null) overlay.hidden = true;
  });
  document.addEventListener("drop", (event) => {
    if (!carriesFile(event)) return;
    event.preventDefault();
    overlay.hidden = true;
    const file = event.dataTransfer?.files[0];
    if (file) open(file);
  });
}
