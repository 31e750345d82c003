/** Longest side the server keeps, px; a larger picture would wait longer and be made no better there. */
const LONGEST_PX = 2560;
const QUALITY = 0.85;

export interface SmallerPicture {
  readonly picture: Blob;
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * A photograph turned upright, no larger than needed, written anew without anything but its points: where and when it was taken stays behind on the
 * device. The server does all of that again at its door.
 *
 * @returns null where the file is no picture this browser can read
 */
export async function smallerPicture(file: Blob): Promise<SmallerPicture | null> {
  const read = await createImageBitmap(file, { imageOrientation: "from-image" }).catch(() => null);
  if (read === null) return null;
  const ratio = Math.min(1, LONGEST_PX / Math.max(read.width, read.height));
  const [widthPx, heightPx] = [read.width, read.height].map((side) =>
    Math.max(1, Math.round(side * ratio)),
  ) as [number, number];
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const pen = canvas.getContext("2d");
  if (pen === null) return null;
  pen.fillStyle = "white";
  pen.fillRect(0, 0, widthPx, heightPx);
  pen.drawImage(read, 0, 0, widthPx, heightPx);
  read.close();
  const picture = await canvas.convertToBlob({ type: "image/jpeg", quality: QUALITY });
  return { picture, widthPx, heightPx };
}
