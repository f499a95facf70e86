import type { Package } from "../../xlsx/package";
import { placePicture } from "../../xlsx/placePicture";
import type { Picture } from "../work/picture";

/** Adds the pictures to the drawings of their sheets. */
export function addPictures(file: Package, sheets: ReadonlyMap<string, string>, pictures: readonly Picture[]): void {
  for (const { png, sheet, ...picture } of pictures) {
    const part = sheets.get(sheet);
    if (part !== undefined) placePicture(file, part, { ...picture, type: "png", bytes: png });
  }
}
