import type { Workbook } from "hucre";
import type { Picture } from "../work/picture";

/** Pictures in the files are this many times as large as they are shown, so that they are sharp on paper. */
const SHARPNESS = 3;

/** The PNG pictures a file brings; others stay in the file, unseen. */
export function picturesOf({ sheets }: Workbook): Picture[] {
  return sheets.flatMap(({ name, images }) =>
    (images ?? []).flatMap(({ data, type, anchor, width, height, altText }) =>
      type === "png" && width && height
        ? [
            {
              sheet: name,
              row: anchor.from.row,
              column: anchor.from.col,
              width,
              height,
              title: altText ?? "",
              png: data,
            },
          ]
        : [],
    ),
  );
}

/** How large a picture of the pane's is shown, in pixels. */
export async function sizeOf(png: Uint8Array): Promise<{ width: number; height: number }> {
  const { width, height } = await createImageBitmap(new Blob([png as BlobPart], { type: "image/png" }));
  return { width: width / SHARPNESS, height: height / SHARPNESS };
}
