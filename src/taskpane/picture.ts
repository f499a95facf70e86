/** Pixels of the picture for one unit of the drawing: sharp on paper. */
const SHARPNESS = 3;

/** An SVG drawing as a PNG on white, in the colours it has outside the pane. */
export async function pngOf(svg: string): Promise<Uint8Array> {
  const [, width = "360", height = "240"] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  const sized = svg.replace('width="100%"', `width="${width}" height="${height}"`);
  const address = URL.createObjectURL(new Blob([sized], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = Math.round(Number(width) * SHARPNESS);
    canvas.height = Math.round(Number(height) * SHARPNESS);
    const pen = canvas.getContext("2d");
    if (!pen) throw new Error("this browser gives no canvas to draw on");
    pen.fillStyle = "#ffffff";
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    // The page's own toBlob waits until the browser has nothing else to do, a second a picture; this is done at once.
    const [kind = "", data = ""] = canvas.toDataURL("image/png").split(",");
    if (!kind.startsWith("data:image/png")) throw new Error("the picture could not be made");
    return Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
  } finally {
    URL.revokeObjectURL(address);
  }
}
