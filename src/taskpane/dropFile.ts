/** Takes a file that is dropped on an element, and says so when several were. */
export function dropFile(root: HTMLElement, take: (file: File) => void, refused: (sentence: string) => void): void {
  const carriesFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes("Files") ?? false;
  root.addEventListener("dragover", (event) => carriesFile(event) && event.preventDefault());
  root.addEventListener("drop", (event) => {
    if (!carriesFile(event)) return;
    event.preventDefault();
    const [file, ...more] = event.dataTransfer?.files ?? [];
    if (more.length > 0) refused(`${more.length + 1} files were dropped; drop one company book at a time.`);
    else if (file) take(file);
  });
}
