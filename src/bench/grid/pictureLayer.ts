import type { FUniver } from "@univerjs/core/facade";
import { base64 } from "../../host/base64";
import type { Picture } from "../work/picture";

/** Where a picture of the file lay when it was opened. */
interface Lying {
  readonly sheet: string;
  readonly lies: string;
}

/** Pictures over the cells: those the file brought, and those a person placed, moved, resized or took away since. */
export class PictureLayer {
  private readonly placed = new Map<string, Picture>();
  private readonly ofFile = new Map<string, Lying>();

  constructor(private readonly api: FUniver) {}

  /** Shows a picture; one that is not of the file is saved with it. */
  async show(picture: Picture, ofTheFile = false): Promise<void> {
    const worksheet = this.api.getActiveWorkbook()?.getSheetByName(picture.sheet);
    if (!worksheet) return;
    const { row, column, width, height, png } = picture;
    const image = await worksheet
      .newOverGridImage()
      .setSource(`data:image/png;base64,${base64(png)}`, this.api.Enum.ImageSourceType.BASE64)
      .setColumn(column)
      .setRow(row)
      .setWidth(width)
      .setHeight(height)
      .buildAsync();
    worksheet.insertImages([image]);
    if (!ofTheFile) this.placed.set(image.drawingId, picture);
    else
      this.ofFile.set(image.drawingId, { sheet: picture.sheet, lies: await this.lies(picture.sheet, image.drawingId) });
  }

  /** Starts anew with another workbook. */
  clear(): void {
    this.placed.clear();
    this.ofFile.clear();
  }

  get any(): boolean {
    return this.placed.size > 0;
  }

  /** Whether a picture of the file is not as it was; saving leaves it as it is in the file. */
  async fileTouched(): Promise<boolean> {
    for (const [id, { sheet, lies }] of this.ofFile) if ((await this.lies(sheet, id)) !== lies) return true;
    return false;
  }

  /** The placed pictures, where and as large as they are now. */
  async list(): Promise<Picture[]> {
    const pictures: Picture[] = [];
    for (const [id, picture] of this.placed) {
      const image = this.api.getActiveWorkbook()?.getSheetByName(picture.sheet)?.getImageById(id);
      if (!image) continue;
      const { sheetTransform, transform } = await image.toBuilder().buildAsync();
      const { row, column } = sheetTransform.from;
      pictures.push({
        ...picture,
        row,
        column,
        width: transform?.width ?? picture.width,
        height: transform?.height ?? picture.height,
      });
    }
    return pictures;
  }

  /** Where a picture lies, to compare with later. */
  private async lies(sheet: string, id: string): Promise<string> {
    const image = this.api.getActiveWorkbook()?.getSheetByName(sheet)?.getImageById(id);
    if (!image) return "nowhere";
    const { sheetTransform, transform } = await image.toBuilder().buildAsync();
    const { row, column } = sheetTransform.from;
    return [row, column, transform?.width, transform?.height].map((value) => Math.round(value ?? 0)).join(" ");
  }
}
